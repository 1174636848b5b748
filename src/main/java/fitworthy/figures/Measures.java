package fitworthy.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Every question that can be asked of a plan. A new topic is added to the list here. */
public final class Measures {

    private static final List<Topic> TOPICS = List.of(
            new MassMeasures(),
            new IntakeMeasures(),
            new FuelMeasures(),
            new ElectricalMeasures(),
            new RadioMeasures(),
            new WaterMeasures(),
            new FrontMeasures(),
            new TyreMeasures(),
            new RecoveryMeasures(),
            new TowingMeasures(),
            new MirrorMeasures(),
            new SuspensionMeasures(),
            new BodyMeasures(),
            new PaperworkMeasures(),
            new OrderMeasures(),
            new AcrossMeasures());

    private Measures() {}

    /** Every kind of measure by name. */
    public static Map<String, MeasureKind> kinds() {
        Map<String, MeasureKind> kinds = new TreeMap<>();
        TOPICS.forEach(topic -> topic.kinds().forEach(kind -> kinds.put(kind.name(), kind)));
        return kinds;
    }

    /** What does not depend on how the vehicle is loaded. */
    public static List<Measure> of(Plan plan) {
        List<Measure> measures = new ArrayList<>();
        TOPICS.forEach(topic -> topic.plan(plan, measures));
        return measures;
    }

    /** What holds in one load case. */
    public static List<Measure> of(Loading loading) {
        List<Measure> measures = new ArrayList<>();
        TOPICS.forEach(topic -> topic.loading(loading, measures));
        return measures;
    }
}
