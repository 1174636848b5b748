package fitworthy.figures.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import org.junit.jupiter.api.Test;

class LoadBoxTest {

    private static Figure of(double value) {
        return Figure.of(value, 0);
    }

    /**
     * An article on bent dual-cab utes (second-hand): about 300 mm of the tray lie ahead of the rear axle and 1500 mm
     * behind it, which is five sixths.
     */
    @Test
    void aDualCabTrayLiesFiveSixthsBehindTheAxle() {
        assertEquals(5 / 6.0, LoadBox.behindAxle(of(2.7), of(1.8), of(3.0)).value(), 1e-12);
        assertEquals(1.5, LoadBox.overhang(of(2.7), of(1.8), of(3.0)).value(), 1e-12);
    }

    @Test
    void aBoxWhollyAheadOrBehindIsNoneOrAllOfIt() {
        assertEquals(0, LoadBox.behindAxle(of(1), of(1), of(3)).value(), 0);
        assertEquals(1, LoadBox.behindAxle(of(3.2), of(1), of(3)).value(), 0);
    }

    /**
     * A page that quotes 60 % of the wheelbase for a light vehicle (second-hand, weak) prints 1857 mm for 3095 mm; so a
     * box that ends that far behind the axle has just that share.
     */
    @Test
    void theQuotedOverhangIsSixtyPercentOfItsWheelbase() {
        Figure overhang = LoadBox.overhang(of(2.952), of(2.0), of(3.095));
        assertEquals(1.857, overhang.value(), 1e-12);
        assertEquals(0.600, overhang.dividedBy(of(3.095)).value(), 0.0005);
    }

    /**
     * The standard's 0.8 of the weight forward (second-hand): 2.5 t of direct restraint hold 3.125 t, by hand, and a
     * point of 500 kg at each of four corners holds 2.5 t.
     */
    @Test
    void directRestraintHoldsItsWorkingLoadOverZeroPointEight() {
        assertEquals(0.8, LoadBox.holdDown(of(1), of(2500), of(3125)).value(), 1e-12);
        assertEquals(0.8, LoadBox.holdDown(of(4), of(500), of(2500)).value(), 1e-12);
    }

    /**
     * Moments about the front edge, by hand: 400 kg whose middle is 1.5 m up and 0.9 m behind it, braked with 0.8 g, turn it
     * with 480 kg m, of which its weight holds 360 and a pull of 120 kg at 1 m the rest.
     */
    @Test
    void aTallBoxTipsWhereWeightAndPullNoLongerHoldTheMoment() {
        assertEquals(
                0.8,
                LoadBox.tipsForward(of(0.9), of(1.5), of(120), of(1), of(400)).value(),
                1e-12);
        assertEquals(
                120,
                LoadBox.downNeeded(of(0.8), of(0.9), of(1.5), of(1), of(400)).value(),
                1e-9);
        assertEquals(
                0, LoadBox.downNeeded(of(0.8), of(1.3), of(1.5), of(1), of(400)).value(), 0);
    }

    /** Triangles whose angles are known: tan 45 deg = 1, tan 30 deg = 1 / sqrt 3. */
    @Test
    void feetTwiceAsFarApartAsTheCentreIsHighTipAtFortyFiveDegrees() {
        assertEquals(45, LoadBox.tippingAngle(of(2), of(1)).value(), 1e-9);
        assertEquals(30, LoadBox.tippingAngle(of(2), of(Math.sqrt(3))).value(), 1e-9);
    }

    /** Moments about the diagonal: a centred load on two legs is halved, whatever their distance. */
    @Test
    void twoLegsShareTheLoad() {
        assertEquals(120, LoadBox.onOneLeg(of(240)).value(), 0);
    }

    /** By hand: (front + length - wheelbase) / length has the slope (wheelbase - front) / length squared. */
    @Test
    void theLengthCountsOnceInTheToleranceThoughItStandsTwice() {
        double slope = (3.0 - 2.5) / (2.0 * 2.0);
        assertEquals(
                0.01 * slope,
                LoadBox.behindAxle(of(2.5), Figure.of(2.0, 0.01), of(3.0)).tolerance(),
                1e-6);
    }

    @Test
    void whatIsMissingIsNamed() {
        Figure angle = LoadBox.tippingAngle(Figure.missing(new Missing("spacing", "", "")), of(1));
        assertEquals("spacing", angle.missing().get(0).path());
    }

    /** By hand: feet 2 m apart tip at 45 deg with the weight 1 m up. */
    @Test
    void feetThatStandOnASlope() {
        assertEquals(2, LoadBox.feetNeeded(of(45), of(1)).value(), 1e-9);
        assertEquals(
                1.5,
                LoadBox.feetNeeded(LoadBox.tippingAngle(of(1.5), of(1.7)), of(1.7))
                        .value(),
                1e-9);
    }
}
