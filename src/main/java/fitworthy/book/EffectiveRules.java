package fitworthy.book;

import fitworthy.book.Book.Lookup;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.rules.RuleText;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What of a book is in force in one region from one day of change to the next. */
public final class EffectiveRules {

    /**
     * A rule with what it looks at and compares with.
     *
     * @param text what its condition mentions
     * @param card its card
     * @param judged the measure it judges
     * @param others the further measures that its card is about
     * @param joined the measures whose number is multiplied in its matches
     * @param applies whether all its practice values apply there; a rule has nothing to say where one does not
     * @param values the practice values that are recorded
     * @param unrecorded ids of those that are not
     */
    public record Rule(
            RuleText text,
            Card card,
            MeasureKind judged,
            List<MeasureKind> others,
            List<MeasureKind> joined,
            boolean applies,
            List<Practice> values,
            List<String> unrecorded) {

        public String id() {
            return text.id();
        }
    }

    private final Map<String, Lookup> lookups;
    private final List<Practice> practice = new ArrayList<>();
    private final List<Rule> rules = new ArrayList<>();
    /** As asked for last, if it was. */
    private volatile RuleSplit split;

    EffectiveRules(Map<String, Lookup> lookups, Map<String, RuleText> rules, Map<String, Card> cards) {
        this.lookups = lookups;
        for (Lookup each : lookups.values()) {
            if (each instanceof Lookup.Found found) {
                practice.add(found.practice());
            }
        }
        Map<String, MeasureKind> kinds = Measures.kinds();
        for (RuleText text : rules.values()) {
            this.rules.add(rule(text, cards.get(text.id()), kinds));
        }
    }

    private Rule rule(RuleText text, Card card, Map<String, MeasureKind> kinds) {
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
        return new Rule(
                text,
                card,
                kinds.get(card.judges()),
                List.copyOf(others),
                text.joined().stream().map(kinds::get).toList(),
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

    /** The rules split by whether they look at measures of the kinds of these, or of any asked for before. */
    public RuleSplit split(List<List<Measure>> loaded) {
        RuleSplit last = split;
        if (last == null || !last.covers(loaded)) {
            Set<MeasureKind> kinds = Collections.newSetFromMap(new IdentityHashMap<>());
            if (last != null) {
                kinds.addAll(last.kinds());
            }
            loaded.forEach(measures -> measures.forEach(each -> kinds.add(each.kind())));
            last = RuleSplit.of(rules, Measures.kinds(), kinds);
            split = last;
        }
        return last;
    }
}
