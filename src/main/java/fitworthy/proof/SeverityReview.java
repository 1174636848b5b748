package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.book.Severity;
import fitworthy.source.Fault;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.util.List;

/** Whether a case says once more how severe each rule but a note is, so that a slip in its card makes the case fail. */
final class SeverityReview {

    private SeverityReview() {}

    static void look(Book book, List<CaseResult> trials, List<Fault> faults) {
        book.cards().forEach((id, card) -> {
            if (!card.severity().is(Severity.NOTE) && trials.stream().noneMatch(trial -> says(trial, id))) {
                String severity = Words.hyphenated(card.severity().value().name());
                faults.add(new Fault(
                        book.places().get(id).place(NodePath.of("severity")),
                        id,
                        "no case says that it is a " + severity,
                        "in a case that fires it: expect: [{id: " + id + ", severity: " + severity + "}]"));
            }
        });
    }

    /** A case in which a shop sets the severity says nothing of the card's. */
    private static boolean says(CaseResult trial, String rule) {
        return trial.text().text().expect().stream()
                        .anyMatch(finding ->
                                finding.id().equals(rule) && finding.severity().known())
                && trial.text().house().page().severities().stream()
                        .noneMatch(set -> set.rule().equals(rule));
    }
}
