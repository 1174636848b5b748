package fitworthy.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A wish as letters have it. */
class LetterWishTest {

    private static final Set<String> PARTS = Set.of(
            "canopy", "fridge", "water tank", "lift kit", "tyres", "all-terrain tyres", "solar panel", "battery");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "canopy | canopy",
                "a canopy | canopy",
                "the canopy | canopy",
                "canopy about 1.8 m long | canopy=about 1.8 m",
                "a canopy 1.8 metres long | canopy=1.8 m",
                "a 60 litre fridge | fridge=60 L",
                "fridge, 60 l | fridge=60 L",
                "an about 60 L water tank | water tank=about 60 L",
                "a water tank of 60 litres | water tank=60 L",
                "lift kit, 50 mm | lift kit=50 mm",
                "200 watt solar panel | solar panel=200 W",
                "battery 100Ah | battery=100 Ah",
                "265/70R17 tyres | tyres=265/70R17",
                "tyres, 265/70R17 | tyres=265/70R17",
                "all-terrain 265/70R17 tyres | all-terrain tyres=265/70R17"
            })
    void theFigureOfAPartGoesBehindAnEqualsSign(String wish, String typed) {
        assertEquals(typed, new LetterWish(PARTS::contains).typed(wish));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a trapdoor of 5 litres",
                "canopy 1.8 m wide",
                "60 gallon fridge",
                "265/70 tyres",
                "a thing",
                "a canopy and a fridge"
            })
    void whatNamesNoPartStaysAsItWasWritten(String wish) {
        assertEquals(wish, new LetterWish(PARTS::contains).typed(wish));
    }
}
