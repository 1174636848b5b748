package fitworthy.figures.mirrors;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sight lines against hand-worked triangles, a textbook's convex mirror, and rays reflected one by one. */
class SightLineTest {

    private static final double FLAT = Double.POSITIVE_INFINITY;

    /**
     * The schoolbook rear-view mirror: radius 3.00 m, a bus at 5.00 m, image 1.15 m behind the mirror. Seen at
     * https://www.wiredfaculty.com/question/UTBKVFJVVk9VME14TURBeE1qYzNNZz09 and in other solutions of the same
     * exercise.
     */
    @Test
    void aConvexMirrorShowsTheSchoolbooksBusWhereTheBookHasIt() {
        assertEquals(1.15, SightLine.image(5.00, 3.00), 0.005);
    }

    /** A flat mirror's image lies as far behind it as the object before it: the law of reflection. */
    @Test
    void aFlatMirrorsVirtualEyeIsAsFarAwayAsTheEye() {
        assertEquals(0.9, SightLine.image(0.9, FLAT), 1e-12);
    }

    /**
     * By hand: glass 0.6 m ahead of the eye and its used part's middle 0.8 m aside, so 1.0 m from it, and turned by half the
     * angle whose cosine is 0.6, whose tangent is 0.5. So the outer end is 1.025 m from the virtual eye. 20 m behind the
     * eye is 20.6 m behind the glass, which widens 0.1 m to 0.1 * (1 + 20.6 / 1.025) = 2.1098 m. The eyes, 65 mm apart across the
     * vehicle, are 0.065 * 0.6 = 0.039 m apart across the sight line; over 20.6 m behind and 1.0 m before the glass
     * 0.8034 m more.
     */
    @Test
    void aFlatGlassShowsWhatSimilarTrianglesGive() {
        SightLine line = new SightLine(1.4, 0.4, 0.8, FLAT);
        assertEquals(0.1 * (1 + 20.6 / 1.025) + 0.8034, line.seen(0.1, 1.25, 20), 1e-9);
    }

    /** The same with a radius of 2 m askew by half the angle whose cosine is 0.6, that is by the cosine 0.8944. */
    @Test
    void aConvexGlassShowsMoreByItsVirtualEye() {
        SightLine line = new SightLine(1.4, 0.4, 0.8, 2.0);
        double image = 1 / (1 / 1.0 + 2 / (2.0 * 0.894427191));
        assertEquals(0.1 * (1 + 20.6 / (1.025 * image)) + 0.8034, line.seen(0.1, 1.25, 20), 1e-6);
    }

    /** A sliver of glass gives each eye a sliver of road of its own, not the road between them. */
    @Test
    void theSecondEyeAddsNoMoreThanTheFirstSees() {
        SightLine line = new SightLine(1.4, 0.4, 0.8, FLAT);
        assertEquals(2 * 0.001 * (1 + 20.6 / 1.00025), line.seen(0.001, 1.2005, 20), 1e-9);
        assertEquals(0, line.seen(-0.2, 1.0, 20));
    }

    /**
     * By hand: glass turned by half the angle whose cosine is 0.6, so that 0.2 m of it covers 0.2 * 0.8944 = 0.1789 m.
     */
    @Test
    void aTurnedGlassIsForeshortened() {
        SightLine line = new SightLine(1.4, 0.4, 0.8, FLAT);
        double across = 0.2 * Math.cos(Math.acos(0.6) / 2);
        assertEquals(across, line.across(0.2, 1.2 + across / 2), 1e-9);
        assertEquals(0.2, line.glass(across, 1.2 + across / 2), 1e-9);
    }

    /** The field asked in a published towing guide: 4 m wide 20 m behind the driver (NCC Towing Guide, page 25). */
    @ParameterizedTest
    @CsvSource({"0.37,Infinity", "-0.37,Infinity", "0.37,1.4", "-0.37,1.2", "-0.37,2.0"})
    void theReachFoundShowsJustTheFourMetresAskedAtTwenty(double eyeY, double radius) {
        SightLine line = new SightLine(1.4, eyeY, 0.8, radius);
        double reach = line.reachNeeded(1.15, 4, 20);
        assertEquals(4, line.seen(reach - 1.15, reach, 20), 1e-9);
        assertTrue(line.seen(reach - 0.001 - 1.15, reach - 0.001, 20) < 4);
        assertEquals(reach - 1.15, line.acrossNeeded(4, reach, 20), 1e-9);
    }

    @Test
    void theFartherSideNeedsMoreGlassAndACurveNeedsLess() {
        double near = new SightLine(1.4, 0.37, 0.8, FLAT).reachNeeded(1.15, 4, 20);
        double far = new SightLine(1.4, -0.37, 0.8, FLAT).reachNeeded(1.15, 4, 20);
        double farConvex = new SightLine(1.4, -0.37, 0.8, 1.4).reachNeeded(1.15, 4, 20);
        assertTrue(near < far && farConvex < near, near + " " + far + " " + farConvex);
    }

    /**
     * Every ray of both eyes to the ends of the glass, reflected by the law of reflection at a flat or round glass
     * turned until its inner end shows straight back. The formula may show 7 % less, and no more than 3 % more.
     */
    @ParameterizedTest
    @CsvSource({
        "0.37,1.35,0.18,Infinity,20",
        "0.37,1.35,0.18,Infinity,4",
        "-0.37,1.35,0.18,Infinity,20",
        "-0.37,1.35,0.17,1.4,20",
        "-0.37,1.35,0.17,1.4,4",
        "0.37,1.35,0.17,1.4,20",
        "0.37,1.10,0.15,2.0,20",
        "-0.37,1.368,0.29,Infinity,20",
        "-0.37,1.40,0.30,Infinity,4",
        "-0.37,1.25,0.12,6.0,20"
    })
    void whatIsSeenAgreesWithReflectedRays(double eyeY, double reach, double glass, double radius, double behind) {
        SightLine line = new SightLine(1.4, eyeY, 0.8, radius);
        double traced = traced(line, reach, glass, behind);
        double seen = line.seen(line.across(glass, reach), reach, behind);
        assertTrue(seen > 0.93 * traced && seen < 1.03 * traced, seen + " against " + traced);
    }

    private static double traced(SightLine line, double reach, double glass, double behind) {
        double low = 0;
        double high = Math.PI / 2;
        for (int i = 0; i < 60; i++) {
            double turn = (low + high) / 2;
            if (new Ray(line, reach, glass, turn, 0, glass).slope() < 0) {
                high = turn;
            } else {
                low = turn;
            }
        }
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double eye : new double[] {-SightLine.EYES / 2, SightLine.EYES / 2}) {
            for (double along : new double[] {0, glass}) {
                double met = new Ray(line, reach, glass, low, eye, along).meets(line.eyeX() + behind);
                least = Math.min(least, met);
                most = Math.max(most, met);
            }
        }
        return most - least;
    }

    /** A ray from an eye, reflected at a point so far along the chord of the glass from its outer edge. */
    private record Ray(double x, double y, double slope) {

        Ray(SightLine line, double reach, double glass, double turn, double eyeAside, double along) {
            this(reflected(line, reach, glass, turn, eyeAside, along));
        }

        private Ray(double[] ray) {
            this(ray[0], ray[1], ray[2]);
        }

        double meets(double at) {
            return y + slope * (at - x);
        }

        private static double[] reflected(
                SightLine line, double reach, double glass, double turn, double eyeAside, double along) {
            double normalX = Math.cos(turn);
            double normalY = -Math.sin(turn);
            double pointX = line.glassX() + normalY * along;
            double pointY = reach - normalX * along;
            if (Double.isFinite(line.radius())) {
                double aside = along - glass / 2;
                double bulge = Math.sqrt(line.radius() * line.radius() - aside * aside)
                        - Math.sqrt(line.radius() * line.radius() - glass * glass / 4);
                pointX += normalX * bulge;
                pointY += normalY * bulge;
                double bent = Math.asin(aside / line.radius());
                normalX = Math.cos(turn) * Math.cos(bent) - Math.sin(turn) * Math.sin(bent);
                normalY = -Math.sin(turn) * Math.cos(bent) - Math.cos(turn) * Math.sin(bent);
            }
            double inX = pointX - line.eyeX();
            double inY = pointY - line.eyeY() - eyeAside;
            double twice = 2 * (inX * normalX + inY * normalY);
            return new double[] {pointX, pointY, (inY - twice * normalY) / (inX - twice * normalX)};
        }
    }
}
