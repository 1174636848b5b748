package fitworthy.figures.body;

import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.MeasureKind.yesNo;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.sheet.BodyDetails.AtCut;
import fitworthy.sheet.BodyDetails.BodyCut;
import fitworthy.sheet.Fitment;
import java.util.List;

/** What holds and guards people where a body is cut. */
final class BodyCutMeasures implements Topic {
    private static final MeasureKind TO_DO = yesNo("body.cut-to-do", "whether the body is still to be cut");
    private static final MeasureKind BELTS =
            word("body.cut-belts", "what becomes of the seat belts and what holds them", AtCut.class);
    private static final MeasureKind CHILD_ANCHORS =
            word("body.cut-child-anchors", "what becomes of the anchors of child seats", AtCut.class);
    private static final MeasureKind AIRBAGS =
            word("body.cut-airbags", "what becomes of the airbags in pillars and roof", AtCut.class);
    private static final MeasureKind CLOSED =
            yesNo("body.cut-closed", "whether the cab is closed again behind the people");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(TO_DO, BELTS, CHILD_ANCHORS, AIRBAGS, CLOSED);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        for (Fitment fitment : plan.fitments(Fitment.Kind.BODY_CUT)) {
            String name = fitment.name();
            measures.add(Measure.of(TO_DO, name, Choice.yesNo(!fitment.isDone())));
            if (!fitment.isDone()) {
                BodyCut cut = (BodyCut) fitment.details();
                measures.add(Measure.of(BELTS, name, cut.belts()));
                measures.add(Measure.of(CHILD_ANCHORS, name, cut.childAnchors()));
                measures.add(Measure.of(AIRBAGS, name, cut.curtainAirbags()));
                measures.add(Measure.of(CLOSED, name, cut.closed()));
            }
        }
    }
}
