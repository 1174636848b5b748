package fitworthy.printout;

import fitworthy.sheet.Money;
import fitworthy.sheet.Sheet;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Sums of the prices on a sheet. */
final class Prices {

    private Prices() {}

    /** The price of everything planned, by currency; parts without a price are not in it. */
    static Map<String, BigDecimal> of(Sheet sheet) {
        Map<String, BigDecimal> sums = new TreeMap<>();
        Sheet planned = sheet.planned();
        Stream.concat(planned.fitments().stream().map(each -> each.price()),
                planned.tanks().stream().map(each -> each.price())).filter(Objects::nonNull)
                .forEach((Money price) -> sums.merge(price.currency(), price.amount(), BigDecimal::add));
        return sums;
    }

    /** How many planned parts have no price. */
    static long withoutPrice(Sheet sheet) {
        return sheet.planned().fitments().stream().filter(each -> each.price() == null).count();
    }
}
