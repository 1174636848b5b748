package fitworthy.printout.words;

import fitworthy.book.Severity;
import java.util.Arrays;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;

/** What findings of a severity are called where they are counted. */
public final class SeverityWords {

    private SeverityWords() {}

    /** Counts by severity, the worst first; those of which there are none are left out. */
    public static String list(ToLongFunction<Severity> counts) {
        return Arrays.stream(Severity.values())
                .filter(severity -> counts.applyAsLong(severity) > 0)
                .map(severity -> counts.applyAsLong(severity) + " " + behind(counts.applyAsLong(severity), severity))
                .collect(Collectors.joining(", "));
    }

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
