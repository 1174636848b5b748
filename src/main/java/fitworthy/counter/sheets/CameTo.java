package fitworthy.counter.sheets;

import fitworthy.advice.Arrangement;
import fitworthy.book.Severity;
import fitworthy.printout.words.Verdict;
import fitworthy.source.Fault;
import fitworthy.source.Words;
import java.util.List;

/**
 * What a sheet comes to.
 *
 * @param sort the worst of what was found in small letters, {@code none} where nothing was, {@code fault} where it cannot
 *     be read
 * @param mark the same as a word that stands before the rest; empty where nothing was found
 */
public record CameTo(String sort, String mark, String words) {

    static CameTo of(Arrangement arrangement) {
        String worst = arrangement
                .advice()
                .worst()
                .map(Severity::name)
                .map(Words::hyphenated)
                .orElse("none");
        return new CameTo(worst, worst.equals("none") ? "" : worst, Verdict.of(arrangement));
    }

    /** @param faults at least one */
    static CameTo of(List<Fault> faults) {
        Fault first = faults.get(0);
        return new CameTo(
                "fault",
                "cannot be read",
                faults.size() + (faults.size() == 1 ? " fault: " : " faults, the first: ")
                        + (first.place().line() > 0 ? "line " + first.place().line() + ": " : "")
                        + (first.path().isEmpty() ? "" : first.path() + " ")
                        + first.problem() + ". Right: " + first.mend());
    }
}
