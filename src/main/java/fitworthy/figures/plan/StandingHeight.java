package fitworthy.figures.plan;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.quantity.Figure;
import fitworthy.sheet.SuspensionDetails.BodyLift;
import fitworthy.sheet.SuspensionDetails.Springs;
import fitworthy.sheet.Vehicle;
import fitworthy.sheet.VehicleEnd;
import java.util.List;

/**
 * How high the vehicle as made has its centre of gravity over one axle once it is lifted: {@code bare + growth / 2 + (springs +
 * body) x (1 - unsprung / axle)}. Larger tyres raise all of it by their radius, springs and body spacers what stands on them.
 * Without the unsprung mass all of it counts as sprung, which is the higher. Derived from the mean of the masses.
 */
public record StandingHeight(Figure bare, Figure growth, Figure lift, Figure sprung) {

    /** Of one end of a vehicle as planned. Heights in m, {@code sprung} as a share of what is on the axle. */
    public static StandingHeight of(Plan plan, VehicleEnd end) {
        boolean front = end == VehicleEnd.FRONT;
        Vehicle.Masses mass = plan.vehicle().mass();
        Vehicle.Suspension suspension = plan.vehicle().suspension();
        Figure unsprung =
                (front ? suspension.front() : suspension.rear()).unsprung().or(Figure.of(0, 0));
        Figure springs = plan.details(Springs.class).stream()
                .filter(fitted -> fitted.end().is(end))
                .findFirst()
                .map(Springs::lift)
                .orElse(Figure.of(0, 0));
        return new StandingHeight(
                mass.cogHeight(),
                plan.tyreGrowth(),
                plan.details(BodyLift.class).stream().map(BodyLift::lift).reduce(springs, Figure::plus),
                Figure.of(1, 0).minus(unsprung.dividedBy(front ? mass.frontAxle() : mass.rearAxle())));
    }

    /** In m. */
    public Figure height() {
        return bare.plus(growth.times(0.5)).plus(lift.isZero() ? lift : lift.times(sprung));
    }

    /**
     * How much higher something of the vehicle as made then sits, m: between the axles by how far back it is.
     *
     * @param unsprung the part of it that the springs do not carry, 0 to 1
     */
    static Figure raised(Plan plan, Figure x, double unsprung) {
        Figure front = of(plan, VehicleEnd.FRONT).lift;
        Figure rear = of(plan, VehicleEnd.REAR).lift;
        Figure lift = front.isZero() && rear.isZero()
                ? front
                : front.plus(rear.minus(front).times(x.dividedBy(plan.wheelbase())));
        return plan.tyreGrowth().times(0.5).plus(lift.times(1 - unsprung));
    }

    /** How it came about. @param axle what the formula calls it */
    public Working working(String axle) {
        return new Working.Formula(
                axle + " = bare + growth / 2 + lift x sprung",
                List.of(
                        in("bare", bare, "mm"),
                        in("growth", growth, "mm"),
                        in("lift", lift, "mm"),
                        in("sprung", sprung, "%"),
                        in(axle, height(), "mm")));
    }
}
