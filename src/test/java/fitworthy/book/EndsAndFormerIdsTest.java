package fitworthy.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.EditedBook;
import fitworthy.source.FaultsException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What must hold of the days on which rules and values end, and of what they were called before. */
class EndsAndFormerIdsTest {

    private static List<String> faults(EditedBook edited) throws FaultsException {
        Book book = edited.book();
        List<String> told = new ArrayList<>();
        CardWords.Faults faults = (id, problem, mend, path) -> told.add(id + " " + path + " " + problem);
        new EndChecks(book.cards(), book.rules(), book.practice(), faults).check();
        new FormerIdChecks(book.cards(), book.practice(), faults).check();
        return told;
    }

    @Test
    void theShippedBookHasNone() throws FaultsException {
        assertEquals(List.of(), faults(new EditedBook()));
    }

    @Test
    void aRuleEndsAfterItCameIntoTheBook() throws FaultsException {
        assertEquals(
                List.of("water.freezes ends ends on 2026-11-25, not after it came into the book"),
                faults(new EditedBook().rule("water.freezes", "2026-11-25")));
        assertEquals(List.of(), faults(new EditedBook().rule("water.freezes", "2026-11-26")));
    }

    @Test
    void aRuleEndsNoLaterThanAValueOfIts() throws FaultsException {
        assertEquals(
                List.of(
                        "water.freezes ends ends on 2027-03-02, but water.frost, with which it compares, on 2027-03-01"),
                faults(new EditedBook().rule("water.freezes", "2027-03-02").value("water.frost", "2027-03-01")));
        assertEquals(
                List.of(),
                faults(new EditedBook().rule("water.freezes", "2027-03-01").value("water.frost", "2027-03-01")));
    }

    @Test
    void noValueBeginsOnceItHasEnded() throws FaultsException {
        assertEquals(
                List.of("water.frost values.1 a value begins on 2000-01-01, when it has ended"),
                faults(new EditedBook().value("water.frost", "2000-01-01")));
        assertEquals(List.of(), faults(new EditedBook().value("water.frost", "2000-01-02")));
    }

    @Test
    void whatTheFiguresAskForCannotEnd() throws FaultsException {
        assertEquals(
                List.of("water.reserve-least ends the figures ask for it, so it cannot end"),
                faults(new EditedBook().value("water.reserve-least", "2027-03-01")));
    }

    /** across.certificate-needed is also found by other advice; paperwork's price hangs on it alone. */
    @Test
    void aRuleThatHangsOnAdviceEndsWithIt() throws FaultsException {
        String builder = "paperwork.";
        List<String> told = faults(new EditedBook().rule("across.certificate-needed", "2027-03-01")).stream()
                .filter(fault -> fault.startsWith(builder))
                .toList();
        assertEquals(1, told.size(), told.toString());
        assertEquals(
                " builds on what ends on 2027-03-01, and does not end itself",
                told.get(0).substring(told.get(0).indexOf(' ')).replaceAll("^ +", " "));
        String id = told.get(0).substring(0, told.get(0).indexOf(' '));
        assertEquals(
                List.of(),
                faults(new EditedBook()
                                .rule("across.certificate-needed", "2027-03-01")
                                .rule(id, "2027-03-01"))
                        .stream()
                        .filter(fault -> fault.startsWith(builder))
                        .toList());
        assertEquals(List.of(), faults(new EditedBook().rule("body.chassis-unapproved", "2027-03-01")));
    }

    @Test
    void aFormerIdIsNeitherInUseNorGivenTwice() throws FaultsException {
        assertEquals(
                List.of(
                        "mass.gvm-over formerly.1 its former id 'mass.axle-over' is in use",
                        "mass.gvm-tight formerly.1 its former id 'water.frost' is in use"),
                faults(new EditedBook()
                        .rule("mass.gvm-over", "", "mass.axle-over")
                        .rule("mass.gvm-tight", "", "water.frost")));
        assertEquals(
                List.of(
                        "mass.gvm-tight formerly.1 its former id 'mass.over' stands in the book twice; first at"
                                + " 'mass.gvm-over'",
                        "water.frost formerly.1 its former id 'mass.over' stands in the book twice; first at"
                                + " 'mass.gvm-over'"),
                faults(new EditedBook()
                        .rule("mass.gvm-over", "", "mass.over")
                        .rule("mass.gvm-tight", "", "mass.over")
                        .value("water.frost", "", "mass.over")));
        assertEquals(
                List.of("mass.gvm-over formerly.2 its former id 'Over' is not written as ids are"),
                faults(new EditedBook().rule("mass.gvm-over", "", "mass.over", "Over")));
    }
}
