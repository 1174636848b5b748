package fitworthy.usual;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.book.Book;
import fitworthy.proof.Cases;
import fitworthy.source.FaultsException;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class UsualFillingTest {

    @Test
    void aCaseStandsOnEachUsualFigure() throws FaultsException {
        Book book = Books.shipped();
        Set<Filling.Use> used = new HashSet<>();
        Cases.read(Books.RULES, book).forEach(text -> used.addAll(Filling.uses(text.tree(), book)));
        Set<String> unused = new TreeSet<>();
        book.usual().inOrder().forEach(entry -> {
            for (int i = 0; i < entry.figure().values().size(); i++) {
                if (!used.contains(new Filling.Use(entry.id(), i))) {
                    unused.add(entry.id() + " " + entry.figure().values().get(i).value());
                }
            }
        });
        assertEquals(Set.of(), unused);
    }
}
