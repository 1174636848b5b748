package fitworthy.printout.explain;

import fitworthy.advice.Advice;
import fitworthy.document.Page;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.room.RoomMeasures;
import fitworthy.printout.words.Digits.Held;
import fitworthy.printout.words.Wording;
import java.io.PrintWriter;
import java.util.List;

/** How what each loading leaves for more was worked out, figure by figure, as plain text. */
public final class RoomPrintout {

    private RoomPrintout() {}

    /** Whether it names these figures or one of them, and no rule. */
    public static boolean names(String id) {
        return id.equals(RoomMeasures.TOPIC)
                || new RoomMeasures()
                        .kinds().stream().anyMatch(kind -> kind.name().equals(id));
    }

    /** Prints those that {@code id} names. */
    public static void print(PrintWriter out, Advice advice, String id) {
        Page page = new Page(out);
        print(page, advice, Saying.AS_FILES, id);
        page.rule();
        page.wrapped(0, advice.book().smallPrint(advice.sheet().region()));
        page.flush();
    }

    /** Those that {@code id} names, on a page that somebody else ends. */
    static void print(Page page, Advice advice, Saying saying, String id) {
        advice.measures().forEach((loading, measures) -> {
            page.wrapped(0, "In the loading '" + loading + "':");
            measures.stream()
                    .filter(measure ->
                            measure.getName().equals(id) || measure.getName().startsWith(id + "."))
                    .forEach(measure -> print(page, saying, measure));
            page.blank();
        });
    }

    /** What it is held against, and what is left of that; empty where it has no limit. */
    private static String left(Measure measure) {
        Held held = Held.of(measure);
        return Double.isNaN(held.left())
                ? ""
                : ", " + measure.kind().limitMeaning() + " " + held.limitText() + ": " + held.leftText()
                        + (held.left() < 0 ? " over" : " left");
    }

    private static void print(Page page, Saying saying, Measure measure) {
        page.hanging(
                "  ",
                measure.getSubject() + ", " + measure.kind().meaning() + ": " + Wording.within(measure) + left(measure)
                        + (saying.plain() ? "" : " (" + measure.getName() + ")"));
        measure.workings().stream()
                .map(working -> working.lines())
                .flatMap(List::stream)
                .forEach(line -> page.row("      ", line));
        saying.missing(page, measure.missing());
    }
}
