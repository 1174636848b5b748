package fitworthy.figures.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Figure;
import org.junit.jupiter.api.Test;

class DirectLashingTest {

    /**
     * A loader of 15 000 kg on chains 3500 mm long whose ends are 300 mm apart across the truck: 7500 kg are asked of two of
     * them, so that each would have to bear 43 750 kg (a trade paper after the regulator's guide, bigrigs.com.au, read as far
     * as that).
     */
    @Test
    void agreesWithACaseOfTheRegulatorsGuide() {
        Figure across = Figure.of(300.0 / 3500);
        assertEquals(
                43750,
                DirectLashing.needed(Figure.of(2), across, Figure.of(15000), Figure.of(0.5))
                        .value(),
                0.5);
        assertEquals(
                0.5,
                DirectLashing.held(Figure.of(2), Figure.of(43750), across, Figure.of(15000))
                        .value(),
                1e-9);
    }

    /**
     * A worked example in lecture notes on moving heavy loads, in a public repository (read): 40 t on four chains of 8 t at
     * 30 degrees from the level, "4 x 67.9 = 271.6 kN", of "40,000 kg x 0.8 x 9.81 = 313.9 kN" that are asked forward.
     */
    @Test
    void agreesWithAWorkedExampleOfFourChains() {
        Figure chains = Figure.of(4);
        Figure along = Figure.of(Math.cos(Math.toRadians(30)));
        double held = DirectLashing.held(chains, Figure.of(8000), along, Figure.of(40000))
                .value();
        assertEquals(271.6, held * 40 * 9.81, 0.5);
        double needed = DirectLashing.needed(chains, along, Figure.of(40000), Figure.of(0.8))
                .value();
        assertEquals(8 * 313.9 / 271.6, needed / 1000, 0.01);
    }
}
