package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fitworthy.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command begin, on a copy of the shipped book that only keeps its water topic. */
class BeginTest {

    @TempDir
    private Path folder;

    private String rules;

    @BeforeEach
    void copyOneTopic() throws IOException {
        rules = Books.copyOf("water", folder.resolve("rules")).toString();
    }

    private Ran rule(String id, String about, String from, String region) {
        return Ran.of("begin", "rule", id, "--about", about, "--from", from, "--region", region, "--rules", rules);
    }

    /** The same cases as before come out as they say, and so do those of what was begun. */
    private void proves(int moreCases) throws IOException {
        JsonNode before = new ObjectMapper()
                .readTree(
                        Ran.of("cases", "--format", "json", "--topic", "water").out());
        JsonNode now = new ObjectMapper()
                .readTree(Ran.of("prove", "--rules", rules, "--format", "json").out());
        assertEquals("[]", now.get("faults").toString());
        assertEquals(before.get("cases").asInt() + moreCases, now.get("cases").asInt());
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
        proves(3);
    }

    @Test
    void aRuleOnAWordBeginsWithACaseThatAnswersItAndProves() throws IOException {
        assertEquals(
                0, rule("water.again", "water.potable", "2027-07-01", "any").code());
        proves(2);
    }

    @Test
    void aRegionBeginsWithItsParentsValuesAndProves() throws IOException {
        Ran ran = Ran.of(
                "begin", "region", "au-tas", "--name", "Tasmania: \"the island\"", "--parent", "au", "--rules", rules);
        assertEquals(0, ran.code(), ran.err());
        proves(0);
        Ran.of("begin", "region", "au-tas", "--name", "Tasmania", "--parent", "au", "--rules", rules)
                .refused(2, "the book has a region 'au-tas' already");
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
        rule("water.new", "water.days", "2027-07-01", "au-tas").refused(2, "the book has no region 'au-tas'");
        Ran.of("begin", "region", "au-tas", "--name", "Tasmania", "--parent", "oz", "--rules", rules)
                .refused(2, "the book has no region 'oz'");
        assertEquals(before, Files.readString(Path.of(rules, "water", "cards.yaml")));
    }
}
