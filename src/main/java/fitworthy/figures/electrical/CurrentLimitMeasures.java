package fitworthy.figures.electrical;

import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.measure.Working.Input;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Figure;
import fitworthy.sheet.ElectricalDetails.Battery;
import fitworthy.sheet.ElectricalDetails.Chemistry;
import java.util.List;
import java.util.function.Function;

/** What second batteries may be charged with and give, by their data sheets. */
final class CurrentLimitMeasures implements Topic {
    private static final MeasureKind CHARGE = rated(
                    "electrical.charge-current",
                    "A",
                    1,
                    "what charges it at once",
                    "greatest charging current by its data sheet, or the least of its kind")
            .byLoading();
    private static final MeasureKind DISCHARGE = rated(
                    "electrical.discharge-current",
                    "A",
                    1,
                    "what hangs on it takes with all switched on",
                    "greatest lasting current by its data sheet, or the least of its kind")
            .byLoading();

    private static final String SECOND_BATTERY = "second battery";

    @Override
    public List<MeasureKind> kinds() {
        return List.of(CHARGE, DISCHARGE);
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        CircuitsOn circuits = new CircuitsOn(loading);
        List<Battery> batteries = circuits.batteries();
        if (!loading.setsOut() || batteries.isEmpty()) {
            return;
        }
        boolean lithium =
                batteries.stream().allMatch(battery -> battery.chemistry().is(Chemistry.LITHIUM));
        boolean lead = batteries.stream()
                .allMatch(battery ->
                        battery.chemistry().known() && !battery.chemistry().is(Chemistry.LITHIUM));
        Plan plan = loading.plan();
        List<Input> charging = new EnergyFlow(circuits).charging();
        limited(
                CHARGE,
                charging,
                Working.total(charging),
                most(batteries, Battery::mostCharge),
                plan.practice(
                        lithium ? PracticeId.ELECTRICAL_CHARGE_LITHIUM_SURE : PracticeId.ELECTRICAL_CHARGE_LEAD_SURE),
                circuits,
                measures);
        Figure gives = most(batteries, Battery::mostDischarge);
        // What a lead-acid battery gives for long falls with its voltage and is stated by few.
        if (!lead || gives.known()) {
            SecondDraw draw = new SecondDraw(circuits);
            limited(
                    DISCHARGE,
                    draw.atOnce(),
                    draw.leastAtOnce(),
                    gives,
                    plan.practice(PracticeId.ELECTRICAL_DISCHARGE_LITHIUM_SURE),
                    circuits,
                    measures);
        }
    }

    /** Of several batteries side by side each takes its part. */
    private static Figure most(List<Battery> batteries, Function<Battery, Figure> figure) {
        return batteries.stream().map(figure).reduce(Figure.ZERO, Figure::plus);
    }

    /** Up to what every maker allows of such a size nobody is asked what this one does. @param least of the currents together */
    private static void limited(
            MeasureKind kind,
            List<Input> currents,
            Figure least,
            Figure stated,
            Figure sure,
            CircuitsOn circuits,
            List<Measure> measures) {
        if (currents.isEmpty()) {
            return;
        }
        Figure current = Working.total(currents);
        Figure capacity = Working.total(circuits.capacities());
        Figure always = sure.times(capacity);
        boolean open = !stated.known() && current.isAtMost(always);
        Measure measure = Measure.of(kind, SECOND_BATTERY, current, open ? always : stated)
                .worked(new Working.Sum("current", currents))
                .atLeast(least);
        measures.add(
                open
                        ? measure.worked(
                                "limit = sure x capacity", in("sure", sure, "%"), in("capacity", capacity, "Ah"))
                        : measure);
    }
}
