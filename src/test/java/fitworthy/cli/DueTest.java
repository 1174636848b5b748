package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fitworthy.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The command due, on a copy of the shipped book that only keeps its water topic, as if nobody had looked at anything
 * yet.
 */
class DueTest {

    private static final String SECOND_HAND = "      value: 7.5 L\n      basis: published-secondhand\n";
    private static final String PUBLISHED = "      value: 3 days\n      basis: published\n";
    private static final String PRACTICE = "value: 2 days, basis: common-practice";
    private static final String SOURCE = "sa-remote-travel:\n";
    private static final String TIMES =
            """
            review:
              published: 730 days
              calculation: 1825 days
              published-secondhand: 365 days
              common-practice: 1095 days
              memory: 180 days
              source: 365 days
            """;

    @TempDir
    private Path folder;

    private Path rules;

    @BeforeEach
    void copyOneTopic() throws IOException {
        rules = Books.copyOf("water", folder.resolve("rules"));
        replace("book.yaml", "^review:\n(  .*\n)+", TIMES);
        replace("sources.yaml", "^  (checked|review): .*\n", "");
        replace("water/practice.yaml", "^      (checked|review): .*\n", "");
        replace("water/practice.yaml", ", (checked|review): [0-9-]+", "");
    }

    private void replace(String file, String pattern, String with) throws IOException {
        Path page = rules.resolve(file);
        Files.writeString(page, Files.readString(page).replaceAll("(?m)" + pattern, with));
    }

    private void edit(String file, String was, String is) throws IOException {
        Path page = rules.resolve(file);
        String text = Files.readString(page);
        assertTrue(text.contains(was), () -> file + " has no " + was);
        Files.writeString(page, text.replace(was, is));
    }

    private void practice(String was, String more) throws IOException {
        edit("water/practice.yaml", was, was + more);
    }

    private Ran due(String day, String... more) {
        List<String> args = new ArrayList<>(List.of("due", "--rules", rules.toString(), "--as-of", day));
        args.addAll(List.of(more));
        return Ran.of(args.toArray(String[]::new));
    }

    /** One heading of a day, each as {@code id region review}, a source without a region. */
    private List<String> listed(String heading, String day, String... more) throws IOException {
        List<String> args = new ArrayList<>(List.of(more));
        args.addAll(List.of("--format", "json"));
        List<String> listed = new ArrayList<>();
        for (JsonNode item : new ObjectMapper()
                .readTree(due(day, args.toArray(String[]::new)).out())
                .get(heading)) {
            listed.add(String.join(
                            " ",
                            item.get("id").asText(),
                            item.path("region").asText(""),
                            item.path("review").asText(""))
                    .replace("  ", " ")
                    .strip());
        }
        return listed;
    }

    /** On its day a value is overdue; ninety days before it is soon, and ninety-one days before it is neither. */
    @Test
    void soonEndsAfterNinetyDaysAndOverdueBeginsOnTheDay() throws IOException {
        practice("      value: 7.5 L\n", "      review: 2027-04-01\n");
        List<String> one = List.of("water.person-day-least any 2027-04-01");
        assertEquals(List.of(), listed("soon", "2026-12-31"));
        assertEquals(one, listed("soon", "2027-01-01"));
        assertEquals(one, listed("soon", "2027-03-31"));
        assertEquals(List.of(), listed("overdue", "2027-03-31"));
        assertEquals(one, listed("overdue", "2027-04-01"));
        assertEquals(List.of(), listed("soon", "2027-04-01"));
        assertEquals(List.of(), listed("soon", "2027-02-28", "--within", "31"));
        assertEquals(one, listed("soon", "2027-02-28", "--within", "32"));
        assertEquals(List.of(), listed("soon", "2027-03-31", "--within", "0"));
    }

    /** From 2027-01-01: 730 days are two years of which 2028 has a day more, 365 one year, 1095 and 180 as counted. */
    @Test
    void theDayFollowsFromTheGradeAndTheDayOfTheLastLook() throws IOException {
        String checked = "      checked: 2027-01-01\n";
        practice(PUBLISHED, checked);
        practice(SECOND_HAND, checked);
        practice(PRACTICE, ", checked: 2027-01-01");
        edit("sources.yaml", SOURCE, SOURCE + "  checked: 2027-01-01\n");
        assertEquals(
                List.of("water.person-day-least any 2028-01-01", "sa-remote-travel 2028-01-01"),
                listed("overdue", "2028-01-01"));
        assertEquals(
                List.of("water.person-day-least au-sa 2028-12-31", "water.reserve-least au-sa 2028-12-31"),
                listed("soon", "2028-10-02"));
        assertEquals(List.of(), listed("soon", "2028-10-01"));
        assertTrue(listed("soon", "2029-12-30").contains("water.remote-days any 2029-12-31"));
        edit("water/practice.yaml", "common-practice, checked", "memory, checked");
        assertTrue(listed("overdue", "2027-06-30").contains("water.remote-days any 2027-06-30"));
        assertFalse(listed("overdue", "2027-06-29").contains("water.remote-days any 2027-06-30"));
    }

    @Test
    void theTimesAreTheBooks() throws IOException {
        practice(PUBLISHED, "      checked: 2027-01-01\n");
        edit("book.yaml", "published: 730 days", "published: 10 days");
        assertEquals(List.of("water.reserve-least au-sa 2027-01-11"), listed("overdue", "2027-01-11"));
        edit("book.yaml", "published: 10 days", "published: 1 week");
        assertEquals(List.of("water.reserve-least au-sa 2027-01-08"), listed("overdue", "2027-01-11"));
    }

    /** Six litres of Australia rest on three texts; the value is as old as the one that was seen first, once all say so. */
    @Test
    void aValueGoesByTheOldestOfItsSources() throws IOException {
        edit("sources.yaml", SOURCE, SOURCE + "  checked: 2027-03-01\n");
        edit("sources.yaml", "nt-police-water:\n", "nt-police-water:\n  checked: 2027-01-01\n");
        String value = "water.person-day-least au";
        assertTrue(listed("undated", "2030-06-01").contains(value));
        edit("sources.yaml", "remote-rescue-water:\n", "remote-rescue-water:\n  checked: 2027-02-01\n");
        assertFalse(listed("undated", "2030-06-01").contains(value));
        assertTrue(listed("overdue", "2029-12-31").contains(value + " 2029-12-31"));
        practice("      value: 6 L\n      basis: common-practice\n", "      checked: 2027-01-02\n");
        assertTrue(listed("overdue", "2030-01-01").contains(value + " 2030-01-01"));
    }

    /** A day that a value states goes before the usual one until it was looked at on or after that day. */
    @Test
    void theDayThatAValueStatesGoesBefore() throws IOException {
        practice(PUBLISHED, "      checked: 2027-01-01\n      review: 2027-02-01\n");
        assertEquals(List.of("water.reserve-least au-sa 2027-02-01"), listed("overdue", "2027-02-01"));
        edit("water/practice.yaml", "checked: 2027-01-01", "checked: 2027-02-01");
        assertEquals(List.of(), listed("overdue", "2029-01-30"));
        assertEquals(List.of("water.reserve-least au-sa 2029-01-31"), listed("overdue", "2029-01-31"));
    }

    /** From the day on which a later value of its region holds nobody looks at the earlier one again. */
    @Test
    void whatNoLongerHoldsIsLetBe() throws IOException {
        practice(
                PUBLISHED,
                "      review: 2027-02-01\n      sources: [sa-remote-travel]\n"
                        + "    - region: au-sa\n      from: 2027-07-01\n      value: 4 days\n      basis: published\n");
        List<String> old = List.of("water.reserve-least au-sa 2027-02-01");
        assertEquals(old, listed("overdue", "2027-06-30"));
        assertEquals(List.of(), listed("overdue", "2027-07-01"));
        assertTrue(listed("undated", "2027-06-30").contains("water.reserve-least au-sa"));
    }

    @Test
    void aSourceMayStateItsDayToo() throws IOException {
        edit("sources.yaml", SOURCE, SOURCE + "  review: 2027-04-01\n");
        assertEquals(List.of("sa-remote-travel 2027-04-01"), listed("soon", "2027-01-01"));
        assertEquals(List.of("sa-remote-travel 2027-04-01"), listed("overdue", "2027-04-01"));
        assertFalse(listed("undated", "2027-04-01").contains("sa-remote-travel"));
    }

    @Test
    void eachStandsUnderItsHeadingWithCounts() throws IOException {
        practice(PUBLISHED, "      checked: 2027-01-01\n");
        practice(PRACTICE, ", review: 2028-10-01");
        Ran ran = due("2028-10-02")
                .printed(1)
                .says("1 overdue, 1 soon, 0 later, ")
                .says("Day: 2028-10-02; soon is within 90 days, by 2028-12-31")
                .says(
                        "Overdue: 1 To have been looked at again by 2028-10-01 water.remote-days, any from 2000-01-01: 2 days;"
                                + " common-practice (water/practice.yaml:")
                .says(
                        "Soon: 1 To be looked at again by 2028-12-31 2028-12-31 water.reserve-least, au-sa from 2000-01-01: 3"
                                + " days; published [sa-remote-travel]; last checked 2027-01-01 (water/practice.yaml:")
                .says("No day is made up.")
                .says("- water.reserve-least: au from 2000-01-01 (water/practice.yaml:");
        assertTrue(ran.out().contains("\nWithout a day: "), ran.out());
        assertTrue(ran.out().contains("\nSources: council-water-carriers, "), ran.out());
    }

    /** Where all was looked at nothing is listed, and the code says so. */
    @Test
    void nothingDueEndsWithZero() throws IOException {
        replace("sources.yaml", "^([a-z0-9-]+:)\n", "$1\n  checked: 2027-01-01\n");
        replace("water/practice.yaml", "^      basis: (.*)\n", "      basis: $1\n      checked: 2027-01-01\n");
        replace("water/practice.yaml", "basis: ([a-z-]+)}", "basis: $1, checked: 2027-01-01}");
        due("2027-01-02").printed(0).says("0 overdue, 0 soon, ").says(" 0 without a day.");
        due("2027-12-31").printed(1).says("0 overdue, ").says(" 0 without a day.");
    }

    @Test
    void aBookWithoutTimesSaysThatNoDayFollows() throws IOException {
        practice(PUBLISHED, "      checked: 2027-01-01\n");
        practice(PRACTICE, ", review: 2028-10-01");
        edit("book.yaml", TIMES, "");
        assertTrue(listed("undated", "2030-01-01").contains("water.reserve-least au-sa"));
        assertEquals(List.of("water.remote-days any 2028-10-01"), listed("overdue", "2030-01-01"));
    }

    @Test
    void proveRemindsOfWhatIsOverdue() throws IOException {
        practice(PUBLISHED, "      checked: 2027-01-01\n");
        edit("sources.yaml", SOURCE, SOURCE + "  checked: 2027-01-01\n");
        Ran eve = Ran.of("prove", "--rules", rules.toString(), "--as-of", "2027-12-31");
        assertFalse(eve.out().contains("looked at again"), eve.out());
        Ran ran = Ran.of("prove", "--rules", rules.toString(), "--as-of", "2028-12-31")
                .says("water.reserve-least: the value 3 days of au-sa from 2000-01-01 was to be looked at again by"
                        + " 2028-12-31")
                .says("sa-remote-travel: the source was to be looked at again by 2028-01-01");
        assertEquals(1, ran.code(), ran.out());
    }

    @Test
    void whatIsNoTimeIsRefusedAtItsLine() throws IOException {
        edit("book.yaml", "memory: 180 days", "memory: 12 h");
        Ran ran = due("2027-01-01");
        ran.refused(3, "review.memory: is no time from one look to the next");
        assertTrue(ran.err().contains("book.yaml:"), ran.err());
        edit("book.yaml", "memory: 12 h", "memory: 999999999999 days");
        due("2027-01-01").refused(3, "review.memory: is no time from one look to the next");
        edit("book.yaml", "  memory: 999999999999 days\n", "");
        due("2027-01-01").refused(3, "review.memory: is missing");
        due("2027-01-01", "--within", "-1").refused(2, "-1 is no number of days from 0 to 36500");
        due("2027-01-01", "--within", "36501").refused(2, "36501 is no number of days");
        due("2027-01-01", "--within", "soon").refused(2, "'soon'");
    }
}
