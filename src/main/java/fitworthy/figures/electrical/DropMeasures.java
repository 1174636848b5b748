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
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The voltage that is lost on the way from a battery to each load: in its own cable, or by way of a board in several. */
final class DropMeasures implements Topic {
    private static final MeasureKind DROP_CRITICAL =
            number("electrical.drop-critical", "%", 2, "voltage lost in the cable of a critical load");
    private static final MeasureKind DROP_OTHER = number("electrical.drop-other", "%", 2, "voltage lost in the cable");
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
                DROP_CRITICAL,
                DROP_OTHER,
                Losses.SECTION,
                SECTION_NEEDED,
                RUN_LESS,
                WAY_DROP,
                WAY,
                WAY_BOARD,
                WAY_SUITED);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Feeds feeds = new Feeds(plan);
        Losses losses = new Losses(plan, feeds);
        for (Circuit circuit : plan.sheet().circuits()) {
            // What a board's cable loses is told at what hangs on it, which says how much it bears.
            if (feeds.branches(circuit).isEmpty() && !circuit.isPluggedIn()) {
                List<Circuit> above = feeds.above(circuit);
                if (above.isEmpty()) {
                    drop(plan, feeds, losses, circuit, measures);
                } else {
                    way(plan, feeds, losses, circuit, above, measures);
                }
            }
        }
    }

    /** What a load takes whose cable leads from the battery. */
    private static void drop(Plan plan, Feeds feeds, Losses losses, Circuit circuit, List<Measure> measures) {
        Circuit.Cable cable = circuit.cable();
        boolean other = circuit.need().is(Circuit.Need.OTHER);
        if (!other) {
            lost(
                    DROP_CRITICAL,
                    plan.practice(PracticeId.ELECTRICAL_DROP_CRITICAL_MOST),
                    feeds,
                    losses,
                    circuit,
                    measures);
        }
        if (!circuit.need().is(Circuit.Need.CRITICAL)) {
            lost(DROP_OTHER, plan.practice(PracticeId.ELECTRICAL_DROP_OTHER_MOST), feeds, losses, circuit, measures);
        }
        Figure share = losses.of(circuit, Losses.warmest(circuit));
        measures.add(Measure.of(Losses.SECTION, circuit.name(), cable.section()));
        Figure most = losses.most(circuit);
        measures.add(Measure.enough(SECTION_NEEDED, circuit.name(), losses.sectionAlone(circuit))
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

    private static void lost(
            MeasureKind kind, Figure most, Feeds feeds, Losses losses, Circuit circuit, List<Measure> measures) {
        Figure air = losses.air(circuit, most);
        Figure share = losses.of(circuit, air);
        measures.add(Measure.of(kind, circuit.name(), share)
                .worked(losses.working("lost", circuit, air), feeds.working(circuit))
                .given(circuit.need())
                .asLeast(!circuit.cable().engineBay().known() && share.isAbove(most)));
    }

    /** What a load takes that hangs on a board: the losses of its own cable and of all that lead there. */
    private static void way(
            Plan plan, Feeds feeds, Losses losses, Circuit circuit, List<Circuit> above, List<Measure> measures) {
        Figure own = losses.of(circuit);
        List<Input> before = above.stream()
                .map(feed -> in(feed.name(), losses.of(feed), "%"))
                .toList();
        Figure total = own.plus(Working.total(before));
        Figure most = losses.borne(circuit, total);
        List<Input> each = Stream.concat(Stream.of(in(circuit.name(), own, "%")), before.stream())
                .toList();
        Measure way = Measure.of(WAY_DROP, circuit.name(), total, most)
                .worked("lost = own + before", in("own", own, "%"), in("before", Working.total(before), "%"))
                .worked(losses.working("own", circuit), feeds.working(circuit))
                .worked(before.size() > 1 ? new Working.Sum("before", before) : losses.working("before", above.get(0)));
        for (Circuit feed : above) {
            way = way.worked(feeds.working(feed));
        }
        measures.add(way.given(circuit.need()));
        measures.add(Measure.of(
                WAY,
                circuit.name(),
                each.stream()
                        .map(lost -> percent(lost.figure()) + " to " + lost.name())
                        .collect(Collectors.joining(", ")),
                total.missing()));
        Circuit board = losses.board(circuit);
        CableAndFuse suited = CircuitMeasures.suited(plan, board);
        measures.add(Measure.of(WAY_BOARD, circuit.name(), board.name(), List.of()));
        measures.add(Measure.of(
                        WAY_SUITED,
                        circuit.name(),
                        suited.keepsCable() ? "the planned cable" : suited.words(),
                        List.of())
                .worked(suited.working()));
    }

    private static String percent(Figure share) {
        return String.format(Locale.ROOT, "%.1f %%", share.value() * 100);
    }
}
