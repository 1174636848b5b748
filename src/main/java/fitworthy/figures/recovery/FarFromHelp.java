package fitworthy.figures.recovery;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.yesNo;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.sheet.Sheet;
import java.util.List;

/** What a trip carries for the time until help comes. */
final class FarFromHelp {

    private static final MeasureKind DAYS =
            number("recovery.days-away", "days", 0, "days between places with supplies, and so with help");
    private static final MeasureKind CARRIED =
            yesNo("recovery.help-carried", "whether all is carried that is wanted until help comes");

    static final List<MeasureKind> KINDS = List.of(DAYS, CARRIED);

    private FarFromHelp() {}

    /** Asked of a remote trip alone. */
    static void plan(Plan plan, List<Measure> measures) {
        Sheet.Trip trip = plan.sheet().trip();
        if (trip.days().isAtLeast(plan.practice(PracticeId.WATER_REMOTE_DAYS))) {
            measures.add(Measure.of(DAYS, "trip", trip.days()));
            measures.add(Measure.of(CARRIED, "trip", trip.help()));
        }
    }
}
