package fitworthy.figures.electrical;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.ElectricalDetails.Charger;
import fitworthy.sheet.ElectricalDetails.Inverter;
import fitworthy.sheet.ElectricalDetails.SolarPanel;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.FrontDetails.Winch;
import fitworthy.sheet.RadioDetails.Radio;
import java.util.List;

/**
 * What goes through a circuit by a figure that its part has of its own: what a charger takes or gives, a winch draws,
 * an inverter takes at full power, panels give and a radio at least needs to send. Of several circuits of a part on one battery the strongest is meant; the others start or switch it.
 */
final class PartCurrents {

    private final Plan plan;
    private final Figure lowest;

    /** @param lowest voltage at which inverters take their full power, as a share of the nominal one */
    PartCurrents(Plan plan, Figure lowest) {
        this.plan = plan;
        this.lowest = lowest;
    }

    /** Whether no other circuit of its part on its battery is stronger; not where it is of mains voltage. */
    static boolean isStrongest(Plan plan, Circuit circuit) {
        return !circuit.isMains()
                && plan.sheet().circuits().stream()
                        .filter(other -> !other.isMains()
                                && other.part().equals(circuit.part())
                                && other.battery().value() == circuit.battery().value())
                        .noneMatch(other -> other.current().isAbove(circuit.current()));
    }

    /** What a circuit's cable has to carry, in A: its own current, and no less than its part sends through it. */
    Figure carried(Circuit circuit) {
        Figure larger = circuit.current().most(ofPart(circuit));
        return larger.isAbove(circuit.current()) && !circuit.battery().known()
                ? Figure.missing(circuit.battery().missing())
                : larger;
    }

    /** How {@link #carried} came about, where its part decides. */
    Working working(Circuit circuit) {
        return () -> {
            Figure ofPart = ofPart(circuit);
            return ofPart.isAbove(circuit.current())
                    ? List.of("by its own figures " + circuit.part() + " sends "
                            + Working.in("", ofPart, "A").shown() + " through " + circuit.name() + ", itself given as "
                            + Working.in("", circuit.current(), "A").shown() + "; the larger counts")
                    : List.of();
        };
    }

    /** Nothing where its part has no such figure, or the circuit is not the one that carries it. */
    private Figure ofPart(Circuit circuit) {
        return plan.sheet().fitments().stream()
                .filter(part -> part.name().equals(circuit.part()) && isStrongest(plan, circuit))
                .map(part -> current(part, circuit))
                .findFirst()
                .orElse(Figure.ZERO);
    }

    private Figure current(Fitment part, Circuit circuit) {
        if (part.details() instanceof Winch winch) {
            return stated(winch.current());
        }
        if (part.details() instanceof Radio radio) {
            return stated(radio.power()).dividedBy(circuit.voltage());
        }
        if (part.details() instanceof SolarPanel panel) {
            return panel.shortCircuit().known() ? panel.shortCircuit().times(panel.strings()) : Figure.ZERO;
        }
        if (part.details() instanceof Inverter) {
            // Its loads on the sheet may be few of those that it can feed: without its power it is not known.
            return new Inverters(plan).atFullPower(part, lowest.times(circuit.voltage()));
        }
        return part.details() instanceof Charger charger ? current(part, charger, circuit) : Figure.ZERO;
    }

    private Figure current(Fitment part, Charger charger, Circuit circuit) {
        Figure input = charger.fromAlternator() ? stated(charger.input()) : Figure.ZERO;
        Figure output = charger.isolator().is(YesNo.YES)
                ? input
                : charger.fedBy().is(Charger.Source.SUN) ? shone(part, charger, circuit) : stated(charger.output());
        return !circuit.battery().known()
                ? input.most(output)
                : circuit.battery().is(Circuit.Supply.STARTER) ? input : output;
    }

    /** A figure of a part; nothing where it is not given, since the circuit's own current stands for it then. */
    private static Figure stated(Figure figure) {
        return figure.or(Figure.ZERO);
    }

    /** What a controller gives, no more than its panels bring at the voltage of the circuit, on whichever side of it that is. */
    private Figure shone(Fitment part, Charger controller, Circuit circuit) {
        return SunPower.on(plan, part)
                .map(panel -> ((SolarPanel) panel.details()).wholePower())
                .reduce(Figure::plus)
                .map(power -> power.dividedBy(circuit.voltage()).least(controller.output()))
                .orElse(controller.output());
    }
}
