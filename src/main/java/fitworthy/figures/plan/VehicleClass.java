package fitworthy.figures.plan;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Vehicle;
import java.util.Locale;
import java.util.Set;

/**
 * The vehicle's class by the Australian letters on the sheet, or its type as an American label has it, as far as rules on
 * tyres and on width differ by it.
 */
public final class VehicleClass {

    private static final FieldSchema CATEGORY = RecordSchema.of(Vehicle.class).field("category");

    private static final Set<String> CARS = Set.of("MA", "CAR", "PASSENGER CAR");
    /** As the question on passenger tyres asks for it, which arises where the law counts these for less. */
    private static final Missing TYPE = new Missing(
            "vehicle.category",
            "its type, as passenger car, MPV or truck",
            "the certification label in the frame of the driver's door");

    private VehicleClass() {}

    /** A passenger car, or a passenger van with its controls ahead. */
    public static boolean passenger(Plan plan) {
        return car(plan) || category(plan).equals("MB");
    }

    /** A car in law everywhere; vans (MB) and the European M1 take in what an American label calls an MPV. */
    private static boolean car(Plan plan) {
        return CARS.contains(category(plan));
    }

    /** An off-road passenger vehicle or one for goods. */
    public static boolean offRoadOrGoods(Plan plan) {
        String category = category(plan);
        return category.equals("MC") || category.startsWith("MD") || category.equals("NA") || category.startsWith("NB");
    }

    /** A vehicle for goods; a truck by an American label. */
    public static boolean goods(Plan plan) {
        String category = category(plan);
        return category.startsWith("N") || category.endsWith("TRUCK");
    }

    /** Whether the sheet gives any class. */
    public static boolean known(Plan plan) {
        return !category(plan).isEmpty();
    }

    /** That the sheet does not give it. */
    public static Missing missing() {
        return CATEGORY.missingIn("vehicle");
    }

    /**
     * Tyres on this vehicle: passenger tyres count in full on a car, and whether it is one is asked where they are such.
     */
    public static PassengerTyres tyres(Plan plan, Choice<YesNo> passenger) {
        Choice<YesNo> less = car(plan)
                ? Choice.yesNo(false)
                : passenger.is(YesNo.YES) && !known(plan) ? Choice.missing(TYPE) : passenger;
        return PassengerTyres.under(plan, less);
    }

    private static String category(Plan plan) {
        return plan.vehicle().category().strip().toUpperCase(Locale.ROOT);
    }
}
