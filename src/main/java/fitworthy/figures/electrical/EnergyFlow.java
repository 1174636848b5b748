package fitworthy.figures.electrical;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.measure.Working.Input;
import fitworthy.figures.plan.Alternator;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.ElectricalDetails.Charger;
import fitworthy.sheet.Fitment;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The way of the energy while driving: alternator, chargers, second battery, and the sun beside it. Every load is counted
 * once, where it hangs: the feed of a charger is the charger's own input, that of an inverter is what its loads take, and
 * what hangs on the second battery reaches the alternator through the charger alone. Energy is what counts: a current at
 * another voltage than its battery's is that of the same power at the battery's, with an inverter's loss on top; a relay
 * alone passes the current itself. Losses of chargers and batteries are not counted.
 */
final class EnergyFlow {

    private static final Figure NONE = Figure.of(0, 0);

    private final Plan plan;
    private final CircuitsOn circuits;
    private final Inverters inverters;
    private final Feeds feeds;
    /** Chargers without a feed among the circuits, with what is then missing. */
    private final Map<Fitment, Missing> unfed;

    /** The way by the circuits of a loading. */
    EnergyFlow(CircuitsOn circuits) {
        this.plan = circuits.plan();
        this.circuits = circuits;
        this.inverters = new Inverters(plan);
        this.feeds = new Feeds(plan);
        this.unfed = unfed(plan);
    }

    /** The feed, missing, of each charger that the alternator feeds by no circuit of the sheet. */
    static Map<Fitment, Missing> unfed(Plan plan) {
        Map<Fitment, Missing> unfed = new LinkedHashMap<>();
        plan.fitments(Fitment.Kind.CHARGER).stream()
                .filter(EnergyFlow::isDriven)
                .filter(charger -> plan.sheet().circuits().stream()
                        .noneMatch(circuit ->
                                !circuit.isOnShore() && circuit.part().equals(charger.name())))
                .forEach(charger -> unfed.put(
                        charger,
                        new Missing(
                                "circuits",
                                "the circuit that feeds " + charger.name() + ", with that part as its own",
                                "the plan")));
        return unfed;
    }

    /**
     * What the alternator has to give before any charger, in A at its voltage: the vehicle and what runs on. Of a board on
     * which more is on at once than the sheet hangs on it the rest counts beside that.
     */
    List<Input> beforeChargers() {
        List<Input> loads = new ArrayList<>(
                List.of(in("the vehicle itself", plan.vehicle().engine().ownLoad(), "A")));
        circuits.drawing(Circuit.Supply.SECOND)
                .forEach(circuit -> driven(circuit, circuit.name(), circuit.current(), loads));
        circuits.boards(Circuit.Supply.SECOND).forEach(board -> {
            Figure listed = feeds.branches(board).stream().map(this::onBoard).reduce(NONE, Figure::plus);
            DailyUse.beyond(board.current(), listed)
                    .ifPresent(rest -> driven(board, CircuitsOn.beyond(board), rest, loads));
        });
        return loads;
    }

    /** Adds what a circuit takes of the alternator. @param current of it that counts, A at its own voltage */
    private void driven(Circuit circuit, String name, Figure current, List<Input> loads) {
        if (!circuit.driving().is(YesNo.NO)) {
            Figure drawn = inverters.at(circuit, current, CircuitsOn.starterVoltage(plan));
            loads.add(in(
                    name,
                    !circuit.driving().known()
                            ? Figure.missing(circuit.driving().missing())
                            : feedOfCharger(circuit, drawn)
                                    .map(Figure::missing)
                                    .orElse(circuits.onBattery(circuit, drawn)),
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

    /** The most that each charger takes from the alternator, in A: its input, or its feed where that is not given. */
    List<Input> chargerInputs() {
        return chargers(this::input);
    }

    /** All that the alternator has to give, in A. */
    List<Input> onAlternator() {
        List<Input> all = new ArrayList<>(beforeChargers());
        all.addAll(chargerInputs());
        return all;
    }

    /** The share of their input that the hot alternator leaves over for the chargers, 0 to 1. */
    Figure given() {
        Figure asked = Working.total(chargerInputs());
        Figure left = Alternator.hot(plan).minus(Working.total(beforeChargers()));
        if (asked.isZero()) {
            return left.missingWith(asked, NONE);
        }
        return left.most(NONE).dividedBy(asked).least(Figure.of(1, 0));
    }

    /**
     * What each charger gives the second battery at most, in A: never more than the power that it takes, of a relay the
     * current that it takes, and nothing where it stops as the alternator lowers its voltage.
     */
    List<Input> chargerOutputs() {
        return chargers(charger -> FallingVoltage.stops(plan, charger).is(YesNo.YES) ? NONE : output(charger));
    }

    /** The same; where it may stop, nothing. */
    List<Input> sureOutputs() {
        return chargers(charger -> FallingVoltage.stops(plan, charger).is(YesNo.NO) ? output(charger) : NONE);
    }

    /** The same; where it may stop, what is not known to tell. */
    List<Input> toldOutputs() {
        return chargers(charger -> {
            Choice<YesNo> stops = FallingVoltage.stops(plan, charger);
            return !stops.known() ? Figure.missing(stops.missing()) : stops.is(YesNo.YES) ? NONE : output(charger);
        });
    }

    private Figure output(Fitment charger) {
        Charger details = (Charger) charger.details();
        return details.isolator().is(YesNo.YES)
                ? input(charger)
                : details.output().least(taken(charger));
    }

    /** What a charger takes at its input, in A at the voltage of the second battery. */
    Figure taken(Fitment charger) {
        return input(charger).times(CircuitsOn.starterVoltage(plan)).dividedBy(circuits.voltage());
    }

    /** The chargers that are on and fed by the alternator. */
    List<Fitment> chargers() {
        return plan.fitments(Fitment.Kind.CHARGER).stream()
                .filter(charger -> circuits.isOn(charger) && isDriven(charger))
                .toList();
    }

    /**
     * What charges the second battery at once at the most, each in A at its voltage: the sun, and what the alternator or the
     * mains feeds, whichever is more, since nobody drives with the lead plugged in. A charger with an input for the sun too
     * gives no more for that.
     */
    List<Input> charging() {
        List<Input> sun = SunPower.alone(circuits.loading(), circuits.voltage()).stream()
                .map(panel -> in(panel.name(), panel.figure().dividedBy(circuits.voltage()), "A"))
                .toList();
        List<Input> driving = chargers(this::output);
        List<Input> plugged = plan.fitments(Fitment.Kind.CHARGER).stream()
                .filter(charger -> circuits.isOn(charger)
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
     * The feed of a charger, missing, where this circuit may be that feed: no weaker, and of no part but what the charger
     * stands in. It would be counted beside the charger.
     */
    private Optional<Missing> feedOfCharger(Circuit circuit, Figure drawn) {
        return unfed.entrySet().stream()
                .filter(entry -> circuits.isOn(entry.getKey()))
                .filter(entry -> circuit.part().isEmpty()
                        || circuit.part().equals(entry.getKey().in()))
                .filter(entry -> !circuit.shortTime().is(YesNo.YES)
                        && drawn.isAtLeast(((Charger) entry.getKey().details()).input()))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    private Figure input(Fitment charger) {
        Figure stated = ((Charger) charger.details()).input();
        return circuits
                .such(circuit -> circuit.part().equals(charger.name())
                        && circuit.battery().is(Circuit.Supply.STARTER)
                        && PartCurrents.isStrongest(plan, circuit))
                .stream()
                .findFirst()
                .map(feed -> stated.or(inverters.drawn(feed, CircuitsOn.starterVoltage(plan))))
                .filter(Figure::known)
                .orElse(stated);
    }

    /** Whether the alternator feeds a charger, as it does where the sheet does not say. */
    private static boolean isDriven(Fitment charger) {
        return ((Charger) charger.details()).fromAlternator();
    }

    private List<Input> chargers(Function<Fitment, Figure> figure) {
        return chargers().stream()
                .map(charger -> in(charger.name(), figure.apply(charger), "A"))
                .toList();
    }
}
