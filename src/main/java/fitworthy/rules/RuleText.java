package fitworthy.rules;

import fitworthy.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A rule as its file writes it, and what its condition mentions.
 *
 * @param id its name, which is that of its advice
 * @param place its file, as it was opened, and the line that it begins on
 * @param condition when it fires, as its file says
 * @param evidence the names of what it passes on with its advice
 * @param measures names of the measures it matches
 * @param practice ids of the practice values it matches
 * @param earlier ids of the advice it builds on
 * @param joined names of the measures whose number is multiplied in its matches
 */
public record RuleText(
        String id,
        Place place,
        Condition condition,
        List<String> evidence,
        Set<String> measures,
        Set<String> practice,
        Set<String> earlier,
        List<String> joined) {

    RuleText(String id, Place place, Condition condition, List<String> evidence) {
        this(
                id,
                place,
                condition,
                evidence,
                new TreeSet<>(keys(condition.patterns(), Fact.MEASURE)),
                new TreeSet<>(keys(condition.patterns(), Fact.PRACTICE)),
                new TreeSet<>(keys(condition.patterns(), Fact.ADVISED)),
                keys(condition.joined(), Fact.MEASURE));
    }

    private static List<String> keys(List<Condition.Match> patterns, Fact fact) {
        List<String> keys = new ArrayList<>();
        for (Condition.Match pattern : patterns) {
            if (pattern.fact() == fact) {
                keys.add(pattern.key());
            }
        }
        return keys;
    }

    /**
     * The rule as it is run and explained: what it compares has to be known, whether its file says so or not. What is not
     * known thus never makes it fire.
     */
    public RuleText asRun() {
        return new RuleText(id, place, Known.asked(condition), evidence, measures, practice, earlier, joined);
    }

    /** The rule as a file of its own. */
    @Override
    public String toString() {
        return "rule \"" + id + "\"\nwhen\n    " + condition + "\nthen\n    advice.give(\"" + id + "\", "
                + String.join(", ", evidence) + ");\nend\n";
    }
}
