package fitworthy.advice;

import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.book.Buying.Settled;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.Money;
import fitworthy.sheet.Sheet;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What can be ordered, what has to wait and what should not be bought as planned. Every part that is planned and not yet
 * on the vehicle stands in it once; docs/method.md tells how it is decided.
 *
 * @param parts in the order of the sheet, fitments before tanks
 * @param first findings that are about none of the parts and are settled before any is ordered, worst first
 * @param unknown what is not known, or guessed, on which such a finding may hang
 * @param wanted the day by which all is to be done; null where none is said
 */
public record BuyList(List<Part> parts, List<Group<Finding>> first, List<Missing> unknown, LocalDate wanted) {

    /** What is decided of a part, the best first. */
    public enum Decision {
        ORDER_NOW,
        WAIT,
        NOT_AS_PLANNED
    }

    /**
     * A part or tank.
     *
     * @param price null where the sheet has none
     * @param leadTime h; not known where the sheet does not say
     * @param lastDay the last day on which it can be ordered without holding up the whole
     * @param reasons why it is not ordered now; none where it is
     */
    public record Part(String name, Money price, Figure leadTime, Optional<LocalDate> lastDay, List<Reason> reasons) {

        /** The worst that any of its reasons asks for. */
        public Decision decision() {
            return reasons.stream()
                    .map(Reason::asksFor)
                    .max(Decision::compareTo)
                    .orElse(Decision.ORDER_NOW);
        }
    }

    /** Why a part is not to be ordered now. */
    public sealed interface Reason {

        /** What it asks for. */
        default Decision asksFor() {
            return Decision.WAIT;
        }
    }

    /**
     * Something was found.
     *
     * @param guesses those of the sheet that it rests on in every loading; a figure for one of them may clear it
     */
    public record Found(Group<Finding> finding, List<Missing> guesses) implements Reason {
        @Override
        public Decision asksFor() {
            return guesses.isEmpty() && finding.card().settledBy() == Settled.ANOTHER_CHOICE
                    ? Decision.NOT_AS_PLANNED
                    : Decision.WAIT;
        }
    }

    /** A check of it lacks these, or is in order only if they hold. */
    public record Unknown(List<Missing> figures) implements Reason {}

    /** It belongs to a choice of the sheet that is still open. */
    public record Open(Sheet.Option option) implements Reason {}

    /** It is fitted in, on or after these, and they are not to be ordered yet; those that have a reason of their own. */
    public record After(List<String> parts) implements Reason {}

    /** Decides on every planned part. */
    public static BuyList of(Arrangement arrangement) {
        return new BuyDecisions(arrangement).list();
    }

    /** The parts on which so is decided. */
    public List<Part> parts(Decision decision) {
        return parts.stream().filter(part -> part.decision() == decision).toList();
    }

    /** Whether a check means anything for buying. */
    static boolean counts(Judged judged) {
        return judged.card().settledBy() != Settled.WORK;
    }
}
