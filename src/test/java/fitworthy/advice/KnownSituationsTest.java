package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.source.FaultsException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Situations whose answer is known from outside, run through the whole book. The vehicles are invented. */
class KnownSituationsTest {

    private static Advice advise(String changes) throws FaultsException {
        return Adviser.advise(Books.engine(), Sheets.plainWith(changes));
    }

    private static Comparison compared(Advice advice, String id) {
        Optional<Comparison> met = advice.met().stream()
                .filter(each -> each.judged().id().equals(id))
                .findFirst()
                .flatMap(Outcome.Met::comparison);
        return met.or(() -> advice.findings().stream()
                        .filter(each -> each.judged().id().equals(id))
                        .findFirst()
                        .flatMap(Outcome.Finding::comparison))
                .orElseThrow();
    }

    private static List<String> found(Advice advice) {
        return advice.findings().stream()
                .map(each -> each.judged().id())
                .distinct()
                .toList();
    }

    /** Common practice: what the GVM leaves is the GVM less the weighbridge. */
    @Test
    void aGvmOfFourAndAHalfTonnesLessThreePointFourWeighedLeavesOnePointOne() throws FaultsException {
        Advice advice = advise(
                """
                vehicle: {ratings: {gvm: 4.5 t, front-axle: 1.9 t, rear-axle: 2.9 t}}
                cases: [{name: weighed, weighed: {front-axle: 1.5 t +/- 0 kg, rear-axle: 1.9 t +/- 0 kg}}]
                """);
        assertEquals(1100, compared(advice, "mass.gvm-over").margin(), 1e-6);
    }

    /**
     * Common practice: the ball takes 350 kg of a 3.5 t trailer, 10 %. The combination has to fit the GCM all the same;
     * the ball is counted once in it.
     */
    @Test
    void aTrailerPutsItsBallLoadOnTheVehicleAndItsWholeMassInTheGcm() throws FaultsException {
        String trailer = "trailer: {name: Van, mass: 3.5 t, ball: 350 kg +/- 0 kg}";
        Advice alone = advise("title: alone");
        Advice towing = advise(trailer);
        assertEquals(
                350,
                compared(towing, "mass.gvm-over").value()
                        - compared(alone, "mass.gvm-over").value(),
                1e-6);
        assertEquals(0.10, 350 / 3500.0, 1e-12);
        assertEquals(2520 + 3500, compared(towing, "mass.gcm-over").value(), 1e-6);
        assertTrue(found(towing).contains("mass.gcm-over"));
    }

    /**
     * A supplier's worked example (read, https://wilkinsonsuspension.com.au/gvm-upgrades/): GVM 3350, trailer 3500, GCM
     * 6850 kg. With the GVM raised to 3850 they would make 7350, "500kg over"; so 3000 kg remain at full GVM.
     */
    @Test
    void aRaisedGvmLeavesTheGcmAndSoLessForTheTrailer() throws FaultsException {
        String made =
                "vehicle: {tow-bar: {ball-height: 450 mm}, ratings: {gvm: 3350 kg, gcm: 6850 kg, towing: 3500 kg}}\n";
        assertTrue(advise(made).findings().isEmpty());
        Advice raised = advise(made + "fitments: [{name: Kit, kind: rating-upgrade, mass: 0 kg, gvm: 3850 kg}]");
        assertEquals(3000, compared(raised, "mass.raised-gvm-gcm-left").limit(), 1e-6);
        assertTrue(found(raised).contains("mass.raised-gvm-gcm-left"));
    }

    /** Common practice: a standard wagon with five adults, their bags and a full tank has next to nothing left. */
    @Test
    void aStandardWagonWithPassengersAndAFullTankIsNearItsLimit() throws FaultsException {
        Advice advice = advise(
                """
                vehicle:
                  mass: {kerb: 2700 kg, front-axle: 1400 kg, rear-axle: 1300 kg, kerb-fuel: 7 %}
                  ratings: {gvm: 3350 kg, gcm: 6850 kg, front-axle: 1600 kg, rear-axle: 1950 kg}
                tanks: [{name: Main tank, capacity: 138 L}]
                occupants:
                  - {name: Rear left, mass: 80 kg +/- 0 kg, at: {x: 2400 mm, y: 370 mm, z: 900 mm}}
                  - {name: Rear middle, mass: 80 kg +/- 0 kg, at: {x: 2400 mm, y: 0 mm, z: 900 mm}}
                  - {name: Rear right, mass: 80 kg +/- 0 kg, at: {x: 2400 mm, y: -370 mm, z: 900 mm}}
                cargo: [{name: Luggage, mass: 100 kg +/- 0 kg, at: {x: 3300 mm, y: 0 mm, z: 900 mm}}]
                """);
        double left = compared(advice, "mass.gvm-over").margin();
        assertEquals(3350 - (2700 + 0.93 * 138 * 0.84 + 400 + 100), left, 1e-6);
        assertTrue(left / 3350 < 0.03, "less than 3 % of the GVM is left");
        assertTrue(found(advice).contains("mass.gvm-tight"));
    }

    /** Common practice: 350 kg on the ball of a 3.5 t trailer is 10 %, more than enough to be steady. */
    @Test
    void threeHundredAndFiftyKilogramsOfThreeAndAHalfTonnesAreTenPercent() throws FaultsException {
        Comparison share =
                compared(advise("trailer: {name: Van, mass: 3.5 t, ball: 350 kg +/- 0 kg}"), "towing.ball-light");
        assertEquals(0.10, share.value(), 1e-12);
        assertTrue(share.margin() > 0);
    }

    /**
     * South Australia's schedule (seen, superseded): where the maker states no towing mass, one and a half times the
     * unladen mass. 2100 kg unladen allow 3150 kg, by our arithmetic.
     */
    @Test
    void aVehicleWithoutATowRatingOfTwentyOneHundredKilogramsTowsThreeThousandOneHundredAndFifty()
            throws FaultsException {
        String unrated =
                """
                region: au-sa
                vehicle: {mass: {kerb: 2100 kg, front-axle: 1100 kg, rear-axle: 1000 kg}, ratings: {towing: ~, towing-stated: no}}
                trailer: {name: Van, brakes: electric, mass: %s kg}
                """;
        assertEquals(
                0,
                compared(advise(unrated.formatted(3150)), "towing.unrated-over").margin(),
                1e-9);
        assertTrue(found(advise(unrated.formatted(3151))).contains("towing.unrated-over"));
    }

    /**
     * A United Kingdom club's formula (seen): 100 times the greatest mass over the kerb mass; 1500 and 1800 kg make
     * 83.3 %.
     */
    @Test
    void aVanOfFifteenHundredKilogramsBehindEighteenHundredIsWithinTheAdvice() throws FaultsException {
        Advice advice = advise(
                """
                region: uk
                vehicle: {mass: {kerb: 1800 kg, front-axle: 950 kg, rear-axle: 850 kg}}
                trailer: {name: Van, mass: 1400 kg, rated: 1500 kg}
                """);
        assertEquals(0.833, compared(advice, "towing.ratio-high").value(), 0.0005);
        assertFalse(found(advice).contains("towing.ratio-high"));
    }
}
