package fitworthy.printout;

import static fitworthy.document.Report.Column.text;

import fitworthy.advice.Advice;
import fitworthy.advice.RoomLeft;
import fitworthy.advice.RoomLeft.Answer;
import fitworthy.advice.RoomLeft.InLoading;
import fitworthy.advice.RoomLeft.Tank;
import fitworthy.document.Page;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Table;
import fitworthy.figures.plan.BallLoad;
import fitworthy.figures.plan.RoofLimit;
import fitworthy.figures.room.Limit;
import fitworthy.figures.room.Most;
import fitworthy.figures.room.RoomMeasures;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.HeaviestTrailer;
import fitworthy.printout.words.RoomWords;
import fitworthy.printout.words.TooClose;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Figure;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What each loading leaves for more, in words: a line for each question, loadings that come to the same together. */
public final class RoomTable {

    /** A place is as strong as nobody has said: the figures are of the vehicle and of what the sheet rates. */
    private static final String BEARS = " what a seat, shelf or floor bears is not counted";

    private static final String HEADING = "ROOM LEFT, each answer by itself with all else as planned;" + BEARS;
    private static final String TRAILER = "Heaviest trailer";
    /** How many places that come to the same are named. */
    private static final int PLACES = 4;
    /** Columns of the question in the terminal. */
    private static final int QUESTION = 18;

    private final RoomLeft room;
    private final Figure roof;
    private final boolean roofOpen;
    private final List<Line> lines = new ArrayList<>();

    /** An answer. @param loadings those that it holds in; none where it names them itself */
    private record Line(String question, List<String> loadings, String answer) {}

    private RoomTable(Advice advice) {
        this.room = RoomLeft.of(advice);
        this.roof = RoofLimit.onTheWay(advice.sheet());
        this.roofOpen = RoofLimit.lacksOffRoad(advice.sheet());
        BallLoad.of(advice.sheet())
                .map(load -> new HeaviestTrailer(room, load.filledIn()))
                .ifPresent(heaviest -> add(TRAILER, heaviest::inLoading));
        add("People and cargo", this::aboard);
        add("Tanks", RoomTable::tanks);
        addTogether("Range at L/100km", RoomTable::range);
    }

    /** That of an advice. */
    public static RoomTable of(Advice advice) {
        return new RoomTable(advice);
    }

    /** Prints it in a terminal's columns, with a blank line after it. */
    public void print(Page page) {
        page.wrapped(0, HEADING);
        for (Line line : lines) {
            page.hanging(String.format(Locale.ROOT, "%-" + QUESTION + "s", line.question), where(line) + line.answer);
        }
        page.blank();
    }

    /** What it is a table of. */
    RoomLeft room() {
        return room;
    }

    /** The question of a line, which the first line of several has. */
    private String named(Line line) {
        return lines.subList(0, lines.indexOf(line) + 1).stream()
                .map(Line::question)
                .filter(question -> !question.isEmpty())
                .reduce((one, later) -> later)
                .orElse("");
    }

    /** Whether a line is one of the first, which are of the trailer where the sheet has one. */
    private static boolean isOfTrailer(Line line) {
        return line.question.equals(TRAILER) || line.question.isEmpty();
    }

    private String where(Line line) {
        return room.loadings().size() == 1 || line.loadings.isEmpty() ? "" : loadings(line) + ": ";
    }

    private String loadings(Line line) {
        return line.loadings.size() > 1
                        && line.loadings.size() == room.loadings().size()
                ? "every loading"
                : String.join(", ", line.loadings);
    }

    /** The same as a table, without the heaviest trailer. */
    List<Block> blocks() {
        return new Table(
                        "Room left: each answer by itself, with all else as planned;" + BEARS,
                        List.of(text("What", 18), text("Loading", 22), text("How much, and which limit governs", 60)),
                        lines.stream()
                                .dropWhile(RoomTable::isOfTrailer)
                                .map(line -> Row.of(named(line), loadings(line), line.answer))
                                .toList())
                .unlessEmpty();
    }

    /** A question; a loading that has no answer is left out. */
    private void add(String question, Function<InLoading, String> answer) {
        byAnswer(answer)
                .forEach((text, names) -> lines.add(new Line(
                        lines.stream().anyMatch(line -> line.question.equals(question)) ? "" : question, names, text)));
    }

    /** A question of which the answers are short: all of them in a line, each with its loadings. */
    private void addTogether(String question, Function<InLoading, String> answer) {
        Map<String, List<String>> loadings = byAnswer(answer);
        if (loadings.size() <= 1) {
            add(question, answer);
            return;
        }
        lines.add(new Line(
                question,
                List.of(),
                loadings.entrySet().stream()
                        .map(entry -> entry.getKey() + " (" + String.join(", ", entry.getValue()) + ")")
                        .collect(Collectors.joining("; "))));
    }

    /** The loadings that have the same answer; those that have none are left out. */
    private Map<String, List<String>> byAnswer(Function<InLoading, String> answer) {
        Map<String, List<String>> loadings = new LinkedHashMap<>();
        room.loadings().forEach(loading -> loadings.computeIfAbsent(answer.apply(loading), none -> new ArrayList<>())
                .add(loading.loading()));
        loadings.remove("");
        return loadings;
    }

    /** Place by place, the least first; places that come to the same together. */
    private String aboard(InLoading loading) {
        Map<String, List<Answer>> alike = new LinkedHashMap<>();
        loading.aboard().stream()
                .sorted((one, other) -> Double.compare(least(one), least(other)))
                .forEach(answer -> alike.computeIfAbsent(aboard(loading, answer, ""), none -> new ArrayList<>())
                        .add(answer));
        boolean none = alike.size() == 1 && loading.aboard().get(0).most().isOver();
        List<String> texts = new ArrayList<>();
        alike.values()
                .forEach(answers -> texts.add(aboard(loading, answers.get(0), none ? " anywhere" : where(answers))));
        if (!none && loading.aboard().stream().noneMatch(RoomTable::isOnRoof)) {
            texts.add(
                    roof.known()
                            ? "on the roof " + (roofOpen ? "not known, at most " : "up to ")
                                    + Digits.quantity(
                                            RoomMeasures.ABOARD.printed(roof.value(), -1), RoomMeasures.ABOARD)
                                    + (roofOpen ? ", missing its limit off the road" : "")
                            : "on the roof not worked out");
        }
        return String.join("; ", texts);
    }

    private static String aboard(InLoading loading, Answer answer, String where) {
        return amount(answer, RoomWords.aboard(loading, answer), where);
    }

    private static String where(List<Answer> answers) {
        return " " + Words.few(answers.stream().map(Answer::subject).toList(), PLACES);
    }

    private static boolean isOnRoof(Answer place) {
        return Stream.of(place.most().steps(), place.most().over(), place.most().unknown())
                .flatMap(List::stream)
                .anyMatch(step -> step.limit() == Limit.ROOF);
    }

    public static double least(Answer answer) {
        Figure atMost = answer.most().atMost();
        return atMost.known() ? atMost.value() : Double.POSITIVE_INFINITY;
    }

    private static String tanks(InLoading loading) {
        if (loading.tanks().isEmpty()) {
            return "";
        }
        List<String> texts = new ArrayList<>();
        List<String> inVain = new ArrayList<>();
        List<String> perhapsInVain = new ArrayList<>();
        int full = 0;
        for (Tank tank : loading.tanks()) {
            if (tank.room().most().isOver()) {
                (tank.room().most().isTooClose() ? perhapsInVain : inVain)
                        .add(tank.fill().subject());
            } else if (isFull(tank)) {
                full++;
            } else {
                texts.add(tank(tank));
            }
        }
        if (!inVain.isEmpty()) {
            texts.add("a limit stays exceeded even with " + String.join(" or ", inVain) + " empty");
        }
        if (!perhapsInVain.isEmpty()) {
            texts.add(TooClose.WORDS + " whether a limit stays exceeded even with " + String.join(" or ", perhapsInVain)
                    + " empty");
        }
        if (full > 0) {
            texts.add(full == loading.tanks().size() ? "each may be full" : "the others may be full");
        }
        return String.join("; ", texts);
    }

    public static boolean isFull(Tank tank) {
        Most most = tank.room().most();
        return most.unknown().isEmpty()
                && most.governs().filter(step -> step.limit() == Limit.FULL).isPresent();
    }

    private static String tank(Tank tank) {
        return tank.fill().subject() + " "
                + amount(tank.fill(), Wording.value(tank.fill().figured().measure()), "")
                + (isUnsure(tank.fill()) ? "" : filled(tank));
    }

    private static String filled(Tank tank) {
        return (tank.share().measure().isKnown()
                        ? ", " + Wording.value(tank.share().measure()) + " full"
                        : "")
                + tank.range()
                        .filter(range -> range.measure().isKnown())
                        .map(range -> ", range then " + RoomWords.about(range) + Wording.value(range.measure()))
                        .orElse("");
    }

    private static String range(InLoading loading) {
        return loading.range()
                .map(range -> range.measure().isKnown()
                        ? RoomWords.about(range) + Wording.within(range.measure()) + " at "
                                + RoomWords.consumption(loading.consumption(), "")
                        : "not known: " + RoomWords.fields(range.measure().missing()))
                .orElse("");
    }

    /**
     * How much, its spread and what governs. By how much a limit is over already stands in the margins.
     *
     * @param much that, where it is known
     * @param where of it, empty or after a space
     */
    private static String amount(Answer answer, String much, String where) {
        Most most = answer.most();
        if (most.isOver()) {
            return "none" + where + " ("
                    + most.over().stream().map(step -> step.limit().words()).collect(Collectors.joining(", "))
                    + (most.isTooClose() ? " over already, " + TooClose.WORDS + ")" : " over already)");
        }
        if (isUnsure(answer)) {
            return "not sure, from none to " + RoomWords.greatest(answer) + by(answer, where);
        }
        return most.unknown().isEmpty()
                ? RoomWords.about(answer.figured())
                        + much
                        + Wording.spread(answer.figured().measure())
                        + by(answer, where)
                : "not known"
                        + (most.atMost().known() ? ", at most " + RoomWords.atMost(answer) + by(answer, where) : where)
                        + ", missing " + RoomWords.fields(most.missing());
    }

    /** Whether the spread is as great as the figure, which then tells no more than how much it may be at the most. */
    private static boolean isUnsure(Answer answer) {
        Figure figure = answer.most().figure();
        return figure.known()
                && !answer.most().isOver()
                && figure.tolerance() > 0
                && figure.tolerance() >= figure.value();
    }

    private static String by(Answer answer, String where) {
        return answer.most()
                .governs()
                .map(step -> where + " (" + step.limit().words() + ")")
                .orElse(where);
    }
}
