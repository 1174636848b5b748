package fitworthy.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.source.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a rule is run with beyond what its file says: whether what it compares is known. */
class KnownTest {

    /** A condition as it is run. */
    private static String run(String condition) {
        List<Fault> faults = new ArrayList<>();
        List<RuleText> rules = RuleParser.parse(
                "a/a.drl",
                "rule \"mass.a\" when $m : Measure(name == \"mass.ball\") " + condition
                        + " then advice.give(\"mass.a\", $m); end",
                Set.of("mass.loaded", "mass.axle", "mass.ball"),
                faults);
        assertEquals(List.of(), faults);
        return rules.get(0)
                .asRun()
                .condition()
                .toString()
                .substring("$m : Measure(name == \"mass.ball\") and ".length());
    }

    private static String loaded(String comparisons) {
        return "Measure(name == \"mass.loaded\", " + comparisons + ")";
    }

    private static String axle(String name, String comparisons) {
        return name + " : Measure(name == \"mass.axle\"" + comparisons + ")";
    }

    private static void asks(String asked, String comparisons) {
        assertEquals(loaded(asked + comparisons), run(loaded(comparisons)));
    }

    @Test
    void aNumberHasToBeKnownHoweverItIsCompared() {
        asks("known, ", "headroom < 0");
        asks("known, ", "0 < excess");
        asks("known, ", "value == limit");
        asks("known, ", "!(headroom < 0)");
        asks("known, ", "headroom < 0 && subject == \"a\"");
        asks("known, ", "subject == \"a\" && headroom < 0");
        asks("known, ", "headroom < 0 || subject == \"a\"");
        asks("known, ", "subject == \"a\" || headroom < 0");
        asks("known, ", "known && headroom < 0");
        asks("", "known, headroom < 0");
        asks("", "headroom < 0, known");
    }

    /** A word that is not known is none that a rule names, but differs from every one. */
    @Test
    void aWordHasToBeKnownOnlyWhereItIsToDiffer() {
        asks("", "word == \"no\"");
        asks("known, ", "word != \"no\"");
        asks("known, ", "!(word == \"no\")");
        asks("", "subject != \"a\"");
        asks("", "!known");
    }

    @Test
    void whatIsBoundBeforeHasToBeKnownToo() {
        String compared = "value > $a.value";
        assertEquals(
                axle("$a", "") + " and " + loaded("known, $a.known, " + compared),
                run(axle("$a", "") + " " + loaded(compared)));
        assertEquals(
                axle("$a", ", known") + " and " + loaded("known, " + compared),
                run(axle("$a", ", known") + " " + loaded(compared)));
        assertEquals(
                axle("$a", ", known, value > 0") + " and " + loaded("known, " + compared),
                run(axle("$a", ", value > 0") + " " + loaded(compared)),
                "it was asked where it was bound");
        assertEquals(
                axle("$a", "") + " and " + loaded("known, $a.known, " + compared),
                run(axle("$a", "") + " " + loaded("known, $a.known, " + compared)),
                "the rule says all of it");
        assertEquals(
                axle("$a", ", !known") + " and " + loaded("known, $a.known, " + compared),
                run(axle("$a", ", !known") + " " + loaded(compared)));
        assertEquals(
                axle("$a", "") + " and " + loaded("known, $a.known, value > 0 && $a.value > 0"),
                run(axle("$a", "") + " " + loaded("value > 0 && $a.value > 0")));
        assertEquals(
                axle("$a", "") + " and " + loaded("known, $a.known, value > 0 || $a.value > 0"),
                run(axle("$a", "") + " " + loaded("value > 0 || $a.value > 0")));
    }

    @Test
    void aPracticeValueIsAlwaysKnown() {
        String practice = "$p : Practice(id == \"mass.gvm-reserve\", value > 0)";
        assertEquals(
                practice + " and " + loaded("known, value > $p.value"),
                run(practice + " " + loaded("value > $p.value")));
    }

    @Test
    void whatIsBoundByEitherIsKnownOnlyWhereBothSaySo() {
        for (String[] parts : new String[][] {
            {", known", ", known", ""},
            {", known", "", "$a.known, "},
            {"", ", known", "$a.known, "},
            {"", "", "$a.known, "}
        }) {
            String either = "(" + axle("$a", parts[0]) + " or " + axle("$a", parts[1]) + ")";
            assertEquals(
                    either + " and " + loaded("known, " + parts[2] + "value > $a.value"),
                    run(either + " " + loaded("value > $a.value")),
                    either);
        }
    }

    @Test
    void whatIsKnownBeforeAnEitherIsKnownInItsPartsAndAfterIt() {
        String before = axle("$a", ", known");
        String asked = loaded("known, value > $a.value");
        assertEquals(
                before + " and (" + asked + " or " + asked + ") and " + asked,
                run(before + " ("
                        + loaded("value > $a.value") + " or " + loaded("value > $a.value") + ") "
                        + loaded("value > $a.value")));
    }

    @Test
    void insideExistsItIsAskedToo() {
        assertEquals("exists " + loaded("known, value > 0"), run("exists " + loaded("value > 0")));
        assertEquals("not " + loaded("subject == \"a\""), run("not " + loaded("subject == \"a\"")));
    }
}
