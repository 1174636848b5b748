package fitworthy.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Arithmetic of figures against the law of propagation of uncertainty (JCGM 100:2008, 5.1.2; from memory). */
class FigureTest {

    private static final Missing GVM = new Missing("vehicle.ratings.gvm", "gross vehicle mass", "the maker's plate");
    private static final Missing GCM = new Missing("vehicle.ratings.gcm", "gross combination mass", "the handbook");

    private static void is(double value, double tolerance, Figure figure) {
        assertEquals(value, figure.value(), 1e-12);
        assertEquals(tolerance, figure.tolerance(), 1e-12);
    }

    @Test
    void sumsAndDifferencesAddTolerancesAsTheRootOfTheSumOfSquares() {
        is(150, 5, Figure.of(100, 3).plus(Figure.of(50, 4)));
        is(50, 5, Figure.of(100, 3).minus(Figure.of(50, 4)));
    }

    /** 1 in is 25.4 mm by definition (from memory: the international inch of 1959). */
    @Test
    void whatIsEqualInOtherUnitsHasNoDifference() {
        Figure inches = Figure.of(3 * 0.0254, 0);
        Figure millimetres = Figure.of(76.2 * 0.001, 0);
        assertTrue(inches.value() < millimetres.value());
        assertEquals(0, inches.minus(millimetres).value());
        assertEquals(0, millimetres.minus(inches).value());
        assertEquals(0, millimetres.times(-1).plus(inches).value());
        assertTrue(Figure.of(1 + 1e-9, 0).minus(Figure.of(1, 0)).value() > 0);
    }

    /** 3 in and 76.2 mm again; the tenth digit of either is the tenth part of a micrometre. */
    @Test
    void figuresAreComparedInTenDigits() {
        Figure inches = Figure.of(3 * 0.0254, 0);
        Figure millimetres = Figure.of(76.2 * 0.001, 0);
        assertFalse(inches.isBelow(millimetres));
        assertFalse(millimetres.isAbove(inches));
        assertTrue(inches.isAtLeast(millimetres));
        assertTrue(millimetres.isAtMost(inches));
        Figure more = Figure.of(0.0762 + 1e-11, 0);
        assertTrue(more.isAbove(inches));
        assertTrue(inches.isBelow(more));
        assertFalse(more.isAtMost(inches));
        assertFalse(inches.isAtLeast(more));
        assertTrue(inches.minus(millimetres).isZero());
        assertFalse(more.minus(inches).isZero());
    }

    /** By its path, each figure once; what is known adds nothing. */
    @Test
    void whatSumsLackIsWhatTheirPartsLack() {
        Figure gvm = Figure.missing(GVM);
        Figure gcm = Figure.missing(GCM);
        assertEquals(List.of(GCM, GVM), gvm.plus(gcm).missing());
        assertEquals(
                List.of(GCM, GVM),
                gvm.plus(gcm).most(Figure.ZERO).times(gvm).minus(gcm).missing());
        assertEquals(List.of(GVM), Figure.ZERO.plus(gvm).missing());
        assertEquals(List.of(), Figure.ZERO.plus(Figure.of(1)).missing());
        assertEquals(gcm.plus(gvm), gvm.plus(gcm));
    }

    /**
     * Fifty thousand sums one on another, all kept, of figures that are each missing: a list for each would hold a
     * thousand million entries.
     */
    @Test
    void whatLongSumsLackIsPutTogetherOnce() {
        List<Figure> sums = new ArrayList<>(List.of(Figure.ZERO));
        int count = 50_000;
        for (int i = 0; i < count; i++) {
            Missing mass = new Missing("fitments." + i + ".mass", "the mass", "a scale");
            sums.add(sums.get(i).plus(Figure.missing(mass)));
        }
        assertEquals(count, sums.get(count).missing().size());
        assertFalse(sums.get(1).known());
    }

    @Test
    void whatIsMissingComparesWithNothing() {
        Figure missing = Figure.missing(GVM);
        for (Figure other : List.of(Figure.ZERO, missing)) {
            assertFalse(missing.isAbove(other) || other.isAbove(missing));
            assertFalse(missing.isBelow(other) || other.isBelow(missing));
            assertFalse(missing.isAtMost(other) || other.isAtMost(missing));
            assertFalse(missing.isAtLeast(other) || other.isAtLeast(missing));
        }
        assertFalse(missing.isZero());
    }

    @Test
    void productsAndQuotientsAddRelativeTolerances() {
        is(20, 20 * Math.hypot(0.03, 0.04), Figure.of(10, 0.3).times(Figure.of(2, 0.08)));
        is(5, 5 * Math.hypot(0.03, 0.04), Figure.of(10, 0.3).dividedBy(Figure.of(2, 0.08)));
        is(-30, 0.9, Figure.of(10, 0.3).times(-3));
    }

    @Test
    void toleranceNotGivenCountsAsNoneUntilOneIsAssumed() {
        is(80, 0, Figure.of(80));
        is(80, 4, Figure.of(80).orTolerance(0.05));
        is(-80, 4, Figure.of(-80).orTolerance(0.05));
        is(80, 0, Figure.of(80, 0).orTolerance(0.05));
    }

    @Test
    void whatIsMissingStaysMissing() {
        Figure missing = Figure.missing(GVM);
        for (Figure each : List.of(
                missing.plus(Figure.ZERO),
                Figure.ZERO.minus(missing),
                missing.times(0),
                missing.times(Figure.ZERO),
                Figure.ZERO.dividedBy(missing),
                missing.orTolerance(0.05),
                missing.least(Figure.ZERO),
                Figure.ZERO.most(missing))) {
            assertFalse(each.known());
            assertEquals(List.of(GVM), each.missing());
            assertTrue(Double.isNaN(each.value()));
        }
    }

    @Test
    void everythingMissingIsNamedOnce() {
        assertEquals(
                List.of(GCM, GVM),
                Figure.missing(GVM)
                        .plus(Figure.missing(GCM))
                        .plus(Figure.missing(GVM))
                        .missing());
    }

    @Test
    void leastAndMostKeepTheToleranceOfTheOneTaken() {
        is(3, 0.5, Figure.of(3, 0.5).least(Figure.of(4, 0.1)));
        is(4, 0.1, Figure.of(3, 0.5).most(Figure.of(4, 0.1)));
        is(7, 0, Figure.missing(GVM).or(Figure.of(7)));
        is(8, 0, Figure.of(8).or(Figure.of(7)));
    }
}
