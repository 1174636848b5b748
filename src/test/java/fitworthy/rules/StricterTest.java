package fitworthy.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.book.Book;
import fitworthy.source.FaultsException;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Which way a value of the shipped book is stricter, by the rules, held against what its name says. */
class StricterTest {

    @Test
    void aMostIsStricterLowerAndALeastIsStricterHigher() throws FaultsException {
        Book book = Books.shipped();
        int told = 0;
        Set<String> untold = new TreeSet<>();
        for (String id : book.practice().keySet()) {
            Stricter stricter = Stricter.of(book.rules().values(), id);
            if (stricter == Stricter.UNTOLD) {
                untold.add(id);
            } else if (id.endsWith("-most") || id.endsWith("-least")) {
                assertEquals(id.endsWith("-most") ? Stricter.LOWER : Stricter.HIGHER, stricter, id);
                told++;
            }
        }
        assertTrue(told > 50, "told " + told);
        // Compared by two rules in different ways, or by none: the distances at which a mirror's field is worked out.
        assertEquals(
                Set.of(
                        "fuel.exhaust-gap-floor",
                        "intake.velocity-most",
                        "mirrors.far-distance",
                        "mirrors.near-distance",
                        "recovery.winch-factor",
                        "suspension.lift-certified-most",
                        "towing.nose-up-far-most",
                        "tyres.passenger-divisor"),
                untold);
    }

    /** A value compared inside the pattern that matches it, and one on the left of another rule's comparison. */
    @Test
    void itIsToldOnWhicheverSideTheValueStands() throws FaultsException {
        assertEquals(Stricter.HIGHER, Stricter.of(Books.shipped().rules().values(), "body.chassis-approval-needed"));
        assertEquals(Stricter.HIGHER, Stricter.of(Books.shipped().rules().values(), "mass.gvm-reserve"));
    }
}
