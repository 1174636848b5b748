package fitworthy.printout.screen;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Told;
import fitworthy.advice.MissingFigure;
import fitworthy.book.Severity;
import fitworthy.document.Page;
import fitworthy.printout.words.Verdict;
import fitworthy.printout.words.Wording;
import fitworthy.source.Words;
import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** What advice comes to, on less than a screen: the worst that was found, and the figures that most checks wait for. */
public final class BriefPrintout {

    private static final int MOST = 5;
    /** Characters of the parts that lack the same figure: two lines. */
    private static final int MOST_NAMED = 140;

    private BriefPrintout() {}

    public static void print(PrintWriter out, Advice advice) {
        Page page = new Page(out);
        Arrangement arrangement = Arrangement.of(advice);
        page.wrapped(0, Verdict.of(arrangement));
        List<Told> found = arrangement.told(Severity.CONFIRM);
        found.stream()
                .limit(MOST)
                .forEach(told -> page.hanging(
                        String.format(
                                Locale.ROOT, "%-9s", told.head().severity().name()),
                        Wording.fill(told.head().card().title(), told.head().worst())));
        if (found.size() > MOST) {
            page.wrapped(9, "and " + (found.size() - MOST) + " more");
        }
        List<MissingFigure> figures = arrangement.figuresToBring().stream()
                .sorted(Comparator.comparing(figure -> -figure.rules().size()))
                .limit(MOST)
                .toList();
        if (!figures.isEmpty()) {
            page.blank();
            page.wrapped(0, "What most checks wait for:");
        }
        figures.forEach(figure -> page.hanging(
                "  - ",
                Words.shortened(figure.field(), MOST_NAMED) + ". Find it: "
                        + figure.missing().find() + " (for " + figure.rules().size()
                        + (figure.rules().size() == 1 ? " rule)" : " rules)")));
        page.flush();
    }
}
