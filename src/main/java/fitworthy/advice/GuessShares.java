package fitworthy.advice;

import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Refigured.Key;
import fitworthy.figures.measure.Measure;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Guesses;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * How much of the spread of what was compared each guess of the sheet brings: by how much its variance falls once that
 * guess is known to the last digit. Only the figures are worked out anew for that, no rule is run, and nothing before
 * somebody asks.
 */
public final class GuessShares {

    private final Advice advice;
    private final Map<Missing, Map<Key, Measure>> withoutOne = new LinkedHashMap<>();
    private Map<Key, Measure> withoutAny;

    private GuessShares(Advice advice) {
        this.advice = advice;
    }

    /** Those of everything that is said of a sheet. */
    public static GuessShares in(Advice advice) {
        return new GuessShares(advice);
    }

    /**
     * What each guess brings of an outcome's spread.
     *
     * @return shares of the variance of the margin, the greatest first, together no more than 1; what is left comes from
     *     what is stated. None for a guess that brings nothing, nor where nothing was compared
     */
    public Map<Missing, Double> of(Assessed outcome) {
        double variance = outcome.comparison().map(GuessShares::variance).orElse(0.0);
        if (variance == 0) {
            return Map.of();
        }
        workOut();
        double together = Math.max(0, variance - variance(outcome, withoutAny));
        Map<Missing, Double> parts = new HashMap<>();
        withoutOne.forEach((guess, measures) -> {
            double part = variance - variance(outcome, measures);
            if (part > variance * 1e-9) {
                parts.put(guess, part);
            }
        });
        double sum = parts.values().stream().mapToDouble(part -> part).sum();
        // Tolerances that were not added as the root of squares: the differences would come to more than all of them.
        double scale = Math.min(1, together / sum) / variance;
        return parts.entrySet().stream()
                .sorted(Map.Entry.<Missing, Double>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(part -> part.getKey().path()))
                .collect(Collectors.toMap(
                        Map.Entry::getKey, part -> part.getValue() * scale, (one, other) -> one, LinkedHashMap::new));
    }

    private static double variance(Comparison comparison) {
        return comparison.tolerance() * comparison.tolerance();
    }

    /** The same of what the outcome compares, in other figures; as it is where these do not give it. */
    private static double variance(Assessed outcome, Map<Key, Measure> measures) {
        Measure measure = measures.getOrDefault(
                Key.of(outcome.judged().measure()), outcome.judged().measure());
        double limit = outcome.judged().card().againstLimit() ? measure.getLimitTolerance() : 0;
        return measure.getValueTolerance() * measure.getValueTolerance() + limit * limit;
    }

    private void workOut() {
        if (withoutAny == null) {
            withoutAny = figures(guess -> true);
            Guesses.figures(advice.sheet()).forEach(guess -> withoutOne.put(guess, figures(guess::equals)));
        }
    }

    private Map<Key, Measure> figures(Predicate<Missing> settled) {
        return Refigured.of(advice, Guesses.settled(advice.sheet(), settled));
    }
}
