package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.book.UsualFigure;
import fitworthy.book.UsualFigures;
import fitworthy.source.Fault;
import fitworthy.usual.Filling;
import fitworthy.usual.Use;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Whether a case stands on each usual figure, so that none is in the book that nobody has seen at work. */
final class UsualReview {

    private UsualReview() {}

    static void look(Book book, List<CaseResult> trials, List<Fault> faults) {
        Set<Use> used = new HashSet<>();
        trials.forEach(trial -> used.addAll(Filling.uses(trial.text().tree(), book)));
        for (UsualFigures.Entry entry : book.usual().inOrder()) {
            for (int i = 0; i < entry.figure().values().size(); i++) {
                UsualFigure.Value value = entry.figure().values().get(i);
                if (!value.none() && !used.contains(new Use(entry.id(), i))) {
                    faults.add(new Fault(
                            book.usual().place(entry.id(), i),
                            entry.id(),
                            "no case leaves its field to the book where it is usually " + value.value(),
                            "a case of rules/usual/cases.yaml with 'usual' in that field, or with such a thing"
                                    + " and 'assume-usual: yes'"));
                }
            }
        }
    }
}
