package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.sheet.Sheet;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A sheet seen in its own region and on its own day, and in others. */
class ViewTest {

    private static final Node.Mapping TREE = Sheets.treeWith("region: us\nas-of: 2025-03-01\n");

    private static View view(String region, String asOf) throws FaultsException {
        return new View(Books.engine(), region, asOf);
    }

    @Test
    void aSheetIsSeenAsItSaysUnlessTheViewSaysOtherwise() throws FaultsException {
        Sheet own = view(null, null).read(TREE, new ArrayList<>()).sheet();
        assertEquals("us", own.region());
        assertEquals(LocalDate.of(2025, 3, 1), own.asOf());
        View.Read other = view("uk", "2026-01-02").read(TREE, new ArrayList<>());
        assertEquals("uk", other.sheet().region());
        assertEquals(LocalDate.of(2026, 1, 2), other.sheet().asOf());
        assertEquals("uk", ((Node.Scalar) other.tree().get("region")).text());
        assertEquals(
                "uk", view("uk", null).advise(TREE, new ArrayList<>()).sheet().region());
    }

    /** A waiver of a rule that is not there is told of the tree, before the sheet is bound. */
    @Test
    void waiversAreHeldAgainstTheBookOfTheView() throws FaultsException {
        Node.Mapping tree = Sheets.treeWith(
                "waivers: [{rule: mass.gvm-ovr, subject: vehicle, reason: agreed, by: owner, until: 2027-01-01}]");
        FaultsException told =
                assertThrows(FaultsException.class, () -> view(null, null).read(tree, new ArrayList<>()));
        assertEquals("waivers.1.rule", told.faults().get(0).path());
    }

    @Test
    void whatCouldNotBeReadIsNoSheet() {
        List<Fault> faults = new ArrayList<>();
        Node.Mapping none = NodeReader.read("sheet.yaml", "title: [", faults);
        assertThrows(FaultsException.class, () -> view("uk", "2026-01-02").read(none, faults));
    }

    @Test
    void anotherRegionOrDayIsKnownApart() throws FaultsException {
        String own = view(null, null).key();
        assertEquals(own, view(null, null).key());
        assertNotEquals(own, view("uk", null).key());
        assertNotEquals(own, view(null, "2026-01-02").key());
        assertEquals(Books.engine().book(), view(null, null).book());
    }
}
