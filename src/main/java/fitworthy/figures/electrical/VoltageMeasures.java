package fitworthy.figures.electrical;

import static fitworthy.figures.measure.MeasureKind.lookedUp;
import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working.Input;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.ChoiceWords;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.ElectricalDetails.Battery;
import fitworthy.sheet.ElectricalDetails.Charger;
import fitworthy.sheet.ElectricalDetails.Chemistry;
import fitworthy.sheet.Fitment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Whether what hangs on a battery is made for its voltage, and whether batteries that are joined are alike. */
final class VoltageMeasures implements Topic {

    private static final MeasureKind OFF =
            number("electrical.voltage-off", "%", 0, "how far its voltage and its battery's lie apart");
    private static final MeasureKind OWN = number("electrical.own-voltage", "V", 1, "voltage that it is made for");
    private static final MeasureKind SUPPLY = number("electrical.supply-voltage", "V", 1, "voltage of its battery");
    private static final MeasureKind BANK_OFF =
            number("electrical.bank-off", "%", 0, "how far the voltages of the batteries that are joined lie apart");
    private static final MeasureKind BANK_VOLTAGES =
            lookedUp("electrical.bank-voltages", "the batteries that are joined, each with its voltage");
    private static final MeasureKind BANK_ALIKE =
            yesNo("electrical.bank-alike", "whether the batteries that count as one are of one chemistry");
    private static final MeasureKind BANK_CHEMISTRIES =
            lookedUp("electrical.bank-chemistries", "the batteries that count as one, each with its chemistry");

    private static final String BANK = "second battery";
    private static final Figure ONE = Figure.of(1, 0);

    @Override
    public List<MeasureKind> kinds() {
        return List.of(OFF, OWN, SUPPLY, BANK_OFF, BANK_VOLTAGES, BANK_ALIKE, BANK_CHEMISTRIES);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        plan.sheet().circuits().stream()
                .filter(circuit -> !circuit.isMains() && !isAheadOfCharger(plan, circuit))
                .forEach(circuit -> circuit(plan, circuit, measures));
        bank(plan, measures);
    }

    /** Whether it is the lead from the sun or the mains to what charges a battery, which is of any voltage. */
    private static boolean isAheadOfCharger(Plan plan, Circuit circuit) {
        return plan.sheet().fitments().stream()
                .filter(part -> part.name().equals(circuit.part()))
                .anyMatch(part -> part.kind() == Fitment.Kind.SOLAR_PANEL
                        || part.kind() == Fitment.Kind.CHARGER && !((Charger) part.details()).fromAlternator());
    }

    /** Against the nearest of several batteries: that these are not alike is told by itself. */
    private static void circuit(Plan plan, Circuit circuit, List<Measure> measures) {
        Figure own = circuit.voltage();
        supplies(plan, circuit).stream()
                .min(Comparator.comparing(Figure::known)
                        .thenComparing(supply -> apart(own, supply).value()))
                .ifPresent(supply -> {
                    measures.add(Measure.of(OFF, circuit.name(), apart(own, supply))
                            .worked(
                                    "apart = max(own / battery, battery / own) - 1",
                                    in("own", own, "V"),
                                    in("battery", supply, "V")));
                    measures.add(Measure.of(OWN, circuit.name(), own));
                    measures.add(Measure.of(SUPPLY, circuit.name(), supply));
                });
    }

    /** The voltages of the batteries that feed a circuit; none where no battery does or the sheet has none such. */
    private static List<Figure> supplies(Plan plan, Circuit circuit) {
        if (!circuit.battery().known()) {
            return List.of(Figure.missing(circuit.battery().missing()));
        }
        if (circuit.isOnShore()) {
            return List.of();
        }
        return circuit.battery().is(Circuit.Supply.STARTER)
                ? List.of(CircuitsOn.starterVoltage(plan))
                : plan.details(Battery.class).stream().map(Battery::voltage).toList();
    }

    private static Figure apart(Figure one, Figure other) {
        return one.dividedBy(other).most(other.dividedBy(one)).minus(ONE);
    }

    /** The second batteries of a sheet count as one, and a relay joins them with the starter battery. */
    private static void bank(Plan plan, List<Measure> measures) {
        List<Fitment> batteries = plan.fitments(Fitment.Kind.BATTERY);
        List<Input> joined = new ArrayList<>(batteries.stream()
                .map(battery -> in(battery.name(), ((Battery) battery.details()).voltage(), "V"))
                .toList());
        if (plan.details(Charger.class).stream()
                .anyMatch(charger -> charger.isolator().is(YesNo.YES))) {
            joined.add(in("starter battery", CircuitsOn.starterVoltage(plan), "V"));
        }
        if (!batteries.isEmpty() && joined.size() > 1) {
            Figure highest =
                    joined.stream().map(Input::figure).reduce(Figure::most).orElseThrow();
            Figure lowest =
                    joined.stream().map(Input::figure).reduce(Figure::least).orElseThrow();
            measures.add(Measure.of(BANK_OFF, BANK, highest.dividedBy(lowest).minus(ONE))
                    .worked("apart = highest / lowest - 1", in("highest", highest, "V"), in("lowest", lowest, "V")));
            measures.add(Measure.of(
                    BANK_VOLTAGES,
                    BANK,
                    joined.stream()
                            .map(battery -> battery.name() + " (" + battery.shown() + ")")
                            .sorted()
                            .collect(Collectors.joining(", ")),
                    highest.missing()));
        }
        if (batteries.size() > 1) {
            chemistries(batteries, measures);
        }
    }

    private static void chemistries(List<Fitment> batteries, List<Measure> measures) {
        List<Choice<Chemistry>> chemistries = batteries.stream()
                .map(battery -> ((Battery) battery.details()).chemistry())
                .toList();
        List<Chemistry> known = chemistries.stream()
                .filter(Choice::known)
                .map(Choice::value)
                .distinct()
                .toList();
        Choice<YesNo> alike = known.size() > 1
                ? Choice.of(YesNo.NO)
                : chemistries.stream()
                        .filter(chemistry -> !chemistry.known())
                        .findFirst()
                        .map(open -> Choice.<YesNo>missing(open.missing()))
                        .orElse(Choice.of(YesNo.YES));
        measures.add(Measure.of(BANK_ALIKE, BANK, alike));
        measures.add(Measure.of(
                BANK_CHEMISTRIES,
                BANK,
                batteries.stream()
                        .map(battery -> battery.name() + " (" + word(((Battery) battery.details()).chemistry()) + ")")
                        .sorted()
                        .collect(Collectors.joining(", ")),
                List.of()));
    }

    private static String word(Choice<Chemistry> chemistry) {
        return chemistry.known()
                ? ChoiceWords.of(Chemistry.class).get(chemistry.value().ordinal())
                : "not known";
    }
}
