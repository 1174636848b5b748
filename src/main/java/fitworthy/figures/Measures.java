package fitworthy.figures;

import fitworthy.figures.across.AcrossMeasures;
import fitworthy.figures.body.BodyMeasures;
import fitworthy.figures.electrical.ElectricalMeasures;
import fitworthy.figures.front.FrontMeasures;
import fitworthy.figures.fuel.FuelMeasures;
import fitworthy.figures.intake.IntakeMeasures;
import fitworthy.figures.mass.MassMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.MeasureKind.Scope;
import fitworthy.figures.mirrors.MirrorMeasures;
import fitworthy.figures.order.OrderMeasures;
import fitworthy.figures.paperwork.PaperworkMeasures;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.figures.radio.RadioMeasures;
import fitworthy.figures.recovery.RecoveryMeasures;
import fitworthy.figures.room.RoomMeasures;
import fitworthy.figures.suspension.SuspensionMeasures;
import fitworthy.figures.towing.TowingMeasures;
import fitworthy.figures.tyres.TyreMeasures;
import fitworthy.figures.water.WaterMeasures;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

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
            new AcrossMeasures(),
            new RoomMeasures());

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
        return checked(measures, Scope.PLAN);
    }

    /** What holds in one load case. */
    public static List<Measure> of(Loading loading) {
        return of(loading, kinds -> true);
    }

    /** The same of the topics of which something is asked. */
    public static List<Measure> asked(Loading loading, Predicate<MeasureKind> asked) {
        return of(loading, kinds -> kinds.stream().anyMatch(asked));
    }

    /** The same of all other topics. */
    public static List<Measure> unasked(Loading loading, Predicate<MeasureKind> asked) {
        return of(loading, kinds -> kinds.stream().noneMatch(asked));
    }

    private static List<Measure> of(Loading loading, Predicate<List<MeasureKind>> wanted) {
        List<Measure> measures = new ArrayList<>();
        for (Topic topic : TOPICS) {
            if (wanted.test(topic.kinds())) {
                topic.loading(loading, measures);
            }
        }
        return checked(measures, Scope.LOADING).stream()
                .map(measure -> measure.in(loading.loadCase().name()))
                .toList();
    }

    /** Which rules have to be run for each load case is read off the declared scope, so it must be the true one. */
    static List<Measure> checked(List<Measure> measures, Scope scope) {
        for (Measure measure : measures) {
            if (measure.kind().scope() != scope) {
                throw new IllegalStateException(measure.getName() + " is declared to be of "
                        + Words.hyphenated(measure.kind().scope().name()) + " scope and made in "
                        + Words.hyphenated(scope.name()) + " scope");
            }
        }
        return measures;
    }
}
