package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.MassDetails.ChassisExtension;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the maker's ratings for towing are worth once the chassis is cut: they are for the chassis as made, and hold for
 * another only where its maker or an engineer says so. Common practice.
 */
public final class TowingAfterCut {

    private TowingAfterCut() {}

    /** A rating for towing, kg; missing where a planned cut leaves open whether it holds. */
    public static Figure rating(Plan plan, Figure made) {
        List<Missing> unstated = plan.fitments(Fitment.Kind.CHASSIS_EXTENSION).stream()
                .filter(cut -> !cut.isDone())
                .flatMap(TowingAfterCut::unstated)
                .toList();
        return unstated.isEmpty() ? made : made.missingWith(Figure.missing(unstated), made);
    }

    /** The same against what is held against it: what is above it as made is too much whatever the cut leaves. */
    public static Figure against(Plan plan, Figure made, Figure load) {
        return load.isAbove(made) ? made : rating(plan, made);
    }

    private static Stream<Missing> unstated(Fitment cut) {
        ChassisExtension details = (ChassisExtension) cut.details();
        if (!details.towingStated().known()) {
            return Stream.of(details.towingStated().missing());
        }
        return details.towingStated().is(YesNo.YES)
                ? Stream.empty()
                : Stream.of(new Missing(
                        "fitments." + cut.name() + ".towing-stated",
                        "what it may tow and carry on the ball after the cut, stated in writing",
                        "the engineer's report"));
    }
}
