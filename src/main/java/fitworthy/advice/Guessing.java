package fitworthy.advice;

import fitworthy.advice.Outcome.DoesNotApply;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Held;
import fitworthy.advice.Outcome.Met;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.advice.Outcome.Reason;
import fitworthy.figures.measure.Measure;
import fitworthy.quantity.Mark;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Guesses;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Tells what of an advice rests on guesses: what does not come out just so once these are left out. What a figure left
 * out leads to is what the rules know best, so that no figure has to carry along how it came about.
 */
final class Guessing {

    private final Advice advice;
    private final List<Missing> guesses;
    private final BiFunction<Predicate<Missing>, Runs, Advice> without;
    private final Runs sureRuns;
    private final Map<Outcome.Key, Outcome> sure;
    private final Map<Missing, Map<Refigured.Key, Measure>> figuresWithoutOne = new HashMap<>();
    private final Map<Set<Missing>, Map<Outcome.Key, Outcome>> withoutSome = new HashMap<>();
    /** What comes of the book's figures alone; null until it is asked for. */
    private Map<Refigured.Key, Measure> usualAlone;

    /**
     * @param before what another sheet came to without its guesses, not much unlike this one
     * @param without what is advised with the guesses that match left out, after runs that it may build on
     */
    Guessing(Advice advice, List<Missing> guesses, Runs before, BiFunction<Predicate<Missing>, Runs, Advice> without) {
        this.advice = advice;
        this.guesses = guesses;
        this.without = without;
        Advice left = without.apply(guess -> true, before);
        this.sureRuns = left.runs();
        this.sure = left.byKey();
    }

    /** The advice with what rests on guesses told apart, and on which, which is found out when somebody asks. */
    Advice told() {
        return apart(outcome -> new LateList<>(() -> restsOn(outcome)));
    }

    /** The same without saying on which, for which the sheet would be looked at many times. */
    Advice apart() {
        return apart(outcome -> List.of());
    }

    private Advice apart(Function<Outcome, List<Missing>> naming) {
        List<Met> met = new ArrayList<>();
        List<Held> held = new ArrayList<>();
        for (Met each : advice.met()) {
            if (isSure(each)) {
                met.add(each);
            } else {
                held.add(Held.of(each, naming.apply(each)));
            }
        }
        Map<Outcome.Key, Outcome> said = advice.byKey();
        sure.values().forEach(outcome -> {
            if (outcome instanceof NotAssessed open && isPutAway(said.get(outcome.key()))) {
                held.add(Held.of(open, among(open.missing())));
            }
        });
        Map<Outcome.Key, List<Missing>> found = new LinkedHashMap<>();
        List<Finding> findings = new ArrayList<>();
        List<NotAssessed> open = new ArrayList<>(advice.notAssessed());
        for (Finding finding : advice.findings()) {
            if (isSure(finding)) {
                findings.add(finding);
            } else if (isOfTheBookAlone(finding)) {
                open.add(new NotAssessed(finding.judged(), new LateList<>(() -> restsOn(finding))));
            } else {
                findings.add(finding);
                found.put(finding.key(), naming.apply(finding));
            }
        }
        return new Advice(
                advice.sheet(),
                advice.book(),
                advice.loadings(),
                findings,
                met,
                held,
                open.size() == advice.notAssessed().size()
                        ? advice.notAssessed()
                        : open.stream().sorted(NotAssessed.GRAVEST_FIRST).toList(),
                advice.doesNotApply().stream()
                        .filter(off -> !(isPutAway(off) && sure.get(off.key()) instanceof NotAssessed))
                        .toList(),
                advice.waivers(),
                advice.facts(),
                found,
                advice.runs(),
                sureRuns);
    }

    /**
     * Whether no figure of what was found is the sheet's own: the book does not find fault with what it filled in itself,
     * it asks.
     */
    private boolean isOfTheBookAlone(Finding finding) {
        if (usualAlone == null) {
            usualAlone = guesses.stream().anyMatch(guess -> guess.mark() == Mark.USUAL)
                    ? Refigured.of(advice, Guesses.usualAlone(advice.sheet()))
                    : Map.of();
        }
        Measure measure = finding.judged().measure();
        Measure alone = usualAlone.get(Refigured.Key.of(measure));
        return alone != null && figures(alone).equals(figures(measure));
    }

    /** Whether the question does not arise, where nothing worse was found instead. */
    private static boolean isPutAway(Outcome outcome) {
        return outcome == null || outcome instanceof DoesNotApply off && off.reason() != Reason.SAID_ALREADY;
    }

    private boolean isSure(Outcome outcome) {
        return isLike(outcome, sure.get(outcome.key()));
    }

    private static boolean isLike(Outcome outcome, Outcome other) {
        return other != null
                && other.getClass() == outcome.getClass()
                && figures(outcome.judged().measure())
                        .equals(figures(other.judged().measure()));
    }

    private static List<Object> figures(Measure measure) {
        return List.of(
                measure.getWord(),
                measure.getValue(),
                measure.getLimit(),
                measure.getValueTolerance(),
                measure.getLimitTolerance());
    }

    /**
     * The guesses that an outcome lacks without any of them, and those each of which changes its figures; where there is
     * none of either, a few that change together what becomes of it. The figures are asked first, since no rule is run for
     * them.
     */
    private synchronized List<Missing> restsOn(Outcome outcome) {
        List<Missing> lacking = sure.get(outcome.key()) instanceof NotAssessed open ? among(open.missing()) : List.of();
        List<Missing> named = guesses.stream()
                .filter(guess -> lacking.contains(guess) || changesFigures(guess, outcome))
                .toList();
        if (!named.isEmpty()) {
            return named;
        }
        return least(guesses, some -> changes(some, outcome));
    }

    private boolean changesFigures(Missing guess, Outcome outcome) {
        Measure measure = outcome.judged().measure();
        Measure other = figuresWithoutOne
                .computeIfAbsent(guess, one -> Refigured.of(advice, Guesses.leftOut(advice.sheet(), one::equals)))
                .get(Refigured.Key.of(measure));
        // That things share a place, and so its error, is no reason to ask for its height.
        return other == null
                || !measure.getWord().equals(other.getWord())
                || Double.compare(measure.getValue(), other.getValue()) != 0
                || Double.compare(measure.getLimit(), other.getLimit()) != 0;
    }

    /**
     * Few of some guesses that change an outcome together, as all of them do: halves are tried first, then what of
     * either half is needed beside the other.
     */
    private static List<Missing> least(List<Missing> some, Predicate<List<Missing>> changes) {
        if (some.size() < 2) {
            return some;
        }
        List<Missing> first = some.subList(0, some.size() / 2);
        List<Missing> second = some.subList(some.size() / 2, some.size());
        if (changes.test(first)) {
            return least(first, changes);
        }
        if (changes.test(second)) {
            return least(second, changes);
        }
        List<Missing> of = least(first, part -> changes.test(both(part, second)));
        return both(of, least(second, part -> changes.test(both(of, part))));
    }

    private static List<Missing> both(List<Missing> some, List<Missing> others) {
        return Stream.concat(some.stream(), others.stream()).toList();
    }

    private boolean changes(List<Missing> some, Outcome outcome) {
        Set<Missing> left = Set.copyOf(some);
        return !isLike(
                outcome,
                withoutSome
                        .computeIfAbsent(left, these -> without.apply(these::contains, advice.runs())
                                .byKey())
                        .get(outcome.key()));
    }

    private List<Missing> among(List<Missing> missing) {
        return guesses.stream()
                .filter(guess -> missing.stream().anyMatch(one -> one.path().equals(guess.path())))
                .toList();
    }
}
