package fitworthy.figures.electrical;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.word;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.Circuit.Edges;
import fitworthy.sheet.ElectricalDetails.Battery;
import fitworthy.sheet.ElectricalDetails.BatteryPlace;
import fitworthy.sheet.ElectricalDetails.Charger;
import fitworthy.sheet.Fitment;
import java.util.List;
import java.util.Optional;

/**
 * The way that cables take: through metal, asked of the one that is sure to go through some, and by the exhaust; else looked
 * at where the sheet tells of it.
 */
final class CableWayMeasures implements Topic {
    private static final MeasureKind EDGES =
            word("electrical.metal-edges", "what keeps its cable from the edges of metal it goes through", Edges.class);
    private static final MeasureKind EXHAUST = number(
            "electrical.exhaust-gap", "mm", 0, "least gap between its cable and the exhaust, with no shield between");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(EDGES, EXHAUST);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Optional<Choice<BatteryPlace>> place = plan.toBeDone(Battery.class).stream()
                .map(Battery::place)
                .filter(where -> !where.known() || where.is(BatteryPlace.CANOPY))
                .findFirst();
        for (Circuit circuit : plan.sheet().circuits()) {
            Circuit.Cable cable = circuit.cable();
            Measure edges = Measure.of(EDGES, circuit.name(), cable.throughMetal());
            if (cable.throughMetal().known()) {
                measures.add(edges);
            } else if (fromEngineBay(plan, circuit)) {
                place.map(edges::given).ifPresent(measures::add);
            }
            if (cable.exhaustGap().known()) {
                measures.add(Measure.of(EXHAUST, circuit.name(), cable.exhaustGap()));
            }
        }
    }

    /** The feed of a planned charger that the alternator supplies, at the starter battery's end. */
    private static boolean fromEngineBay(Plan plan, Circuit circuit) {
        return !circuit.battery().is(Circuit.Supply.SECOND)
                && !circuit.isOnShore()
                && plan.fitments(Fitment.Kind.CHARGER).stream()
                        .anyMatch(charger -> charger.name().equals(circuit.part())
                                && !charger.isDone()
                                && ((Charger) charger.details()).fromAlternator());
    }
}
