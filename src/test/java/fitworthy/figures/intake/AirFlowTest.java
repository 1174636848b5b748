package fitworthy.figures.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.QuantityText;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Air flow against worked examples and formulas from outside. */
class AirFlowTest {

    private static final Figure ONE = Figure.of(1);

    /**
     * Worked example for a diesel of 3.856 L at 3000 rpm, 80 %:
     * https://performancespecialties.wordpress.com/2012/06/28/airflow-calculations/
     */
    @Test
    void drawsWhatTheWorkedExampleSays() {
        assertEquals(
                77.12,
                AirFlow.drawn(Figure.of(3.856), Figure.of(3000), Figure.of(0.80), ONE)
                        .value(),
                0.005);
    }

    /** {@code CFM = rpm * cubic inches / 3456}: http://www.blacksunlight.com/studebaker/tip_formula.html */
    @ParameterizedTest
    @CsvSource({"2000, 170", "3456, 200", "5600, 289"})
    void agreesWithTheFormulaInCubicFeetAMinute(double rpm, double cubicInches) {
        double litresPerCubicInch = Math.pow(0.0254, 3) * 1000;
        double litresPerSecondPerCfm = Math.pow(0.3048, 3) * 1000 / 60;
        assertEquals(
                rpm * cubicInches / 3456,
                AirFlow.drawn(Figure.of(cubicInches * litresPerCubicInch), Figure.of(rpm), ONE, ONE)
                                .value()
                        / litresPerSecondPerCfm,
                1e-6);
    }

    /** The highest duct velocity of an engine maker's handbook, 8000 ft/min; by hand 8000 * 0.3048 / 60 = 40.64 m/s. */
    @Test
    void velocityAgreesWithFlowOverAreaInFeet() {
        // A duct of one square foot passes 8000 cubic feet a minute at 8000 ft/min.
        Figure bore = Figure.of(Math.sqrt(4 / Math.PI) * 0.3048);
        Figure flow = Figure.of(8000 * Math.pow(0.3048, 3) * 1000 / 60);
        assertEquals(40.64, AirFlow.velocity(flow, bore).value(), 1e-9);
    }

    /** By hand: 231.325/101.325 * 298.15/323.15 = 2.1064. */
    @Test
    void boostRaisesAndHeatLowersTheDensity() {
        assertEquals(1, AirFlow.densityRatio(Figure.of(0), Figure.of(25)).value(), 1e-12);
        assertEquals(
                2.1064, AirFlow.densityRatio(Figure.of(130_000), Figure.of(50)).value(), 5e-5);
    }

    /** A bore uncertain by 1 % makes the velocity uncertain by 2 %. */
    @Test
    void theBoreCountsTwiceInTheTolerance() {
        Figure velocity = AirFlow.velocity(Figure.of(100, 0), Figure.of(0.080, 0.0008));
        assertEquals(0.02, velocity.tolerance() / velocity.value(), 1e-9);
    }

    @Test
    void whatIsMissingStaysMissing() {
        Missing boost = new Missing("vehicle.engine.boost", "boost", "the workshop manual");
        Figure flow = AirFlow.drawn(
                Figure.of(3),
                Figure.of(3400),
                Figure.of(0.9),
                AirFlow.densityRatio(Figure.missing(boost), Figure.of(50)));
        assertEquals(List.of(boost), AirFlow.velocity(flow, Figure.of(0.08)).missing());
    }

    /** By hand: 69.813 L/s * 2.1064 / (pi/4 * 0.0762^2 m2) = 32.25 m/s. */
    @Test
    void unitsOfTheSheetAreThoseOfTheFormulas() throws QuantityText.Unreadable {
        Figure bore = QuantityText.parse("3 in", Dimension.LENGTH);
        Figure flow = AirFlow.drawn(
                QuantityText.parse("2800 cc", Dimension.VOLUME),
                Figure.of(3400),
                Figure.of(0.88),
                AirFlow.densityRatio(QuantityText.parse("130 kPa", Dimension.PRESSURE), Figure.of(50)));
        assertEquals(32.25, AirFlow.velocity(flow, bore).value(), 0.01);
    }

    /** By hand: pi / 4 x 0.1^2 m2 x 20 m/s is 157.08 L/s. */
    @Test
    void boreForAVelocity() {
        assertEquals(
                0.1, AirFlow.boreNeeded(Figure.of(157.08, 0), Figure.of(20, 0)).value(), 1e-5);
    }
}
