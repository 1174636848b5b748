package fitworthy.sheet;

/** An end of the vehicle. */
public enum VehicleEnd {
    FRONT,
    REAR
}
