package fitworthy.advice;

import fitworthy.figures.measure.Measure;
import fitworthy.rules.Comparison;
import fitworthy.rules.Condition;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Why a rule fired on a subject, or why it did not.
 *
 * @param loadCase the load case
 * @param judged the measure it judges
 * @param holds whether its condition holds
 * @param steps what was looked at, in the order of the rule file, up to the first part that does not hold
 * @param looked every fact that was looked at on the way, also those that did not fit where another did
 */
public record Explanation(String loadCase, Measure judged, boolean holds, List<Step> steps, List<Step> looked) {

    /**
     * A fact that the condition asked for.
     *
     * @param wanted what the rule asks for
     * @param fact the fact looked at, or null where there is none
     * @param checks each comparison with whether it holds
     */
    public record Step(Condition.Match wanted, Object fact, List<Check> checks) {
        public boolean holds() {
            return fact != null && checks.stream().allMatch(Check::holds);
        }
    }

    /** A comparison with whether it holds. */
    public record Check(Comparison comparison, boolean holds) {}

    /** Explains a rule for every subject and load case that it could have been about; for none once it is retired. */
    public static List<Explanation> of(Advice advice, String id) {
        if (advice.book().retired(id, advice.sheet().asOf()).isPresent()) {
            return List.of();
        }
        Condition condition = advice.book().condition(id);
        String judges = advice.book().cards().get(id).judges();
        List<Explanation> explanations = new ArrayList<>();
        advice.facts()
                .forEach((loadCase, facts) -> facts.forEach(fact -> {
                    if (fact instanceof Measure measure && measure.getName().equals(judges)) {
                        explanations.add(of(loadCase, condition, measure, facts));
                    }
                }));
        return explanations;
    }

    private static Explanation of(String loadCase, Condition condition, Measure judged, List<?> facts) {
        List<Step> best = new ArrayList<>();
        Search search = new Search(judged, facts, new ArrayList<>());
        boolean holds = holds(condition, search, new HashMap<>(), new ArrayList<>(), best);
        return new Explanation(loadCase, judged, holds, List.copyOf(best), List.copyOf(search.looked()));
    }

    /** What is searched. @param judged the only measure of its name that counts, or null where any does */
    private record Search(Measure judged, List<?> facts, List<Step> looked) {
        Search forAny() {
            return new Search(null, facts, looked);
        }
    }

    private static boolean holds(
            Condition condition, Search search, Map<String, Object> bound, List<Step> path, List<Step> best) {
        return all(flat(condition), 0, search, bound, path, best);
    }

    private static List<Condition> flat(Condition condition) {
        return condition instanceof Condition.All all
                ? all.parts().stream().flatMap(part -> flat(part).stream()).toList()
                : List.of(condition);
    }

    private static boolean all(
            List<Condition> parts,
            int from,
            Search search,
            Map<String, Object> bound,
            List<Step> path,
            List<Step> best) {
        // Of two ways as long, the one of which every step holds.
        if (path.size() >= best.size()) {
            best.clear();
            best.addAll(path);
        }
        if (from == parts.size()) {
            best.clear();
            best.addAll(path);
            return true;
        }
        Condition part = parts.get(from);
        if (part instanceof Condition.Match match) {
            return match(match, parts, from, search, bound, path, best);
        }
        Tried tried = tried(part, search, bound);
        int before = path.size();
        path.addAll(tried.steps());
        if (tried.holds() && all(parts, from + 1, search, bound, path, best)) {
            return true;
        }
        if (path.size() > best.size()) {
            best.clear();
            best.addAll(path);
        }
        path.subList(before, path.size()).clear();
        return false;
    }

    /** What became of a part that binds nothing. @param steps what it was found in, or how far it came */
    private record Tried(boolean holds, List<Step> steps) {}

    private static Tried tried(Condition part, Search search, Map<String, Object> bound) {
        if (part instanceof Condition.Any any) {
            List<Tried> each =
                    any.parts().stream().map(one -> tried(one, search, bound)).toList();
            return each.stream().filter(Tried::holds).findFirst().orElseGet(() -> each.stream()
                    .max(Comparator.comparingInt(one -> one.steps().size()))
                    .orElseThrow());
        }
        if (part instanceof Condition.None none) {
            return new Tried(!tried(none.part(), search.forAny(), bound).holds(), List.of());
        }
        // Inside exists any fact of the name counts, not only the judged one.
        boolean some = part instanceof Condition.Some;
        List<Step> steps = new ArrayList<>();
        boolean holds = holds(
                some ? ((Condition.Some) part).part() : part,
                some ? search.forAny() : search,
                new HashMap<>(bound),
                new ArrayList<>(),
                steps);
        return new Tried(holds, steps);
    }

    private static boolean match(
            Condition.Match match,
            List<Condition> parts,
            int from,
            Search search,
            Map<String, Object> bound,
            List<Step> path,
            List<Step> best) {
        Step closest = new Step(match, null, List.of());
        for (Object candidate : candidates(match, search)) {
            List<Check> checks = match.comparisons().stream()
                    .map(comparison -> new Check(comparison, comparison.holds(candidate, bound)))
                    .toList();
            Step step = new Step(match, candidate, checks);
            search.looked().add(step);
            if (step.holds()) {
                if (match.binding() != null) {
                    bound.put(match.binding(), candidate);
                }
                path.add(step);
                if (all(parts, from + 1, search, bound, path, best)) {
                    return true;
                }
                path.remove(path.size() - 1);
            } else if (closest.fact() == null || passed(step) > passed(closest)) {
                closest = step;
            }
        }
        if (path.size() + 1 > best.size()) {
            best.clear();
            best.addAll(path);
            best.add(closest);
        }
        return false;
    }

    private static long passed(Step step) {
        return step.checks().stream().filter(Check::holds).count();
    }

    /** The facts a pattern may mean; of the judged measure's name only that measure. */
    private static List<?> candidates(Condition.Match match, Search search) {
        Measure judged = search.judged();
        if (judged != null && match.means(judged)) {
            return List.of(judged);
        }
        return search.facts().stream().filter(match::means).toList();
    }
}
