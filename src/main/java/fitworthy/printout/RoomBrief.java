package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.RoomLeft;
import fitworthy.advice.RoomLeft.Answer;
import fitworthy.advice.RoomLeft.InLoading;
import fitworthy.document.Page;
import fitworthy.figures.room.Step;
import fitworthy.printout.words.Wording;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** What each loading leaves for more, a loading a line: heaviest trailer, load wherever it is put, and range. */
final class RoomBrief {

    private static final int GAP = 2;
    private static final String NONE = "-";

    private RoomBrief() {}

    /** Prints it with a blank line after it; in full where it is too wide for lines of this kind. */
    static void print(Page page, Advice advice) {
        RoomLeft room = RoomLeft.of(advice);
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("ROOM LEFT", "heaviest trailer", "people and cargo", "range"));
        room.loadings().forEach(loading -> rows.add(row(loading)));
        int[] widths = new int[rows.get(0).size()];
        rows.forEach(
                row -> Arrays.setAll(widths, i -> Math.max(widths[i], row.get(i).length() + GAP)));
        if (Arrays.stream(widths).sum() - GAP > Page.COLUMNS) {
            RoomTable.of(advice).print(page);
            return;
        }
        rows.forEach(row -> page.line(line(row, widths)));
        String tanks = room.loadings().stream()
                .map(RoomBrief::notFull)
                .filter(loading -> !loading.isEmpty())
                .collect(Collectors.joining("; "));
        if (!tanks.isEmpty()) {
            page.wrapped(0, "Not to be filled to the top: " + tanks + ".");
        }
        page.blank();
    }

    private static List<String> row(InLoading loading) {
        return List.of(
                loading.loading(),
                loading.trailer().map(RoomBrief::amount).orElse(NONE),
                loading.aboard().stream()
                        .min(Comparator.comparingDouble(RoomTable::least))
                        .map(RoomBrief::amount)
                        .orElse(NONE),
                loading.range()
                        .filter(range -> range.measure().isKnown())
                        .map(range -> RoomTable.about(range) + Wording.value(range.measure()))
                        .orElse(NONE));
    }

    private static String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            line.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length()));
        }
        return line.toString().stripTrailing();
    }

    private static String amount(Answer answer) {
        String by = answer.most()
                .governs()
                .map(Step::limit)
                .map(limit -> " (" + limit.words() + ")")
                .orElse("");
        return answer.most().isOver()
                ? "none" + by
                : answer.figured().measure().isKnown()
                        ? RoomTable.about(answer.figured())
                                + Wording.value(answer.figured().measure())
                                + by
                        : "not known";
    }

    private static String notFull(InLoading loading) {
        String tanks = loading.tanks().stream()
                .filter(tank -> !RoomTable.isFull(tank))
                .map(tank -> tank.fill().subject())
                .collect(Collectors.joining(", "));
        return tanks.isEmpty() ? "" : tanks + " (" + loading.loading() + ")";
    }
}
