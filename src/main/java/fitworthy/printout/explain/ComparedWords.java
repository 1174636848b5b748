package fitworthy.printout.explain;

import fitworthy.rules.Comparison;
import fitworthy.rules.Comparison.Asked;
import fitworthy.rules.Comparison.Both;
import fitworthy.rules.Comparison.Compared;
import fitworthy.rules.Comparison.Either;
import fitworthy.rules.Comparison.Holds;
import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Comparison.Not;
import fitworthy.rules.Comparison.Operator;
import fitworthy.rules.Comparison.Term;
import fitworthy.rules.Comparison.Text;
import fitworthy.rules.Property;
import fitworthy.rules.Property.Kind;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What a rule compared, as one says it to a customer: with the figures alone, not with what rule files call them. */
final class ComparedWords {

    private final Object fact;
    private final Map<String, Object> bound;

    /** @param fact what was looked at @param bound what was looked at before, by the names that the rule gives it */
    ComparedWords(Object fact, Map<String, Object> bound) {
        this.fact = fact;
        this.bound = bound;
    }

    /** Whether it says more than that there is a figure, and that it is one of the same thing. */
    static boolean tells(Comparison comparison) {
        return !(comparison instanceof Asked
                || comparison instanceof Holds
                || comparison instanceof Compared compared
                        && compared.operator() == Operator.EQUAL
                        && compared.named().allMatch(named -> named.property() == Property.SUBJECT));
    }

    String of(Comparison comparison) {
        if (comparison instanceof Both both) {
            return joined(both.parts(), ", and ");
        }
        if (comparison instanceof Either either) {
            return joined(either.parts(), ", or ");
        }
        if (comparison instanceof Not not) {
            return "not so: " + of(not.part());
        }
        return comparison instanceof Compared compared
                ? side(compared.left()) + " " + words(compared.operator()) + " " + side(compared.right())
                : "it is known";
    }

    private String joined(List<Comparison> parts, String between) {
        return parts.stream().map(this::of).collect(Collectors.joining(between));
    }

    private static String words(Operator operator) {
        return switch (operator) {
            case EQUAL -> "is";
            case UNEQUAL -> "is not";
            case BELOW -> "is below";
            case AT_MOST -> "is at most";
            case ABOVE -> "is above";
            case AT_LEAST -> "is at least";
        };
    }

    private String side(Term term) {
        if (term instanceof Text text) {
            return "'" + text.text().replace('-', ' ') + "'";
        }
        if (!(term instanceof Named named)) {
            return term.toString();
        }
        Object owner = FactWords.owner(named, fact, bound);
        if (owner == null || named.kind() == Kind.TRUTH) {
            return "what is not there";
        }
        String shown = FactWords.shown(owner, named.property());
        return switch (named.property()) {
            case LIMIT -> "the limit, " + shown + ",";
            case HEADROOM -> "what is left to the limit, " + shown + ",";
            case EXCESS -> "what is over the limit, " + shown + ",";
            case SPARE -> "the share of the limit that is left, " + shown + ",";
            case TOLERANCE -> "the tolerance, " + shown + ",";
            case WORD -> shown.replace('-', ' ');
            default -> shown;
        };
    }
}
