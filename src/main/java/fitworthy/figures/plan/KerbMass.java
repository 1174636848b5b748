package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.sheet.Tank;
import fitworthy.sheet.Vehicle;

/** The kerb mass as laws on towing count it, in kg: a maker may have counted a driver in it, and a tank not quite full. */
public final class KerbMass {

    private KerbMass() {}

    /** The kerb mass with nobody aboard. */
    public static Figure unoccupied(Plan plan) {
        Vehicle.Masses mass = plan.vehicle().mass();
        return mass.kerb().minus(mass.kerbDriver());
    }

    /** With nobody aboard and the maker's tank full: "kerbside weight" in the United Kingdom, as a trade guide defines it. */
    public static Figure kerbside(Plan plan) {
        return unoccupied(plan).plus(fuelToFill(plan));
    }

    /** What the tank whose fuel is in the kerb mass takes until it is full. */
    public static Figure fuelToFill(Plan plan) {
        Figure left = Figure.of(1, 0).minus(plan.vehicle().mass().kerbFuel());
        Figure fuel = Figure.ZERO;
        for (Tank tank : plan.sheet().tanks()) {
            if (left.value() > 0 && Masses.holdsKerbFuel(plan.sheet(), tank)) {
                fuel = fuel.plus(Liquids.mass(tank, left));
            }
        }
        return fuel;
    }
}
