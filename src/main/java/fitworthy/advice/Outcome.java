package fitworthy.advice;

import fitworthy.book.Card;
import fitworthy.book.Practice;
import fitworthy.figures.measure.Measure;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.rules.RuleText;
import fitworthy.sheet.Waiver;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What became of one rule on one subject: it found something, it was met, it is met if guesses hold, it could not be
 * assessed, or its question does not arise.
 */
public sealed interface Outcome {

    /** Which rule, on what, in which loading. */
    Judged judged();

    /** What it is known by among all that is said of a sheet. */
    default Key key() {
        return new Key(judged().id(), judged().subject(), judged().loadCase());
    }

    /** What it is about, whatever the loading. */
    default Check check() {
        return new Check(judged().id(), judged().subject());
    }

    /**
     * A rule on a subject in a loading.
     *
     * @param loadCase the load case, empty where the outcome does not depend on the loading
     */
    record Key(String rule, String subject, String loadCase) {}

    /** A rule on a subject. */
    record Check(String rule, String subject) {}

    /**
     * A rule applied to a subject.
     *
     * @param id the rule
     * @param card its card
     * @param rule where it stands
     * @param measure the measure it judges
     * @param loadCase the load case, empty where the outcome does not depend on the loading
     */
    record Judged(String id, Card card, RuleText rule, Measure measure, String loadCase) {
        public String subject() {
            return measure.getSubject();
        }
    }

    /** An outcome for which every figure was known. */
    sealed interface Assessed extends Outcome {

        /** The measures that were looked at. */
        List<Measure> evidence();

        /** The practice values that were looked at. */
        List<Practice> practice();

        /** Absent where the rule compares nothing with a limit. */
        default Optional<Comparison> comparison() {
            return Comparison.of(judged(), practice());
        }
    }

    /**
     * The rule's condition holds.
     *
     * @param waiver what a person wrote who stands for it
     */
    record Finding(Judged judged, List<Measure> evidence, List<Practice> practice, Optional<Waiver> waiver)
            implements Assessed {}

    /** The rule was assessed and its condition does not hold. */
    record Met(Judged judged, List<Measure> evidence, List<Practice> practice) implements Assessed {}

    /**
     * As far as the sheet goes the rule was met, or its question does not arise; but that rests on guesses.
     *
     * @param guesses the fields that were guessed, without which it is not assessed or comes out otherwise
     */
    record Held(Judged judged, List<Measure> evidence, List<Practice> practice, List<Missing> guesses)
            implements Assessed {

        static Held of(Met met, List<Missing> guesses) {
            return new Held(met.judged(), met.evidence(), met.practice(), guesses);
        }

        static Held of(NotAssessed open, List<Missing> guesses) {
            return new Held(open.judged(), List.of(), List.of(), guesses);
        }

        /** Whether anything is held against a limit: else the question does not arise if the guesses hold. */
        public boolean arises() {
            return !evidence.isEmpty();
        }

        @Override
        public Optional<Comparison> comparison() {
            return arises() ? Assessed.super.comparison() : Optional.empty();
        }
    }

    /** A figure or a practice value is missing. */
    record NotAssessed(Judged judged, List<Missing> missing) implements Outcome {

        /** The order in which an advice has them. */
        static final Comparator<NotAssessed> GRAVEST_FIRST = Comparator.comparing(
                        (NotAssessed open) -> open.judged().card().severity().value())
                .thenComparing(open -> open.judged().id());

        /** What it waits for: where the rule book itself lacks something that alone, as nothing else would help. */
        public List<Missing> waitsFor() {
            List<Missing> gaps = missing.stream().filter(Missing::isInBook).toList();
            return gaps.isEmpty() ? missing : gaps;
        }
    }

    /**
     * The question of the rule does not arise, so that it is neither met nor open.
     *
     * @param practice the practice values that are recorded
     */
    record DoesNotApply(Judged judged, List<Practice> practice, Reason reason) implements Outcome {

        /** What would be compared with a limit; absent where either is not known, or whether the rule compares anything. */
        public Optional<Comparison> comparison() {
            Card card = judged.card();
            boolean limited = !card.againstPractice()
                    || practice.stream().anyMatch(value -> value.id().equals(card.against()));
            return reason == Reason.GUARD && limited && judged.measure().isKnown()
                    ? Comparison.of(judged, practice)
                    : Optional.empty();
        }

        DoesNotApply because(Reason other) {
            return new DoesNotApply(judged, practice, other);
        }
    }

    /** Why the question of a rule does not arise. */
    enum Reason {
        /** The region sets no such limit. */
        NO_SUCH_LIMIT("no such limit applies in this region"),
        /** A measure that the rule looks at besides is not there. */
        NOTHING_BESIDES("the plan has nothing else that it looks at"),
        /** Another part of the rule's condition does not hold. */
        GUARD("another condition of it is not met"),
        /** A finding at least as severe stands against the same measure. */
        SAID_ALREADY("a finding as severe already covers the same measure");

        private final String words;

        Reason(String words) {
            this.words = words;
        }

        /** It as the end of a sentence. */
        public String words() {
            return words;
        }
    }

    /**
     * A value held against a limit, in the measure's unit used inside.
     *
     * @param value the value
     * @param limit what it is held against
     * @param margin how much is left; negative by how much the limit is passed
     * @param valueTolerance tolerance of the value
     * @param limitTolerance tolerance of what it is held against
     * @param against the practice value that is the limit; empty where the measure has its own
     */
    record Comparison(
            double value,
            double limit,
            double margin,
            double valueTolerance,
            double limitTolerance,
            Optional<Practice> against) {

        /** What is surely passed first, then what could turn out either way; of these what leaves least. */
        static final Comparator<Comparison> WORST_FIRST = Comparator.<Comparison>comparingInt(
                        each -> each.uncertain() ? 1 : each.margin() < 0 ? 0 : 2)
                .thenComparingDouble(Comparison::margin);

        /** Whether a house set the limit. */
        public boolean house() {
            return against.flatMap(Practice::house).isPresent();
        }

        /** Tolerance of the margin: of value and limit together. */
        public double tolerance() {
            return Math.hypot(valueTolerance, limitTolerance);
        }

        /** Whether the tolerance is large enough to turn the verdict. */
        public boolean uncertain() {
            return Math.abs(margin) < Figure.rounded(tolerance());
        }

        /** Whether the limit is passed by less than can be known: neither a pass nor surely a fault. */
        public boolean tooClose() {
            return margin < 0 && uncertain();
        }

        private static Optional<Comparison> of(Judged judged, List<Practice> practice) {
            Card card = judged.card();
            if (card.against().isEmpty()) {
                return Optional.empty();
            }
            Measure measure = judged.measure();
            Optional<Practice> against = practice.stream()
                    .filter(value -> value.id().equals(card.against()))
                    .findFirst();
            double limit = card.againstLimit()
                    ? measure.getLimit()
                    : against.orElseThrow().value();
            double headroom = limit - measure.getValue();
            return Optional.of(new Comparison(
                    measure.getValue(),
                    limit,
                    card.atLeast() ? -headroom : headroom,
                    measure.getValueTolerance(),
                    card.againstLimit() ? measure.getLimitTolerance() : 0,
                    against));
        }
    }
}
