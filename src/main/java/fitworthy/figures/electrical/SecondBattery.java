package fitworthy.figures.electrical;

import fitworthy.figures.measure.Working;
import fitworthy.figures.measure.Working.Input;
import fitworthy.figures.plan.Loading;
import fitworthy.quantity.Figure;
import fitworthy.sheet.ElectricalDetails.Battery;
import fitworthy.sheet.Sheet;
import java.util.List;
import java.util.Optional;

/**
 * What a day of the trip takes from the second battery and puts back.
 *
 * @param batteries the batteries that count as one
 * @param capacities of each battery, Ah
 * @param drains charge that each circuit draws a day, Ah
 * @param panels rated power of each solar panel, W
 * @param chargers what each charger gives at most, A
 * @param given share of their input that the alternator leaves over for the chargers; 1 without chargers
 * @param sun charge that the panels give a day, Ah; 0 without panels
 * @param driven charge that the chargers give on a day's drive, Ah; 0 without chargers
 */
public record SecondBattery(
        List<Battery> batteries,
        List<Input> capacities,
        List<Input> drains,
        List<Input> panels,
        List<Input> chargers,
        Figure given,
        Figure sun,
        Figure driven) {

    /**
     * The second battery of a loading in which the trip is set out on; nothing where there is none or nothing hangs on
     * it.
     */
    public static Optional<SecondBattery> of(Loading loading) {
        CircuitsOn circuits = new CircuitsOn(loading);
        return of(circuits, new EnergyFlow(circuits));
    }

    /** The same. @param way of the current in these circuits */
    static Optional<SecondBattery> of(CircuitsOn circuits, EnergyFlow way) {
        Loading loading = circuits.loading();
        List<Input> drains = new SecondDraw(circuits).drains();
        if (!loading.setsOut() || circuits.batteries().isEmpty() || drains.isEmpty()) {
            return Optional.empty();
        }
        Sheet.Trip trip = loading.plan().sheet().trip();
        List<Input> panels = SunPower.counted(loading, circuits.voltage());
        boolean none = way.chargers().isEmpty();
        Figure given = none ? Figure.of(1, 0) : way.given();
        Figure sun = panels.isEmpty()
                ? Figure.of(0, 0)
                : BatteryLife.solar(Working.total(panels), trip.sun(), circuits.voltage());
        List<Input> chargers = outputs(way, Working.total(drains).minus(sun), given.times(trip.driving()));
        Figure driven =
                none ? Figure.of(0, 0) : Working.total(chargers).times(given).times(trip.driving());
        return Optional.of(new SecondBattery(
                circuits.batteries(), circuits.capacities(), drains, panels, chargers, given, sun, driven));
    }

    /**
     * What each charger gives. Whether one may stop is asked only where it decides: not where the rest is enough, nor where
     * all together are too little.
     *
     * @param needed of them a day, Ah
     * @param hours for which they give it
     */
    private static List<Input> outputs(EnergyFlow way, Figure needed, Figure hours) {
        List<Input> most = way.chargerOutputs();
        List<Input> sure = way.sureOutputs();
        return needed.isAbove(Working.total(most).times(hours))
                ? most
                : needed.isAtMost(Working.total(sure).times(hours)) ? sure : way.toldOutputs();
    }

    /** Charge drawn a day, Ah. */
    public Figure drawn() {
        return Working.total(drains);
    }

    /** Ah. */
    public Figure capacity() {
        return Working.total(capacities);
    }
}
