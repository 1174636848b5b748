package fitworthy.figures.mass;

import static fitworthy.figures.measure.MeasureKind.rated;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.RackLoad;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
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
            Measure load = Measure.of(RACK, rack.rack(), rack.load().sum(), rack.most())
                    .worked(new Working.Sum("load", rack.load().loads()));
            // Where all that may be up there is surely not too much, nobody has to say what is.
            measures.add(
                    rack.load().sum().isSurelyWithin(rack.most())
                            ? load
                            : load.given(rack.load().told().toArray(Choice<?>[]::new))
                                    .atLeast(rack.load().least()));
        }
    }
}
