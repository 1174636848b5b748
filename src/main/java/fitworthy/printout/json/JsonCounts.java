package fitworthy.printout.json;

import fitworthy.advice.Arrangement;
import fitworthy.advice.Counts;
import fitworthy.book.Severity;

/** What advice comes to in numbers, as JSON has them. */
final class JsonCounts {

    private JsonCounts() {}

    /** How many checks ended in which way. */
    record Checks(
            long stop,
            long change,
            long confirm,
            long note,
            long waived,
            long notAssessed,
            long figuresMissing,
            long met,
            long inOrderIfGuessesHold,
            long doesNotApply) {

        static Checks of(Counts counts) {
            return new Checks(
                    counts.found(Severity.STOP),
                    counts.found(Severity.CHANGE),
                    counts.found(Severity.CONFIRM),
                    counts.found(Severity.NOTE),
                    counts.waived(),
                    counts.notAssessed(),
                    counts.figuresMissing(),
                    counts.met(),
                    counts.held(),
                    counts.doesNotApply());
        }
    }

    /** What the headline counts: what is told by itself, and what is told under it. */
    record Headings(long stop, long change, long confirm, long note, long toldUnder) {

        static Headings of(Arrangement.Headings headings) {
            return new Headings(
                    headings.of(Severity.STOP),
                    headings.of(Severity.CHANGE),
                    headings.of(Severity.CONFIRM),
                    headings.of(Severity.NOTE),
                    headings.under());
        }
    }
}
