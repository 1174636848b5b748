package fitworthy.counter.desk;

import fitworthy.source.Fault;
import java.util.List;

/** What became of a change. */
public sealed interface Outcome {

    /** The answer that now holds, whatever became of the change. */
    Answer now();

    /** It stands in the file. @param before the answer before it */
    record Done(Answer before, Answer now) implements Outcome {}

    /** The file is as it was. @param faults what is wrong with the change */
    record Refused(List<Fault> faults, Answer now) implements Outcome {}

    /**
     * Somebody else has changed the same since this page was shown, so nothing was written.
     *
     * @param mine the text that the change would have made of what this page showed
     * @param lines what stands now, and what was wanted in its place
     */
    record Parted(String mine, Lines lines, Answer now) implements Outcome {}
}
