package fitworthy.figures.body;

import fitworthy.figures.plan.JoinedTopic;

/** Chassis, trays and canopies: how they are built and held, and whether their mass is counted. */
public final class BodyMeasures extends JoinedTopic {

    public BodyMeasures() {
        super(new BodyBuildMeasures(), new BodyWeightMeasures());
    }
}
