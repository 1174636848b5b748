package fitworthy.counter.plan;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Mark;
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
        return bare.matches(BARE) && with(unit, bare).replace(" ", "").equals(written.replace(" ", ""))
                ? bare
                : written;
    }

    /** A figure as typed with the unit beside the box, where it was typed without any; a mark before it stays. */
    static String with(String unit, String typed) {
        Mark.Marked read = Mark.read(typed.strip());
        String text = read.text();
        return read.mark().isGuess() && !text.isEmpty()
                ? read.mark().before(bare(unit, text))
                : bare(unit, typed.strip());
    }

    private static String bare(String unit, String text) {
        if (unit.isEmpty() || !text.matches(BARE)) {
            return text;
        }
        String[] parts = text.split("\\s*(\\+/-|±)\\s*");
        String value = parts[0] + " " + unit;
        return parts.length < 2 ? value : value + " +/- " + parts[1] + (parts[1].endsWith("%") ? "" : " " + unit);
    }

    /** What was worked out, as a person would say it: no more than four digits that count. */
    static String rounded(String figures) {
        return FINE.matcher(figures).replaceAll(fine -> new BigDecimal(fine.group())
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString());
    }
}
