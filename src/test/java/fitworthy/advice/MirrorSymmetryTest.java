package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Outcome.Finding;
import fitworthy.printout.words.Wording;
import fitworthy.source.FaultsException;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A vehicle built the other way round has its faults on the other side, and they are the same faults. */
class MirrorSymmetryTest {

    private static final String SHORT = "{x: 800 mm, reach: 1130 mm, glass: 170 mm, curve: convex, radius: 1400 mm,"
            + " edge: 1170 mm, edge-stowed: 1100 mm}";
    private static final String LONG =
            "{x: 790 mm, reach: 1380 mm, glass: 180 mm, curve: flat, edge: 1420 mm," + " edge-stowed: 1050 mm}";

    private static Advice towing(String eyeY, String left, String right) throws FaultsException {
        return Adviser.advise(
                Books.engine(),
                Sheets.plainWith(
                        """
                region: uk
                vehicle: {view: {eye: {x: 1400 mm, y: %s, z: 1300 mm}}}
                fitments:
                  - {name: Towing mirrors, kind: mirrors, mass: 0 kg, left: %s, right: %s}
                  - {name: Canopy, kind: canopy, mass: 0 kg, width: 2330 mm, front: 1800 mm, length: 1900 mm}
                trailer: {name: Van, mass: 1400 kg, ball: 130 kg +/- 0 kg, width: 2300 mm, length: 5510 mm}
                cases: [{name: towing, towing: yes}, {name: alone}]
                """
                                .formatted(eyeY, left, right)));
    }

    private static Set<String> findings(Advice advice) {
        return advice.findings().stream()
                .filter(each -> each.judged().id().startsWith("mirrors."))
                .map(MirrorSymmetryTest::told)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String told(Finding finding) {
        return finding.judged().id() + ", " + finding.judged().subject() + ", "
                + finding.judged().loadCase() + ": "
                + finding.comparison()
                        .map(each -> each.value() + " of " + each.limit())
                        .orElse("")
                + " "
                + Wording.remedy(finding);
    }

    private static Set<String> swapped(Set<String> findings) {
        return findings.stream()
                .map(each -> each.replace("left mirror", "@")
                        .replace("right mirror", "left mirror")
                        .replace("@", "right mirror"))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void aMirrorImageSwapsLeftAndRight() throws FaultsException {
        Set<String> rightHandDrive = findings(towing("-370 mm", SHORT, LONG));
        Set<String> leftHandDrive = findings(towing("370 mm", LONG, SHORT));
        assertFalse(rightHandDrive.isEmpty());
        assertEquals(swapped(rightHandDrive), leftHandDrive);
    }

    /** Which side the driver sits on decides which mirror is far from the eye: the same flat glass shows less there. */
    @Test
    void theDriversSideDecidesWhichMirrorIsFar() throws FaultsException {
        double near = field(towing("-370 mm", LONG, LONG), "right mirror");
        double far = field(towing("370 mm", LONG, LONG), "right mirror");
        assertEquals(near, field(towing("370 mm", LONG, LONG), "left mirror"), 1e-12);
        assertTrue(far < near, far + " against " + near);
    }

    private static double field(Advice advice, String mirror) {
        return advice.findings().stream()
                .filter(each -> each.judged().id().equals("mirrors.field-narrow")
                        && each.judged().subject().equals(mirror))
                .findFirst()
                .orElseThrow()
                .comparison()
                .orElseThrow()
                .value();
    }

    /** What the remedy names is enough: a mirror so far out, with glass so wide, is met. */
    @Test
    void theReachAndGlassOfTheRemedyJustPass() throws FaultsException {
        String flat = "{x: 800 mm, reach: %s, glass: %s, curve: flat, edge: 1390 mm, edge-stowed: 1050 mm}";
        Advice narrow = towing("-370 mm", LONG, flat.formatted("1200 mm", "120 mm"));
        Finding finding = narrow.findings().stream()
                .filter(each -> each.judged().id().equals("mirrors.field-narrow")
                        && each.judged().subject().equals("right mirror"))
                .findFirst()
                .orElseThrow();
        String reach = evidence(finding, "mirrors.reach-needed");
        String glass = evidence(finding, "mirrors.glass-needed");
        Advice wide = towing("-370 mm", LONG, flat.formatted(reach, glass));
        assertEquals(
                1,
                wide.met().stream()
                        .filter(each -> each.judged().id().equals("mirrors.field-narrow")
                                && each.judged().subject().equals("right mirror")
                                && each.judged().loadCase().equals("towing"))
                        .count(),
                reach + ", " + glass);
    }

    private static String evidence(Finding finding, String name) {
        return finding.evidence().stream()
                .filter(each -> each.getName().equals(name))
                .findFirst()
                .map(Wording::value)
                .orElseThrow();
    }
}
