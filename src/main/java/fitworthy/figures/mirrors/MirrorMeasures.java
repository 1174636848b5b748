package fitworthy.figures.mirrors;

import fitworthy.figures.plan.TopicGroup;

/** Inside and outside mirrors: what they show, and how they are built. */
public final class MirrorMeasures extends TopicGroup {

    public MirrorMeasures() {
        super(new MirrorViewMeasures(), new InnerMirrorMeasures(), new MirrorBuildMeasures());
    }
}
