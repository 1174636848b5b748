package fitworthy.printout.words;

import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Judged;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.Predicate;

/** In how many digits what was compared is printed, and to which side it is rounded. */
public final class Digits {

    /** Digits beyond the usual ones by which a limit that is passed by little is told from what passes it. */
    private static final int MORE_DIGITS = 3;

    /** A tolerance of so many of the last digit makes one more digit meaningless. */
    private static final int COARSE = 10;

    private Digits() {}

    /** A number from the unit used inside, in the unit given. */
    public static String number(double value, String unit, int decimals) {
        // In ten digits, as figures are compared: a binary fraction just below a tie is the tie.
        double shown = Figure.rounded(value / Dimension.size(unit));
        // Not by a format, which looks up how a language writes its digits. A rounded zero has no sign.
        return Double.isFinite(shown)
                ? BigDecimal.valueOf(shown)
                        .setScale(decimals, RoundingMode.HALF_UP)
                        .toPlainString()
                : String.valueOf(shown);
    }

    /**
     * A measure's kind with the digits in which its value, its limit and what lies between are printed to the safe side:
     * as few as show on which side of the limit it is.
     */
    public static MeasureKind kind(Measure measure) {
        double margin = measure.getHeadroom();
        MeasureKind kind = finer(measure.kind(), finer -> {
            double printed = finer.printed(measure.getLimit(), -1) - finer.printed(measure.getValue(), 1);
            return margin < 0 ? printsAsZero(margin, finer) : printed < 0 && !printsAsZero(printed, finer);
        });
        // As a check does whose remedy names what is over.
        boolean nearest = isNearest(measure.getValue(), kind.printed(measure.getValue(), 1), kind)
                && isNearest(measure.getLimit(), kind.printed(measure.getLimit(), -1), kind);
        return margin < 0 && !nearest && !isCoarse(measure.getTolerance(), kind) ? kind.finer() : kind;
    }

    /** Whether one more digit would say more than is known. */
    private static boolean isCoarse(double tolerance, MeasureKind kind) {
        return tolerance / Dimension.size(kind.unit()) >= COARSE * Math.pow(10, -kind.decimals());
    }

    /**
     * A measure and its limit as they are printed wherever no check says more of them: what is held against a limit is
     * never printed below what it is, the limit never above, and what is left is what lies between the two. With more
     * digits where a limit is passed, or kept, by less than the usual ones show, or where these would make more of what is
     * over than it is.
     *
     * @param kind with these digits
     * @param value not a number where it is not known, as for the two that follow
     * @param left negative by how much the limit is passed
     */
    public record Held(MeasureKind kind, double value, double limit, double left) {

        public static Held of(Measure measure) {
            MeasureKind kind = Digits.kind(measure);
            double value = kind.printed(measure.getValue(), 1);
            double limit = kind.printed(measure.getLimit(), -1);
            // Kept by less than any digit shows: to the nearest one the two are alike.
            boolean crosses = measure.getHeadroom() >= 0 && value > limit;
            double shown = crosses ? kind.printed(measure.getValue()) : value;
            double most = crosses ? kind.printed(measure.getLimit()) : limit;
            return new Held(kind, shown, most, most - shown);
        }

        /** Each with the unit. */
        public String valueText() {
            return text(value);
        }

        public String limitText() {
            return text(limit);
        }

        /** Without a sign. */
        public String leftText() {
            return text(Math.abs(left));
        }

        private String text(double number) {
            return Double.isNaN(number)
                    ? "not known"
                    : Digits.number(number, kind.unit(), kind.decimals())
                            + (kind.unit().isEmpty() ? "" : " " + kind.unit());
        }
    }

    /**
     * The measure's kind with the digits in which what was compared is printed, all of it alike: more than usual where
     * a limit is passed by less than the usual digits show, and one more where a remedy names the margin and the nearest
     * usual digits would not be enough.
     */
    public static MeasureKind kind(Judged judged, Comparison comparison) {
        MeasureKind kind = finer(
                judged.measure().kind(),
                finer -> comparison.margin() < 0
                        ? printsAsZero(comparison.margin(), finer)
                                || printsAlike(inDigits(judged, comparison, finer), finer)
                        : crosses(judged, inDigits(judged, comparison, finer), finer));
        Comparison printed = inDigits(judged, comparison, kind);
        boolean nearest = isNearest(comparison.value(), printed.value(), kind)
                && isNearest(comparison.limit(), printed.limit(), kind);
        return asksForMargin(judged, comparison) && !nearest && !isCoarse(comparison.tolerance(), kind)
                ? kind.finer()
                : kind;
    }

    /** Whether the remedy says to take off, or to add, what the limit is passed by. */
    private static boolean asksForMargin(Judged judged, Comparison comparison) {
        return comparison.margin() < 0 && judged.card().remedy().contains("{margin}");
    }

    private static boolean isNearest(double value, double printed, MeasureKind kind) {
        return written(value, kind).equals(written(printed, kind));
    }

    /** Whether what is kept would print as passed. */
    private static boolean crosses(Judged judged, Comparison printed, MeasureKind kind) {
        double left = (printed.limit() - printed.value()) * (judged.card().atLeast() ? -1 : 1);
        return left < 0 && !printsAsZero(left, kind);
    }

    private static boolean printsAlike(Comparison printed, MeasureKind kind) {
        return written(printed.value(), kind).equals(written(printed.limit(), kind));
    }

    private static String written(double value, MeasureKind kind) {
        return number(value, kind.unit(), kind.decimals());
    }

    /** With as few more digits as are enough; with those that it has where a few more are not. */
    static MeasureKind finer(MeasureKind kind, Predicate<MeasureKind> tooCoarse) {
        MeasureKind finer = kind;
        for (int more = 0; more < MORE_DIGITS && tooCoarse.test(finer); more++) {
            finer = finer.finer();
        }
        return tooCoarse.test(finer) ? kind : finer;
    }

    /**
     * What was compared with each figure in the digits it is printed with, so that one quantity has one form wherever it
     * stands and the margin is what lies between the two others. What is passed is told to the nearest digit; to the safe
     * side stands what is kept, and what the card's remedy names, so that doing as it says is enough. A value of which there
     * can be too much and too little has no safe side: it is told to the nearest digit.
     */
    public static Comparison asPrinted(Judged judged, Comparison each) {
        MeasureKind kind = kind(judged, each);
        Comparison safe = inDigits(judged, each, kind);
        return each.margin() < 0 || !crosses(judged, safe, kind)
                ? safe
                // Kept by less than any digit shows: to the nearest one the two are alike.
                : new Comparison(
                        kind.printed(each.value()),
                        kind.printed(each.limit()),
                        Math.abs(kind.printed(each.limit()) - kind.printed(each.value())),
                        each.valueTolerance(),
                        each.limitTolerance(),
                        each.house());
    }

    private static Comparison inDigits(Judged judged, Comparison each, MeasureKind kind) {
        String remedy = judged.card().remedy();
        int stricter = judged.card().atLeast() ? 1 : -1;
        boolean passed = each.margin() < 0;
        // Nothing that is kept may look further from its limit than it is.
        boolean margin = !passed || asksForMargin(judged, each);
        double value = !kind.isBothWays() && (margin || remedy.contains("{enough}"))
                ? kind.printed(each.value(), -stricter)
                : kind.printed(each.value());
        double limit = margin || passed && remedy.contains("{limit}")
                ? kind.printed(each.limit(), stricter)
                : kind.printed(each.limit());
        double between = stricter * (value - limit);
        return new Comparison(
                value,
                limit,
                passed ? between : Math.max(between, 0),
                each.valueTolerance(),
                each.limitTolerance(),
                each.house());
    }

    static boolean printsAsZero(double margin, MeasureKind kind) {
        return Math.abs(margin) / Dimension.size(kind.unit()) < Math.pow(10, -kind.decimals()) / 2;
    }
}
