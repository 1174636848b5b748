package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.Place;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The plain wagon is of Australia, its day 2026-11-25. */
class ViewTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final LocalDate LATER = LocalDate.of(2027, 1, 31);

    private static View.Read read(String region, String asOf, Node.Mapping tree) throws FaultsException {
        return new View(Books.engine(), region, asOf).read(tree, new ArrayList<>());
    }

    private static void isOf(String region, LocalDate day, View.Read read) {
        assertEquals(region, read.sheet().region());
        assertEquals(day, read.sheet().asOf());
        assertEquals(region, ((Node.Scalar) read.tree().get("region")).text());
        assertEquals(day.toString(), ((Node.Scalar) read.tree().get("as-of")).text());
    }

    @Test
    void aSheetIsLookedAtInItsOwnRegionAndOnItsOwnDayUnlessOthersAreGiven() throws FaultsException {
        Node.Mapping plain = Sheets.treeWith("title: plain");
        isOf("au", DAY, read(null, null, plain));
        assertSame(plain, read(null, null, plain).tree());
        isOf("uk", DAY, read("uk", null, plain));
        isOf("au", LATER, read(null, "2027-01-31", plain));
        isOf("uk", LATER, read("uk", "2027-01-31", plain));
    }

    @Test
    void aWaiverOfARuleThatIsNotThereIsAFault() {
        Node.Mapping tree =
                Sheets.treeWith("waivers: [{rule: mass.gvm-ovr, reason: Weighed, by: Sam Fitter, until: 2026-12-31}]");
        FaultsException refused = assertThrows(FaultsException.class, () -> read(null, null, tree));
        assertEquals(
                List.of("waivers.1.rule"),
                refused.faults().stream().map(Fault::path).toList());
    }

    @Test
    void whatCouldNotBeReadIsRefusedWithWhatWasFoundSoFar() {
        List<Fault> faults = new ArrayList<>(List.of(new Fault(Place.of("sheet"), "", "cannot be read", "a sheet")));
        for (String region : new String[] {null, "uk"}) {
            FaultsException refused = assertThrows(
                    FaultsException.class,
                    () -> new View(Books.engine(), region, region == null ? null : "2027-01-31").read(null, faults));
            assertEquals("cannot be read", refused.faults().get(0).problem());
        }
    }

    @Test
    void adviceIsThatOfTheRegionAndDay() throws FaultsException {
        Advice advice = new View(Books.engine(), "uk", null).advise(Sheets.treeWith("title: plain"), new ArrayList<>());
        assertEquals("uk", advice.sheet().region());
        assertEquals(1, advice.loadings().size());
    }

    @Test
    void anotherRegionOrDayHasAnotherKey() throws FaultsException {
        Set<String> keys = new HashSet<>();
        for (String region : new String[] {null, "au"}) {
            for (String day : new String[] {null, "2026-11-25"}) {
                keys.add(new View(Books.engine(), region, day).key());
            }
        }
        assertEquals(4, keys.size());
        assertEquals(new View(Books.engine(), "au", null).key(), new View(Books.engine(), "au", null).key());
    }
}
