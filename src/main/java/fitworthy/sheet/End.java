package fitworthy.sheet;

/** An end of the vehicle. */
public enum End {
    FRONT,
    REAR
}
