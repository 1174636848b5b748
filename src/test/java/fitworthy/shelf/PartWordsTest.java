package fitworthy.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import fitworthy.Books;
import fitworthy.book.Book;
import fitworthy.sheet.Wanted;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One part or other thing, as it is typed. */
class PartWordsTest {

    private static Wanted wanted(String typed, List<Fault> faults) throws FaultsException {
        Book book = Books.shipped();
        return new PartWords(book.tables().shopWords(), Shelf.NONE, book.usualPlaces(), new TypedFaults("", faults))
                .wanted(typed, "au");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "battery 100 Ah in the canopy | battery | {capacity=100 Ah, place=canopy, at=in the canopy}",
                "battery 100 Ah in the cab | battery | {capacity=100 Ah, place=cabin, at=in the cab}",
                "battery 100 Ah under the bonnet | battery | {capacity=100 Ah, place=engine-bay, at=under the bonnet}",
                "battery 100 Ah in the boot | battery | {capacity=100 Ah, at=in the boot}",
                "battery 100 Ah on the canopy | battery | {capacity=100 Ah, at=on the canopy}",
                "lithium battery | lithium battery | {chemistry=lithium}",
                "lamps on the roof | lamps | {at=on the roof}",
                "lamps on the bull bar | lamps | {at=on the bull bar}",
                "fridge in the canopy | fridge | {at=in the canopy}",
                "tyres 265/70R17 on the rims it has | tyres | {size=265/70R17}",
                "265/70R17 tyres on the rims it has | tyres | {size=265/70R17}",
                "mud tyres=265/70R17 121S on its rims | mud tyres | {size=265/70R17 121S}",
                "Tyres on the standard wheels | Tyres | {}",
                "canopy about 1.8 m long | canopy | {length=about 1.8 m}",
                "9. a 200 watt solar panel on the canopy | solar panel | {power=200 W, at=on the canopy}",
                "12) roof rack | roof rack | {}",
                "- fridge 60 L | fridge 60 L | {}",
                "\u2022 snorkel | snorkel | {}"
            })
    void isReadWithItsFigureAndPlace(String typed, String name, String said) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        Wanted wanted = wanted(typed, faults);
        assertEquals(List.of(), faults);
        assertEquals(name, wanted.name());
        assertEquals(said, wanted.said().toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "canopy on the rims it has | 'canopy on the rims it has' is no kind of part",
                "tyres on the rims in my shed | 'tyres on the rims in my shed' is no kind of part",
                "winch=3 L | '3 L' has a unit of volume",
                "tyres=265/17 | '265/17' has a unit that is not known"
            })
    void whatCannotBeMeantIsTold(String typed, String fault) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        wanted(typed, faults);
        assertEquals(1, faults.size(), faults.toString());
        assertEquals(fault, faults.get(0).problem().substring(0, fault.length()));
    }

    @Test
    void nothingIsMadeOfWhatIsNoPart() throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        assertNull(wanted("flux thing", faults));
        assertEquals(
                "bull bar, winch=26 kg, NAME=other for what no check knows, or Dog=cargo for a load",
                faults.get(0).mend());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3. a snorkel, for the dust | one thing a line, in few words: bull bar",
                "bull bar and gizmo | one thing a line, in few words: bull bar",
                "gizmo | bull bar, winch=26 kg"
            })
    void severalThingsInALineAreToldToBeParted(String typed, String right) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        assertNull(wanted(typed, faults));
        assertEquals(1, faults.size());
        assertEquals(right, faults.get(0).mend().substring(0, right.length()));
    }
}
