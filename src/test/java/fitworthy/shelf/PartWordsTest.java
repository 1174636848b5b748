package fitworthy.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.book.Book;
import fitworthy.sheet.Wanted;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One part or other thing, as it is typed. */
class PartWordsTest {

    private static List<Wanted> wanted(String typed, List<Fault> faults) throws FaultsException {
        return wanted(typed, Shelf.NONE, faults);
    }

    private static List<Wanted> wanted(String typed, Shelf shelf, List<Fault> faults) throws FaultsException {
        Book book = Books.shipped();
        return new PartWords(book.tables().shopWords(), shelf, book.usualPlaces(), new TypedFaults("", faults))
                .wanted(typed, "au");
    }

    /** What is meant by it, all of which is understood. */
    private static List<Wanted> understood(String typed, Shelf shelf) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        List<Wanted> wanted = wanted(typed, shelf, faults);
        assertEquals(List.of(), faults);
        return wanted;
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
                "dc-dc charger | dc-dc charger | {}",
                "roof roof rack | roof roof rack | {}",
                "lithium lithium battery | lithium lithium battery | {chemistry=lithium}",
                "slide-on camper | slide-on camper | {}",
                "used slide-on camper=620 kg | used slide-on camper | {mass=620 kg}",
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
                "\u2022 snorkel | snorkel | {}",
                "aerial on the bar | aerial | {place=bar, at=on the bar}",
                "tall aerial on bar | tall aerial | {place=bar, at=on the bar}",
                "roof rack over cab | roof rack | {at=over the cab}",
                "springs at the back | springs at the rear | {}",
                "heavier springs at the back, 50 mm | heavier springs at the rear | {lift=50 mm}",
                "springs in the back=40 mm | springs at the rear | {lift=40 mm}",
                "springs on the front axle | springs at the front | {}",
                "springs front | springs at the front | {}",
                "rear springs at the back | rear springs | {}",
                "springs at the front and back | springs | {}",
                "fridge in the back | fridge | {at=in the back}"
            })
    void isReadWithItsFigureAndPlace(String typed, String name, String said) throws FaultsException {
        List<Wanted> wanted = understood(typed, Shelf.NONE);
        assertEquals(1, wanted.size());
        assertEquals(name, wanted.get(0).name());
        assertEquals(said, wanted.get(0).said().toString());
        assertEquals("", wanted.get(0).reason());
        assertEquals(typed.matches(".*(rims|wheels).*"), wanted.get(0).ownRims());
    }

    private static Shelf shipped() {
        return Shelves.in(Path.of("scenarios/shelf")).of("new.yaml");
    }

    /** What it is called there is taken, in any letters and with its size before or behind; with another figure it is another. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "winch | Winch | fitments | {}",
                "WINCH | Winch | fitments | {}",
                "a winch | Winch | fitments | {}",
                "snorkel | Snorkel | fitments | {}",
                "charger in the canopy | Charger | fitments | {at=in the canopy}",
                "fridge 60 L | Fridge 60 L | fitments | {}",
                "fridge=60 L | Fridge 60 L | fitments | {}",
                "60 L fridge | Fridge 60 L | fitments | {}",
                "a 60 litre fridge | Fridge 60 L | fitments | {}",
                "water tank=60 L | Water tank 60 L | tanks | {}",
                "winch=39 kg | Winch | fitments | {}",
                "winch=40 kg | Winch | fitments | {}",
                "winch=40.1 kg | winch | '' | {mass=40.1 kg}",
                "winch=26 kg | winch | '' | {mass=26 kg}",
                "Winch=26 kg | Winch | fitments | {mass=26 kg}",
                "canopy=1.8 m | canopy | '' | {length=1.8 m}",
                "canopy=1.94 m | Canopy | fitments | {}",
                "tyres=265/70R17 | tyres | '' | {size=265/70R17}",
                "tyres=285/70R17 | Tyres | fitments | {}",
                "solar panel=200 W | solar panel | '' | {power=200 W}",
                "inverter=1000 W | inverter | '' | {continuous=about 1000 W}",
                "inverter=about 1000 W | inverter | '' | {continuous=about 1000 W}",
                "inverter=6 kg | inverter | '' | {mass=6 kg}",
                "dc dc charger=25 A | dc dc charger | '' | {output=about 25 A}",
                "lithium battery=100000 mAh | lithium battery | '' | {capacity=100000 mAh, chemistry=lithium}",
                "Steel tray=250 kg | Steel tray | fitments | {mass=250 kg}",
                "fridge=45 L | fridge 45 L | '' | {}",
                "bull bar | bull bar | '' | {}"
            })
    void theShelfIsReadInAnyLetters(String typed, String name, String list, String said) throws FaultsException {
        List<Wanted> wanted = understood(typed, shipped());
        assertEquals(1, wanted.size());
        assertEquals(name, wanted.get(0).name());
        assertEquals(list, wanted.get(0).shelf());
        assertEquals(said, wanted.get(0).said().toString());
    }

    /** One of a kind alone is no more than a guess: it is told, and not taken. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bull bar | Front bar, 58 kg; Steel bar, 72 kg",
                "bull bar=71 kg | Steel bar, 72 kg",
                "set of drawers | Drawers and pantry, 74 kg; Utility drawers, 85 kg; Wagon drawers, 48 kg",
                "raised intake | Snorkel, 6 kg",
                "long-range tank=70 L | Plover long-range tank, 22 kg",
                "long-range tank | Tarrenby long-range tank, 27 kg; Plover long-range tank, 22 kg",
                "water tank | Water tank 40 L, 6 kg; Water tank 58 L, 8 kg; Water tank 60 L, 8 kg",
                "fridge | Fridge 60 L, 42 kg; Fridge 40 L, 36 kg",
                "fridge=45 L | ''",
                "lead battery | ''",
                "compressor | ''",
                "winch | ''",
                "tub off | ''"
            })
    void whatOfTheShelfMayBeMeantIsTold(String typed, String told) throws FaultsException {
        List<Wanted> wanted = understood(typed, shipped());
        assertEquals(
                told,
                new ShelfParts(shipped())
                        .alike(wanted.get(0)).stream().map(Lying::words).collect(Collectors.joining("; ")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "camper | 'camper' is no kind of part, and no word for one that the rule book knows (did you mean 'camper shell' or 'demountable camper'",
                "rear springs at the front | 'rear springs at the front' is no kind of part",
                "snorkel at the back | 'snorkel at the back' is no kind of part",
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

    /** A figure that a part has no field for is told with those that it has, and what it draws with where that belongs. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lithium battery=1280 Wh | lithium battery=26 kg or lithium battery=100 Ah",
                "inverter=3 L | inverter=5 kg or inverter=1000 W",
                "fridge slide=60 W | fridge slide=12 kg, and what it draws as a circuit of the sheet",
                "winch=3 L | winch=38 kg"
            })
    void whatWouldBeRightIsToldByItsKind(String typed, String right) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        wanted(typed, faults);
        assertEquals(List.of(right), faults.stream().map(Fault::mend).toList());
    }

    /** A spare is not what the vehicle rolls on, and a camper that slides on stands where a canopy does. */
    @ParameterizedTest
    @CsvSource({
        "second spare wheel, [other]",
        "spare tyre, [other]",
        "wheels, [wheels]",
        "alloy wheels, [wheels]",
        "mud tyres, [tyres]",
        "alloy slide-on camper, [canopy]",
        "demountable camper, [canopy]",
        "fridge slide, [other]"
    })
    void aWordMeansTheKindThatItSays(String typed, String terms) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        assertEquals(
                List.of(terms),
                wanted(typed, faults).stream()
                        .map(wanted -> wanted.meaning().terms().toString())
                        .toList(),
                faults.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3. a snorkel, for the dust | snorkel | {} | for the dust",
                "snorkel for the dust and the fords | snorkel | {} | for the dust and the fords",
                "a roof rack over the cab, for two swags | roof rack | {at=over the cab} | for two swags",
                "fridge=60 L to keep it cool | fridge 60 L | {} | to keep it cool"
            })
    void aReasonIsKeptAsOne(String typed, String name, String said, String reason) throws FaultsException {
        List<Wanted> wanted = understood(typed, Shelf.NONE);
        assertEquals(1, wanted.size());
        assertEquals(name, wanted.get(0).name());
        assertEquals(said, wanted.get(0).said().toString());
        assertEquals(reason, wanted.get(0).reason());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bar and winch | [bar, winch] | [{}, {}]",
                "2. a bull bar with a winch in it, and a pair of spotlights | [bull bar, winch, pair of spotlights]"
                        + " | [{}, {at=in the bull bar}, {}]",
                "bar=60 kg and winch=26 kg | [bar, winch] | [{mass=60 kg}, {mass=26 kg}]",
                "a 60 litre fridge and drawers in the canopy | [fridge 60 L, drawers]"
                        + " | [{at=in the canopy}, {at=in the canopy}]",
                "10. a 60 litre fridge and a set of drawers in the canopy | [fridge 60 L, set of drawers]"
                        + " | [{at=in the canopy}, {at=in the canopy}]",
                "snorkel and lamps on the roof | [snorkel, lamps] | [{}, {at=on the roof}]",
                "a canopy and drawers in the canopy | [canopy, drawers] | [{}, {at=in the canopy}]",
                "winch in the bar and lamps | [winch, lamps] | [{at=in the bar}, {}]",
                "1. the tub off, an alloy tray and a canopy on it, about 1.8 m long | [tub off, alloy tray, canopy]"
                        + " | [{}, {}, {length=about 1.8 m, at=on the tray}]",
                "4. a long-range tank, 70 litres, behind the axle, beside the 80 litres it has | [long-range tank]"
                        + " | [{capacity=70 L, at=behind the axle}]",
                "7. tyres a size up, 265/70R17, on the rims it has | [tyres] | [{size=265/70R17}]",
                "8. a second battery, lithium, 100 Ah, with a charger, in the canopy | [lithium second battery, charger]"
                        + " | [{capacity=100 Ah, chemistry=lithium, place=canopy, at=in the canopy}, {at=in the canopy}]",
                "Second battery, lithium, 100 Ah | [lithium Second battery] | [{capacity=100 Ah, chemistry=lithium}]"
            })
    void thingsThatAreJoinedAreParted(String typed, String names, String said) throws FaultsException {
        List<Wanted> wanted = understood(typed, Shelf.NONE);
        assertEquals(names, wanted.stream().map(Wanted::name).toList().toString());
        assertEquals(said, wanted.stream().map(Wanted::said).toList().toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bull bar with a winch in it and gizmo | 'gizmo' is no kind of part that the rule book knows",
                "bar and wnch | 'wnch' is no kind of part that the rule book knows (did you mean 'winch'?)",
                "gizmo and bar | 'gizmo' is no kind of part that the rule book knows",
                "lift kit with heavier springs | 'lift kit with heavier springs' may be one thing or two of a kind",
                "gizmo and widget | 'gizmo' is no kind of part that the rule book knows"
            })
    void ofThingsThatAreJoinedItIsToldWhichIsNotKnown(String typed, String problem) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        assertEquals(List.of(), wanted(typed, faults));
        assertEquals(List.of(problem), faults.stream().map(Fault::problem).toList());
    }

    @Test
    void eachOfSeveralThingsMayHaveAReason() throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        assertEquals(
                List.of("for the dust", ""),
                wanted("snorkel for the dust and a winch", faults).stream()
                        .map(Wanted::reason)
                        .toList());
        assertEquals(List.of(), faults);
    }

    @Test
    void nothingIsMadeOfWhatIsNoPart() throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        assertEquals(List.of(), wanted("flux thing", faults));
        assertEquals(
                "bull bar, winch=26 kg, NAME=other for what no check knows, or Dog=cargo for a load",
                faults.get(0).mend());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bull bar and gizmo | one thing a line, in few words: bull bar",
                "bull bar with a winch and gizmo | one thing a line, in few words: bull bar",
                "lift kit with heavier springs | one thing a line, in few words: bull bar",
                "snorkel for the dust, a winch | one thing a line, in few words: bull bar",
                "gizmo for the dust | one thing a line, in few words: bull bar",
                "gizmo | bull bar, winch=26 kg"
            })
    void severalThingsInALineAreToldToBeParted(String typed, String right) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        assertEquals(List.of(), wanted(typed, faults));
        assertEquals(1, faults.size());
        assertEquals(right, faults.get(0).mend().substring(0, right.length()));
    }
}
