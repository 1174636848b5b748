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

    /** Where none pulls that way, one has to: 0.8 of 100 kg at half of its pull. */
    @Test
    void whereNoneHoldsOneHasTo() {
        assertEquals(
                160,
                DirectLashing.needed(Figure.of(0), Figure.of(0.5), Figure.of(100), Figure.of(0.8))
                        .value(),
                1e-9);
    }
}
