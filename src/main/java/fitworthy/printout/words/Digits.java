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
     * A measure's kind with the digits in which its value, its limit and what lies between are printed: as few as show on
     * which side of the limit it is.
     */
    public static MeasureKind kind(Measure measure) {
        double margin = measure.getHeadroom();
        return margin < 0
                ? passed(measure.kind(), margin, measure.getTolerance())
                : finer(measure.kind(), finer -> crosses(measure.getValue(), measure.getLimit(), -1, finer));
    }

    /**
     * The kind with the digits in which what a limit is passed by is printed, by the excess alone, so that it has one number
     * wherever it stands: enough to show it, and one more where the usual ones would make more of it than it is.
     *
     * @param margin below zero
     */
    static MeasureKind passed(MeasureKind kind, double margin, double tolerance) {
        MeasureKind shown = finer(kind, finer -> printsAsZero(margin, finer));
        boolean nearest = written(margin, shown).equals(written(shown.printed(margin, -1), shown));
        return nearest || isCoarse(tolerance, shown) ? shown : shown.finer();
    }

    /** Whether one more digit would say more than is known. */
    private static boolean isCoarse(double tolerance, MeasureKind kind) {
        return tolerance / Dimension.size(kind.unit()) >= COARSE * Math.pow(10, -kind.decimals());
    }

    /**
     * A measure and its limit as they are printed wherever no check says more of them: what is held against a limit is
     * never printed below what it is, what is over never below and what is left never above; the limit is what makes the
     * sum come out, so less than one digit off. With more digits where a limit is passed, or kept, by less than the usual
     * ones show, or where these would make more of what is over than it is.
     *
     * @param kind with these digits
     * @param value not a number where it is not known, as for the two that follow
     * @param left negative by how much the limit is passed
     * @param customary the limit as the sheet has it in pounds or inches; empty where it has neither
     */
    public record Held(MeasureKind kind, double value, double limit, double left, String customary) {

        public static Held of(Measure measure) {
            MeasureKind kind = Digits.kind(measure);
            // Kept by less than any digit shows: to the nearest one the two are alike.
            boolean alike = measure.getHeadroom() >= 0 && crosses(measure.getValue(), measure.getLimit(), -1, kind);
            double value = alike ? kind.printed(measure.getValue()) : kind.printed(measure.getValue(), 1);
            double left = kind.printed(measure.getHeadroom(), -1);
            return new Held(
                    kind,
                    value,
                    Double.isNaN(left) ? kind.printed(measure.getLimit(), -1) : value + left,
                    left,
                    measure.customaryLimit());
        }

        /** The same with a limit that is printed once for several loadings: the value makes the sum come out. */
        public static Held ofOneLimit(Measure measure) {
            Held held = of(measure);
            double limit = held.kind.printed(measure.getLimit(), -1);
            return new Held(held.kind, limit - held.left, limit, held.left, held.customary);
        }

        /** Each with the unit. */
        public String valueText() {
            return text(value);
        }

        public String limitText() {
            return text(limit) + Wording.beside(customary);
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
     * a limit is passed by less than the usual digits show, and one more where a remedy names the margin and the usual
     * digits would make more of it than it is.
     */
    public static MeasureKind kind(Judged judged, Comparison comparison) {
        MeasureKind kind = judged.measure().kind();
        if (comparison.margin() >= 0) {
            return finer(kind, finer -> crosses(comparison.value(), comparison.limit(), stricter(judged), finer));
        }
        return asksForMargin(judged)
                ? passed(kind, comparison.margin(), comparison.tolerance())
                : finer(
                        kind,
                        finer -> printsAsZero(comparison.margin(), finer)
                                || printsAsZero(
                                        inDigits(judged, comparison, finer).margin(), finer));
    }

    /** Whether what is kept would print as passed, were value and limit each printed to the safe side. */
    private static boolean crosses(double value, double limit, int stricter, MeasureKind kind) {
        double left = stricter * (kind.printed(value, -stricter) - kind.printed(limit, stricter));
        return left < 0 && !printsAsZero(left, kind);
    }

    /** The way to which a limit gets stricter: 1 for what has to be at least so much. */
    private static int stricter(Judged judged) {
        return judged.card().atLeast() ? 1 : -1;
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
     * side stands what is kept, and what the card's remedy names, so that doing as it says is enough. A margin that is kept
     * or named is rounded itself, and the limit makes the sum come out; where the remedy names that too, the value does.
     */
    public static Comparison asPrinted(Judged judged, Comparison each) {
        return inDigits(judged, each, kind(judged, each));
    }

    private static Comparison inDigits(Judged judged, Comparison each, MeasureKind kind) {
        String remedy = judged.card().remedy();
        int stricter = stricter(judged);
        boolean passed = each.margin() < 0;
        double nearest = kind.printed(each.value());
        double safe = kind.isBothWays() ? nearest : kind.printed(each.value(), -stricter);
        if (passed && (kind.isBothWays() || !asksForMargin(judged))) {
            double value = remedy.contains("{enough}") ? safe : nearest;
            double limit = remedy.contains("{limit}") || asksForMargin(judged)
                    ? kind.printed(each.limit(), stricter)
                    : kind.printed(each.limit());
            return printed(each, value, limit, stricter * (value - limit));
        }
        if (!passed && crosses(each.value(), each.limit(), stricter, kind)) {
            // Kept by less than any digit shows: to the nearest one the two are alike.
            return printed(each, nearest, nearest, 0);
        }
        double between = kind.printed(each.margin(), -1);
        boolean byLimit = passed && remedy.contains("{limit}") && !remedy.contains("{enough}");
        double value = byLimit ? kind.printed(each.limit(), stricter) + stricter * between : safe;
        return printed(each, value, value - stricter * between, between);
    }

    /** Whether the remedy says to take off, or to add, what the limit is passed by. */
    private static boolean asksForMargin(Judged judged) {
        return judged.card().remedy().contains("{margin}");
    }

    private static Comparison printed(Comparison each, double value, double limit, double margin) {
        return new Comparison(value, limit, margin, each.valueTolerance(), each.limitTolerance(), each.against());
    }

    static boolean printsAsZero(double margin, MeasureKind kind) {
        return Math.abs(margin) / Dimension.size(kind.unit()) < Math.pow(10, -kind.decimals()) / 2;
    }
}
