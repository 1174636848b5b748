package fitworthy.counter.plan;

import fitworthy.counter.edit.UnitBeside;
import fitworthy.quantity.Dimension;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.FieldSchema.Content;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Pattern;

/** The unit that stands beside a box. */
final class Unit {
    private static final String NUMBER = "[-+]?[0-9]+([.,][0-9]+)?";
    private static final String BARE = NUMBER + "(\\s*(\\+/-|±)\\s*[0-9]+([.,][0-9]+)?(\\s*%)?)?";

    private static final Pattern FINE = Pattern.compile("[0-9]+\\.[0-9]{3,}");

    private Unit() {}

    /** That of the figure as written, else of the example; nothing for what is no figure. */
    static String of(FieldSchema field, String written) {
        boolean figure = field.content() == Content.FIGURE || field.content() == Content.FIGURES;
        if (!figure || field.description().in() == Dimension.COUNT) {
            return "";
        }
        String unit = unitOf(written);
        return unit.isEmpty() ? unitOf(field.example()) : unit;
    }

    private static String unitOf(String figure) {
        return figure.replaceAll("\\s*(\\+/-|±).*", "")
                .replaceAll("^" + NUMBER + "\\s*", "")
                .strip();
    }

    /** A figure without the unit beside the box, where it is its own and that of its tolerance. */
    static String without(String unit, String written) {
        if (unit.isEmpty()) {
            return written;
        }
        String bare = Pattern.compile("(?<=[0-9])\\s*" + Pattern.quote(unit) + "(?=$|\\s*(\\+/-|±))")
                .matcher(written)
                .replaceAll("");
        return bare.matches(BARE) && UnitBeside.of(unit, bare).replace(" ", "").equals(written.replace(" ", ""))
                ? bare
                : written;
    }

    /** What was worked out, as a person would say it: no more than four digits that count. */
    static String rounded(String figures) {
        return FINE.matcher(figures).replaceAll(fine -> new BigDecimal(fine.group())
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString());
    }
}
