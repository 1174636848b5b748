package fitworthy.printout.explain;

import fitworthy.book.Practice;
import fitworthy.figures.measure.Measure;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.Digits.Held;
import fitworthy.printout.words.Wording;
import fitworthy.rules.Advised;
import fitworthy.rules.Comparison;
import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Property;
import fitworthy.rules.Property.Kind;
import java.util.Map;
import java.util.stream.Collectors;

/** What a rule looked at, in words. */
final class FactWords {

    private FactWords() {}

    /**
     * A fact with what it is about and what it came to.
     *
     * @param none what to say where there is none
     * @param atLeast whether what is held against a limit is to be no less than that
     */
    static String fact(Object fact, String none, boolean atLeast) {
        if (fact instanceof Measure measure) {
            return measure.kind().meaning() + " [" + measure.getSubject() + "] = "
                    + (measure.isKnown() ? known(measure, atLeast) : "not known");
        }
        if (fact instanceof Practice practice) {
            return practice.meaning() + " = " + Wording.marked(practice);
        }
        return fact instanceof Advised advised
                ? "the advice " + advised.id() + " [" + advised.subject() + "], given"
                : none;
    }

    private static String known(Measure measure, boolean atLeast) {
        if (!measure.hasLimit()) {
            return measure.mark().before(Wording.value(measure));
        }
        Held held = Held.of(measure);
        String value = atLeast ? Wording.value(measure) : Wording.atLeast(measure) + held.valueText();
        String limit = atLeast ? Digits.quantity(measure.getLimit(), measure.kind()) : held.limitText();
        return measure.mark().before(value) + ", " + measure.kind().limitMeaning() + " "
                + measure.limitMark().before(limit);
    }

    /** The figures behind a comparison, put in. */
    static String numbers(Comparison comparison, Object fact, Map<String, Object> bound) {
        String numbers = comparison
                .named()
                .filter(property -> property.kind() != Kind.TRUTH)
                .filter(property -> owner(property, fact, bound) != null)
                .map(property -> property + " is " + shown(owner(property, fact, bound), property.property()))
                .collect(Collectors.joining(", "));
        return numbers.isEmpty() ? "" : "   (" + numbers + ")";
    }

    /** The fact that has the property. */
    static Object owner(Named named, Object fact, Map<String, Object> bound) {
        return named.binding() == null ? fact : bound.get(named.binding());
    }

    /** A property of a fact, with its unit. */
    static String shown(Object owner, Property property) {
        if (property.kind() == Kind.TEXT) {
            return "'" + property.read(owner) + "'";
        }
        if (owner instanceof Practice practice) {
            return Wording.marked(practice);
        }
        double number = (Double) property.read(owner);
        if (Double.isNaN(number)) {
            return "not known";
        }
        if (property == Property.HEADROOM) {
            Held held = Held.of((Measure) owner);
            return Digits.quantity(held.left(), held.kind());
        }
        return property == Property.SPARE
                ? Digits.number(number, "%", 1) + " %"
                : Digits.quantity(number, ((Measure) owner).kind());
    }
}
