package fitworthy.figures.electrical;

import static fitworthy.figures.measure.MeasureKind.lookedUp;
import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.measure.Working.Input;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Circuit;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The voltage that is lost on the way from a battery to each load: in its own cable, or by way of a board in several. */
final class DropMeasures implements Topic {
    private static final MeasureKind DROP_CRITICAL =
            number("electrical.drop-critical", "%", 2, "voltage lost in the cable of a critical load");
    private static final MeasureKind DROP_OTHER = number("electrical.drop-other", "%", 2, "voltage lost in the cable");
    static final MeasureKind SECTION = number("electrical.section", "mm2", 1, "section of its copper");
    private static final MeasureKind SECTION_NEEDED =
            number("electrical.section-needed", "mm2", 1, "section that loses no more voltage than is allowed");
    private static final MeasureKind RUN_LESS =
            number("electrical.run-less", "mm", 0, "by how much a shorter cable loses no more voltage than is allowed");

    private static final MeasureKind WAY_DROP = rated(
            "electrical.way-drop",
            "%",
            2,
            "voltage lost on the whole way from the battery",
            "the most that such a load bears");
    private static final MeasureKind WAY =
            lookedUp("electrical.way", "what it comes by from the battery, each cable with its loss");
    private static final MeasureKind WAY_SUITED =
            lookedUp("electrical.way-cable-and-fuse", "the cable and the fuse that suit the board on its way");
    private static final MeasureKind WAY_BOARD =
            lookedUp("electrical.way-board", "the board on its way whose cable loses most");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                DROP_CRITICAL, DROP_OTHER, SECTION, SECTION_NEEDED, RUN_LESS, WAY_DROP, WAY, WAY_BOARD, WAY_SUITED);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Feeds feeds = new Feeds(plan);
        for (Circuit circuit : plan.sheet().circuits()) {
            // What a board's cable loses is told at what hangs on it, which says how much it bears.
            if (feeds.branches(circuit).isEmpty() && !circuit.isPluggedIn()) {
                List<Circuit> above = feeds.above(circuit);
                if (above.isEmpty()) {
                    drop(plan, feeds, circuit, measures);
                } else {
                    way(plan, feeds, circuit, above, measures);
                }
            }
        }
    }

    /** What a load takes whose cable leads from the battery. */
    private static void drop(Plan plan, Feeds feeds, Circuit circuit, List<Measure> measures) {
        Circuit.Cable cable = circuit.cable();
        Figure share = share(feeds, circuit);
        boolean other = circuit.need().is(Circuit.Need.OTHER);
        Working lost = lost("lost", feeds, circuit);
        if (!other) {
            measures.add(Measure.of(DROP_CRITICAL, circuit.name(), share)
                    .worked(lost, feeds.working(circuit))
                    .given(circuit.need()));
        }
        if (!circuit.need().is(Circuit.Need.CRITICAL)) {
            measures.add(Measure.of(DROP_OTHER, circuit.name(), share)
                    .worked(lost, feeds.working(circuit))
                    .given(circuit.need()));
        }
        measures.add(Measure.of(SECTION, circuit.name(), cable.section()));
        Figure most = most(plan, circuit);
        measures.add(Measure.enough(SECTION_NEEDED, circuit.name(), alone(plan, feeds, circuit))
                .worked(
                        "needed = section x lost / most",
                        in("section", cable.section(), "mm2"),
                        in("lost", share, "%"),
                        in("most", most, "%")));
        Figure less = circuit.need().known()
                ? cable.length()
                        .minus(cable.length().times(most.dividedBy(share)))
                        .most(Figure.of(0, 0))
                : Figure.missing(circuit.need().missing());
        measures.add(Measure.enough(RUN_LESS, circuit.name(), less)
                .worked(
                        "less = max(0, length x (1 - most / lost))",
                        in("length", cable.length(), "mm"),
                        in("most", most, "%"),
                        in("lost", share, "%")));
    }

    /** What a load takes that hangs on a board: the losses of its own cable and of all that lead there. */
    private static void way(Plan plan, Feeds feeds, Circuit circuit, List<Circuit> above, List<Measure> measures) {
        Figure own = share(feeds, circuit);
        List<Input> before = above.stream()
                .map(feed -> in(feed.name(), share(feeds, feed), "%"))
                .toList();
        Figure total = own.plus(Working.total(before));
        Figure most = borne(plan, circuit, total);
        List<Input> losses = Stream.concat(Stream.of(in(circuit.name(), own, "%")), before.stream())
                .toList();
        Measure way = Measure.of(WAY_DROP, circuit.name(), total, most)
                .worked("lost = own + before", in("own", own, "%"), in("before", Working.total(before), "%"))
                .worked(lost("own", feeds, circuit), feeds.working(circuit))
                .worked(before.size() > 1 ? new Working.Sum("before", before) : lost("before", feeds, above.get(0)));
        for (Circuit feed : above) {
            way = way.worked(feeds.working(feed));
        }
        measures.add(way.given(circuit.need()));
        measures.add(Measure.of(
                WAY,
                circuit.name(),
                losses.stream()
                        .map(lost -> percent(lost.figure()) + " to " + lost.name())
                        .collect(Collectors.joining(", ")),
                total.missing()));
        Circuit board = Way.of(plan, feeds, circuit).board;
        CableAndFuse suited = CircuitMeasures.suited(plan, board);
        measures.add(Measure.of(WAY_BOARD, circuit.name(), board.name(), List.of()));
        measures.add(Measure.of(
                        WAY_SUITED,
                        circuit.name(),
                        suited.keepsCable() ? "the planned cable" : suited.words(),
                        List.of())
                .worked(suited.working()));
    }

    /**
     * The least section with which a cable loses no more than what hangs on it bears, m2: that of the sheet where it is thick
     * enough as it is, missing where that is not known.
     */
    static Figure needed(Plan plan, Feeds feeds, Circuit circuit) {
        if (!feeds.branches(circuit).isEmpty()) {
            return plan.sheet().circuits().stream()
                    .filter(load -> feeds.branches(load).isEmpty() && !load.isPluggedIn())
                    .filter(load -> feeds.above(load).contains(circuit))
                    .map(load -> Way.of(plan, feeds, load).sectionOf(circuit))
                    .reduce(circuit.cable().section(), Figure::most);
        }
        return feeds.above(circuit).isEmpty()
                ? alone(plan, feeds, circuit)
                : Way.of(plan, feeds, circuit).sectionOf(circuit);
    }

    /** The least section of a cable that leads from the battery by itself. */
    private static Figure alone(Plan plan, Feeds feeds, Circuit circuit) {
        return circuit.need().known()
                ? circuit.cable().section().times(share(feeds, circuit)).dividedBy(most(plan, circuit))
                : Figure.missing(circuit.need().missing());
    }

    /**
     * The way to a load by a board, of several in a row the one whose cable loses most. That and the load's own cable are
     * thickened until they lose no more than is left for the two: the own one alone where that of the board takes no more than half.
     *
     * @param total what is lost on the whole way
     */
    private record Way(Circuit load, Circuit board, Figure own, Figure boards, Figure total, Figure most) {

        static Way of(Plan plan, Feeds feeds, Circuit load) {
            Figure own = share(feeds, load);
            List<Circuit> above = feeds.above(load);
            Circuit board = above.stream()
                    .max(Comparator.comparing(feed -> share(feeds, feed).value()))
                    .orElseThrow();
            Figure total = above.stream().map(feed -> share(feeds, feed)).reduce(own, Figure::plus);
            return new Way(load, board, own, share(feeds, board), total, borne(plan, load, total));
        }

        /** What a cable on the way, or the load's own, has to be, m2. */
        Figure sectionOf(Circuit circuit) {
            Figure section = circuit.cable().section();
            boolean thickened = circuit.equals(load) || circuit.equals(board) && !alone();
            return total.isAtMost(most) || total.known() && most.known() && !thickened
                    ? section
                    : section.times(factor());
        }

        private boolean alone() {
            return boards.isAtMost(left().times(1 / 2.0));
        }

        private Figure left() {
            return most.minus(total).plus(own).plus(boards);
        }

        private Figure factor() {
            if (left().value() <= 0) {
                // The other boards lose too much by themselves: all are to be thickened.
                return total.dividedBy(most);
            }
            return alone()
                    ? own.dividedBy(left().minus(boards))
                    : own.plus(boards).dividedBy(left());
        }
    }

    private static String percent(Figure share) {
        return String.format(Locale.ROOT, "%.1f %%", share.value() * 100);
    }

    /** What a load bears; missing where nobody says what it is and that decides. */
    private static Figure borne(Plan plan, Circuit circuit, Figure total) {
        Figure critical = plan.practice(PracticeId.ELECTRICAL_DROP_CRITICAL_MOST);
        Figure other = plan.practice(PracticeId.ELECTRICAL_DROP_OTHER_MOST);
        if (circuit.need().known()) {
            return most(plan, circuit);
        }
        return total.isAbove(other)
                ? other
                : total.isAtMost(critical)
                        ? critical
                        : Figure.missing(circuit.need().missing());
    }

    private static Figure most(Plan plan, Circuit circuit) {
        return plan.practice(
                circuit.need().is(Circuit.Need.OTHER)
                        ? PracticeId.ELECTRICAL_DROP_OTHER_MOST
                        : PracticeId.ELECTRICAL_DROP_CRITICAL_MOST);
    }

    /** What the cable of a circuit alone loses of its voltage. */
    private static Figure share(Feeds feeds, Circuit circuit) {
        Circuit.Cable cable = circuit.cable();
        return Cable.drop(cable.length(), feeds.carried(circuit), cable.section(), Cable.temperature(cable.engineBay()))
                .dividedBy(circuit.voltage());
    }

    /** How {@link #share} came about. */
    private static Working lost(String result, Feeds feeds, Circuit circuit) {
        Circuit.Cable cable = circuit.cable();
        return new Working.Formula(
                result + " = 2 x length x current x (1 + 0.00393 x (air - 20)) / 58 / section / voltage",
                List.of(
                        in("length", cable.length(), "m"),
                        in("current", feeds.carried(circuit), "A"),
                        in("air", Cable.temperature(cable.engineBay()), "degC"),
                        in("section", cable.section(), "mm2"),
                        in("voltage", circuit.voltage(), "V")));
    }
}
