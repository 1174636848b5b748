package fitworthy.advice;

import fitworthy.advice.Outcome.DoesNotApply;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.Met;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.book.RuleSplit.RuleSet;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.sheet.Waiver;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * What of an earlier assessment holds for the measures of another sheet, since nothing that its rules look at came out
 * otherwise; told over the measures of now, whose workings may be others.
 */
final class Kept {

    private final RuleSet touched;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Outcome> quiet = new ArrayList<>();
    /** The measure of now that says what an earlier one said. */
    private final Map<Measure, Measure> now;

    /**
     * @param before what came of rules before; nothing is kept where these were others
     * @param rules the rules
     * @param byKind the measures of now
     * @param advice ids of earlier rules that these may build on, as far as they were run anew
     * @param waiving what a person wrote who stands for a finding
     */
    Kept(
            RuleRun before,
            RuleSet rules,
            Map<MeasureKind, List<Measure>> byKind,
            Set<String> advice,
            Function<Judged, Optional<Waiver>> waiving) {
        if (before.rules() != rules) {
            now = Map.of();
            touched = rules;
            return;
        }
        now = new IdentityHashMap<>(2 * byKind.size());
        touched = rules.touched(changed(before.measures(), byKind), advice);
        for (Finding finding : before.findings()) {
            if (!isTouched(finding)) {
                Judged judged = now(finding.judged());
                findings.add(new Finding(judged, now(finding.evidence()), finding.practice(), waiving.apply(judged)));
            }
        }
        for (Outcome outcome : before.quiet()) {
            if (!isTouched(outcome)) {
                quiet.add(now(outcome));
            }
        }
    }

    /** The rules that have to be run. */
    RuleSet touched() {
        return touched;
    }

    /** What was found. */
    List<Finding> findings() {
        return findings;
    }

    List<Outcome> quiet() {
        return quiet;
    }

    static Map<MeasureKind, List<Measure>> byKind(List<Measure> measures) {
        Map<MeasureKind, List<Measure>> byKind = new IdentityHashMap<>();
        for (Measure measure : measures) {
            byKind.computeIfAbsent(measure.kind(), kind -> new ArrayList<>(1)).add(measure);
        }
        return byKind;
    }

    /** The kinds of which there are other measures than before; the others are noted one by one. */
    private Set<MeasureKind> changed(Map<MeasureKind, List<Measure>> before, Map<MeasureKind, List<Measure>> after) {
        Set<MeasureKind> changed = Collections.newSetFromMap(new IdentityHashMap<>());
        after.forEach((kind, measures) -> {
            List<Measure> others = before.getOrDefault(kind, List.of());
            if (!areLike(measures, others)) {
                changed.add(kind);
                return;
            }
            for (int i = 0; i < measures.size(); i++) {
                now.put(others.get(i), measures.get(i));
            }
        });
        before.keySet().stream().filter(kind -> !after.containsKey(kind)).forEach(changed::add);
        return changed;
    }

    private static boolean areLike(List<Measure> some, List<Measure> others) {
        if (some.size() != others.size()) {
            return false;
        }
        for (int i = 0; i < some.size(); i++) {
            if (!some.get(i).isLike(others.get(i))) {
                return false;
            }
        }
        return true;
    }

    private boolean isTouched(Outcome outcome) {
        return touched.ids().contains(outcome.judged().id());
    }

    private Outcome now(Outcome outcome) {
        Judged judged = now(outcome.judged());
        if (outcome instanceof Met met) {
            return new Met(judged, now(met.evidence()), met.practice());
        }
        if (outcome instanceof NotAssessed open) {
            return new NotAssessed(judged, open.missing());
        }
        if (outcome instanceof DoesNotApply off) {
            return new DoesNotApply(judged, off.practice(), off.reason());
        }
        throw new IllegalStateException(outcome + " is nothing that a rule leaves");
    }

    private Judged now(Judged judged) {
        return new Judged(judged.id(), judged.card(), judged.rule(), now.get(judged.measure()), judged.loadCase());
    }

    private List<Measure> now(List<Measure> measures) {
        List<Measure> same = new ArrayList<>(measures.size());
        for (Measure measure : measures) {
            same.add(now.get(measure));
        }
        return same;
    }
}
