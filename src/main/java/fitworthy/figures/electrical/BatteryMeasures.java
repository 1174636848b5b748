package fitworthy.figures.electrical;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.MeasureKind.yesNo;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.ElectricalDetails.Battery;
import fitworthy.sheet.ElectricalDetails.BatteryPlace;
import fitworthy.sheet.ElectricalDetails.Charger;
import fitworthy.sheet.ElectricalDetails.Chemistry;
import fitworthy.sheet.ElectricalDetails.ColdCharging;
import fitworthy.sheet.Fitment;
import java.util.List;

/** Where planned batteries stand, how they are held, and what guards a lithium one. */
final class BatteryMeasures implements Topic {
    private static final MeasureKind GAS_OUT = yesNo("electrical.gas-out", "whether its box is vented to the outside");
    private static final MeasureKind FIXED =
            yesNo("electrical.battery-fixed", "whether it is held down so that a crash does not move it");
    private static final MeasureKind LITHIUM_PLACE =
            word("electrical.lithium-place", "where the lithium battery stands", BatteryPlace.class);
    private static final MeasureKind LITHIUM_BOX = yesNo(
            "electrical.lithium-box", "whether the lithium battery in the cabin stands in a box vented to the outside");
    private static final MeasureKind LITHIUM_CUT_OFF =
            yesNo("electrical.lithium-cut-off", "whether a switch within reach cuts the lithium battery off");
    private static final MeasureKind LITHIUM_CURVE =
            yesNo("electrical.lithium-curve", "whether the lithium battery is charged by the curve it needs");
    private static final String NO_FROST = "no-frost";
    private static final MeasureKind COLD_CHARGING = word(
                    "electrical.cold-charging",
                    "what happens where the lithium battery would be charged in frost",
                    ColdCharging.class)
            .or(NO_FROST);
    private static final MeasureKind COLDEST = number("electrical.coldest", "degC", 1, "coldest night to be expected")
            .signed();

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                GAS_OUT, FIXED, LITHIUM_PLACE, LITHIUM_BOX, LITHIUM_CUT_OFF, LITHIUM_CURVE, COLD_CHARGING, COLDEST);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        for (Fitment fitment : plan.fitments(Fitment.Kind.BATTERY)) {
            Battery battery = (Battery) fitment.details();
            measures.add(Measure.of(FIXED, fitment.name(), battery.fixed()));
            boolean lithium = battery.chemistry().is(Chemistry.LITHIUM);
            if (lithium || !battery.chemistry().known()) {
                lithium(plan, fitment.name(), battery, measures);
            }
            if (!lithium && (!battery.place().known() || battery.place().is(BatteryPlace.CABIN))) {
                measures.add(Measure.of(GAS_OUT, fitment.name(), battery.ventedOutside())
                        .given(battery.place(), battery.chemistry()));
            }
        }
        charged(plan, measures);
    }

    /** What charges a lithium battery, or one that may be, and how cold it gets there. */
    private static void charged(Plan plan, List<Measure> measures) {
        List<Choice<Chemistry>> chemistries =
                plan.details(Battery.class).stream().map(Battery::chemistry).toList();
        chemistries.stream()
                .filter(chemistry -> chemistry.is(Chemistry.LITHIUM))
                .findFirst()
                .or(() -> chemistries.stream()
                        .filter(chemistry -> !chemistry.known())
                        .findFirst())
                .ifPresent(chemistry -> {
                    measures.add(Measure.of(COLDEST, "trip", plan.sheet().trip().coldest()));
                    plan.fitments(Fitment.Kind.CHARGER)
                            .forEach(charger -> measures.add(
                                    Measure.of(LITHIUM_CURVE, charger.name(), curve((Charger) charger.details()))
                                            .given(chemistry)));
                });
    }

    /** Asked of a battery that may be one too. */
    private static void lithium(Plan plan, String name, Battery battery, List<Measure> measures) {
        Choice<Chemistry> chemistry = battery.chemistry();
        measures.add(Measure.of(LITHIUM_PLACE, name, battery.place()).given(chemistry));
        if (!battery.place().known() || battery.place().is(BatteryPlace.CABIN)) {
            measures.add(Measure.of(LITHIUM_BOX, name, battery.ventedOutside()).given(chemistry, battery.place()));
        }
        measures.add(Measure.of(LITHIUM_CUT_OFF, name, battery.cutOff()).given(chemistry));
        if (plan.fitments(Fitment.Kind.CHARGER).isEmpty()) {
            measures.add(Measure.of(LITHIUM_CURVE, name, battery.lithiumCurve()).given(chemistry));
        }
        Figure coldest = plan.sheet().trip().coldest();
        // Where no frost is to come nobody has to know what it would do.
        boolean noFrost = !battery.coldCharging().known()
                && coldest.isAtLeast(plan.practice(PracticeId.ELECTRICAL_LITHIUM_COLDEST));
        measures.add((noFrost
                        ? Measure.of(COLD_CHARGING, name, NO_FROST, List.of())
                        : Measure.of(COLD_CHARGING, name, battery.coldCharging()))
                .given(chemistry));
    }

    /** A relay has no curve. */
    private static Choice<YesNo> curve(Charger charger) {
        return charger.isolator().is(YesNo.YES) ? Choice.of(YesNo.NO) : charger.lithiumCurve();
    }
}
