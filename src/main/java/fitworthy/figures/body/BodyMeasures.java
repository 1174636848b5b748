package fitworthy.figures.body;

import fitworthy.figures.plan.TopicGroup;

/** Chassis, trays and canopies: how they are built and held, and whether their mass is counted. */
public final class BodyMeasures extends TopicGroup {

    public BodyMeasures() {
        super(
                new BodyBuildMeasures(),
                new RearGuardMeasures(),
                new MountMeasures(),
                new ChassisCutMeasures(),
                new RailMeasures(),
                new UndersideMeasures(),
                new BodyCutMeasures(),
                new BodyWeightMeasures(),
                new RestraintMeasures(),
                new HoldingMeasures(),
                new BurnerMeasures());
    }
}
