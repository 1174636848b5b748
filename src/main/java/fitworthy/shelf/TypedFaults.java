package fitworthy.shelf;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Mark;
import fitworthy.quantity.QuantityText;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.Plausible;
import fitworthy.source.Fault;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Tells what is wrong with what was typed, and how it would be right.
 *
 * @param dashes what stands before the name of an option; nothing on a page
 * @param faults gets them
 */
record TypedFaults(String dashes, List<Fault> faults) {

    /** What a command line takes without quotes. */
    private static final Pattern PLAIN = Pattern.compile("[a-z0-9]+");

    void tell(String option, String problem, String right) {
        faults.add(new Fault(Place.of(dashes + option), "", problem, right));
    }

    /** That these words are not what belongs there. */
    void tellWords(String option, String typed, String problem, String right) {
        tell(option, "'" + Words.shortened(typed, 60) + "' " + problem, right);
    }

    /** What would be right, as it is typed. */
    String right(String option, String typed) {
        if (dashes.isEmpty()) {
            return typed;
        }
        return dashes + option + " " + (PLAIN.matcher(typed).matches() ? typed : '"' + typed + '"');
    }

    /** A name that has to be there. @param typed null where nothing was */
    String name(String option, String typed, String right) {
        String name = typed == null ? "" : typed.strip();
        if (name.isEmpty()) {
            tell(option, "is missing", right);
        } else if (!name.equals(Words.seen(name))) {
            tell(option, "holds a character that no person types", right);
        }
        return name;
    }

    /** Looks at a figure of a field, where there is one. */
    void figure(String option, String typed, FieldSchema field, String right) {
        figure(option, typed, field.description().in(), field.description().within(), right);
    }

    /** Looks at a figure, where there is one. */
    void figure(String option, String typed, Dimension in, Plausible within, String right) {
        if (typed.isEmpty()) {
            return;
        }
        Optional<String> either = QuantityText.eitherOf(Mark.read(typed).text());
        if (either.isPresent()) {
            tellWords(option, typed, "could be either of two", either.get());
            return;
        }
        try {
            if (!within.canBe(QuantityText.parse(Mark.read(typed).text(), in).value())) {
                tellWords(option, typed, "is not between " + within.limits(), right);
            }
        } catch (QuantityText.Unreadable e) {
            tell(option, e.getMessage(), right);
        }
    }
}
