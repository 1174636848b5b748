package fitworthy.counter.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.advice.View;
import fitworthy.counter.AtCounter;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import fitworthy.shelf.Shelves;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.NodeReader;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A new sheet of a vehicle and parts in a shop's own words. */
class NewPageTest {

    /** The twelve wishes of the letter in docs/first-answer.md, as somebody at the counter types them. */
    private static final List<String> WISHES = List.of(
            "alloy tray",
            "canopy",
            "bull bar",
            "winch",
            "spotlights",
            "snorkel",
            "long-range tank=70 L",
            "water tank=60 L",
            "lift kit",
            "springs",
            "tyres",
            "second battery",
            "charger",
            "solar panel",
            "fridge",
            "drawers",
            "UHF radio",
            "aerial",
            "roof rack");

    @RegisterExtension
    static final AtCounter served = new AtCounter();

    private HttpResponse<String> made(List<String> parts, String... more) throws Exception {
        return sent("/new", parts, more);
    }

    private HttpResponse<String> sent(String path, List<String> parts, String... more) throws Exception {
        List<String> fields = new ArrayList<>(
                List.of("vehicle", "Plover HD 2.7", "fuel", "diesel", "people", "2", "region", "au-qld", "do", "make"));
        for (int i = 0; i < more.length; i += 2) {
            int known = fields.indexOf(more[i]);
            if (known >= 0) {
                fields.set(known + 1, more[i + 1]);
            } else {
                fields.addAll(List.of(more[i], more[i + 1]));
            }
        }
        parts.forEach(part -> fields.addAll(List.of("part", part)));
        return served.post(path, fields.toArray(String[]::new));
    }

    /** Reads it as any other sheet is read. @throws FaultsException with what is wrong with it */
    private static Sheet read(Path sheet) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        return new View(Books.engine(), null, null, Shelves.beside())
                .read(NodeReader.read(sheet, faults), faults)
                .sheet();
    }

    @Test
    void theWishesOfALetterMakeASheetThatIsRead() throws Exception {
        HttpResponse<String> page = made(
                WISHES,
                "customer",
                "Marek and Una Lindqvist",
                "quote",
                "KT-0500",
                "trailer",
                "Van",
                "trailer-mass",
                "about 2850 kg",
                "notes",
                "we have ordered a utility\n\n12. a roof rack: for two swags");
        assertEquals("/sheets/marek-and-una-lindqvist.yaml", page.uri().getPath());
        Path sheet = served.folder().resolve("marek-and-una-lindqvist.yaml");
        assertEquals(
                List.of("Main tank", "Long-range tank", "Water tank 60 L"),
                read(sheet).tanks().stream().map(Tank::name).toList());
        String text = Files.readString(sheet);
        assertTrue(text.startsWith("# we have ordered a utility\n#\n# 12. a roof rack: for two swags\n#"), text);
        for (String line : List.of(
                "customer: Marek and Una Lindqvist",
                "quote: KT-0500",
                "region: au-qld",
                "capacity: 70 L",
                "  - Water tank 60 L",
                "mass: about 2850 kg",
                "trip: {people: 2}")) {
            assertTrue(text.contains(line), line);
        }
    }

    @Test
    void whatLiesOnTheShelfIsTakenFromIt() throws Exception {
        HttpResponse<String> look = sent("/new/look", List.of("Snorkel"), "vehicle", "Tarrenby 3.0 wagon");
        assertEquals(2, look.body().split(">from the shelf<", -1).length - 1);
        made(List.of("Snorkel"), "vehicle", "Tarrenby 3.0 wagon", "file", "wagon");
        Path sheet = served.folder().resolve("wagon.yaml");
        assertEquals("Tarrenby 3.0 wagon", read(sheet).vehicle().name());
        assertTrue(Files.readString(sheet).contains("vehicle: Tarrenby 3.0 wagon\n"));
        assertTrue(Files.readString(sheet).contains("  - Snorkel\n"));
    }

    /** A word is a guess at a place; what the shelf has measured is kept where the word may mean just that. */
    @Test
    void theMeasuredPlaceOfTheShelfIsKeptUnlessTheWordsContradictIt() throws Exception {
        String[] plover = {"vehicle", "Plover HD 2.7 crew utility", "fuel", "diesel", "tub", "off"};
        List<String> wishes = List.of(
                "alloy tray",
                "canopy",
                "UHF radio with a tall aerial on the bar",
                "fridge 60 L in the canopy",
                "driving lamps on the roof");
        String look = sent("/new/look", wishes, plover).body();
        assertTrue(said(look, "part-3").endsWith(", where the shelf has measured Tall aerial"), said(look, "part-3"));
        assertTrue(said(look, "part-4").endsWith(", where the shelf has measured Fridge 60 L"), said(look, "part-4"));
        assertEquals("from the shelf, with its circuit, on the roof", said(look, "part-5"));
        String[] named = Stream.concat(Stream.of(plover), Stream.of("file", "measured-places"))
                .toArray(String[]::new);
        made(wishes, named);
        holds(
                served.text("measured-places.yaml"),
                "  - Tall aerial\n",
                "  - Fridge 60 L\n",
                "  - {from: Driving lamps, at: on the roof}\n");
    }

    /**
     * The shelf has the tank 3900 mm behind the front axle. Of a wheelbase of 3080 mm "behind the axle" is at 3580 mm, off by
     * 300 mm, and what is taped without a tolerance by 50 mm: up to 3930 mm is meant.
     */
    @Test
    void theMeasuredPlaceOfATankIsKeptTooWhereTheWordsMayMeanIt() throws Exception {
        String[] plover = {"vehicle", "Plover HD 2.7 crew utility", "fuel", "diesel", "file", "tank-place"};
        String behind = "Plover long-range tank behind the axle";
        String look = sent("/new/look", List.of(behind), plover).body();
        assertTrue(
                said(look, "part-1").endsWith(", where the shelf has measured Plover long-range tank"),
                said(look, "part-1"));
        made(List.of(behind), plover);
        holds(served.text("tank-place.yaml"), "  - Plover long-range tank\n");
    }

    /** The shelf's rear springs lift 40 mm; a guess at a lift never gives way to it unsaid. */
    @Test
    void rearSpringsOfTheShelfThatLiftOtherwiseThanTheKitAreTold() throws Exception {
        String look =
                sent("/new/look", List.of("50 mm lift kit", "Rear springs")).body();
        assertTrue(
                said(look, "part-2").contains("On the shelf Rear springs has 40 mm of lift, not 50 mm as "),
                said(look, "part-2"));
        String same =
                sent("/new/look", List.of("40 mm lift kit", "Rear springs")).body();
        assertFalse(said(same, "part-2").contains("of lift"), said(same, "part-2"));
    }

    /** What one of the kind on the shelf is for is offered, and taken by a press. */
    @Test
    void whatLiesOnTheShelfIsOfferedBeforeItIsGuessed() throws Exception {
        String look = sent(
                        "/new/look", List.of("bull bar", "bull bar with a winch in it", "raised intake, for the dust"))
                .body();
        holds(
                look,
                "data-line=\"Steel bar\" data-of=\"part-1\">take Steel bar, 72 kg</button>",
                "data-line=\"Steel bar with a winch in it\" data-of=\"part-2\">take Steel bar, 72 kg</button>",
                "data-line=\"Snorkel for the dust\" data-of=\"part-3\">take Snorkel, 6 kg</button>");
        String taken = sent("/new/look", List.of("Steel bar with a winch in it", "Snorkel for the dust"))
                .body();
        assertTrue(
                said(taken, "part-1").startsWith("Steel bar: from the shelf; Winch: from the shelf, in the bar"),
                said(taken, "part-1"));
        assertTrue(said(taken, "part-2").startsWith("from the shelf"), said(taken, "part-2"));
        assertFalse(taken.contains("data-line"), taken);
    }

    @Test
    void aWordThatIsNotUnderstoodIsToldAtItsLineWithWhatItCouldBe() throws Exception {
        HttpResponse<String> page = made(List.of("bull bar", "", "wnch=26 kg", "winch=26"), "file", "new");
        assertEquals(422, page.statusCode());
        String third = said(page.body(), "part-3");
        assertTrue(third.contains("did you mean 'winch'?"), third);
        assertTrue(said(page.body(), "part-4").contains("Right: winch=38 kg"), said(page.body(), "part-4"));
        assertEquals("kind: bar", said(page.body(), "part-1"));
        assertEquals("", said(page.body(), "part-2"));
        assertTrue(page.body().contains("value=\"wnch=26 kg\""), "what was typed stays");
        assertFalse(Files.exists(served.folder().resolve("new.yaml")));
    }

    @Test
    void whatTheShelfSaysOfTheFuelIsNotAsked() throws Exception {
        String look = sent("/new/look", List.of(), "vehicle", "Tarrenby 3.0 wagon", "fuel", "")
                .body();
        assertEquals("diesel, as the shelf says", said(look, "fuel"));
        assertFalse(look.contains("Still to be filled in"), look);
        String other = sent("/new/look", List.of(), "vehicle", "Tarrenby 3.0", "fuel", "")
                .body();
        assertEquals("", said(other, "fuel"));
        assertTrue(other.contains("Still to be filled in: fuel"), other);
    }

    @Test
    void aMeasureGoesIntoItsFieldAndAnExampleFitsThePart() throws Exception {
        HttpResponse<String> page = made(
                List.of("canopy=1.8 m", "lift kit=50 mm", "second battery=100 Ah", "solar panel=200 W", "tray=86 kg"),
                "file",
                "measured");
        assertEquals("/sheets/measured.yaml", page.uri().getPath());
        String text = served.text("measured.yaml");
        holds(
                text,
                "{name: Canopy, kind: canopy, length: 1.8 m}",
                "{name: Lift kit front, kind: springs, end: front, lift: 50 mm}",
                "{name: Lift kit rear, kind: springs, end: rear, lift: 50 mm}",
                "kind: battery, capacity: 100 Ah}",
                "kind: solar-panel, power: 200 W}",
                "{name: Tray, kind: tray, mass: 86 kg}");
        String refused = made(List.of("canopy=1.8 L", "canopy=99 m", "winch=2 m", "parrot"))
                .body();
        assertTrue(said(refused, "part-1").endsWith("Right: canopy=120 kg or canopy=1800 mm"), said(refused, "part-1"));
        assertTrue(said(refused, "part-2").contains("is not between"), said(refused, "part-2"));
        assertTrue(said(refused, "part-3").endsWith("Right: winch=38 kg"), said(refused, "part-3"));
        assertTrue(said(refused, "part-4").endsWith("or Dog=cargo for a load"), said(refused, "part-4"));
        assertTrue(said(sent("/new/look", List.of("dog=cargo")).body(), "part-1")
                .startsWith("a load, listed under cargo. "));
    }

    @Test
    void whatNoFieldHoldsStaysInTheName() throws Exception {
        List<String> wishes = List.of(
                "fridge=45 L", "tyres=265/70R17 121S", "dog", "two swags", "Parrot=load", "tyres=265/17", "winch=60 L");
        String look = sent("/new/look", wishes).body();
        assertTrue(said(look, "part-1").endsWith(", named fridge 45 L"), said(look, "part-1"));
        assertEquals("kind: tyres, 265/70R17 121S. On the shelf Tyres has 285/70R17", said(look, "part-2"));
        assertEquals("a load, listed under cargo", said(look, "part-5"));
        assertTrue(said(look, "part-6").contains("'265/17'"), said(look, "part-6"));
        assertTrue(said(look, "part-7").endsWith("Right: winch=38 kg"), said(look, "part-7"));
        made(wishes.subList(0, 5), "file", "named");
        String text = served.text("named.yaml");
        holds(
                text,
                "{name: Fridge 45 L, kind: other}",
                "{name: Fridge 45 L, part: Fridge 45 L}",
                "{name: Tyres, kind: tyres, size: 265/70R17 121S}",
                "  - {name: Luggage}\n  - {name: Food}\n  - {name: Dog}\n  - {name: Two swags}\n  - {name: Parrot");
        made(List.of("food=30 kg"), "file", "fed");
        String fed = served.text("fed.yaml");
        assertTrue(fed.contains("  - {name: Luggage}\n  - {name: Food, mass: 30 kg}\n"), fed);
    }

    @Test
    void theShelfIsReadInLargeAndSmallLetters() throws Exception {
        String look = sent("/new/look", List.of("steel TRAY", "snorkel"), "vehicle", "tarrenby 3.0 WAGON", "fuel", "")
                .body();
        assertEquals("from the shelf", said(look, "part-1"));
        assertEquals("from the shelf", said(look, "part-2"));
        assertEquals("from the shelf", said(look, "vehicle"));
        assertEquals("diesel, as the shelf says", said(look, "fuel"));
        made(
                List.of("steel TRAY", "snorkel"),
                "vehicle",
                "tarrenby 3.0 WAGON",
                "trailer",
                "touring VAN",
                "file",
                "small");
        String text = served.text("small.yaml");
        holds(text, "vehicle: Tarrenby 3.0 wagon\n", "  - Snorkel\n", "  - Steel tray\n", "trailer: Touring van\n");
    }

    @Test
    void theSamePartOnTwoLinesIsTold() throws Exception {
        String look = sent("/new/look", List.of("lift kit", "battery", "second battery=100 Ah", "Rear springs"))
                .body();
        assertEquals("kind: springs", said(look, "part-1"));
        assertTrue(
                said(look, "part-3")
                        .startsWith("kind: battery, 100 Ah. On the shelf Second battery has 120 Ah. Taken to be"),
                said(look, "part-3"));
        assertTrue(
                said(look, "part-4").endsWith("Taken as one set with lift kit, this end of it"), said(look, "part-4"));
        String twice = sent("/new/look", List.of("lift kit", "suspension lift")).body();
        assertTrue(
                said(twice, "part-2").endsWith("Of the same kind as lift kit: empty one line if they are the same"),
                said(twice, "part-2"));
    }

    @Test
    void whatAPartComesWithIsTheOneOfAnotherLine() throws Exception {
        assertEquals(
                "kind: radio, and kind: aerial, uhf-cb",
                said(sent("/new/look", List.of("UHF radio")).body(), "part-1"));
        String look = sent("/new/look", List.of("UHF radio", "whip aerial")).body();
        assertEquals("kind: radio, uhf-cb. Its aerial is whip aerial", said(look, "part-1"));
        String text = text("aerials", List.of("UHF radio", "whip aerial"));
        assertEquals(1, text.split("kind: aerial", -1).length - 1, text);
    }

    @Test
    void springsForOneEndTakeThatEndOfAKit() throws Exception {
        List<String> wishes = List.of("lift kit=50 mm", "heavier rear springs");
        List<String> other = List.of("heavier rear springs", "lift kit=50 mm");
        for (List<String> either : List.of(wishes, other)) {
            String text = text("set" + either.indexOf("lift kit=50 mm"), either);
            holds(
                    text,
                    "{name: Lift kit front, kind: springs, end: front, lift: 50 mm}",
                    "{name: Heavier rear springs, kind: springs, end: rear, lift: 50 mm}");
            assertFalse(text.contains("Lift kit rear"), text);
        }
        holds(
                text("raised", List.of("lift kit=50 mm", "stiffer rear springs=40 mm")),
                "{name: Stiffer rear springs, kind: springs, end: rear, lift: 40 mm}");
    }

    @Test
    void springsAreAtTheEndThatIsSaidBehindThem() throws Exception {
        holds(
                text(
                        "ends",
                        List.of("a lift kit, 50 mm, with heavier springs at the back", "UHF radio, aerial on bar")),
                "{name: Lift kit front, kind: springs, end: front, lift: 50 mm}",
                "{name: Heavier springs at the rear, kind: springs, end: rear, lift: 50 mm}",
                "{name: Aerial, kind: aerial, place: bar, at: on the bar}");
        holds(
                text("both", List.of("springs at the front and back")),
                "{name: Springs front, kind: springs, end: front",
                "{name: Springs rear, kind: springs, end: rear");
        assertEquals(
                "kind: springs, named springs at the rear",
                said(sent("/new/look", List.of("springs at the back")).body(), "part-1"));
    }

    @Test
    void aWishHoldsItsFigureAsALetterHasIt() throws Exception {
        holds(
                text(
                        "letter",
                        List.of(
                                "canopy about 1.8 m long",
                                "a lift kit, 50 mm",
                                "a water tank of 50 litres under the tray",
                                "a 200 watt solar panel on the canopy roof",
                                "a 45 litre fridge in the canopy",
                                "the winch",
                                "265/70R17 tyres",
                                "long-range tank, 70 litres, behind the axle")),
                "{name: Canopy, kind: canopy, length: about 1.8 m}",
                "kind: springs, end: front, lift: 50 mm}",
                "{name: Water tank, liquid: water, capacity: 50 L, stock: no, at: under the tray}",
                "power: 200 W, at: on the canopy roof}",
                "{name: Fridge 45 L, kind: other, at: in the canopy}",
                "  - Winch\n",
                "{name: Tyres, kind: tyres, size: 265/70R17}",
                "{name: Long-range tank, liquid: diesel, capacity: 70 L, stock: no, at: behind the axle}");
        String look = sent(
                        "/new/look",
                        List.of("lift kit=50 mm with heavier springs", "a trapdoor of 5 litres", "canopy 1.8 m wide"))
                .body();
        assertEquals("'with heavier springs' is no place in words. Right: lift kit=50 mm", said(look, "part-1"));
        assertTrue(
                said(look, "part-2").startsWith("'a trapdoor of 5 litres' is no kind of part"), said(look, "part-2"));
        assertTrue(said(look, "part-3").startsWith("'canopy 1.8 m wide' is no kind of part"), said(look, "part-3"));
    }

    @Test
    void dustAndTheDayAreAskedAndNothingElseIsTakenForThem() throws Exception {
        holds(
                text("dusty", List.of(), "dust", "heavy", "ready-by", "2027-05-01"),
                "trip: {people: 2, dust: heavy}",
                "ready-by: 2027-05-01\n");
        String look = sent("/new/look", List.of(), "dust", "heavy}\nregion: any", "ready-by", "2027-02-30")
                .body();
        assertTrue(said(look, "dust").contains("is no answer. Right: one of none, some, heavy"), said(look, "dust"));
        assertEquals("'2027-02-30' is no day that can be meant. Right: 2027-05-01", said(look, "ready-by"));
    }

    @Test
    void oneGoesOnTypingWhereSomethingIsWrong() throws Exception {
        assertEquals("customer", focus(served.get("/new").body()));
        assertEquals("part-2", focus(made(List.of("bull bar", "wnch", "snrkel")).body()));
        assertEquals("people", focus(made(List.of("wnch"), "people", "").body()));
        assertEquals("file", focus(made(List.of(), "file", "a/b.yaml").body()));
    }

    private static String focus(String page) {
        Matcher field =
                Pattern.compile("<input id=\"([^\"]+)\"[^>]* autofocus[ >]").matcher(page);
        assertTrue(field.find(), page);
        return field.group(1);
    }

    /** Each beside its own box, in its unit; a comma is a decimal point where it can be nothing else. */
    @Test
    void aFigureThatIsNotUnderstoodIsToldAtItsBox() throws Exception {
        String look = sent(
                        "/new/look",
                        List.of(),
                        "trailer",
                        "Camp box",
                        "trailer-mass",
                        "heavy",
                        "ball",
                        "1,900",
                        "rated",
                        "2.000")
                .body();
        assertEquals("'heavy' is not a quantity. Right: 1400 kg", said(look, "trailer-mass"));
        assertTrue(said(look, "ball").startsWith("'1,900 kg' could be 1900 kg or 1.900 kg"), said(look, "ball"));
        assertEquals("'2.000 kg' could be either of two. Right: 2000 kg or 2 kg", said(look, "rated"));
        assertEquals("", said(look, "trailer"));
        holds(text("comma", List.of(), "main-tank", "87,5"), "capacity: 87.5 L");
    }

    /** What is typed is never left out unsaid; any name will do. */
    @Test
    void figuresOfATrailerWithoutANameAreToldAtItsName() throws Exception {
        String words = "Figures of a trailer need its name: one from the shelf, or call it trailer.";
        for (String field : List.of("trailer-mass", "ball", "rated")) {
            HttpResponse<String> page = made(List.of("winch=26 kg"), field, "200 kg", "file", "nameless");
            assertEquals(422, page.statusCode(), field);
            assertEquals(words, said(page.body(), "trailer"), field);
        }
        holds(
                text("called-trailer", List.of(), "trailer", "trailer", "trailer-mass", "900 kg"),
                "trailer: {name: trailer, mass: 900 kg");
        assertEquals("", said(sent("/new/look", List.of()).body(), "trailer"));
    }

    /** The plate of the shelf's van allows 3500 kg, of which 3200 kg may stand on its wheels. */
    @Test
    void aPlateThatIsNotTheShelfsIsToldAtItsBox() throws Exception {
        String look = sent("/new/look", List.of(), "trailer", "Touring van", "rated", "3000 kg")
                .body();
        assertEquals(
                "The shelf has other figures of this trailer. Leave this empty to take those, or give the trailer a name"
                        + " of its own.",
                said(look, "rated"));
        assertFalse(look.contains("Line "), look);
        assertEquals(
                "",
                said(
                        sent("/new/look", List.of(), "trailer", "Touring van", "rated", "3500 kg")
                                .body(),
                        "rated"));
    }

    @Test
    void aVehicleOfTheShelfIsOfferedByItsWords() throws Exception {
        String look = sent("/new/look", List.of(), "vehicle", "wagon TARRENBY").body();
        assertEquals("A name of your own. The shelf has Tarrenby 3.0 wagon.", said(look, "vehicle"));
        assertEquals(
                "", said(sent("/new/look", List.of(), "vehicle", "Tarrenby tug").body(), "vehicle"));
    }

    private static String said(String page, String field) {
        return page.replaceAll("(?s).*<p id=\"" + field + "-said\"[^>]*>([^<]*)<(?:/p|span).*", "$1");
    }

    @Test
    void whatIsMissingIsAskedForOnceItIsToBeMade() throws Exception {
        HttpResponse<String> page = made(List.of(), "vehicle", "", "fuel", "", "people", "");
        assertEquals(422, page.statusCode());
        for (String field : List.of("vehicle", "fuel", "people")) {
            assertEquals("This has to be filled in.", said(page.body(), field));
        }
        HttpResponse<String> typing = sent("/new/look", List.of(), "vehicle", "", "fuel", "", "people", "0");
        assertEquals("", said(typing.body(), "vehicle"));
        assertTrue(said(typing.body(), "people").contains("no number of people"));
        assertTrue(typing.body().contains("Still to be filled in: vehicle, fuel."));
    }

    @Test
    void whereItIsRegisteredIsAskedAndAnywhereIsAChoice() throws Exception {
        assertEquals("", chosen(served.get("/new").body()));
        HttpResponse<String> page = made(List.of(), "region", "", "file", "nowhere");
        assertEquals(422, page.statusCode());
        assertEquals(
                "Choose where it is registered: its laws are looked at. 'Anywhere' looks at none.",
                said(page.body(), "region"));
        assertTrue(page.body().contains("Still to be filled in: where it is registered."));
        assertTrue(page.body().matches("(?s).*<select id=\"region\"[^>]* autofocus.*"));
        assertFalse(Files.exists(served.folder().resolve("nowhere.yaml")));
        holds(text("anywhere", List.of(), "region", "any"), "region: any  #");
        assertEquals("au-qld", chosen(made(List.of("wnch")).body()), "what was chosen stays");
    }

    /** The id of the region that a page has chosen; nothing where it is still to be chosen. */
    private static String chosen(String page) {
        Matcher chosen = Pattern.compile("<option value=\"([^\"]*)\" selected>").matcher(regions(page));
        return chosen.find() ? chosen.group(1) : "";
    }

    private static String regions(String page) {
        return page.replaceAll("(?s).*<select id=\"region\"(.*?)</select>.*", "$1");
    }

    @Test
    void whereTheLatestSheetsAreRegisteredIsOfferedFirst() throws Exception {
        for (String sheet : List.of("touring", "weekender", "overloaded")) {
            Files.writeString(served.folder().resolve(sheet + ".yaml"), "region: any\n");
        }
        assertEquals(List.of("Regions"), headings());
        Files.writeString(served.folder().resolve("touring.yaml"), "region: us-tx\n");
        assertEquals(List.of("Used here lately", "Others"), headings());
        String offered = regions(served.get("/new").body());
        assertTrue(offered.indexOf("us-tx") < offered.indexOf("Others"), offered);
        assertEquals(2, offered.split("us-tx", -1).length, "once");
        assertTrue(offered.strip().endsWith("Anywhere: no law is looked at</option>\n</optgroup>"), offered);
    }

    private List<String> headings() throws Exception {
        return Pattern.compile("<optgroup label=\"([^\"]*)\"")
                .matcher(regions(served.get("/new").body()))
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    @Test
    void whatABrochureSaysOfAVehicleIsAskedWhereItDoesNotLieOnTheShelf() throws Exception {
        assertTrue(asks("brochure", List.of()));
        assertFalse(asks("brochure", List.of(), "vehicle", "Tarrenby 3.0 wagon"));
        assertFalse(asks("brochure", List.of(), "vehicle", ""));
        String[] figures = {
            "kerb",
            "2110",
            "gvm",
            "3050 kg",
            "gcm",
            "5950",
            "front-axle",
            "1450",
            "rear-axle",
            "about 1850",
            "towing",
            "3500",
            "on-ball",
            "350"
        };
        holds(
                text("brochure", List.of(), figures),
                "mass: {kerb: 2110 kg, front-axle: usual",
                "ratings: {gvm: 3050 kg, front-axle: 1450 kg, rear-axle: about 1850 kg, gcm: 5950 kg, towing: 3500 kg,"
                        + " ball: 350 kg, roof: ask}");
        holds(text("no-brochure", List.of()), "mass: {kerb: ask,", "{gvm: ask, front-axle: ask,");
        String look =
                sent("/new/look", List.of(), "gvm", "3050 mm", "gcm", "12").body();
        assertTrue(said(look, "gvm").contains("has a unit of length"), said(look, "gvm"));
        assertTrue(said(look, "gcm").contains("is not between"), said(look, "gcm"));
    }

    @Test
    void whatABrochureSaysIsKeptWhateverIsRefused() throws Exception {
        for (List<String> refused : List.of(
                List.of("vehicle", ""),
                List.of("region", ""),
                List.of("people", "0"),
                List.of("file", "touring.yaml"),
                List.of("vehicle", "Tarrenby 3.0 wagon"),
                List.of("part", "wnch"))) {
            List<String> fields = new ArrayList<>(List.of("kerb", "2110", "gvm", "3050"));
            fields.addAll(refused);
            HttpResponse<String> page = made(List.of(), fields.toArray(String[]::new));
            assertEquals(422, page.statusCode(), refused.toString());
            assertTrue(page.body().contains("id=\"asks-brochure\" class=\"asked\""), refused.toString());
            for (String field : List.of("kerb\" value=\"2110\"", "gvm\" value=\"3050\"")) {
                assertTrue(page.body().contains("name=\"" + field), refused + " lost " + field);
            }
        }
        String shelf = sent("/new/look", List.of(), "vehicle", "Tarrenby 3.0 wagon", "gvm", "3050")
                .body();
        assertTrue(said(shelf, "gvm").startsWith("The shelf has its own figure of this vehicle."), said(shelf, "gvm"));
        assertEquals("", said(shelf, "gcm"));
    }

    @Test
    void aReasonIsKeptAsAComment() throws Exception {
        List<String> wishes = List.of("3. a snorkel, for the dust", "lift kit=50 mm for the tracks");
        String look = sent("/new/look", wishes).body();
        assertEquals("from the shelf. 'for the dust' is kept as a comment; no check reads it", said(look, "part-1"));
        String text = text("reasons", wishes);
        holds(
                text,
                "  - Snorkel  # for the dust\n",
                "  - {name: Lift kit front, kind: springs, end: front, lift: 50 mm}  # for the tracks\n",
                "  - {name: Lift kit rear, kind: springs, end: rear, lift: 50 mm}\n");
        assertEquals(3, read(served.folder().resolve("reasons.yaml")).fitments().size());
    }

    @Test
    void twoThingsOfALineAreTwo() throws Exception {
        List<String> wishes = List.of("bar and winch", "UHF radio with whip aerial", "bar and gizmo");
        String look = sent("/new/look", wishes).body();
        assertEquals("bar: kind: bar; Winch: from the shelf", said(look, "part-1"));
        assertEquals(
                "from the shelf",
                said(sent("/new/look", List.of("Roof rack with tent")).body(), "part-1"));
        assertEquals("UHF radio: kind: radio, uhf-cb; whip aerial: kind: aerial", said(look, "part-2"));
        assertTrue(said(look, "part-3").contains("one thing a line, in few words"), said(look, "part-3"));
        holds(text("two", wishes.subList(0, 1)), "  - {name: Bar, kind: bar}\n  - Winch\n");
    }

    @Test
    void tyresOnTheRimsItHasBesideNewWheelsAreToldToContradict() throws Exception {
        String tyres = "tyres 265/70R17 on the rims it has";
        assertEquals(
                "kind: tyres, 265/70R17, on the rims that the vehicle has. On the shelf Tyres has 285/70R17",
                said(sent("/new/look", List.of(tyres)).body(), "part-1"));
        for (List<String> both : List.of(List.of(tyres, "alloy wheels"), List.of("alloy wheels", tyres))) {
            HttpResponse<String> page = made(both, "file", "rims");
            assertEquals(422, page.statusCode());
            String field = "part-" + (both.indexOf(tyres) + 1);
            assertEquals(
                    "The tyres are to go on the rims that the vehicle has, but alloy wheels is planned too. Right: one of"
                            + " the two left out",
                    said(page.body(), field));
        }
        assertEquals(
                "kind: tyres, 265/70R17. On the shelf Tyres has 285/70R17",
                said(
                        sent("/new/look", List.of("tyres 265/70R17", "alloy wheels"))
                                .body(),
                        "part-1"));
    }

    @Test
    void lookingWritesNothing() throws Exception {
        HttpResponse<String> page = made(List.of("winch=26 kg"), "file", "seen", "do", "look");
        assertEquals(200, page.statusCode());
        assertTrue(page.body().contains("kind: winch"));
        assertFalse(Files.exists(served.folder().resolve("seen.yaml")));
    }

    @Test
    void noFileIsWrittenOver() throws Exception {
        String before = served.text("touring.yaml");
        HttpResponse<String> page = made(List.of(), "file", "touring.yaml");
        assertEquals(422, page.statusCode());
        assertTrue(page.body().contains("touring.yaml is there already"));
        assertEquals(before, served.text("touring.yaml"));
        made(List.of(), "customer", "Touring");
        assertEquals(
                "Touring", read(served.folder().resolve("touring (2).yaml")).customer());
    }

    @Test
    void aNameThatIsNoneIsRefused() throws Exception {
        for (String name : List.of("../out", "/tmp/out.yaml", ".hidden", "a/b.yaml")) {
            HttpResponse<String> page = made(List.of(), "file", name);
            assertEquals(422, page.statusCode(), name);
            assertTrue(page.body().contains("is no name for a sheet"), name);
        }
        assertFalse(Files.exists(served.folder().resolveSibling("out.yaml")));
    }

    @Test
    void whateverIsTypedStaysWords() throws Exception {
        String odd = "\"x\": {a: [1, 'b'} # \\ \u2028 yes";
        HttpResponse<String> page = made(List.of(), "customer", odd, "quote", "no", "notes", odd, "file", "odd");
        assertEquals("/sheets/odd.yaml", page.uri().getPath());
        assertEquals("no", read(served.folder().resolve("odd.yaml")).quote());
        String list = served.get("/?q=odd.yaml").body();
        assertTrue(list.contains("<p class=\"sheet-of\">\"x\": {a: [1, 'b'} # \\"), list);
    }

    /** The text of a sheet of these parts in a file of this name. */
    private String text(String file, List<String> parts, String... more) throws Exception {
        List<String> fields = new ArrayList<>(List.of("file", file));
        fields.addAll(List.of(more));
        HttpResponse<String> page = made(parts, fields.toArray(String[]::new));
        assertEquals("/sheets/" + file + ".yaml", page.uri().getPath(), () -> faults(page.body()));
        return served.text(file + ".yaml");
    }

    /** What is told at the fields of a page. */
    private static String faults(String page) {
        return Pattern.compile("<p id=\"[^\"]+\" class=\"fault\"[^>]*>([^<]+)<")
                .matcher(page)
                .results()
                .map(told -> told.group(1))
                .toList()
                .toString();
    }

    @Test
    void whatBecomesOfTheTubIsAskedWhereATrayOrCanopyIsWished() throws Exception {
        assertFalse(asksTub(List.of("bull bar")));
        assertTrue(asksTub(List.of("bull bar", "tray")));
        assertTrue(asksTub(List.of("canopy"), "vehicle", "Plover HD 2.7 crew utility"));
        assertFalse(asksTub(List.of("canopy"), "vehicle", "Tarrenby 3.0 wagon"), "its shelf says that it has none");
        assertFalse(asksTub(List.of("Steel canopy")), "its shelf says what comes off for it");
        assertFalse(asksTub(List.of("canopy", "tub off")), "a wish says it");
        holds(
                text("tub-off", List.of("canopy", "alloy tray", "the tub off")),
                "  - Canopy\n",
                "{from: Alloy tray, removes: {name: tub}}",
                "  tub: yes\n");
        holds(text("tub-answered", List.of("canopy"), "tub", "off"), "{from: Canopy, removes: {name: tub}}");
        String stays = text("tub-stays", List.of("canopy"), "tub", "stays");
        holds(stays, "{from: Canopy, tub-stays: yes}", "  tub: yes\n");
        assertFalse(stays.contains("removes"), stays);
        holds(text("no-tub", List.of("tray"), "tub", "none"), "{name: Tray, kind: tray}", "  tub: no\n");
        holds(text("tub-open", List.of("tray")), "{name: Tray, kind: tray}", "  tub: ask");
        String shelf = text("tub-of-shelf", List.of("Steel canopy", "tray", "tub off"));
        assertEquals(0, shelf.split("removes: ", -1).length - 1, "it is not taken off twice\n" + shelf);
        String loose = sent("/new/look", List.of("tub off")).body();
        assertEquals("There is no tray or canopy here that it could be said of.", said(loose, "part-1"));
        String other =
                sent("/new/look", List.of("tray", "tub off"), "tub", "stays").body();
        assertEquals("The answer about the tub says otherwise.", said(other, "part-2"));
    }

    private boolean asksTub(List<String> parts, String... more) throws Exception {
        return asks("tub", parts, more);
    }

    private boolean asks(String what, List<String> parts, String... more) throws Exception {
        return sent("/new/look", parts, more).body().contains("<div id=\"asks-" + what + "\" class=\"asked\"");
    }

    @Test
    void aPlaceMayStandBehindAPart() throws Exception {
        String text = text(
                "placed",
                List.of(
                        "water tank=50 L under the tray",
                        "long-range tank=70 L, behind the axle",
                        "fridge=45 L in the canopy",
                        "two swags=cargo on the rack",
                        "second battery=100 Ah=in the canopy",
                        "spare wheel carrier=30 kg 500 mm behind the rear axle",
                        "awning on the roof",
                        "Snorkel at the front bar",
                        "front bar"));
        holds(
                text,
                "{name: Water tank, liquid: water, capacity: 50 L, stock: no, at: under the tray}",
                "capacity: 70 L, stock: no, at: behind the axle}",
                "{name: Fridge 45 L, kind: other, at: in the canopy}",
                "{name: Two swags, at: on the rack}",
                "capacity: 100 Ah, place: canopy, at: in the canopy}",
                "mass: 30 kg, at: 500 mm behind the rear axle}",
                "{name: Awning, kind: other, at: on the roof}",
                "{from: Snorkel, at: at the front bar}",
                "  - Front bar\n");
        String look =
                sent("/new/look", List.of("water tank=60 L under the deck")).body();
        assertEquals(
                "'under the deck' is no place in words. Right: water tank=60 L under the tray", said(look, "part-1"));
    }

    @Test
    void whereSomethingHeavyIsTakenToSitIsToldAndTwoInOnePlaceAreToo() throws Exception {
        List<String> parts = List.of("water tank=50 L", "long-range tank=70 L", "winch", "battery");
        String look = sent("/new/look", parts).body();
        assertTrue(said(look, "part-1").contains("Taken to be under the tray: say"), said(look, "part-1"));
        assertTrue(said(look, "part-2").contains("Taken to be behind the rear axle: say"), said(look, "part-2"));
        assertEquals("from the shelf", said(look, "part-3"));
        assertTrue(said(look, "part-4").contains("Taken to be in the load area: say"), said(look, "part-4"));
        assertFalse(look.contains("in one place"), look);
        String carried = sent("/new/look", List.of("canopy", "dog=cargo", "two swags=cargo", "dog=cargo in the canopy"))
                .body();
        assertEquals(
                "a load, listed under cargo. Taken to be in the cab: say where behind it if it is not",
                said(carried, "part-2"));
        assertEquals(
                "a load, listed under cargo. Taken to be in the load area: say where behind it if it is not",
                said(carried, "part-3"));
        assertEquals("a load, listed under cargo, in the canopy", said(carried, "part-4"));
        String same = sent("/new/look", List.of("water tank=50 L", "long-range tank=70 L under the tray"))
                .body();
        assertTrue(
                same.contains(
                        "Water tank and Long-range tank are taken to be in one place, under the tray, since nobody has said"),
                same);
        String told = sent(
                        "/new/look", List.of("water tank=60 L under the tray", "long-range tank=70 L under the tray"))
                .body();
        assertFalse(told.contains("in one place"), "somebody has said so");
    }

    @Test
    void theMainTankHoldsWhatIsSaidAndOneOfTheShelfTakesItsPlace() throws Exception {
        holds(
                text("litres", List.of(), "main-tank", "80"),
                "{name: Main tank, liquid: diesel, capacity: 80 L, stock: yes}");
        holds(text("usual-tank", List.of()), "capacity: usual, stock: yes}");
        for (String wish : List.of("Plover tank", "main tank=80 L")) {
            made(List.of(wish), "file", "own " + wish.charAt(0));
            Sheet sheet = read(served.folder().resolve("own " + wish.charAt(0) + ".yaml"));
            assertEquals(1, sheet.tanks().size(), wish);
            assertEquals(80, sheet.tanks().get(0).capacity().value(), 1e-9, wish);
        }
        String look = sent("/new/look", List.of(), "main-tank", "80 kg").body();
        assertTrue(said(look, "main-tank").contains("mass"), said(look, "main-tank"));
    }

    @Test
    void whatANameSaysGoesIntoItsField() throws Exception {
        List<String> wishes = List.of("lithium battery=100 Ah", "UHF radio", "AGM battery");
        holds(
                text("named-fields", wishes),
                "{name: Lithium battery, kind: battery, capacity: 100 Ah, chemistry: lithium}",
                "{name: UHF radio, kind: radio, service: uhf-cb}",
                "{name: Aerial, kind: aerial}",
                "{name: AGM battery, kind: battery, chemistry: agm}");
        String america = text("named-abroad", wishes, "region", "us");
        assertFalse(america.contains("service"), "there it is another service\n" + america);
    }

    @Test
    void anAerialOfItsOwnTakesThePlaceOfTheOneThatComesWithARadio() throws Exception {
        String text = text("aerials", List.of("UHF radio", "Tall aerial"));
        assertEquals(1, text.lines().filter(line -> line.contains("erial")).count(), text);
        holds(text, "  - Tall aerial\n");
    }

    @Test
    void peopleTripAndTrailerAreToldInAFewFields() throws Exception {
        String text = text(
                "letter",
                List.of(),
                "masses",
                "92, about 70 kg",
                "people",
                "3",
                "longest-leg",
                "600",
                "parked",
                "3",
                "top-speed",
                "100",
                "trailer",
                "Van",
                "trailer-mass",
                "2850 kg",
                "ball",
                "about 270",
                "rated",
                "3000 kg");
        holds(
                text,
                "{name: Van, mass: 2850 kg, ball: about 270 kg, rated: 3000 kg}",
                "trip: {people: 3, longest-leg: 600 km, parked: 3 days, top-speed: 100 km/h}",
                "  - {name: Driver, mass: 92 kg}\n  - {name: Front passenger, mass: about 70 kg}\n"
                        + "  - {name: Rear passenger 1}\n");
        String look = sent("/new/look", List.of(), "masses", "92, 70, 30", "top-speed", "900")
                .body();
        assertTrue(said(look, "masses").startsWith("Are of 3 people, and 2 are aboard"), said(look, "masses"));
        assertTrue(said(look, "top-speed").contains("is not between"), said(look, "top-speed"));
    }

    private static void holds(String text, String... lines) {
        for (String line : lines) {
            assertTrue(text.contains(line), line + "\n" + text);
        }
    }
}
