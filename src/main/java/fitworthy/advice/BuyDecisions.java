package fitworthy.advice;

import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.BuyList.After;
import fitworthy.advice.BuyList.Found;
import fitworthy.advice.BuyList.Open;
import fitworthy.advice.BuyList.Part;
import fitworthy.advice.BuyList.Reason;
import fitworthy.advice.BuyList.Unknown;
import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Buying.Settled;
import fitworthy.figures.order.Ordering;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.Money;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Decides on the parts of a plan one by one: what is found on each, what is not known of it, and what it hangs on. */
final class BuyDecisions {

    /** What is asked of a part, whether fitment or tank. @param in what it stands in or on */
    private record Planned(String name, String in, Money price, Figure leadTime) {}

    private final Arrangement arrangement;
    private final Sheet sheet;
    private final Concerned concerned;
    private final Burden burden;
    private final Ordering ordering;
    /** By name, in the order of the sheet. */
    private final Map<String, Planned> planned = new LinkedHashMap<>();

    private final Map<String, List<Reason>> reasons = new HashMap<>();
    private final Map<String, Set<Missing>> lacking = new HashMap<>();
    private final List<Group<Finding>> first = new ArrayList<>();
    private final Set<Missing> unknown = new LinkedHashSet<>();

    BuyDecisions(Arrangement arrangement) {
        Advice advice = arrangement.advice();
        Plan plan = advice.loadings().get(0).plan();
        this.arrangement = arrangement;
        this.sheet = advice.sheet();
        this.concerned = new Concerned(plan);
        this.burden = new Burden(advice.loadings());
        this.ordering = Ordering.of(plan);
        plan.sheet().fitments().stream()
                .filter(part -> !part.isDone())
                .forEach((Fitment part) ->
                        planned.put(part.name(), new Planned(part.name(), part.in(), part.price(), part.leadTime())));
        plan.sheet().tanks().stream()
                .filter(tank -> Alterations.added(tank) && !tank.isDone())
                .forEach((Tank tank) ->
                        planned.put(tank.name(), new Planned(tank.name(), tank.in(), tank.price(), tank.leadTime())));
        planned.keySet().forEach(name -> reasons.put(name, new ArrayList<>()));
    }

    BuyList list() {
        if (planned.isEmpty()) {
            return new BuyList(List.of(), List.of(), List.of(), sheet.readyBy());
        }
        arrangement.standing().stream()
                .filter(finding -> BuyList.counts(finding.worst().judged()))
                .forEach(this::found);
        Advice advice = arrangement.advice();
        advice.notAssessed().forEach(outcome -> lacks(outcome, outcome.waitsFor()));
        advice.held().forEach(outcome -> lacks(outcome, outcome.guesses()));
        lacking.forEach((name, figures) -> reasons.get(name).add(new Unknown(List.copyOf(figures))));
        sheet.options().stream().filter(option -> option.take().isEmpty()).forEach(this::open);
        Map<String, List<String>> after = new HashMap<>();
        planned.keySet().forEach(name -> after.put(name, heldUpBy(name)));
        return new BuyList(
                planned.values().stream()
                        .map(part -> new Part(
                                part.name(),
                                part.price(),
                                part.leadTime(),
                                ordering.lastDay(part.name()),
                                reasons(part.name(), after.get(part.name()))))
                        .toList(),
                first,
                List.copyOf(unknown),
                sheet.readyBy());
    }

    private List<Reason> reasons(String name, List<String> after) {
        List<Reason> all = new ArrayList<>(reasons.get(name));
        if (!after.isEmpty()) {
            all.add(new After(after));
        }
        return all;
    }

    private void found(Group<Finding> finding) {
        boolean burdens = finding.card().settledBy() == Settled.LESS_LOAD;
        Collection<String> parts = burdens
                ? burden.parts(finding)
                : concerned.parts(finding.worst().judged());
        parts.stream().filter(planned::containsKey).forEach(name -> reasons.get(name)
                .add(new Found(finding, guesses(finding))));
        if (parts.isEmpty() && concerned.comesFirst(finding.worst().judged())) {
            first.add(finding);
        }
    }

    /** The guesses that a finding rests on, where in no loading it stands without them. */
    private List<Missing> guesses(Group<Finding> finding) {
        return finding.outcomes().stream()
                        .allMatch(outcome ->
                                !arrangement.advice().restsOn(outcome).isEmpty())
                ? arrangement.guesses(finding)
                : List.of();
    }

    /** What somebody can bring of that which a check lacks or rests on. */
    private void lacks(Outcome outcome, List<Missing> missing) {
        List<Missing> figures =
                missing.stream().filter(figure -> !figure.isInBook()).toList();
        if (!figures.isEmpty()
                && BuyList.counts(outcome.judged())
                && outcome.judged().card().settledBy() != Settled.CORRECTION) {
            Set<String> parts = concerned.parts(outcome.judged());
            parts.stream().filter(planned::containsKey).forEach(name -> lacking.computeIfAbsent(
                            name, none -> new LinkedHashSet<>())
                    .addAll(figures));
            if (parts.isEmpty()
                    && outcome.judged().card().buying().of().isEmpty()
                    && concerned.comesFirst(outcome.judged())) {
                unknown.addAll(figures);
            }
        }
    }

    /** What is taken of a choice for want of an answer, and is not in every other one. */
    private void open(Sheet.Option option) {
        option.taken().parts().stream()
                .filter(planned::containsKey)
                .filter(name -> option.choices().stream()
                        .anyMatch(choice -> !choice.parts().contains(name)))
                .forEach(name -> reasons.get(name).add(new Open(option)));
    }

    /** Of all that comes before a part, what has a reason of its own to wait; in the order of the sheet. */
    private List<String> heldUpBy(String part) {
        Set<String> seen = new HashSet<>();
        Deque<String> next = new ArrayDeque<>(List.of(part));
        while (!next.isEmpty()) {
            before(next.poll()).filter(seen::add).forEach(next::add);
        }
        return planned.keySet().stream()
                .filter(name -> !name.equals(part) && seen.contains(name))
                .filter(name -> !reasons.get(name).isEmpty())
                .toList();
    }

    private Stream<String> before(String part) {
        return Stream.concat(
                ordering.before(part).stream(),
                Stream.of(planned.get(part).in()).filter(planned::containsKey));
    }
}
