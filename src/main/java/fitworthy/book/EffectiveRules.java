package fitworthy.book;

import fitworthy.book.Practice.Lookup;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.rules.Guards;
import fitworthy.rules.RuleText;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What of a book is in force in one region from one day of change to the next. */
public final class EffectiveRules {

    private final Map<String, Lookup> lookups;
    private final List<Practice> practice = new ArrayList<>();
    private final RuleSplit split;
    private final Map<String, Card> cards;

    /** @param rules those that are not retired */
    EffectiveRules(Map<String, Lookup> lookups, List<RuleText> rules, Map<String, Card> cards) {
        // Found by hash, for each sheet asks hundreds of times.
        this.lookups = new LinkedHashMap<>(lookups);
        this.cards = new HashMap<>(cards);
        for (Lookup lookup : lookups.values()) {
            if (lookup instanceof Lookup.Found found) {
                practice.add(found.practice());
            }
        }
        Map<String, MeasureKind> kinds = Measures.kinds();
        this.split = RuleSplit.of(rules.stream()
                .map(text -> rule(text, cards.get(text.id()), kinds))
                .toList());
    }

    private EffectiveRule rule(RuleText text, Card card, Map<String, MeasureKind> kinds) {
        boolean applies = true;
        List<Practice> values = new ArrayList<>();
        List<String> unrecorded = new ArrayList<>();
        for (String id : text.practice()) {
            Lookup lookup = lookups.get(id);
            if (lookup instanceof Lookup.Found found) {
                values.add(found.practice());
            } else if (lookup instanceof Lookup.NoneApplies) {
                applies = false;
            } else {
                unrecorded.add(id);
            }
        }
        List<MeasureKind> others = new ArrayList<>();
        for (String name : card.about()) {
            if (!name.equals(card.judges())) {
                others.add(kinds.get(name));
            }
        }
        return new EffectiveRule(
                text,
                card,
                kinds.get(card.judges()),
                List.copyOf(others),
                text.measures().stream().map(kinds::get).toList(),
                text.joined().stream().map(kinds::get).toList(),
                Guards.of(text.asRun().condition(), card.judges(), card.worse()),
                applies,
                List.copyOf(values),
                List.copyOf(unrecorded));
    }

    /** Every practice value looked up, by id. */
    public Map<String, Lookup> lookups() {
        return lookups;
    }

    /** The practice values that are recorded and apply. */
    public List<Practice> practice() {
        return practice;
    }

    /** The card of a rule, in the words of the region. */
    public Card card(String id) {
        return cards.get(id);
    }

    /** The rules, split by whether the loading matters to them. */
    public RuleSplit split() {
        return split;
    }
}
