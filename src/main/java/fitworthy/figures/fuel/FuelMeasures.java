package fitworthy.figures.fuel;

import fitworthy.figures.plan.TopicGroup;

/** Fuel from the tank to the engine, and the exhaust behind it. */
public final class FuelMeasures extends TopicGroup {

    public FuelMeasures() {
        super(new FuelSystemMeasures(), new ExhaustMeasures());
    }
}
