package fitworthy.counter.told;

import fitworthy.advice.Arrangement;
import fitworthy.book.Severity;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Pane;
import fitworthy.printout.words.Wording;
import java.util.List;
import java.util.Map;

/** What the rules say of the plan, worst first. */
public final class AdvicePane implements Pane {

    /** A finding in a line. */
    public record Line(String severity, String id, String title) {}

    @Override
    public String id() {
        return "told";
    }

    @Override
    public String html(Seen seen) {
        List<Line> lines = seen.now().arrangement().map(AdvicePane::lines).orElse(List.of());
        return Pages.html("told/told.jte", Map.of("lines", lines));
    }

    private static List<Line> lines(Arrangement arrangement) {
        return arrangement.told(Severity.NOTE).stream()
                .map(told -> new Line(
                        told.head().severity().name(),
                        told.head().id(),
                        Wording.fill(told.head().card().title(), told.head().worst())))
                .toList();
    }
}
