package fitworthy.figures.tyres;

import fitworthy.figures.plan.JoinedTopic;

/** Tyres and wheels: what they are rated for, and what a change of them does. */
public final class TyreMeasures extends JoinedTopic {

    public TyreMeasures() {
        super(new TyreRatingMeasures(), new TyreLimitMeasures(), new TyreChangeMeasures());
    }
}
