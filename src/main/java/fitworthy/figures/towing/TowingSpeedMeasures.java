package fitworthy.figures.towing;

import static fitworthy.figures.measure.MeasureKind.number;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Figure;
import java.util.List;

/**
 * How fast the trailer will be towed, and the rated mass on which the law makes that hang in places. What the tyres bear
 * is another matter.
 */
final class TowingSpeedMeasures implements Topic {
    private static final MeasureKind SPEED =
            number("towing.speed", "km/h", 0, "highest speed that will be driven, with the trailer");
    private static final MeasureKind GCM = number("towing.gcm", "kg", 0, "GCM of the vehicle that tows it");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(SPEED, GCM);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        plan.trailer().ifPresent(trailer -> {
            Figure speed = plan.sheet().trip().topSpeed();
            measures.add(Measure.of(SPEED, "trailer", speed));
            measures.add(Measure.of(GCM, "vehicle", plan.ratings().gcm()));
        });
    }
}
