package fitworthy.printout.words;

import fitworthy.book.Severity;

/** What findings of a severity are called where they are counted. */
public final class SeverityWords {

    private SeverityWords() {}

    /** What so many findings of a severity are called behind their number. */
    public static String behind(long count, Severity severity) {
        return switch (severity) {
            case STOP -> count == 1 ? "stop" : "stops";
            case CHANGE -> count == 1 ? "change" : "changes";
            case CONFIRM -> "to confirm";
            case NOTE -> count == 1 ? "note" : "notes";
        };
    }
}
