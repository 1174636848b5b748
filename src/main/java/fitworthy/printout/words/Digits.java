package fitworthy.printout.words;

import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Judged;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.QuantityText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

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

    /** A number with its unit. */
    public static String quantity(double value, MeasureKind kind) {
        String number = number(value, kind.unit(), kind.decimals());
        String unit = number.equals("1") && kind.unit().equals("days") ? "day" : kind.unit();
        return unit.isEmpty() ? number : number + " " + unit;
    }

    /**
     * The same kind in the unit and the digits in which one of its figures is written; empty where that is printed alone.
     *
     * @param written like {@code 4100 lb}; empty where it is in a unit that is printed
     */
    private static Optional<MeasureKind> customary(MeasureKind kind, String written) {
        if (written.isEmpty()) {
            return Optional.empty();
        }
        String[] words = written.split(" ", 2);
        return Optional.of(kind.in(words[1], Math.max(0, new BigDecimal(words[0]).scale())));
    }

    /** The same where what was compared is written so: the limit, or else the value. */
    static Optional<MeasureKind> customary(Judged judged, Comparison comparison) {
        String limit = comparison
                .against()
                .map(practice -> QuantityText.customary(practice.entry().value()))
                .orElse("");
        return customary(
                judged.measure().kind(), limit.isEmpty() ? judged.measure().customary() : limit);
    }

    /**
     * A measure's kind with the digits in which its value, its limit and what lies between are printed: as few as show on
     * which side of the limit it is.
     */
    public static MeasureKind kind(Measure measure) {
        double margin = measure.getHeadroom();
        return margin < 0 ? passed(measure.kind(), margin, measure.getTolerance()) : kind(measure, measure.kind());
    }

    private static MeasureKind kind(Measure measure, MeasureKind kind) {
        return measure.getHeadroom() < 0
                ? finer(kind, finer -> printsAsZero(measure.getHeadroom(), finer))
                : finer(kind, finer -> crosses(measure.getValue(), measure.getLimit(), -1, finer));
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
     * never printed below what it is and the limit never above, so that one plate has one figure; what is over or left is
     * what lies between. With more digits where that would be a digit off, or more, as far as more is known and no other
     * unit stands beside; where a limit is passed, or kept, by less than the usual ones show; and where these would make
     * more of what is over than it is.
     *
     * @param kind with these digits
     * @param value not a number where it is not known, as for the two that follow
     * @param left negative by how much the limit is passed
     * @param beside the same in the unit that the sheet has the limit or the load in, where that is not printed alone
     */
    public record Held(MeasureKind kind, double value, double limit, double left, Optional<Held> beside) {

        public static Held of(Measure measure) {
            MeasureKind kind = Digits.kind(measure);
            Optional<Held> beside = customary(measure.kind(), measure.customary())
                    .map(other -> in(Digits.kind(measure, other), measure, Optional.empty()));
            return in(beside.isPresent() ? kind : finer(kind, finer -> isDigitOff(measure, finer)), measure, beside);
        }

        /** Whether what is left would be told a digit short, or more, as load and limit are each told to the safe side. */
        private static boolean isDigitOff(Measure measure, MeasureKind kind) {
            double left = in(kind, measure, Optional.empty()).left();
            return !isCoarse(measure.getTolerance(), kind) && measure.getHeadroom() - left > (1 - 1e-6) * kind.digit();
        }

        private static Held in(MeasureKind kind, Measure measure, Optional<Held> beside) {
            // Kept by less than any digit shows: to the nearest one the two are alike.
            boolean alike = measure.getHeadroom() >= 0 && crosses(measure.getValue(), measure.getLimit(), -1, kind);
            double limit = alike ? kind.printed(measure.getLimit()) : kind.printed(measure.getLimit(), -1);
            double value = alike ? limit : kind.printed(measure.getValue(), 1);
            return new Held(kind, value, limit, limit - value, beside);
        }

        /** Each with the unit. */
        public String valueText() {
            return text(Held::value);
        }

        public String limitText() {
            return text(Held::limit);
        }

        /** Without a sign. */
        public String leftText() {
            return text(held -> Math.abs(held.left));
        }

        private String text(ToDoubleFunction<Held> part) {
            double number = part.applyAsDouble(this);
            return Double.isNaN(number)
                    ? "not known"
                    : quantity(number, kind)
                            + beside.map(other -> " (" + other.text(part) + ")").orElse("");
        }
    }

    /**
     * The measure's kind with the digits in which what was compared is printed, all of it alike: more than usual where
     * a limit is passed by less than the usual digits show, and one more where a remedy names the margin and the usual
     * digits would make more of it than it is.
     */
    public static MeasureKind kind(Judged judged, Comparison comparison) {
        MeasureKind kind = judged.measure().kind();
        return comparison.margin() < 0 && asksForMargin(judged)
                ? passed(kind, comparison.margin(), comparison.tolerance())
                : kind(judged, comparison, kind);
    }

    /** With as few digits as show on which side of the limit it is. */
    static MeasureKind kind(Judged judged, Comparison comparison, MeasureKind kind) {
        return comparison.margin() < 0
                ? finer(
                        kind,
                        finer -> printsAsZero(comparison.margin(), finer)
                                || printsAsZero(
                                        inDigits(judged, comparison, finer).margin(), finer))
                : finer(kind, finer -> crosses(comparison.value(), comparison.limit(), stricter(judged), finer));
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

    static Comparison inDigits(Judged judged, Comparison each, MeasureKind kind) {
        int stricter = stricter(judged);
        boolean passed = each.margin() < 0;
        double nearest = kind.printed(each.value());
        if (!passed && crosses(each.value(), each.limit(), stricter, kind)) {
            // Kept by less than any digit shows: to the nearest one the two are alike.
            return printed(each, nearest, nearest, 0);
        }
        boolean bare =
                passed && !asksForMargin(judged) && !judged.card().remedy().contains("{enough}");
        double value = kind.isBothWays() || bare ? nearest : kind.printed(each.value(), -stricter);
        double limit = kind.printed(each.limit(), stricter);
        return printed(each, value, limit, stricter * (value - limit));
    }

    /** What was judged, rounded to the side on which a limit set to it is kept: what a remedy names has to be enough. */
    static String enough(Judged judged, Comparison each, MeasureKind kind) {
        return quantity(kind.printed(each.value(), -stricter(judged)), kind);
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
