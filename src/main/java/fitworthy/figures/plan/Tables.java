package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.sheet.ShopWords;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;

/**
 * The tables of a rule book: those that the figures read, and the words of the trade.
 *
 * @param loadIndexKg load of one tyre in kg by load index
 * @param speedSymbolMetresPerSecond highest speed by speed symbol
 * @param cableAmperes what a copper cable carries for long in air of 30 degC, in A, by what its insulation is made for in
 *     degC and its section in m2
 * @param usualOrder kinds of part and job, each with the kinds that are usually done before it
 * @param shopWords what a shop calls kinds of part, and what else of a sheet it is
 */
public record Tables(
        Map<Integer, Double> loadIndexKg,
        Map<String, Double> speedSymbolMetresPerSecond,
        NavigableMap<Double, NavigableMap<Double, Double>> cableAmperes,
        Map<String, Set<String>> usualOrder,
        ShopWords shopWords) {

    /** Stands in the order of work for the fitting of any part or tank. */
    public static final String ANY_PART = "any-part";
    /** Stands in the order of work for what is fitted into or onto a canopy. */
    public static final String IN_CANOPY = "in-canopy";
    /** The kind of a tank in the order of work. */
    public static final String TANK = "tank";

    /** Load of one tyre, or missing where the table has no such index. */
    public Figure tyreLoad(Figure loadIndex) {
        if (!loadIndex.known()) {
            return loadIndex;
        }
        Double load = loadIndexKg.get((int) Math.round(loadIndex.value()));
        return load == null
                ? Figure.missing(Missing.inBook(
                        "load index " + Math.round(loadIndex.value()),
                        "a load for this index in the rule book's table"))
                : Figure.of(load, 0);
    }

    /** The least load index in the table whose tyre carries a load in kg. */
    public Figure tyreIndex(Figure load) {
        return !load.known()
                ? load
                : loadIndexKg.entrySet().stream()
                        .filter(row -> load.isAtMost(Figure.of(row.getValue())))
                        .map(Map.Entry::getKey)
                        .min(Integer::compare)
                        .map(index -> Figure.of(index, 0))
                        .orElse(Figure.missing(
                                Missing.inBook("load index", "an index for such a load in the rule book's table")));
    }

    /** Highest speed of a tyre with this symbol, or missing where there is none such. */
    public Figure tyreSpeed(String symbol, Missing missing) {
        Double speed = speedSymbolMetresPerSecond.get(symbol);
        return speed == null ? Figure.missing(missing) : Figure.of(speed, 0);
    }

    /**
     * The slowest symbol in the table of a tyre made for a speed in m/s. Above the fastest of them a tyre bears that one
     * in brackets, and its maker names the speed (from memory).
     */
    public String tyreSymbol(Figure speed) {
        return speedSymbolMetresPerSecond.entrySet().stream()
                .filter(row -> speed.isAtMost(Figure.of(row.getValue())))
                .min(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElseGet(() -> "(" + fastestSymbol() + ")");
    }

    private String fastestSymbol() {
        return Collections.max(speedSymbolMetresPerSecond.entrySet(), Map.Entry.comparingByValue())
                .getKey();
    }

    /** The poorest insulation in the table of cables, degC. */
    public Figure poorestInsulation() {
        return Figure.of(cableAmperes.firstKey(), 0);
    }

    /** The best insulation in the table of cables, degC. */
    public Figure bestInsulation() {
        return Figure.of(cableAmperes.lastKey(), 0);
    }

    /** What the table has for insulation, degC: the next poorer where it lies between two. */
    public Figure insulationInTable(Figure insulation) {
        Double degrees = insulation.known() ? cableAmperes.floorKey(insulation.value()) : null;
        return !insulation.known()
                ? insulation
                : degrees != null ? Figure.of(degrees, 0) : Figure.missing(notInTable("insulation for so little heat"));
    }

    /**
     * What a cable carries for long, in A: that of the next smaller row where its section lies between two.
     *
     * @param section m2
     * @param insulation of the table, degC
     * @param place what the warmth of its place leaves of the rating, 1 in air of 30 degC
     */
    public Figure cableRating(Figure section, Figure insulation, Figure place) {
        if (!section.known() || !insulation.known()) {
            return section.missingWith(insulation, section);
        }
        Map.Entry<Double, Double> row = cableAmperes.get(insulation.value()).floorEntry(section.value());
        Figure rating =
                row != null ? Figure.of(row.getValue(), 0) : Figure.missing(notInTable("a cable as thin as this"));
        return rating.times(place);
    }

    /**
     * The smallest section in the table that carries a current for long, in m2.
     *
     * @param current A
     * @param insulation as above
     * @param place as above
     */
    public Figure cableFor(Figure current, Figure insulation, Figure place) {
        Figure asked = current.missingWith(place, current).missingWith(insulation, current);
        if (!asked.known()) {
            return asked;
        }
        return cableAmperes.get(insulation.value()).entrySet().stream()
                .filter(row -> current.isAtMost(place.times(row.getValue())))
                .findFirst()
                .map(row -> Figure.of(row.getKey(), 0))
                .orElseGet(() -> Figure.missing(notInTable("a cable for such a current")));
    }

    /** The largest section in the table of cables, m2. */
    public Figure largestCable() {
        return Figure.of(cableAmperes.lastEntry().getValue().lastKey(), 0);
    }

    /** The sections in the table of cables, m2, the least first. */
    public List<Figure> cableSizes() {
        return cableAmperes.lastEntry().getValue().keySet().stream()
                .map(size -> Figure.of(size, 0))
                .toList();
    }

    private static Missing notInTable(String what) {
        return Missing.inBook("cable table", what + " in the rule book's table");
    }
}
