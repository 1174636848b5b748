package fitworthy.figures.electrical;

import fitworthy.figures.plan.TopicGroup;

/** The electrical system: circuit by circuit, the charge that all circuits draw together, and the batteries. */
public final class ElectricalMeasures extends TopicGroup {

    public ElectricalMeasures() {
        super(new CircuitMeasures(), new ChargeMeasures(), new VoltageMeasures(), new BatteryMeasures());
    }
}
