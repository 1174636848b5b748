package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.sheet.MassDetails.ChassisExtension;
import fitworthy.sheet.Point;
import fitworthy.sheet.Rails;
import fitworthy.sheet.Vehicle;
import java.util.Optional;

/**
 * What a longer wheelbase moves: the frame is cut between the axles, and all behind the cut goes back with the rear
 * axle. Plain moments; see docs/method.md.
 *
 * @param made wheelbase of the vehicle as weighed, with what is done to it, m
 * @param planned wheelbase after, m
 * @param cut where the frame is cut, behind the front axle, m; missing where not known
 * @param behindCut kerb mass behind the cut, rear axle included, kg; missing where not known
 * @param unsettled how much more or less either axle may bear for want of that, kg; nothing where it is known
 */
public record WheelbaseStretch(Figure made, Figure planned, Figure cut, Figure behindCut, Figure unsettled) {

    /** What is behind the cut is what the sheet says of the rails there, where it says no more. */
    static WheelbaseStretch of(Figure made, Figure planned, Optional<ChassisExtension> extension, Vehicle vehicle) {
        Figure none = Figure.of(0, 0);
        Figure added = planned.minus(made);
        Figure cut = extension.map(ChassisExtension::cut).orElse(none);
        Figure said = extension.map(ChassisExtension::behindCut).orElse(none);
        Figure behind = vehicle.rails()
                .filter(rails -> isAt(cut, added, rails))
                .map(rails -> said.or(rails.behind()))
                .orElse(said);
        Figure unsettled = behind.known() || added.isZero()
                ? none
                : added.times(between(vehicle).tolerance()).dividedBy(planned).exact();
        return new WheelbaseStretch(made, planned, cut, behind, unsettled);
    }

    /** How much of the kerb mass is behind the place of the rails that the sheet names; at the cut that behind it. */
    public Figure behind(Rails rails) {
        return isAt(cut, added(), rails) ? rails.behind().or(behindCut) : rails.behind();
    }

    /** Between both sides of the cut there is nothing that was weighed. */
    private static boolean isAt(Figure cut, Figure added, Rails rails) {
        return rails.at().isAtLeast(cut) && rails.at().isAtMost(cut.plus(added));
    }

    /**
     * Where the rear axle's kerb mass {@code R} acts after the cut, in m behind the front axle: the moment of what is
     * behind the cut, {@code B}, grows by {@code B added}, so {@code made + added B / R}. Where {@code B} is not known
     * it lies between the axle's unsprung mass, which is behind any cut, and {@code R} itself, which is more as long as
     * what is ahead of the cut puts no less on the rear axle than what is behind it puts on the front. The middle of
     * the two is taken, with half of what lies between them as its tolerance.
     */
    Figure rearAxleMass(Vehicle vehicle) {
        Figure behind = behindCut.or(between(vehicle));
        return added().isZero()
                ? planned.exact()
                : made.exact()
                        .plus(added().exact()
                                .times(behind.dividedBy(
                                        vehicle.mass().rearAxle().exact())));
    }

    /** From the least to the most that can be behind the cut, in kg. */
    private static Figure between(Vehicle vehicle) {
        Figure most = vehicle.mass().rearAxle();
        double least = vehicle.suspension().rear().unsprung().or(Figure.ZERO).value();
        return most.missingWith(most, Figure.of((most.value() + least) / 2, (most.value() - least) / 2));
    }

    /** The load on an axle as it is held against a limit; missing where it hangs on what is behind the cut. */
    public Figure against(Figure load, Figure limit) {
        return settled(load, unsettled, limit);
    }

    /** The load on an axle with as much more as it may be for want of what is behind the cut: for that, parts are chosen. */
    public Figure most(Figure load) {
        return load.plus(unsettled);
    }

    /**
     * A figure that is held against a limit; missing what is behind the cut, where with one answer it would pass the limit
     * and with another not.
     *
     * @param within how much more or less it may be for want of that answer
     */
    public Figure settled(Figure figure, Figure within, Figure limit) {
        return !within.isZero()
                        && figure.minus(within).isAtMost(limit)
                        && figure.plus(within).isAbove(limit)
                ? Figure.missing(behindCut.missing())
                : figure;
    }

    /**
     * Where what sat at a place of the vehicle as made would sit after the cut.
     *
     * @param onAxles whether it stands on the axles, as wheels and springs do, so that it keeps its share of each
     */
    Point moved(Point before, boolean onAxles) {
        return added().isZero()
                ? before
                : new Point(onAxles ? onAxles(before.x()) : along(before.x()), before.y(), before.z());
    }

    private Figure onAxles(Figure x) {
        return x.times(planned.value() / made.value());
    }

    /** Where the cut is not known, what sat between the axles has moved or has not. */
    private Figure along(Figure x) {
        Figure back = x.plus(added().exact());
        if (x.isAtLeast(made) || cut.known() && x.isAtLeast(cut)) {
            return back;
        }
        double half = added().value() / 2;
        return cut.known() || x.value() <= 0 ? x : Figure.of(x.value() + half, Math.hypot(x.tolerance(), half));
    }

    private Figure added() {
        return planned.minus(made);
    }
}
