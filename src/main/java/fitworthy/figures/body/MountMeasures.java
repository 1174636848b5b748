package fitworthy.figures.body;

import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.MeasureKind.yesNo;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.BodyDetails.Metals;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.MassDetails.ChassisExtension;
import java.util.List;

/**
 * How a tray or canopy meets the chassis: asked of a planned one on a cut chassis, and looked at where the sheet tells of it.
 * What its mounts bear is a matter of fixings.
 */
final class MountMeasures implements Topic {
    private static final MeasureKind METALS =
            word("body.metals", "what its metal and that of the chassis do where they meet", Metals.class);
    private static final MeasureKind GIVE =
            yesNo("body.mounts-give", "whether its mounts beside the cut in the chassis give");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(METALS, GIVE);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        boolean cut = !plan.details(ChassisExtension.class).isEmpty();
        List<Fitment> trays = plan.fitments(Fitment.Kind.TRAY);
        // What lies on the chassis: a canopy alone where there is no tray.
        List<Fitment> onChassis = trays.isEmpty() ? plan.fitments(Fitment.Kind.CANOPY) : trays;
        for (Fitment fitment : plan.sheet().fitments()) {
            if (fitment.details() instanceof Body body) {
                boolean asked = cut && !fitment.isDone() && onChassis.contains(fitment);
                if (asked || body.metals().known()) {
                    measures.add(Measure.of(METALS, fitment.name(), body.metals()));
                }
                if (asked || cut && body.mountsGive().known()) {
                    measures.add(Measure.of(GIVE, fitment.name(), body.mountsGive()));
                }
            }
        }
    }
}
