package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.quantity.Missing;
import fitworthy.source.FaultsException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What each guess brings of a spread, worked by hand. */
class GuessSharesTest {

    /** The shares in thousandths, in the order in which they are told. */
    private static Map<String, Long> shares(String changes, String rule, String subject) throws FaultsException {
        Advice advice = Adviser.advise(Books.engine(), Sheets.plainWith(changes));
        Assessed outcome = Stream.<List<? extends Assessed>>of(advice.findings(), advice.held(), advice.met())
                .flatMap(List::stream)
                .filter(one ->
                        one.judged().id().equals(rule) && one.judged().subject().equals(subject))
                .findFirst()
                .orElseThrow();
        Map<String, Long> shares = new LinkedHashMap<>();
        GuessShares.in(advice)
                .of(outcome)
                .forEach((guess, share) -> shares.put(guess.path(), Math.round(share * 1000)));
        return shares;
    }

    private static void assertShares(Map<String, Long> expected, Map<String, Long> shares) {
        assertEquals(expected, shares);
        assertEquals(List.copyOf(expected.keySet()), List.copyOf(shares.keySet()));
    }

    /** 12, 9 and 20 kg make sqrt(144 + 81 + 400) = 25 kg: 144 / 625 and 81 / 625; the 400 / 625 are stated. */
    @Test
    void massesAddAsTheRootOfSquaresAndWhatIsStatedIsLeft() throws FaultsException {
        Map<String, Long> expected = new LinkedHashMap<>();
        expected.put("cargo.Tent.mass", 230L);
        expected.put("cargo.Chairs.mass", 130L);
        assertShares(
                expected,
                shares(
                        """
                cargo:
                  - {name: Chairs, mass: about 40 kg +/- 9 kg, at: {x: 3000 mm, y: 0 mm, z: 900 mm}}
                  - {name: Tent, mass: usual 60 kg +/- 12 kg, at: {x: 3000 mm, y: 0 mm, z: 900 mm}}
                  - {name: Water, mass: 30 kg +/- 20 kg, at: {x: 3000 mm, y: 0 mm, z: 900 mm}}
                """,
                        "mass.gvm-over",
                        "vehicle"));
    }

    /** With a GVM of +/- 60 kg it is sqrt(625 + 3600) = 65 kg: 3600 / 4225, 144 / 4225, 81 / 4225. */
    @Test
    void aLimitThatIsGuessedBringsItsPart() throws FaultsException {
        Map<String, Long> expected = new LinkedHashMap<>();
        expected.put("vehicle.ratings.gvm", 852L);
        expected.put("cargo.Tent.mass", 34L);
        expected.put("cargo.Chairs.mass", 19L);
        assertShares(
                expected,
                shares(
                        """
                vehicle: {ratings: {gvm: about 3000 kg +/- 60 kg}}
                cargo:
                  - {name: Chairs, mass: about 40 kg +/- 9 kg, at: {x: 3000 mm, y: 0 mm, z: 900 mm}}
                  - {name: Tent, mass: about 60 kg +/- 12 kg, at: {x: 3000 mm, y: 0 mm, z: 900 mm}}
                  - {name: Water, mass: 30 kg +/- 20 kg, at: {x: 3000 mm, y: 0 mm, z: 900 mm}}
                """,
                        "mass.gvm-over",
                        "vehicle"));
    }

    /**
     * 100 kg +/- 15 kg at 2 m +/- 0.2 m put on the rear axle, times the wheelbase, (2 x 15)^2 + (100 x 0.2)^2 = 900 +
     * 400: 900 / 1300 by the mass, 400 / 1300 by the place.
     */
    @Test
    void aPlaceBringsItsPartByTheLever() throws FaultsException {
        Map<String, Long> expected = new LinkedHashMap<>();
        expected.put("cargo.Crate.mass", 692L);
        expected.put("cargo.Crate.at.x", 308L);
        assertShares(
                expected,
                shares(
                        """
                cargo:
                  - {name: Crate, mass: about 100 kg +/- 15 kg, at: {x: about 2000 mm +/- 200 mm, y: 0 mm, z: 900 mm}}
                """,
                        "mass.axle-over",
                        "rear axle"));
    }

    @Test
    void whatIsStatedHasNoShares() throws FaultsException {
        assertEquals(Map.of(), shares("cargo: [{name: Luggage, mass: 60 kg +/- 9 kg}]", "mass.gvm-over", "vehicle"));
    }

    /** A rating of a kit is asked for by nobody where it is not known, and decides all the same. */
    @Test
    void whateverBringsAPartIsNamed() throws FaultsException {
        Advice advice = Adviser.advise(
                Books.engine(),
                Sheets.plainWith(
                        """
                fitments:
                  - {name: Kit, kind: rating-upgrade, mass: 0 kg, gvm: about 3200 kg +/- 60 kg}
                cargo:
                  - {name: Tent, mass: about 60 kg +/- 12 kg, at: {x: 3000 mm, y: 0 mm, z: 900 mm}}
                """));
        GuessShares shares = GuessShares.in(advice);
        assertTrue(advice.held().stream().anyMatch(held -> held.guesses().size() == 2));
        for (Outcome.Held held : advice.held()) {
            Map<Missing, Double> parts = shares.of(held);
            assertTrue(held.guesses().containsAll(parts.keySet()), () -> held.key() + " " + parts);
            assertTrue(parts.values().stream().mapToDouble(part -> part).sum() < 1 + 1e-9, held.key()::toString);
        }
    }
}
