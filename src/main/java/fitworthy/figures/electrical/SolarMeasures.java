package fitworthy.figures.electrical;

import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.ElectricalDetails.Charger;
import fitworthy.sheet.ElectricalDetails.SolarPanel;
import fitworthy.sheet.Fitment;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether a controller bears its solar panels. Asked where the sheet begins to tell how they are connected. */
final class SolarMeasures implements Topic {
    private static final String BEARS = "what the controller's input bears";
    private static final MeasureKind VOLTS =
            rated("electrical.panel-volts", "V", 1, "open-circuit voltage of the panels in series at 25 degC", BEARS);
    private static final MeasureKind VOLTS_COLD = rated(
            "electrical.panel-volts-cold",
            "V",
            1,
            "open-circuit voltage of the panels in series on the coldest morning",
            BEARS);
    private static final MeasureKind AMPERES =
            rated("electrical.panel-amperes", "A", 1, "short-circuit current of the strings side by side", BEARS);

    private static final FieldSchema CHARGER = RecordSchema.of(SolarPanel.class).field("charger");

    /** At which a panel's label gives its figures, in degC. */
    private static final double LABEL = 25;

    @Override
    public List<MeasureKind> kinds() {
        return List.of(VOLTS, VOLTS_COLD, AMPERES);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        for (Fitment fitment : plan.fitments(Fitment.Kind.SOLAR_PANEL)) {
            SolarPanel panel = (SolarPanel) fitment.details();
            Optional<Charger> controller = controller(plan, panel);
            if (isTold(panel, controller.map(Charger::mostVoltage), panel.openCircuit(), panel.inSeries())) {
                voltage(plan, fitment, panel, most(fitment, controller.map(Charger::mostVoltage)), measures);
            }
            if (isTold(panel, controller.map(Charger::mostCurrent), panel.shortCircuit(), panel.strings())) {
                measures.add(Measure.of(
                                AMPERES,
                                fitment.name(),
                                panel.shortCircuit().times(panel.strings()),
                                most(fitment, controller.map(Charger::mostCurrent)))
                        .worked(
                                "current = of one x strings",
                                in("of one", panel.shortCircuit(), "A"),
                                in("strings", panel.strings(), "")));
            }
        }
    }

    private static void voltage(Plan plan, Fitment fitment, SolarPanel panel, Figure most, List<Measure> measures) {
        measures.add(Measure.of(VOLTS, fitment.name(), panel.openCircuit().times(panel.inSeries()), most)
                .worked(
                        "voltage = of one x in series",
                        in("of one", panel.openCircuit(), "V"),
                        in("in series", panel.inSeries(), "")));
        Figure rise = panel.perDegree().or(plan.practice(PracticeId.ELECTRICAL_PANEL_RISE));
        Figure coldest = plan.sheet().trip().coldest();
        measures.add(Measure.of(
                        VOLTS_COLD,
                        fitment.name(),
                        Derived.of(
                                v -> v[0] * v[1] * (1 + v[2] * Math.max(0, LABEL - v[3])),
                                panel.openCircuit(),
                                panel.inSeries(),
                                rise,
                                coldest),
                        most)
                .worked(
                        "voltage = of one x in series x (1 + rise x max(0, 25 - coldest))",
                        in("of one", panel.openCircuit(), "V"),
                        in("in series", panel.inSeries(), ""),
                        in("rise", rise, "%"),
                        in("coldest", coldest, "degC")));
    }

    private static boolean isTold(SolarPanel panel, Optional<Figure> most, Figure... connected) {
        return !panel.charger().isEmpty()
                || Stream.concat(most.stream(), Stream.of(connected)).anyMatch(Figure::known);
    }

    /** The one that it names, else the only one that the sun feeds. */
    private static Optional<Charger> controller(Plan plan, SolarPanel panel) {
        List<Charger> found = plan.fitments(Fitment.Kind.CHARGER).stream()
                .filter(charger -> panel.charger().isEmpty()
                        ? ((Charger) charger.details()).fedBy().is(Charger.Source.SUN)
                        : charger.name().equals(panel.charger()))
                .map(charger -> (Charger) charger.details())
                .toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static Figure most(Fitment fitment, Optional<Figure> most) {
        return most.orElseGet(() -> Figure.missing(CHARGER.missingIn("fitments." + fitment.name())));
    }
}
