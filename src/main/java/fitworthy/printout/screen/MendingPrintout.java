package fitworthy.printout.screen;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.book.Severity;
import fitworthy.document.Page;
import fitworthy.printout.ChangeWords;
import fitworthy.printout.words.HouseWords;
import fitworthy.printout.words.OwnRemedies;
import fitworthy.printout.words.Verdict;
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

    private static final int MOST_LINES = 4;

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
        page.wrapped(0, "Fitworthy: what helps most, and changes that clear the stops; advice, not certification");
        page.rule();
        page.wrapped(0, planned.sheet().title());
        page.wrapped(0, Verdict.of(arrangement));
        HouseWords.looser(planned).forEach(line -> page.hanging("Looser than the book: ", line));
        page.blank();
        if (!mending.complete()) {
            page.wrapped(0, ChangeWords.effort(mending));
            page.blank();
        }
        own(mending);
        best(mending);
        offers(mending);
        ways(mending);
        if (mending.complete()) {
            page.wrapped(0, ChangeWords.effort(mending));
        }
        page.rule();
        page.wrapped(0, planned.book().smallPrint(planned.sheet().region()));
        page.flush();
    }

    private void offers(Mending mending) {
        // A waiver lets a plan go ahead; the stop is still there, and a way without it is still worth knowing.
        if (!arrangement.finds(Severity.STOP)) {
            page.wrapped(0, ChangeWords.noStop(arrangement.counts()));
        } else if (mending.offers().isEmpty()) {
            page.wrapped(0, ChangeWords.noOffer(planned, mending));
            page.blank();
        }
        if (!mending.offers().isEmpty()) {
            page.wrapped(0, "WHAT CLEARS EVERY STOP, the fewest changes first, then the least load given up:");
            page.blank();
        }
        plans("OFFER", mending.offers());
        plans("LIGHTER", mending.lighter());
    }

    private void plans(String name, List<Offer> offers) {
        for (int i = 0; i < offers.size(); i++) {
            Offer offer = offers.get(i);
            String label = String.format(Locale.ROOT, "%s %d  ", name, i + 1);
            page.hanging(label, offer.changes().stream().map(Change::words).collect(Collectors.joining("; ")));
            ChangeWords.terms(planned, offer).forEach(term -> page.wrapped(label.length(), term));
            page.blank();
        }
    }

    /** What gives nothing up stands before what does. */
    private void own(Mending mending) {
        List<String> own = OwnRemedies.inFull(planned, mending);
        if (!own.isEmpty()) {
            page.wrapped(0, "WHAT THE STOP ITSELF ASKS FOR CLEARS IT; not tried here, so check the plan with it:");
            own.forEach(stop -> page.hanging("  - ", stop));
            page.blank();
        }
    }

    /** Each in at most four lines. */
    private void best(Mending mending) {
        if (mending.best().isEmpty()) {
            return;
        }
        page.wrapped(0, "WHAT HELPS MOST, one change at a time, the best first:");
        for (int i = 0; i < mending.best().size(); i++) {
            Offer offer = mending.best().get(i);
            String label = String.format(Locale.ROOT, "%2d  ", i + 1);
            int width = Page.COLUMNS - label.length();
            String words = ChangeWords.brief(offer);
            page.hanging(label, words);
            int left = MOST_LINES - Page.lines(words, width).size();
            ChangeWords.help(planned, offer, left, width).forEach(line -> page.wrapped(label.length(), line));
        }
        page.blank();
    }

    private void ways(Mending mending) {
        Map<String, List<Way>> byFinding = mending.ways().stream()
                .collect(Collectors.groupingBy(
                        way -> ChangeWords.heading(way.finding()), LinkedHashMap::new, Collectors.toList()));
        List<String> others = ChangeWords.withoutWay(planned, mending);
        if (!others.isEmpty()) {
            page.wrapped(0, "STOPS THAT NO SINGLE CHANGE CLEARS, and what each needs:");
            others.forEach(stop -> page.hanging("  - ", stop));
            page.blank();
        }
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
