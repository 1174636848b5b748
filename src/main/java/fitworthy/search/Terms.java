package fitworthy.search;

import fitworthy.advice.Advice;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.FuelRange;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.water.WaterMeasures;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Prices;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What a plan comes to beside its findings: for who loads the vehicle, travels in it, pays and waits for it.
 *
 * @param vehicle by loading, the mass of the vehicle with the load on the ball, kg
 * @param trailer mass of the trailer, kg
 * @param range by loading that sets out on the trip, m; without those in which it is not known
 * @param water likewise how long the drinking water lasts, h
 * @param price of everything planned, by currency
 * @param leadTime the longest that is given of what is planned, h; 0 where none is
 * @param leadTimesUnknown of how much that is planned none is given
 */
public record Terms(
        Map<String, Double> vehicle,
        Optional<Double> trailer,
        Map<String, Double> range,
        Map<String, Double> water,
        Map<String, BigDecimal> price,
        double leadTime,
        long leadTimesUnknown) {

    /** The terms of the plan that advice is about. */
    public static Terms of(Advice advice) {
        Sheet planned = advice.sheet().planned();
        List<Loading> loadings = advice.loadings();
        List<Loading> onTrip = loadings.stream().filter(Loading::setsOut).toList();
        return new Terms(
                known(loadings, loading -> loading.axles().total()),
                planned.trailer()
                        .map(towed -> towed.mass())
                        .filter(Figure::known)
                        .map(Figure::value),
                known(onTrip, FuelRange::of),
                known(onTrip, WaterMeasures::lasting),
                Prices.of(planned),
                leadTimes(planned)
                        .filter(Figure::known)
                        .mapToDouble(Figure::value)
                        .max()
                        .orElse(0),
                leadTimes(planned).filter(time -> !time.known()).count());
    }

    /** How much more is paid than for another plan; 0 where prices are in several currencies: no sum says what is less. */
    BigDecimal added(Terms before) {
        Map<String, BigDecimal> added = new TreeMap<>(price);
        before.price.forEach((currency, sum) -> added.merge(currency, sum.negate(), BigDecimal::add));
        return added.size() == 1 ? added.values().iterator().next() : BigDecimal.ZERO;
    }

    /** The largest share of range or water that is lost in any loading, 0 to 1. */
    double lost(Terms before) {
        return Math.max(lost(before.range, range), lost(before.water, water));
    }

    private static double lost(Map<String, Double> before, Map<String, Double> after) {
        return before.entrySet().stream()
                .filter(entry -> entry.getValue() > 0)
                .mapToDouble(entry -> 1 - after.getOrDefault(entry.getKey(), 0.0) / entry.getValue())
                .max()
                .orElse(0);
    }

    private static Map<String, Double> known(List<Loading> loadings, Function<Loading, Figure> figure) {
        Map<String, Double> known = new LinkedHashMap<>();
        for (Loading loading : loadings) {
            Figure value = figure.apply(loading);
            if (value.known() && Double.isFinite(value.value())) {
                known.put(loading.loadCase().name(), value.value());
            }
        }
        return known;
    }

    private static Stream<Figure> leadTimes(Sheet planned) {
        return Stream.concat(
                planned.fitments().stream().filter(part -> !part.isDone()).map(Fitment::leadTime),
                planned.tanks().stream()
                        .filter(tank -> Alterations.added(tank) && !tank.isDone())
                        .map(Tank::leadTime));
    }
}
