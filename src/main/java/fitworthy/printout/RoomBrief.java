package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.RoomLeft;
import fitworthy.advice.RoomLeft.Answer;
import fitworthy.advice.RoomLeft.InLoading;
import fitworthy.document.Page;
import fitworthy.figures.room.Limit;
import fitworthy.figures.room.Step;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Figure;
import fitworthy.quantity.QuantityText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What each loading leaves for more, a loading a line: heaviest trailer, load wherever it is put, and range. */
public final class RoomBrief {

    private static final int GAP = 2;
    private static final String NONE = "-";
    /** What stands above a {@link #row}. */
    public static final List<String> HEADINGS = List.of("ROOM LEFT", "heaviest trailer", "people and cargo", "range");

    private RoomBrief() {}

    /** Prints it with a blank line after it; in full where it is too wide for lines of this kind. */
    static void print(Page page, Advice advice) {
        RoomLeft room = RoomLeft.of(advice);
        List<List<String>> rows = new ArrayList<>();
        rows.add(HEADINGS);
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
        trailer(advice).ifPresent(line -> page.wrapped(0, line));
        List<String> full = room.loadings().stream()
                .flatMap(loading -> placesFull(loading).stream())
                .distinct()
                .toList();
        if (!full.isEmpty()) {
            page.wrapped(0, "No more load " + String.join(", ", full) + ".");
        }
        page.blank();
    }

    /** What the trailer is to weigh, beside what it may. */
    private static Optional<String> trailer(Advice advice) {
        return advice.sheet()
                .planned()
                .trailer()
                .filter(towed -> towed.mass().known())
                .map(towed -> towed.name() + " as planned: " + kilograms(towed.mass())
                        + (towed.lightest().known() ? "; at its lightest " + kilograms(towed.lightest()) : "") + ".");
    }

    private static String kilograms(Figure mass) {
        return mass.mark().before(QuantityText.shown(mass.value(), "kg"));
    }

    /** The places that bear no more while others do. */
    private static List<String> placesFull(InLoading loading) {
        List<Answer> full =
                loading.aboard().stream().filter(place -> place.most().isOver()).toList();
        return full.size() == loading.aboard().size()
                ? List.of()
                : full.stream().map(Answer::subject).toList();
    }

    /** The answer for people and cargo: of the places that bear more, but for the roof, the one that bears least. */
    private static Optional<Answer> aboard(InLoading loading) {
        return Stream.<Predicate<Answer>>of(
                        place -> !place.most().isOver() && !isOfRoof(place),
                        place -> !place.most().isOver(),
                        place -> true)
                .map(looked ->
                        loading.aboard().stream().filter(looked).min(Comparator.comparingDouble(RoomTable::least)))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static boolean isOfRoof(Answer place) {
        return place.most().governs().filter(step -> step.limit() == Limit.ROOF).isPresent();
    }

    /** What a loading leaves: its name, the heaviest trailer, people and cargo, and the range. */
    public static List<String> row(InLoading loading) {
        return List.of(
                loading.loading(),
                loading.trailer().map(RoomBrief::amount).orElse(NONE),
                aboard(loading).map(RoomBrief::amount).orElse(NONE),
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
