package fitworthy.advice;

import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Held;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.book.Buying.Settled;
import fitworthy.book.Party;
import fitworthy.book.Severity;
import fitworthy.figures.order.Ordering;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.Money;
import fitworthy.rules.Guards;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What can be ordered, what has to wait and what should not be bought as planned. Every part that is planned and not yet
 * on the vehicle stands in it once; docs/method.md tells how it is decided.
 *
 * @param parts in the order of the sheet, fitments before tanks
 * @param first findings that are about none of the parts and are settled before any is ordered, worst first
 * @param unknown what is not known, or guessed, on which such a finding may hang
 * @param wanted the day by which all is to be done; null where none is said
 */
public record BuyList(List<Part> parts, List<Group<Finding>> first, List<Missing> unknown, LocalDate wanted) {

    /** What is decided of a part, the best first. */
    public enum Decision {
        ORDER_NOW,
        WAIT,
        NOT_AS_PLANNED
    }

    /**
     * A part or tank.
     *
     * @param price null where the sheet has none
     * @param leadTime h; not known where the sheet does not say
     * @param lastDay the last day on which it can be ordered without holding up the whole
     * @param reasons why it is not ordered now; none where it is
     */
    public record Part(String name, Money price, Figure leadTime, Optional<LocalDate> lastDay, List<Reason> reasons) {

        /** The worst that any of its reasons asks for. */
        public Decision decision() {
            return reasons.stream()
                    .map(Reason::asksFor)
                    .max(Decision::compareTo)
                    .orElse(Decision.ORDER_NOW);
        }
    }

    /** Why a part is not to be ordered now. */
    public sealed interface Reason {

        /** What it asks for. */
        default Decision asksFor() {
            return Decision.WAIT;
        }
    }

    /**
     * Something was found. What is too close to call first wants a closer figure, which may clear it.
     *
     * @param guesses those of the sheet that it rests on in every loading; a figure for one of them may clear it
     */
    public record Found(Group<Finding> finding, List<Missing> guesses) implements Reason {
        @Override
        public Decision asksFor() {
            return guesses.isEmpty() && !finding.isTooClose() && finding.card().settledBy() == Settled.ANOTHER_CHOICE
                    ? Decision.NOT_AS_PLANNED
                    : Decision.WAIT;
        }
    }

    /**
     * It passes a limit of the vehicle with nothing else aboard that could be left out, so that no load off helps.
     *
     * @param by how much lighter another in its place has to be, kg
     */
    public record TooHeavy(Group<Finding> finding, double by) implements Reason {
        @Override
        public Decision asksFor() {
            return Decision.NOT_AS_PLANNED;
        }
    }

    /** It brings about what was found elsewhere, and waits until that is settled. */
    public record HeldBy(Group<Finding> finding) implements Reason {}

    /** A check of it lacks these, or is in order only if they hold. */
    public record Unknown(List<Missing> figures) implements Reason {}

    /** A check of it needs what the rule book does not record in the sheet's region. @param whom who knows it there */
    public record Unruled(Party whom, List<Missing> values) implements Reason {}

    /** It belongs to a choice of the sheet that is still open. */
    public record Open(Sheet.Option option) implements Reason {}

    /**
     * It is fitted in, on or after these, or is too heavy without the ratings that they give, and they are not to be ordered
     * yet; those that have a reason of their own.
     */
    public record After(List<String> parts) implements Reason {}

    /** Decides on every planned part. */
    public static BuyList of(Arrangement arrangement) {
        return new Decisions(arrangement).list();
    }

    /** The parts on which so is decided. */
    public List<Part> parts(Decision decision) {
        return parts.stream().filter(part -> part.decision() == decision).toList();
    }

    /** Whether a check means anything for buying. */
    private static boolean counts(Judged judged) {
        return judged.card().settledBy() != Settled.WORK;
    }

    /** Decides on the parts of a plan one by one: what is found on each, what is not known of it, and what it hangs on. */
    private static final class Decisions {

        /** The lists of a sheet whose items are parts. */
        private static final List<String> LISTS = List.of("fitments", "tanks");

        /** What is asked of a part, whether fitment or tank. @param in what it stands in or on */
        private record Planned(String name, String in, Money price, Figure leadTime) {}

        /** What is settled by other loads on the vehicle. */
        private static final Set<Settled> BURDENS = EnumSet.of(Settled.LESS_LOAD, Settled.OTHER_PLACE);

        /** Where something sits. */
        private static final Pattern PLACE = Pattern.compile(".*\\.at\\.[xyz]");

        private final Arrangement arrangement;
        private final Sheet sheet;
        private final Concerned concerned;
        private final Burden burden;
        private final Ordering ordering;
        /** By name, in the order of the sheet. */
        private final Map<String, Planned> planned = new LinkedHashMap<>();

        private final Map<String, List<Reason>> reasons = new HashMap<>();
        private final Map<String, Set<Missing>> lacking = new HashMap<>();
        /** By part, each with who knows it. */
        private final Map<String, Map<Missing, Party>> unruled = new HashMap<>();
        /** By part, the kit without whose ratings it is too heavy. */
        private final Map<String, String> raisedBy = new HashMap<>();

        private final List<Group<Finding>> first = new ArrayList<>();
        private final Set<Missing> unknown = new LinkedHashSet<>();

        Decisions(Arrangement arrangement) {
            Advice advice = arrangement.advice();
            Plan plan = advice.loadings().get(0).plan();
            this.arrangement = arrangement;
            this.sheet = advice.sheet();
            this.concerned = new Concerned(plan);
            this.burden = new Burden(advice.loadings());
            this.ordering = Ordering.of(plan);
            plan.sheet().fitments().stream()
                    .filter(part -> !part.isDone())
                    .forEach((Fitment part) -> planned.put(
                            part.name(), new Planned(part.name(), part.in(), part.price(), part.leadTime())));
            plan.sheet().tanks().stream()
                    .filter(tank -> Alterations.added(tank) && !tank.isDone())
                    .forEach((Tank tank) -> planned.put(
                            tank.name(), new Planned(tank.name(), tank.in(), tank.price(), tank.leadTime())));
            planned.keySet().forEach(name -> reasons.put(name, new ArrayList<>()));
        }

        BuyList list() {
            if (planned.isEmpty()) {
                return new BuyList(List.of(), List.of(), List.of(), sheet.readyBy());
            }
            arrangement.standing().stream()
                    .filter(finding -> counts(finding.worst().judged()))
                    .forEach(this::found);
            Advice advice = arrangement.advice();
            advice.notAssessed().forEach(outcome -> {
                lacks(outcome, outcome.waitsFor());
                leftOpenByBook(outcome);
            });
            advice.held().stream()
                    .filter(outcome -> !isInOrderWherever(outcome))
                    .forEach(outcome -> lacks(outcome, outcome.guesses()));
            lacking.forEach((name, figures) -> reasons.get(name).add(new Unknown(List.copyOf(figures))));
            unruled.forEach((name, values) -> EnumSet.copyOf(values.values()).forEach(whom -> reasons.get(name)
                    .add(new Unruled(
                            whom,
                            values.keySet().stream()
                                    .filter(value -> values.get(value) == whom)
                                    .toList()))));
            sheet.options().stream().filter(option -> option.take().isEmpty()).forEach(this::open);
            Map<String, List<String>> after = new HashMap<>();
            UntilApproved.of(advice)
                    .filter(kit -> planned.containsKey(kit.part()))
                    .ifPresent(kit -> kit.over()
                            .forEach(passed -> burden.parts(passed).forEach(name -> raisedBy.put(name, kit.part()))));
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
            boolean burdens = BURDENS.contains(finding.card().settledBy());
            Collection<String> parts = burdens
                    ? burden.parts(finding)
                    : concerned.parts(finding.worst().judged());
            if (parts.isEmpty() && concerned.comesFirst(finding.worst().judged())) {
                first.add(finding);
            }
            concerned.held(finding.worst().judged()).stream()
                    .filter(name -> !parts.contains(name))
                    .forEach(name -> reasons.get(name).add(new HeldBy(finding)));
            if (parts.stream().noneMatch(planned::containsKey)) {
                return;
            }
            Found found = new Found(finding, guesses(finding));
            Map<String, Double> tooHeavy = finding.card().settledBy() == Settled.LESS_LOAD
                            && found.guesses().isEmpty()
                    ? burden.tooHeavy(parts, finding)
                    : Map.of();
            parts.stream().filter(planned::containsKey).forEach(name -> reasons.get(name)
                    .add(tooHeavy.containsKey(name) ? new TooHeavy(finding, tooHeavy.get(name)) : found));
        }

        /** The guesses that a finding rests on, where in no loading it stands without them. */
        private List<Missing> guesses(Group<Finding> finding) {
            return finding.outcomes().stream().allMatch(arrangement.advice()::isGuessed)
                    ? arrangement.guesses(finding)
                    : List.of();
        }

        /** Whether it rests on where things sit alone, and comes out the same wherever within their spread that is. */
        private static boolean isInOrderWherever(Held outcome) {
            boolean sure = outcome.comparison().filter(Comparison::uncertain).isEmpty()
                    && (!outcome.arises() || outcome.comparison().isPresent());
            return sure
                    && outcome.guesses().stream()
                            .allMatch(guess -> PLACE.matcher(guess.path()).matches());
        }

        /** What somebody can bring of that which a check lacks or rests on. */
        private void lacks(Outcome outcome, List<Missing> missing) {
            List<Missing> figures =
                    missing.stream().filter(figure -> !figure.isInBook()).toList();
            if (!figures.isEmpty()
                    && counts(outcome.judged())
                    && outcome.judged().card().settledBy() != Settled.CORRECTION) {
                Set<String> parts = isOfUnknownLimit(outcome)
                        ? burden.partsOfUnknownLimit(outcome.judged())
                        : isOfUnknownLoad(outcome)
                                ? burden.partsOfUnknownLoad(outcome.judged())
                                : concerned.parts(outcome.judged());
                parts.forEach(name -> lacks(name, figures));
                concerned.held(outcome.judged()).forEach(name -> lacks(name, figures));
                if (outcome.judged().card().severity().value().compareTo(Severity.CHANGE) <= 0) {
                    figures.forEach(figure -> partOf(figure).ifPresent(name -> lacks(name, List.of(figure))));
                }
                if ((parts.isEmpty() || isOfUnknownLimit(outcome) || isOfUnknownLoad(outcome))
                        && outcome.judged().card().buying().of().isEmpty()
                        && concerned.comesFirst(outcome.judged())) {
                    unknown.addAll(figures);
                }
            }
        }

        /** What the book does not record, where a finding would keep a part from being ordered. */
        private void leftOpenByBook(NotAssessed outcome) {
            Judged judged = outcome.judged();
            Settled settled = judged.card().settledBy();
            List<Missing> values =
                    outcome.waitsFor().stream().filter(Missing::isInBook).toList();
            if (!values.isEmpty()
                    && judged.card().severity().value().compareTo(Severity.CONFIRM) <= 0
                    && (settled == Settled.ANOTHER_CHOICE || settled == Settled.ANSWER)
                    && Guards.of(
                                    judged.rule().asRun().condition(),
                                    judged.card().judges(),
                                    judged.card().worse())
                            .mayFireOn(judged.measure())) {
                concerned.parts(judged).stream()
                        .filter(planned::containsKey)
                        .map(name -> unruled.computeIfAbsent(name, none -> new LinkedHashMap<>()))
                        // Who certifies says what holds sooner than who registers.
                        .forEach(asked -> values.forEach(value -> asked.merge(
                                value,
                                judged.card().whoKnowsRules(),
                                BinaryOperator.minBy(Comparator.naturalOrder()))));
            }
        }

        private void lacks(String part, List<Missing> figures) {
            if (planned.containsKey(part)) {
                lacking.computeIfAbsent(part, none -> new LinkedHashSet<>()).addAll(figures);
            }
        }

        /** The planned part of which a figure is. */
        private Optional<String> partOf(Missing figure) {
            return planned.keySet().stream()
                    .filter(name ->
                            LISTS.stream().anyMatch(list -> figure.path().startsWith(list + "." + name + ".")))
                    .findFirst();
        }

        /** Whether what it loads has a limit that nobody knows: nothing is added to it before. */
        private static boolean isOfUnknownLimit(Outcome outcome) {
            return isLoadNotAssessed(outcome)
                    && Double.isNaN(outcome.judged().measure().getLimit());
        }

        /** Whether nobody knows what is on it, but how much may be. */
        private static boolean isOfUnknownLoad(Outcome outcome) {
            return isLoadNotAssessed(outcome)
                    && !Double.isNaN(outcome.judged().measure().getLimit());
        }

        private static boolean isLoadNotAssessed(Outcome outcome) {
            return outcome instanceof NotAssessed
                    && outcome.judged().card().settledBy() == Settled.LESS_LOAD
                    && outcome.judged().card().againstLimit();
        }

        /** What is taken of a choice for want of an answer, and is not in every other one. */
        private void open(Sheet.Option option) {
            option.taken().parts().stream()
                    .filter(planned::containsKey)
                    .filter(name -> option.choices().stream()
                            .anyMatch(choice -> !choice.parts().contains(name)))
                    .forEach(name -> reasons.get(name).add(new Open(option)));
        }

        /** Of all that comes before a part, what has a reason of its own to wait; by name, whatever the sheet's order. */
        private List<String> heldUpBy(String part) {
            Set<String> seen = new HashSet<>();
            Deque<String> next = new ArrayDeque<>(List.of(part));
            while (!next.isEmpty()) {
                before(next.poll()).filter(seen::add).forEach(next::add);
            }
            return seen.stream()
                    .filter(name -> !name.equals(part) && !reasons.get(name).isEmpty())
                    .sorted()
                    .toList();
        }

        private Stream<String> before(String part) {
            return Stream.of(
                            ordering.before(part).stream(),
                            Stream.of(planned.get(part).in()).filter(planned::containsKey),
                            Stream.ofNullable(raisedBy.get(part)))
                    .flatMap(Function.identity());
        }
    }
}
