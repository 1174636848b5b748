package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.source.FaultsException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command begin sheet. */
class BeginSheetTest {

    @TempDir
    private Path folder;

    private static Ran begin(List<String> parts, String... more) {
        List<String> line = new ArrayList<>(
                List.of("begin", "sheet", "--vehicle", "Tarrenby 3.0 wagon", "--fuel", "diesel", "--people", "4"));
        parts.forEach(part -> line.addAll(List.of("--part", part)));
        line.addAll(List.of(more));
        return Ran.of(line.toArray(String[]::new));
    }

    /** What the program says to somebody who types these lines. */
    private static Ran asked(String... typed) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Fitworthy.run(
                new ByteArrayInputStream(String.join("\n", typed).getBytes(StandardCharsets.UTF_8)),
                new PrintWriter(out),
                new PrintWriter(err),
                Map.of("FITWORTHY_CACHE", Books.CACHE.toString(), "FITWORTHY_RULES", Books.RULES.toString()),
                "begin",
                "sheet");
        return new Ran(code, out.toString(), err.toString());
    }

    @Test
    void aDozenPartsInAShopsWordsMakeAShortSheetThatIsAccepted() throws IOException {
        Path sheet = folder.resolve("wagon.yaml");
        Ran ran = begin(
                        List.of(
                                "steel bull bar",
                                "winch=26 kg",
                                "long-range tank=140 L",
                                "Raised intake",
                                "lift kit",
                                "GVM upgrade",
                                "roof platform",
                                "awning",
                                "fridge",
                                "dual battery",
                                "UHF radio",
                                "drawers=about 48 kg"),
                        "--trailer",
                        "Camper=1400 kg",
                        "--region",
                        "au-nsw",
                        "--to",
                        sheet.toString())
                .printed(0);
        List<String> lines = Files.readAllLines(sheet);
        assertTrue(lines.size() <= 41, lines.size() + " lines");
        assertEquals(
                List.of(
                        "# Put a figure in place of each 'ask'. What is left out is taken as usual, and counts as a guess.",
                        "title: Tarrenby 3.0 wagon",
                        "region: au-nsw  # where it is registered: any, au, au-act, au-nsw, au-nt, au-qld, au-sa,"
                                + " au-tas, au-vic, au-wa, eu, nz, uk, us, us-ca, us-tx",
                        "as-of: " + LocalDate.now(),
                        "assume-usual: yes",
                        "vehicle:",
                        "  name: Tarrenby 3.0 wagon"),
                lines.subList(0, 7));
        for (String line : List.of(
                "  - {name: Steel bull bar, kind: bar}",
                "  - {name: Winch, kind: winch, mass: 26 kg}",
                "  - {name: Lift kit front, kind: springs, end: front}",
                "  - {name: Lift kit rear, kind: springs, end: rear}",
                "  - {name: Dual battery, kind: battery}",
                "  - {name: Charger, kind: charger}",
                "  - {name: Drawers, kind: other, mass: about 48 kg}",
                "  - {name: Fridge, part: Fridge}",
                "  - {name: Long-range tank, liquid: diesel, capacity: 140 L, stock: no}")) {
            assertTrue(lines.contains(line), line);
        }
        ran.says("What most checks wait for: - trailer.ball.");
        ran.says("- tanks.Main tank.capacity. Find it: the maker");
        ran.says("Written: " + sheet + ", " + lines.size() + " lines.");
        Ran.of("check", sheet.toString(), "--full").printed(1).says("Loadings without the trailer, towing");
    }

    /** In the words of the counter, and not into the sheet that is printed. */
    @Test
    void whatTheShelfHasOtherwiseIsTold() {
        String told = "On the shelf Winch has 39 kg +/- 1 kg.\n";
        assertEquals(
                told,
                begin(List.of("winch=26 kg"), "--shelf", "scenarios/shelf").err());
        assertEquals(
                "", begin(List.of("winch=39 kg"), "--shelf", "scenarios/shelf").err());
    }

    @Test
    void withoutAFileTheSheetAloneIsPrinted() throws IOException {
        Path sheet = folder.resolve("piped.yaml");
        Files.writeString(sheet, begin(List.of("bull bar")).out());
        assertTrue(Files.readString(sheet).endsWith("trip: {people: 4}\n"));
        Ran.of("check", sheet.toString()).printed(1);
    }

    @Test
    void everyWordOfTheBookMakesASheetThatIsAccepted() throws FaultsException {
        List<String> words = List.copyOf(Books.shipped().tables().shopWords().all());
        Ran ran = begin(words);
        assertEquals(0, ran.code(), ran.err());
        long asked =
                ran.out().lines().filter(line -> line.startsWith("  - {name: ")).count();
        assertTrue(asked >= words.size(), asked + " of " + words.size());
    }

    /** Only of what the book knows nothing usual of is a figure asked on the sheet. */
    @Test
    void whatIsUsualIsLeftToTheBookAndAllElseIsAsked() {
        String sheet = begin(List.of("spare parts box=other", "awning", "chassis stretch", "luggage", "jerry can"))
                .out();
        for (String line : List.of(
                "{name: Spare parts box, kind: other, mass: ask, at: {x: ask}}",
                "{name: Awning, kind: other}",
                "{name: Chassis stretch, kind: chassis-extension, wheelbase-added: ask}",
                "{name: Luggage}",
                "{name: Jerry can, liquid: diesel, capacity: ask, stock: no, portable: yes}",
                "{name: Main tank, liquid: diesel, capacity: usual, stock: yes}")) {
            assertTrue(sheet.contains("  - " + line + "\n"), line + " is not in\n" + sheet);
        }
    }

    @Test
    void whatLiesOnTheShelfIsTakenByName() throws IOException {
        Path sheet = folder.resolve("taken.yaml");
        begin(
                        List.of("Alloy tray", "Winch=30 kg", "Alloy tray", "awning"),
                        "--shelf",
                        "scenarios/shelf",
                        "--to",
                        sheet.toString())
                .printed(0)
                .says("On the shelf Winch has 39 kg +/- 1 kg.");
        List<String> lines = Files.readAllLines(sheet);
        for (String line : List.of(
                "vehicle: Tarrenby 3.0 wagon",
                "  - Alloy tray",
                "  - {from: Winch, mass: 30 kg}",
                "  - {from: Alloy tray, name: Alloy tray 2}",
                "  - {name: Awning, kind: other}")) {
            assertTrue(lines.contains(line), line + " is not in " + lines);
        }
        Ran.of("check", sheet.toString(), "--shelf", "scenarios/shelf").printed(1);
    }

    @Test
    void twoOfANameAreToldApartAndAnEndThatIsSaidIsTaken() {
        String sheet = begin(List.of("lamps", "lamps", "rear springs", "Nellie=canopy", "Box: \"two\"=other"))
                .out();
        for (String line : List.of(
                "name: Lamps, kind: lamps",
                "name: Lamps 2, kind: lamps",
                "name: Rear springs, kind: springs, end: rear",
                "name: Nellie, kind: canopy",
                "name: \"Box: \\\"two\\\"\", kind: other")) {
            assertTrue(sheet.contains("  - {" + line), line + " is not in\n" + sheet);
        }
        assertFalse(sheet.contains("end: front"), sheet);
    }

    @Test
    void gallonsWordsOfOtherCountriesAndAFifthWheelAreTaken() {
        String sheet = begin(
                        List.of(
                                "long-range tank=40 US gal",
                                "topper",
                                "leveling kit",
                                "grille guard",
                                "receiver hitch"),
                        "--trailer",
                        "Fifth wheel=9000 lb")
                .out();
        for (String line : List.of(
                "capacity: 40 US gal",
                "name: Topper, kind: canopy",
                "name: Leveling kit front, kind: springs",
                "name: Grille guard, kind: bar",
                "name: Receiver hitch, kind: tow-bar",
                "name: Fifth wheel, mass: 9000 lb, ball: ask, rated: ask, hitch: fifth-wheel")) {
            assertTrue(sheet.contains(line), line + " is not in\n" + sheet);
        }
        assertFalse(
                begin(List.of(), "--trailer", "Camper=1400 kg").out().contains("hitch"), "a camper hangs on a ball");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--part | flux thing | no kind of part, and no word for one that the rule book knows",
                "--part | bull barr | did you mean 'bull bar'?",
                "--part | bull bar and gizmo | no kind of part",
                "--part | winch=3 L | has a unit of volume where one of mass belongs",
                "--part | water tank=3 kg | has a unit of mass where one of volume belongs",
                "--part | winch=99 t | is not between 0 kg and 15 t",
                "--part | =bar | is missing",
                "--trailer | Camper=1 L | has a unit of volume",
                "--region | oz | the rule book has no region 'oz'",
                "--to | rules/new.yaml | belongs to the rule book"
            })
    void whatIsNotUnderstoodIsRefusedAndLeavesNothingBehind(String option, String value, String fault)
            throws IOException {
        Path sheet = folder.resolve("never.yaml");
        String[] more = option.equals("--to")
                ? new String[] {option, value}
                : new String[] {option, value, "--to", sheet.toString()};
        begin(List.of("winch"), more).refused(2, fault);
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(), left.toList());
        }
        assertFalse(Files.exists(Path.of("rules/new.yaml")));
    }

    @Test
    void everythingWrongIsToldAtOnceAndWhatIsMissingToo() {
        Ran ran = Ran.of("begin", "sheet", "--people", "0", "--part", "flux");
        for (String wrong : List.of("--vehicle: is missing", "--fuel: is missing", "--people: '0'", "--part: 'flux'")) {
            ran.refused(2, wrong);
        }
    }

    @Test
    void aWrongRegionIsToldOnceHoweverManyPartsThereAre() {
        Ran ran = begin(List.of("bull bar", "winch", "UHF radio"), "--region", "oz");
        assertEquals(2, ran.code());
        assertEquals(2, ran.err().split("no region 'oz'", -1).length, ran.err());
    }

    @Test
    void aFileThatIsThereStaysAsItIs() throws IOException {
        Path sheet = Files.writeString(folder.resolve("mine.yaml"), "mine");
        begin(List.of("winch"), "--to", sheet.toString()).refused(2, "is there already, and is not written over");
        assertEquals("mine", Files.readString(sheet));
        begin(List.of("winch"), "--to", folder.resolve("none/x.yaml").toString())
                .refused(74, "there is no such folder");
    }

    @Test
    void whereNothingIsNamedOneThingAfterTheOtherIsAsked() throws IOException {
        Path sheet = folder.resolve("asked.yaml");
        Path taken = Files.writeString(folder.resolve("taken.yaml"), "mine");
        Ran ran = asked(
                taken.toString(),
                sheet.toString(),
                "Old wagon",
                "deisel",
                "diesel",
                "2",
                "",
                "Camper=1400 kg",
                "flux thing",
                "bull bar",
                "water tank=60 L",
                "");
        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.err().contains("Its fuel, diesel or petrol: --fuel: 'deisel' is none"), ran.err());
        assertTrue(ran.err().contains("--part: 'flux thing' is no kind of part"), ran.err());
        assertTrue(ran.err().contains("taken.yaml: is there already"), ran.err());
        ran.says("Written: " + sheet);
        String text = Files.readString(sheet);
        assertTrue(text.contains("name: Bull bar, kind: bar"), text);
        assertTrue(text.contains("name: Water tank, liquid: water, capacity: 60 L"), text);
        assertTrue(text.contains("region: any"), text);
    }

    @Test
    void whoStopsAnsweringGetsNoSheetForWantOfWhatItNeeds() {
        asked().refused(2, "--vehicle: is missing");
        asked("", "Old wagon", "diesel").refused(2, "--people: is missing");
        assertTrue(asked("", "Old wagon", "diesel", "2").out().contains("title: Old wagon"));
    }
}
