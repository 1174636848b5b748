package fitworthy.advice;

import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Check;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.book.Book;
import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.towing.HitchMeasures;
import fitworthy.quantity.Missing;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What is left of a limit in each loading. Of the mass limits, which every loading is held against, and of the other
 * ratings that the verdict tells of: few enough rows to be read.
 *
 * @param limit what has the limit and what it is called, such as {@code vehicle: GVM}
 * @param kind of what is held against it
 * @param outcomes what came of it by load case; a case is absent where it was not assessed
 * @param guessed the load cases of these in which that rests on guesses
 * @param atLeast those in which more may be passed, since not all of it is known
 * @param close those in which it is passed, or kept, by less than can be known
 */
public record Margin(
        String limit,
        MeasureKind kind,
        Map<String, Assessed> outcomes,
        Set<String> guessed,
        Set<String> atLeast,
        Set<String> close) {

    private static final String TOWING = "towing";

    /** What a rating limits; that a weighing differs from the parts by more than its tolerance is no such limit. */
    private static final Set<MeasureKind> LIMITED = Set.of(
            LoadMeasures.LOADED,
            LoadMeasures.AXLE,
            LoadMeasures.COMBINED,
            LoadMeasures.ROOF,
            LoadMeasures.ROOF_AT_REST,
            HitchMeasures.BALL);

    /** What is left by load case, in the unit used inside; negative where the limit is passed. */
    public Map<String, Double> left() {
        Map<String, Double> left = new LinkedHashMap<>();
        outcomes.forEach((loadCase, outcome) -> left.put(loadCase, margin(outcome)));
        return left;
    }

    /** The same in the loading that leaves least. */
    public double least() {
        return margin(worst());
    }

    /** What came of it in that loading. */
    public Assessed worst() {
        return Collections.min(outcomes.values(), Comparator.comparingDouble(Margin::margin));
    }

    private static double margin(Assessed outcome) {
        return outcome.comparison().orElseThrow().margin();
    }

    /** Those of the advice, by the name of the limit. */
    static List<Margin> all(Advice advice) {
        SortedMap<String, Margin> margins = new TreeMap<>();
        Set<Check> ratings = Ratings.of(advice).told();
        Set<String> told = new HashSet<>();
        Stream.<List<? extends Assessed>>of(advice.findings(), advice.met(), advice.held())
                .flatMap(List::stream)
                .filter(outcome -> (isOfMass(outcome) || ratings.contains(outcome.check()))
                        && outcome.comparison().isPresent())
                .forEach(outcome -> {
                    MeasureKind kind = outcome.judged().measure().kind();
                    String limit = outcome.judged().subject() + ": " + kind.limitMeaning();
                    Margin margin = margins.computeIfAbsent(
                            limit,
                            none -> new Margin(
                                    limit,
                                    kind,
                                    new LinkedHashMap<>(),
                                    new HashSet<>(),
                                    new HashSet<>(),
                                    new HashSet<>()));
                    if (ratings.contains(outcome.check())) {
                        told.add(limit);
                    }
                    boolean guessed = advice.isGuessed(outcome);
                    loadings(outcome, advice).forEach(loadCase -> {
                        Comparison compared = outcome.comparison().orElseThrow();
                        margin.outcomes.putIfAbsent(loadCase, outcome);
                        if (compared.uncertain()) {
                            margin.close.add(loadCase);
                        }
                        if (outcome.judged().measure().isAtLeast()) {
                            margin.atLeast.add(loadCase);
                        }
                        if (guessed) {
                            margin.guessed.add(loadCase);
                        }
                    });
                });
        leaveOneOfBall(margins.values(), told);
        return List.copyOf(margins.values());
    }

    /** The ball has limits of vehicle, tow bar and coupling: the closest stands for them, beside those the verdict tells of. */
    private static void leaveOneOfBall(Collection<Margin> margins, Set<String> told) {
        margins.stream()
                .filter(margin -> margin.kind == HitchMeasures.BALL)
                .min(Comparator.comparingDouble(Margin::least)
                        .thenComparing(margin -> !margin.limit.startsWith("vehicle")))
                .ifPresent(closest -> margins.removeIf(margin ->
                        margin.kind == HitchMeasures.BALL && margin != closest && !told.contains(margin.limit)));
    }

    /** What the loading does not change holds in all of them; of a trailer in those that tow it. */
    private static List<String> loadings(Outcome outcome, Advice advice) {
        String loadCase = outcome.judged().loadCase();
        boolean ofTrailer = Book.topic(outcome.judged().id()).equals(TOWING);
        return !loadCase.isEmpty()
                ? List.of(loadCase)
                : advice.loadings().stream()
                        .filter(loading -> !ofTrailer || loading.towing() || TrailerRoom.isLeftUntowed(advice))
                        .map(loading -> loading.loadCase().name())
                        .toList();
    }

    /** What is missing to know what is left of the mass limits, in the order of the rules. */
    public static List<Missing> waitsFor(Advice advice) {
        return advice.notAssessed().stream()
                .filter(Margin::isOfMass)
                .flatMap(outcome -> outcome.missing().stream())
                .distinct()
                .toList();
    }

    private static boolean isOfMass(Outcome outcome) {
        return outcome.judged().card().againstLimit()
                && LIMITED.contains(outcome.judged().measure().kind());
    }
}
