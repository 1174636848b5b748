package fitworthy.figures.electrical;

import fitworthy.figures.plan.JoinedTopic;

/** Cables, fuses, alternator and batteries. */
public final class ElectricalMeasures extends JoinedTopic {

    public ElectricalMeasures() {
        super(new CircuitMeasures(), new ChargeMeasures());
    }
}
