package fitworthy.printout.words;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Headings;
import fitworthy.advice.Counts;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.advice.Ratings;
import fitworthy.book.Severity;
import fitworthy.quantity.Missing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What advice comes to, in words. */
public final class Verdict {

    private Verdict() {}

    /** What to do with the plan, with what was found, how much information is missing and what rests on guesses. */
    public static String of(Arrangement arrangement) {
        return of(arrangement, true);
    }

    /** The same without what is in order only if guesses hold. */
    public static String inShort(Arrangement arrangement) {
        return of(arrangement, false);
    }

    private static String of(Arrangement arrangement, boolean withHeld) {
        List<String> parts = new ArrayList<>();
        Headings headings = arrangement.headings();
        headings.found().forEach((severity, count) -> parts.add(count + " " + SeverityWords.behind(count, severity)));
        if (headings.under() > 0) {
            parts.add(parts.remove(parts.size() - 1) + " (and " + headings.under() + " listed under them)");
        }
        if (arrangement.counts().notAssessed() > 0) {
            parts.add(open(arrangement.counts()));
        }
        if (withHeld && arrangement.counts().held() > 0) {
            parts.add(GuessWords.count(arrangement.counts()));
        }
        String waived = HouseWords.waived(arrangement);
        Optional<Severity> worst = arrangement.advice().worst();
        boolean mayStand =
                worst.filter(found -> found.compareTo(Severity.CHANGE) <= 0).isEmpty();
        if (mayStand && arrangement.counts().isMostlyOpen()) {
            return "Hardly anything can be said of this plan yet. Find out first what is missing."
                    + counted(parts, waived);
        }
        if (mayStand && Ratings.of(arrangement.advice()).open() > 0) {
            return "This plan cannot be judged yet: not all of its ratings are known and checked."
                    + counted(parts, waived);
        }
        long open = checks(leadingStops(arrangement));
        if (open > 0) {
            return "Find out first what is missing: "
                    + (open == 1
                            ? "1 check that could stop this plan is not made."
                            : open + " checks that could stop this plan are not made.")
                    + counted(parts, waived);
        }
        String first = worst.map(found -> switch (found) {
                    case STOP ->
                        arrangement.isWorstTooClose()
                                ? "Do not go ahead yet: what stops it is too close to call, and has to be settled first."
                                : "Do not go ahead with this plan as it stands.";
                    case CHANGE -> "Change the plan before you go ahead.";
                    case CONFIRM -> "Get what is listed agreed before you go ahead.";
                    case NOTE ->
                        (onlyBook(arrangement.counts()) ? "Nothing that was checked" : "Nothing")
                                + " stands in the way. Some points are worth knowing.";
                })
                .orElse(
                        waived.isEmpty()
                                ? "No fault found in what was checked."
                                : "No fault found except what is waived.");
        return first + counted(parts, waived);
    }

    /** Whether checks were not made, and all for want of a value of the rule book. */
    private static boolean onlyBook(Counts counts) {
        return counts.notAssessed() > 0 && counts.figuresMissing() == counts.inBook();
    }

    /**
     * The checks that could stop the plan and lack what its writer can find out, where they come before what was found: not
     * before a stop or a change, nor where as much is to be confirmed. A note asks for nothing.
     */
    private static List<NotAssessed> leadingStops(Arrangement arrangement) {
        Advice advice = arrangement.advice();
        List<NotAssessed> open = advice.notAssessed().stream()
                .filter(outcome -> outcome.judged().card().severity().is(Severity.STOP))
                .filter(outcome -> outcome.missing().stream().noneMatch(Missing::isInBook))
                .toList();
        boolean comeFirst = advice.worst()
                        .filter(found -> found.compareTo(Severity.CHANGE) <= 0)
                        .isEmpty()
                && checks(open) > arrangement.counts().found(Severity.CONFIRM);
        return comeFirst ? open : List.of();
    }

    private static long checks(List<NotAssessed> outcomes) {
        return outcomes.stream().map(Outcome::check).distinct().count();
    }

    /** What these lack. */
    public static List<Missing> leading(Arrangement arrangement) {
        return leadingStops(arrangement).stream()
                .flatMap(outcome -> outcome.missing().stream())
                .distinct()
                .toList();
    }

    private static String counted(List<String> parts, String waived) {
        return (parts.isEmpty() ? "" : " " + String.join(", ", parts) + ".")
                + (waived.isEmpty() ? "" : " Not counted: " + waived + ".");
    }

    /**
     * How many checks lack information, and how many answers they lack; where that is the rule book's more than the
     * sheet's, how many.
     */
    public static String open(Counts counts) {
        return counts.notAssessed() + (counts.notAssessed() == 1 ? " check" : " checks") + " not made: "
                + counts.figuresMissing() + (counts.figuresMissing() == 1 ? " answer" : " answers") + " missing"
                + (2 * counts.inBook() <= counts.figuresMissing()
                        ? ""
                        : ", of which the rule book itself lacks " + counts.inBook());
    }
}
