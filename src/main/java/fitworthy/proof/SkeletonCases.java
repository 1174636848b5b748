package fitworthy.proof;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.engine.RuleEngine;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.printout.words.Digits;
import fitworthy.proof.Cases.Case;
import fitworthy.proof.SkeletonText.Limit;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.QuantityText;
import fitworthy.source.FaultsException;
import fitworthy.usual.Filling;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/** The cases of a new rule in one region, made of those that its topic has. */
final class SkeletonCases {

    /** How near to the limit the two cases have to come, as a share of it. */
    private static final double NEAR = 0.05;

    private final RuleEngine engine;
    private final SkeletonCase first;
    private final SkeletonCase before;
    private final String rule;
    private final MeasureKind kind;
    private final Limit limit;
    private final List<Seen> seen = new ArrayList<>();

    /** A case of the topic as it comes out in the region on the first day. @param measures those of the kind judged */
    private record Seen(Case original, Advice advice, List<Measure> measures) {

        List<Measure> known() {
            return measures.stream().filter(Measure::isKnown).toList();
        }

        /** Whether a finding stands against the measure, so that no other rule on it is called met. */
        boolean found(MeasureKind kind) {
            return advice.findings().stream()
                    .anyMatch(finding -> finding.judged().measure().getName().equals(kind.name()));
        }

        boolean answers(String word) {
            return known().stream().anyMatch(measure -> measure.getWord().equals(word));
        }
    }

    /** A value and the cases next to it on both its sides. */
    private record Between(double value, String text, Seen over, Seen within) {}

    /** What begins in the region. @param cases their text */
    record Begun(String value, String cases) {}

    /**
     * @param cases those of the rule's topic
     * @param from the day from which the rule holds
     */
    SkeletonCases(
            Path folder,
            RuleEngine engine,
            List<Case> cases,
            String region,
            LocalDate from,
            String rule,
            MeasureKind kind,
            Limit limit)
            throws FaultsException {
        this.engine = engine;
        this.first = new SkeletonCase(folder, region, from);
        this.before = new SkeletonCase(folder, region, from.minusDays(1));
        this.rule = rule;
        this.kind = kind;
        this.limit = limit;
        for (Case each : cases) {
            Advice advice = advice(first, each);
            seen.add(new Seen(
                    each,
                    advice,
                    advice.measures().values().stream()
                            .flatMap(List::stream)
                            .filter(measure -> measure.getName().equals(kind.name()))
                            .distinct()
                            .toList()));
        }
    }

    private Advice advice(SkeletonCase on, Case each) throws FaultsException {
        return Adviser.advise(engine, Filling.sheet(on.sheet(each), engine.book(), new ArrayList<>()));
    }

    /** The id of the region. */
    String id() {
        return first.region();
    }

    /** Whether a case of the topic has the measure. */
    boolean known() {
        return seen.stream().anyMatch(shown -> !shown.known().isEmpty());
    }

    /** The answer to ask for where the measure is one in a word: a no, which is most often the fault, else the first. */
    Optional<String> word() {
        List<String> words = seen.stream()
                .flatMap(shown -> shown.known().stream())
                .map(Measure::getWord)
                .filter(word -> !word.isEmpty())
                .toList();
        return words.contains("no") ? Optional.of("no") : words.stream().findFirst();
    }

    /**
     * A value with a case close by on each side, the one in which it is passed once more on the day before, and one in
     * which the figure is not known, where the topic has one.
     *
     * @param wanted the value; empty for one that stands between two cases
     */
    Begun number(String wanted) throws FaultsException {
        Between between = wanted.isEmpty() ? anywhere() : around(wanted);
        List<Measure> passed = passed(between.over(), between.value());
        return new Begun(
                between.text(),
                found(between.over(), "Beyond the limit of ", lines(passed, between.value()))
                        + first.text(
                                between.within().original(),
                                between.within().advice(),
                                named("Within the limit of "),
                                List.of(),
                                "met: [" + rule + "]")
                        + notKnown(shown -> passed(shown, between.value()).isEmpty())
                        + theDayBefore(between.over()));
    }

    /** The same for an answer in a word. */
    Begun answer(String word) throws FaultsException {
        Seen answered = seen.stream()
                .filter(shown -> shown.answers(word))
                .findFirst()
                .orElseThrow(() -> Refusal.of(
                        "--about",
                        "no case of the topic answers " + kind.name() + " with '" + word + "'" + region(),
                        "write a case that does first"));
        List<String> lines = answered.known().stream()
                .filter(measure -> measure.getWord().equals(word))
                .map(measure -> "{" + expected(measure) + "}")
                .toList();
        return new Begun(
                "1",
                found(answered, "Answered '" + word + "' to ", lines)
                        + notKnown(shown -> !shown.answers(word))
                        + theDayBefore(answered));
    }

    private Between around(String wanted) throws FaultsException {
        double value;
        try {
            value = QuantityText.parse(wanted, Dimension.ofUnit(kind.unit())).value();
        } catch (QuantityText.Unreadable e) {
            throw Refusal.of(
                    "--region",
                    "the value of " + id() + " " + e.getMessage(),
                    "--region \"" + id() + "=" + Dimension.ofUnit(kind.unit()).example() + "\"");
        }
        return between(value, wanted)
                .orElseThrow(() -> Refusal.of(
                        "--region",
                        "no two cases of the topic come near enough to " + wanted + region(),
                        "write two cases first, one in which " + kind.name() + " is between "
                                + shown(value - near(value)) + " and " + wanted + " and one in which it is between "
                                + wanted + " and " + shown(value + near(value))));
    }

    private Between anywhere() throws FaultsException {
        double unit = Dimension.size(kind.unit());
        for (Seen each : seen.stream()
                .filter(shown -> worst(shown).isPresent())
                .sorted(Comparator.comparingDouble(
                        shown -> Math.abs(worst(shown).getAsDouble())))
                .toList()) {
            BigDecimal rounded = BigDecimal.valueOf(worst(each).getAsDouble() / unit)
                    .setScale(kind.decimals(), limit == Limit.AT_LEAST ? RoundingMode.FLOOR : RoundingMode.CEILING);
            Optional<Between> between =
                    between(rounded.doubleValue() * unit, (rounded.toPlainString() + " " + kind.unit()).strip());
            if (between.isPresent()) {
                return between.get();
            }
        }
        throw Refusal.of(
                "--about",
                "no two cases of the topic come near enough to each other in " + kind.name()
                        + " to put a limit between them",
                "write two cases in which it differs by less than 5 % first");
    }

    private Optional<Between> between(double value, String text) {
        Optional<Seen> over = nearest(value, shown -> gap(shown, value) > 0);
        Optional<Seen> within = nearest(value, shown -> gap(shown, value) <= 0 && !shown.found(kind));
        return value > 0 && over.isPresent() && within.isPresent()
                ? Optional.of(new Between(value, text, over.get(), within.get()))
                : Optional.empty();
    }

    /** The case whose worst figure comes nearest to a value on one of its sides. */
    private Optional<Seen> nearest(double value, Predicate<Seen> side) {
        return seen.stream()
                .filter(shown -> worst(shown).isPresent() && side.test(shown))
                .filter(shown -> Math.abs(gap(shown, value)) <= near(value))
                .min(Comparator.comparingDouble(shown -> Math.abs(gap(shown, value))));
    }

    private double gap(Seen shown, double value) {
        return limit.beyond(worst(shown).getAsDouble(), value);
    }

    private OptionalDouble worst(Seen shown) {
        return limit == Limit.AT_LEAST
                ? shown.known().stream().mapToDouble(Measure::getValue).min()
                : shown.known().stream().mapToDouble(Measure::getValue).max();
    }

    /** What is counted comes no nearer than one. */
    private double near(double value) {
        return kind.unit().isEmpty() && kind.decimals() == 0 ? 1 : NEAR * value;
    }

    private String shown(double value) {
        return QuantityText.shown(value, kind.unit());
    }

    private List<Measure> passed(Seen shown, double value) {
        return shown.known().stream()
                .filter(measure -> limit.beyond(measure.getValue(), value) > 0)
                .toList();
    }

    /** Their values stand there where they are printed alike whatever the words of the card will be. */
    private List<String> lines(List<Measure> passed, double value) {
        return passed.stream()
                .map(measure -> "{" + expected(measure)
                        + (plain(value) && plain(measure.getValue())
                                ? ", value: " + Digits.quantity(measure.getValue(), kind)
                                : "")
                        + "}")
                .toList();
    }

    private String expected(Measure measure) {
        return "id: " + rule + ", " + SkeletonText.SEVERITY + ", " + SkeletonCase.expected(measure);
    }

    private boolean plain(double value) {
        return Math.abs(kind.printed(value) - value) <= 1e-9 * Math.abs(value);
    }

    private String found(Seen shown, String name, List<String> lines) {
        return first.text(shown.original(), shown.advice(), named(name), lines, "");
    }

    /** The case in which the rule fires once more, on the day before, when it does not apply. */
    private String theDayBefore(Seen shown) throws FaultsException {
        return before.text(
                shown.original(),
                advice(before, shown.original()),
                "The day before " + rule + " begins" + region(),
                List.of(),
                "does-not-apply: [" + rule + "]");
    }

    /** Nothing where no case of the topic leaves the figure out. @param silent in which the rule finds nothing */
    private String notKnown(Predicate<Seen> silent) {
        return seen.stream()
                .filter(silent)
                .flatMap(shown -> shown.measures().stream()
                        .flatMap(measure -> measure.missing().stream())
                        .filter(missing -> !missing.isInBook())
                        .map(missing -> first.text(
                                shown.original(),
                                shown.advice(),
                                "Without the figure that " + rule + " looks at" + region(),
                                List.of(),
                                "not-assessed: [{id: " + rule + ", field: " + SkeletonText.quoted(missing.path())
                                        + "}]")))
                .findFirst()
                .orElse("");
    }

    private String named(String beginning) {
        return beginning + rule + region();
    }

    private String region() {
        return " (" + engine.book().regions().get(id()).name() + ")";
    }
}
