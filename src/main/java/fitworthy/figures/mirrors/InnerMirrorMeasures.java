package fitworthy.figures.mirrors;

import static fitworthy.figures.measure.MeasureKind.word;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails;
import fitworthy.sheet.Trailer;
import java.util.List;
import java.util.stream.Stream;

/** What is left of the view in the inside mirror. */
final class InnerMirrorMeasures implements Topic {

    private static final MeasureKind INNER_VIEW = word(
                    "mirrors.inner-view", "view in the inside mirror", InnerView.class)
            .byLoading();

    private enum InnerView {
        HIDDEN,
        CLEAR
    }

    @Override
    public List<MeasureKind> kinds() {
        return List.of(INNER_VIEW);
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        Choice.any(Stream.concat(
                        loading.bodies().stream()
                                .map(fitment -> ((BodyDetails.Body) fitment.details()).hidesRearWindow()),
                        loading.trailer().stream().map(Trailer::hidesRearWindow)))
                .map(hides ->
                        !hides.known() ? hides : Choice.of(hides.is(YesNo.YES) ? InnerView.HIDDEN : InnerView.CLEAR))
                .ifPresent(view -> measures.add(Measure.of(INNER_VIEW, "inside mirror", view)));
    }
}
