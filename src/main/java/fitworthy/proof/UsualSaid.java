package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.proof.Cases.Case;
import fitworthy.proof.Cases.ExpectedUsual;
import fitworthy.usual.Filling;
import fitworthy.usual.Use;
import java.util.List;

/** What a case says that is usual, held against what the book has. */
final class UsualSaid {

    private UsualSaid() {}

    /** Adds a line for each usual figure of a case that is another in the book. */
    static void differences(Case text, Book book, List<String> problems) {
        if (text.text().usual().isEmpty()) {
            return;
        }
        List<Use> uses = Filling.uses(text.tree(), book);
        for (ExpectedUsual expected : text.text().usual()) {
            List<String> values = uses.stream()
                    .filter(use -> use.id().equals(expected.id()))
                    .map(use -> value(book, use))
                    .distinct()
                    .toList();
            if (!values.contains(expected.value())) {
                problems.add(expected.id() + ": usually expected " + expected.value() + ", but "
                        + (values.isEmpty()
                                ? "the sheet leaves no such field to the book"
                                : "the book has " + String.join(" and ", values)));
            }
        }
    }

    /** What the book has. */
    static String value(Book book, Use use) {
        return book.usual().figure(use.id()).values().get(use.index()).value();
    }
}
