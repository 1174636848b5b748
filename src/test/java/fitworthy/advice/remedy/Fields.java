package fitworthy.advice.remedy;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Mark;
import fitworthy.quantity.QuantityText;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.DoubleUnaryOperator;

/** A field of a sheet's text with another figure in it. */
final class Fields {

    private Fields() {}

    /** @param exact whether what was a tolerance of the old figure is none of the new one */
    static Node.Mapping changed(
            Node.Mapping tree, NodePath path, DoubleUnaryOperator change, String unit, boolean exact) {
        String now = path.in(tree) instanceof Node.Scalar scalar ? scalar.text() : "0 " + unit;
        Figure figure = parsed(now, unit);
        double tolerance = exact ? 0 : figure.tolerance();
        return Trees.with(
                tree,
                path,
                written(change.applyAsDouble(figure.value()), unit)
                        + (unit.isEmpty() || !exact && !now.contains("+/-") ? "" : " +/- " + written(tolerance, unit)));
    }

    static Figure parsed(String text, String unit) {
        try {
            return QuantityText.parse(
                    Mark.read(text).text(), unit.isEmpty() ? Dimension.COUNT : Dimension.ofUnit(unit));
        } catch (QuantityText.Unreadable e) {
            throw new AssertionError(e);
        }
    }

    static String written(double value, String unit) {
        String number = new BigDecimal(value / Dimension.size(unit), new MathContext(12))
                .setScale(9, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
