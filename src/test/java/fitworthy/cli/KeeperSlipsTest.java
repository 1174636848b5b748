package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Slips of somebody who keeps a book and is no programmer, in a copy of the shipped book with one topic. */
class KeeperSlipsTest {

    @TempDir
    private Path folder;

    private Path rules;

    @BeforeEach
    void copyOneTopic() throws IOException {
        rules = Books.copyOf("water", folder.resolve("rules"));
    }

    /** Puts one text in place of another and gives the line on which it begins. */
    private int edit(String file, String old, String now) throws IOException {
        Path path = rules.resolve(file);
        String text = Files.readString(path);
        assertTrue(text.contains(old), () -> file + " has no " + old);
        Files.writeString(path, text.replaceFirst(Pattern.quote(old), Matcher.quoteReplacement(now)));
        return (int) text.substring(0, text.indexOf(old)).lines().count() + (old.startsWith("\n") ? 0 : 1);
    }

    private Ran run(String... line) {
        return Ran.of(Stream.concat(Stream.of(line), Stream.of("--rules", rules.toString()))
                .toArray(String[]::new));
    }

    private void refused(String... told) {
        Ran ran = run("cases", "--region", "us");
        assertEquals(3, ran.code(), ran.out() + ran.err());
        String said = ran.err().replaceAll("\\s+", " ");
        for (String each : told) {
            assertTrue(said.contains(each), said);
        }
    }

    @Test
    void aParentThatIsNoRegionIsToldOnItsLine() throws IOException {
        int line = edit(
                "book.yaml",
                "  au-act: {name: Australian Capital Territory, parent: au}",
                "  au-act: {name: Australian Capital Territory, parent: aus}");
        refused("book.yaml:" + line + ":3: regions.au-act: its parent 'aus' is not a region");
    }

    @Test
    void aQuoteThatACommentEatsIsToldAtItsClause() throws IOException {
        int line = edit("water/practice.yaml", "      quote: \"6 litres", "      quote: # \"6 litres") - 1;
        refused(
                "practice.yaml:" + line + ":15:",
                "has a clause without a quote",
                "in quotes, as what stands behind a # is not read");
    }

    @Test
    void aUnitThatIsNoneIsToldOnceWithTheNearest() throws IOException {
        edit("water/practice.yaml", "water.reserve-least:\n  unit: days", "water.reserve-least:\n  unit: dayz");
        refused("water.reserve-least: 'dayz' is not a unit (did you mean 'day'?)");
        assertFalse(run("cases", "--region", "us").err().contains("a practice value of the same kind"));
    }

    @Test
    void aPlaceholderThatTheCardCannotHaveIsToldWithThoseThatItCan() throws IOException {
        edit("water/cards.yaml", "  against: water.reserve-least\n", "");
        refused(
                "the placeholder {limit} is worked out from a limit, and the card is 'against' none",
                "right: here one of {case}, {enough}, {subject}, {value}, {water.reserve}, {water.reserve-needed},");
    }

    @Test
    void aReviewDayThatIsOverSinceTheLastLookIsAReminder() throws IOException {
        String value = "      value: 3 days\n";
        edit("water/practice.yaml", value, value + "      checked: 2026-11-20\n      review: 2026-11-21\n");
        run("prove").saysNot("reminds of nothing");
        edit("water/practice.yaml", "review: 2026-11-21", "review: 2026-11-20");
        run("prove")
                .says("water.reserve-least: its 'review: 2026-11-20' reminds of nothing, since it was looked at on"
                        + " 2026-11-20")
                .says("right: a later day, such as review: 2027-11-20");
    }

    @Test
    void aSourceThatIsOverdueIsToldOnItsLine() throws IOException {
        edit("sources.yaml", "\nsa-remote-travel:\n", "\nsa-remote-travel:\n  review: 2020-01-01\n");
        Path sources = rules.resolve("sources.yaml");
        String text = Files.readString(sources).replaceAll("(?m)^  checked: .*\n", "");
        Files.writeString(sources, text);
        long line =
                text.substring(0, text.indexOf("\nsa-remote-travel:")).lines().count() + 1;
        run("prove")
                .says("sources.yaml:" + line
                        + ":1: sa-remote-travel: the source was to be looked at again by 2020-01-01");
        run("due").says("source sa-remote-travel (sources.yaml:" + line + ")");
    }

    @Test
    void casesOfOneRuleRemindOfThatRuleAlone() {
        Ran all = run("cases", "--topic", "water", "--region", "us").says("water.short");
        assertTrue(all.out().contains("never"), all.out());
        String one = run("cases", "--rule", "water.no-reserve").out();
        assertFalse(one.contains("water.short:") || one.contains("water.one-tank:"), one);
        assertFalse(one.startsWith("0 cases"), one);
    }

    @Test
    void aRuleWhoseWordsAreStillToBeWrittenReachesNoCustomer() throws IOException {
        Ran begun = run(
                "begin",
                "rule",
                "water.plenty",
                "--about",
                "water.person-day",
                "--from",
                "2027-07-01",
                "--region",
                "au-sa");
        assertEquals(0, begun.code(), begun.err());
        Path sheet = Files.writeString(
                folder.resolve("sheet.yaml"),
                Files.readString(Books.RULES.resolve("plain-sheet.yaml"))
                        .replaceFirst("region: \\S+", "region: au-sa")
                        .replaceFirst(
                                "(?m)^tanks:\n",
                                "tanks:\n  - {name: Water tank, liquid: water, capacity: 300 L, fill: 100 %, stock: no,"
                                        + " mass: 6 kg, at: {x: 2400 mm, y: 0 mm, z: 700 mm}, water: {potable: yes,"
                                        + " baffled: yes, frost-guarded: yes, clearance: 200 mm}}\n")
                        .replaceFirst(
                                "(?m)^trip:\n",
                                "trip:\n  people: 2\n  days: 7 days\n  water-use: 8 L\n  coldest: 5 degC\n"));
        String[] day = {"--as-of", "2027-07-02"};
        assertTrue(run("explain", sheet.toString(), "water.plenty", day[0], day[1])
                .out()
                .contains("To be written"));
        for (String command : List.of("check", "questions")) {
            Ran ran = run(command, sheet.toString(), day[0], day[1]);
            assertFalse(ran.out().contains("To be written") || ran.out().contains("water.plenty"), ran.out());
            assertEquals(
                    1,
                    ran.err()
                            .lines()
                            .filter(
                                    line -> line.contains("cards.yaml:")
                                            && line.endsWith(
                                                    "water.plenty is left out: its words are still to be written; 'prove' says which"))
                            .count(),
                    ran.err());
        }
        for (String file : List.of("cards.yaml", "practice.yaml")) {
            Path page = rules.resolve("water").resolve(file);
            Files.writeString(page, Files.readString(page).replaceAll("To be written[.:]?", "Words"));
        }
        Ran written = run("check", sheet.toString(), day[0], day[1]);
        assertFalse(written.err().contains("left out"), written.err());
        assertTrue(run("explain", sheet.toString(), "water.plenty", day[0], day[1])
                .out()
                .contains("Words"));
    }
}
