package fitworthy.figures.tyres;

import fitworthy.figures.plan.JoinedTopic;

/** Tyres and wheels. */
public final class TyreMeasures extends JoinedTopic {

    public TyreMeasures() {
        super(new TyreRatingMeasures(), new TyreChangeMeasures());
    }
}
