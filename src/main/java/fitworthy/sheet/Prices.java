package fitworthy.sheet;

import fitworthy.quantity.Money;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Sums of the prices on a sheet. */
public final class Prices {

    private Prices() {}

    /** The price of everything planned, by currency; what is done and what has no price is not in it. */
    public static Map<String, BigDecimal> of(Sheet sheet) {
        Map<String, BigDecimal> sums = new TreeMap<>();
        Sheet planned = sheet.planned();
        Stream.concat(
                        planned.fitments().stream()
                                .filter(part -> !part.isDone())
                                .map(Fitment::price),
                        planned.tanks().stream().filter(tank -> !tank.isDone()).map(Tank::price))
                .filter(Objects::nonNull)
                .forEach((Money price) -> sums.merge(price.currency(), price.amount(), BigDecimal::add));
        return sums;
    }

    /** By how much the price of everything planned grows from one sheet to the next, by currency. */
    public static Map<String, BigDecimal> added(Sheet from, Sheet to) {
        Map<String, BigDecimal> added = of(to);
        of(from).forEach((currency, sum) -> added.merge(currency, sum.negate(), BigDecimal::add));
        return added;
    }
}
