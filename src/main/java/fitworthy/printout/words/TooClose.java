package fitworthy.printout.words;

import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.quantity.Dimension;
import fitworthy.source.Words;
import java.util.Optional;
import java.util.Set;

/**
 * What is said where a limit is passed by less than can be known. That is no pass, and no more surely a fault: it stays
 * among the advice, with what settles it.
 */
public final class TooClose {

    /** What is told of it beside by how much. */
    public static final String WORDS = "too close to call";

    /** The same before what may be so or not. */
    static final String WHETHER = WORDS + " whether it is so";

    /** What a weighbridge tells. */
    private static final Set<MeasureKind> LOADS = Set.of(LoadMeasures.LOADED, LoadMeasures.AXLE);

    private TooClose() {}

    /** Why it is not told either way, and what settles it; empty where the limit is surely passed, or kept. */
    public static Optional<String> sentence(Assessed found, boolean guessed) {
        return found.comparison()
                .filter(Comparison::tooClose)
                .map(compared -> way(found) + " by "
                        + Wording.amount(found.judged(), compared) + ", which is less than can be known ("
                        + Wording.spread(found.judged(), compared) + "): neither in order nor surely a fault. "
                        + settle(found, guessed) + ".");
    }

    /** The same of what was found in several loadings; empty where it is sure in one. */
    public static Optional<String> sentence(Group<Finding> group, boolean guessed) {
        return group.isTooClose() ? sentence(group.worst(), guessed) : Optional.empty();
    }

    /** What settles it, and what to do if it turns out so; what to do alone where that is sure. @param order what to do */
    public static String first(Group<Finding> group, boolean guessed, String order) {
        Finding found = group.worst();
        return group.isTooClose()
                ? settle(found, guessed) + "; if it is " + Words.small(way(found)) + ", " + Words.small(order)
                : order;
    }

    private static String way(Assessed found) {
        return found.judged().card().atLeast() ? "Short" : "Over";
    }

    /** What settles it, as an order. */
    private static String settle(Assessed found, boolean guessed) {
        MeasureKind kind = found.judged().measure().kind();
        String subject = found.judged().subject();
        if (LOADS.contains(kind)) {
            String loaded = kind == LoadMeasures.LOADED ? "the loaded vehicle" : "the " + subject;
            return "Weigh " + (guessed ? "what is guessed (or " + loaded + ")" : loaded) + " first";
        }
        if (guessed) {
            return "Measure what is guessed first";
        }
        String what = kind.meaning() + " (" + subject + ")";
        if (kind.unit().equals("kg")) {
            return "Weigh first: " + what;
        }
        // A share or a ratio is worked out, and nobody can go and read it off.
        return Dimension.LENGTH.units().containsKey(kind.unit())
                ? "Measure first: " + what
                : "Weigh and measure more closely first what goes into it: " + what;
    }
}
