package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.sheet.MassDetails.ChassisExtension;
import fitworthy.sheet.Point;
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
 */
public record WheelbaseStretch(Figure made, Figure planned, Figure cut, Figure behindCut) {

    static WheelbaseStretch of(Figure before, Figure planned, Optional<ChassisExtension> extension) {
        Figure none = Figure.of(0, 0);
        return new WheelbaseStretch(
                before,
                planned,
                extension.map(ChassisExtension::cut).orElse(none),
                extension.map(ChassisExtension::behindCut).orElse(none));
    }

    /**
     * Where the rear axle's kerb mass {@code R} acts after the cut, in m behind the front axle: the moment of what is
     * behind the cut, {@code B}, grows by {@code B added}, so {@code made + added B / R}. Where {@code B} is not known
     * it lies between the axle's unsprung mass, which is behind any cut, and {@code R} itself, which is more as long as
     * what is ahead of the cut puts no less on the rear axle than what is behind it puts on the front. The middle of
     * the two is taken, with half of what lies between them as its tolerance.
     */
    Figure rearAxleMass(Vehicle vehicle) {
        Figure rear = vehicle.mass().rearAxle();
        double least = vehicle.suspension().rear().unsprung().or(Figure.ZERO).value() / rear.value();
        Figure share =
                behindCut.known() ? behindCut.dividedBy(rear.exact()) : Figure.of((1 + least) / 2, (1 - least) / 2);
        return added().isZero()
                ? planned.exact()
                : made.exact().plus(added().exact().times(share));
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
