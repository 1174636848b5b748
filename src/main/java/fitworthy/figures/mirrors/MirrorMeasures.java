package fitworthy.figures.mirrors;

import fitworthy.figures.plan.JoinedTopic;

/** Inside and outside mirrors: what they show, and how they are built. */
public final class MirrorMeasures extends JoinedTopic {

    public MirrorMeasures() {
        super(new MirrorViewMeasures(), new InnerMirrorMeasures(), new MirrorBuildMeasures());
    }
}
