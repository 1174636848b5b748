package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.book.Severity;
import fitworthy.proof.Cases.Expected;
import fitworthy.source.Fault;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whether a case says once more how severe each rule but a note is, so that a slip in its card makes the case fail. */
final class SeverityReview {

    private SeverityReview() {}

    static void look(Book book, List<CaseResult> trials, List<Fault> faults) {
        Set<String> said = trials.stream().flatMap(SeverityReview::said).collect(Collectors.toSet());
        book.cards().forEach((id, card) -> {
            if (!card.severity().is(Severity.NOTE) && !said.contains(id)) {
                String severity = Words.hyphenated(card.severity().value().name());
                faults.add(new Fault(
                        book.places().get(id).place(NodePath.of("severity")),
                        id,
                        "no case says that it is a " + severity,
                        "in a case that fires it: expect: [{id: " + id + ", severity: " + severity + "}]"));
            }
        });
    }

    /** The rules whose severity a case says; one in which a shop sets it says nothing of the card's. */
    private static Stream<String> said(CaseResult trial) {
        return trial.text().text().expect().stream()
                .filter(finding -> finding.severity().known())
                .map(Expected::id)
                .filter(rule -> trial.text().house().page().severities().stream()
                        .noneMatch(set -> set.rule().equals(rule)));
    }
}
