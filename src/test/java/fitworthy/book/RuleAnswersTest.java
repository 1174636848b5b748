package fitworthy.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.rules.RuleParser;
import fitworthy.rules.RuleText;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a rule asks that its measures never answer, and what it asks in vain. */
class RuleAnswersTest {

    private static final Map<String, MeasureKind> KINDS = Measures.kinds();

    private static RuleText rule(String condition) {
        List<Fault> faults = new ArrayList<>();
        List<RuleText> rules = RuleParser.parse(
                "mass.drl",
                "\nrule \"mass.some\" when " + condition + " then advice.give(\"mass.some\", $m); end",
                KINDS.keySet(),
                faults);
        assertEquals(List.of(), faults);
        return rules.get(0);
    }

    private static RuleText with(String measure, String comparisons) {
        return rule("$p : Practice(id == \"mass.p\") and $o : Measure(name == \"fuel.can-place\")"
                + " and $m : Measure(name == \"" + measure + "\", " + comparisons + ")");
    }

    private static void says(List<Fault> faults, String text) {
        assertEquals(1, faults.size(), faults::toString);
        assertTrue(faults.get(0).toString().startsWith("mass.drl:2: mass.some: " + text), faults.get(0)::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            textBlock =
                    """
        mass.raised ; word == "aftre" ; asks whether mass.raised says 'aftre', which it never does (did you mean 'after'?)\\n    right: one of before, after
        mass.raised ; word != "aftre" ; asks whether mass.raised says 'aftre'
        mass.raised ; "aftre" == word ; asks whether mass.raised says 'aftre'
        mass.raised ; known, (word == "before" || word == "later") ; asks whether mass.raised says 'later', which it never does\\n    right: one of before, after
        electrical.cold-charging ; word == "none" ; asks whether electrical.cold-charging says 'none', which it never does\\n    right: one of blocked, heated, unguarded, no-frost
        mass.raised ; word == "" ; asks whether mass.raised says ''
        mass.raised ; !(word == "aftre") ; asks whether mass.raised says 'aftre'
        mass.raised ; $o.word == "aftre" ; asks whether fuel.can-place says 'aftre', which it never does\\n    right: one of open-air, box, cabin
        tyres.symbol-needed ; word == "H" ; holds tyres.symbol-needed, which is a word out of a table, against 'H'
        mass.raised ; word == $o.word ; holds mass.raised against fuel.can-place in 'word == $o.word', though they never say the same word
        mass.loaded ; word == "yes" ; asks in 'word == "yes"' for the word of mass.loaded, which is a number
        mass.loaded ; word == $o.word ; asks in 'word == $o.word' for the word of mass.loaded, which is a number
        mass.raised ; value > $p.value ; asks in 'value > $p.value' for a number of mass.raised, which is answered by a word
        mass.raised ; tolerance > 0 ; asks in 'tolerance > 0' for a number of mass.raised, which is answered by a word
        mass.gvm ; headroom < 0 ; asks in 'headroom < 0' for the limit of mass.gvm, which has none of its own
        mass.gvm ; spare < $p.value ; asks in 'spare < $p.value' for the limit of mass.gvm, which has none of its own
        """)
    void whatAMeasureNeverAnswersIsAFault(String measure, String comparisons, String problem) {
        says(RuleAnswers.faults(with(measure, comparisons), KINDS), problem.replace("\\n", "\n"));
    }

    /** What stands under 'not' and 'exists' is looked at too. */
    @ParameterizedTest
    @ValueSource(strings = {"not", "exists"})
    void aWordIsLookedAtWhereverItStands(String joint) {
        String loaded = "$m : Measure(name == \"mass.loaded\") and " + joint;
        says(
                RuleAnswers.faults(rule(loaded + " Measure(name == \"mass.raised\", word == \"aftre\")"), KINDS),
                "asks whether mass.raised says 'aftre'");
        assertEquals(
                List.of(),
                RuleAnswers.faults(rule(loaded + " Measure(name == \"mass.raised\", word == \"after\")"), KINDS));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            textBlock =
                    """
        mass.raised ; word == "after"
        mass.raised ; known, word != "before"
        electrical.cold-charging ; word == "no-frost"
        fuel.can-place ; word == $o.word
        tyres.symbol-needed ; subject == "tyres"
        mass.gvm ; value < $p.value, tolerance > 0
        mass.loaded ; headroom < 0, spare > $p.value
        """)
    void whatItAnswersIsNone(String measure, String comparisons) {
        assertEquals(List.of(), RuleAnswers.faults(with(measure, comparisons), KINDS));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            textBlock =
                    """
        mass.raised ; word == "after", word == "before" ; nothing ever matches 'word == "after"' together with 'word == "before"'
        mass.raised ; word == "after" && word != "after" ; nothing ever matches 'word == "after"' together with 'word != "after"'
        mass.raised ; !known, word == "after" ; nothing ever matches '!known' together with 'word == "after"'
        mass.raised ; word != "before", word != "after" ; rules out every word that mass.raised may say
        mass.loaded ; known == false, known ; nothing ever matches 'known == false' together with 'known'
        mass.loaded ; headroom < 0, excess <= 0 ; nothing ever matches 'headroom < 0' together with 'excess <= 0'
        mass.loaded ; value > limit, headroom >= 0 ; nothing ever matches 'value > limit' together with 'headroom >= 0'
        mass.loaded ; value > $p.value, $p.value >= value ; nothing ever matches 'value > $p.value' together with '$p.value >= value'
        mass.loaded ; value == $p.value, value != $p.value ; nothing ever matches 'value == $p.value' together with 'value != $p.value'
        mass.loaded ; value > $p.value, $m.value < $p.value ; nothing ever matches 'value > $p.value' together with '$m.value < $p.value'
        mass.loaded ; value < 0 ; nothing ever matches 'value of mass.loaded is never below zero' together with 'value < 0'
        suspension.lift ; tolerance < 0 ; nothing ever matches 'tolerance of suspension.lift is never below zero' together with 'tolerance < 0'
        mass.loaded ; headroom < 0, (excess < 0 || value > $p.value) ; nothing ever matches 'headroom < 0' together with 'excess < 0'
        mass.loaded ; headroom < 0, !(excess > 0 && value > $p.value) ; nothing ever matches 'headroom < 0' together with '!(excess > 0)'
        mass.loaded ; subject == "front axle", subject == "rear axle" ; nothing ever matches 'subject == "front axle"' together with
        mass.loaded ; subject == $o.subject, subject != $o.subject ; nothing ever matches 'subject == $o.subject' together with
        mass.loaded ; name == "mass.axle" ; nothing ever matches 'name == "mass.loaded"' together with 'name == "mass.axle"'
        """)
    void whatExcludesEachOtherInOnePatternIsAFault(String measure, String comparisons, String problem) {
        says(Contradictions.faults(with(measure, comparisons), KINDS), problem);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            textBlock =
                    """
        mass.raised ; word == "after" || word == "before"
        mass.raised ; !known || word == "after"
        fuel.can-place ; word != "box", word != "cabin"
        mass.loaded ; headroom >= 0, headroom <= 0
        mass.loaded ; headroom < 0, excess > 0, excess < $p.value
        mass.loaded ; value > $p.value, limit < $p.value
        mass.loaded ; value <= 0
        suspension.lift ; value < 0
        mass.loaded ; subject != "front axle", subject != "rear axle"
        mass.loaded ; known, known == true, tolerance >= 0
        """)
    void whatMayHoldAtOnceIsNone(String measure, String comparisons) {
        assertEquals(List.of(), Contradictions.faults(with(measure, comparisons), KINDS));
    }

    @Test
    void theShippedRulesAskNothingInVain() throws FaultsException {
        for (RuleText rule : Books.shipped().rules().values()) {
            assertEquals(List.of(), RuleAnswers.faults(rule, KINDS));
            assertEquals(List.of(), Contradictions.faults(rule, KINDS));
        }
    }
}
