package fitworthy.figures.electrical;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working.Input;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Circuit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** What takes from the starter battery while the vehicle is parked. */
final class ParkedDraw {

    /** Behind the name of a circuit, in what way it draws while parked. */
    static final Pattern HOW_PARKED = Pattern.compile(", (?:standing|in use)$");

    private static final Figure NONE = Figure.of(0, 0);

    private final Plan plan;
    private final CircuitsOn circuits;
    private final Inverters inverters;
    private final Feeds feeds;

    ParkedDraw(CircuitsOn circuits) {
        this.plan = circuits.plan();
        this.circuits = circuits;
        this.inverters = new Inverters(plan);
        this.feeds = new Feeds(plan);
    }

    /** Whether any circuit hangs on the starter battery, or may. */
    boolean isAny() {
        return !circuits.such(circuit -> !circuit.battery().is(Circuit.Supply.SECOND))
                .isEmpty();
    }

    /**
     * Each as the mean over a day in A: what is used with the engine off, and the standing draw of the rest of the day. A
     * charger works while the engine runs.
     */
    List<Input> each() {
        List<Input> loads = new ArrayList<>(
                List.of(in("the vehicle itself", plan.vehicle().engine().ownStandby(), "A")));
        Map<Circuit, Figure> used = new LinkedHashMap<>();
        DailyUse daily = new DailyUse(plan, CircuitsOn.starterVoltage(plan));
        circuits.drawing(Circuit.Supply.SECOND)
                .forEach(circuit -> used.put(circuit, usedParked(circuit, daily.of(circuit))));
        circuits.boards(Circuit.Supply.SECOND)
                .forEach(board -> daily.beyondLoads(board).ifPresent(rest -> used.put(board, usedParked(board, rest))));
        circuits.such(circuit -> !circuit.battery().is(Circuit.Supply.SECOND)
                        && !inverters.isCarried(circuit)
                        && (circuit.standby().known() || feeds.branches(circuit).isEmpty()))
                .forEach(circuit -> daily.standing(circuit, used.getOrDefault(circuit, NONE))
                        .ifPresent(charge -> loads.add(in(
                                CircuitsOn.standing(circuit),
                                circuits.onBattery(circuit, DailyUse.mean(charge)),
                                "A"))));
        used.forEach((circuit, mean) -> {
            if (!mean.isZero()) {
                loads.add(in(circuit.name() + ", in use", circuits.onBattery(circuit, mean), "A"));
            }
        });
        return loads;
    }

    /** The mean over a day in A of what a circuit takes with the engine off. @param daily Ah */
    private Figure usedParked(Circuit circuit, Figure daily) {
        if (circuit.shortTime().is(YesNo.YES)) {
            return NONE;
        }
        boolean longer = circuit.hours().isAbove(plan.sheet().trip().driving());
        if (circuit.parked().is(YesNo.NO)) {
            return longer ? Figure.missing(untrue(circuit)) : NONE;
        }
        boolean used = longer
                || circuit.parked().is(YesNo.YES)
                || circuit.driving().is(YesNo.NO)
                || circuit.hours().isZero();
        return used ? DailyUse.mean(daily) : Figure.missing(circuit.parked().missing());
    }

    /** What runs for longer a day than is driven is used with the engine off, though its sheet says that it is not. */
    private static Missing untrue(Circuit circuit) {
        return new Missing(
                "circuits." + circuit.name() + ".parked",
                "whether it is used with the engine off, as it runs for more hours a day than are driven",
                "the plan");
    }
}
