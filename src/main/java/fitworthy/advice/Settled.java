package fitworthy.advice;

import fitworthy.advice.Outcome.Check;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What answers settled: what became of checks that waited for a figure or rested on a guess.
 *
 * @param found what is found now, and was not or on a guess
 * @param cleared what was found before and is no more
 * @param inOrder checks that are in order now
 * @param off checks whose question does not arise any more
 * @param raised checks that wait or rest on a guess now, and did not
 * @param made checks that waited for information and are made now, though they rest on a guess
 * @param foundOnGuess what is found now on a guess, and was not found
 * @param fewerMissing how many figures less are missing; below zero where more are
 */
public record Settled(
        Stakes found,
        Stakes cleared,
        Stakes inOrder,
        Stakes off,
        Stakes raised,
        Stakes made,
        Stakes foundOnGuess,
        long fewerMissing) {

    /** What is settled after some answers and was not before them. */
    public static Settled of(Advice before, Advice after) {
        Set<Check> wasOpen = checks(open(before));
        Set<Check> isOpen = checks(open(after));
        Set<Check> wasFound = checks(before.findings().stream());
        Set<Check> isFound = checks(after.findings().stream());
        Set<Check> isMet = checks(after.met().stream());
        Set<Check> waited = checks(before.notAssessed().stream());
        Set<Check> waits = checks(after.notAssessed().stream());
        Predicate<Outcome> settled = outcome -> wasOpen.contains(outcome.check()) && !isOpen.contains(outcome.check());
        Predicate<Outcome> found = outcome -> isFound.contains(outcome.check());
        return new Settled(
                Stakes.of(after.findings().stream()
                        .filter(outcome -> !isOpen.contains(outcome.check())
                                && (wasOpen.contains(outcome.check()) || !wasFound.contains(outcome.check())))),
                Stakes.of(before.findings().stream().filter(found.negate())),
                Stakes.of(after.met().stream().filter(settled.and(found.negate()))),
                Stakes.of(open(before)
                        .filter(settled.and(found.negate()))
                        .filter(outcome -> !isMet.contains(outcome.check()))),
                Stakes.of(open(after).filter(outcome -> !wasOpen.contains(outcome.check()))),
                Stakes.of(open(after)
                        .filter(outcome -> waited.contains(outcome.check()) && !waits.contains(outcome.check()))),
                Stakes.of(after.findings().stream()
                        .filter(outcome -> isOpen.contains(outcome.check()) && !wasFound.contains(outcome.check()))),
                missing(before) - missing(after));
    }

    /** How many checks were settled. */
    public int count() {
        return found.checks().size() + inOrder.checks().size() + off.checks().size();
    }

    private static long missing(Advice advice) {
        return Counts.of(advice, any -> true).figuresMissing();
    }

    private static Stream<Outcome> open(Advice advice) {
        return Stream.of(
                        advice.notAssessed(),
                        advice.held(),
                        advice.findings().stream()
                                .filter(finding -> advice.guesses().containsKey(finding.key()))
                                .toList())
                .flatMap(List::stream);
    }

    private static Set<Check> checks(Stream<? extends Outcome> outcomes) {
        Set<Check> checks = new HashSet<>();
        outcomes.forEach(outcome -> checks.add(outcome.check()));
        return checks;
    }
}
