package fitworthy.figures.tyres;

import fitworthy.figures.plan.TopicGroup;

/** Tyres and wheels: what they are rated for, and what a change of them does. */
public final class TyreMeasures extends TopicGroup {

    public TyreMeasures() {
        super(
                new TyreRatingMeasures(),
                new TyreLimitMeasures(),
                new TyreEmptiedMeasures(),
                new TyreChangeMeasures(),
                new SparePlaceMeasures(),
                new SpacerMeasures(),
                new TyreBrakeMeasures());
    }
}
