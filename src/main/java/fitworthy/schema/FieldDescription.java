package fitworthy.schema;

import fitworthy.quantity.Dimension;
import java.util.List;
import java.util.regex.Pattern;

/**
 * What a {@link Field} annotation says, in the same words. An annotation looks each of its answers up by name when it is
 * asked, and every figure of a sheet is asked about.
 *
 * @param question its value without what only a writer of sheets needs, when it is asked and what counts where it is left out
 */
public record FieldDescription(
        String value,
        String question,
        Dimension in,
        Plausible within,
        boolean needed,
        boolean signed,
        String find,
        boolean printed,
        List<String> idle,
        boolean inWords,
        String example) {

    private static final Pattern REMARKS =
            Pattern.compile("; (?:asked\\b|nothing is asked\\b).*$|; [^;]*\\bwhere left out\\b[^;]*");

    static FieldDescription of(Field field) {
        return new FieldDescription(
                field.value(),
                REMARKS.matcher(field.value()).replaceAll(""),
                field.in(),
                field.within(),
                field.needed(),
                field.signed(),
                field.find(),
                field.printed(),
                List.of(field.idle()),
                field.inWords(),
                field.example());
    }
}
