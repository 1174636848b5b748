package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.source.FaultsException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The plain wagon without load weighs 2460 kg: 40 kg over a GVM of 2480 with 60 kg aboard, 20 kg within it empty. */
class MarginTest {

    private static List<Margin> margins() throws FaultsException {
        return Margin.all(
                Adviser.advise(
                        Books.engine(),
                        Sheets.plainWith(
                                """
                        vehicle: {ratings: {gvm: 2480 kg}}
                        cargo: [{name: Box, mass: 60 kg +/- 0 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}]
                        cases: [{name: laden, carrying: [Box]}, {name: empty, carrying: []}]
                        """)));
    }

    @Test
    void whatIsLeftOfTheGvmIsNegativeWhereItIsPassed() throws FaultsException {
        Margin gvm = margins().stream()
                .filter(margin -> margin.limit().equals("vehicle: GVM"))
                .findFirst()
                .orElseThrow();
        assertEquals(Map.of("laden", -40L, "empty", 20L), rounded(gvm));
        assertEquals(-40, gvm.least(), 1e-6);
        assertEquals("kg", gvm.kind().unit());
    }

    private static Map<String, Long> rounded(Margin margin) {
        return Map.of(
                "laden", Math.round(margin.left().get("laden")),
                "empty", Math.round(margin.left().get("empty")));
    }

    /** By name, and of loadings alone: not the GVM against the axle limits, nor a share of the front axle. */
    @Test
    void onlyMassLimitsOfALoadingAreListed() throws FaultsException {
        List<String> limits = margins().stream().map(Margin::limit).toList();
        assertEquals(limits.stream().sorted().toList(), limits);
        assertTrue(limits.containsAll(List.of("front axle: axle limit", "rear axle: axle limit")), limits.toString());
        assertTrue(margins().stream().allMatch(margin -> margin.kind().name().startsWith("mass.")));
        assertTrue(limits.stream().noneMatch(limit -> limit.contains("sum of the axle limits")), limits.toString());
    }
}
