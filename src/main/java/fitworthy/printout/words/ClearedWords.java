package fitworthy.printout.words;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Arrangement.Told;
import fitworthy.advice.Margin;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Check;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Severity;
import fitworthy.search.Mender.Offer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a changed plan clears of what was found, and how much nearer it comes to the limits that stay passed. */
public final class ClearedWords {

    private ClearedWords() {}

    /** What of a severity is told by itself, as the verdict counts it; waived or not. */
    public static List<Told> heads(Severity severity, Advice advice) {
        return Arrangement.of(advice).told().stream()
                .filter(told -> told.head().severity() == severity)
                .toList();
    }

    /** What it tells that is as severe as itself. */
    public static Stream<Group<Finding>> alike(Told told) {
        return told.all().filter(group -> group.severity() == told.head().severity());
    }

    public static String title(Group<Finding> finding) {
        return Wording.fill(finding.card().title(), finding.worst());
    }

    /** What a single change clears. @param named whether the stops are named */
    public static String cleared(Advice planned, Offer offer, boolean named) {
        List<Told> before = heads(Severity.STOP, planned);
        List<String> parts = new ArrayList<>(cleared(before, offer, named));
        parts.addAll(cleared(heads(Severity.CHANGE, planned), offer, named));
        int left = heads(Severity.STOP, offer.advice()).size();
        String remain = left == 0
                ? before.isEmpty() ? "" : " No stop remains."
                : " " + left + (left == 1 ? " stop remains." : " stops remain.");
        return parts.isEmpty()
                ? "Clears no stop. Over by: " + nearer(planned, offer, named) + "."
                : "Clears " + String.join(" and ", parts) + "." + thenTooClose(planned, offer) + remain;
    }

    /** What is cleared by less than can be known; empty where it is surely cleared. */
    private static String thenTooClose(Advice planned, Offer offer) {
        Set<Check> gone = gone(Arrangement.of(planned).findings(), offer).stream()
                .filter(group -> group.severity().compareTo(Severity.CHANGE) <= 0)
                .map(group -> group.worst().check())
                .collect(Collectors.toSet());
        Map<Check, Assessed> close = new LinkedHashMap<>();
        Stream.<List<? extends Assessed>>of(offer.advice().met(), offer.advice().held())
                .flatMap(List::stream)
                .filter(outcome -> gone.contains(outcome.check())
                        && outcome.comparison().filter(Comparison::uncertain).isPresent())
                .forEach(outcome -> close.putIfAbsent(outcome.check(), outcome));
        return close.isEmpty()
                ? ""
                : " Then too close to call: "
                        + close.values().stream()
                                .map(outcome -> RatingWords.name(outcome) + RatingWords.in(outcome))
                                .distinct()
                                .collect(Collectors.joining(", "))
                        + ".";
    }

    /** What of one severity is cleared whole, and of what only part is. */
    private static List<String> cleared(List<Told> before, Offer offer, boolean named) {
        List<Group<Finding>> whole = new ArrayList<>();
        List<Group<Finding>> part = new ArrayList<>();
        for (Told told : before) {
            List<Group<Finding>> all = alike(told).toList();
            List<Group<Finding>> gone = gone(all, offer);
            if (gone.size() == all.size()) {
                whole.add(told.head());
            } else {
                part.addAll(gone);
            }
        }
        return Stream.of(counted("", whole, named), counted("part of ", part, named))
                .filter(words -> !words.isEmpty())
                .toList();
    }

    /** How many of one severity, and which; empty where none is. */
    private static String counted(String before, List<Group<Finding>> findings, boolean named) {
        return findings.isEmpty()
                ? ""
                : before + findings.size() + " "
                        + SeverityWords.behind(findings.size(), findings.get(0).severity())
                        + (named
                                ? " ("
                                        + findings.stream()
                                                .map(ClearedWords::title)
                                                .collect(Collectors.joining("; ")) + ")"
                                : "");
    }

    public static List<Group<Finding>> gone(List<Group<Finding>> before, Offer offer) {
        Set<Check> found =
                offer.advice().findings().stream().map(Outcome::check).collect(Collectors.toSet());
        return before.stream()
                .filter(group -> !found.contains(group.worst().check()))
                .toList();
    }

    /** By how much limits are passed, before and after. @param all or the one alone that is passed furthest */
    private static String nearer(Advice planned, Offer offer, boolean all) {
        Map<String, Margin> after = Arrangement.of(offer.advice()).margins().stream()
                .collect(Collectors.toMap(Margin::limit, margin -> margin));
        List<Margin> nearer = Arrangement.of(planned).margins().stream()
                .filter(margin -> margin.least() < 0 && after.containsKey(margin.limit()))
                .filter(margin -> after.get(margin.limit()).least() > margin.least())
                .sorted(Comparator.comparingDouble(Margin::least))
                .toList();
        if (nearer.isEmpty()) {
            return nearerElsewhere(planned, after);
        }
        int told = all ? nearer.size() : Math.min(1, nearer.size());
        return nearer.stream()
                        .limit(told)
                        .map(margin ->
                                limit(margin) + " " + over(margin) + " -> " + over(after.get(margin.limit())) + " kg")
                        .collect(Collectors.joining(", "))
                + (told < nearer.size() ? " and " + (nearer.size() - told) + " more" : "");
    }

    /** What is nearer in loadings other than the one that passes a limit furthest. */
    private static String nearerElsewhere(Advice planned, Map<String, Margin> after) {
        List<String> nearer = new ArrayList<>();
        for (Margin margin : Arrangement.of(planned).margins()) {
            Margin then = after.get(margin.limit());
            if (then != null) {
                margin.left().forEach((loading, left) -> {
                    if (left < 0 && then.left().getOrDefault(loading, left) > left) {
                        nearer.add(limit(margin) + " " + over(margin.outcomes().get(loading)) + " -> "
                                + over(then.outcomes().get(loading)) + " kg (" + loading + ")");
                    }
                });
            }
        }
        return String.join(", ", nearer);
    }

    private static String limit(Margin margin) {
        return margin.limit().replaceFirst("^vehicle.*: |: axle limit$", "");
    }

    /** By how many kg a limit is passed. */
    private static String over(Margin margin) {
        return over(margin.worst());
    }

    private static String over(Assessed outcome) {
        return outcome.comparison().orElseThrow().margin() < 0
                ? Wording.margin(outcome).substring(1).replace(" kg", "")
                : "0";
    }
}
