package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The letters command: whom it writes to, in which shape, and how it ends. */
class LettersTest {

    private static final String TOURING = "scenarios/touring.yaml";
    private static final Path PLAIN = Books.RULES.resolve("plain-sheet.yaml");

    @TempDir
    private Path folder;

    private static List<String> headings(String text) {
        return text.lines()
                .filter(line -> line.startsWith("To the ") || line.startsWith("Work list"))
                .toList();
    }

    @Test
    void eachIsWrittenToOnce() {
        Ran ran = Ran.of("letters", TOURING).printed(1);
        List<String> headings = headings(ran.out());
        assertTrue(
                headings.containsAll(List.of(
                        "To the customer",
                        "Work list for the builder",
                        "To the maker of Winch",
                        "To the certifying engineer",
                        "To the registering authority",
                        "To the insurer",
                        "To the auto electrician")),
                headings.toString());
        assertEquals(headings.size(), headings.stream().distinct().count(), headings.toString());
    }

    /** Each question once in a letter, and each says what it is about. */
    @Test
    void nothingIsAskedTwiceInALetter() throws IOException {
        Ran ran = Ran.of("letters", TOURING).printed(1);
        for (String letter : ran.out().split("-{80}\n")) {
            List<String> items = Pattern.compile("^ *[0-9]+\\. ", Pattern.MULTILINE)
                    .splitAsStream(letter)
                    .skip(1)
                    .map(item -> item.split("\n\n")[0].replaceAll("\\s+", " "))
                    .toList();
            assertEquals(items.stream().distinct().toList(), items);
        }
        String winching = Files.writeString(
                        folder.resolve("points.yaml"),
                        Files.readString(PLAIN)
                                + "fitments: [{name: Winch, kind: winch, mass: 30 kg, at: {x: -800 mm, y: 0 mm, z: 700 mm}}]\n")
                .toString();
        Ran points = Ran.of("letters", winching);
        assertFalse(points.out().contains(". What it was made for"), points.out());
        points.says("Each of Front recovery point, Rear recovery point: what it was made for.");
    }

    @Test
    void aLetterHasRoomForWhatNobodyKnows() {
        Ran ran = Ran.of("letters", TOURING, "--to", "insurer").printed(1);
        assertEquals(List.of("To the insurer"), headings(ran.out()));
        ran.says("Name and address: .....");
        ran.says("Subject: planned changes to Tarrenby 3.0 wagon, quote KT-0417, for Ines and Tobias Varga");
        ran.says("Please tell us in writing: 1. ");
        ran.says("They are advice, not certification.");
        ran.says("The workshop: name ............... signature ............... date ..........");
    }

    @Test
    void theCustomerIsWrittenToByNameWhereTheSheetHasIt() throws Exception {
        Ran named = Ran.of("letters", TOURING, "--to", "customer").printed(1);
        named.says("Name: Ines and Tobias Varga. Address: .....");
        assertFalse(named.out().contains("Name and address"), named.out());
        String nameless = Files.writeString(
                        folder.resolve("nameless.yaml"),
                        Files.readString(Path.of("scenarios/overloaded.yaml")).replaceAll("(?m)^customer:.*$", ""))
                .toString();
        Ran.of("letters", nameless, "--shelf", "scenarios/shelf", "--to", "customer")
                .printed(1)
                .says("Name and address: .....");
    }

    /** The roof of 80 kg carries 96 kg in every loading; the other figures are of the van that is towed. */
    @Test
    void theCustomerIsToldWhatThePlanIsOverBy() {
        Ran.of("letters", "scenarios/overloaded.yaml", "--to", "customer")
                .printed(1)
                .says(
                        "Loaded as planned it is over its ratings: GCM by 305 kg, GVM by 190 kg, rear axle limit by 143 kg"
                                + " (towing the van); roof limit by 16 kg (every loading). The GVM is the most that the vehicle"
                                + " may weigh loaded, with what presses on its tow bar. The GCM is the most for vehicle and"
                                + " trailer together. What stays behind or is done without, you choose; we work out what"
                                + " it brings.");
        assertFalse(
                Ran.of("letters", TOURING, "--to", "customer").printed(1).out().contains("is over its ratings"));
    }

    @Test
    void oneMakerIsWrittenToByThePart() {
        assertEquals(
                List.of("To the maker of Winch"),
                headings(Ran.of("letters", TOURING, "--to", "Winch").printed(1).out()));
        assertTrue(headings(Ran.of("letters", TOURING, "--to", "part-maker")
                                .printed(1)
                                .out())
                        .size()
                > 5);
    }

    @Test
    void theOwnHouseGetsAListOfWork() {
        Ran ran = Ran.of("letters", TOURING, "--to", "builder").printed(1);
        ran.says("A list for our own house, not to be sent.");
        ran.says("To be done: 1. ");
        assertFalse(ran.out().contains("Name and address"), ran.out());
    }

    @Test
    void whereNothingIsAskedThereIsNoLetter() {
        Ran.of("letters", TOURING, "--to", "police")
                .printed(1)
                .says("Nothing is asked of 'police', so there is no letter. There are letters to: the customer,");
        Ran.of("letters", PLAIN.toString())
                .printed(0)
                .says("Nobody is asked anything about this plan, so there is no letter.");
        Ran.of("letters", TOURING, "--to", "insurers")
                .refused(2, "--to: there is no party 'insurers' (did you mean 'insurer'?)");
    }

    @Test
    void aSheetComesByTheStandardInputToo() throws IOException {
        String sheet = Files.readString(PLAIN).replace("gvm: 3000 kg", "gvm: 2500 kg");
        Ran ran = BatchTest.piped(sheet, "letters", "-", "--to", "engineer");
        assertEquals(1, ran.code(), ran.err());
        ran.says("GVM 2500 kg");
    }

    /** 9300 lb are 4218.41 kg; who reads pounds is told what they are, as at the end of a check. */
    @Test
    void aLetterToAnotherCountryTellsItsTermsAndUnits() throws IOException {
        String towing = Files.readString(PLAIN)
                + "trailer: {name: Van, mass: 9300 lb, rated: 9900 lb, ball: 1000 lb, brakes: electric}\ncases: [{name: tow, towing: yes}]\n";
        BatchTest.piped(towing.replace("region: au\n", "region: us-tx\n"), "letters", "-", "--to", "trailer-maker")
                .says("Van 4219 kg (9300 lb), 4490 kg (9900 lb) on its plate, 454 kg (1000 lb) on the ball.")
                .says("The GVM is the GVWR on the plate")
                .says("100 kg are 220 lb");
        BatchTest.piped(towing, "letters", "-", "--to", "trailer-maker").saysNot("GVWR");
    }

    /** 200 kg on the ball, half brought back: the front axle with the bars tight, the rear one with them off. */
    @Test
    void theAxlesOfALevelledVehicleAreSaidNotToSum() throws IOException {
        String levelled =
                Files.readString(PLAIN).replace("    ball: 300 kg\n", "    ball: 300 kg\n    levelling: yes\n")
                        + "fitments: [{name: Bar, kind: tow-bar, mass: 0 kg, levelling: LEVELS, levelling-share: 50 %, bars-most: 300 kg, bars-least: 100 kg}]\n"
                        + "trailer: {name: Van, mass: 2000 kg +/- 0 kg, rated: 2500 kg, ball: 200 kg +/- 0 kg, brakes: electric}\n"
                        + "cases: [{name: tow, towing: yes}]\n";
        BatchTest.piped(levelled.replace("LEVELS", "yes"), "check", "-").says("the axles sum to more than the vehicle");
        BatchTest.piped(
                        levelled.replace("LEVELS", "no")
                                .replace("levelling-share: 50 %, bars-most: 300 kg, bars-least: 100 kg", ""),
                        "check",
                        "-")
                .saysNot("the axles sum to more");
    }

    /** The wagon of 2520 kg with a box of 500 kg; what is certified is what it is over now. */
    @Test
    void theEngineerIsToldWhatIsInForceAndWhatIsWanted() throws IOException {
        String box = Files.readString(PLAIN)
                + "fitments:\n  - {name: Box, kind: other, mass: 500 kg +/- 0 kg, at: {x: 1500 mm, y: 0 mm, z: 900 mm}}\n";
        String kit = "  - {name: Kit, kind: rating-upgrade, mass: 0 kg, gvm: 3300 kg, approval: in-service}\n";
        BatchTest.piped(box + kit, "letters", "-", "--to", "engineer")
                .says("vehicle 3020 kg (GVM 3000 kg, over by 20 kg; wanted 3300 kg)");
        BatchTest.piped(box, "letters", "-", "--to", "engineer").says("vehicle 3020 kg (GVM 3000 kg, over by 20 kg),");
    }

    /** 50 mm stand in a magazine that quotes the State; the GVM of a plate needs no text. */
    @Test
    void whoGoesByTheLawIsAskedForTheTextThatNobodyRead() throws IOException {
        String asked = " (50 mm): please name the text and the clause that holds";
        Ran.of("letters", TOURING, "--to", "engineer")
                .printed(1)
                .says("We know at second hand alone this limit: greatest ")
                .says(asked);
        Ran.of("letters", "scenarios/overloaded.yaml", "--to", "engineer")
                .printed(1)
                .saysNot("at second hand alone");
        Ran.of("letters", TOURING, "--to", "builder").printed(1).saysNot("at second hand alone");
        // Whether the law asks for approval at all is no figure.
        String stretch = Files.readString(PLAIN).replace("region: au\n", "region: au-wa\n")
                + "fitments: [{name: Stretch, kind: chassis-extension, mass: 0 kg, wheelbase-added: 300 mm, approved: no}]\n";
        BatchTest.piped(stretch, "letters", "-", "--to", "authority")
                .says("We know at second hand alone whether a changed wheelbase or chassis has to be approved: please")
                .saysNot("(1)");
    }

    @Test
    void markdownIsEscaped() throws IOException {
        Path sheet = Files.writeString(
                folder.resolve("sheet.yaml"),
                Files.readString(PLAIN).replace("gvm: 3000 kg", "gvm: 2500 kg")
                        + "fitments:\n  - {name: \"<b>_Box_</b> | [x](y)\", kind: other, mass: 1 kg,"
                        + " at: {x: 2000 mm, y: 0 mm, z: 900 mm}}\n");
        Ran ran = Ran.of("letters", sheet.toString(), "--to", "engineer", "--format", "markdown");
        assertEquals(1, ran.code(), ran.err());
        assertTrue(ran.out().startsWith("## To the certifying engineer\n\n"), ran.out());
        assertTrue(ran.out().contains("The plan: \\<b>\\_Box\\_\\</b> \\| \\[x](y)."), ran.out());
        assertTrue(ran.out().contains("\n1. "), ran.out());
    }

    /** A name that turns the line round, and one longer than the page is wide, in every shape. */
    @Test
    void hostileNamesStayWithinTheirLetter() throws Exception {
        String name = "\u202Egnirts " + "x".repeat(200) + " <script>alert(1)</script> \u4F60";
        Path sheet = Files.writeString(
                folder.resolve("sheet.yaml"),
                Files.readString(PLAIN).replace("gvm: 3000 kg", "gvm: 2500 kg")
                        + "quote: \"" + name + "\"\nfitments:\n  - {name: \"" + name
                        + "\", kind: tow-bar, suits: ask, mass: 1 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}\n");
        Ran text = Ran.of("letters", sheet.toString()).printed(1);
        assertFalse(text.out().contains("\u202E"));
        assertTrue(headings(text.out()).size() > 2, text.out());
        Path pdf = folder.resolve("letters.pdf");
        Ran printed = Ran.of("letters", sheet.toString(), "--pdf", pdf.toString());
        assertEquals(1, printed.code(), printed.err());
        assertTrue(printed.err().contains("The PDF has no letters for \u4F60"), printed.err());
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            String words = new PDFTextStripper().getText(document);
            assertTrue(words.contains("<script>alert(1)</script>"), words);
        }
    }

    @Test
    void aPdfHasEachLetterOnItsOwnPage() throws IOException {
        Path pdf = folder.resolve("letters.pdf");
        Ran ran = Ran.of("letters", TOURING, "--pdf", pdf.toString(), "--paper", "letter");
        assertEquals(1, ran.code(), ran.err());
        List<String> headings = headings(Ran.of("letters", TOURING).out());
        assertEquals(
                headings.size() + " letters printed to " + pdf + ".", ran.out().strip());
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            int found = 0;
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = stripper.getText(document);
                List<String> begun = headings(text);
                assertTrue(begun.size() <= 1, text);
                assertEquals(headings.subList(found, found + begun.size()), begun);
                found += begun.size();
            }
            assertEquals(headings.size(), found);
        }
        Ran.of("letters", TOURING, "--pdf", TOURING).refused(2, "is read by this command, and would be lost");
        Ran.of("letters", TOURING, "--pdf", folder.resolve("none/letters.pdf").toString())
                .refused(74, "there is no such folder");
    }
}
