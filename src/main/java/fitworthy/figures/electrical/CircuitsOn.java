package fitworthy.figures.electrical;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.measure.Working.Input;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.ElectricalDetails.Battery;
import fitworthy.sheet.Engine;
import fitworthy.sheet.Fitment;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The circuits that are on in a loading and hang on a battery, by that battery, and what is known of the batteries. */
final class CircuitsOn {

    private final Loading loading;
    private final Plan plan;
    private final Inverters inverters;
    private final Feeds feeds;
    /** Those whose part is on, with those of the boards they hang on, and where an inverter feeds them that one too. */
    private final List<Circuit> on;

    CircuitsOn(Loading loading) {
        this.loading = loading;
        this.plan = loading.plan();
        this.inverters = new Inverters(plan);
        this.feeds = new Feeds(plan);
        this.on = plan.sheet().circuits().stream()
                .filter(circuit -> !circuit.isOnShore())
                .filter(circuit -> feeds.way(circuit).noneMatch(each -> loading.isOff(each.part())))
                .filter(this::supplied)
                .toList();
    }

    Loading loading() {
        return loading;
    }

    Plan plan() {
        return plan;
    }

    boolean isOn(Fitment part) {
        return loading.carries(part);
    }

    /** Whether anything hangs on a battery, or may. */
    boolean any() {
        return !on.isEmpty();
    }

    List<Circuit> such(Predicate<Circuit> wanted) {
        return on.stream().filter(wanted).toList();
    }

    /** The circuits that draw by themselves and do not hang on this battery; what charges it does not. */
    List<Circuit> drawing(Circuit.Supply other) {
        return such(
                circuit -> !circuit.battery().is(other) && feeds.behind(circuit).isEmpty() && !charges(circuit));
    }

    /** Whether it is the wire of what charges. */
    boolean charges(Circuit circuit) {
        return Stream.of(Fitment.Kind.CHARGER, Fitment.Kind.SOLAR_PANEL)
                .flatMap(kind -> plan.fitments(kind).stream())
                .anyMatch(charging -> charging.name().equals(circuit.part()));
    }

    /** The circuits that lead to a board and do not hang on this battery. */
    List<Circuit> boards(Circuit.Supply other) {
        return such(circuit ->
                !circuit.battery().is(other) && !feeds.branches(circuit).isEmpty());
    }

    /** A figure of a circuit, or that nobody says which battery it hangs on or whether it is an inverter's feed. */
    Figure onBattery(Circuit circuit, Figure figure) {
        return !circuit.battery().known()
                ? Figure.missing(circuit.battery().missing())
                : inverters.unnamed(circuit).map(Figure::missing).orElse(figure);
    }

    /**
     * Nominal voltage of the starter battery: the sheet's, else the one that all circuits agree on that hang on it or may,
     * as far as these are not of a voltage above extra-low.
     */
    static Figure starterVoltage(Plan plan) {
        Engine engine = plan.vehicle().engine();
        List<Figure> told = plan.sheet().circuits().stream()
                .filter(circuit -> !circuit.battery().is(Circuit.Supply.SECOND))
                .filter(circuit -> !circuit.isMains() && !circuit.isOnShore())
                .map(Circuit::voltage)
                .toList();
        boolean agreed = told.stream().allMatch(Figure::known)
                && told.stream().map(Figure::value).distinct().count() == 1;
        return agreed ? engine.voltage().or(told.get(0)) : engine.voltage();
    }

    /** The second batteries that are on. */
    List<Battery> batteries() {
        return plan.fitments(Fitment.Kind.BATTERY).stream()
                .filter(loading::carries)
                .map(battery -> (Battery) battery.details())
                .toList();
    }

    /** Nominal voltage of the second battery, the lowest where there are several. */
    Figure voltage() {
        return batteries().stream()
                .map(Battery::voltage)
                .reduce(Figure::least)
                .orElse(Figure.missing(
                        new Missing("fitments", "the battery that circuits hang on as a second one", "the plan")));
    }

    /** Capacity of each second battery, Ah. */
    List<Input> capacities() {
        return plan.fitments(Fitment.Kind.BATTERY).stream()
                .filter(loading::carries)
                .map(battery -> in(battery.name(), ((Battery) battery.details()).capacity(), "Ah"))
                .toList();
    }

    /** How the currents of circuits of another voltage than their battery's were converted. */
    Working converted(Circuit.Supply battery) {
        Figure nominal = battery == Circuit.Supply.SECOND ? voltage() : starterVoltage(plan);
        return () -> drawing(battery == Circuit.Supply.SECOND ? Circuit.Supply.STARTER : Circuit.Supply.SECOND).stream()
                .filter(circuit ->
                        circuit.voltage().isAbove(nominal) || circuit.voltage().isBelow(nominal))
                .map(circuit -> circuit.name() + ": "
                        + in("", circuit.current(), "A").shown() + " at "
                        + in("", circuit.voltage(), "V").shown() + " is "
                        + in("", inverters.drawn(circuit, nominal), "A").shown() + " at the battery's "
                        + in("", nominal, "V").shown()
                        + (circuit.isMains()
                                ? " through an inverter that gives "
                                        + in("", inverters.efficiency(circuit), "%")
                                                .shown() + " of what it takes"
                                : ""))
                .toList();
    }

    /** The name of what a feed takes beyond its loads on the sheet. */
    static String beyond(Circuit feed) {
        return feed.name() + ", beyond its loads";
    }

    /** The name of what a circuit takes while nobody uses it. */
    static String standing(Circuit circuit) {
        return circuit.name() + ", standing";
    }

    private boolean supplied(Circuit circuit) {
        List<Fitment> feeding = inverters.feeding(circuit);
        return feeding.isEmpty() || feeding.stream().anyMatch(loading::carries);
    }
}
