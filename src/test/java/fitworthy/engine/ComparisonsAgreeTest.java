package fitworthy.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.figures.Measures;
import fitworthy.figures.measure.Measure;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.rules.Condition;
import fitworthy.rules.RuleParser;
import fitworthy.rules.RuleText;
import fitworthy.source.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.kie.api.runtime.KieSession;

/**
 * Whether a comparison holds is said by the engine and, for explanations, by its record: the two have to agree, and
 * no comparison holds of a number that is not known: to the engine it would be no less than any other.
 */
class ComparisonsAgreeTest {

    private static final List<String> COMPARISONS = List.of(
            "known",
            "!known",
            "known == true",
            "known != $a.known",
            "value < limit",
            "value >= limit",
            "value <= limit",
            "headroom <= 0",
            "headroom >= 0",
            "excess >= $b.excess",
            "tolerance <= $b.value",
            "limit >= $b.value || known",
            "!(value > limit)",
            "!(value <= $b.limit)",
            "word != \"heavy\"",
            "value != limit",
            "value == limit",
            "0 < headroom",
            "0 >= excess",
            "known && $a.value <= value",
            "value > $a.limit",
            "spare < $a.spare",
            "headroom < tolerance",
            "word == \"\"",
            "subject == \"within\"",
            "\"within\" != subject",
            "subject != $a.subject",
            "known || headroom < 0 && value > $a.value",
            "known && headroom < 0 || value > $a.value",
            "(known || headroom < 0) && value > $a.value",
            "!known || headroom < 0",
            "!(known || headroom < 0)",
            "!(known && headroom < 0) && !(value == limit)",
            "!(!(known))",
            "headroom < 0 || headroom > 0 || subject == \"unknown\"",
            "known && (headroom >= 0 && (value < 0 || limit > $a.limit))");

    private static Measure loaded(String subject, Figure figure, double limit) {
        return Measure.of(Measures.kinds().get("mass.loaded"), subject, figure, Figure.of(limit, 3));
    }

    @Test
    void theEngineAndTheRecordsSayTheSame() throws Exception {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < COMPARISONS.size(); i++) {
            text.append("rule \"mass.r%d\" when $a : Measure(name == \"mass.axle\")".formatted(i))
                    .append(" $b : Measure(name == \"mass.combined\")")
                    .append(" $m : Measure(name == \"mass.loaded\", %s)".formatted(COMPARISONS.get(i)))
                    .append(" then advice.give(\"mass.r%d\", $m); end\n".formatted(i));
        }
        List<Fault> faults = new ArrayList<>();
        List<RuleText> rules =
                RuleParser.parse("a/a.drl", text.toString(), Measures.kinds().keySet(), faults);
        Map<String, byte[]> compiled = RuleCompiler.compile(Map.of("a/a.drl", text.toString()), faults);
        assertEquals(List.of(), faults);

        Measure axle =
                Measure.of(Measures.kinds().get("mass.axle"), "rear axle", Figure.of(1000, 5), Figure.of(1200, 0));
        Measure both = Measure.of(
                Measures.kinds().get("mass.combined"),
                "vehicle and trailer",
                Figure.missing(new Missing("a", "b", "c")),
                Figure.of(1200, 0));
        List<Measure> all = List.of(
                loaded("within", Figure.of(900, 5), 1000),
                loaded("rear axle", Figure.of(1100, 5), 1000),
                loaded("at", Figure.of(1000, 0), 1000),
                loaded("nought", Figure.of(0, 0), 1300),
                loaded("unknown", Figure.missing(new Missing("a", "b", "c")), 1000));

        Set<String> fired = new TreeSet<>();
        KieSession session = RuleCompiler.load(compiled).newKieSession();
        session.setGlobal(
                "advice", (RuleAction) (id, evidence) -> fired.add(id + " " + ((Measure) evidence[0]).getSubject()));
        session.insert(axle);
        session.insert(both);
        all.forEach(session::insert);
        session.fireAllRules();
        session.dispose();

        Set<String> held = new TreeSet<>();
        for (RuleText rule : rules) {
            Condition.Match pattern =
                    (Condition.Match) rule.asRun().condition().parts().get(2);
            for (Measure each : all) {
                if (pattern.means(each)
                        && pattern.comparisons().stream()
                                .allMatch(comparison -> comparison.holds(each, Map.of("$a", axle, "$b", both)))) {
                    held.add(rule.id() + " " + each.getSubject());
                }
            }
        }
        assertEquals(held, fired);
        assertTrue(
                fired.stream()
                        .filter(each -> each.endsWith(" unknown"))
                        .map(each ->
                                COMPARISONS.get(Integer.parseInt(each.substring("mass.r".length(), each.indexOf(' ')))))
                        .noneMatch(each -> each.matches(".*(value|limit|headroom|excess|spare|tolerance).*")),
                "a number that is not known");
        assertTrue(fired.size() > 40, "only " + fired.size());
    }
}
