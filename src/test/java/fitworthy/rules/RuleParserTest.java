package fitworthy.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.figures.Measures;
import fitworthy.rules.Comparison.Both;
import fitworthy.rules.Comparison.Compared;
import fitworthy.rules.Comparison.Either;
import fitworthy.rules.Comparison.Holds;
import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Comparison.Not;
import fitworthy.rules.Comparison.Operator;
import fitworthy.rules.Comparison.Text;
import fitworthy.rules.Comparison.Truth;
import fitworthy.rules.Comparison.Zero;
import fitworthy.rules.Condition.All;
import fitworthy.rules.Condition.Any;
import fitworthy.rules.Condition.Match;
import fitworthy.rules.Condition.None;
import fitworthy.rules.Condition.Some;
import fitworthy.source.Fault;
import fitworthy.source.Place;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the texts of rules mean. What is refused stands in HostileRulesTest. */
class RuleParserTest {

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final Match M = new Match("$m", Fact.MEASURE, "mass.loaded", List.of());
    private static final Match A = new Match(null, Fact.MEASURE, "mass.axle", List.of());
    private static final Match P = new Match(null, Fact.PRACTICE, "mass.gvm-reserve", List.of());
    private static final Match D = new Match(null, Fact.ADVISED, "mass.gvm-tight", List.of());
    private static final Comparison KNOWN = new Holds(new Named(null, Property.KNOWN));
    private static final Comparison OVER = new Compared(new Named(null, Property.HEADROOM), Operator.BELOW, new Zero());
    private static final Comparison NO = new Compared(new Named(null, Property.WORD), Operator.EQUAL, new Text("no"));

    private static List<RuleText> parse(String text, List<Fault> faults) {
        return RuleParser.parse("a/a.drl", text, Set.of("mass.loaded", "mass.axle"), faults);
    }

    private static String rule(String condition) {
        return "rule \"mass.gvm-over\"\nwhen\n" + condition + "\nthen\n    advice.give(\"mass.gvm-over\", $m);\nend\n";
    }

    private static List<String> told(String text) {
        List<Fault> faults = new ArrayList<>();
        parse(text, faults);
        return faults.stream().map(each -> each.place() + ": " + each.problem()).toList();
    }

    private static Condition condition(String text) {
        List<Fault> faults = new ArrayList<>();
        List<RuleText> rules = parse(text, faults);
        assertEquals(List.of(), faults);
        return rules.get(0).condition();
    }

    /** M, A, P and D stand for the four patterns above. */
    static Stream<Arguments> conditions() {
        return Stream.of(
                Arguments.of("M", M),
                Arguments.of("(M)", M),
                Arguments.of("M A", new All(List.of(M, A))),
                Arguments.of("M and A", new All(List.of(M, A))),
                Arguments.of("M and A and P", new All(List.of(M, A, P))),
                Arguments.of("M and (A and P)", new All(List.of(M, new All(List.of(A, P))))),
                Arguments.of("M\nA or P", new All(List.of(M, new Any(List.of(A, P))))),
                Arguments.of("M\nA and P or D", new All(List.of(M, new Any(List.of(new All(List.of(A, P)), D))))),
                Arguments.of("M\nA or P and D", new All(List.of(M, new Any(List.of(A, new All(List.of(P, D))))))),
                Arguments.of("M\n(A or P) and D", new All(List.of(M, new All(List.of(new Any(List.of(A, P)), D))))),
                Arguments.of("M\nA or (P or D)", new All(List.of(M, new Any(List.of(A, new Any(List.of(P, D))))))),
                Arguments.of("M or M", new Any(List.of(M, M))),
                Arguments.of("M not A", new All(List.of(M, new None(A)))),
                Arguments.of("M not (A)", new All(List.of(M, new None(A)))),
                Arguments.of("M not A or P", new All(List.of(M, new Any(List.of(new None(A), P))))),
                Arguments.of("M not (A or P)", new All(List.of(M, new None(new Any(List.of(A, P)))))),
                Arguments.of("M exists A and D", new All(List.of(M, new All(List.of(new Some(A), D))))),
                Arguments.of("M exists (A and D)", new All(List.of(M, new Some(new All(List.of(A, D)))))),
                Arguments.of("M not (exists (not A))", new All(List.of(M, new None(new Some(new None(A)))))));
    }

    @ParameterizedTest
    @MethodSource("conditions")
    void aConditionIsReadAsItIsJoined(String text, Condition wanted) {
        String written = text.replaceAll("\\bM\\b", "\\$m : Measure(name == \"mass.loaded\")")
                .replaceAll("\\bA\\b", "Measure(name == \"mass.axle\")")
                .replaceAll("\\bP\\b", "Practice(id == \"mass.gvm-reserve\")")
                .replaceAll("\\bD\\b", "Advised(id == \"mass.gvm-tight\")");
        assertEquals(wanted, condition(rule(written)));
    }

    static Stream<Arguments> comparisons() {
        Comparison practice = new Compared(
                new Named(null, Property.SPARE), Operator.AT_MOST, new Named("$p", Property.PRACTICE_VALUE));
        return Stream.of(
                Arguments.of("known", KNOWN),
                Arguments.of("!known", new Not(KNOWN)),
                Arguments.of("(known)", KNOWN),
                Arguments.of("headroom<0", OVER),
                Arguments.of("word == \"no\"", NO),
                Arguments.of(
                        "\"no\" == word", new Compared(new Text("no"), Operator.EQUAL, new Named(null, Property.WORD))),
                Arguments.of(
                        "known != false",
                        new Compared(new Named(null, Property.KNOWN), Operator.UNEQUAL, new Truth(false))),
                Arguments.of("spare <= $p.value", practice),
                Arguments.of("known && headroom < 0", new Both(List.of(KNOWN, OVER))),
                Arguments.of(
                        "known || headroom < 0 && word == \"no\"",
                        new Either(List.of(KNOWN, new Both(List.of(OVER, NO))))),
                Arguments.of(
                        "known && headroom < 0 || word == \"no\"",
                        new Either(List.of(new Both(List.of(KNOWN, OVER)), NO))),
                Arguments.of(
                        "known && (headroom < 0 || word == \"no\")",
                        new Both(List.of(KNOWN, new Either(List.of(OVER, NO))))),
                Arguments.of(
                        "!(known && headroom < 0) || !known",
                        new Either(List.of(new Not(new Both(List.of(KNOWN, OVER))), new Not(KNOWN)))),
                Arguments.of("!(headroom < 0) && known", new Both(List.of(new Not(OVER), KNOWN))));
    }

    @ParameterizedTest
    @MethodSource("comparisons")
    void aComparisonIsReadByItsPrecedence(String text, Comparison wanted) {
        Match found = (Match) condition(rule("$p : Practice(id == \"mass.gvm-reserve\")\n"
                        + "$m : Measure(name == \"mass.loaded\", " + text + ")"))
                .parts()
                .get(1);
        assertEquals(List.of(wanted), found.comparisons());
    }

    @Test
    void aRuleSaysWhereItStandsAndWhatItMentions() {
        List<Fault> faults = new ArrayList<>();
        List<RuleText> rules = parse(
                "// a note\n\n"
                        + rule("$m : Measure(name == \"mass.loaded\", known)\n"
                                + "Practice(id == \"mass.gvm-reserve\")\n"
                                + "exists (Advised(id == \"mass.gvm-tight\") or Measure(name == \"mass.axle\"))"),
                faults);
        assertEquals(List.of(), faults);
        RuleText rule = rules.get(0);
        assertEquals("mass.gvm-over", rule.id());
        assertEquals(new Place("a/a.drl", 3, 0), rule.place());
        assertEquals(List.of("$m"), rule.evidence());
        assertEquals(Set.of("mass.loaded", "mass.axle"), rule.measures());
        assertEquals(Set.of("mass.gvm-reserve"), rule.practice());
        assertEquals(Set.of("mass.gvm-tight"), rule.earlier());
        assertEquals(List.of("mass.loaded"), rule.joined(), "what exists is not multiplied");
    }

    @Test
    void commentsAndLineEndsMakeNoDifference() {
        String plain = rule("$m : Measure(name == \"mass.loaded\", known)\nA".replace("A", "" + A));
        String noted = "/* Of 'loads' [and]\n {axles}. */\n"
                + plain.replace(", known", ", /* here */ known // there\n").replace("when", "when // then");
        assertEquals(condition(plain), condition(noted));
        assertEquals(condition(plain), condition(noted.replace("\n", "\r\n")));
        assertEquals(condition(plain), condition(plain.replace('\n', ' ')));
        assertEquals(condition(plain), condition(plain.replace("\n", "\n\n\t ")));
    }

    @Test
    void aCommentInsideAComparisonOrBesideTheAdviceIsRefused() {
        assertEquals(
                List.of("a/a.drl:3:41: a comment stands inside a comparison"),
                told(rule("    $m : Measure(name == \"mass.loaded\", headroom /* left */ < 0)")));
        assertEquals(
                List.of("a/a.drl:4:1: 'mass.gvm-over' does something else than give advice once"),
                told(rule("$m : Measure(name == \"mass.loaded\")").replace("then\n", "then // so\n")));
    }

    /** A fault is told with its column, and one rule at fault does not hide another. */
    @Test
    void everyRuleAtFaultIsTold() {
        String wrong = "rule \"mass.%s\" when $m : Measure(name == \"mass.loaded\", headrom < 0) then"
                + " advice.give(\"mass.%s\", $m); end\n";
        assertEquals(
                List.of(
                        "a/a.drl:1:56: 'headrom' is not a property here (did you mean 'headroom'?)",
                        "a/a.drl:2:20: not readable: '$m' stands where a pattern belongs",
                        "a/a.drl:3:56: 'headrom' is not a property here (did you mean 'headroom'?)"),
                told(wrong.replace("%s", "a")
                        + wrong.replace("%s", "b").replace("$m :", "$m")
                        + wrong.replace("%s", "c")));
    }

    @Test
    void whatIsLeftOutBehindTheAdviceIsNamed() {
        String sound = rule("$m : Measure(name == \"mass.loaded\", headroom < 0)");
        assertEquals(List.of(), told(sound));
        assertEquals(
                List.of("a/a.drl:6:1: not readable: 'end' stands where ';' belongs"), told(sound.replace(";", "")));
        assertEquals(
                List.of("a/a.drl:6:1: not readable: 'rule' stands where 'end' belongs"),
                told(sound.replace("end\n", "") + sound.replace("gvm-over", "other")));
    }

    @Test
    void aSingleEqualsSignIsShownDoubled() {
        List<Fault> faults = new ArrayList<>();
        parse(rule("$m : Measure(name == \"mass.loaded\", word = \"no\")"), faults);
        assertEquals(
                List.of("'word = \"no\"' is not a plain comparison -> word == \"no\""),
                faults.stream()
                        .map(each -> each.problem() + " -> " + each.mend())
                        .toList());
    }

    @Test
    void aBracketLeftOpenIsToldWhereItStands() {
        assertEquals(
                List.of("a/a.drl:3:17: not readable: this bracket is not closed before 'then'"),
                told(rule("    $m : Measure((name == \"mass.loaded\")")
                        .replace("((", "(")
                        .replace("\")\nthen", "\"\nthen")));
    }

    /** A property that only another fact has: the engine would say so after seconds, of code that it made. */
    @Test
    void whatAFactDoesNotHaveIsNotComparedWith() {
        assertEquals(
                List.of("a/a.drl:4:48: '$p.headroom' is not a property"),
                told(rule("$p : Practice(id == \"mass.gvm-reserve\")\n"
                        + "$m : Measure(name == \"mass.loaded\", headroom < $p.headroom)")));
    }

    @Test
    void theBoundsHoldAtBothSides() {
        String m = "$m : Measure(name == \"mass.loaded\")";
        String open = "$m : Measure(name == \"mass.loaded\", %s)";
        assertEquals(List.of(), told(rule(open.replace("%s", "(".repeat(7) + "known" + ")".repeat(7)))));
        assertEquals(
                List.of("a/a.drl:3:44: brackets stand in brackets more than 8 deep"),
                told(rule(open.replace("%s", "(".repeat(8) + "known" + ")".repeat(8)))));

        assertEquals(List.of(), told(rule(m + "\n" + (A + "\n").repeat(7))));
        assertEquals(
                List.of("a/a.drl:1: 'mass.gvm-over' joins more than 8 patterns"),
                told(rule(m + "\n" + (A + "\n").repeat(8))));

        String either = "exists (" + A + " or " + A + ")\n";
        assertEquals(List.of(), told(rule(m + "\n" + either.repeat(5) + A)), "32 alternatives");
        assertEquals(
                List.of("a/a.drl:1: 'mass.gvm-over' has more than 50 alternatives once 'or' is multiplied out"),
                told(rule(m + "\n" + either.repeat(6))));

        String longest = "word != \"" + "x".repeat(290) + "\"";
        assertEquals(300, longest.length());
        assertEquals(List.of(), told(rule(open.replace("%s", longest))));
        assertEquals(
                List.of("a/a.drl:3:37: this comparison is longer than 300 characters"),
                told(rule(open.replace("%s", longest.replace("x\"", "xx\"")))));

        String rest = rule(m);
        assertEquals(List.of(), told("//" + "x".repeat(Lexer.LONGEST - rest.length() - 3) + "\n" + rest));
        assertEquals(
                List.of("a/a.drl:1:1: the file is longer than 65536 characters"),
                told("//" + "x".repeat(Lexer.LONGEST - rest.length() - 2) + "\n" + rest));
    }

    /** A rule that leaves a bracket open does not make those of the next too deep. */
    @Test
    void eachRuleHasItsOwnBrackets() {
        String open = rule("$m : Measure(name == \"mass.loaded\"");
        assertEquals(
                12,
                told(open.repeat(12)).stream()
                        .filter(each -> each.endsWith("this bracket is not closed before 'then'"))
                        .count());
    }

    /** What stands in such a pattern is not read, what stands behind it is. */
    @Test
    void anUnknownFactHidesNothingBehindIt() {
        String text = rule("    $m : Measure(name == \"mass.loaded\")\n"
                + "    Mesure(name == \"mass.axle\", (known && (headrom < 0)), known)\n"
                + "    Measure(name == \"mass.axle\", headrom < 0)");
        assertEquals(
                List.of(
                        "a/a.drl:4:5: there is no fact 'Mesure' (did you mean 'Measure'?)",
                        "a/a.drl:5:34: 'headrom' is not a property here (did you mean 'headroom'?)"),
                told(text));
    }

    @Test
    void everyComparisonAtFaultIsToldAndNoneTwice() {
        assertEquals(
                List.of(
                        "a/a.drl:3:37: 'headrom' is not a property here (did you mean 'headroom'?)",
                        "a/a.drl:3:51: 'vale' is not a property here (did you mean 'value'?)",
                        "a/a.drl:3:71: 'limt' is not a property here (did you mean 'limit'?)"),
                told(rule("$m : Measure(name == \"mass.loaded\", headrom < 0, (vale < 0 && known), limt > 0)")));
    }

    @Test
    void whatProvesNothingWhereItIsAbsentIsRefusedInsideNot() {
        String m = "$m : Measure(name == \"mass.loaded\")\n";
        String number = "a/a.drl:4:1: a figure that is not known would count as one that is not there";
        String advice = "a/a.drl:4:1: advice that is not given yet may still come, so its absence proves nothing";
        String axle = "Measure(name == \"mass.axle\", %s)";
        assertEquals(List.of(number), told(rule(m + "not " + axle.formatted("value > 0"))));
        assertEquals(List.of(number), told(rule(m + "not (" + A + " and " + axle.formatted("known, value > 0") + ")")));
        assertEquals(List.of(number), told(rule(m + "not " + axle.formatted("word != \"no\""))));
        assertEquals(List.of(), told(rule(m + "not " + axle.formatted("word == \"no\""))));
        assertEquals(List.of(), told(rule(m + "not " + axle.formatted("known"))));
        assertEquals(List.of(), told(rule(m + "exists " + axle.formatted("value > 0"))));
        assertEquals(List.of(advice), told(rule(m + "not " + D)));
        assertEquals(List.of(advice), told(rule(m + "not (" + A + " or " + D + ")")));
        assertEquals(List.of(), told(rule(m + "exists " + D)));
    }

    /** Wherever a file is cut off, that is told and nothing is looked for behind its end. */
    @Test
    void aFileCutOffAnywhereIsTold() {
        String whole = rule("$m : Measure(name == \"mass.loaded\", !(known && $m.value > 0)) not (" + A + ")")
                .strip();
        List<Integer> ends = new ArrayList<>();
        for (int i = 1; i < whole.length(); i++) {
            if (!Character.isLetterOrDigit(whole.charAt(i - 1)) || !Character.isLetterOrDigit(whole.charAt(i))) {
                ends.add(i);
            }
        }
        assertTrue(ends.size() > 50);
        for (int end : ends) {
            assertTrue(!told(whole.substring(0, end)).isEmpty(), () -> whole.substring(0, end));
        }
        assertEquals(
                List.of("a/a.drl:1:28: not readable: the end of the file stands where '(' belongs"),
                told("rule \"mass.a\" when Measure."));
    }

    /** What a hostile file costs grows with its length, not with what stands in what. */
    @Test
    void aFileFullOfFaultsIsReadAtOnce() {
        String m = "$m : Measure(name == \"mass.loaded\"";
        for (String each :
                List.of(", a", ", known &&", ", !", ", (", " or " + m, "\nnot " + A, " and Mesure()", ";", "rule ")) {
            String text = rule(m + each.repeat((Lexer.LONGEST - 200) / each.length()) + ")");
            long begun = THREADS.getCurrentThreadCpuTime();
            assertTrue(told(text).size() >= 1, each);
            long millis = (THREADS.getCurrentThreadCpuTime() - begun) / 1_000_000;
            assertTrue(millis < 5000, each + " took " + millis + " ms of the processor");
        }
    }

    /** The shipped files write every pattern as the records print it, so that an explanation shows what stands there. */
    @Test
    void theShippedRulesPrintAsTheyAreWritten() throws IOException {
        int patterns = 0;
        try (Stream<Path> files = Files.walk(Books.RULES)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".drl")).toList()) {
                String text = Files.readString(file);
                List<Fault> faults = new ArrayList<>();
                for (RuleText rule :
                        RuleParser.parse(file.toString(), text, Measures.kinds().keySet(), faults)) {
                    for (Match pattern : rule.condition().patterns()) {
                        assertTrue(text.replaceAll("\\s+", " ").contains(pattern.toString()), pattern::toString);
                        patterns++;
                    }
                }
                assertEquals(List.of(), faults);
            }
        }
        assertTrue(patterns > 400, "only " + patterns);
    }
}
