package fitworthy.figures.electrical;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working.Input;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.ElectricalDetails.Chemistry;
import fitworthy.sheet.Fitment;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What is taken of the second battery, at once and in a day. */
final class SecondDraw {

    private static final Figure NONE = Figure.of(0, 0);

    private final Plan plan;
    private final CircuitsOn circuits;
    private final Inverters inverters;
    private final Feeds feeds;
    /** The voltage at which the battery gives an inverter its full power, as a share of its nominal one. */
    private final Figure lowest;

    SecondDraw(CircuitsOn circuits) {
        this.plan = circuits.plan();
        this.circuits = circuits;
        this.inverters = new Inverters(plan);
        this.lowest = lowest(circuits);
        this.feeds = new Feeds(plan, lowest);
    }

    /**
     * What the second battery gives with all that hangs on it switched on, each in A at its voltage; of a board what is on
     * there at once, of an inverter no less than it takes at full power, also where its feed is not on the sheet unless its
     * loads hang on the starter battery. What draws for less than a minute is left out.
     */
    List<Input> atOnce() {
        return atOnce(feeds::drawn);
    }

    /** The least that {@link #atOnce} can be together, by what is known of it, in A. */
    Figure leastAtOnce() {
        return atOnce(feeds::leastDrawn).stream()
                .map(Input::figure)
                .filter(Figure::known)
                .reduce(Figure.ZERO, Figure::plus);
    }

    /** @param carried what a circuit takes, A at its own voltage */
    private List<Input> atOnce(Function<Circuit, Figure> carried) {
        List<Fitment> unfedInverters = inverters.unfed().stream()
                .filter(circuits::isOn)
                .filter(inverter -> inverters.loads(inverter).stream()
                        .filter(load -> inverters.feeder(load).isPresent())
                        .noneMatch(load -> load.battery().is(Circuit.Supply.STARTER)))
                .toList();
        List<Input> drawn = new ArrayList<>();
        circuits.such(circuit -> !circuit.battery().is(Circuit.Supply.STARTER)
                        && feeds.above(circuit).isEmpty()
                        && !inverters.isCarried(circuit)
                        && inverters.feeding(circuit).stream().noneMatch(unfedInverters::contains)
                        && !circuit.shortTime().is(YesNo.YES)
                        && !circuits.charges(circuit))
                .forEach(circuit -> drawn.add(in(
                        circuit.name(),
                        circuits.onBattery(circuit, inverters.at(circuit, carried.apply(circuit), circuits.voltage())),
                        "A")));
        unfedInverters.forEach(inverter -> drawn.add(in(
                inverter.name(),
                feedOfInverter(inverter).map(Figure::missing).orElseGet(() -> fullPower(inverter)),
                "A")));
        return drawn;
    }

    /** What an inverter takes of the second battery at full power, in A. */
    private Figure fullPower(Fitment inverter) {
        return inverters.atFullPower(inverter, lowest.times(circuits.voltage()));
    }

    /** A lithium battery holds its voltage until it is nearly empty. */
    private static Figure lowest(CircuitsOn circuits) {
        return circuits.batteries().stream()
                        .allMatch(battery -> battery.chemistry().is(Chemistry.LITHIUM))
                ? Figure.of(1, 0)
                : circuits.plan().practice(PracticeId.ELECTRICAL_INVERTER_LOWEST);
    }

    /**
     * The circuit that may feed an inverter of which no circuit is the feed: of no part, and taking a good part of its full
     * power. It would be counted beside the inverter.
     */
    private Optional<Missing> feedOfInverter(Fitment inverter) {
        Figure much = fullPower(inverter).times(circuits.plan().practice(PracticeId.ELECTRICAL_FEED_SHARE));
        return circuits
                .such(circuit -> !circuit.isMains()
                        && circuit.part().isEmpty()
                        && !circuit.battery().is(Circuit.Supply.STARTER)
                        && !circuit.shortTime().is(YesNo.YES)
                        && feeds.branches(circuit).isEmpty()
                        && inverters.drawn(circuit, circuits.voltage()).isAtLeast(much))
                .stream()
                .findFirst()
                .map(circuit -> new Missing(
                        "circuits",
                        "whether " + circuit.name() + " feeds " + inverter.name()
                                + ", with that part as its own then, or the circuit that does",
                        "the plan"));
    }

    /**
     * Charge that each circuit draws from the second battery a day, Ah at the battery's voltage. Of a feed that by its own
     * hours carries more than the loads on the sheet the rest counts beside them, and the standing draw of the rest of the
     * day where the sheet gives one.
     */
    List<Input> drains() {
        DailyUse daily = new DailyUse(plan, circuits.voltage());
        List<Input> drains = new ArrayList<>();
        Map<Circuit, Figure> used = new LinkedHashMap<>();
        circuits.drawing(Circuit.Supply.STARTER).forEach(circuit -> {
            used.put(circuit, daily.of(circuit));
            drains.add(in(circuit.name(), circuits.onBattery(circuit, used.get(circuit)), "Ah"));
        });
        List<Circuit> onSecond = circuits.such(circuit -> circuit.battery().is(Circuit.Supply.SECOND));
        onSecond.forEach(feed -> daily.beyondLoads(feed).ifPresent(rest -> {
            used.put(feed, rest);
            drains.add(in(CircuitsOn.beyond(feed), rest, "Ah"));
        }));
        onSecond.stream()
                .filter(circuit -> circuit.standby().value() > 0 && !daily.isReadAtFeed(circuit))
                .forEach(circuit -> daily.standing(circuit, used.getOrDefault(circuit, NONE))
                        .ifPresent(charge -> drains.add(in(CircuitsOn.standing(circuit), charge, "Ah"))));
        return drains;
    }
}
