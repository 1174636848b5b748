package fitworthy.figures.mass;

import fitworthy.figures.plan.TopicGroup;

/** Masses, ratings and weighbridge readings. */
public final class MassMeasures extends TopicGroup {

    public MassMeasures() {
        super(
                new LoadMeasures(),
                new EmptiedMeasures(),
                new RackMeasures(),
                new RatingMeasures(),
                new WeighbridgeMeasures());
    }
}
