package fitworthy.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A number in the unit used inside (see {@link Dimension}) with its tolerance, or the list of what is missing to know
 * it. Arithmetic carries both: what is missing stays missing, and tolerances of independent figures add as the root of
 * the sum of squares (the first-order law of propagation in JCGM 100:2008, the GUM, clause 5.1.2; cited from memory).
 * Where one figure enters a formula twice the operators would count its tolerance wrongly: such formulas are written
 * out.
 */
public final class Figure {

    public static final Figure ZERO = of(0);

    /** As many as a figure is compared by: the last bit of a binary fraction must not turn a verdict at a limit. */
    private static final MathContext DIGITS = new MathContext(10);

    private static final double TEN_DIGITS = 1e10;
    /** Powers of ten that a double holds exactly. */
    private static final double[] POWERS = IntStream.range(0, 23)
            .mapToDouble(i -> Double.parseDouble("1e" + i))
            .toArray();
    /** So far from a half that the rounding of the product cannot have decided: that is some 1e-6 of a digit. */
    private static final double NO_TIE = 0.499;

    /** What is less than this share of two figures is no difference between them. */
    private static final double LAST_DIGIT = 1e-10;

    private static final double LEAST_SQUARES = 1e-280;
    private static final double MOST_SQUARES = 1e280;

    private final double value;
    private final double tolerance;
    private final Lack lack;
    private final Missing guessed;
    private final String customary;

    private Figure(double value, double tolerance, Lack lack) {
        this(value, tolerance, lack, null, "");
    }

    private Figure(double value, double tolerance, Lack lack, Missing guessed, String customary) {
        this.value = value;
        this.tolerance = tolerance;
        this.lack = lack;
        this.guessed = guessed;
        this.customary = customary;
    }

    /** A number whose tolerance was not given. */
    public static Figure of(double value) {
        return new Figure(value, Double.NaN, Lack.NOTHING);
    }

    /** @param tolerance half the width of the interval the number lies in, in the number's own unit */
    public static Figure of(double value, double tolerance) {
        return new Figure(value, tolerance, Lack.NOTHING);
    }

    public static Figure missing(Missing... missing) {
        return missing(List.of(missing));
    }

    public static Figure missing(List<Missing> missing) {
        return lacking(Lack.of(missing));
    }

    /** A number, or what is missing to know it. */
    static Figure of(double value, double tolerance, Lack lack) {
        return lack == Lack.NOTHING ? of(value, tolerance) : lacking(lack);
    }

    private static Figure lacking(Lack lack) {
        return new Figure(Double.NaN, Double.NaN, lack);
    }

    /** This figure as what somebody guesses stands in a field. What is worked out of it is no guess by itself. */
    public Figure guessedFor(Missing field) {
        return new Figure(value, tolerance, lack, field, customary);
    }

    /** This figure as it is written in a unit that is not printed, like {@code 500 lb}. What is worked out of it is not. */
    public Figure writtenAs(String text) {
        return new Figure(value, tolerance, lack, guessed, text);
    }

    /** As it is written in pounds, inches, feet or miles an hour; empty where it is not, or was worked out. */
    public String customary() {
        return customary;
    }

    /** The field for which it was guessed; nothing where it was stated or worked out. */
    public Optional<Missing> guess() {
        return Optional.ofNullable(guessed);
    }

    /** How what stands in the field was meant; what was worked out counts as stated. */
    public Mark mark() {
        return guessed == null ? Mark.STATED : guessed.mark();
    }

    public boolean known() {
        return lack == Lack.NOTHING;
    }

    /** @return the number; not a number where it is not known */
    public double value() {
        return value;
    }

    /**
     * A number to the ten digits that figures are compared by, as decimals round it. They are asked only
     * where the eleventh digit may be a tie: asked for every number they took a warm batch of 976 sheets from 2 s of
     * processor time to 4 s.
     */
    public static double rounded(double number) {
        // Most figures are whole already; adding zero takes the sign off a zero, as the decimals do.
        if (Math.rint(number) == number && Math.abs(number) < TEN_DIGITS) {
            return number + 0.0;
        }
        int decimals = 9 - (int) Math.floor(Math.log10(Math.abs(number)));
        if (decimals >= 0 && decimals < POWERS.length) {
            // Whole number and power of ten are exact, so that their quotient is the number nearest to the decimals.
            double digits = number * POWERS[decimals];
            double whole = Math.rint(digits);
            if (Math.abs(digits - whole) < NO_TIE
                    && Math.abs(digits) >= TEN_DIGITS / 10
                    && Math.abs(whole) < TEN_DIGITS) {
                return whole / POWERS[decimals];
            }
        }
        return Double.isFinite(number) ? new BigDecimal(number).round(DIGITS).doubleValue() : number;
    }

    /** Whether it is more than another in ten digits; not where either is missing, as for all that follow. */
    public boolean isAbove(Figure other) {
        // Rounding keeps the order: what is not above before is not above after.
        return value > other.value && rounded(value) > rounded(other.value);
    }

    public boolean isBelow(Figure other) {
        return other.isAbove(this);
    }

    public boolean isAtMost(Figure other) {
        return value <= other.value || rounded(value) <= rounded(other.value);
    }

    public boolean isAtLeast(Figure other) {
        return other.isAtMost(this);
    }

    /** Whether it is at most another, however far both may be off; not where either is missing. */
    public boolean isSurelyWithin(Figure most) {
        return rounded(value + tolerance()) <= rounded(most.value - most.tolerance());
    }

    /** Whether it is nothing, as a difference is of what agrees in ten digits. */
    public boolean isZero() {
        return value == 0;
    }

    /** @return the tolerance, 0 where none was given */
    public double tolerance() {
        return Double.isNaN(tolerance) ? 0 : tolerance;
    }

    /** Whether a tolerance was given. */
    public boolean hasTolerance() {
        return !Double.isNaN(tolerance);
    }

    public List<Missing> missing() {
        return lack.list();
    }

    Lack lack() {
        return lack;
    }

    /** This figure, with a tolerance of {@code share} of itself where it was given none. */
    public Figure orTolerance(double share) {
        return Double.isNaN(tolerance) && known() ? within(Math.abs(value) * share) : this;
    }

    /** This figure, with a tolerance in its own unit where it was given none. */
    public Figure orWithin(double width) {
        return Double.isNaN(tolerance) && known() ? within(width) : this;
    }

    /** This figure, known to the last digit. */
    public Figure exact() {
        return known() ? within(0) : this;
    }

    private Figure within(double width) {
        return new Figure(value, width, lack, null, customary);
    }

    /** This figure, or {@code other} where it is not known. */
    public Figure or(Figure other) {
        return known() ? this : other;
    }

    public Figure plus(Figure other) {
        return combined(other, sum(value, other.value), 1, 1);
    }

    public Figure minus(Figure other) {
        return combined(other, sum(value, -other.value), 1, -1);
    }

    /** Two numbers added: nothing where they cancel to ten digits, as 3 in and 76.2 mm do not quite in binary fractions. */
    public static double sum(double one, double other) {
        double sum = one + other;
        return Math.abs(sum) <= LAST_DIGIT * Math.max(Math.abs(one), Math.abs(other)) ? 0 : sum;
    }

    public Figure times(Figure other) {
        return combined(other, value * other.value, other.value, value);
    }

    public Figure times(double factor) {
        return known() ? of(value * factor, tolerance() * Math.abs(factor)) : this;
    }

    public Figure dividedBy(Figure other) {
        return combined(other, value / other.value, 1 / other.value, -value / (other.value * other.value));
    }

    /** The smaller of the two values, with its tolerance. */
    public Figure least(Figure other) {
        return missingWith(other, value <= other.value ? this : other);
    }

    /** The larger of the two values, with its tolerance. */
    public Figure most(Figure other) {
        return missingWith(other, value >= other.value ? this : other);
    }

    /** {@code result} where this and {@code other} are known, else what they lack together. */
    public Figure missingWith(Figure other, Figure result) {
        return known() && other.known() ? result : lacking(lack.with(other.lack));
    }

    private Figure combined(Figure other, double result, double slope, double otherSlope) {
        return missingWith(other, of(result, root(slope * tolerance(), otherSlope * other.tolerance())));
    }

    /** The root of the sum of squares, the careful and slow way only where a square is hardly a double any more. */
    static double root(double one, double other) {
        double squares = one * one + other * other;
        return squares > LEAST_SQUARES && squares < MOST_SQUARES || one == 0 && other == 0
                ? Math.sqrt(squares)
                : Math.hypot(one, other);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof Figure other
                && Double.compare(value, other.value) == 0
                && Double.compare(tolerance, other.tolerance) == 0
                && missing().equals(other.missing());
    }

    @Override
    public int hashCode() {
        return Double.hashCode(value) * 31 + missing().hashCode();
    }

    @Override
    public String toString() {
        return known() ? value + " +/- " + tolerance() : "missing " + missing();
    }
}
