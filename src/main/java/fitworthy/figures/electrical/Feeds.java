package fitworthy.figures.electrical;

import fitworthy.figures.measure.Working;
import fitworthy.figures.measure.Working.Input;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.ElectricalDetails.Charger;
import fitworthy.sheet.Fitment;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Circuits that feed others: the cable to a distribution board, with the circuits that hang on it, and that of an
 * {@link Inverters inverter}. Feed and loads are one thing: a feed carries what its loads take and draws nothing beside
 * them.
 */
final class Feeds {

    private final Plan plan;
    private final List<Circuit> circuits;
    private final Inverters inverters;
    private final PartCurrents parts;
    private final Figure lowest;

    /** Those of a plan, at the lowest voltage that its inverters work at. */
    Feeds(Plan plan) {
        this(plan, plan.practice(PracticeId.ELECTRICAL_INVERTER_LOWEST));
    }

    /** Those of a plan. @param lowest voltage at which inverters take their full power, as a share of the nominal one */
    Feeds(Plan plan, Figure lowest) {
        this.plan = plan;
        this.circuits = plan.sheet().circuits();
        this.inverters = new Inverters(plan);
        this.parts = new PartCurrents(plan, lowest);
        this.lowest = lowest;
    }

    /** What hangs on a circuit and on no other below it; none where it feeds a load alone. */
    List<Circuit> behind(Circuit circuit) {
        List<Circuit> branches = branches(circuit);
        return branches.isEmpty() ? inverters.behind(circuit) : branches;
    }

    /** The circuits that hang on the board to which one leads. */
    List<Circuit> branches(Circuit circuit) {
        return circuits.stream()
                .filter(branch -> branch.board().equals(circuit.name()))
                .toList();
    }

    /** The circuits that one comes by to the battery, the nearest first. */
    List<Circuit> above(Circuit circuit) {
        return circuit.above(circuits).toList();
    }

    /**
     * What a circuit's cable has to carry, in A: its own current, as a feed no less than the largest of its loads, and no less
     * than its part takes or gives by a figure of its own. A board's own is what is on there at once; where that is not
     * given, all that hangs on it, or what is charged through it where that is more.
     */
    Figure carried(Circuit circuit) {
        return carried(circuit, this::alone);
    }

    /** The least that {@link #carried} can be, by what is known of it: of an inverter's feed the largest of its loads, in A. */
    Figure least(Circuit circuit) {
        return carried(circuit, this::leastAlone);
    }

    /** What a circuit takes of its battery, in A: what it carries without what is charged through it. */
    Figure drawn(Circuit circuit) {
        return drawn(circuit, this::alone);
    }

    /** The least that {@link #drawn} can be, in A. */
    Figure leastDrawn(Circuit circuit) {
        return drawn(circuit, this::leastAlone);
    }

    private Figure carried(Circuit circuit, Function<Circuit, Figure> alone) {
        return branches(circuit).isEmpty()
                ? alone.apply(circuit)
                : drawn(circuit, alone).most(given(circuit, alone));
    }

    private Figure drawn(Circuit circuit, Function<Circuit, Figure> alone) {
        List<Circuit> branches = branches(circuit);
        if (branches.isEmpty()) {
            return gives(circuit) ? Figure.ZERO : alone.apply(circuit);
        }
        Stream<Figure> loads = branches.stream().map(branch -> drawn(branch, alone));
        return circuit.current().known()
                ? loads.reduce(circuit.current(), Figure::most)
                : loads.reduce(Figure.ZERO, Figure::plus);
    }

    /** What is charged through a board at once: by the sun, and by alternator or mains, whichever is more. */
    private Figure given(Circuit board, Function<Circuit, Figure> alone) {
        Figure driving = given(board, alone, this::isDriven);
        Figure plugged = given(board, alone, this::isPlugged);
        return given(board, alone, circuit -> !isDriven(circuit) && !isPlugged(circuit))
                .plus(driving.most(plugged));
    }

    private Figure given(Circuit board, Function<Circuit, Figure> alone, Predicate<Circuit> wanted) {
        return circuits.stream()
                .filter(circuit -> gives(circuit) && wanted.test(circuit))
                .filter(circuit -> above(circuit).contains(board))
                .map(alone)
                .reduce(Figure.ZERO, Figure::plus);
    }

    /** The circuits that {@link #given} counts of a board. */
    private List<Circuit> charging(Circuit board) {
        boolean plugged = given(board, this::alone, this::isPlugged).isAbove(given(board, this::alone, this::isDriven));
        return circuits.stream()
                .filter(circuit -> gives(circuit) && above(circuit).contains(board))
                .filter(circuit -> plugged ? !isDriven(circuit) : !isPlugged(circuit))
                .toList();
    }

    /** Whether a circuit brings charge to the battery that it hangs on; a charger's feed on the starter battery takes it. */
    boolean gives(Circuit circuit) {
        return !circuit.isOnShore()
                && (plan.fitments(Fitment.Kind.SOLAR_PANEL).stream()
                                .anyMatch(panel -> panel.name().equals(circuit.part()))
                        || isOfCharger(
                                circuit,
                                charger -> !charger.fromAlternator()
                                        || circuit.battery().is(Circuit.Supply.SECOND)));
    }

    private boolean isDriven(Circuit circuit) {
        return isOfCharger(circuit, Charger::fromAlternator);
    }

    private boolean isPlugged(Circuit circuit) {
        return isOfCharger(circuit, charger -> charger.fedBy().is(Charger.Source.MAINS));
    }

    private boolean isOfCharger(Circuit circuit, Predicate<Charger> such) {
        return plan.fitments(Fitment.Kind.CHARGER).stream()
                .anyMatch(part -> part.name().equals(circuit.part()) && such.test((Charger) part.details()));
    }

    /** What a circuit carries on which no other hangs. */
    private Figure alone(Circuit circuit) {
        Figure own = parts.carried(circuit);
        return inverters.isFeed(circuit) ? own.most(inverters.carried(circuit, atLowest(circuit))) : own;
    }

    private Figure leastAlone(Circuit circuit) {
        return alone(circuit)
                .or(inverters.isFeed(circuit) ? inverters.least(circuit, atLowest(circuit)) : circuit.current())
                .or(Figure.ZERO);
    }

    /** The voltage at which an inverter takes most of its feed, in V. */
    private Figure atLowest(Circuit feed) {
        return lowest.times(feed.voltage());
    }

    /** How {@link #carried} came about; nothing where it is the circuit's own current. */
    Working working(Circuit circuit) {
        return () -> {
            List<Circuit> branches = branches(circuit);
            if (!branches.isEmpty() && !circuit.current().known()) {
                boolean charged = given(circuit, this::alone).isAbove(drawn(circuit));
                List<Input> summed = (charged ? charging(circuit) : branches)
                        .stream()
                                .filter(each -> gives(each) == charged)
                                .map(each -> Working.in(each.name(), charged ? alone(each) : drawn(each), "A"))
                                .toList();
                return new Working.Sum("current", summed).lines();
            }
            List<Circuit> loads = branches.isEmpty() ? inverters.sure(circuit) : branches;
            Stream<String> ofLoads = inputs(loads, circuit).stream()
                    .map(load -> load.name() + " takes " + load.shown() + " of " + circuit.name()
                            + ", itself given as "
                            + Working.in("", circuit.current(), "A").shown() + "; the largest counts");
            return Stream.concat(parts.working(circuit).lines().stream(), ofLoads)
                    .toList();
        };
    }

    private List<Input> inputs(List<Circuit> loads, Circuit feed) {
        return loads.stream()
                .map(load -> Working.in(
                        load.name(), load.isMains() ? inverters.drawn(load, atLowest(feed)) : carried(load), "A"))
                .toList();
    }

    /** A circuit and those that it comes by. */
    Stream<Circuit> way(Circuit circuit) {
        return Stream.concat(Stream.of(circuit), circuit.above(circuits));
    }
}
