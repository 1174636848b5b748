package fitworthy.advice;

import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.engine.RuleEngine;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Guesses;
import fitworthy.sheet.Sheet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Tells which checks a guess can turn: those that come out otherwise where it is stated as the least or the most that it
 * may be, or as another answer, and all else stays.
 */
final class Turning {

    /** So that a sheet of guesses alone is still answered within seconds; one run is a whole look at the sheet. */
    private static final int MOST_RUNS = 150;

    private final RuleEngine engine;
    private final Advice advice;
    /** As it is before what rests on guesses is told apart, which no other sheet is looked at for. */
    private final Map<Outcome.Key, Outcome> now;

    private final GuessShares shares;
    private int runs;

    /** @param engine what the advice was given by */
    Turning(RuleEngine engine, Advice advice) {
        this.engine = engine;
        this.advice = advice;
        this.now = untold(advice.sheet());
        this.shares = GuessShares.in(advice);
    }

    /**
     * What the spread of a guess can turn.
     *
     * @param rests what rests on it: once too many guesses were tried, what of it may turn by the guess's share of the
     *     spread, and what is told in a word
     */
    Stakes by(Missing guess, Stakes rests) {
        if (runs >= MOST_RUNS) {
            Set<Outcome.Check> resting = rests.checks().stream()
                    .map(judged -> new Outcome.Check(judged.id(), judged.subject()))
                    .collect(Collectors.toSet());
            return Stakes.of(now.values().stream()
                    .filter(outcome -> resting.contains(outcome.check()) && mayTurn(outcome, guess)));
        }
        return Stakes.of(Guesses.otherwise(advice.sheet(), guess).stream().flatMap(this::turned));
    }

    private boolean mayTurn(Outcome outcome, Missing guess) {
        return !(outcome instanceof Assessed assessed)
                || assessed.comparison()
                        .map(comparison ->
                                Math.sqrt(shares.of(assessed).getOrDefault(guess, 0.0)) * comparison.tolerance()
                                        >= Math.abs(comparison.margin()))
                        .orElse(true);
    }

    private Stream<Outcome> turned(Sheet other) {
        runs++;
        Map<Outcome.Key, Outcome> then = untold(other);
        Set<Outcome.Key> keys = new LinkedHashSet<>(now.keySet());
        keys.addAll(then.keySet());
        return keys.stream()
                .filter(key -> !verdict(now.get(key)).equals(verdict(then.get(key))))
                .map(key -> Objects.requireNonNullElseGet(then.get(key), () -> now.get(key)));
    }

    private Map<Outcome.Key, Outcome> untold(Sheet sheet) {
        return Adviser.untold(engine, sheet, cases(), advice.runs()).byKey();
    }

    private Set<String> cases() {
        return Set.copyOf(advice.loadings().stream()
                .map(loading -> loading.loadCase().name())
                .toList());
    }

    /** What a reader would call another answer: found, open, or nothing in the way. @param outcome null for none */
    private static String verdict(Outcome outcome) {
        return outcome instanceof Finding ? "found" : outcome instanceof NotAssessed ? "open" : "";
    }
}
