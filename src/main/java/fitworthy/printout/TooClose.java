package fitworthy.printout;

import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Dimension;
import java.util.Optional;

/**
 * What is said where a limit is passed by less than can be known. That is no pass, and no more surely a fault: it stays
 * among the advice, with what settles it.
 */
final class TooClose {

    /** What is told of it beside by how much. */
    static final String WORDS = "too close to call";

    private TooClose() {}

    /** Why it is not told either way, and what settles it; empty where the limit is surely passed, or kept. */
    static Optional<String> sentence(Assessed found, boolean guessed) {
        return found.comparison().filter(Comparison::tooClose).map(compared -> {
            String way = found.judged().card().atLeast() ? "Short" : "Over";
            return way + " by " + Wording.amount(found.judged(), compared) + ", which is less than can be known ("
                    + Wording.spread(found.judged(), compared) + "): neither in order nor surely a fault. "
                    + settle(found, guessed) + ".";
        });
    }

    /** The same behind its figures: how far they may be off, and what settles it. */
    static String inShort(Assessed found, boolean guessed) {
        return found.comparison()
                .filter(Comparison::tooClose)
                .map(compared -> " (" + Wording.spread(found.judged(), compared) + "). " + settle(found, guessed))
                .orElse("");
    }

    /** What settles it, before what to do else; empty where that is sure. */
    static String first(Assessed found, boolean guessed) {
        return found.comparison()
                .filter(Comparison::tooClose)
                .map(compared -> settle(found, guessed) + ". ")
                .orElse("");
    }

    /** What settles it, as an order. */
    private static String settle(Assessed found, boolean guessed) {
        if (guessed) {
            return "To settle it, measure what is guessed";
        }
        String unit = found.judged().measure().kind().unit();
        String verb = unit.equals("kg") ? "weigh" : Dimension.LENGTH.units().containsKey(unit) ? "measure" : "find out";
        return "To settle it, " + verb + ": " + found.judged().measure().kind().meaning() + " ("
                + found.judged().subject() + ")";
    }
}
