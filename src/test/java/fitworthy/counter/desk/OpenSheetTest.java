package fitworthy.counter.desk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.advice.View;
import fitworthy.counter.edit.AddItem;
import fitworthy.counter.edit.Rename;
import fitworthy.counter.edit.SetValue;
import fitworthy.counter.edit.Several;
import fitworthy.counter.edit.TakeOff;
import fitworthy.shelf.Shelves;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.NodeReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet that is worked on: its file after changes, their undoing, and other hands. */
class OpenSheetTest {

    @TempDir
    Path folder;

    private Path file;
    private String first;
    private OpenSheet sheet;

    @BeforeEach
    void touring() throws Exception {
        file = folder.resolve("touring.yaml");
        Files.copy(Path.of("scenarios/touring.yaml"), file);
        Files.createDirectory(folder.resolve("shelf"));
        try (Stream<Path> shelf = Files.list(Path.of("scenarios/shelf"))) {
            for (Path page : shelf.toList()) {
                Files.copy(page, folder.resolve("shelf").resolve(page.getFileName()));
            }
        }
        first = Files.readString(file);
        sheet = open();
    }

    private OpenSheet open() throws Exception {
        return new OpenSheet(file, new View(Books.engine(), null, null, Shelves.beside()));
    }

    private String text() throws IOException {
        return Files.readString(file);
    }

    /** As a page does that shows what stands now. */
    /** A change that is made in a box. @param joins another each time that it is gone into */
    record InOneBox(Change change, String joins) implements Change {

        @Override
        public String label() {
            return change.label();
        }

        @Override
        public Answer in(Answer now) throws FaultsException {
            return change.in(now);
        }
    }

    private Outcome change(Change change) {
        return sheet.change(sheet.now().version(), change);
    }

    private void done(Change change) {
        assertInstanceOf(Outcome.Done.class, change(change), change::label);
    }

    private Outcome undo() {
        return sheet.undo(sheet.now().version());
    }

    private Outcome redo() {
        return sheet.redo(sheet.now().version());
    }

    /** The lines that changes took out and put in. */
    private String changed() throws IOException {
        Lines lines = Lines.between(first, text());
        return lines.here().stream().map(line -> "-" + line.strip() + "\n").reduce("", String::concat)
                + lines.there().stream().map(line -> "+" + line.strip() + "\n").reduce("", String::concat);
    }

    private static List<String> told(Outcome outcome) {
        return assertInstanceOf(Outcome.Refused.class, outcome).faults().stream()
                .map(fault -> fault.path() + ": " + fault.problem())
                .toList();
    }

    @Test
    void aValueIsWrittenBesideTheWordThatIsTakenFromTheShelf() throws Exception {
        done(new SetValue("fitments.Winch.mass", "about 40 kg"));
        assertEquals("-- Winch\n+- {from: Winch, mass: about 40 kg}\n", changed());
    }

    @Test
    void anEmptyValueTakesTheFieldOut() throws Exception {
        done(new SetValue("papers.warranty", "  "));
        assertEquals("-warranty: asked\n", changed());
        assertEquals(
                List.of("occupants.1.mass: is missing"),
                told(change(new SetValue("occupants.Ines.mass", ""))).stream()
                        .map(told -> told.replaceAll("(?<=mass: ).*", "is missing"))
                        .toList());
        done(new SetValue("vehicle.spare.size", ""));
        done(new SetValue("vehicle.spare.load-index", ""));
        assertFalse(text().contains("spare"), "with its group and the comment on that");
        assertFalse(text().contains("As the planned tyres"));
        assertEquals(
                List.of("fitments.Winch.pull: comes from the shelf, so that it cannot be left out here"),
                told(change(new SetValue("fitments.Winch.pull", ""))));
    }

    @Test
    void aPartComesOffWithWhatNamesIt() throws Exception {
        Change off = new TakeOff("fitments.Rear camera");
        assertEquals("Rear camera taken off, and off of canopy off", off.label(sheet.now()));
        done(off);
        assertEquals(
                "-- Rear camera\n"
                        + "-off: [Canopy, Fridge, Drawers and pantry, Second battery, Charger, Solar panel, Locker, Rear camera]\n"
                        + "+off: [Canopy, Fridge, Drawers and pantry, Second battery, Charger, Solar panel, Locker]\n",
                changed());
        done(new TakeOff("fitments.Radio"));
        assertFalse(text().contains("- Radio"), "its circuit goes with it");
        done(new TakeOff("fitments.Steel tray"));
        assertTrue(text().contains("{name: steel, parts: []}"));
        done(new TakeOff("fitments.Tow bar"));
        assertFalse(text().contains("The height was measured"), "its comment goes with it");
        assertTrue(text().contains("# The chassis is certified in the price"), "others stay");
        assertEquals(List.of(), sheet.now().faults());
    }

    @Test
    void aNameIsFollowed() throws Exception {
        done(new Rename("tanks.Water tank", "Tank in the tray"));
        assertEquals(
                "-- {from: Water tank 58 L, name: Water tank}\n"
                        + "-- {name: one tank, parts: [Water tank]}\n"
                        + "-- {name: two tanks, parts: [Water tank, Second water tank]}\n"
                        + "-filled: {Water tank: 50 %, Long-range tank: 30 %}\n"
                        + "+- {from: Water tank 58 L, name: Tank in the tray}\n"
                        + "+- {name: one tank, parts: [Tank in the tray]}\n"
                        + "+- {name: two tanks, parts: [Tank in the tray, Second water tank]}\n"
                        + "+filled: {Long-range tank: 30 %, Tank in the tray: 50 %}\n",
                changed());
        done(new Rename("fitments.Radio", "UHF radio"));
        assertTrue(text().contains("  - {from: Radio, name: UHF radio}\n"));
        assertTrue(text().contains("  - {from: Radio, part: UHF radio}\n"));
    }

    @Test
    void itemsAreAddedAndMoved() throws Exception {
        done(AddItem.word("fitments", "Steel bar"));
        assertTrue(text().contains("  - Rear camera\n  - Steel bar\ncircuits:\n"));
        done(new SetValue("fitments.Winch.at.x", "-800 mm"));
        assertTrue(text().contains("  - {from: Winch, at: {x: -800 mm}}\n"));
        done(new Several(
                "place",
                List.of(
                        new SetValue("cargo.Bags in the cab.at.x", "2250 mm"),
                        new SetValue("cargo.Bags in the cab.at.y", "100 mm"),
                        new SetValue("cargo.Bags in the cab.at.z", "951 mm"))));
        assertTrue(text().contains("at: {x: 2250 mm, y: 100 mm, z: 951 mm}"), this::toString);
        done(new Several("two", List.of(new SetValue("title", "A"), AddItem.word("cases.towing.off", "Canopy"))));
        assertTrue(text().contains("  - {name: towing, towing: yes, off: [Canopy]}"));
        undo();
        assertFalse(text().contains("title: A\n"), "one step");
        done(new TakeOff("cases.canopy off.off.Canopy"));
        assertTrue(text().contains("off: [Fridge, "));
    }

    @Test
    void aChangeWithAFaultIsRefusedAndNothingIsWritten() throws Exception {
        assertEquals(
                List.of("fitments.7.mass: 'heavy' is not a mass"),
                told(change(new SetValue("fitments.Winch.mass", "heavy"))).stream()
                        .map(told -> told.replaceAll("(?<='heavy' ).*", "is not a mass"))
                        .toList());
        assertEquals(first, text());
        assertEquals(Optional.empty(), sheet.undoes());
    }

    @Test
    void aFaultThatWasThereRefusesNoChangeElsewhere() throws Exception {
        Files.writeString(file, first.replace("region: au-sa", "region: au-xx").replace("- Winch", "- Wench"));
        assertEquals(2, sheet.now().faults().size());
        done(new SetValue("occupants.Ines.mass", "70 kg"));
        assertEquals(1, told(change(new SetValue("occupants.Ines.mass", "x"))).size());
        assertEquals(
                List.of("region: the rule book has no region 'au-yy'"),
                told(change(new SetValue("region", "au-yy"))).stream()
                        .map(told -> told.replaceAll(" \\(did.*", ""))
                        .toList());
        done(new SetValue("region", "au-sa"));
        assertEquals(1, sheet.now().faults().size());
    }

    @Test
    void undoAndRedoGiveTheSameBytes() throws Exception {
        byte[] before = ("\uFEFF" + first.replace("\n", "\r\n")).getBytes(StandardCharsets.UTF_8);
        Files.write(file, before);
        done(new InOneBox(new SetValue("occupants.Ines.mass", "70 kg +/- 1 kg"), "1"));
        done(new InOneBox(new SetValue("occupants.Ines.mass", "70 kg"), "1"));
        done(new AddItem("cargo", NodeReader.read("", "name: Box\nmass: 5 kg\nat: in the tray\n", new ArrayList<>())));
        done(new TakeOff("fitments.Canopy"));
        byte[] after = Files.readAllBytes(file);
        assertEquals(Optional.of("Canopy taken off, and off of canopy off"), sheet.undoes());
        undo();
        undo();
        assertEquals(Optional.of("mass of Ines"), sheet.undoes());
        undo();
        assertArrayEquals(before, Files.readAllBytes(file), "what one typed in a field is one step");
        assertEquals(Optional.empty(), sheet.undoes());
        for (int i = 0; i < 3; i++) {
            redo();
        }
        assertArrayEquals(after, Files.readAllBytes(file));
        assertEquals(Optional.empty(), sheet.redoes());
    }

    /** Whoever comes back to a box gives another answer, and so does every answer to a question. */
    @Test
    void oneStepIsOneAnswer() throws Exception {
        done(new InOneBox(new SetValue("occupants.Ines.mass", "7 kg"), "1"));
        done(new InOneBox(new SetValue("occupants.Ines.mass", "70 kg"), "1"));
        String one = text();
        done(new InOneBox(new SetValue("occupants.Ines.mass", "71 kg"), "2"));
        String two = text();
        done(new SetValue("occupants.Ines.mass", "72 kg"));
        String three = text();
        done(new SetValue("occupants.Ines.mass", "73 kg"));
        for (String before : List.of(three, two, one, first)) {
            undo();
            assertEquals(before, text());
        }
        assertEquals(Optional.empty(), sheet.undoes());
    }

    @Test
    void stepsAreUndoneAfterARestart() throws Exception {
        done(new SetValue("occupants.Ines.mass", "70 kg"));
        done(new SetValue("occupants.Tobias.mass", "80 kg"));
        undo();
        String version = sheet.now().version();
        OpenSheet again = reopened();
        assertEquals(version, again.now().version());
        assertEquals(Optional.of("mass of Tobias"), again.redoes());
        again.redo(version);
        assertTrue(text().contains("mass: 80 kg"));
        again.undo(again.now().version());
        again.undo(again.now().version());
        assertEquals(first, text());
    }

    private OpenSheet reopened() throws Exception {
        sheet.close();
        return open();
    }

    @Test
    void aFileThatWasChangedMeanwhileBeginsItsHistoryAnew() throws Exception {
        done(new SetValue("occupants.Ines.mass", "70 kg"));
        OpenSheet again = reopened();
        Files.writeString(file, first.replace("customer", "# by hand\ncustomer"));
        again.now();
        assertEquals(Optional.empty(), again.undoes());
        assertInstanceOf(
                Outcome.Done.class, again.change(again.now().version(), new SetValue("occupants.Ines.mass", "71 kg")));
        again.undo(again.now().version());
        assertEquals(first.replace("customer", "# by hand\ncustomer"), text());
    }

    /** A run that was killed while it wrote a step leaves the beginning of a line. */
    @Test
    void aJournalTornAtAnyByteStillLeadsBack() throws Exception {
        done(new SetValue("occupants.Ines.mass", "70 kg"));
        String between = text();
        done(new SetValue("occupants.Tobias.mass", "80 kg"));
        String last = text();
        sheet.close();
        Path journal = folder.resolve(".fitworthy/touring.yaml.steps");
        byte[] whole = Files.readAllBytes(journal);
        int line = new String(whole, StandardCharsets.UTF_8).indexOf('\n') + 1;
        for (int length = line; length <= whole.length; length++) {
            Files.write(journal, Arrays.copyOf(whole, length));
            // The sheet is written after its step.
            Files.writeString(file, length == whole.length ? last : between);
            OpenSheet again = open();
            again.now();
            assertEquals(
                    length == whole.length ? Optional.of("mass of Tobias") : Optional.of("mass of Ines"),
                    again.undoes());
            while (again.undoes().isPresent()) {
                again.undo(again.now().version());
            }
            assertEquals(first, text());
            again.close();
        }
    }

    @Test
    void whatAnotherPageChangedElsewhereStays() throws Exception {
        String shown = sheet.now().version();
        done(new SetValue("occupants.Ines.mass", "70 kg"));
        assertInstanceOf(Outcome.Done.class, sheet.change(shown, new SetValue("occupants.Tobias.mass", "80 kg")));
        assertInstanceOf(Outcome.Done.class, sheet.change(shown, AddItem.word("fitments", "Steel bar")));
        assertInstanceOf(Outcome.Done.class, sheet.change(shown, new TakeOff("fitments.Snorkel")));
        assertTrue(text().contains("name: Ines, mass: 70 kg}") && text().contains("name: Tobias, mass: 80 kg}"));
        assertTrue(text().contains("- Steel bar") && !text().contains("- Snorkel"));
    }

    @Test
    void whatTwoPagesChangedIsShownAndNotWritten() throws Exception {
        String shown = sheet.now().version();
        done(new SetValue("occupants.Ines.mass", "70 kg"));
        String stands = text();
        Change mine = new SetValue("occupants.Ines.mass", "60 kg");
        Outcome.Parted parted = assertInstanceOf(Outcome.Parted.class, sheet.change(shown, mine));
        assertEquals(
                new Lines(
                        List.of("  - {from: Tarrenby driver, name: Ines, mass: 70 kg}"),
                        List.of("  - {from: Tarrenby driver, name: Ines, mass: 60 kg}")),
                parted.lines());
        assertEquals(stands, text());
        assertInstanceOf(Outcome.Done.class, sheet.change(parted.now().version(), mine), "put on top");
        for (Change other : List.of(new TakeOff("occupants.Ines"), new SetValue("occupants.Ines.name", "I"), mine)) {
            assertInstanceOf(Outcome.Parted.class, sheet.change(shown, other), other::label);
        }
        assertInstanceOf(Outcome.Parted.class, sheet.change("of long ago", new SetValue("title", "A")));
        assertEquals(stands.replace("70 kg", "60 kg"), text());
    }

    @Test
    void anEditorsSaveIsASecondHandToo() throws Exception {
        String shown = sheet.now().version();
        Files.writeString(
                file, first.replace("mass: 66 kg +/- 3 kg", "mass: 68 kg").replace("dust: heavy", "dust: some"));
        String saved = text();
        assertInstanceOf(Outcome.Parted.class, sheet.change(shown, new SetValue("occupants.Ines.mass", "60 kg")));
        assertEquals(saved, text());
        assertEquals(
                "the sheet has been changed elsewhere since",
                assertInstanceOf(Outcome.Refused.class, sheet.undo(shown))
                        .faults()
                        .get(0)
                        .problem());
        assertInstanceOf(Outcome.Done.class, sheet.change(shown, new SetValue("occupants.Tobias.mass", "80 kg")));
        assertEquals(saved.replace("mass: 84 kg +/- 3 kg", "mass: 80 kg"), text());
        undo();
        assertEquals(Optional.of("a change from elsewhere"), sheet.undoes());
        undo();
        assertEquals(first, text());
    }

    @Test
    void aFileThatIsNoTextIsLeftAsItIs() throws Exception {
        byte[] bytes = {(byte) 0xFF, (byte) 0xFE, 't', 0};
        Files.write(file, bytes);
        Outcome outcome = change(new SetValue("title", "A"));
        assertEquals(
                List.of("the file is not UTF-8 text from here on"),
                assertInstanceOf(Outcome.Refused.class, outcome).faults().stream()
                        .map(Fault::problem)
                        .toList());
        assertArrayEquals(bytes, Files.readAllBytes(file));
    }

    private static final int MOST_CHANGES = 100_000;

    /**
     * An editor that saves again and again while a page changes the sheet. Between the last look at the file and its
     * exchange lie microseconds, so that one save in hundreds may still be lost.
     */
    @Test
    void whatAnEditorSavesBetweenIsNotOverwritten() throws Exception {
        AtomicInteger saved = new AtomicInteger();
        AtomicInteger lost = new AtomicInteger();
        AtomicBoolean ended = new AtomicBoolean();
        Thread editor = new Thread(() -> {
            Random random = new Random(9);
            while (!ended.get()) {
                try {
                    String mine = "longest-leg: " + (500 + saved.incrementAndGet()) + " km";
                    Files.writeString(file, text().replaceAll("longest-leg: .*", mine));
                    Thread.sleep(random.nextInt(150));
                    lost.addAndGet(text().contains(mine) ? 0 : 1);
                } catch (IOException | InterruptedException e) {
                    lost.addAndGet(1000);
                }
            }
        });
        editor.start();
        int done = 0;
        // The file is empty for as long as the editor is kept from writing, and every change is refused meanwhile.
        for (int i = 0; i < 60 || i < MOST_CHANGES && (done <= 10 || saved.get() <= 5); i++) {
            done += change(new SetValue("occupants.Ines.mass", (50 + i % 40) + " kg")) instanceof Outcome.Done ? 1 : 0;
        }
        ended.set(true);
        editor.join();
        assertTrue(saved.get() > 5 && done > 10, saved + " saves, " + done + " changes");
        assertTrue(lost.get() <= 1, lost + " lost of " + saved);
        assertEquals(List.of(), sheet.now().faults());
    }
}
