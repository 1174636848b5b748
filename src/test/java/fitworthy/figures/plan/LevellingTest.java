package fitworthy.figures.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Figure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Against statics in other words than the formulas: the bars as forces. Their ends, some way behind the ball, pull the
 * drawbar down and are pulled up themselves; each body is then held in balance by its own axles and the ball.
 */
class LevellingTest {

    private static final double MASS = 1800;
    private static final double BALL = 180;
    private static final double OVERHANG = 1.14;
    private static final double WHEELBASE = 2.85;
    private static final double TO_AXLES = 3.42;

    /** @param bar from the ball back to the chains, which must not matter @param share that is brought back */
    @ParameterizedTest
    @CsvSource({"0.7, 0.5", "0.9, 0.5", "0.7, 1", "0.8, 0", "0.7, 1.2"})
    void eachBodyIsHeldInBalanceByItsAxles(double bar, double share) {
        Levelling levelling = levelling(share);
        double frontGains = share * BALL * OVERHANG / WHEELBASE;
        double trailerGains = levelling.onTrailerAxles(Figure.of(MASS)).value() - (MASS - BALL);
        double rearLoses = levelling.offRear().value();
        assertEquals(rearLoses, frontGains + trailerGains, 1e-9, "no mass comes or goes");

        // The trailer about its axles: the ball pushes up, the chains pull down, and the mass is as it was.
        double chains = trailerGains * TO_AXLES / bar;
        double onBall = BALL - trailerGains + chains;
        assertEquals(BALL * TO_AXLES, onBall * TO_AXLES - chains * (TO_AXLES - bar), 1e-9);

        // The vehicle about its rear axle, of what the trailer changes: the ball down, the chains up farther back.
        double front = frontGains - BALL * OVERHANG / WHEELBASE;
        assertEquals(0, front * WHEELBASE + onBall * OVERHANG - chains * (OVERHANG + bar), 1e-9);
        double rear = BALL * (1 + OVERHANG / WHEELBASE) - rearLoses;
        assertEquals(onBall - chains, front + rear, 1e-9);
    }

    /**
     * A worked example in a post on how such a hitch works (read as far as the trailer's axles,
     * https://forums.goodsamclub.com/t5/rv-tips-tricks/weight-distribution-wd-hitch-how-it-works/m-p/2836): wheelbase 130
     * in, axle to ball 65 in, ball to trailer axles 200 in, bars of 30 in pulled with 2000 lb in all: it "adds a load of
     * 300 lbs at TT axles". The share that gives these 60 000 lb in is our arithmetic.
     */
    @Test
    void putsOnTheTrailersAxlesWhatAWorkedExampleHas() {
        worked(2000 * 30, 130, 65, 200, 300);
    }

    /**
     * Another page's example (offroadersarena.com, "How does a weight distribution hitch work", read as far as the
     * trailer's axles): 120, 60 and 120 in, bars of 20 in with 2000 lb: "333 lbs (approximately)". What the front gains it
     * works out of these by axle to ball and ball to trailer axles, as we do; its figure was not seen.
     */
    @Test
    void putsThereWhatAnotherExampleHas() {
        worked(2000 * 20, 120, 60, 120, 333.3);
    }

    private static void worked(double moment, double wheelbase, double overhang, double toAxles, double added) {
        double ball = 1000;
        double share = moment / ball * (toAxles + overhang) / (overhang * toAxles);
        Levelling levelling = new Levelling(
                Figure.of(ball),
                Figure.of(share),
                Figure.of(overhang / wheelbase),
                Figure.of(overhang / (toAxles + overhang)));
        assertEquals(added, levelling.onTrailerAxles(Figure.of(8000)).value() - (8000 - ball), 0.05);
        // By moments about the rear axle, of what the trailer's axles took on behind it.
        double front = added * (overhang + toAxles) / wheelbase;
        assertEquals(front + added, levelling.offRear().value(), 0.2);
    }

    @Test
    void aHitchSetToNothingMovesNothing() {
        assertEquals(0, levelling(0).offRear().value(), 1e-9);
        assertEquals(1620, levelling(0).onTrailerAxles(Figure.of(MASS)).value(), 1e-9);
    }

    @Test
    void toleranceOfTheBallIsCountedOnce() {
        Levelling levelling = new Levelling(Figure.of(180, 18), Figure.of(0.5), Figure.of(0.4), Figure.of(0.25));
        assertEquals(58.5, levelling.offRear().value(), 1e-9);
        assertEquals(5.85, levelling.offRear().tolerance(), 1e-9);
        assertEquals(15.75, levelling.onTrailerAxles(Figure.of(MASS)).tolerance(), 1e-9);
    }

    private static Levelling levelling(double share) {
        return new Levelling(
                Figure.of(BALL),
                Figure.of(share),
                Figure.of(OVERHANG / WHEELBASE),
                Figure.of(OVERHANG / (TO_AXLES + OVERHANG)));
    }
}
