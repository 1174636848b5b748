package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Margin;
import fitworthy.advice.Outcome.Check;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Settled;
import fitworthy.figures.plan.Loading;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What an edit changed in the advice: findings that are gone or new, what was settled, and what the axles carry more. */
public final class EditWords {

    /** Findings that are named; of more the number tells enough. */
    private static final int NAMED = 3;
    /** Half a kilogram is told, less is not. */
    private static final double LEAST_MASS = 0.5;

    private EditWords() {}

    /** The checks that found something and did not before. */
    public static Set<Check> fresh(Arrangement before, Arrangement now) {
        Set<Check> fresh = checks(now);
        fresh.removeAll(checks(before));
        return fresh;
    }

    /** In a sentence. */
    public static String of(Arrangement before, Arrangement now) {
        if (isRenamed(before.advice().sheet(), now.advice().sheet())
                && cameTo(before.advice()).equals(cameTo(now.advice()))) {
            return "Nothing in the advice changed but a name.";
        }
        List<String> parts = new ArrayList<>();
        findings(before, checks(now), "gone").ifPresent(parts::add);
        findings(now, checks(before), "new").ifPresent(parts::add);
        Settled settled = Settled.of(before.advice(), now.advice());
        if (settled.count() > 0) {
            parts.add(settled.count() + (settled.count() == 1 ? " check" : " checks") + " settled");
        }
        if (!settled.raised().isNothing()) {
            parts.add(QuestionWords.raised(settled));
        }
        loads(before.advice(), now.advice(), "front axle", loading -> loading.axles()
                        .front())
                .ifPresent(parts::add);
        loads(before.advice(), now.advice(), "rear axle", loading -> loading.axles()
                        .rear())
                .ifPresent(parts::add);
        return parts.isEmpty() ? "Nothing in the advice changed." : Words.capital(String.join("; ", parts)) + ".";
    }

    /** Whether one part, tank or load is called otherwise, and stands where it stood. */
    private static boolean isRenamed(Sheet before, Sheet now) {
        List<String> was = names(before);
        List<String> is = names(now);
        return was.size() == is.size()
                && IntStream.range(0, was.size())
                                .filter(i -> !was.get(i).equals(is.get(i)))
                                .count()
                        == 1;
    }

    private static List<String> names(Sheet sheet) {
        return Stream.of(
                        sheet.fitments().stream().map(Fitment::name),
                        sheet.tanks().stream().map(Tank::name),
                        sheet.cargo().stream().map(Sheet.Load::name))
                .flatMap(each -> each)
                .toList();
    }

    /** What became of each check, whatever it is about is called. */
    private static List<String> cameTo(Advice advice) {
        return advice.outcomes()
                .map(outcome -> outcome.getClass().getSimpleName() + " " + advice.isGuessed(outcome) + " "
                        + outcome.judged().id() + " " + outcome.judged().loadCase())
                .sorted()
                .toList();
    }

    /** What is left of a mass limit in the loading that leaves least; a dash where it is not known or nothing has it. */
    public record Left(String limit, String before, String now) {}

    /** Of every mass limit that has been or is. */
    public static List<Left> left(Arrangement before, Arrangement now) {
        Map<String, String> was = left(before);
        Map<String, String> is = left(now);
        Set<String> limits = new TreeSet<>(was.keySet());
        limits.addAll(is.keySet());
        return limits.stream()
                .map(limit -> new Left(limit, was.getOrDefault(limit, "-"), is.getOrDefault(limit, "-")))
                .toList();
    }

    private static Map<String, String> left(Arrangement arrangement) {
        return arrangement.margins().stream()
                .collect(Collectors.toMap(Margin::limit, margin -> Wording.spareOrOver(margin.worst())));
    }

    private static Set<Check> checks(Arrangement arrangement) {
        return arrangement.findings().stream()
                .map(group -> group.worst().check())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Optional<String> findings(Arrangement of, Set<Check> others, String what) {
        List<Group<Finding>> told = of.findings().stream()
                .filter(group -> !others.contains(group.worst().check()))
                .toList();
        if (told.isEmpty()) {
            return Optional.empty();
        }
        int more = told.size() - NAMED;
        return Optional.of(told.size() + (told.size() == 1 ? " finding " : " findings ") + what + ": "
                + told.stream()
                        .limit(NAMED)
                        .map(group -> Wording.fill(group.card().title(), group.worst()))
                        .collect(Collectors.joining(", "))
                + (more > 0 ? " and " + more + " more" : ""));
    }

    /** What changed most in any loading. */
    private static Optional<String> loads(Advice before, Advice now, String axle, Function<Loading, Figure> carried) {
        Map<String, Figure> had = new LinkedHashMap<>();
        before.loadings().forEach(loading -> had.put(loading.loadCase().name(), carried.apply(loading)));
        return now.loadings().stream()
                .filter(loading -> carried.apply(loading).known())
                .flatMap(loading ->
                        Optional.ofNullable(had.get(loading.loadCase().name())).filter(Figure::known).stream()
                                .map(was -> carried.apply(loading).value() - was.value()))
                .reduce((one, other) -> Math.abs(other) > Math.abs(one) ? other : one)
                .filter(difference -> Math.abs(difference) >= LEAST_MASS)
                .map(difference -> axle + " " + Digits.number(Math.abs(difference), "kg", 0) + " kg "
                        + (difference > 0 ? "more" : "less"));
    }
}
