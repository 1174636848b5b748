package fitworthy.printout.words;

import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.book.Practice;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.quantity.QuantityText;
import fitworthy.source.Words;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Figures as people write them, and cards with their placeholders filled. */
public final class Wording {

    /** That a limit is just kept. */
    public static final String NOTHING = "nothing to spare";

    /** One within a word; before a number it is a minus sign, between numbers it stands in a date. */
    private static final Pattern HYPHEN = Pattern.compile("(?<=[a-z])-");

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^}]*)\\}");

    /** Where a sentence ends and another begins. */
    private static final Pattern FIRST_SENTENCE = Pattern.compile("(?<=[.?!]) +(?=[A-Z0-9])");

    /** The unit of a share of something. */
    private static final String SHARE = "%";

    /** So many letters may two names of loadings have to stand beside each other. */
    private static final int TWO_NAMES = 30;

    private static final String HOUSE = " (house value)";
    /** Behind the id of a practice value that is a share: so much of the limit. */
    private static final String OF_LIMIT = " of limit";

    private Wording() {}

    /** A number in the measure's unit with two digits more than people are shown, for programs. */
    public static double exact(double value, MeasureKind kind) {
        return Double.parseDouble(Digits.number(value, kind.unit(), kind.decimals() + 2));
    }

    /** Before a number that is the least that it can be. */
    public static String atLeast(Measure measure) {
        return measure.isAtLeast() ? "at least " : "";
    }

    /** A measure's value with its unit, or its word. */
    public static String value(Measure measure) {
        return !measure.isKnown()
                ? "not known"
                : measure.kind().unit().isEmpty() && !measure.getWord().isEmpty()
                        ? HYPHEN.matcher(measure.getWord()).replaceAll(" ")
                        : atLeast(measure) + Digits.quantity(measure.getValue(), measure.kind());
    }

    /** A practice value with its unit, with as many digits as it needs and no more. */
    public static String value(Practice practice) {
        return QuantityText.shown(practice.value(), practice.unit());
    }

    /** The same, as it is recorded too, and marked where a house set it. */
    public static String marked(Practice practice) {
        return recorded(practice) + (practice.house().isPresent() ? HOUSE : "");
    }

    /** The same, in pounds, inches or miles too where it is recorded so, as the law or a plate says it. */
    public static String recorded(Practice practice) {
        return value(practice) + beside(QuantityText.customary(practice.entry().value()));
    }

    /** Behind a figure, what it is in pounds, inches or miles where it is written so. @param customary empty where not */
    static String beside(String customary) {
        return customary.isEmpty() ? "" : " (" + customary + ")";
    }

    /** What was compared, in one line: value and limit, each with its own tolerance, and by how much. */
    public static String comparison(Judged judged, Comparison comparison) {
        String against =
                judged.measure().kind().meaning() + " " + value(judged, comparison) + ", " + limit(judged, comparison);
        // Where none is allowed all of it is too much.
        return noneAllowed(judged, comparison)
                ? against
                : against + ": " + margin(judged, comparison) + (comparison.uncertain() ? "; too close to call" : "");
    }

    /**
     * The same in short: the value, and by how much it passes or keeps the limit; of a share or a bare number the limit
     * itself.
     */
    public static String brief(Judged judged, Comparison comparison) {
        String value = atLeast(judged.measure()) + part(judged, comparison, Comparison::value) + ", ";
        if (isShare(judged.measure().kind())) {
            return value + bareLimit(judged, comparison) + (comparison.house() ? HOUSE : "");
        }
        return value
                + (noneAllowed(judged, comparison)
                        ? limit(judged, comparison)
                        : margin(judged, comparison) + (comparison.house() ? HOUSE : ""));
    }

    /** Whether it is so much of something, or so many: a number of which nobody knows what it is. */
    private static boolean isShare(MeasureKind kind) {
        return kind.unit().isEmpty() || kind.unit().equals(SHARE);
    }

    /** The same without what lies between: the value and what it is held against. */
    public static String figureAndLimit(Judged judged, Comparison comparison) {
        return figureAndLimit(judged, comparison, "");
    }

    /** The same. @param per what stands behind the value, as in " a day" */
    public static String figureAndLimit(Judged judged, Comparison comparison, String per) {
        return part(judged, comparison, Comparison::value) + per + ", " + bareLimit(judged, comparison);
    }

    /** The value that was compared, with its tolerance. */
    public static String value(Judged judged, Comparison comparison) {
        return atLeast(judged.measure())
                + part(judged, comparison, Comparison::value)
                + eitherWay(comparison.valueTolerance(), judged.measure().kind());
    }

    /** What it was held against, with the tolerance that it has where it is worked out too. */
    public static String limit(Judged judged, Comparison comparison) {
        return bareLimit(judged, comparison)
                + (noneAllowed(judged, comparison)
                        ? ""
                        : eitherWay(
                                comparison.limitTolerance(), judged.measure().kind()))
                + (comparison.house() ? HOUSE : "");
    }

    private static String bareLimit(Judged judged, Comparison comparison) {
        return noneAllowed(judged, comparison)
                ? "none allowed"
                : (judged.card().againstLimit()
                                ? judged.measure().kind().limitMeaning()
                                : judged.card().atLeast() ? "at least" : "at most")
                        + " "
                        + part(judged, comparison, Comparison::limit);
    }

    /** One of the figures that were compared, beside it what it is in the unit that limit or value is written in. */
    private static String part(Judged judged, Comparison comparison, ToDoubleFunction<Comparison> part) {
        return Digits.quantity(
                        part.applyAsDouble(Digits.asPrinted(judged, comparison)), Digits.kind(judged, comparison))
                + customary(judged, comparison, part);
    }

    private static String enough(Judged judged, Comparison comparison) {
        return Digits.enough(judged, comparison, Digits.kind(judged, comparison))
                + inCustomary(judged, comparison, kind -> Digits.enough(judged, comparison, kind));
    }

    private static String customary(Judged judged, Comparison comparison, ToDoubleFunction<Comparison> part) {
        return inCustomary(
                judged,
                comparison,
                kind -> Digits.quantity(part.applyAsDouble(Digits.inDigits(judged, comparison, kind)), kind));
    }

    private static String inCustomary(Judged judged, Comparison comparison, Function<MeasureKind, String> figure) {
        return Digits.customary(judged, comparison)
                .map(kind -> Digits.kind(judged, comparison, kind))
                .map(kind -> beside(figure.apply(kind)))
                .orElse("");
    }

    private static boolean noneAllowed(Judged judged, Comparison comparison) {
        return comparison.limit() == 0
                && !judged.card().againstLimit()
                && !judged.card().atLeast();
    }

    /** A measure's value with its tolerance, or that it is not known. */
    public static String within(Measure measure) {
        return value(measure) + (measure.isKnown() ? spread(measure) : "");
    }

    /** The tolerance of a measure's value as it stands behind it; empty where its usual digits show none. */
    public static String spread(Measure measure) {
        return eitherWay(measure.getValueTolerance(), measure.kind());
    }

    /** The tolerance of a measure's value in its usual digits. */
    public static String tolerance(Measure measure) {
        return Digits.quantity(measure.getValueTolerance(), measure.kind());
    }

    /** A tolerance behind its figure, in the measure's usual digits, as far as these show one. */
    private static String eitherWay(double tolerance, MeasureKind kind) {
        return Digits.printsAsZero(tolerance, kind) ? "" : " +/- " + Digits.quantity(tolerance, kind);
    }

    /** The tolerance of the margin; empty where the measure's usual digits show none. */
    public static String spread(Judged judged, Comparison comparison) {
        return eitherWay(comparison.tolerance(), judged.measure().kind()).strip();
    }

    /**
     * The loading in which it is worst, and the others with what it comes to there: one by name where there is room, else
     * how many.
     *
     * @param all what one check came to, the worst among it
     * @param amount what it comes to in a loading, empty where nothing is compared
     */
    public static <O extends Assessed> String loadings(
            O worst, List<? extends O> all, Function<? super O, String> amount) {
        String loading = worst.judged().loadCase();
        List<? extends O> others = all.stream()
                .filter(other -> !other.judged().loadCase().equals(loading))
                .toList();
        boolean alike = others.stream().map(amount).allMatch(amount.apply(worst)::equals);
        if (others.isEmpty()) {
            return loading;
        }
        String name = others.get(0).judged().loadCase();
        return others.size() == 1 && loading.length() + name.length() <= TWO_NAMES
                ? loading + "; " + (alike ? "also" : amount.apply(others.get(0))) + closer(worst, others.get(0)) + name
                : loading + (alike ? " and " + others.size() + " more" : "; less in " + others.size());
    }

    /** Between what it comes to in another loading and its name: that less is known there than in the worst. */
    private static String closer(Assessed worst, Assessed other) {
        return isTooClose(other) && !isTooClose(worst) ? ", " + TooClose.WORDS + ", " : " ";
    }

    private static boolean isTooClose(Assessed one) {
        return one.comparison().filter(Comparison::tooClose).isPresent();
    }

    /** How much is spare, or by how much the limit is passed; of shares in percentage points. */
    public static String margin(Judged judged, Comparison comparison) {
        if (isNothing(judged, comparison)) {
            return NOTHING;
        }
        String spare = comparison.margin() >= 0 ? " spare" : missed(judged);
        return atLeast(judged.measure()) + amount(judged, comparison) + spare;
    }

    /** Behind what lies between: on which side of its limit it is. */
    private static String missed(Judged judged) {
        return judged.card().atLeast() ? " short" : " over";
    }

    /** The margin alone, without a sign; of what is not known whole it is the least. */
    public static String amount(Judged judged, Comparison comparison) {
        return difference(Math.abs(Digits.asPrinted(judged, comparison).margin()), Digits.kind(judged, comparison))
                + customary(judged, comparison, Wording::between);
    }

    private static double between(Comparison comparison) {
        return Math.abs(comparison.margin());
    }

    /** What lies between two values of a measure, with its unit; between two shares it is in percentage points. */
    public static String difference(double value, MeasureKind kind) {
        if (!kind.unit().equals(SHARE)) {
            return Digits.quantity(value, kind);
        }
        String number = Digits.number(value, SHARE, kind.decimals());
        return number + (number.equals("1") ? " percentage point" : " percentage points");
    }

    /** A margin without words, negative where the limit is passed; to the safe side, as what may be added is. */
    public static String margin(double margin, MeasureKind kind) {
        MeasureKind shown = Digits.finer(kind, finer -> margin < 0 && Digits.printsAsZero(margin, finer));
        return Digits.quantity(shown.printed(margin, -1), shown);
    }

    /** By how much a limit is passed, as each finding of it says, without a sign. */
    public static String over(double margin, double tolerance, MeasureKind kind) {
        MeasureKind shown = Digits.passed(kind, margin, tolerance);
        return Digits.quantity(shown.printed(-margin, 1), shown);
    }

    /** Whether a limit is kept, but by nothing that is printed. */
    public static boolean isNothing(Assessed outcome) {
        return isNothing(outcome.judged(), outcome.comparison().orElseThrow());
    }

    private static boolean isNothing(Judged judged, Comparison comparison) {
        return comparison.margin() >= 0
                && Digits.printsAsZero(Digits.asPrinted(judged, comparison).margin(), Digits.kind(judged, comparison));
    }

    /** Whether a margin is kept, but by nothing that is printed. */
    public static boolean isNothing(double margin, MeasureKind kind) {
        return margin >= 0 && Digits.printsAsZero(kind.printed(margin, -1), kind);
    }

    /** What is left of a limit, negative where it is passed: by what the finding says. */
    public static String margin(Assessed outcome) {
        Comparison compared = outcome.comparison().orElseThrow();
        return (compared.margin() < 0 ? "-" : "") + amount(outcome.judged(), compared);
    }

    /** The same without a sign: what is spare stands alone, what is passed is so much over, or short where it is too little. */
    public static String spareOrOver(Assessed outcome) {
        String margin = margin(outcome);
        return outcome.comparison().orElseThrow().margin() < 0
                ? margin.substring(1) + missed(outcome.judged())
                : margin;
    }

    /** What to do. */
    public static String remedy(Finding finding) {
        return fill(finding.judged().card().remedy(), finding);
    }

    /** What to do in short: the first sentence of the remedy. */
    public static String order(Finding finding) {
        return FIRST_SENTENCE.split(remedy(finding), 2)[0];
    }

    /** Whether what to do says of what. */
    public static boolean isOrderOfSubject(Finding finding) {
        return Words.small(order(finding)).contains(Words.small(finding.judged().subject()));
    }

    /** What a check would say if it found something; its figure may not be known yet. */
    public static String title(Judged judged) {
        String title = judged.card().title();
        return begun(fill(
                judged.measure().isKnown() ? title : title.replace("{value}", "so much"),
                judged,
                Optional.empty(),
                List.of(),
                List.of()));
    }

    /** A card's text with its placeholders filled from what came of the rule. */
    public static String fill(String text, Assessed outcome) {
        return begun(part(text, outcome));
    }

    /** The same as a part of a sentence, beginning as it is written. */
    public static String part(String text, Assessed outcome) {
        return fill(text, outcome.judged(), outcome.comparison(), outcome.evidence(), outcome.practice());
    }

    private static String begun(String text) {
        return text.isEmpty() ? "" : Words.capital(text);
    }

    private static String fill(
            String text,
            Judged judged,
            Optional<Comparison> comparison,
            List<Measure> evidence,
            List<Practice> practice) {
        Matcher matcher = PLACEHOLDER.matcher(text);
        StringBuilder filled = new StringBuilder();
        while (matcher.find()) {
            matcher.appendReplacement(
                    filled,
                    Matcher.quoteReplacement(placeholder(matcher.group(1), judged, comparison, evidence, practice)));
        }
        matcher.appendTail(filled);
        return filled.toString();
    }

    private static String placeholder(
            String name,
            Judged judged,
            Optional<Comparison> compared,
            List<Measure> evidence,
            List<Practice> practice) {
        return switch (name) {
            case "subject" -> judged.subject();
            case "case" -> judged.loadCase();
            case "value" ->
                compared.map(raw -> part(judged, raw, Comparison::value)).orElseGet(() -> value(judged.measure()));
            case "enough" -> compared.map(raw -> enough(judged, raw)).orElseGet(() -> value(judged.measure()));
            case "limit" ->
                compared.map(raw -> part(judged, raw, Comparison::limit) + (raw.house() ? HOUSE : ""))
                        .orElse("the limit");
            case "margin", "left" ->
                compared.map(raw -> part(judged, raw, Wording::between)).orElse("the difference");
            default ->
                evidence.stream()
                        .filter(measure -> measure.getName().equals(name))
                        .findFirst()
                        .map(Wording::value)
                        .or(() -> practice.stream()
                                .filter(value -> name.equals(value.id() + OF_LIMIT))
                                .findFirst()
                                .flatMap(share -> compared.map(raw -> Digits.quantity(
                                        share.value()
                                                * Digits.asPrinted(judged, raw).limit(),
                                        Digits.kind(judged, raw)))))
                        .or(() -> practice.stream()
                                .filter(value -> value.id().equals(name))
                                .findFirst()
                                .map(Wording::marked))
                        .orElse(name);
        };
    }
}
