package fitworthy.book;

import fitworthy.source.NodePath;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a usual figure goes by: a field and what it holds.
 *
 * @param path the way to the field, from the thing that the figure is of or from the top of the sheet
 * @param word a word, part of a name, or a quantity
 */
public record UsualTerm(NodePath path, Relation relation, String word) {

    /** How the field and the word belong together. */
    public enum Relation {
        /** It holds this word. */
        IS,
        /** It is a text with this word in it. */
        HAS,
        /** It is less than this. */
        UNDER,
        /** It is left out. */
        MISSING,
        /** So much of it is what the value is for. */
        PER
    }

    private static final Pattern WHEN = Pattern.compile("(\\S+) (?:(is missing)|(is|has|under) (\\S.*))");
    private static final Pattern PER = Pattern.compile("(\\S.*) of (\\S+)");

    /** What {@code when} says, all of which must hold; nothing where it cannot be read. */
    public static Optional<List<UsualTerm>> when(String text) {
        List<UsualTerm> terms = new ArrayList<>();
        for (String part : text.isEmpty() ? new String[0] : text.split(" and ")) {
            Matcher matcher = WHEN.matcher(part);
            if (!matcher.matches()) {
                return Optional.empty();
            }
            terms.add(
                    matcher.group(2) != null
                            ? new UsualTerm(NodePath.parse(matcher.group(1)), Relation.MISSING, "")
                            : new UsualTerm(
                                    NodePath.parse(matcher.group(1)),
                                    Relation.valueOf(matcher.group(3).toUpperCase(Locale.ROOT)),
                                    matcher.group(4)));
        }
        return Optional.of(terms);
    }

    /** What {@code per} says; nothing where it cannot be read. */
    public static Optional<UsualTerm> per(String text) {
        Matcher matcher = PER.matcher(text);
        return matcher.matches()
                ? Optional.of(new UsualTerm(NodePath.parse(matcher.group(2)), Relation.PER, matcher.group(1)))
                : Optional.empty();
    }

    /** Everything that a value goes by, as far as it can be read. */
    static List<UsualTerm> of(UsualFigure.Value value) {
        List<UsualTerm> terms = new ArrayList<>(when(value.when()).orElse(List.of()));
        per(value.per()).ifPresent(terms::add);
        return terms;
    }
}
