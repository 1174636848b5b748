package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.sheet.Tank;
import fitworthy.sheet.Vehicle;

/**
 * The vehicle unladen as laws on towing count it, in kg: with what is to be built onto it to stay, and without what comes off
 * for that. A maker may have counted a driver in the kerb mass, and a tank not quite full.
 */
public final class KerbMass {

    private KerbMass() {}

    /** With nobody aboard, and as much fuel as the kerb mass has. */
    public static Figure unladen(Plan plan) {
        Vehicle.Masses mass = plan.vehicle().mass();
        return mass.kerb().minus(mass.kerbDriver()).plus(builtOn(plan));
    }

    /** The same with the maker's tank full: "kerbside weight" by regulation 3(2) in the United Kingdom. */
    public static Figure kerbside(Plan plan) {
        return unladen(plan).plus(fuelToFill(plan));
    }

    /** What parts that stay on add to the kerb mass, less what they replace. */
    public static Figure builtOn(Plan plan) {
        return Masses.addedToKerb(plan);
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
