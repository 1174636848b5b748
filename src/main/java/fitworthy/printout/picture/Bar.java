package fitworthy.printout.picture;

import fitworthy.figures.measure.Measure;
import fitworthy.printout.picture.Svg.Pen;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.Digits.Held;
import fitworthy.printout.words.Wording;
import java.util.List;
import java.util.Optional;

/** A bar that shows how much of its limit a measure uses. */
final class Bar {

    /** How much a bar is higher on each side beyond its limit. */
    private static final double OVER = 1;

    private Bar() {}

    /**
     * Draws it: grey up to the limit, black and higher beyond, a dashed empty frame where it is not known.
     *
     * @param most the share of the limit that the whole width stands for; what is larger ends there in a broken edge
     */
    static void draw(
            Svg svg, String part, Measure measure, double x, double y, double width, double height, double most) {
        double limit = x + width / most;
        Optional<Double> used = PictureFacts.used(measure);
        if (used.isEmpty()) {
            svg.box(part, Pen.DASHED, "none", x, y, limit - x, height);
            svg.text(Svg.SMALL, Svg.Anchor.MIDDLE, (x + limit) / 2, y + height / 2 + 2.7, "?");
        } else {
            double end = x + width / most * Math.min(Math.max(used.get(), 0), most);
            svg.box("", Pen.NONE, Svg.GREY, x, y, Math.min(end, limit) - x, height);
            svg.box(part, Pen.LINE, "none", x, y, end - x, height);
            if (end > limit) {
                svg.box("", Pen.LINE, Svg.BLACK, limit, y - OVER, end - limit, height + 2 * OVER);
            }
            if (used.get() > most) {
                svg.lines("", Pen.LINE, Svg.WHITE, end - 5, y - 1, end - 2, y + height / 2, end - 5, y + height + 1);
            }
            double tolerance = width / most * measure.getTolerance() / measure.getLimit();
            if (tolerance >= 0.5 && used.get() + tolerance / width * most < most) {
                for (Pen pen : List.of(Pen.HALO, Pen.LINE)) {
                    svg.line(pen, end - tolerance, y + height / 2, end + tolerance, y + height / 2);
                    svg.line(pen, end - tolerance, y + height / 2 - 2, end - tolerance, y + height / 2 + 2);
                    svg.line(pen, end + tolerance, y + height / 2 - 2, end + tolerance, y + height / 2 + 2);
                }
            }
        }
        svg.line(part.isEmpty() ? "" : part + "-limit", Pen.BOLD, limit, y - 2, limit, y + height + 2);
    }

    /** The value and its limit. */
    static String of(Measure measure) {
        Held held = Held.of(measure);
        return Wording.atLeast(measure) + shown(held, held.value()) + " of " + shown(held, held.limit());
    }

    private static String shown(Held held, double value) {
        return Double.isNaN(value) ? "? " + held.kind().unit() : Digits.quantity(value, held.kind());
    }

    /** What is left of the limit, or by how much it is passed. */
    static String left(Measure measure) {
        if (!measure.isKnown()) {
            return "not checked";
        }
        Held held = Held.of(measure);
        if (Wording.isNothing(measure.getHeadroom() < 0 ? -1 : held.left(), held.kind())) {
            return Wording.NOTHING;
        }
        return Wording.atLeast(measure) + held.leftText() + (measure.getHeadroom() < 0 ? " over" : " spare");
    }

    /** Whether the tolerance is large enough to turn the verdict. */
    static boolean uncertain(Measure measure) {
        return measure.isKnown() && Math.abs(measure.getHeadroom()) < measure.getTolerance();
    }

    /** The same in words: value, limit and what is left. */
    static String words(Measure measure) {
        Held held = Held.of(measure);
        return Wording.atLeast(measure) + known(held, held.value()) + " of " + known(held, held.limit())
                + ", "
                + left(measure)
                + (uncertain(measure)
                        ? " with a tolerance of " + Digits.quantity(measure.getTolerance(), measure.kind())
                        : "");
    }

    private static String known(Held held, double value) {
        return Double.isNaN(value) ? "an amount not known" : Digits.quantity(value, held.kind());
    }
}
