package fitworthy.figures.tyres;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.TyreDetails.Spacers;
import java.util.List;

/** How spacers behind the wheels are held, and who stands by them. The track that they add is told with that of wheels. */
final class SpacerMeasures implements Topic {
    private static final MeasureKind BY_MAKER =
            yesNo("tyres.spacers-by-maker", "whether the vehicle's maker fits or lists the spacers");
    private static final MeasureKind CENTRED =
            yesNo("tyres.spacers-centred", "whether the spacers sit on the hub and the wheel on them");
    private static final MeasureKind THREAD =
            number("tyres.spacer-thread", "", 2, "thread that a wheel nut holds over the diameter of its stud");
    private static final MeasureKind THREAD_NEEDED =
            number("tyres.spacer-thread-needed", "mm", 1, "thread that a wheel nut has to hold");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(BY_MAKER, CENTRED, THREAD, THREAD_NEEDED);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Figure least = plan.practice(PracticeId.TYRES_SPACER_THREAD_LEAST);
        for (Fitment part : plan.fitments(Fitment.Kind.WHEEL_SPACERS)) {
            Spacers spacers = (Spacers) part.details();
            measures.add(Measure.of(BY_MAKER, part.name(), spacers.byMaker()));
            measures.add(Measure.of(CENTRED, part.name(), spacers.hubCentric()));
            measures.add(Measure.of(THREAD, part.name(), spacers.engaged().dividedBy(spacers.stud()))
                    .worked(
                            "held = thread / stud",
                            in("thread", spacers.engaged(), "mm"),
                            in("stud", spacers.stud(), "mm")));
            measures.add(Measure.enough(THREAD_NEEDED, part.name(), least.times(spacers.stud()))
                    .worked("needed = least x stud", in("least", least, ""), in("stud", spacers.stud(), "mm")));
        }
    }
}
