package fitworthy.figures.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Lashing;
import org.junit.jupiter.api.Test;

class StrapsTest {

    /**
     * By the balance of forces in newtons, in other words than the formula: 200 kg on wood (0.4) under two straps pulled to
     * 250 kg at 60 deg. Each presses with 1.5 x 2452.5 N x 0.8660 = 3185.9 N; with the weight of 1962 N the floor bears
     * 8333.8 N and holds 3333.5 N, which is 1.699 times the weight.
     */
    @Test
    void heldAgreesWithTheForcesOnTheFloor() {
        assertEquals(
                3333.5 / 1962, Straps.held(straps(2, 60, 0.4), Figure.of(200)).value(), 1e-4);
        double press = 1.5 * 250 * 9.81 * 0.866025404;
        double weight = 200 * 9.81;
        assertEquals(
                0.4 * (weight + 2 * press) / weight,
                Straps.held(straps(2, 60, 0.4), Figure.of(200)).value(),
                1e-9);
    }

    /** Held by as many straps as are needed, it is held by just the share that was asked. */
    @Test
    void asManyAsAreNeededHoldTheShare() {
        double needed = Straps.needed(straps(0, 45, 0.3), Figure.of(500), Figure.of(0.8))
                .value();
        assertEquals(0.8, Straps.held(straps(needed, 45, 0.3), Figure.of(500)).value(), 1e-9);
    }

    /** What grips enough by itself needs one to press it down, without which it is held by nothing. */
    @Test
    void gripAloneHoldsNothing() {
        assertEquals(
                1,
                Straps.needed(straps(0, 45, 0.6), Figure.of(500), Figure.of(0.5))
                        .value());
        assertEquals(0, Straps.held(straps(0, 45, 0.6), Figure.of(500)).value());
        assertEquals(0, Straps.held(straps(3, 0, 0.6), Figure.of(500)).value());
    }

    @Test
    void whatPressesNothingOrGripsNothingIsNeverEnough() {
        assertTrue(Double.isInfinite(
                Straps.needed(straps(2, 0, 0.6), Figure.of(500), Figure.of(0.5)).value()));
        assertTrue(Double.isInfinite(
                Straps.needed(straps(2, 45, 0), Figure.of(500), Figure.of(0.5)).value()));
    }

    /**
     * The German insurers' transport information service, "Securing cargo for the road - the facts", chapter 2 (read,
     * https://www.tis-gdv.de/tis_e/ls/ls_im_strassenverkehr_die_fakten/kapitel2.html): a belt over a load, "tensioned
     * with the standard tension force STF of 400 daN", "provides a maximum securing effect of 2 x 0.3 x 400 = 240 daN" at
     * a grip of 0.3. With the ratchet at one side the same text has a factor that leads to "a 33% increase in the amount
     * of securing required" (chapter 4), so to 180 daN of it; that is beside what the weight itself holds.
     */
    @Test
    void oneBeltHoldsWhatTheInsurersExampleSaysLessTheirThird() {
        double load = 1000;
        double held = Straps.held(belts(1, 400, 90, 0.3), Figure.of(load)).value() * load - 0.3 * load;
        assertEquals(180, held, 1e-9);
        assertEquals(240, held * 1.33, 1);
    }

    private static Lashing straps(double count, double angle, double grip) {
        return belts(count, 250, angle, grip);
    }

    private static Lashing belts(double count, double tension, double angle, double grip) {
        return new Lashing(
                Figure.of(count), Figure.of(tension), Figure.of(angle), Figure.of(grip), Choice.yesNo(false));
    }
}
