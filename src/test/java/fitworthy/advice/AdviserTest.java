package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Sheets;
import fitworthy.engine.BookLoader;
import fitworthy.engine.BooksOfOneRule;
import java.nio.file.Files;
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

    @TempDir
    private Path folder;

    private String card;
    private final StringBuilder cards = new StringBuilder();
    private final StringBuilder rules = new StringBuilder();

    @BeforeEach
    void oneCard() throws Exception {
        BooksOfOneRule.write(folder.resolve("rules"));
        card = Files.readString(folder.resolve("rules/mass/cards.yaml"));
    }

    private void rule(String id, String severity, String about, String condition) {
        cards.append(card.replace("mass.gvm-over:", id + ":")
                        .replace("severity: stop", "severity: " + severity)
                        .replace("about: [mass.loaded]", "about: [" + about + "]"))
                .append('\n');
        rules.append("rule \"" + id + "\"\nwhen\n" + condition + "then\n    advice.give(\"" + id + "\", $m);\nend\n");
    }

    private void fires(String id, String severity) {
        rule(id, severity, "mass.loaded", LOADED);
    }

    private void doesNotFire(String id, String severity) {
        rule(id, severity, "mass.loaded", OVERLOADED);
    }

    private Advice advise(String changes) throws Exception {
        Files.writeString(folder.resolve("rules/mass/cards.yaml"), cards);
        Files.writeString(folder.resolve("rules/mass/mass.drl"), rules);
        return Adviser.advise(
                BookLoader.load(folder.resolve("rules"), folder.resolve("cache"), sentence -> {}),
                Sheets.plainWith(changes));
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
}
