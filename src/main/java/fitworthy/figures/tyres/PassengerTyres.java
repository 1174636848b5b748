package fitworthy.figures.tyres;

import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;

/** Passenger tyres on what is no car, where the law counts them for less than their index. */
final class PassengerTyres {

    private PassengerTyres() {}

    /** Whether such tyres would count for less on this vehicle. */
    static boolean countForLess(Plan plan) {
        return plan.practice(PracticeId.TYRES_PASSENGER_DIVISOR).known() && !VehicleClass.car(plan);
    }

    /**
     * What tyres count for, kg. Where class or kind of tyre is not known, it is asked only if the load passes what they
     * would count for at least.
     *
     * @param carried by the load index, kg
     * @param load on them, kg
     */
    static Figure counted(Plan plan, Choice<YesNo> passenger, Figure carried, Figure load) {
        if (!countForLess(plan) || passenger.is(YesNo.NO)) {
            return carried;
        }
        Figure less = carried.dividedBy(plan.practice(PracticeId.TYRES_PASSENGER_DIVISOR));
        boolean sure = VehicleClass.known(plan) && passenger.known();
        if (sure || !load.isAbove(less)) {
            return less;
        }
        return load.isAbove(carried)
                ? carried
                : Figure.missing(passenger.known() ? VehicleClass.missing() : passenger.missing());
    }
}
