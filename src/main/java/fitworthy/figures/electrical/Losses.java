package fitworthy.figures.electrical;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Circuit;
import java.util.Comparator;
import java.util.List;

/** What cables lose of their voltage, how much a load bears, and how thick they have to be for that. */
final class Losses {

    static final MeasureKind SECTION = number("electrical.section", "mm2", 1, "section of its copper");

    private final Plan plan;
    private final Feeds feeds;

    Losses(Plan plan, Feeds feeds) {
        this.plan = plan;
        this.feeds = feeds;
    }

    /** What the cable of a circuit alone loses of its voltage. */
    Figure of(Circuit circuit) {
        return of(circuit, Cable.temperature(circuit.cable().engineBay()));
    }

    /** The same in air of this heat, degC. */
    Figure of(Circuit circuit, Figure air) {
        Circuit.Cable cable = circuit.cable();
        return Cable.drop(cable.length(), feeds.carried(circuit), cable.section(), air)
                .dividedBy(circuit.voltage());
    }

    /** The heat of the air around a cable, degC; where nobody says where it lies that which decides, missing where none does. */
    Figure air(Circuit circuit, Figure most) {
        Figure cool = air(circuit, YesNo.NO);
        Figure hot = warmest(circuit);
        return of(circuit, cool).isAbove(most)
                ? cool
                : of(circuit, hot).isAtMost(most)
                        ? hot
                        : Cable.temperature(circuit.cable().engineBay());
    }

    /** The same; where nobody says where it lies as hot as it can be. */
    static Figure warmest(Circuit circuit) {
        return air(circuit, YesNo.YES);
    }

    private static Figure air(Circuit circuit, YesNo otherwise) {
        Choice<YesNo> engineBay = circuit.cable().engineBay();
        return Cable.temperature(engineBay.known() ? engineBay : Choice.of(otherwise));
    }

    /** How that came about. */
    Working working(String result, Circuit circuit) {
        return working(result, circuit, Cable.temperature(circuit.cable().engineBay()));
    }

    Working working(String result, Circuit circuit, Figure air) {
        Circuit.Cable cable = circuit.cable();
        return new Working.Formula(
                result + " = 2 x length x current x (1 + 0.00393 x (air - 20)) / 58 / section / voltage",
                List.of(
                        in("length", cable.length(), "m"),
                        in("current", feeds.carried(circuit), "A"),
                        in("air", air, "degC"),
                        in("section", cable.section(), "mm2"),
                        in("voltage", circuit.voltage(), "V")));
    }

    /** The most that what hangs on a circuit bears; where nobody says what that is as little as a critical load. */
    Figure most(Circuit circuit) {
        return plan.practice(
                circuit.need().is(Circuit.Need.OTHER)
                        ? PracticeId.ELECTRICAL_DROP_OTHER_MOST
                        : PracticeId.ELECTRICAL_DROP_CRITICAL_MOST);
    }

    /** What a load bears; missing where nobody says what it is and that decides. @param total what is lost on its way */
    Figure borne(Circuit circuit, Figure total) {
        Figure critical = plan.practice(PracticeId.ELECTRICAL_DROP_CRITICAL_MOST);
        Figure other = plan.practice(PracticeId.ELECTRICAL_DROP_OTHER_MOST);
        if (circuit.need().known()) {
            return most(circuit);
        }
        return total.isAbove(other)
                ? other
                : total.isAtMost(critical)
                        ? critical
                        : Figure.missing(circuit.need().missing());
    }

    /**
     * The least section with which a cable loses no more than what hangs on it bears, m2: that of the sheet where it is thick
     * enough as it is, missing where that is not known.
     */
    Figure sectionNeeded(Circuit circuit) {
        if (!feeds.branches(circuit).isEmpty()) {
            return plan.sheet().circuits().stream()
                    .filter(load -> feeds.branches(load).isEmpty() && !load.isPluggedIn())
                    .filter(load -> feeds.above(load).contains(circuit))
                    .map(load -> way(load).sectionOf(circuit))
                    .reduce(circuit.cable().section(), Figure::most);
        }
        return feeds.above(circuit).isEmpty()
                ? sectionAlone(circuit)
                : way(circuit).sectionOf(circuit);
    }

    /** The least section of a cable that leads from the battery by itself, m2, in the warmest air that may be around it. */
    Figure sectionAlone(Circuit circuit) {
        return circuit.need().known()
                ? circuit.cable().section().times(of(circuit, warmest(circuit))).dividedBy(most(circuit))
                : Figure.missing(circuit.need().missing());
    }

    /** Of the boards on the way to a load the one whose cable loses most. */
    Circuit board(Circuit load) {
        return feeds.above(load).stream()
                .max(Comparator.comparing(feed -> of(feed).value()))
                .orElseThrow();
    }

    private Way way(Circuit load) {
        Figure own = of(load);
        Circuit board = board(load);
        Figure total = feeds.above(load).stream().map(this::of).reduce(own, Figure::plus);
        return new Way(load, board, own, of(board), total, borne(load, total));
    }

    /**
     * The way to a load by a board, of several in a row the one whose cable loses most. That and the load's own cable are
     * thickened until they lose no more than is left for the two: the own one alone where that of the board takes no more than half.
     *
     * @param total what is lost on the whole way
     */
    private record Way(Circuit load, Circuit board, Figure own, Figure boards, Figure total, Figure most) {

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
}
