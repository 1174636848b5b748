package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Outcome.Finding;
import fitworthy.printout.words.Wording;
import fitworthy.search.Alternatives;
import fitworthy.search.Alternatives.Alternative;
import fitworthy.search.Change;
import fitworthy.search.Mender;
import fitworthy.search.Mender.Mending;
import fitworthy.search.Mender.Offer;
import fitworthy.sheet.Prices;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What is said of changed plans, on a screen and on paper. */
final class ChangeWords {

    private ChangeWords() {}

    /** How far the search went; told before what it found where that is not all. */
    static String effort(Mending mending) {
        return mending.tried() + " changed plans were run through the whole rule book."
                + (mending.complete()
                        ? ""
                        : " Time ran out, or there were too many combinations, before all were tried; there may be smaller "
                                + "changes.");
    }

    /** How many combinations were looked at where time ran out before all were. */
    static Optional<String> cutShort(Alternatives<?> alternatives) {
        return alternatives.complete()
                ? Optional.empty()
                : Optional.of("Time ran out: " + alternatives.plans().size() + " of "
                        + (alternatives.all() == Long.MAX_VALUE ? "more than " : "") + alternatives.all()
                        + " combinations were looked at. What is said of the best holds among these alone.");
    }

    /** That no change helps, as far as the search went. */
    static String noOffer(Mending mending) {
        return (mending.complete()
                        ? "No change of up to four clears every stop."
                        : "None of the changes that were tried clears every stop.")
                + " Do what each finding says";
    }

    /** What an offer costs, and what the book says of the plan then. */
    static List<String> terms(Advice planned, Offer offer) {
        List<String> terms = new ArrayList<>();
        terms.add(String.format(
                Locale.ROOT,
                "Gives up %s%s%s. Then: %s",
                offer.kilograms() < 0.5 ? "nothing" : String.format(Locale.ROOT, "%.0f kg", offer.kilograms()),
                money(planned, offer),
                days(planned, offer),
                Verdict.of(Arrangement.of(offer.advice()))));
        if (offer.changes().stream().anyMatch(Change.PutRight.class::isInstance)) {
            terms.add("What is put right may cost mass, money and time that the sheet does not say.");
        }
        Set<String> more = ids(offer.advice());
        more.removeAll(ids(planned));
        if (!more.isEmpty()) {
            terms.add("New with it: " + String.join(", ", more));
        }
        return terms;
    }

    private static String money(Advice planned, Offer offer) {
        return Prices.added(planned.sheet(), offer.advice().sheet()).entrySet().stream()
                .filter(entry -> entry.getValue().signum() != 0)
                .map(entry -> (entry.getValue().signum() > 0 ? ", costs " : ", saves ")
                        + entry.getValue().abs().toPlainString()
                        + " "
                        + entry.getKey()
                        + (entry.getValue().signum() > 0 ? " more" : ""))
                .collect(Collectors.joining());
    }

    private static String days(Advice planned, Offer offer) {
        double change = offer.days() - Mender.days(planned.sheet());
        return change == 0
                ? ""
                : String.format(Locale.ROOT, ", longest lead time %.0f days (%+.0f)", offer.days(), change);
    }

    private static Set<String> ids(Advice advice) {
        return advice.findings().stream()
                .map(finding -> finding.judged().id())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** A finding in one line. */
    static String heading(Finding finding) {
        return finding.judged().id() + " [" + finding.judged().subject() + "], "
                + finding.judged().loadCase() + ": "
                + Wording.comparison(finding.judged(), finding.comparison().orElseThrow())
                + finding.waiver()
                        .map(waiver -> "; waived "
                                + HouseWords.waiver(waiver, finding.judged().id()))
                        .orElse("");
    }

    /** The choices of a combination. @param number from 0; the first is the plan as written */
    static String choices(Alternative<?> alternative, int number) {
        return alternative.choices().stream()
                        .map(choice -> choice.option() + ": " + choice.choice())
                        .collect(Collectors.joining("; "))
                + (number == 0 ? " (as written)" : "");
    }

    /** What everything planned costs, whole units of each currency. */
    static String price(Advice advice) {
        List<String> sums = new ArrayList<>();
        Prices.of(advice.sheet()).forEach((currency, sum) -> sums.add(sum.toBigInteger() + " " + currency));
        return sums.isEmpty() ? "-" : String.join("+", sums);
    }
}
