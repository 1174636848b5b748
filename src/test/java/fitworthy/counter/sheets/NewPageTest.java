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
                List.of("Main tank", "Long-range tank", "Water tank"),
                read(sheet).tanks().stream().map(Tank::name).toList());
        String text = Files.readString(sheet);
        assertTrue(text.startsWith("# we have ordered a utility\n#\n# 12. a roof rack: for two swags\n#"), text);
        for (String line : List.of(
                "customer: Marek and Una Lindqvist",
                "quote: KT-0500",
                "region: au-qld",
                "capacity: 70 L",
                "capacity: 60 L",
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
        assertTrue(said(refused, "part-1").endsWith("Right: canopy=120 kg"), said(refused, "part-1"));
        assertTrue(said(refused, "part-2").contains("is not between"), said(refused, "part-2"));
        assertTrue(said(refused, "part-3").endsWith("Right: winch=38 kg"), said(refused, "part-3"));
        assertTrue(said(refused, "part-4").endsWith("or Dog=cargo for a load"), said(refused, "part-4"));
        assertEquals(
                "a load, listed under cargo",
                said(sent("/new/look", List.of("dog=cargo")).body(), "part-1"));
    }

    @Test
    void whatNoFieldHoldsStaysInTheName() throws Exception {
        List<String> wishes = List.of(
                "fridge=60 L", "tyres=265/70R17", "dog", "two swags", "Parrot=load", "tyres=265/17", "winch=60 L");
        String look = sent("/new/look", wishes).body();
        assertTrue(said(look, "part-1").endsWith(", named fridge 60 L"), said(look, "part-1"));
        assertEquals("kind: tyres, 265/70R17", said(look, "part-2"));
        assertEquals("a load, listed under cargo", said(look, "part-5"));
        assertTrue(said(look, "part-6").contains("'265/17'"), said(look, "part-6"));
        assertTrue(said(look, "part-7").endsWith("Right: winch=38 kg"), said(look, "part-7"));
        made(wishes.subList(0, 5), "file", "named");
        String text = served.text("named.yaml");
        holds(
                text,
                "{name: Fridge 60 L, kind: other}",
                "{name: Fridge 60 L, part: Fridge 60 L}",
                "{name: Tyres, kind: tyres, size: 265/70R17}",
                "  - {name: Luggage}\n  - {name: Food}\n  - {name: Dog}\n  - {name: Two swags}\n  - {name: Parrot");
        made(List.of("food=30 kg"), "file", "fed");
        String fed = served.text("fed.yaml");
        assertTrue(fed.contains("  - {name: Luggage}\n  - {name: Food, mass: 30 kg}\n"), fed);
    }

    @Test
    void theShelfIsReadInLargeAndSmallLetters() throws Exception {
        String look = sent("/new/look", List.of("steel TRAY", "snorkel"), "vehicle", "tarrenby 3.0 WAGON", "fuel", "")
                .body();
        assertEquals("from the shelf, named Steel tray", said(look, "part-1"));
        assertEquals("kind: snorkel", said(look, "part-2"), "what the trade calls any such part");
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
        holds(
                text,
                "vehicle: Tarrenby 3.0 wagon\n",
                "  - {name: Snorkel, kind: snorkel}\n",
                "  - Steel tray\n",
                "trailer: Touring van\n");
    }

    @Test
    void theSamePartOnTwoLinesIsTold() throws Exception {
        String look = sent("/new/look", List.of("lift kit", "battery", "second battery", "Rear springs"))
                .body();
        assertEquals("kind: springs", said(look, "part-1"));
        assertEquals("kind: battery", said(look, "part-3"));
        assertTrue(said(look, "part-4").endsWith("Of the same kind as lift kit: empty one line if they are the same"));
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

    private static String said(String page, String field) {
        return page.replaceAll("(?s).*<p id=\"" + field + "-said\"[^>]*>([^<]*)</p>.*", "$1");
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

    private static void holds(String text, String... lines) {
        for (String line : lines) {
            assertTrue(text.contains(line), line + "\n" + text);
        }
    }
}
