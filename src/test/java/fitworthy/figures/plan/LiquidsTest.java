package fitworthy.figures.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Tank;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LiquidsTest {

    private static Tank tank(Tank.Liquid liquid, double litres, Figure density) {
        return new Tank(
                "tank",
                Choice.of(liquid),
                Figure.of(litres, 0),
                Figure.of(1, 0),
                null,
                Choice.of(YesNo.NO),
                null,
                "",
                null,
                null,
                null,
                null,
                null,
                Figure.of(0),
                density,
                Optional.empty(),
                null,
                null,
                Choice.of(YesNo.NO),
                null,
                null,
                null,
                null);
    }

    private static final Figure NOT_GIVEN = Figure.missing(new Missing("density", "density", "supplier"));

    /** EN 590 at 15 degC: 820 to 845 kg/m3 (second-hand, a page that prints the requirements). */
    @Test
    void dieselSpansTheRangeOfItsStandard() {
        Figure mass = Liquids.mass(tank(Tank.Liquid.DIESEL, 1000, NOT_GIVEN), Figure.of(1, 0));
        assertEquals(820, mass.value() - mass.tolerance(), 1e-6);
        assertEquals(845, mass.value() + mass.tolerance(), 1e-6);
    }

    /** EN 228 at 15 degC: 720 to 775 kg/m3 (second-hand, a one-page summary of the standard). */
    @Test
    void petrolSpansTheRangeOfItsStandard() {
        Figure mass = Liquids.mass(tank(Tank.Liquid.PETROL, 1000, NOT_GIVEN), Figure.of(1, 0));
        assertEquals(720, mass.value() - mass.tolerance(), 1e-6);
        assertEquals(775, mass.value() + mass.tolerance(), 1e-6);
    }

    /** Common practice: a litre of water is a kilogram. */
    @Test
    void seventyLitresOfWaterWeighSeventyKilograms() {
        assertEquals(
                70,
                Liquids.mass(tank(Tank.Liquid.WATER, 70, NOT_GIVEN), Figure.of(1, 0))
                        .value(),
                0.5);
    }

    @Test
    void aHalfFullTankOfAGivenDensityWeighsHalf() {
        assertEquals(
                33.6,
                Liquids.mass(tank(Tank.Liquid.DIESEL, 80, Figure.of(0.84, 0)), Figure.of(0.5, 0))
                        .value(),
                1e-9);
    }
}
