package fitworthy.figures.electrical;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.measure.Working.Input;
import fitworthy.figures.plan.Loading;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.ElectricalDetails;
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
 * @param sun charge that the panels give a day, Ah; 0 without panels
 * @param driven charge that the chargers give on a day's drive, Ah; 0 without chargers
 */
public record SecondBattery(
        List<Battery> batteries,
        List<Input> capacities,
        List<Input> drains,
        List<Input> panels,
        List<Input> chargers,
        Figure sun,
        Figure driven) {

    /**
     * The second battery of a loading in which the trip is set out on; nothing where there is none or nothing hangs on
     * it.
     */
    public static Optional<SecondBattery> of(Loading loading) {
        List<Battery> batteries = LoadedCircuits.details(loading, Battery.class);
        List<Circuit> circuits = LoadedCircuits.circuits(loading).stream()
                .filter(circuit -> !circuit.battery().is(Circuit.Supply.STARTER))
                .toList();
        if (!loading.setsOut() || batteries.isEmpty() || circuits.isEmpty()) {
            return Optional.empty();
        }
        Sheet.Trip trip = loading.plan().sheet().trip();
        List<Input> panels = LoadedCircuits.parts(
                loading, ElectricalDetails.SolarPanel.class, ElectricalDetails.SolarPanel::power, "W");
        List<Input> chargers =
                LoadedCircuits.parts(loading, ElectricalDetails.Charger.class, ElectricalDetails.Charger::output, "A");
        Figure sun = panels.isEmpty()
                ? Figure.of(0, 0)
                : BatteryLife.solar(
                        Working.total(panels), trip.sun(), batteries.get(0).voltage());
        Figure driven =
                chargers.isEmpty() ? Figure.of(0, 0) : Working.total(chargers).times(trip.driving());
        return Optional.of(new SecondBattery(
                batteries,
                LoadedCircuits.parts(loading, Battery.class, Battery::capacity, "Ah"),
                circuits.stream()
                        .map(circuit -> in(circuit.name(), daily(circuit), "Ah"))
                        .toList(),
                panels,
                chargers,
                sun,
                driven));
    }

    /** Charge drawn a day, Ah. */
    public Figure drawn() {
        return Working.total(drains);
    }

    /** Ah. */
    public Figure capacity() {
        return Working.total(capacities);
    }

    /** Charge drawn a day from the second battery, Ah; missing where nobody says which battery it hangs on. */
    private static Figure daily(Circuit circuit) {
        return circuit.battery().known()
                ? circuit.current().times(circuit.hours())
                : Figure.missing(circuit.battery().missing());
    }
}
