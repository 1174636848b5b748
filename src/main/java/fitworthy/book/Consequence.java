package fitworthy.book;

/** What comes of a fault that is left as it is, gravest first. Findings of one severity stand in this order. */
public enum Consequence {
    /** What is then cut, fitted, bought or registered cannot be undone, or only at the price of doing it again. */
    IRREVERSIBLE,
    /** Somebody can be hurt. */
    INJURY,
    /** Something fails on the way, or the journey ends there. */
    BREAKS_DOWN,
    /** It costs money, time or comfort. */
    SPOILS,
    /** A rule of law or a paper is not kept. */
    FORMAL;

    /** What a card of a severity is taken to mean where it says nothing else. */
    static Consequence usual(Severity severity) {
        return switch (severity) {
            case STOP -> INJURY;
            case CHANGE -> BREAKS_DOWN;
            case CONFIRM -> FORMAL;
            case NOTE -> SPOILS;
        };
    }
}
