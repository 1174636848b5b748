package fitworthy.figures.plan;

import fitworthy.figures.measure.Working;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.ElectricalDetails.Charger;
import fitworthy.sheet.ElectricalDetails.SolarPanel;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.FrontDetails.Winch;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What goes through a circuit by a figure that its part has of its own: what a charger takes or gives, a winch draws and
 * panels give. Of several circuits of a part on one battery the strongest is meant; the others start or switch it.
 */
final class PartCurrents {

    private final Plan plan;

    PartCurrents(Plan plan) {
        this.plan = plan;
    }

    /** The strongest of the circuits of a part on a battery; none of mains voltage. */
    static Optional<Circuit> strongest(Plan plan, Fitment part, Choice<Circuit.Supply> battery) {
        return plan.sheet().circuits().stream()
                .filter(circuit -> !circuit.isMains()
                        && circuit.part().equals(part.name())
                        && circuit.battery().value() == battery.value())
                .max(Comparator.comparingDouble(circuit -> circuit.current().value()));
    }

    /** What a circuit's cable has to carry, in A: its own current, and no less than its part sends through it. */
    Figure carried(Circuit circuit) {
        Figure ofPart = ofPart(circuit);
        return !ofPart.isAbove(circuit.current())
                ? circuit.current()
                : circuit.battery().known()
                        ? ofPart
                        : Figure.missing(circuit.battery().missing());
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
                .filter(part -> part.name().equals(circuit.part()))
                .filter(part -> strongest(plan, part, circuit.battery())
                        .filter(circuit::equals)
                        .isPresent())
                .map(part -> current(part, circuit))
                .findFirst()
                .orElse(Figure.ZERO);
    }

    private Figure current(Fitment part, Circuit circuit) {
        if (part.details() instanceof Winch winch) {
            return winch.current();
        }
        if (part.details() instanceof SolarPanel panel) {
            return panel.shortCircuit().times(panel.strings().or(Figure.of(1, 0)));
        }
        return part.details() instanceof Charger charger ? current(part, charger, circuit) : Figure.ZERO;
    }

    private Figure current(Fitment part, Charger charger, Circuit circuit) {
        Figure input = charger.fromAlternator() ? charger.input() : Figure.ZERO;
        Figure output = charger.isolator().is(YesNo.YES)
                ? charger.input()
                : charger.fedBy().is(Charger.Source.SUN) ? shone(part, charger, circuit) : charger.output();
        if (!circuit.battery().known()) {
            return input.isAbove(output) ? input : output.or(input);
        }
        return circuit.battery().is(Circuit.Supply.STARTER) ? input : output;
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
