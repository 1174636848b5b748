package fitworthy.figures.plan;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import java.util.List;

/** A topic of several groups of questions. A further question goes into the group that knows the figures for it. */
public abstract class TopicGroup implements Topic {

    private final List<Topic> groups;
    private final List<MeasureKind> kinds;

    protected TopicGroup(Topic... groups) {
        this.groups = List.of(groups);
        this.kinds =
                this.groups.stream().flatMap(group -> group.kinds().stream()).toList();
    }

    @Override
    public final List<MeasureKind> kinds() {
        return kinds;
    }

    @Override
    public final void plan(Plan plan, List<Measure> measures) {
        groups.forEach(group -> group.plan(plan, measures));
    }

    @Override
    public final void loading(Loading loading, List<Measure> measures) {
        groups.forEach(group -> group.loading(loading, measures));
    }
}
