package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.sheet.LowPoint;
import fitworthy.sheet.Point;
import fitworthy.sheet.SuspensionDetails.Springs;
import fitworthy.sheet.TyreDetails.Tyres;
import fitworthy.sheet.VehicleEnd;

/**
 * Where a low place of the vehicle is once what is planned has lifted and lengthened it. Spacers under the body raise no
 * frame and nothing on it, and so do not count.
 *
 * @param x behind the front axle, m
 * @param height over the ground, m
 * @param growth of the tyres' diameter by what is planned, m
 * @param lift by planned springs there, m
 */
public record LowPlace(Figure x, Figure height, Figure growth, Figure lift) {

    public static LowPlace of(Plan plan, LowPoint point) {
        Figure none = Figure.of(0, 0);
        Figure x = plan.stretch()
                .moved(new Point(point.x(), Figure.ZERO, point.z()), false)
                .x();
        Figure growth = plan.toBeDone(Tyres.class).isEmpty() ? none : plan.tyreGrowth();
        Figure front = lift(plan, VehicleEnd.FRONT);
        Figure rear = lift(plan, VehicleEnd.REAR);
        Figure lift = front.isZero() && rear.isZero()
                ? none
                : front.plus(rear.minus(front).times(x.dividedBy(plan.wheelbase())));
        return new LowPlace(x, point.z().plus(growth.times(0.5)).plus(lift), growth, lift);
    }

    /** Whether planned tyres or springs raise it. */
    public boolean isRaised() {
        return !growth.isZero() || !lift.isZero();
    }

    private static Figure lift(Plan plan, VehicleEnd end) {
        return plan.toBeDone(Springs.class).stream()
                .filter(springs -> springs.end().is(end))
                .findFirst()
                .map(Springs::lift)
                .orElse(Figure.of(0, 0));
    }
}
