package fitworthy.printout.screen;

import fitworthy.advice.Advice;
import fitworthy.advice.RoomLeft;
import fitworthy.advice.RoomLeft.Answer;
import fitworthy.advice.RoomLeft.InLoading;
import fitworthy.advice.RoomLeft.Tank;
import fitworthy.advice.TrailerRoom;
import fitworthy.document.Page;
import fitworthy.figures.room.Limit;
import fitworthy.figures.room.RoomMeasures;
import fitworthy.figures.room.Step;
import fitworthy.printout.RoomTable;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.RoomWords;
import fitworthy.printout.words.TooClose;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Figure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What each loading leaves for more, a loading a line: heaviest trailer, load wherever it is put, and range. */
public final class RoomBrief {

    private static final int GAP = 2;
    private static final String NONE = "-";
    /** What stands above a {@link #row}. */
    public static final List<String> HEADINGS =
            List.of("ROOM LEFT", "heaviest trailer", "people and cargo", "range, L/100km");

    private RoomBrief() {}

    /** Prints it with a blank line after it; in full where it is too wide for lines of this kind. */
    public static void print(Page page, Advice advice) {
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
        tanks(
                page,
                room,
                "Not to be filled to the top: ",
                loading -> some(loading, RoomBrief::isToStayBelowFull, RoomBrief::upTo, ", or "));
        for (boolean close : List.of(false, true)) {
            tanks(
                    page,
                    room,
                    close
                            ? "Too close to call whether a limit stays exceeded even with "
                            : "A limit stays exceeded even with ",
                    loading -> some(
                            loading,
                            tank -> tank.room().most().isOver()
                                    && tank.room().most().isTooClose() == close,
                            tank -> tank.fill().subject() + " empty",
                            " or "));
        }
        tanks(
                page,
                room,
                "Not known whether to be filled to the top: ",
                loading -> some(
                        loading,
                        RoomBrief::mayBeFullForAllThatIsKnown,
                        tank -> tank.fill().subject(),
                        ", "));
        trailer(advice).ifPresent(line -> page.wrapped(0, line));
        overAlone(room, false, "The vehicle alone is over").ifPresent(line -> page.wrapped(0, line));
        overAlone(room, true, "Too close to call whether the vehicle alone is over")
                .ifPresent(line -> page.wrapped(0, line));
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
                        + (towed.lightest().known() ? "; at its lightest " + kilograms(towed.lightest()) : "")
                        + tooHeavy(TrailerRoom.of(advice).orElseThrow())
                        + ".");
    }

    private static String tooHeavy(TrailerRoom room) {
        if (!room.isTooHeavyEmpty()) {
            return "";
        }
        if (room.isTooCloseEmpty()) {
            return ": " + TooClose.WORDS + " whether this build can tow it even empty"
                    + (room.isTooHeavyEmptyAlways() ? "" : " (" + room.loading() + ")");
        }
        return room.isTooHeavyEmptyAlways()
                ? ": this build cannot tow it even empty"
                : ": too heavy even empty for the vehicle as it is loaded then (" + room.loading() + ")";
    }

    /** The loadings in which the vehicle is over a limit before a trailer is on. @param close by less than can be known */
    private static Optional<String> overAlone(RoomLeft room, boolean close, String words) {
        List<String> over = room.loadings().stream()
                .filter(loading -> loading.trailer()
                        .map(Answer::most)
                        .filter(most -> most.isOver() && most.taken() == 0 && most.isTooClose() == close)
                        .isPresent())
                .map(InLoading::loading)
                .toList();
        return over.isEmpty()
                ? Optional.empty()
                : Optional.of(words + ", without a trailer (" + String.join(", ", over) + ").");
    }

    private static String kilograms(Figure mass) {
        return mass.mark().before(Digits.quantity(mass.value(), RoomMeasures.TRAILER));
    }

    /** The places that bear no more while others do. */
    private static List<String> placesFull(InLoading loading) {
        List<Answer> full =
                loading.aboard().stream().filter(place -> place.most().isOver()).toList();
        return full.size() == loading.aboard().size()
                ? List.of()
                : full.stream().map(Answer::subject).toList();
    }

    /**
     * What people and cargo may weigh wherever they are put: of the places that bear more, but for the roof, as much as
     * the one that bears least, and not known where that of any of them is not. Where none bears more, what is passed.
     */
    private static String aboard(InLoading loading) {
        List<Answer> looked = Stream.<Predicate<Answer>>of(
                        place -> !place.most().isOver() && !isOfRoof(place), place -> !isOfRoof(place), place -> true)
                .map(wanted -> loading.aboard().stream().filter(wanted).toList())
                .filter(places -> !places.isEmpty())
                .findFirst()
                .orElse(List.of());
        boolean known = looked.stream().allMatch(place -> place.most().unknown().isEmpty());
        return looked.stream()
                .min(Comparator.comparingDouble(RoomTable::least))
                .map(least -> amount(least, RoomWords.aboard(loading, least), known))
                .orElse(NONE);
    }

    private static boolean isOfRoof(Answer place) {
        return place.most()
                .governs()
                .filter(step -> step.limit() == Limit.ROOF || step.limit() == Limit.RACK)
                .isPresent();
    }

    /** What a loading leaves: its name, the heaviest trailer, people and cargo, and the range. */
    public static List<String> row(InLoading loading) {
        return List.of(
                loading.loading(),
                loading.trailer()
                        .map(answer -> amount(
                                answer,
                                RoomWords.atMost(answer),
                                answer.most().unknown().isEmpty()))
                        .orElse(NONE),
                aboard(loading),
                loading.range()
                        .filter(range -> range.measure().isKnown())
                        .map(range -> RoomWords.about(range) + Wording.value(range.measure()) + ", "
                                + (loading.consumption().guess().isPresent() ? "about " : "")
                                + Digits.number(loading.consumption().value(), "L/100km", 1))
                        .orElse(NONE));
    }

    private static String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            line.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length()));
        }
        return line.toString().stripTrailing();
    }

    /** @param much how much, as far as the limits are known @param known whether nothing else could make it less */
    private static String amount(Answer answer, String much, boolean known) {
        String by = answer.most()
                .governs()
                .map(Step::limit)
                .map(limit -> " (" + limit.words() + ")")
                .orElse("");
        return answer.most().isOver()
                ? "none" + by
                : answer.most().atMost().known()
                        ? (known ? "" : "at most ") + RoomWords.about(answer.figured()) + much + by
                        : "not known";
    }

    /** A line of what is so of the tanks, loadings of which the same is so together; none where nothing is. */
    private static void tanks(Page page, RoomLeft room, String words, Function<InLoading, String> said) {
        Map<String, List<String>> loadings = new LinkedHashMap<>();
        room.loadings().forEach(loading -> loadings.computeIfAbsent(said.apply(loading), none -> new ArrayList<>())
                .add(loading.loading()));
        loadings.remove("");
        if (!loadings.isEmpty()) {
            page.wrapped(
                    0,
                    loadings.entrySet().stream()
                            .map(entry -> entry.getKey() + " (" + String.join(", ", entry.getValue()) + ")")
                            .collect(Collectors.joining("; ", words, ".")));
        }
    }

    private static String some(InLoading loading, Predicate<Tank> wanted, Function<Tank, String> said, String between) {
        return loading.tanks().stream().filter(wanted).map(said).collect(Collectors.joining(between));
    }

    /** How much may be in it with all else as planned. */
    private static String upTo(Tank tank) {
        return tank.fill().subject() + ", at most "
                + RoomWords.about(tank.fill().figured()) + RoomWords.atMost(tank.fill());
    }

    /** Where it would help: what stays passed with the tank empty does not hang on how full it is. */
    private static boolean isToStayBelowFull(Tank tank) {
        return !tank.room().most().isOver()
                && tank.room()
                        .most()
                        .governs()
                        .filter(step -> step.limit() != Limit.FULL)
                        .isPresent();
    }

    private static boolean mayBeFullForAllThatIsKnown(Tank tank) {
        return !tank.room().most().isOver() && !isToStayBelowFull(tank) && !RoomTable.isFull(tank);
    }
}
