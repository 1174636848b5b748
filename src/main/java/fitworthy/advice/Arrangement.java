package fitworthy.advice;

import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Held;
import fitworthy.advice.Outcome.Met;
import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.book.Severity;
import fitworthy.figures.electrical.ElectricalMeasures;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.towing.HitchMeasures;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.Waiver;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Advice arranged for reading: each check once over the loadings, the figures to bring, what is left of the limits, and
 * every count. Whatever is printed only lays this out.
 */
public final class Arrangement {

    private static final Comparator<Assessed> LEAST_LEFT_FIRST = Comparator.comparingDouble(
            outcome -> outcome.comparison().map(Comparison::margin).orElse(0.0));

    private final Advice advice;
    private final List<Group<Finding>> findings;
    private final GuessShares shares;
    private final List<Told> told;
    private final Counts counts;

    /**
     * What one check came to over the loadings.
     *
     * @param outcomes at least one, in the order of the loadings
     */
    public record Group<O extends Assessed>(List<O> outcomes) {

        /** The outcome that leaves least of its limit, the first of equal ones; its figures stand for the group. */
        public O worst() {
            return outcomes.stream().min(LEAST_LEFT_FIRST).orElseThrow();
        }

        /** The rule. */
        public String id() {
            return outcomes.get(0).judged().id();
        }

        /** The card of the rule. */
        public Card card() {
            return outcomes.get(0).judged().card();
        }

        /** The severity of the rule. */
        public Severity severity() {
            return card().severity().value();
        }

        /** Whether it passes its limit by less than can be known in every loading. */
        public boolean isTooClose() {
            return outcomes.stream()
                    .allMatch(outcome ->
                            outcome.comparison().filter(Comparison::tooClose).isPresent());
        }

        /** Whether somebody stands for it in every loading. */
        public boolean isWaived() {
            return outcomes.stream().allMatch(outcome -> waiver(outcome).isPresent());
        }

        /** Each different waiver with the loadings it is for. */
        public Map<Waiver, List<String>> waivers() {
            return new Group<>(outcomes.stream()
                            .filter(outcome -> waiver(outcome).isPresent())
                            .toList())
                    .loadings(outcome -> waiver(outcome).orElseThrow());
        }

        /** The loadings that share the same figures; one without a name where the loading makes no difference. */
        public <F> Map<F, List<String>> loadings(Function<O, F> figures) {
            Map<F, List<String>> loadings = new LinkedHashMap<>();
            outcomes.forEach(outcome -> loadings.computeIfAbsent(figures.apply(outcome), none -> new ArrayList<>())
                    .add(outcome.judged().loadCase()));
            return loadings;
        }

        private static Optional<Waiver> waiver(Assessed outcome) {
            return outcome instanceof Finding finding ? finding.waiver() : Optional.empty();
        }
    }

    /**
     * A finding with what is told under it, so that one mistake is read once.
     *
     * @param head what is told in full
     * @param parts the same rule's other findings, or the same circuit's, and those whose card says that they are told with the head
     */
    public record Told(Group<Finding> head, List<Group<Finding>> parts) {

        /** What one mistake came to, the finding that is told in full first. */
        public Stream<Group<Finding>> all() {
            return Stream.concat(Stream.of(head), parts.stream());
        }
    }

    private Arrangement(Advice advice) {
        this.advice = advice;
        this.findings = worstFirst(finding -> true);
        this.shares = GuessShares.in(advice);
        this.told = together();
        this.counts = Counts.of(advice, outcome -> true);
    }

    private List<Group<Finding>> worstFirst(Predicate<Finding> wanted) {
        return groups(advice.findings().stream().filter(wanted)).stream()
                .sorted(Comparator.comparing((Group<Finding> group) -> group.severity())
                        .thenComparing(this::isDecidedByGuesses)
                        .thenComparing(group -> group.card().follows())
                        .thenComparing(this::sureness)
                        .thenComparing(Comparator.comparingDouble(this::tooHeavyBy)
                                .thenComparingDouble(Arrangement::passedBy)
                                .reversed()))
                .toList();
    }

    /** How sure a finding is. */
    private enum Sureness {
        STATED,
        GUESSED,
        TOO_CLOSE
    }

    private Sureness sureness(Group<Finding> group) {
        return group.outcomes().stream().allMatch(outcome -> outcome.comparison()
                        .filter(Comparison::uncertain)
                        .isPresent())
                ? Sureness.TOO_CLOSE
                : isGuessed(group) ? Sureness.GUESSED : Sureness.STATED;
    }

    /**
     * By how many kg a limit of mass is passed; 0 for any other. What is too much on the ball counts as it weighs on the rear
     * axle, {@code m (1 + overhang / wheelbase)}: where taking it off clears that axle too, it is told first.
     */
    private double tooHeavyBy(Group<Finding> group) {
        MeasureKind kind = group.worst().judged().measure().kind();
        double by = kind.unit().equals("kg")
                ? group.worst()
                        .comparison()
                        .map(Comparison::margin)
                        .map(Math::abs)
                        .orElse(0.0)
                : 0;
        return kind == HitchMeasures.BALL ? by * onRear() : by;
    }

    /** What a kilogram on the ball puts on the rear axle, kg; one where nobody knows. */
    private double onRear() {
        Plan plan = advice.loadings().get(0).plan();
        Figure lever = plan.ballOverhang().dividedBy(plan.wheelbase());
        return lever.known() ? 1 + Math.max(0, lever.value()) : 1;
    }

    /** By which share of its limit what was found passes it; 0 where nothing is compared, 1 where none is allowed. */
    private static double passedBy(Group<Finding> group) {
        return group.worst()
                .comparison()
                .map(compared -> compared.limit() == 0 ? 1 : Math.abs(compared.margin() / compared.limit()))
                .orElse(0.0);
    }

    /** Arranges all advice on a sheet. */
    public static Arrangement of(Advice advice) {
        return new Arrangement(advice);
    }

    /** The advice that is arranged. */
    public Advice advice() {
        return advice;
    }

    /**
     * The checks that found something, waived or not, worst first: by severity, what guesses decide last, by what comes
     * of it, then what is sure before what rests on guesses and what is too close to call, then by how much it is too
     * heavy or passes its limit.
     */
    public List<Group<Finding>> findings() {
        return findings;
    }

    /** The same, worst first, with what belongs together told under one of them. */
    public List<Told> told() {
        return told;
    }

    private List<Told> together() {
        // Each group is there once, and to look at all that it holds would cost more than all the rest.
        Map<Group<Finding>, List<Group<Finding>>> parts = new IdentityHashMap<>();
        findings.forEach(group ->
                parts.computeIfAbsent(head(group), none -> new ArrayList<>()).add(group));
        return findings.stream()
                .filter(parts::containsKey)
                .map(head -> new Told(
                        head,
                        parts.get(head).stream().filter(part -> part != head).toList()))
                .toList();
    }

    /**
     * How many findings are headings that nobody waived, and how many are told under these.
     *
     * @param found by severity, the worst first
     */
    public record Headings(SortedMap<Severity, Long> found, long under) {

        /** How many are of a severity. */
        public long of(Severity severity) {
            return found.getOrDefault(severity, 0L);
        }
    }

    /** What is told by itself, and what is told with it. */
    public Headings headings() {
        List<Told> standing =
                told().stream().filter(told -> !told.head().isWaived()).toList();
        return new Headings(
                standing.stream()
                        .collect(Collectors.groupingBy(
                                told -> told.head().severity(), TreeMap::new, Collectors.counting())),
                standing.stream().mapToLong(told -> told.parts().size()).sum());
    }

    /** Those of them that are no milder than {@code mildest}. */
    public List<Told> told(Severity mildest) {
        return told().stream()
                .filter(told -> told.head().severity().compareTo(mildest) <= 0)
                .map(told -> new Told(
                        told.head(),
                        told.parts().stream()
                                .filter(part -> part.severity().compareTo(mildest) <= 0)
                                .toList()))
                .toList();
    }

    /** What a finding is told under, itself where it stands alone: nothing milder, and waived only if it is waived. */
    private Group<Finding> head(Group<Finding> group) {
        if (isOfCircuit(group)) {
            return findings.stream()
                    .filter(finding -> isOfCircuit(finding)
                            && circuit(finding).equals(circuit(group))
                            && finding.isWaived() == group.isWaived())
                    .findFirst()
                    .orElseThrow();
        }
        Optional<Group<Finding>> other = group.card().with().stream()
                .flatMap(id -> findings.stream().filter(finding -> finding.id().equals(id)))
                .filter(finding ->
                        finding.severity().compareTo(group.severity()) <= 0 && finding.isWaived() == group.isWaived())
                .findFirst();
        if (other.isPresent()) {
            return head(other.get());
        }
        return findings.stream()
                .filter(finding -> finding.id().equals(group.id()) && finding.isWaived() == group.isWaived())
                .findFirst()
                .orElseThrow();
    }

    /** Whether its remedy is the one cable and fuse of its circuit: then it is told with what else these settle, not with its rule. */
    private static boolean isOfCircuit(Group<Finding> group) {
        return group.card().about().contains(ElectricalMeasures.CABLE_AND_FUSE);
    }

    private static String circuit(Group<Finding> group) {
        return Circuit.named(group.worst().judged().subject());
    }

    /** The checks that found something nobody waived, with the loadings in which that is so. */
    public List<Group<Finding>> standing() {
        return worstFirst(finding -> finding.waiver().isEmpty());
    }

    /** The checks that found something that is waived, with the loadings in which that is so. */
    public List<Group<Finding>> waived() {
        return worstFirst(finding -> finding.waiver().isPresent());
    }

    /** The checks that were met. */
    public List<Group<Met>> met() {
        return groups(advice.met().stream());
    }

    /** The checks that are in order if guesses of the sheet hold. */
    public List<Group<Held>> held() {
        return groups(advice.held().stream());
    }

    /** Whether a finding rests on guesses, and is sure in no loading. */
    public boolean isGuessed(Group<Finding> finding) {
        return finding.outcomes().stream().anyMatch(advice::isGuessed)
                && finding.outcomes().stream().noneMatch(this::isSure);
    }

    /**
     * Where it is sure in some loading, though it is worst in one in which it rests on guesses or is too close to call:
     * the sure ones, what passes its limit furthest first. Else none.
     */
    public List<Finding> sureElsewhere(Group<Finding> finding) {
        return isSure(finding.worst())
                ? List.of()
                : finding.outcomes().stream()
                        .filter(this::isSure)
                        .sorted(LEAST_LEFT_FIRST)
                        .toList();
    }

    private boolean isSure(Finding finding) {
        return !advice.isGuessed(finding)
                && finding.comparison().filter(Comparison::uncertain).isEmpty();
    }

    /**
     * Whether better figures in place of guesses may clear it: it rests on guesses, and these spread wider than it passes
     * its limit. A stop waits for no better figure.
     */
    public boolean isDecidedByGuesses(Group<Finding> finding) {
        return finding.severity() != Severity.STOP && isGuessed(finding) && sureness(finding) == Sureness.TOO_CLOSE;
    }

    /** The guesses on which a finding rests, in whatever loading; none where it rests on what is stated. */
    public List<Missing> guesses(Group<Finding> finding) {
        return finding.outcomes().stream()
                .flatMap(outcome -> advice.restsOn(outcome).stream())
                .distinct()
                .toList();
    }

    /** What guesses bring of the spread of what was compared. */
    public GuessShares shares() {
        return shares;
    }

    /** What was met by topic and rule: of each subject the loading that leaves least, and the least of them first. */
    public SortedMap<String, Map<String, List<Met>>> metByTopic() {
        SortedMap<String, Map<String, List<Met>>> byTopic = new TreeMap<>();
        advice.met().stream()
                .collect(Collectors.groupingBy(met -> met.judged().id(), LinkedHashMap::new, Collectors.toList()))
                .forEach((rule, outcomes) -> byTopic.computeIfAbsent(Book.topic(rule), none -> new LinkedHashMap<>())
                        .put(rule, leastOfEachSubject(outcomes)));
        return byTopic;
    }

    private static List<Met> leastOfEachSubject(List<Met> outcomes) {
        Map<String, Met> least = new LinkedHashMap<>();
        outcomes.stream()
                .sorted(LEAST_LEFT_FIRST)
                .forEach(met -> least.putIfAbsent(met.judged().subject(), met));
        return List.copyOf(least.values());
    }

    /** Whether nothing that nobody waived is as severe as the worst of it but what is too close to call. */
    public boolean isWorstTooClose() {
        List<Group<Finding>> standing = standing();
        return !standing.isEmpty()
                && standing.stream()
                        .filter(group -> group.severity() == standing.get(0).severity())
                        .allMatch(Group::isTooClose);
    }

    /** Whether anything of a severity was found, waived or not. */
    public boolean finds(Severity severity) {
        return findings.stream().anyMatch(group -> group.severity() == severity);
    }

    /** The figures to bring, what several parts lack asked for once, and what most hangs on first. */
    public List<MissingFigure> figuresToBring() {
        return waitedFor(figure -> !figure.missing().isInBook());
    }

    /** What the rule book does not hold, which nobody can bring. */
    public List<MissingFigure> gapsOfTheBook() {
        return waitedFor(figure -> figure.missing().isInBook());
    }

    /** The guesses on which something is in order, what most rests on first. */
    public List<MissingFigure> guessesToReplace() {
        return MissingFigure.guessed(advice, false);
    }

    private List<MissingFigure> waitedFor(Predicate<MissingFigure> wanted) {
        return MissingFigure.of(advice.notAssessed(), advice.sheet()).stream()
                .filter(wanted)
                .toList();
    }

    /** What is left of each mass limit. */
    public List<Margin> margins() {
        return Margin.all(advice);
    }

    /** Counts over all loadings, each check once. */
    public Counts counts() {
        return counts;
    }

    /** Counts of one loading. @param loadCase its name, empty for what does not depend on the loading */
    public Counts counts(String loadCase) {
        return Counts.of(advice, outcome -> outcome.judged().loadCase().equals(loadCase));
    }

    private static <O extends Assessed> List<Group<O>> groups(Stream<O> outcomes) {
        return outcomes
                .collect(Collectors.groupingBy(Outcome::check, LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(Group::new)
                .toList();
    }
}
