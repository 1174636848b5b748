package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fitworthy.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command begin, on a copy of the shipped book that only keeps its water topic. */
class BeginTest {

    /** How many cases of water the shipped book has. */
    private static int shipped;

    @TempDir
    private Path folder;

    private String rules;

    @BeforeAll
    static void countCases() throws IOException {
        shipped = new ObjectMapper()
                .readTree(
                        Ran.of("cases", "--format", "json", "--topic", "water").out())
                .get("cases")
                .asInt();
    }

    @BeforeEach
    void copyOneTopic() throws IOException {
        rules = Books.copyOf("water", folder.resolve("rules")).toString();
    }

    private Ran rule(String id, String about, String from, String region) {
        return rule(id, about, from, List.of("--region", region));
    }

    private Ran rule(String id, String about, String from, List<String> more) {
        List<String> line =
                new ArrayList<>(List.of("begin", "rule", id, "--about", about, "--from", from, "--rules", rules));
        line.addAll(more);
        return Ran.of(line.toArray(String[]::new));
    }

    /** The keeper writes what begin has left blank. @param remedy what the card tells to do */
    private void fillIn(String remedy) throws IOException {
        for (String file : List.of("cards.yaml", "practice.yaml")) {
            Path page = Path.of(rules, "water", file);
            Files.writeString(
                    page,
                    Files.readString(page)
                            .replaceAll("remedy: \"To be written[^\"\n]*\"", "remedy: \"" + remedy + "\"")
                            .replaceAll("title: \"To be written[^\"\n]*\"", "title: \"{subject} is wrong\"")
                            .replaceAll("\"To be written[^\"\n]*\"", "\"As the text has it\"")
                            .replaceAll("To be written\\.?", "Words"));
        }
    }

    /** The same cases as before come out as they say, and so do those of what was begun. */
    private void proves(int moreCases) throws IOException {
        JsonNode now = new ObjectMapper()
                .readTree(Ran.of("prove", "--rules", rules, "--format", "json").out());
        assertEquals("[]", now.get("faults").toString());
        assertEquals(
                Files.readString(Path.of(rules, "water", "cards.yaml")).contains("To be written"),
                !now.get("reminders").isEmpty(),
                now.get("reminders").toString());
        assertEquals(shipped + moreCases, now.get("cases").asInt());
    }

    @Test
    void aRuleOnANumberBeginsBetweenTwoCasesAndProves() throws IOException {
        Ran ran = rule("water.plenty", "water.person-day", "2027-07-01", "au-sa");
        assertEquals(0, ran.code(), ran.err());
        for (String file : List.of("water.drl", "cards.yaml", "practice.yaml", "cases.yaml")) {
            assertTrue(ran.out().contains(Path.of(rules, "water", file) + ":"), ran.out());
        }
        assertTrue(
                Files.readString(Path.of(rules, "water", "practice.yaml")).contains("from: 2000-01-01, value: none"));
        proves(4);
        fillIn("Take {margin} off");
        proves(4);
    }

    @Test
    void aRuleForSeveralRegionsAndFiguresOfAtLeastSoMuchProvesOnceItsBlanksAreFilledIn() throws IOException {
        Ran ran = rule(
                "water.plenty",
                "water.reserve",
                "2027-07-01",
                List.of("--at-least", "--region", "au=3 days", "--region", "au-sa", "--region", "us=3 days"));
        assertEquals(0, ran.code(), ran.err());
        String values = Files.readString(Path.of(rules, "water", "practice.yaml"));
        assertTrue(values.contains("water.plenty-least:"), values);
        assertTrue(values.contains("{region: au, from: 2027-07-01, value: 3 days,"), values);
        assertTrue(values.contains("{region: us, from: 2027-07-01, value: 3 days,"), values);
        String card = Files.readString(Path.of(rules, "water", "cards.yaml"));
        assertTrue(card.contains("allowed: at-least"), card);
        proves(12);
        fillIn("Fill tanks up by {margin}, to {enough} or more");
        proves(12);
    }

    @Test
    void everythingWrongWithWhatIsAskedForIsToldAtOnce() throws IOException {
        Ran ran = rule("wine.plenty", "water.dais", "2027-07-01", List.of("--region", "oz", "--region", "us-ut"));
        for (String wrong : List.of("'wine.plenty' does not begin", "'water.days'?", "region 'oz'", "'us-ut'")) {
            ran.refused(2, wrong);
        }
        rule("water.new", "water.reserve", "2027-07-01", "au=4 kg").refused(2, "--region");
        rule("water.new", "water.reserve", "2027-07-01", "au=400 days")
                .refused(2, "no two cases of the topic come near enough to 400 days (Australia)");
        rule("water.new", "water.potable", "2027-07-01", List.of("--at-least", "--region", "au=1"))
                .refused(2, "water.potable is an answer in a word");
    }

    @Test
    void aRuleOnAWordBeginsWithACaseThatAnswersItAndProves() throws IOException {
        assertEquals(
                0, rule("water.again", "water.potable", "2027-07-01", "any").code());
        proves(3);
        Path drl = Path.of(rules, "water", "water.drl");
        String begun = Files.readString(drl);
        assertTrue(begun.contains("$own : Practice(id == \"water.again-asked\", value > 0)"), begun);
        fillIn("Words");
        proves(3);
        // A region that does not ask for it has a no, at which nothing may fire.
        Files.writeString(drl, begun.replace("\"water.again-asked\", value > 0", "\"water.again-asked\""));
        Ran.of("prove", "--rules", rules)
                .says("no rule compares 0 of any from 2000-01-01 with anything, so that a no fires as a yes does");
    }

    /** The cases of the first are of the day that both were to begin on. */
    @Test
    void aSecondRuleOfATopicMayBeginTheDayAfterTheFirst() throws IOException {
        rule("water.plenty", "water.person-day", "2027-07-01", "au-sa");
        rule("water.again", "water.potable", "2027-07-01", "any").refused(2, "right: --from 2027-07-02");
        assertEquals(
                0, rule("water.again", "water.potable", "2027-07-02", "any").code());
    }

    @Test
    void aRegionBeginsWithItsParentsValuesAndProves() throws IOException {
        Ran ran = Ran.of(
                "begin", "region", "us-ut", "--name", "Utah: \"the desert\"", "--parent", "us", "--rules", rules);
        assertEquals(0, ran.code(), ran.err());
        proves(0);
        Ran.of("begin", "region", "us-ut", "--name", "Utah", "--parent", "us", "--rules", rules)
                .refused(2, "the book has a region 'us-ut' already");
    }

    @Test
    void whatDoesNotFitTheBookIsRefusedAndNothingIsWritten() throws IOException {
        String before = Files.readString(Path.of(rules, "water", "cards.yaml"));
        rule("wine.plenty", "water.days", "2027-07-01", "any").refused(2, "'wine.plenty' does not begin with a topic");
        rule("water.short", "water.days", "2027-07-01", "any").refused(2, "the book has a rule 'water.short' already");
        rule("water.new", "water.dais", "2027-07-01", "any").refused(2, "(did you mean 'water.days'?)");
        rule("water.new", "tyres.symbol-needed", "2027-07-01", "any")
                .refused(2, "a word out of a table, which no rule");
        rule("water.new", "mass.roof", "2027-07-01", "any").refused(2, "no case of water has the measure mass.roof");
        rule("water.new", "water.days", "2026-11-25", "any").refused(2, "so a rule from 2026-11-25 on would change it");
        rule("water.new", "water.days", "2027-07-01", "us-ut").refused(2, "the book has no region 'us-ut'");
        Ran.of("begin", "region", "us-ut", "--name", "Utah", "--parent", "oz", "--rules", rules)
                .refused(2, "the book has no region 'oz'");
        assertEquals(before, Files.readString(Path.of(rules, "water", "cards.yaml")));
    }
}
