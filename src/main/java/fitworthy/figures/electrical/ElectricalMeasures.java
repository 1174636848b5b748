package fitworthy.figures.electrical;

import fitworthy.figures.plan.TopicGroup;

/** The electrical system: circuit by circuit, the charge that all circuits draw together, what charges, and the batteries. */
public final class ElectricalMeasures extends TopicGroup {

    /** The measure that is the remedy of all that is wrong with the cable or the fuse of a circuit. */
    public static final String CABLE_AND_FUSE = "electrical.cable-and-fuse";

    public ElectricalMeasures() {
        super(
                new DropMeasures(),
                new CircuitMeasures(),
                new CableWayMeasures(),
                new MainsMeasures(),
                new ChargeMeasures(),
                new FallingVoltageMeasures(),
                new SolarMeasures(),
                new VoltageMeasures(),
                new BatteryMeasures(),
                new CurrentLimitMeasures(),
                new InverterMeasures(),
                new ChargerHeatMeasures());
    }
}
