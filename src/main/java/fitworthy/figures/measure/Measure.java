package fitworthy.figures.measure;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Mark;
import fitworthy.quantity.Missing;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * An answer, or what is missing to give one. Rule files match on its properties: {@code name}, {@code subject},
 * {@code known}, {@code word}, {@code value}, {@code limit}, {@code headroom}, {@code excess}, {@code spare} and
 * {@code tolerance}.
 */
public final class Measure {

    private final MeasureKind kind;
    private final String subject;
    private final String loadCase;
    private final Figure figure;
    private final Figure limit;
    private final double value;
    private final double limitValue;
    private final String word;
    private final Mark mark;
    private final List<Missing> missing;
    private final List<Working> workings;
    private final boolean atLeast;

    private Measure(
            MeasureKind kind,
            String subject,
            Figure figure,
            Figure limit,
            String word,
            Mark mark,
            List<Missing> missing) {
        this.kind = kind;
        this.subject = subject;
        this.loadCase = "";
        this.figure = figure;
        this.limit = limit;
        this.value = figure == null ? Double.NaN : Figure.rounded(figure.value());
        this.limitValue = limit == null ? Double.NaN : Figure.rounded(limit.value());
        this.word = word;
        this.mark = mark;
        this.missing = missing;
        this.workings = List.of();
        this.atLeast = false;
    }

    private Measure(Measure measure, String loadCase, List<Working> workings, boolean atLeast) {
        this.kind = measure.kind;
        this.subject = measure.subject;
        this.loadCase = loadCase;
        this.figure = measure.figure;
        this.limit = measure.limit;
        this.value = measure.value;
        this.limitValue = measure.limitValue;
        this.word = measure.word;
        this.mark = measure.mark;
        this.missing = measure.missing;
        this.workings = workings;
        this.atLeast = atLeast;
    }

    /** A number. */
    public static Measure of(MeasureKind kind, String subject, Figure figure) {
        Figure number = number(kind, figure);
        return new Measure(kind, subject, number, null, "", number.mark(), number.missing());
    }

    /** A number and the limit it must not pass. */
    public static Measure of(MeasureKind kind, String subject, Figure figure, Figure limit) {
        Figure number = number(kind, figure);
        Figure most = number(kind, limit);
        return new Measure(
                kind,
                subject,
                number,
                most,
                "",
                number.mark(),
                number.missingWith(most, number).missing());
    }

    /**
     * The figure, or that it is missing where a division by zero left no number: no comparison with that would ever
     * fire.
     */
    private static Figure number(MeasureKind kind, Figure figure) {
        return !figure.known() || Double.isFinite(figure.value()) && Double.isFinite(figure.tolerance())
                ? figure
                : Figure.missing(new Missing(
                        kind.name(),
                        kind.meaning() + ", for which the figures of the sheet give no number",
                        "the figures it hangs on, one of which is far off"));
    }

    /**
     * The least number that would pass: rounded up to the digits it is printed with, so that what is printed passes.
     */
    public static Measure enough(MeasureKind kind, String subject, Figure figure) {
        return of(kind, subject, toPrintedDigit(kind, figure, 1));
    }

    /** The greatest number that would pass, rounded down. */
    public static Measure most(MeasureKind kind, String subject, Figure figure) {
        return of(kind, subject, toPrintedDigit(kind, figure, -1));
    }

    private static Figure toPrintedDigit(MeasureKind kind, Figure figure, int way) {
        return figure.known() ? Figure.of(kind.printed(figure.value(), way), figure.tolerance()) : figure;
    }

    /** An answer in a word. */
    public static Measure of(MeasureKind kind, String subject, Choice<?> choice) {
        return choice.known()
                ? new Measure(
                        kind,
                        subject,
                        null,
                        null,
                        Words.hyphenated(choice.value().name()),
                        choice.mark(),
                        List.of())
                : of(kind, subject, "", List.of(choice.missing()));
    }

    /** An answer in a word of a table, or what is missing to look it up. */
    public static Measure of(MeasureKind kind, String subject, String word, List<Missing> missing) {
        return new Measure(kind, subject, null, null, word, Mark.STATED, missing);
    }

    /**
     * This measure, or what it lacks where an answer on which its question hangs was not given: a question that may arise
     * is asked.
     */
    public Measure given(Choice<?>... answers) {
        List<Missing> lacking = Stream.of(answers)
                .filter(answer -> !answer.known())
                .<Missing>map(Choice::missing)
                .distinct()
                .toList();
        if (lacking.isEmpty()) {
            return this;
        }
        Figure none = figure == null ? null : Figure.missing(lacking);
        return new Measure(
                new Measure(kind, subject, none, limit, "", Mark.STATED, lacking), loadCase, workings, false);
    }

    /**
     * This measure; where its number is not known and what is known of it passes the limit already, that: no figure that
     * is missing may soften it.
     *
     * @param least the least that the number can be
     */
    public Measure atLeast(Figure least) {
        if (isKnown()) {
            return this;
        }
        Measure known = of(kind, subject, least, limit);
        return known.isKnown() && known.getHeadroom() < 0 ? new Measure(known, loadCase, workings, true) : this;
    }

    /** The same measure, whose number is the least that it can be. @param least whether it is */
    public Measure asLeast(boolean least) {
        return new Measure(this, loadCase, workings, least);
    }

    /** Whether its number is the least that it can be, and the rest of it is not known. Not for rules. */
    public boolean isAtLeast() {
        return atLeast;
    }

    /** The same measure, as it holds in a load case. */
    public Measure in(String loadCase) {
        return new Measure(this, loadCase, workings, atLeast);
    }

    /**
     * The same measure, with a formula that its number, its limit or a figure named in an earlier formula comes from.
     */
    public Measure worked(String formula, Working.Input... inputs) {
        return worked(new Working.Formula(formula, List.of(inputs)));
    }

    public Measure worked(Working... further) {
        if (workings.isEmpty()) {
            return new Measure(this, loadCase, List.of(further), atLeast);
        }
        List<Working> all = new ArrayList<>(workings);
        all.addAll(List.of(further));
        return new Measure(this, loadCase, List.copyOf(all), atLeast);
    }

    public MeasureKind kind() {
        return kind;
    }

    public String getName() {
        return kind.name();
    }

    /** What it is about: an axle, a part, a mirror. */
    public String getSubject() {
        return subject;
    }

    /** The load case it holds in; empty for a measure of the plan. */
    public String getLoadCase() {
        return loadCase;
    }

    public boolean isKnown() {
        return missing.isEmpty();
    }

    public List<Missing> missing() {
        return missing;
    }

    /** How its number and its limit were worked out; empty where the sheet gives them. Not for rules. */
    public List<Working> workings() {
        return workings;
    }

    /** The answer in a word; empty for a number. */
    public String getWord() {
        return word;
    }

    /** How its number or word was meant, where it is just what the sheet gives; stated otherwise. Not for rules. */
    public Mark mark() {
        return mark;
    }

    /** How its own limit was meant; the same. Not for rules. */
    public Mark limitMark() {
        return limit == null ? Mark.STATED : limit.mark();
    }

    /** Its own limit, or else its value, as the sheet has it in a unit that is not printed alone; empty where it has none. Not for rules. */
    public String customary() {
        return limit != null && !limit.customary().isEmpty()
                ? limit.customary()
                : figure == null ? "" : figure.customary();
    }

    /** The number in the unit used inside; not a number where it is not known or is a word. */
    public double getValue() {
        return value;
    }

    public boolean hasLimit() {
        return limit != null;
    }

    /** Its own limit in the unit used inside; not a number where it has none. */
    public double getLimit() {
        return limitValue;
    }

    /** Limit less value: how much is left; negative by how much it is exceeded. */
    public double getHeadroom() {
        return limitValue - value;
    }

    /** Value less limit: by how much the limit is passed; negative by how much is left. */
    public double getExcess() {
        // Not the headroom negated: the engine takes a negative zero for less than zero.
        return value - limitValue;
    }

    /** Headroom as a share of the limit. */
    public double getSpare() {
        return getHeadroom() / limitValue;
    }

    /** Tolerance of the headroom, or of the value where there is no limit, in the unit used inside. */
    public double getTolerance() {
        return Figure.rounded(Math.hypot(getValueTolerance(), getLimitTolerance()));
    }

    /** Tolerance of the value alone, in the unit used inside; 0 where it is a word or not known. Not for rules. */
    public double getValueTolerance() {
        return figure == null || !isKnown() ? 0 : figure.tolerance();
    }

    /** Tolerance of its own limit alone; 0 where it has none or is not known. Not for rules. */
    public double getLimitTolerance() {
        return limit == null || !isKnown() ? 0 : limit.tolerance();
    }

    /** Whether it says the same of the same thing, however it was worked out: then no rule can tell the two apart. */
    public boolean isLike(Measure other) {
        return kind == other.kind
                && subject.equals(other.subject)
                && loadCase.equals(other.loadCase)
                && word.equals(other.word)
                && missing.equals(other.missing)
                && atLeast == other.atLeast
                && hasLimit() == other.hasLimit()
                && isSame(value, other.value)
                && isSame(limitValue, other.limitValue)
                && isSame(getValueTolerance(), other.getValueTolerance())
                && isSame(getLimitTolerance(), other.getLimitTolerance());
    }

    private static boolean isSame(double one, double other) {
        return Double.compare(one, other) == 0;
    }

    @Override
    public String toString() {
        return kind.name() + " [" + subject + (loadCase.isEmpty() ? "" : ", " + loadCase) + "] = "
                + (figure == null ? word : figure) + (limit == null ? "" : " of " + limit);
    }
}
