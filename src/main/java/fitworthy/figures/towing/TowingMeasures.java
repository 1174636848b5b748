package fitworthy.figures.towing;

import fitworthy.figures.plan.TopicGroup;

/**
 * Whether vehicle, tow bar and trailer go together. Their masses on axles and in the GCM are a matter of the masses.
 */
public final class TowingMeasures extends TopicGroup {

    public TowingMeasures() {
        super(
                new HitchMeasures(),
                new StowedMeasures(),
                new UnderTrailerMeasures(),
                new TrailerBrakeMeasures(),
                new TowingSpeedMeasures(),
                new FeedAndHillMeasures(),
                new FullBallMeasures(),
                new LevellingMeasures());
    }
}
