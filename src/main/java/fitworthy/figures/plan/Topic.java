package fitworthy.figures.plan;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import java.util.List;

/** The questions of one topic and how they are answered from a plan. */
public interface Topic {

    /** Every kind of measure this topic may give. A new kind is declared above the list and added to it. */
    List<MeasureKind> kinds();

    /** Adds the measures of plan scope: what does not depend on how the vehicle is loaded. */
    default void plan(Plan plan, List<Measure> measures) {}

    /** Adds the measures of loading scope: what holds in one load case. */
    default void loading(Loading loading, List<Measure> measures) {}
}
