package fitworthy.proof;

import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.printout.words.Wording;
import fitworthy.rules.Guards;
import fitworthy.source.Fault;
import java.util.List;
import java.util.Optional;

/**
 * Whether the condition of a rule, what its card holds the figure against, and the margin where it fires say the same: a
 * limit that is passed.
 */
final class Direction {

    private static final String MEND =
            "'against' and 'allowed' of its card as the condition compares: at-most where it fires above, at-least below";

    private final Book book;
    private final List<CaseResult> trials;

    Direction(Book book, List<CaseResult> trials) {
        this.book = book;
        this.trials = trials;
    }

    /** Tells the rules that say one thing by their condition and another by their card. */
    void look(List<Fault> faults) {
        book.cards().forEach((id, card) -> {
            if (!card.against().isEmpty()) {
                problem(id, card).ifPresent(problem -> faults.add(new Fault(book.place(id), id, problem, MEND)));
            }
        });
    }

    private Optional<String> problem(String id, Card card) {
        Guards guards = Guards.of(book.rules().get(id).condition(), card.judges(), card.worse());
        if (guards.fireAsItGetsBetter()) {
            return guards.fireAsItGetsWorse()
                    ? Optional.empty()
                    : Optional.of("fires as " + card.judges() + " gets better by its card, which allows "
                            + (card.atLeast() ? "at-least " : "at-most ") + card.against());
        }
        return trials.stream()
                .flatMap(trial -> trial.advice().findings().stream()
                        .filter(finding -> finding.judged().id().equals(id) && leavesSome(finding))
                        .map(finding -> "fires in the case '"
                                + trial.text().text().name() + "' with "
                                + Wording.margin(
                                        finding.judged(), finding.comparison().orElseThrow())))
                .findFirst();
    }

    private static boolean leavesSome(Finding finding) {
        return finding.comparison().filter(compared -> compared.margin() > 0).isPresent();
    }
}
