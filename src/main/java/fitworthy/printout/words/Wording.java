package fitworthy.printout.words;

import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.book.Practice;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.QuantityText;
import fitworthy.source.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Figures as people write them, and cards with their placeholders filled. */
public final class Wording {

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^}]*)\\}");

    /** Digits beyond the usual ones by which a limit that is passed by little is told from what passes it. */
    private static final int MORE_DIGITS = 3;

    private static final String HOUSE = " (house value)";
    /** Behind the id of a practice value that is a share: so much of the limit. */
    private static final String OF_LIMIT = " of limit";

    private Wording() {}

    /** A number from the unit used inside, in the unit given. */
    public static String number(double value, String unit, int decimals) {
        double shown = value / Dimension.size(unit);
        // Not by a format, which looks up how a language writes its digits. A rounded zero has no sign.
        return Double.isFinite(shown)
                ? BigDecimal.valueOf(shown)
                        .setScale(decimals, RoundingMode.HALF_UP)
                        .toPlainString()
                : String.valueOf(shown);
    }

    /** A number in the measure's unit with two digits more than people are shown, for programs. */
    public static double exact(double value, MeasureKind kind) {
        double scale = Math.pow(10, kind.decimals() + 2);
        return Math.round(value / Dimension.size(kind.unit()) * scale) / scale;
    }

    /** A number with its unit. */
    public static String quantity(double value, MeasureKind kind) {
        String number = number(value, kind.unit(), kind.decimals());
        String unit = number.equals("1") && kind.unit().equals("days") ? "day" : kind.unit();
        return unit.isEmpty() ? number : number + " " + unit;
    }

    /** A measure's value with its unit, or its word. */
    public static String value(Measure measure) {
        return !measure.isKnown()
                ? "not known"
                : measure.kind().unit().isEmpty() && !measure.getWord().isEmpty()
                        ? measure.getWord().replace('-', ' ')
                        : quantity(measure.getValue(), measure.kind());
    }

    /** A practice value with its unit, with as many digits as it needs and no more. */
    public static String value(Practice practice) {
        return QuantityText.shown(practice.value(), practice.unit());
    }

    /** The same, marked where a house set it. */
    public static String marked(Practice practice) {
        return value(practice) + (practice.house().isPresent() ? HOUSE : "");
    }

    /** What was compared, in one line: value and limit, each with its own tolerance, and by how much. */
    public static String comparison(Judged judged, Comparison comparison) {
        String against =
                judged.measure().kind().meaning() + " " + value(judged, comparison) + ", " + limit(judged, comparison);
        // Where none is allowed all of it is too much.
        return noneAllowed(judged, comparison)
                ? against
                : against + ": " + margin(judged, comparison)
                        + (comparison.uncertain() ? "; the tolerance could turn this" : "");
    }

    /** The value that was compared, with its tolerance. */
    public static String value(Judged judged, Comparison comparison) {
        return within(asPrinted(judged, comparison).value(), comparison.valueTolerance(), kind(judged, comparison));
    }

    /** A number with its tolerance, where that shows in the digits it is printed with. */
    private static String within(double value, double tolerance, MeasureKind kind) {
        return quantity(value, kind) + (printsAsZero(tolerance, kind) ? "" : " +/- " + quantity(tolerance, kind));
    }

    /** What it was held against, with its tolerance. */
    public static String limit(Judged judged, Comparison comparison) {
        if (noneAllowed(judged, comparison)) {
            return "none allowed" + (comparison.house() ? HOUSE : "");
        }
        return (judged.card().againstLimit()
                        ? judged.measure().kind().limitMeaning()
                        : judged.card().atLeast() ? "at least" : "at most")
                + " "
                + within(asPrinted(judged, comparison).limit(), comparison.limitTolerance(), kind(judged, comparison))
                + (comparison.house() ? HOUSE : "");
    }

    private static boolean noneAllowed(Judged judged, Comparison comparison) {
        return comparison.limit() == 0
                && !judged.card().againstLimit()
                && !judged.card().atLeast();
    }

    /** How much is left, or by how much the limit is passed. */
    public static String margin(Judged judged, Comparison comparison) {
        MeasureKind kind = kind(judged, comparison);
        double margin = asPrinted(judged, comparison).margin();
        return (printsAsZero(margin, kind) ? "none" : quantity(Math.abs(margin), kind))
                + (comparison.margin() >= 0
                        ? judged.card().atLeast() ? " to spare" : " left"
                        : judged.card().atLeast() ? " too little" : " too much");
    }

    /** A margin without words, negative where the limit is passed, rounded as one that a remedy asks for. */
    public static String margin(double margin, MeasureKind kind) {
        MeasureKind shown = finer(kind, finer -> margin < 0 && printsAsZero(margin, finer));
        return quantity(shown.printed(margin, -1), shown);
    }

    /**
     * The measure's kind with the digits in which what was compared is printed, all of it alike: more than usual where
     * a limit is passed by less than the usual digits show.
     */
    public static MeasureKind kind(Judged judged, Comparison comparison) {
        return finer(
                judged.measure().kind(),
                kind -> comparison.margin() < 0
                        && (printsAsZero(comparison.margin(), kind)
                                || printsAlike(inDigits(judged, comparison, kind), kind)));
    }

    private static boolean printsAlike(Comparison printed, MeasureKind kind) {
        return quantity(printed.value(), kind).equals(quantity(printed.limit(), kind));
    }

    /** With as few more digits as are enough; with those that it has where a few more are not. */
    private static MeasureKind finer(MeasureKind kind, Predicate<MeasureKind> tooCoarse) {
        MeasureKind finer = kind;
        for (int more = 0; more < MORE_DIGITS && tooCoarse.test(finer); more++) {
            finer = finer.finer();
        }
        return tooCoarse.test(finer) ? kind : finer;
    }

    /**
     * What was compared with each figure in the digits it is printed with, so that one quantity has one form wherever it
     * stands. To the nearest digit; but to the safe side what is left, and what the card's remedy names, so that doing as
     * it says is enough: by how much a limit is passed away from zero, what is left towards it.
     */
    public static Comparison asPrinted(Judged judged, Comparison each) {
        return inDigits(judged, each, kind(judged, each));
    }

    private static Comparison inDigits(Judged judged, Comparison each, MeasureKind kind) {
        String remedy = judged.card().remedy();
        int stricter = judged.card().atLeast() ? 1 : -1;
        return new Comparison(
                remedy.contains("{enough}") ? kind.printed(each.value(), -stricter) : each.value(),
                remedy.contains("{limit}") ? kind.printed(each.limit(), stricter) : each.limit(),
                each.margin() >= 0 || remedy.contains("{margin}") || printsAsZero(each.margin(), kind)
                        ? kind.printed(each.margin(), -1)
                        : each.margin(),
                each.valueTolerance(),
                each.limitTolerance(),
                each.house());
    }

    private static boolean printsAsZero(double margin, MeasureKind kind) {
        return Math.abs(margin) / Dimension.size(kind.unit()) < Math.pow(10, -kind.decimals()) / 2;
    }

    /** What to do. */
    public static String remedy(Finding finding) {
        return fill(finding.judged().card().remedy(), finding);
    }

    /** A card's text with its placeholders filled from what came of the rule. */
    public static String fill(String text, Assessed outcome) {
        return fill(text, outcome.judged(), outcome.comparison(), outcome.evidence(), outcome.practice());
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
        return filled.isEmpty() ? "" : Words.capital(filled.toString());
    }

    private static String placeholder(
            String name,
            Judged judged,
            Optional<Comparison> compared,
            List<Measure> evidence,
            List<Practice> practice) {
        MeasureKind kind =
                compared.map(each -> kind(judged, each)).orElse(judged.measure().kind());
        Optional<Comparison> comparison = compared.map(each -> asPrinted(judged, each));
        return switch (name) {
            case "subject" -> judged.subject();
            case "case" -> judged.loadCase();
            case "value", "enough" ->
                comparison.map(each -> quantity(each.value(), kind)).orElseGet(() -> value(judged.measure()));
            case "limit" ->
                comparison
                        .map(each -> quantity(each.limit(), kind) + (each.house() ? HOUSE : ""))
                        .orElse("the limit");
            case "margin", "left" ->
                comparison.map(each -> quantity(Math.abs(each.margin()), kind)).orElse("the difference");
            default ->
                evidence.stream()
                        .filter(each -> each.getName().equals(name))
                        .findFirst()
                        .map(Wording::value)
                        .or(() -> practice.stream()
                                .filter(each -> name.equals(each.id() + OF_LIMIT))
                                .findFirst()
                                .flatMap(share -> comparison.map(each -> quantity(share.value() * each.limit(), kind))))
                        .or(() -> practice.stream()
                                .filter(each -> each.id().equals(name))
                                .findFirst()
                                .map(Wording::marked))
                        .orElse(name);
        };
    }
}
