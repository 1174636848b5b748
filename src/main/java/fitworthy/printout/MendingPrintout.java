package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Severity;
import fitworthy.document.Page;
import fitworthy.printout.words.Wording;
import fitworthy.search.Change;
import fitworthy.search.Mender;
import fitworthy.search.Mender.Mending;
import fitworthy.search.Mender.Offer;
import fitworthy.search.Mender.Way;
import fitworthy.sheet.Prices;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Changes that would clear a plan's stops, as plain text. */
public final class MendingPrintout {

    private final Page page;
    private final Advice planned;

    private MendingPrintout(PrintWriter out, Advice planned) {
        this.page = new Page(out);
        this.planned = planned;
    }

    /** Prints what was found for a plan. */
    public static void print(PrintWriter out, Advice planned, Mending mending) {
        new MendingPrintout(out, planned).print(mending);
    }

    private void print(Mending mending) {
        page.wrapped(0, "Fitworthy: changes that clear the stops; advice, not certification");
        page.rule();
        page.wrapped(0, planned.sheet().title());
        page.wrapped(0, TextPrintout.verdict(planned));
        HouseWords.looser(planned).forEach(each -> page.hanging("Looser than the book: ", each));
        page.blank();
        offers(mending);
        ways(mending);
        page.wrapped(0, effort(mending));
        page.rule();
        page.wrapped(0, planned.book().cover().caution());
        page.flush();
    }

    private void offers(Mending mending) {
        // A waiver lets a plan go ahead; the stop is still there, and a way without it is still worth knowing.
        boolean stops = planned.findings().stream()
                .anyMatch(each -> each.judged().card().severity().is(Severity.STOP));
        if (!stops) {
            page.wrapped(0, "The plan has no stop to clear.");
        } else if (mending.offers().isEmpty()) {
            page.wrapped(0, "No change of up to four clears every stop. Do what each finding says; see 'check'.");
        }
        for (int i = 0; i < mending.offers().size(); i++) {
            Offer offer = mending.offers().get(i);
            page.hanging(
                    String.format(Locale.ROOT, "OFFER %d  ", i + 1),
                    offer.changes().stream().map(each -> each.words()).collect(Collectors.joining("; ")));
            terms(planned, offer).forEach(each -> page.wrapped(9, each));
            page.blank();
        }
    }

    /** How far the search went. */
    static String effort(Mending mending) {
        return mending.tried() + " changed plans were run through the whole rule book."
                + (mending.complete()
                        ? ""
                        : " Time ran out, or there were too many combinations, before all were tried; there may be smaller "
                                + "changes.");
    }

    /** What an offer costs, and what the book says of the plan then. */
    static List<String> terms(Advice planned, Offer offer) {
        List<String> terms = new ArrayList<>();
        terms.add(String.format(
                Locale.ROOT,
                "Gives up %.0f kg%s%s. Then: %s",
                offer.kilograms(),
                money(planned, offer),
                days(planned, offer),
                TextPrintout.verdict(offer.advice())));
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
                .filter(each -> each.getValue().signum() != 0)
                .map(each -> ", price " + (each.getValue().signum() > 0 ? "+" : "")
                        + each.getValue().toPlainString()
                        + " "
                        + each.getKey())
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
                .map(each -> each.judged().id())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private void ways(Mending mending) {
        Map<String, List<Way>> byFinding = mending.ways().stream()
                .collect(Collectors.groupingBy(way -> heading(way.finding()), LinkedHashMap::new, Collectors.toList()));
        if (byFinding.isEmpty()) {
            return;
        }
        page.wrapped(0, "WHAT WOULD JUST PASS, one thing at a time:");
        byFinding.forEach((heading, ways) -> {
            page.hanging("  - ", heading);
            ways.stream().map(way -> way.change().words()).distinct().forEach(each -> page.hanging("      or: ", each));
        });
        page.blank();
    }

    /** A finding in one line. */
    static String heading(Finding finding) {
        return finding.judged().id() + " [" + finding.judged().subject() + "], "
                + finding.judged().loadCase() + ": "
                + Wording.comparison(finding.judged(), finding.comparison().orElseThrow())
                + finding.waiver()
                        .map(each -> "; waived " + HouseWords.waiver(each))
                        .orElse("");
    }
}
