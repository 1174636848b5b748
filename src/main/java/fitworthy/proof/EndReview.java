package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.source.Fault;
import java.time.LocalDate;
import java.util.List;

/**
 * Whether the cases show the day on which a rule or a practice value ends: one sheet on which a rule fires on the day
 * before, and on which it is checked no more on that day.
 */
final class EndReview {

    private final List<CaseResult> trials;
    private final List<Fault> faults;

    EndReview(List<CaseResult> trials, List<Fault> faults) {
        this.trials = trials;
        this.faults = faults;
    }

    void look(Book book) {
        book.cards().forEach((id, card) -> {
            if (card.ends() != null) {
                end(book, id, List.of(id), card.ends());
            }
        });
        book.practice().forEach((id, value) -> {
            if (value.ends() != null) {
                end(book, id, book.users(id), value.ends());
            }
        });
    }

    private void end(Book book, String what, List<String> rules, LocalDate day) {
        if (rules.stream().noneMatch(rule -> shown(rule, day))) {
            LocalDate before = day.minusDays(1);
            faults.add(new Fault(
                    book.place(what),
                    what,
                    "no sheet is found fault with on " + before + " and not on " + day + ", when it ends",
                    "two cases with one sheet, 'as-of: " + before + "' with the rule under 'expect' and 'as-of: " + day
                            + "' with it under 'retired'"));
        }
    }

    private boolean shown(String rule, LocalDate day) {
        return trials.stream()
                .filter(now -> now.text().sheet().asOf().equals(day)
                        && now.text().text().retired().contains(rule))
                .anyMatch(now -> trials.stream()
                        .anyMatch(old -> old.text().sheet().asOf().equals(day.minusDays(1))
                                && DayReview.sameSheet(old.text(), now.text())
                                && old.advice().findings().stream()
                                        .anyMatch(
                                                finding -> finding.judged().id().equals(rule))));
    }
}
