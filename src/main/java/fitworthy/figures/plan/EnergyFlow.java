package fitworthy.figures.plan;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.measure.Working.Input;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.ElectricalDetails.Battery;
import fitworthy.sheet.ElectricalDetails.Charger;
import fitworthy.sheet.ElectricalDetails.Chemistry;
import fitworthy.sheet.Engine;
import fitworthy.sheet.Fitment;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The one way of the energy in a loading: alternator, starter battery, chargers, second battery; the sun beside it.
 * Every load is counted once, where it hangs: the feed of a charger is the charger's own input, that of an inverter is
 * what its loads take, and what hangs on the second battery reaches the alternator through the charger alone. Energy is
 * what counts: a current at another voltage than its battery's is that of the same power at the battery's, with an
 * inverter's loss on top. Losses of chargers and batteries are not counted.
 */
public final class EnergyFlow {

    /** Behind the name of a circuit, in what way it draws while parked. */
    public static final Pattern HOW_PARKED = Pattern.compile(", (?:standing|in use)$");

    private static final Figure NONE = Figure.of(0, 0);

    private final Loading loading;
    private final Plan plan;
    private final Inverters inverters;
    private final Feeds feeds;
    /** Chargers without a feed among the circuits, with what is then missing. */
    private final Map<Fitment, Missing> unfed;
    /** The circuits whose part is on, with those of the boards they hang on, and where an inverter feeds them that one too. */
    private final List<Circuit> on;

    /** The way in one loading. */
    public EnergyFlow(Loading loading) {
        this.loading = loading;
        this.plan = loading.plan();
        this.inverters = new Inverters(plan);
        this.feeds = new Feeds(plan);
        this.unfed = unfed(plan);
        this.on = plan.sheet().circuits().stream()
                .filter(circuit -> feeds.way(circuit)
                        .noneMatch(each -> loading.loadCase().off().contains(each.part())))
                .filter(this::supplied)
                .toList();
    }

    /** What the alternator can be counted on for, hot, in A. */
    public static Figure hot(Plan plan) {
        return plan.practice(PracticeId.ELECTRICAL_ALTERNATOR_MOST)
                .times(plan.vehicle().engine().alternator());
    }

    /** What of that the vehicle itself leaves over, in A; below 0 where it needs more. */
    public static Figure leftByVehicle(Plan plan) {
        return hot(plan).minus(plan.vehicle().engine().ownLoad());
    }

    /** Whether a circuit carries the charge of a charger fed by the alternator, whichever end it is; a wire that starts it does not. */
    public static boolean joinsBatteries(Plan plan, Circuit circuit) {
        return PartCurrents.isStrongest(plan, circuit)
                && plan.fitments(Fitment.Kind.CHARGER).stream()
                        .anyMatch(charger -> charger.name().equals(circuit.part()) && fromAlternator(charger));
    }

    /** The feed, missing, of each charger that the alternator feeds by no circuit of the sheet. */
    public static Map<Fitment, Missing> unfed(Plan plan) {
        Map<Fitment, Missing> unfed = new LinkedHashMap<>();
        plan.fitments(Fitment.Kind.CHARGER).stream()
                .filter(EnergyFlow::fromAlternator)
                .filter(charger -> plan.sheet().circuits().stream()
                        .noneMatch(circuit -> circuit.part().equals(charger.name())))
                .forEach(charger -> unfed.put(
                        charger,
                        new Missing(
                                "circuits",
                                "the circuit that feeds " + charger.name() + ", with that part as its own",
                                "the plan")));
        return unfed;
    }

    /**
     * Nominal voltage of the starter battery: the sheet's, else the one that all circuits agree on that hang on it or may,
     * as far as these are not of a voltage above extra-low.
     */
    public static Figure starterVoltage(Plan plan) {
        Engine engine = plan.vehicle().engine();
        List<Figure> told = plan.sheet().circuits().stream()
                .filter(circuit -> !circuit.battery().is(Circuit.Supply.SECOND))
                .filter(circuit -> !circuit.isMains())
                .map(Circuit::voltage)
                .toList();
        boolean agreed = told.stream().allMatch(Figure::known)
                && told.stream().map(Figure::value).distinct().count() == 1;
        return agreed ? engine.voltage().or(told.get(0)) : engine.voltage();
    }

    /** Whether anything hangs on a battery, or may. */
    public boolean any() {
        return !on.isEmpty();
    }

    /**
     * What the alternator has to give before any charger, in A at its voltage: the vehicle and what runs on. Of a board on
     * which more is on at once than the sheet hangs on it the rest counts beside that.
     */
    public List<Input> beforeChargers() {
        List<Input> loads = new ArrayList<>(
                List.of(in("the vehicle itself", plan.vehicle().engine().ownLoad(), "A")));
        drawing(Circuit.Supply.SECOND).forEach(circuit -> driven(circuit, circuit.name(), circuit.current(), loads));
        boards(Circuit.Supply.SECOND).forEach(board -> {
            Figure listed = feeds.branches(board).stream().map(this::onBoard).reduce(NONE, Figure::plus);
            DailyUse.beyond(board.current(), listed).ifPresent(rest -> driven(board, beyond(board), rest, loads));
        });
        return loads;
    }

    /** Adds what a circuit takes of the alternator. @param current of it that counts, A at its own voltage */
    private void driven(Circuit circuit, String name, Figure current, List<Input> loads) {
        if (!circuit.driving().is(YesNo.NO)) {
            Figure drawn = inverters.at(circuit, current, starterVoltage(plan));
            loads.add(in(
                    name,
                    !circuit.driving().known()
                            ? Figure.missing(circuit.driving().missing())
                            : feedOfCharger(circuit, drawn).map(Figure::missing).orElse(onBattery(circuit, drawn)),
                    "A"));
        }
    }

    /** What a branch takes of its board, in A; of the feed of a charger what that takes. */
    private Figure onBoard(Circuit branch) {
        return chargers().stream()
                .filter(charger -> charger.name().equals(branch.part()))
                .findFirst()
                .map(this::input)
                .orElseGet(() -> feeds.carried(branch));
    }

    private static String beyond(Circuit feed) {
        return feed.name() + ", beyond its loads";
    }

    /** The most that each charger takes from the alternator, in A: its input, or its feed where that is not given. */
    public List<Input> chargerInputs() {
        return chargers(this::input);
    }

    /** All that the alternator has to give, in A. */
    public List<Input> onAlternator() {
        List<Input> all = new ArrayList<>(beforeChargers());
        all.addAll(chargerInputs());
        return all;
    }

    /** The share of their input that the hot alternator leaves over for the chargers, 0 to 1. */
    public Figure given() {
        Figure asked = Working.total(chargerInputs());
        Figure left = hot(plan).minus(Working.total(beforeChargers()));
        if (asked.isZero()) {
            return left.missingWith(asked, NONE);
        }
        return left.most(NONE).dividedBy(asked).least(Figure.of(1, 0));
    }

    /**
     * What each charger gives the second battery at most, in A: never more than the power that it takes, and nothing where
     * it stops as the alternator lowers its voltage.
     */
    public List<Input> chargerOutputs() {
        return chargers(charger -> FallingVoltage.stops(plan, charger).is(YesNo.YES) ? NONE : output(charger));
    }

    /** The same; where it may stop, nothing. */
    public List<Input> sureOutputs() {
        return chargers(charger -> FallingVoltage.stops(plan, charger).is(YesNo.NO) ? output(charger) : NONE);
    }

    /** The same; where it may stop, what is not known to tell. */
    public List<Input> toldOutputs() {
        return chargers(charger -> {
            Choice<YesNo> stops = FallingVoltage.stops(plan, charger);
            return !stops.known() ? Figure.missing(stops.missing()) : stops.is(YesNo.YES) ? NONE : output(charger);
        });
    }

    private Figure output(Fitment charger) {
        Charger details = (Charger) charger.details();
        Figure taken = taken(charger);
        return details.isolator().is(YesNo.YES) ? taken : details.output().least(taken);
    }

    /** What a charger takes at its input, in A at the voltage of the second battery. */
    public Figure taken(Fitment charger) {
        return input(charger).times(starterVoltage(plan)).dividedBy(voltage());
    }

    /** The chargers that are on and fed by the alternator. */
    public List<Fitment> chargers() {
        return plan.fitments(Fitment.Kind.CHARGER).stream()
                .filter(charger -> loading.carries(charger) && fromAlternator(charger))
                .toList();
    }

    /**
     * What takes from the starter battery while the vehicle is parked, each as the mean over a day in A: what is used with
     * the engine off, and the standing draw of the rest of the day. A charger works while the engine runs.
     */
    public List<Input> parked() {
        List<Input> loads = new ArrayList<>(
                List.of(in("the vehicle itself", plan.vehicle().engine().ownStandby(), "A")));
        Map<Circuit, Figure> used = new LinkedHashMap<>();
        DailyUse daily = new DailyUse(plan, starterVoltage(plan));
        drawing(Circuit.Supply.SECOND).forEach(circuit -> used.put(circuit, usedParked(circuit, daily.of(circuit))));
        boards(Circuit.Supply.SECOND)
                .forEach(board -> daily.beyondLoads(board).ifPresent(rest -> used.put(board, usedParked(board, rest))));
        circuits(circuit -> !circuit.battery().is(Circuit.Supply.SECOND)
                        && !inverters.isCarried(circuit)
                        && (circuit.standby().known() || feeds.branches(circuit).isEmpty()))
                .forEach(circuit -> daily.standing(circuit, used.getOrDefault(circuit, NONE))
                        .ifPresent(charge ->
                                loads.add(in(standing(circuit), onBattery(circuit, DailyUse.mean(charge)), "A"))));
        used.forEach((circuit, mean) -> {
            if (!mean.isZero()) {
                loads.add(in(circuit.name() + ", in use", onBattery(circuit, mean), "A"));
            }
        });
        return loads;
    }

    /** Whether any circuit hangs on the starter battery, or may. */
    public boolean onStarter() {
        return !circuits(circuit -> !circuit.battery().is(Circuit.Supply.SECOND))
                .isEmpty();
    }

    /** The second batteries that are on. */
    public List<Battery> batteries() {
        return plan.fitments(Fitment.Kind.BATTERY).stream()
                .filter(loading::carries)
                .map(battery -> (Battery) battery.details())
                .toList();
    }

    /** Nominal voltage of the second battery, the lowest where there are several. */
    public Figure voltage() {
        return batteries().stream()
                .map(Battery::voltage)
                .reduce(Figure::least)
                .orElse(Figure.missing(
                        new Missing("fitments", "the battery that circuits hang on as a second one", "the plan")));
    }

    /**
     * What charges the second battery at once at the most, each in A at its voltage: the sun, and what the alternator or the
     * mains feeds, whichever is more, since nobody drives with the lead plugged in. A charger with an input for the sun too
     * gives no more for that.
     */
    public List<Input> charging() {
        List<Input> sun = SunPower.alone(loading, voltage()).stream()
                .map(panel -> in(panel.name(), panel.figure().dividedBy(voltage()), "A"))
                .toList();
        List<Input> driving = chargers(this::output);
        List<Input> plugged = plan.fitments(Fitment.Kind.CHARGER).stream()
                .filter(charger -> loading.carries(charger)
                        && ((Charger) charger.details()).fedBy().is(Charger.Source.MAINS))
                .map(charger -> in(charger.name(), ((Charger) charger.details()).output(), "A"))
                .toList();
        boolean less = Working.total(plugged).isAtMost(Working.total(driving));
        boolean more = Working.total(plugged).isAbove(Working.total(driving));
        return Stream.of(sun, more ? List.<Input>of() : driving, less ? List.<Input>of() : plugged)
                .flatMap(List::stream)
                .toList();
    }

    /**
     * What the second battery gives with all that hangs on it switched on, each in A at its voltage; of a board what is on
     * there at once, of an inverter no less than it takes at full power, also where its feed is not on the sheet unless its
     * loads hang on the starter battery. What draws for less than a minute is left out.
     */
    public List<Input> atOnce() {
        return atOnce(new Feeds(plan, lowest())::drawn);
    }

    /** The least that {@link #atOnce} can be together, by what is known of it, in A. */
    public Figure leastAtOnce() {
        return atOnce(new Feeds(plan, lowest())::leastDrawn).stream()
                .map(Input::figure)
                .filter(Figure::known)
                .reduce(Figure.ZERO, Figure::plus);
    }

    /** @param carried what a circuit takes, A at its own voltage */
    private List<Input> atOnce(Function<Circuit, Figure> carried) {
        List<Fitment> unfedInverters = inverters.unfed().stream()
                .filter(loading::carries)
                .filter(inverter -> inverters.loads(inverter).stream()
                        .noneMatch(load -> load.battery().is(Circuit.Supply.STARTER)))
                .toList();
        List<Input> drawn = new ArrayList<>();
        circuits(circuit -> !circuit.battery().is(Circuit.Supply.STARTER)
                        && feeds.above(circuit).isEmpty()
                        && !inverters.isCarried(circuit)
                        && inverters.feeding(circuit).stream().noneMatch(unfedInverters::contains)
                        && !circuit.shortTime().is(YesNo.YES)
                        && !charges(circuit))
                .forEach(circuit -> drawn.add(in(
                        circuit.name(),
                        onBattery(circuit, inverters.at(circuit, carried.apply(circuit), voltage())),
                        "A")));
        unfedInverters.forEach(inverter -> drawn.add(in(
                inverter.name(),
                feedOfInverter(inverter).map(Figure::missing).orElseGet(() -> fullPower(inverter)),
                "A")));
        return drawn;
    }

    /** What an inverter takes of the second battery at full power, in A. */
    private Figure fullPower(Fitment inverter) {
        return inverters.atFullPower(inverter, lowest().times(voltage()));
    }

    /**
     * The voltage at which the second battery gives an inverter its full power, as a share of its nominal one: a lithium
     * battery holds that until it is nearly empty.
     */
    private Figure lowest() {
        return batteries().stream().allMatch(battery -> battery.chemistry().is(Chemistry.LITHIUM))
                ? Figure.of(1, 0)
                : plan.practice(PracticeId.ELECTRICAL_INVERTER_LOWEST);
    }

    /**
     * The circuit that may feed an inverter of which no circuit is the feed: of no part, and taking at least half of its full
     * power. It would be counted beside the inverter.
     */
    private Optional<Missing> feedOfInverter(Fitment inverter) {
        Figure half = fullPower(inverter).times(0.5);
        return circuits(circuit -> !circuit.isMains()
                        && circuit.part().isEmpty()
                        && !circuit.battery().is(Circuit.Supply.STARTER)
                        && !circuit.shortTime().is(YesNo.YES)
                        && feeds.branches(circuit).isEmpty()
                        && inverters.drawn(circuit, voltage()).isAtLeast(half))
                .stream()
                .findFirst()
                .map(circuit -> new Missing(
                        "circuits",
                        "whether " + circuit.name() + " feeds " + inverter.name()
                                + ", with that part as its own then, or the circuit that does",
                        "the plan"));
    }

    /** Capacity of each second battery, Ah. */
    public List<Input> capacities() {
        return plan.fitments(Fitment.Kind.BATTERY).stream()
                .filter(loading::carries)
                .map(battery -> in(battery.name(), ((Battery) battery.details()).capacity(), "Ah"))
                .toList();
    }

    /** What counts of the power of the panels, W. */
    public List<Input> panels() {
        return SunPower.counted(loading, voltage());
    }

    /**
     * Charge that each circuit draws from the second battery a day, Ah at the battery's voltage. Of a feed that by its own
     * hours carries more than the loads on the sheet the rest counts beside them, and the standing draw of the rest of the
     * day where the sheet gives one.
     */
    public List<Input> drains() {
        DailyUse daily = new DailyUse(plan, voltage());
        List<Input> drains = new ArrayList<>();
        Map<Circuit, Figure> used = new LinkedHashMap<>();
        drawing(Circuit.Supply.STARTER).forEach(circuit -> {
            used.put(circuit, daily.of(circuit));
            drains.add(in(circuit.name(), onBattery(circuit, used.get(circuit)), "Ah"));
        });
        List<Circuit> onSecond = circuits(circuit -> circuit.battery().is(Circuit.Supply.SECOND));
        onSecond.forEach(feed -> daily.beyondLoads(feed).ifPresent(rest -> {
            used.put(feed, rest);
            drains.add(in(beyond(feed), rest, "Ah"));
        }));
        onSecond.stream()
                .filter(circuit -> circuit.standby().value() > 0 && !daily.isReadAtFeed(circuit))
                .forEach(circuit -> daily.standing(circuit, used.getOrDefault(circuit, NONE))
                        .ifPresent(charge -> drains.add(in(standing(circuit), charge, "Ah"))));
        return drains;
    }

    /** How the currents of circuits of another voltage than their battery's were converted. */
    public Working converted(Circuit.Supply battery) {
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

    /**
     * The feed of a charger, missing, where this circuit may be that feed: no weaker, and of no part but what the charger
     * stands in. It would be counted beside the charger.
     */
    private Optional<Missing> feedOfCharger(Circuit circuit, Figure drawn) {
        return unfed.entrySet().stream()
                .filter(entry -> loading.carries(entry.getKey()))
                .filter(entry -> circuit.part().isEmpty()
                        || circuit.part().equals(entry.getKey().in()))
                .filter(entry -> !circuit.shortTime().is(YesNo.YES)
                        && drawn.isAtLeast(((Charger) entry.getKey().details()).input()))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** The mean over a day in A of what a circuit takes with the engine off. @param daily Ah */
    private Figure usedParked(Circuit circuit, Figure daily) {
        if (circuit.shortTime().is(YesNo.YES) || circuit.parked().is(YesNo.NO)) {
            return NONE;
        }
        Figure mean = DailyUse.mean(daily);
        boolean used = circuit.parked().is(YesNo.YES)
                || circuit.driving().is(YesNo.NO)
                || circuit.hours().isZero()
                || circuit.hours().isAbove(plan.sheet().trip().driving());
        return used ? mean : Figure.missing(circuit.parked().missing());
    }

    private static String standing(Circuit circuit) {
        return circuit.name() + ", standing";
    }

    /** A figure of a circuit, or that nobody says which battery it hangs on or whether it is an inverter's feed. */
    private Figure onBattery(Circuit circuit, Figure figure) {
        return !circuit.battery().known()
                ? Figure.missing(circuit.battery().missing())
                : inverters.unnamed(circuit).map(Figure::missing).orElse(figure);
    }

    private Figure input(Fitment charger) {
        Figure stated = ((Charger) charger.details()).input();
        return circuits(circuit -> circuit.part().equals(charger.name())
                        && circuit.battery().is(Circuit.Supply.STARTER)
                        && PartCurrents.isStrongest(plan, circuit))
                .stream()
                .findFirst()
                .map(feed -> stated.or(inverters.drawn(feed, starterVoltage(plan))))
                .filter(Figure::known)
                .orElse(stated);
    }

    /** Whether the alternator feeds a charger, as it does where the sheet does not say. */
    public static boolean fromAlternator(Fitment charger) {
        return ((Charger) charger.details()).fromAlternator();
    }

    private List<Input> chargers(Function<Fitment, Figure> figure) {
        return chargers().stream()
                .map(charger -> in(charger.name(), figure.apply(charger), "A"))
                .toList();
    }

    /** The circuits that draw by themselves and do not hang on this battery; what charges it does not. */
    private List<Circuit> drawing(Circuit.Supply other) {
        return circuits(
                circuit -> !circuit.battery().is(other) && feeds.behind(circuit).isEmpty() && !charges(circuit));
    }

    /** Whether it is the wire of what charges. */
    private boolean charges(Circuit circuit) {
        return Stream.of(Fitment.Kind.CHARGER, Fitment.Kind.SOLAR_PANEL)
                .flatMap(kind -> plan.fitments(kind).stream())
                .anyMatch(charging -> charging.name().equals(circuit.part()));
    }

    /** The circuits that lead to a board and do not hang on this battery. */
    private List<Circuit> boards(Circuit.Supply other) {
        return circuits(circuit ->
                !circuit.battery().is(other) && !feeds.branches(circuit).isEmpty());
    }

    private List<Circuit> circuits(Predicate<Circuit> wanted) {
        return on.stream().filter(wanted).toList();
    }

    private boolean supplied(Circuit circuit) {
        List<Fitment> feeding = inverters.feeding(circuit);
        return feeding.isEmpty() || feeding.stream().anyMatch(loading::carries);
    }
}
