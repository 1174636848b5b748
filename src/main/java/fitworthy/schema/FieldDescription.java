package fitworthy.schema;

import fitworthy.quantity.Dimension;
import java.util.List;

/**
 * What a {@link Field} annotation says, in the same words. An annotation looks each of its answers up by name when it is
 * asked, and every figure of a sheet is asked about.
 */
public record FieldDescription(
        String value,
        Dimension in,
        Plausible within,
        boolean needed,
        boolean signed,
        String find,
        boolean printed,
        List<String> idle,
        boolean inWords,
        String example) {

    static FieldDescription of(Field field) {
        return new FieldDescription(
                field.value(),
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
