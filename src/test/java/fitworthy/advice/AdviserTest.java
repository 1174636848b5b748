package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.quantity.Missing;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of rules that do not fire, in a book of a few rules on the plain wagon. */
class AdviserTest {

    private static final String LOADED = "    $m : Measure(name == \"mass.loaded\", known)\n";
    private static final String OVERLOADED = "    $m : Measure(name == \"mass.loaded\", known, headroom < 0)\n";

    private FewRules rules;

    @BeforeEach
    void noRules(@TempDir Path folder) throws Exception {
        rules = new FewRules(folder.resolve("rules"));
    }

    private void rule(String id, String severity, String about, String condition) {
        rules.add(id, severity, about, condition);
    }

    private void fires(String id, String severity) {
        rule(id, severity, "mass.loaded", LOADED);
    }

    private void doesNotFire(String id, String severity) {
        rule(id, severity, "mass.loaded", OVERLOADED);
    }

    private Advice advise(String changes) throws Exception {
        return rules.advise(changes);
    }

    private static Set<String> found(Advice advice) {
        return advice.findings().stream()
                .map(finding -> finding.judged().id())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> met(Advice advice) {
        return advice.met().stream().map(met -> met.judged().id()).collect(Collectors.toCollection(TreeSet::new));
    }

    /** A fault that asks for as much is no reason to call anything met, one that asks for less is none against it. */
    @Test
    void nothingAsSevereAsAFindingOnTheSameMeasureIsMet() throws Exception {
        fires("mass.found-confirm", "confirm");
        doesNotFire("mass.quiet-change", "change");
        doesNotFire("mass.quiet-confirm", "confirm");
        doesNotFire("mass.quiet-note", "note");
        Advice advice = advise("title: plain");
        assertEquals(Set.of("mass.found-confirm"), found(advice));
        assertEquals(Set.of("mass.quiet-change"), met(advice));
    }

    /** Whichever of them comes first. */
    @Test
    void theWorseOfTwoFindingsOnAMeasureCounts() throws Exception {
        fires("mass.found-before", "note");
        fires("mass.found-change", "change");
        fires("mass.found-then", "note");
        doesNotFire("mass.quiet-stop", "stop");
        doesNotFire("mass.quiet-confirm", "confirm");
        Advice advice = advise("title: plain");
        assertEquals(Set.of("mass.found-before", "mass.found-change", "mass.found-then"), found(advice));
        assertEquals(Set.of("mass.quiet-stop"), met(advice));
    }

    /** The limit of the rear axle is not given: the check of the front tyres does not want it. */
    @Test
    void anotherSubjectsMissingFigureLeavesACheckAssessed() throws Exception {
        rule(
                "mass.tyres-and-axle",
                "stop",
                "tyres.load, mass.axle",
                "    $m : Measure(name == \"tyres.load\", known, headroom < 0)\n"
                        + "    Measure(name == \"mass.axle\", known, subject == $m.subject)\n");
        Advice advice = advise("vehicle: {ratings: {rear-axle: }}");
        assertEquals(
                List.of("front axle"),
                advice.met().stream().map(met -> met.judged().subject()).toList());
        assertEquals(
                List.of("rear axle"),
                advice.notAssessed().stream()
                        .map(open -> open.judged().subject())
                        .toList());
    }

    /** No axle has a limit, and the front tyres have no load index either: what builds on these checks lacks as much. */
    private static final String NO_AXLE_LIMITS =
            "vehicle: {ratings: {front-axle: , rear-axle: }, tyres: {load-index: }}";

    private static final String FRONT = "vehicle.ratings.front-axle";
    private static final String REAR = "vehicle.ratings.rear-axle";

    private void builtOn(String id, String about, String condition) {
        rule("mass.axle-over", "stop", "mass.axle", "    $m : Measure(name == \"mass.axle\", known, headroom < 0)\n");
        rule(
                "mass.tyres-over",
                "stop",
                "tyres.load",
                "    $m : Measure(name == \"tyres.load\", known, headroom < 0)\n");
        rule(id, "change", about, condition);
    }

    private static String given(String id, String subject) {
        return "    Advised(id == \"" + id + "\"" + (subject.isEmpty() ? "" : ", subject == \"" + subject + "\"")
                + ")\n";
    }

    /** The fields that a check of the vehicle waits for; none where it waits for nothing. */
    private static List<String> lacked(Advice advice, String id) {
        return advice.notAssessed().stream()
                .filter(open -> open.judged().id().equals(id))
                .flatMap(open -> open.missing().stream())
                .map(Missing::path)
                .toList();
    }

    @Test
    void whatBuildsOnACheckWithoutItsFigureLacksThatFigure() throws Exception {
        builtOn("mass.built", "mass.loaded", LOADED + given("mass.axle-over", "front axle"));
        Advice open = advise(NO_AXLE_LIMITS);
        assertEquals(List.of(FRONT), lacked(open, "mass.built"));
        assertFalse(isOff(open, "mass.built"));
        Advice closed = advise("title: with every figure");
        assertEquals(List.of(), lacked(closed, "mass.built"));
        assertTrue(isOff(closed, "mass.built"), "the axle is not over, so the question does not arise");
    }

    private static boolean isOff(Advice advice, String id) {
        return advice.doesNotApply().stream().anyMatch(off -> off.judged().id().equals(id));
    }

    /** Neither of the two would make it fire alone; the tyres have nothing to do with it. */
    @Test
    void whatBuildsOnTwoSuchChecksLacksBothFiguresAndNoOthers() throws Exception {
        builtOn(
                "mass.built",
                "mass.loaded",
                LOADED + given("mass.axle-over", "front axle") + given("mass.axle-over", "rear axle"));
        Advice advice = advise(NO_AXLE_LIMITS);
        assertEquals(2, lacked(advice, "mass.tyres-over").size());
        assertEquals(List.of(FRONT, REAR), lacked(advice, "mass.built"));
    }

    @Test
    void whatBuildsOnWhatBuildsOnSuchACheckLacksTheFigureToo() throws Exception {
        builtOn("mass.a-later", "mass.loaded", LOADED + given("mass.built", ""));
        rule("mass.built", "change", "mass.loaded", LOADED + given("mass.axle-over", "rear axle"));
        assertEquals(List.of(REAR), lacked(advise(NO_AXLE_LIMITS), "mass.a-later"));
    }

    /** The vehicle is within its GVM, so whatever becomes of the axles the rule does not fire. */
    @Test
    void whatWouldNotFireAnywayIsNotLeftOpen() throws Exception {
        builtOn("mass.built", "mass.loaded", OVERLOADED + given("mass.axle-over", "front axle"));
        Advice advice = advise(NO_AXLE_LIMITS);
        assertEquals(List.of(), lacked(advice, "mass.built"));
        assertTrue(isOff(advice, "mass.built"));
    }

    /** It fires on an axle that is over and on a vehicle that is: as to the vehicle it would be met. */
    @Test
    void aCheckThatIsMetButForWhatIsOpenIsNotCalledMet() throws Exception {
        builtOn(
                "mass.built",
                "mass.loaded",
                "    (\n" + given("mass.axle-over", "front axle")
                        + "        and $m : Measure(name == \"mass.loaded\", known)\n    )\n    or\n"
                        + "    ($m : Measure(name == \"mass.loaded\", known, headroom < 0))\n");
        Advice open = advise(NO_AXLE_LIMITS);
        assertEquals(List.of(FRONT), lacked(open, "mass.built"));
        assertFalse(met(open).contains("mass.built"));
        assertTrue(met(advise("title: with every figure")).contains("mass.built"));
    }

    private static final String PRESSURE = "    $m : Measure(name == \"tyres.pressure-most\", known)\n";

    /** How the tyres are pumped does not depend on the loading, but what is said of it may; it is said once. */
    @Test
    void whatIsFoundInOneLoadingIsFoundWhateverTheOthers() throws Exception {
        rule("mass.over", "stop", "mass.loaded", OVERLOADED);
        rule("mass.pumped", "change", "tyres.pressure-most", PRESSURE + given("mass.over", ""));
        for (String cases :
                List.of("{name: full}, {name: empty, carrying: []}", "{name: empty, carrying: []}, {name: full}")) {
            Advice advice = advise("vehicle: {ratings: {gvm: 2500 kg}}\ncases: [" + cases + "]");
            assertEquals(Set.of("mass.over", "mass.pumped"), found(advice));
            assertFalse(isOff(advice, "mass.pumped"), cases);
        }
    }

    /** The load on the ball is not known, which says nothing of the loading without it. */
    @Test
    void whatIsNotAssessedInOneLoadingIsNotPassedOverForTheOthers() throws Exception {
        rule("mass.over", "stop", "mass.loaded", OVERLOADED);
        rule("mass.pumped", "change", "tyres.pressure-most", PRESSURE + given("mass.over", ""));
        for (String cases :
                List.of("{name: towing, towing: yes}, {name: solo}", "{name: solo}, {name: towing, towing: yes}")) {
            Advice advice = advise("trailer: {name: Van, mass: 1000 kg}\ncases: [" + cases + "]");
            assertEquals(
                    Set.of("front axle", "rear axle"),
                    advice.notAssessed().stream()
                            .filter(open -> open.judged().id().equals("mass.pumped"))
                            .map(open -> open.judged().subject())
                            .collect(Collectors.toSet()),
                    cases);
            assertFalse(isOff(advice, "mass.pumped"), cases);
        }
    }

    /** Where the vehicle is over, the pressure is found fault with, and nothing as severe is met besides. */
    @Test
    void whatIsMetInOneLoadingIsMetWhateverTheOthersSayBesides() throws Exception {
        rule("mass.over", "stop", "mass.loaded", OVERLOADED);
        rule("mass.pumped", "change", "tyres.pressure-most", PRESSURE + given("mass.over", ""));
        rule("mass.pumped-hard", "change", "tyres.pressure-most", PRESSURE.replace("known", "known, headroom < 0"));
        for (String cases :
                List.of("{name: full}, {name: empty, carrying: []}", "{name: empty, carrying: []}, {name: full}")) {
            Advice advice = advise("vehicle: {ratings: {gvm: 2500 kg}}\ncases: [" + cases + "]");
            assertTrue(met(advice).contains("mass.pumped-hard"), cases);
            assertFalse(isOff(advice, "mass.pumped-hard"), cases);
        }
        assertTrue(isOff(advise("vehicle: {ratings: {gvm: 2500 kg}}"), "mass.pumped-hard"));
    }
}
