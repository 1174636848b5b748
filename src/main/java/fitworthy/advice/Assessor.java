package fitworthy.advice;

import fitworthy.advice.Outcome.DoesNotApply;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.Met;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.advice.Outcome.Reason;
import fitworthy.book.Card;
import fitworthy.book.EffectiveRule;
import fitworthy.book.EffectiveRules;
import fitworthy.book.FormerIds;
import fitworthy.book.Practice;
import fitworthy.book.RuleSplit.RuleSet;
import fitworthy.engine.Budget;
import fitworthy.engine.RuleEngine;
import fitworthy.engine.RuleEngine.Fired;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.quantity.Missing;
import fitworthy.rules.Advised;
import fitworthy.rules.Facts;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Waiver;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Runs rules of a book over measures of a sheet, and tells what became of each rule on each thing it judges. */
final class Assessor {

    private final RuleEngine engine;
    private final Sheet sheet;
    private final Budget.Bounds bounds;
    private final EffectiveRules inForce;
    private final FormerIds former;
    private final RecordedPractice recorded;

    Assessor(RuleEngine engine, Sheet sheet, Budget.Bounds bounds) {
        this.engine = engine;
        this.sheet = sheet;
        this.bounds = bounds;
        this.inForce = engine.book().inForce(sheet);
        this.former = engine.book().formerIds();
        this.recorded = RecordedPractice.of(engine.book(), sheet);
    }

    /** The practice values that are recorded for the sheet. */
    RecordedPractice recorded() {
        return recorded;
    }

    /** What of the book is in force in the sheet's region on its day. */
    EffectiveRules inForce() {
        return inForce;
    }

    /**
     * Runs some rules, or those of them alone that may come out otherwise than for a sheet before.
     *
     * @param measures every measure that these rules look at
     * @param earlier what came of the rules that these may build on
     * @param loadCase the load case that it is done for, empty where the loading makes no difference
     * @param before what came of rules for a sheet of the same region and day before this one; nothing where none was
     */
    RuleRun assess(RuleSet rules, List<Measure> measures, RuleRun earlier, String loadCase, RuleRun before) {
        Map<MeasureKind, List<Measure>> byKind = Kept.byKind(measures);
        Kept kept = new Kept(before, rules, byKind, earlier.run(), this::waiver);
        RuleSet touched = kept.touched();
        List<Finding> findings = new ArrayList<>(kept.findings());
        List<Advised> given = new ArrayList<>(earlier.advised());
        given.addAll(RuleRun.advised(findings));
        List<Measure> looked = touched.among(measures);
        Set<Fired.Key> fired = new HashSet<>();
        for (Fired each : engine.fire(touched, looked, given, bounds)) {
            findings.add(finding(each));
            fired.add(Fired.Key.of(each.id(), each.judged()));
        }
        findings.sort(Comparator.comparing(finding -> finding.judged().id()));
        List<Object> all = new ArrayList<>(touched.practice());
        all.addAll(looked);
        all.addAll(earlier.advised());
        all.addAll(RuleRun.advised(findings));
        Facts facts = new Facts(all);
        List<Outcome> quiet = new ArrayList<>();
        for (EffectiveRule rule : touched.rules()) {
            for (Measure judged : byKind.getOrDefault(rule.judged(), List.of())) {
                if (!fired.contains(Fired.Key.of(rule.id(), judged))) {
                    quiet.add(quiet(rule, judged, rule.byLoading() ? loadCase : "", byKind, facts));
                }
            }
        }
        quiet.addAll(kept.quiet());
        quiet.sort(Comparator.comparing(
                outcome -> rules.places().get(outcome.judged().id())));
        leaveOpen(quiet, touched, earlier.quiet(), all);
        return new RuleRun(rules, byKind, touched.ids(), findings, quiet);
    }

    /**
     * Turns into not assessed what would have fired, had advice that it builds on been given which could not be assessed;
     * again and again, since other advice may build on that.
     *
     * @param run the rules that were run; what is kept of others is settled
     * @param earlier what came of rules that ran before
     * @param facts every fact that the rules saw
     */
    private static void leaveOpen(List<Outcome> quiet, RuleSet run, List<Outcome> earlier, List<Object> facts) {
        for (boolean more = true; more; ) {
            more = false;
            List<NotAssessed> open = Stream.concat(earlier.stream(), quiet.stream())
                    .filter(NotAssessed.class::isInstance)
                    .map(NotAssessed.class::cast)
                    .toList();
            for (int i = 0; i < quiet.size(); i++) {
                if (!run.ids().contains(quiet.get(i).judged().id())) {
                    continue;
                }
                Optional<NotAssessed> left = leftOpen(quiet.get(i), open, facts);
                more |= left.isPresent();
                quiet.set(i, left.isPresent() ? left.get() : quiet.get(i));
            }
        }
    }

    /** An outcome as not assessed, where it hangs on what is open; it lacks what that lacks. */
    private static Optional<NotAssessed> leftOpen(Outcome outcome, List<NotAssessed> open, List<Object> facts) {
        Judged judged = outcome.judged();
        boolean off = outcome instanceof DoesNotApply none && none.reason() == Reason.GUARD;
        if (judged.rule().earlier().isEmpty() || !off && !(outcome instanceof Met)) {
            return Optional.empty();
        }
        List<NotAssessed> named = open.stream()
                .filter(other -> judged.rule().earlier().contains(other.judged().id()))
                .toList();
        if (named.isEmpty() || !firesWith(named, judged, facts)) {
            return Optional.empty();
        }
        List<NotAssessed> alone = named.stream()
                .filter(other -> firesWith(List.of(other), judged, facts))
                .toList();
        return Optional.of(new NotAssessed(
                judged,
                (alone.isEmpty() ? named : alone)
                        .stream()
                                .flatMap(other -> other.missing().stream())
                                .distinct()
                                .toList()));
    }

    private static boolean firesWith(List<NotAssessed> given, Judged judged, List<Object> facts) {
        List<Object> supposed = new ArrayList<>(facts);
        given.forEach(other ->
                supposed.add(new Advised(other.judged().id(), other.judged().subject())));
        return new Facts(supposed).meet(judged.rule().asRun().condition(), judged.measure());
    }

    private Finding finding(Fired fired) {
        Card card = inForce.card(fired.id());
        Judged judged = new Judged(
                fired.id(), card, engine.book().rules().get(fired.id()), fired.judged(), loadCase(fired.measures()));
        return new Finding(judged, fired.measures(), withAgainst(card, fired.practice()), waiver(judged));
    }

    private Optional<Waiver> waiver(Judged judged) {
        return Waiving.of(sheet, former, judged);
    }

    /**
     * The practice values of the evidence, with the one the card compares against where the rule did not pass it on.
     */
    private List<Practice> withAgainst(Card card, List<Practice> values) {
        if (!card.againstPractice()
                || values.stream().anyMatch(value -> value.id().equals(card.against()))) {
            return values;
        }
        List<Practice> all = new ArrayList<>(values);
        all.add(((Practice.Lookup.Found) inForce.lookups().get(card.against())).practice());
        return all;
    }

    /** The load case that a finding belongs to: that of the first measure that has one. */
    private static String loadCase(List<Measure> evidence) {
        for (Measure measure : evidence) {
            if (!measure.getLoadCase().isEmpty()) {
                return measure.getLoadCase();
            }
        }
        return "";
    }

    /** A card whose rule did not fire on a measure. */
    private Outcome quiet(
            EffectiveRule rule, Measure measure, String loadCase, Map<MeasureKind, List<Measure>> byKind, Facts facts) {
        Optional<List<Measure>> besides = relevant(rule, measure, byKind);
        Judged judged = new Judged(rule.id(), rule.card(), rule.text(), measure, loadCase);
        if (!rule.applies()) {
            return new DoesNotApply(judged, rule.values(), Reason.NO_SUCH_LIMIT);
        }
        if (besides.isEmpty()) {
            return new DoesNotApply(judged, rule.values(), Reason.NOTHING_BESIDES);
        }
        DoesNotApply off = new DoesNotApply(judged, rule.values(), Reason.GUARD);
        List<Measure> relevant = besides.get();
        if (!rule.unrecorded().isEmpty() || !areKnown(relevant)) {
            if (!rule.guards().mayHold(facts, measure)) {
                return off;
            }
            Set<Missing> missing = new LinkedHashSet<>();
            relevant.forEach(beside -> missing.addAll(beside.missing()));
            rule.unrecorded().forEach(id -> missing.add(recorded.lacking(id)));
            return new NotAssessed(judged, List.copyOf(missing));
        }
        Met met = new Met(judged, relevant, rule.values());
        // Whatever kept the rule from firing, a limit that is passed is not met.
        boolean passed = met.comparison().filter(got -> got.margin() < 0).isPresent();
        return passed || !rule.guards().hold(facts, measure) ? off : met;
    }

    /**
     * What a card is about where it judges a measure: of each other kind the measures of the same subject, or all of
     * them where none is of the same; empty where there is no measure of a kind.
     */
    private static Optional<List<Measure>> relevant(
            EffectiveRule rule, Measure judged, Map<MeasureKind, List<Measure>> byKind) {
        List<Measure> relevant = new ArrayList<>(1 + rule.others().size());
        relevant.add(judged);
        for (MeasureKind kind : rule.others()) {
            List<Measure> all = byKind.getOrDefault(kind, List.of());
            if (all.isEmpty()) {
                return Optional.empty();
            }
            int before = relevant.size();
            for (Measure measure : all) {
                if (measure.getSubject().equals(judged.getSubject())) {
                    relevant.add(measure);
                }
            }
            if (relevant.size() == before) {
                relevant.addAll(all);
            }
        }
        return Optional.of(relevant);
    }

    private static boolean areKnown(List<Measure> measures) {
        for (Measure measure : measures) {
            if (!measure.isKnown()) {
                return false;
            }
        }
        return true;
    }
}
