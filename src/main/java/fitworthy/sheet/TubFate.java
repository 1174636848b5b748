package fitworthy.sheet;

/** What becomes of the tub that a vehicle came with. */
public enum TubFate {
    NOT_SAID,
    COMES_OFF,
    STAYS_ON,
    NEVER_HAD;

    /** What comes off under a tray or canopy, its mass and place left to the book. */
    public static final String TUB = "{name: tub}";
    /** The field of a tray or canopy that says that nothing comes off for it. */
    public static final String TUB_STAYS = "tub-stays";
}
