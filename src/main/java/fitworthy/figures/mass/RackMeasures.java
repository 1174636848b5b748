package fitworthy.figures.mass;

import static fitworthy.figures.measure.MeasureKind.rated;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.RackLoad;
import fitworthy.figures.plan.Topic;
import java.util.List;

/** What each roof rack carries, whatever the roof bears. */
public final class RackMeasures implements Topic {

    public static final MeasureKind RACK =
            rated("mass.rack", "kg", 0, "load on the rack", "what it may carry").byLoading();

    @Override
    public List<MeasureKind> kinds() {
        return List.of(RACK);
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        for (RackLoad rack : RackLoad.of(loading)) {
            measures.add(LoadMeasures.upThere(
                    Measure.of(RACK, rack.rack(), rack.load().sum(), rack.most()), rack.load(), rack.most()));
        }
    }
}
