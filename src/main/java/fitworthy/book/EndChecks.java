package fitworthy.book;

import fitworthy.figures.plan.PracticeId;
import fitworthy.rules.Condition;
import fitworthy.rules.Fact;
import fitworthy.rules.RuleText;
import fitworthy.source.NodePath;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** What must hold of the days on which rules and practice values end. */
final class EndChecks {

    private static final NodePath ENDS = NodePath.of("ends");

    private final Map<String, Card> cards;
    private final Map<String, RuleText> rules;
    private final Map<String, DatedLimit> practice;
    private final CardWords.Faults faults;

    EndChecks(
            Map<String, Card> cards,
            Map<String, RuleText> rules,
            Map<String, DatedLimit> practice,
            CardWords.Faults faults) {
        this.cards = cards;
        this.rules = rules;
        this.practice = practice;
        this.faults = faults;
    }

    void check() {
        cards.forEach((id, card) -> {
            if (card.ends() != null) {
                card(id, card);
            }
            if (rules.containsKey(id)) {
                builds(id, card);
            }
        });
        practice.forEach((id, value) -> {
            if (value.ends() != null) {
                value(id, value);
            }
        });
    }

    private void card(String id, Card card) {
        if (!card.ends().isAfter(card.since())) {
            faults.tell(
                    id,
                    "ends on " + card.ends() + ", not after it came into the book",
                    "the first day on which it is checked no more",
                    ENDS);
        }
        Retired.of(id, card, practice)
                .filter(first -> first.day().isBefore(card.ends()))
                .ifPresent(first -> faults.tell(
                        id,
                        "ends on " + card.ends() + ", but " + first.what() + ", with which it compares, on "
                                + first.day(),
                        "ends: " + first.day() + ", or none, since it ends with that value",
                        ENDS));
    }

    private void value(String id, DatedLimit entry) {
        entry.values().stream()
                .filter(value -> !value.from().isBefore(entry.ends()))
                .forEach(value -> faults.tell(
                        id,
                        "a value begins on " + value.from() + ", when it has ended",
                        "a later 'ends', or no such value",
                        DatedLimit.path(entry.values().indexOf(value))));
        if (Arrays.stream(PracticeId.values()).anyMatch(asked -> asked.id().equals(id))) {
            faults.tell(
                    id,
                    "the figures ask for it, so it cannot end",
                    "'ends' on the cards of the rules that compare with it",
                    ENDS);
        }
    }

    /** A rule that adds to the advice of others has nothing to say once those have ended. */
    private void builds(String id, Card card) {
        Condition condition = rules.get(id).condition();
        TreeSet<LocalDate> days = new TreeSet<>();
        rules.get(id).earlier().forEach(earlier -> ended(earlier).ifPresent(end -> days.add(end.day())));
        Optional<LocalDate> alone =
                days.stream().filter(day -> !reached(condition, day)).findFirst();
        boolean ended = alone.isPresent()
                && Retired.of(id, card, practice)
                        .filter(own -> own.on(alone.get()))
                        .isPresent();
        if (alone.isPresent() && !ended) {
            faults.tell(
                    id,
                    "builds on what ends on " + alone.get() + ", and does not end itself",
                    "ends: " + alone.get() + ", or a condition that something else can meet",
                    NodePath.TOP);
        }
    }

    /** Whether the advice that is still given on a day can meet a condition. */
    private boolean reached(Condition condition, LocalDate day) {
        if (condition instanceof Condition.Match match) {
            return match.fact() != Fact.ADVISED
                    || ended(match.key()).filter(end -> end.on(day)).isEmpty();
        }
        if (condition instanceof Condition.None) {
            return true;
        }
        return condition instanceof Condition.Any
                ? condition.parts().stream().anyMatch(part -> reached(part, day))
                : condition.parts().stream().allMatch(part -> reached(part, day));
    }

    private Optional<Retired> ended(String rule) {
        return cards.containsKey(rule) ? Retired.of(rule, cards.get(rule), practice) : Optional.empty();
    }
}
