package fitworthy.effect;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.annotation.JsonValue;
import fitworthy.advice.Advice;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.DoesNotApply;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Held;
import fitworthy.advice.Outcome.Met;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.advice.Outcome.Reason;
import fitworthy.batch.ComparedFigures;
import fitworthy.book.FormerIds;
import fitworthy.book.Practice;
import fitworthy.book.Severity;
import fitworthy.figures.measure.Measure;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Missing;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One rule that comes out otherwise on one subject in one loading.
 *
 * @param what in which ways
 * @param besides other figures of a finding that are not the same on both sides, each as {@code 84 L -> 90 L}; null where
 *     all are
 */
public record Difference(
        String id,
        String subject,
        @JsonProperty("case") String in,
        List<What> what,
        State before,
        State after,
        Map<String, String> besides) {

    private static final List<String> WORST_FIRST = Stream.of(Severity.values())
            .map(severity -> Words.hyphenated(severity.name()))
            .toList();

    /** A way to come out otherwise. */
    public enum What {
        GAINED("gained"),
        LOST("lost"),
        /** Another severity, or a waiver that counts on one side only. */
        SEVERITY("with another severity or waiver"),
        FIGURES("with other figures"),
        NOT_ASSESSED("now not assessed"),
        ASSESSED("no longer not assessed"),
        /** Not assessed on both sides, for want of different figures. */
        MISSING("lacking other figures"),
        /** In order before, while its question does not arise now. */
        SILENCED("in order before and now not asked"),
        /** What was found, met or not assessed by a rule that is retired after the change, or not in the book. */
        GONE("no longer checked");

        private final String words;

        What(String words) {
            this.words = words;
        }

        /** It as a program reads it. */
        @JsonValue
        public String word() {
            return Words.hyphenated(name());
        }

        /** It as it is said of a number of findings. */
        String words() {
            return words;
        }
    }

    /**
     * How a rule came out.
     *
     * @param outcome the severity of a finding; else {@code met}, {@code not-assessed}, {@code does-not-apply} or, where
     *     nothing is said, {@code none}
     * @param waived true, or null
     * @param missing fields of the sheet or practice values that are missing, or null
     */
    public record State(String outcome, Boolean waived, @JsonUnwrapped ComparedFigures figures, List<String> missing) {

        private static final String NOT_ASSESSED = "not-assessed";
        private static final String MET = "met";
        private static final String HELD = "in-order-if-guesses-hold";

        static State of(Outcome outcome) {
            if (outcome instanceof Finding finding) {
                return new State(
                        Words.hyphenated(
                                finding.judged().card().severity().value().name()),
                        finding.waiver().isPresent() ? true : null,
                        ComparedFigures.of(finding.judged(), finding.comparison()),
                        null);
            }
            if (outcome instanceof NotAssessed not) {
                return new State(
                        NOT_ASSESSED,
                        null,
                        ComparedFigures.NONE,
                        not.missing().stream().map(Missing::path).toList());
            }
            if (outcome instanceof Held held) {
                return new State(HELD, null, ComparedFigures.of(held.judged(), held.comparison()), null);
            }
            if (outcome instanceof Met met) {
                return new State(MET, null, ComparedFigures.of(met.judged(), met.comparison()), null);
            }
            return new State(
                    outcome instanceof DoesNotApply ? "does-not-apply" : "none", null, ComparedFigures.NONE, null);
        }

        boolean isFinding() {
            return WORST_FIRST.contains(outcome);
        }

        /** Whether something was found, met or not assessed. */
        boolean isSaid() {
            return isFinding() || isNotAssessed() || outcome.equals(MET);
        }

        boolean isInOrder() {
            return outcome.equals(MET) || outcome.equals(HELD);
        }

        boolean isNotAssessed() {
            return outcome.equals(NOT_ASSESSED);
        }
    }

    /**
     * Everything that comes out otherwise, by the worse of both sides. What is met, or not spoken of, on both sides is
     * none, and neither is another id for the same rule.
     */
    static List<Difference> between(Advice before, Advice after) {
        Renaming renaming = Renaming.of(before.book(), after.book());
        Map<Outcome.Key, Outcome> old = outcomes(before, renaming);
        Map<Outcome.Key, Outcome> now = outcomes(after, renaming);
        Set<Outcome.Key> keys = new LinkedHashSet<>(old.keySet());
        keys.addAll(now.keySet());
        List<Difference> differences = new ArrayList<>();
        for (Outcome.Key key : keys) {
            State was = State.of(old.get(key));
            State is = State.of(now.get(key));
            List<What> what = what(was, is);
            Map<String, String> besides =
                    besides(old.get(key), now.get(key), after.book().formerIds());
            if (!besides.isEmpty() && !what.contains(What.FIGURES)) {
                what.add(What.FIGURES);
            }
            if (was.isInOrder() && now.get(key) instanceof DoesNotApply off && off.reason() != Reason.SAID_ALREADY) {
                what.add(What.SILENCED);
            }
            if (was.isSaid() && !checked(renaming.in(after.book(), key.rule()), after)) {
                what.add(What.GONE);
            }
            if (!what.isEmpty()) {
                differences.add(new Difference(
                        key.rule(), key.subject(), key.loadCase(), what, was, is, besides.isEmpty() ? null : besides));
            }
        }
        differences.sort(Comparator.comparing((Difference difference) -> Stream.of(difference.before, difference.after)
                        .filter(State::isFinding)
                        .mapToInt(state -> WORST_FIRST.indexOf(state.outcome))
                        .min()
                        .orElse(WORST_FIRST.size()))
                .thenComparing(Difference::id)
                .thenComparing(Difference::in)
                .thenComparing(Difference::subject));
        return differences;
    }

    /** What a finding on both sides says besides its value, limit and margin, as far as that differs. */
    private static Map<String, String> besides(Outcome was, Outcome is, FormerIds former) {
        Map<String, String> differing = new TreeMap<>();
        if (was instanceof Finding before && is instanceof Finding after) {
            Map<String, String> now = besides(after, former);
            besides(before, former).forEach((name, shown) -> {
                String other = now.get(name);
                if (other != null && !other.equals(shown)) {
                    differing.put(name, shown + " -> " + other);
                }
            });
        }
        return differing;
    }

    private static Map<String, String> besides(Finding finding, FormerIds former) {
        boolean compared = finding.comparison().isPresent();
        Map<String, String> shown = new TreeMap<>();
        for (Measure measure : finding.evidence()) {
            boolean own = measure == finding.judged().measure();
            if (!own || !compared) {
                String subject =
                        measure.getSubject().equals(finding.judged().subject()) ? "" : " of " + measure.getSubject();
                shown.put(measure.getName() + subject, Wording.value(measure));
            }
        }
        for (Practice value : finding.practice()) {
            if (!compared || !value.id().equals(finding.judged().card().against())) {
                shown.put(former.present(value.id()), Wording.value(value));
            }
        }
        return shown;
    }

    private static Map<Outcome.Key, Outcome> outcomes(Advice advice, Renaming renaming) {
        return advice.outcomes()
                .collect(Collectors.toMap(
                        outcome -> new Outcome.Key(
                                renaming.present(outcome.key().rule()),
                                outcome.key().subject(),
                                outcome.key().loadCase()),
                        outcome -> outcome));
    }

    /** Whether a rule is in the book and not retired on the sheet's day. */
    private static boolean checked(String id, Advice advice) {
        return advice.book().cards().containsKey(id)
                && advice.book().retired(id, advice.sheet().asOf()).isEmpty();
    }

    private static List<What> what(State was, State is) {
        Map<What, Boolean> ways = new EnumMap<>(What.class);
        if (was.isFinding() && is.isFinding()) {
            ways.put(What.SEVERITY, !was.outcome.equals(is.outcome) || !Objects.equals(was.waived, is.waived));
            ways.put(What.FIGURES, !was.figures.equals(is.figures));
        }
        ways.put(What.GAINED, is.isFinding() && !was.isFinding());
        ways.put(What.LOST, was.isFinding() && !is.isFinding());
        ways.put(What.NOT_ASSESSED, is.isNotAssessed() && !was.isNotAssessed());
        ways.put(What.ASSESSED, was.isNotAssessed() && !is.isNotAssessed());
        ways.put(What.MISSING, was.isNotAssessed() && is.isNotAssessed() && !was.missing.equals(is.missing));
        return ways.entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(ArrayList::new));
    }
}
