package fitworthy.figures.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.figures.plan.Tables;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.source.FaultsException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CableTest {

    private static final double SQUARE_MILLIMETRE = 1e-6;
    private static final double FOOT = 0.3048;
    private static final Figure BEST = exact(105);

    private static Figure exact(double value) {
        return Figure.of(value, 0);
    }

    /** An engineering handbook (seen): conductivity 58 m/(ohm mm2) at 20 degC, so 0.017241 ohm for a metre of 1 mm2. */
    @Test
    void copperHasItsInternationalResistivity() {
        assertEquals(0.017241, Cable.resistivity(20) / SQUARE_MILLIMETRE, 5e-7);
    }

    /** The same handbook (seen): 3.93e-3 a kelvin at 20 degC, so 100 K more make it 1.393 times as much. */
    @Test
    void copperRisesWithHeatByItsCoefficient() {
        assertEquals(1.393, Cable.resistivity(120) / Cable.resistivity(20), 1e-9);
    }

    /** By hand: 2 x 3 m x 400 A x 0.017241 / 50 = 0.828 V. */
    @Test
    void aWinchCableLosesWhatTheFormulaGivesByHand() {
        assertEquals(
                0.828,
                Cable.drop(exact(3), exact(400), exact(50 * SQUARE_MILLIMETRE), exact(20))
                        .value(),
                5e-4);
    }

    /**
     * A marine catalogue, editions of 2021 and 2022 (read, http://hollandmarine.com/hmp-flipbook-2021/flipbook/inc/html/,
     * pages 52.html and 53.html): 12 V, 10 A, 21 ft out and back want size 10 for a loss of 3 % and size 16 for 10 %.
     * These are sold as 5 and 1 mm2, and size 12 between them as 3 mm2 (seen, a cable maker's catalogue); with 3.31 mm2 it
     * would lose 2.8 %.
     */
    @Test
    void theMarineCataloguesExampleWantsTheSizesItPrints() {
        for (double temperature :
                new double[] {20, Cable.temperature(Choice.of(YesNo.NO)).value()}) {
            assertEquals(5, smallest(0.03, temperature), 1e-9);
            assertEquals(1, smallest(0.10, temperature), 1e-9);
        }
    }

    private static double smallest(double share, double temperature) {
        return DoubleStream.of(0.8, 1, 2, 3, 5, 8)
                .filter(size ->
                        Cable.drop(exact(21 * FOOT / 2), exact(10), exact(size * SQUARE_MILLIMETRE), exact(temperature))
                                        .value()
                                <= share * 12)
                .findFirst()
                .orElseThrow();
    }

    /**
     * The catalogue's second column (seen) gives what each size carries in the engine space, in whole amperes; the book
     * stores the first column and takes 0.85 of it. The catalogue rounds 178.5 and 280.5 down.
     */
    @Test
    void theEngineSpaceColumnIsFoundAgain() throws FaultsException {
        Map<Double, Double> printed = new TreeMap<>(Map.of(
                0.8, 17.0, 1.3, 21.0, 2.0, 30.0, 3.3, 38.0, 5.0, 51.0, 8.0, 68.0, 13.0, 102.0, 21.0, 136.0, 33.6,
                178.0));
        printed.putAll(Map.of(26.6, 153.0, 42.0, 208.0, 53.0, 242.0, 67.4, 280.0, 85.0, 327.0, 107.0, 378.0));
        Figure engineSpace = Cable.ratingLeft(Choice.of(YesNo.YES), BEST);
        Tables tables = Books.shipped().tables();
        assertEquals(15, tables.cableAmperes().get(105.0).size());
        for (Map.Entry<Double, Double> row : printed.entrySet()) {
            double rating = tables.cableRating(exact(row.getKey() * SQUARE_MILLIMETRE), BEST, engineSpace)
                    .value();
            assertEquals(row.getValue(), rating, 0.6, row.getKey() + " mm2");
        }
    }

    /**
     * A distributor's reprint of a building table (second-hand, insulation for 90 degC, air of 30 degC, two cables
     * clipped side by side). Another trade, another insulation: agreement to a third is what can be asked for.
     */
    @Test
    void theTableStandsNearABuildingTable() throws FaultsException {
        Tables tables = Books.shipped().tables();
        Map.of(1.0, 19.0, 2.5, 34.0, 4.0, 46.0, 10.0, 81.0, 16.0, 109.0, 35.0, 176.0, 70.0, 293.0)
                .forEach((section, building) -> {
                    double vehicle = tables.cableRating(exact(section * SQUARE_MILLIMETRE), BEST, exact(1))
                            .value();
                    assertEquals(1, vehicle / building, 0.35, section + " mm2");
                });
    }

    @Test
    void aSectionBetweenTwoRowsCountsAsTheSmaller() throws FaultsException {
        Tables tables = Books.shipped().tables();
        assertEquals(
                60,
                tables.cableRating(exact(6 * SQUARE_MILLIMETRE), BEST, exact(1)).value(),
                1e-9);
        assertEquals(8, tables.cableFor(exact(61), BEST, exact(1)).value() / SQUARE_MILLIMETRE, 1e-9);
        assertFalse(tables.cableRating(exact(0.5 * SQUARE_MILLIMETRE), BEST, exact(1))
                .known());
        assertFalse(tables.cableFor(exact(446), BEST, exact(1)).known());
    }

    /**
     * From memory the note under the table of 33 CFR 183.425 leaves 0.58, 0.75, 0.78 and 0.82 of a rating in an engine
     * space at 50 degC by insulation; the heat law gives them to a hundredth.
     */
    @Test
    void theEngineSpaceTakesMoreOfPoorerInsulation() {
        Map.of(60.0, 0.58, 75.0, 0.75, 80.0, 0.78, 90.0, 0.82, 105.0, 0.85)
                .forEach((insulation, left) -> assertEquals(
                        left,
                        Cable.ratingLeft(Choice.of(YesNo.YES), exact(insulation))
                                .value(),
                        0.006,
                        insulation + " degC"));
        assertEquals(1, Cable.ratingLeft(Choice.of(YesNo.NO), exact(60)).value(), 0);
    }

    /**
     * The copper of a wire size by its definition (ASTM B258, common practice): 0.127 mm x 92^((36 - size) / 39) across. Each row
     * is under no more than that, so that a cable of its size counts as such.
     */
    @Test
    void noRowAsksForMoreCopperThanItsSizeHas() throws FaultsException {
        List<Double> rows = Books.shipped().tables().cableAmperes().get(60.0).keySet().stream()
                .map(section -> section / SQUARE_MILLIMETRE)
                .toList();
        List<Integer> sizes = List.of(18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3);
        assertEquals(sizes.size(), rows.size());
        for (int i = 0; i < rows.size(); i++) {
            double across = 0.127 * Math.pow(92, (36 - sizes.get(i)) / 39.0);
            double copper = Math.PI / 4 * across * across;
            assertEquals(1, rows.get(i) / copper, 0.05, "size " + sizes.get(i));
            assertTrue(rows.get(i) <= copper, "size " + sizes.get(i));
        }
    }

    /** The same table in the same copy (seen): sizes 3 and 3/0. */
    @Test
    void theSizesThreeAndThreeNoughtCarryWhatTheRegulationPrints() throws FaultsException {
        Tables tables = Books.shipped().tables();
        Map.of(
                        60.0,
                        List.of(120.0, 260.0),
                        75.0,
                        List.of(145.0, 310.0),
                        80.0,
                        List.of(150.0, 330.0),
                        90.0,
                        List.of(155.0, 330.0))
                .forEach((insulation, currents) -> assertEquals(
                        currents,
                        Stream.of(26.67, 85.01)
                                .map(section -> tables.cableRating(
                                                exact(section * SQUARE_MILLIMETRE), exact(insulation), exact(1))
                                        .value())
                                .toList(),
                        insulation + " degC"));
    }

    /** 33 CFR 183.425, table 5, in a copy (seen): size 10, which is 5 mm2, carries 40, 40, 50, 55 and 60 A. */
    @Test
    void theSizeTenCarriesByItsInsulationWhatTheRegulationPrints() throws FaultsException {
        Tables tables = Books.shipped().tables();
        Map.of(60.0, 40.0, 75.0, 40.0, 80.0, 50.0, 90.0, 55.0, 105.0, 60.0)
                .forEach((insulation, current) -> assertEquals(
                        current,
                        tables.cableRating(exact(5 * SQUARE_MILLIMETRE), exact(insulation), exact(1))
                                .value(),
                        1e-9,
                        insulation + " degC"));
        assertEquals(60, tables.insulationInTable(exact(74)).value(), 0);
        assertFalse(tables.insulationInTable(exact(59)).known());
    }
}
