package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Folders;
import fitworthy.engine.Adding;
import fitworthy.source.Digests;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a run of 'begin rule' leaves that is killed, in each moment of it, is no rule book, and the next run clears it up. */
class BeginKilledTest {

    private static final String STOPPED = "'begin' was stopped before it had added to all the files it wanted to";
    private static final String TAKEN_BACK = "What a 'begin' that did not come to its end had added is taken back.\n";
    private static final List<String> PAGES =
            List.of("water/water.drl", "water/cards.yaml", "water/practice.yaml", "water/cases.yaml");

    @TempDir
    private Path folder;

    private Path rules;

    @BeforeEach
    void aBook() throws IOException {
        rules = Books.copyOf("water", folder.resolve("rules"));
    }

    private static Ran begin(Path rules) {
        return Ran.of(
                "begin",
                "rule",
                "water.plenty",
                "--about",
                "water.person-day",
                "--from",
                "2027-07-01",
                "--region",
                "au-sa",
                "--rules",
                rules.toString());
    }

    private Ran check() {
        return Ran.of("check", "rules/plain-sheet.yaml", "--rules", rules.toString());
    }

    private Map<Path, String> pages(Map<String, String> standing) {
        Map<Path, String> pages = new LinkedHashMap<>();
        PAGES.forEach(each -> pages.put(rules.resolve(each), standing.get(each)));
        return pages;
    }

    /** What the book is once the rule has been begun undisturbed. */
    private Map<String, String> begun() throws IOException {
        Path other = Books.copyOf("water", folder.resolve("other"));
        assertEquals(0, begin(other).code());
        return Folders.texts(other);
    }

    private Path note(String text) throws IOException {
        return Files.writeString(rules.resolve(".adding"), text);
    }

    @Test
    void inEachMomentTheBookIsRefusedAndTheSameCommandBeginsTheRule() throws IOException {
        Map<String, String> before = Folders.texts(rules);
        Map<String, String> after = begun();
        assertEquals(before.keySet(), after.keySet(), "nothing is left beside the pages");
        for (int some = 0; some < 1 << PAGES.size(); some++) {
            for (Map.Entry<Path, String> each : pages(before).entrySet()) {
                Files.writeString(each.getKey(), each.getValue());
            }
            Adding.begin(rules, pages(before), pages(after)).close();
            for (int i = 0; i < PAGES.size(); i++) {
                if ((some >> i & 1) == 1) {
                    Files.writeString(rules.resolve(PAGES.get(i)), after.get(PAGES.get(i)));
                }
            }
            Map<String, String> left = Folders.texts(rules);
            check().refused(3, STOPPED);
            Ran.of("prove", "--rules", rules.toString()).refused(3, "run the same 'fitworthy begin' again");
            assertEquals(left, Folders.texts(rules), "to read is not to write");
            Ran again = begin(rules);
            assertEquals(0, again.code(), again.err());
            assertTrue(again.err().contains(TAKEN_BACK), again.err());
            assertEquals(after, Folders.texts(rules), "with " + some);
        }
        assertEquals(0, check().code());
    }

    @Test
    void whatIsRefusedTakesBackAllTheSame() throws IOException {
        Map<String, String> before = Folders.texts(rules);
        Map<String, String> after = begun();
        Adding.begin(rules, pages(before), pages(after)).close();
        Files.writeString(rules.resolve(PAGES.get(1)), after.get(PAGES.get(1)));
        Ran.of("begin", "region", "us-ut", "--name", "Utah", "--parent", "oz", "--rules", rules.toString())
                .refused(2, "the book has no region 'oz'");
        assertEquals(before, Folders.texts(rules));
    }

    @Test
    void whatAnotherRunStillAddsIsNotTakenBack() throws IOException {
        Map<String, String> before = Folders.texts(rules);
        Map<String, String> after = begun();
        try (Adding other = Adding.begin(rules, pages(before), pages(after))) {
            Files.writeString(rules.resolve(PAGES.get(0)), after.get(PAGES.get(0)));
            Map<String, String> now = Folders.texts(rules);
            begin(rules).refused(74, "another run is adding to this book");
            assertEquals(now, Folders.texts(rules));
            other.end();
        }
    }

    @Test
    void aPageThatSomebodyChangedSinceIsLeftToThem() throws IOException {
        Map<String, String> before = Folders.texts(rules);
        Map<String, String> after = begun();
        Adding.begin(rules, pages(before), pages(after)).close();
        Files.writeString(rules.resolve(PAGES.get(0)), after.get(PAGES.get(0)));
        Files.writeString(rules.resolve(PAGES.get(1)), after.get(PAGES.get(1)) + "# mine\n");
        Map<String, String> now = Folders.texts(rules);
        begin(rules).refused(3, "cards.yaml: has been changed since 'begin' was stopped while it added to it");
        assertEquals(now, Folders.texts(rules));
        for (String each : PAGES) {
            Files.writeString(rules.resolve(each), before.get(each));
        }
        Ran mended = begin(rules);
        assertEquals(0, mended.code(), mended.err());
        assertEquals(after, Folders.texts(rules), "pages put right by hand serve too");
    }

    @Test
    void aNoteThatIsDamagedOrMeansHarmChangesNothing() throws IOException {
        Map<String, String> before = Folders.texts(rules);
        Map<String, String> after = begun();
        Adding.begin(rules, pages(before), pages(after)).close();
        String note = Files.readString(rules.resolve(".adding"));
        Path outside = Files.writeString(folder.resolve("outside.yaml"), after.get(PAGES.get(1)));
        List<String> bad =
                new ArrayList<>(List.of("", "\n", "rubbish\n", note.substring(0, note.length() / 2), note + note));
        bad.add(note.replaceFirst("(?m)^water/cases.yaml .*\n", ""));
        for (String way :
                List.of("../outside.yaml", outside.toString(), "water/../../outside.yaml", "water/../cards.yaml")) {
            bad.add(signed(note.replace("water/cards.yaml", way)));
        }
        bad.add(signed(note.replaceAll("(cards.yaml) [0-9]+", "$1 -1")));
        bad.add(signed(note.replaceAll("(cards.yaml) [0-9]+", "$1 99999999999")));
        Files.writeString(rules.resolve(PAGES.get(1)), after.get(PAGES.get(1)));
        Map<String, String> pages = Folders.texts(rules);
        for (String each : bad) {
            note(each);
            check().refused(3, STOPPED);
            begin(rules).refused(3, ".adding: this note of what 'begin' was adding is damaged");
            pages.put(".adding", each);
            assertEquals(pages, Folders.texts(rules));
            assertEquals(after.get(PAGES.get(1)), Files.readString(outside));
        }
        for (String each : List.of("$1 0", "$1 9999999")) {
            note(signed(note.replaceAll("(cards.yaml) [0-9]+", each)));
            begin(rules).refused(3, "cards.yaml: has been changed since");
        }
        assertEquals(after.get(PAGES.get(1)), Files.readString(rules.resolve(PAGES.get(1))));
    }

    /** With the digest that belongs to it, as who means harm can make it. */
    private static String signed(String note) {
        String text = note.substring(0, note.length() - 33);
        return text + Digests.of(text) + "\n";
    }

    @Test
    void aLinkLeadsNowhere() throws IOException {
        Map<String, String> before = Folders.texts(rules);
        Map<String, String> after = begun();
        Path secret = Files.writeString(folder.resolve("secret"), "secret words\n");
        Path note = rules.resolve(".adding");
        Files.createSymbolicLink(note, secret);
        check().refused(3, STOPPED);
        assertFalse(check().err().contains("secret"));
        begin(rules).refused(74, "this is no file of ours; delete it");
        Files.delete(note);
        Files.createDirectory(note);
        begin(rules).refused(74, "this is no file of ours; delete it");
        Files.delete(note);
        Adding.begin(rules, pages(before), pages(after)).close();
        Path page = Files.move(rules.resolve(PAGES.get(1)), folder.resolve("cards.yaml"));
        Files.createSymbolicLink(rules.resolve(PAGES.get(1)), page);
        Files.writeString(page, after.get(PAGES.get(1)));
        begin(rules).refused(3, "a link leads from here out of its folder");
        assertEquals(after.get(PAGES.get(1)), Files.readString(page));
        assertEquals("secret words\n", Files.readString(secret));
    }
}
