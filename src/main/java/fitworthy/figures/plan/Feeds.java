package fitworthy.figures.plan;

import fitworthy.figures.measure.Working;
import fitworthy.figures.measure.Working.Input;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Circuit;
import java.util.List;
import java.util.stream.Stream;

/**
 * Circuits that feed others: the cable to a distribution board, with the circuits that hang on it, and that of an
 * {@link Inverters inverter}. Feed and loads are one thing: a feed carries what its loads take and draws nothing beside
 * them.
 */
public final class Feeds {

    private final List<Circuit> circuits;
    private final Inverters inverters;
    private final PartCurrents parts;

    /** Those of a plan. */
    public Feeds(Plan plan) {
        this.circuits = plan.sheet().circuits();
        this.inverters = new Inverters(plan);
        this.parts = new PartCurrents(plan);
    }

    /** What hangs on a circuit and on no other below it; none where it feeds a load alone. */
    public List<Circuit> behind(Circuit circuit) {
        List<Circuit> branches = branches(circuit);
        return branches.isEmpty() ? inverters.behind(circuit) : branches;
    }

    /** The circuits that hang on the board to which one leads. */
    public List<Circuit> branches(Circuit circuit) {
        return circuits.stream()
                .filter(branch -> branch.board().equals(circuit.name()))
                .toList();
    }

    /** The circuits that one comes by to the battery, the nearest first. */
    public List<Circuit> above(Circuit circuit) {
        return circuit.above(circuits).toList();
    }

    /**
     * What a circuit's cable has to carry, in A: its own current, as a feed no less than the largest of its loads, and no less
     * than its part takes or gives by a figure of its own. A board's own is what is on there at once; where that is not
     * given, all that hangs on it.
     */
    public Figure carried(Circuit circuit) {
        List<Circuit> branches = branches(circuit);
        if (branches.isEmpty()) {
            Figure own = parts.carried(circuit);
            return inverters.isFeed(circuit) ? own.most(inverters.carried(circuit)) : own;
        }
        List<Figure> loads = branches.stream().map(this::carried).toList();
        return circuit.current().known()
                ? loads.stream().reduce(circuit.current(), Figure::most)
                : loads.stream().reduce(Figure.ZERO, Figure::plus);
    }

    /** The least that {@link #carried} can be: of an inverter's feed the largest of its loads that are known, in A. */
    public Figure least(Circuit circuit) {
        return branches(circuit).isEmpty() && inverters.isFeed(circuit) ? inverters.least(circuit) : carried(circuit);
    }

    /** How {@link #carried} came about; nothing where it is the circuit's own current. */
    public Working working(Circuit circuit) {
        return () -> {
            List<Circuit> branches = branches(circuit);
            if (!branches.isEmpty() && !circuit.current().known()) {
                return new Working.Sum("current", inputs(branches, circuit)).lines();
            }
            List<Circuit> loads = behind(circuit);
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
                        load.name(), load.isMains() ? inverters.drawn(load, feed.voltage()) : carried(load), "A"))
                .toList();
    }

    /** A circuit and those that it comes by. */
    Stream<Circuit> way(Circuit circuit) {
        return Stream.concat(Stream.of(circuit), circuit.above(circuits));
    }
}
