package fitworthy.figures.electrical;

import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.MeasureKind.yesNo;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.Circuit.MainsWork;
import java.util.List;

/** Who wires what is of mains voltage, and what guards it. What only plugs in is no wiring. */
final class MainsMeasures implements Topic {
    private static final MeasureKind WORK =
            word("electrical.mains-work", "who does the wiring of mains voltage", MainsWork.class);
    private static final MeasureKind SAFETY_SWITCH =
            yesNo("electrical.mains-switch", "whether a safety switch guards the wiring of mains voltage");
    private static final MeasureKind BREAKER = yesNo(
            "electrical.mains-breaker", "whether a breaker or fuse guards the wiring that shore or a generator feeds");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(WORK, SAFETY_SWITCH, BREAKER);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        plan.sheet().circuits().stream().filter(Circuit::isMains).forEach(circuit -> {
            measures.add(Measure.of(WORK, circuit.name(), circuit.mainsWork()));
            if (!circuit.mainsWork().is(MainsWork.PLUGGED_IN)) {
                measures.add(Measure.of(SAFETY_SWITCH, circuit.name(), circuit.safetySwitch())
                        .given(circuit.mainsWork()));
                if (circuit.isOnShore() || !circuit.battery().known()) {
                    measures.add(
                            Measure.of(BREAKER, circuit.name(), circuit.fuse().isThere())
                                    .given(circuit.mainsWork(), circuit.battery()));
                }
            }
        });
    }
}
