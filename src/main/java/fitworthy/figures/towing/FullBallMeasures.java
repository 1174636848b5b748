package fitworthy.figures.towing;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Trailer;
import java.util.List;

/** Whether the load that may rest on the ball holds for a full vehicle too, which some makers allow less. */
final class FullBallMeasures implements Topic {
    private static final MeasureKind WHEN_FULL = yesNo(
                    "towing.ball-when-full", "whether the ball's rating holds with the vehicle at its GVM too")
            .byLoading();
    private static final MeasureKind FULL_SHARE = number(
                    "towing.full-share", "%", 0, "loaded mass of the vehicle, over the GVM as made")
            .byLoading();

    @Override
    public List<MeasureKind> kinds() {
        return List.of(WHEN_FULL, FULL_SHARE);
    }

    /** By the GVM as made: a maker's table of payload and ball knows no kit. */
    @Override
    public void loading(Loading loading, List<Measure> measures) {
        if (!loading.towing()) {
            return;
        }
        loading.plan().trailer().filter(trailer -> !trailer.onFifthWheel()).ifPresent(trailer -> {
            measures.add(Measure.of(
                    WHEN_FULL, "vehicle", loading.plan().vehicle().ratings().ballWhenFull()));
            measures.add(share(loading, trailer));
        });
    }

    private static Measure share(Loading loading, Trailer trailer) {
        Figure alone = loading.uncoupled();
        Figure gvm = loading.plan().vehicle().ratings().gvm();
        return Measure.of(FULL_SHARE, "vehicle", alone.plus(trailer.ball()).dividedBy(gvm))
                .worked(
                        "share = (alone + ball) / GVM",
                        in("alone", alone, "kg"),
                        in("ball", trailer.ball(), "kg"),
                        in("GVM", gvm, "kg"));
    }
}
