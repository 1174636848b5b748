package fitworthy.figures.recovery;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.FrontDetails.Winch;
import fitworthy.sheet.Point;
import fitworthy.sheet.RecoveryDetails.Held;
import fitworthy.sheet.RecoveryDetails.Shackles;
import fitworthy.sheet.VehicleEnd;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the parts of a winch's rigging bear when the strongest winch of the plan pulls at its rating. A line round a
 * block pulls on it from both sides: block, shackle, strap and tree bear it twice, friction left out, and the point
 * that holds its end bears it once. From the balance of forces with both parts of the line in parallel, which is the
 * most it can be.
 *
 * @param pull rated pull of the winch, kg
 * @param doubled whether a pulley block is planned
 */
record Rigging(Figure pull, boolean doubled) {

    /** What a block bears over the pull of the line. */
    private static final double BOTH_SIDES = 2;

    /** With the strongest winch; nothing where none is planned. */
    static Optional<Rigging> of(Plan plan) {
        return strongest(plan, plan.fitments(Fitment.Kind.WINCH).stream());
    }

    /** The rigging that a point of the vehicle holds the end of: only a line that is doubled comes back to it. */
    static Optional<Rigging> endingAt(VehicleEnd end, Plan plan) {
        return strongest(
                        plan,
                        plan.fitments(Fitment.Kind.WINCH).stream()
                                .filter(winch ->
                                        end == VehicleEnd.REAR ? mayBeAtRear(winch, plan) : !atRear(winch, plan)))
                .filter(Rigging::doubled);
    }

    private static Optional<Rigging> strongest(Plan plan, Stream<Fitment> winches) {
        return winches.map(winch -> ((Winch) winch.details()).pull())
                .reduce(Figure::most)
                .map(pull -> new Rigging(
                        pull, !plan.fitments(Fitment.Kind.PULLEY_BLOCK).isEmpty()));
    }

    /** Winches sit at the front unless the sheet places one behind the middle of the wheelbase. */
    private static boolean atRear(Fitment winch, Plan plan) {
        return along(winch, plan).filter(x -> x.isAbove(middle(plan))).isPresent();
    }

    /** Also where the wheelbase is not known, and so its middle. */
    private static boolean mayBeAtRear(Fitment winch, Plan plan) {
        return along(winch, plan).filter(x -> !x.isAtMost(middle(plan))).isPresent();
    }

    /** Where it is along the vehicle; empty where the sheet does not say. */
    private static Optional<Figure> along(Fitment winch, Plan plan) {
        return plan.places().of(winch).map(Point::x);
    }

    private static Figure middle(Plan plan) {
        return plan.wheelbase().times(0.5);
    }

    /** At the block and what it hangs on, or at the far end of a single line, kg. */
    Figure farEnd() {
        return doubled ? pull.times(BOTH_SIDES) : pull;
    }

    /** At these shackles, kg; where the sheet does not say what they hold, at the block. */
    Figure at(Shackles shackles) {
        return once(shackles) ? pull : farEnd();
    }

    /** How {@link #at} or a GVM that is more came about. */
    Working held(Shackles shackles, Figure gvm) {
        return new Working.Formula(
                once(shackles) || !doubled ? "held = max(GVM, pull)" : "held = max(GVM, 2 x pull)",
                List.of(in("GVM", gvm, "kg"), in("pull", pull, "kg")));
    }

    /** How {@link #farEnd} came about. */
    Working borne() {
        return new Working.Formula(doubled ? "held = 2 x pull" : "held = pull", List.of(in("pull", pull, "kg")));
    }

    private static boolean once(Shackles shackles) {
        return shackles.holds().is(Held.LINE_END);
    }
}
