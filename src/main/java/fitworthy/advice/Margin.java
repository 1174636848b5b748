package fitworthy.advice;

import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Held;
import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.quantity.Missing;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What is left of a limit in each loading. Of mass limits alone: what every loading is held against, in few enough rows
 * to be read.
 *
 * @param limit what has the limit and what it is called, such as {@code vehicle: GVM}
 * @param kind of what is held against it
 * @param left by load case, in the unit used inside, negative where the limit is passed; a case is absent where it was
 *     not assessed
 * @param guessed the load cases of these in which that rests on guesses
 */
public record Margin(String limit, MeasureKind kind, Map<String, Double> left, Set<String> guessed) {

    /** What a rating limits; that a weighing differs from the parts by more than its tolerance is no such limit. */
    private static final Set<MeasureKind> LIMITED =
            Set.of(LoadMeasures.LOADED, LoadMeasures.AXLE, LoadMeasures.COMBINED, LoadMeasures.ROOF);

    /** What is left in the loading that leaves least. */
    public double least() {
        return Collections.min(left.values());
    }

    /** Those of the advice, by the name of the limit. */
    static List<Margin> all(Advice advice) {
        SortedMap<String, Margin> margins = new TreeMap<>();
        Stream.<List<? extends Assessed>>of(advice.findings(), advice.met(), advice.held())
                .flatMap(List::stream)
                .filter(outcome -> isOfMass(outcome) && outcome.comparison().isPresent())
                .forEach(outcome -> {
                    MeasureKind kind = outcome.judged().measure().kind();
                    String limit = outcome.judged().subject() + ": " + kind.limitMeaning();
                    Margin margin = margins.computeIfAbsent(
                            limit, none -> new Margin(limit, kind, new LinkedHashMap<>(), new HashSet<>()));
                    String loadCase = outcome.judged().loadCase();
                    margin.left.putIfAbsent(
                            loadCase, outcome.comparison().orElseThrow().margin());
                    if (outcome instanceof Held || advice.guesses().containsKey(outcome.key())) {
                        margin.guessed.add(loadCase);
                    }
                });
        return List.copyOf(margins.values());
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
