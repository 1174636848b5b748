package fitworthy.advice;

import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Check;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.book.Book;
import fitworthy.book.House.SetSeverity;
import fitworthy.book.Severity;
import fitworthy.quantity.Missing;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whether vehicle and trailer, loaded as planned, stay within what they are rated for: masses, axles, roof, tyres, wheels,
 * coupling and towing. Neither a waiver nor a milder severity that a house sets changes a rating.
 *
 * @param assessed each rating in the loading that is worst for it: one that surely passes it, else one in which that is
 *     too close to call, else the one that leaves least
 * @param close those that are passed, or kept, by less than can be known, in the loading that leaves least so; where one
 *     is surely passed elsewhere, only if it may be kept here
 * @param least the one of which least is left, in that loading; nothing where none could be checked
 * @param unchecked what could not be checked of them, in every loading
 * @param later what passes, or keeps by less than can be known, a limit of the vehicle once things are used up on the way, in
 *     the loading that is worst for it
 */
public record Ratings(
        List<Assessed> assessed,
        List<Assessed> close,
        Optional<Assessed> least,
        List<NotAssessed> unchecked,
        List<Assessed> later) {

    private static final Set<String> TOPICS = Set.of("mass", "towing", "tyres");
    private static final Set<String> UNITS = Set.of("kg", "kN");

    /** Those of a sheet. */
    public static Ratings of(Advice advice) {
        List<Assessed> all = Stream.<List<? extends Assessed>>of(advice.findings(), advice.met(), advice.held())
                .flatMap(List::stream)
                .<Assessed>map(outcome -> outcome)
                .filter(outcome ->
                        isRating(advice, outcome) && outcome.comparison().isPresent())
                .sorted(Comparator.comparing(Ratings::compared, Comparison.WORST_FIRST))
                .toList();
        Map<Check, Assessed> worst = new LinkedHashMap<>();
        all.forEach(outcome -> worst.putIfAbsent(outcome.check(), outcome));
        Map<Check, Assessed> close = new LinkedHashMap<>();
        all.stream()
                .filter(outcome -> compared(outcome).uncertain())
                .filter(outcome -> margin(outcome) >= 0
                        || compared(worst.get(outcome.check())).uncertain())
                .forEach(outcome -> close.putIfAbsent(outcome.check(), outcome));
        return new Ratings(
                List.copyOf(worst.values()),
                List.copyOf(close.values()),
                all.stream().min(Comparator.comparingDouble(Ratings::margin)),
                advice.notAssessed().stream()
                        .filter(outcome -> isRating(advice, outcome))
                        .toList(),
                later(advice));
    }

    private static List<Assessed> later(Advice advice) {
        Map<Check, Assessed> worst = new LinkedHashMap<>();
        advice.findings().stream()
                .filter(finding -> finding.judged().card().againstLimit()
                        && finding.judged().measure().kind().state().onTheWay()
                        && UNITS.contains(finding.judged().measure().kind().unit())
                        && finding.comparison()
                                .filter(compared -> compared.margin() < 0 || compared.uncertain())
                                .isPresent())
                .sorted(Comparator.comparing(Ratings::compared, Comparison.WORST_FIRST))
                .forEach(finding -> worst.putIfAbsent(finding.check(), finding));
        return List.copyOf(worst.values());
    }

    /** How many ratings could not be checked. */
    public long open() {
        return unchecked.stream().map(Outcome::check).distinct().count();
    }

    /** What somebody can bring so that they can be. */
    public List<Missing> missing() {
        return unchecked.stream()
                .flatMap(outcome -> outcome.waitsFor().stream())
                .filter(figure -> !figure.isInBook())
                .distinct()
                .toList();
    }

    /** Those that are passed, surely or not, the one that is passed by most first. */
    public List<Assessed> passed() {
        return assessed.stream()
                .filter(outcome -> margin(outcome) < 0)
                .sorted(Comparator.comparingDouble(Ratings::margin))
                .toList();
    }

    /** Those that are passed or close, and the one of which least is left. */
    Set<Check> told() {
        return Stream.of(passed(), close, least.stream().toList())
                .flatMap(List::stream)
                .map(Outcome::check)
                .collect(Collectors.toSet());
    }

    private static double margin(Assessed outcome) {
        return compared(outcome).margin();
    }

    private static Comparison compared(Assessed outcome) {
        return outcome.comparison().orElseThrow();
    }

    private static boolean isRating(Advice advice, Outcome outcome) {
        String id = outcome.judged().id();
        SetSeverity set = advice.book().house().severities().get(id);
        Severity severity = set == null ? outcome.judged().card().severity().value() : set.recorded();
        return severity == Severity.STOP
                && outcome.judged().card().againstLimit()
                && TOPICS.contains(Book.topic(id))
                && UNITS.contains(outcome.judged().measure().kind().unit());
    }
}
