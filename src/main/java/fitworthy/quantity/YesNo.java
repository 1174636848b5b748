package fitworthy.quantity;

/** A plain question's two answers; the third, not known, is an empty {@link Choice}. */
public enum YesNo {
    YES,
    NO
}
