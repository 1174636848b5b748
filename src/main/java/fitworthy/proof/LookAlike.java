package fitworthy.proof;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Met;
import fitworthy.book.Book;
import fitworthy.engine.RuleEngine;
import fitworthy.printout.words.Wording;
import fitworthy.proof.Cases.Case;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * A case that looks like the fault of a rule and is fine.
 *
 * @param text the case
 * @param met what the rule says of it, of the subject and loading that leave least
 */
public record LookAlike(Case text, Met met) {

    /** How near to a limit, as a share of it, a case has to be to look like one beyond it. */
    private static final double NEAR = 0.05;

    /** Finds the look-alikes of one rule after another; a case is run once. */
    public static final class Finder {

        private final RuleEngine engine;
        private final References references;
        private final Map<Case, Advice> advice = new IdentityHashMap<>();

        public Finder(RuleEngine engine, References references) {
            this.engine = engine;
            this.references = references;
        }

        /**
         * The cases that say that a rule is met; where none says so, those of its topic in which it is and nothing of it
         * is found of another subject either. Of these, where
         * it compares, those next to its limit, the nearest first, or else the nearest alone; where it does not
         * compare, those that have fewest other things to say.
         */
        public List<LookAlike> of(String rule) {
            List<Case> named = references.met(rule);
            List<LookAlike> all = new ArrayList<>();
            for (Case each : named.isEmpty() ? references.cases() : named) {
                if (!named.isEmpty() || Book.topic(rule).equals(each.topic()) && !finds(each, rule)) {
                    advice(each).met().stream()
                            .filter(met -> met.judged().id().equals(rule))
                            .min(Comparator.comparingDouble(LookAlike::left))
                            .ifPresent(met -> all.add(new LookAlike(each, met)));
                }
            }
            all.sort(Comparator.comparingDouble(LookAlike::distance));
            double most = all.isEmpty()
                    ? 0
                    : all.get(0).met().comparison().isPresent()
                            ? Math.max(NEAR, all.get(0).distance())
                            : all.get(0).distance();
            return all.stream()
                    .filter(pair -> pair.distance() <= most)
                    .limit(named.isEmpty() ? 1 : Long.MAX_VALUE)
                    .toList();
        }

        private static boolean finds(Case each, String rule) {
            return each.text().expect().stream()
                    .anyMatch(finding -> finding.id().equals(rule));
        }

        private Advice advice(Case each) {
            return advice.computeIfAbsent(each, text -> Adviser.advise(engine.with(text.house()), text.sheet()));
        }
    }

    private double distance() {
        Cases.Text says = text.text();
        return met.comparison().isPresent()
                ? left(met)
                : says.expect().size() + says.notAssessed().size() + says.met().size();
    }

    private static double left(Met met) {
        return met.comparison().map(LookAlike::left).orElse(0.0);
    }

    private static double left(Comparison comparison) {
        return Math.abs(comparison.margin()) / Math.max(Math.abs(comparison.limit()), 1e-9);
    }

    /** Its name, with what was compared. */
    public String words() {
        return text.text().name()
                + met.comparison()
                        .map(compared -> " (" + Wording.comparison(met.judged(), compared) + ")")
                        .orElse("");
    }
}
