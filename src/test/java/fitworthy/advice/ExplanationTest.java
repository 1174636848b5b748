package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.figures.measure.Measure;
import fitworthy.source.FaultsException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExplanationTest {

    @Test
    void theFirstFalseComparisonIsNamed() throws FaultsException {
        Advice advice = Adviser.advise(Books.engine(), Sheets.plainWith("title: fine"));
        Explanation explanation = Explanation.of(advice, "mass.gvm-over").get(0);
        assertFalse(explanation.holds());
        assertEquals(
                List.of("known: true", "headroom < 0: false"),
                explanation.steps().get(0).checks().stream()
                        .map(check -> check.comparison() + ": " + check.holds())
                        .toList());
    }

    @Test
    void aRuleThatFiredShowsThePracticeValueItUsed() throws FaultsException {
        Advice advice = Adviser.advise(Books.engine(), Sheets.plainWith("vehicle: {ratings: {gvm: 2597 kg}}"));
        Explanation explanation = Explanation.of(advice, "mass.gvm-tight").get(0);
        assertTrue(explanation.holds());
        assertEquals("mass.gvm-reserve", explanation.steps().get(0).wanted().key());
        assertTrue(explanation.steps().stream().allMatch(Explanation.Step::holds));
    }

    private static final String LOADED = "    $m : Measure(name == \"mass.loaded\", known)\n";
    private static final String AXLE = "    $axle : Measure(name == \"mass.axle\", known)\n";

    private static List<Explanation> explained(Path folder, String about, String condition) throws Exception {
        FewRules rules = new FewRules(folder.resolve("rules"));
        rules.add("mass.made", "note", about, condition);
        return Explanation.of(rules.advise("title: plain"), "mass.made");
    }

    /** What was looked at as far as it came, with whether it was as the rule wants it. */
    private static List<String> steps(Explanation explanation) {
        return explanation.steps().stream()
                .map(step -> ((Measure) step.fact()).getSubject() + " " + step.holds())
                .toList();
    }

    /** The front axle comes first and is nothing to it; what was looked at for its sake is not told. */
    @Test
    void whatLedNowhereIsNotAmongTheSteps(@TempDir Path folder) throws Exception {
        Explanation explanation = explained(
                        folder,
                        "mass.loaded, mass.axle, tyres.load",
                        LOADED + AXLE
                                + """
                                    exists (Measure(name == "tyres.load", subject == "front axle")
                                        and Measure(name == "tyres.load", subject == $axle.subject, subject == "rear axle"))
                                """)
                .get(0);
        assertTrue(explanation.holds());
        assertEquals(
                List.of("vehicle true", "rear axle true", "front axle true", "rear axle true"), steps(explanation));
    }

    /** The rear axle has tyres that fit, but for the one thing that must not be. */
    @Test
    void theStepsAreThoseThatAllHoldWhereOnlyANotStandsInTheWay(@TempDir Path folder) throws Exception {
        Explanation explanation = explained(
                        folder,
                        "mass.loaded, mass.axle, tyres.load",
                        LOADED + AXLE
                                + """
                                    Measure(name == "tyres.load", subject == $axle.subject, subject == "rear axle")
                                    not Measure(name == "mass.axle", subject == "front axle")
                                """)
                .get(0);
        assertFalse(explanation.holds());
        assertEquals(List.of("vehicle true", "rear axle true", "rear axle true"), steps(explanation));
    }

    @Test
    void ofTwoWaysThatFailTheOneThatCameFurtherIsTold(@TempDir Path folder) throws Exception {
        Explanation explanation = explained(
                        folder,
                        "mass.loaded, mass.axle, tyres.load",
                        LOADED
                                + """
                                    (Measure(name == "mass.axle", subject == "roof")
                                        or (Measure(name == "mass.axle", subject == "rear axle")
                                            and Measure(name == "tyres.load", subject == "roof")))
                                """)
                .get(0);
        assertFalse(explanation.holds());
        assertEquals(List.of("vehicle true", "rear axle true", "front axle false"), steps(explanation));
    }

    /** Only inside 'exists' may it be another. */
    @Test
    void aWayThatNamesTheJudgedMeasureMeansThatAlone(@TempDir Path folder) throws Exception {
        String either =
                """
                    (Measure(name == "mass.axle", subject == "rear axle") or Measure(name == "mass.axle", subject == "roof"))
                """;
        String judged = "    $m : Measure(name == \"mass.axle\", known)\n";
        assertEquals(
                List.of(false, true),
                explained(folder.resolve("or"), "mass.axle", judged + either).stream()
                        .map(Explanation::holds)
                        .toList());
        assertEquals(
                List.of(true, true),
                explained(folder.resolve("exists"), "mass.axle", judged + "    exists " + either.strip() + "\n")
                        .stream()
                        .map(Explanation::holds)
                        .toList());
    }
}
