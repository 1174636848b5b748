package fitworthy.figures.body;

import static fitworthy.figures.measure.MeasureKind.number;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Figure;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.BodyDetails.RearEnd;
import fitworthy.sheet.Fitment;
import java.util.List;
import java.util.stream.Stream;

/**
 * What keeps a car from running under the rear: looked at where a tray is planned, since the maker's bumper mostly goes with
 * his tub, and of a canopy where the sheet tells any of it. Whether the law wants any of a vehicle of this mass is the rules' matter.
 */
final class RearGuardMeasures implements Topic {
    private static final MeasureKind HEIGHT = number(
            "body.guard-height", "mm", 0, "height of the lower edge of what keeps a car from running under the rear");
    private static final MeasureKind AHEAD =
            number("body.guard-ahead", "mm", 0, "how far ahead of the rearmost end that lies");
    private static final MeasureKind SHORT =
            number("body.guard-short", "mm", 0, "how far its ends stop short of the vehicle's sides");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(HEIGHT, AHEAD, SHORT);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        plan.sheet().fitments().stream().filter(part -> !part.isDone()).forEach(part -> {
            if (part.details() instanceof Body body && (part.kind() == Fitment.Kind.TRAY || tells(body.rear()))) {
                measures.add(Measure.of(HEIGHT, part.name(), body.rear().guardHeight()));
                measures.add(Measure.of(AHEAD, part.name(), body.rear().guardAhead()));
                measures.add(Measure.of(SHORT, part.name(), body.rear().guardShort()));
            }
        });
    }

    private static boolean tells(RearEnd rear) {
        return Stream.of(rear.guardHeight(), rear.guardAhead(), rear.guardShort())
                .anyMatch(Figure::known);
    }
}
