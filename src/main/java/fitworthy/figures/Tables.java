package fitworthy.figures;

import fitworthy.sheet.Figure;
import fitworthy.sheet.Missing;
import java.util.Map;

/**
 * Published tables that the figures read.
 *
 * @param loadIndexKg load of one tyre in kg by load index
 * @param speedSymbolMetresPerSecond highest speed by speed symbol
 */
public record Tables(Map<Integer, Double> loadIndexKg, Map<String, Double> speedSymbolMetresPerSecond) {

    /** Load of one tyre, or missing where the table has no such index. */
    public Figure tyreLoad(Figure loadIndex) {
        if (!loadIndex.known()) {
            return loadIndex;
        }
        Double load = loadIndexKg.get((int) Math.round(loadIndex.value()));
        return load == null
                ? Figure.missing(new Missing("load index " + Math.round(loadIndex.value()),
                        "a load for this index in the rule book's table", "rules/tables/load-index.csv"))
                : Figure.of(load, 0);
    }

    /** Highest speed of a tyre with this symbol, or missing where there is none such. */
    public Figure tyreSpeed(String symbol, Missing missing) {
        Double speed = speedSymbolMetresPerSecond.get(symbol);
        return speed == null ? Figure.missing(missing) : Figure.of(speed, 0);
    }
}
