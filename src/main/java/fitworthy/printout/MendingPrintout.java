package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.book.Severity;
import fitworthy.document.Page;
import fitworthy.search.Change;
import fitworthy.search.Mender.Mending;
import fitworthy.search.Mender.Offer;
import fitworthy.search.Mender.Way;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Changes that would clear a plan's stops, as plain text. */
public final class MendingPrintout {

    private final Page page;
    private final Advice planned;
    private final Arrangement arrangement;

    private MendingPrintout(PrintWriter out, Advice planned) {
        this.page = new Page(out);
        this.planned = planned;
        this.arrangement = Arrangement.of(planned);
    }

    /** Prints what was found for a plan. */
    public static void print(PrintWriter out, Advice planned, Mending mending) {
        new MendingPrintout(out, planned).print(mending);
    }

    private void print(Mending mending) {
        page.wrapped(0, "Fitworthy: changes that clear the stops; advice, not certification");
        page.rule();
        page.wrapped(0, planned.sheet().title());
        page.wrapped(0, Verdict.of(arrangement));
        HouseWords.looser(planned).forEach(line -> page.hanging("Looser than the book: ", line));
        page.blank();
        if (!mending.complete()) {
            page.wrapped(0, ChangeWords.effort(mending));
            page.blank();
        }
        offers(mending);
        ways(mending);
        if (mending.complete()) {
            page.wrapped(0, ChangeWords.effort(mending));
        }
        page.rule();
        page.wrapped(0, planned.book().cover().caution());
        page.flush();
    }

    private void offers(Mending mending) {
        // A waiver lets a plan go ahead; the stop is still there, and a way without it is still worth knowing.
        if (!arrangement.finds(Severity.STOP)) {
            page.wrapped(0, "The plan has no stop to clear.");
        } else if (mending.offers().isEmpty()) {
            page.wrapped(0, ChangeWords.noOffer(mending) + "; see 'check'.");
        }
        for (int i = 0; i < mending.offers().size(); i++) {
            Offer offer = mending.offers().get(i);
            page.hanging(
                    String.format(Locale.ROOT, "OFFER %d  ", i + 1),
                    offer.changes().stream().map(Change::words).collect(Collectors.joining("; ")));
            ChangeWords.terms(planned, offer).forEach(term -> page.wrapped(9, term));
            page.blank();
        }
    }

    private void ways(Mending mending) {
        Map<String, List<Way>> byFinding = mending.ways().stream()
                .collect(Collectors.groupingBy(
                        way -> ChangeWords.heading(way.finding()), LinkedHashMap::new, Collectors.toList()));
        if (byFinding.isEmpty()) {
            return;
        }
        page.wrapped(0, "WHAT WOULD JUST PASS, one thing at a time:");
        byFinding.forEach((heading, ways) -> {
            page.hanging("  - ", heading);
            ways.stream()
                    .map(way -> way.change().words())
                    .distinct()
                    .forEach(words -> page.hanging("      or: ", words));
        });
        page.blank();
    }
}
