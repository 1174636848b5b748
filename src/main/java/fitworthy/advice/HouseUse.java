package fitworthy.advice;

import fitworthy.book.House;
import fitworthy.book.Practice;
import fitworthy.figures.measure.Measure;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What a house sets over the book, as it stands with one sheet.
 *
 * @param values its values that stand in place of the book's in the sheet's region on its day
 * @param severities its severities that differ from the book's
 * @param idle what of it made no difference to this sheet
 */
public record HouseUse(List<Practice> values, List<House.SetSeverity> severities, List<Idle> idle) {

    /**
     * An entry that made no difference.
     *
     * @param entry it in words, such as {@code mass.side-most of us from 2026-01-01}
     */
    public record Idle(String entry, Why why) {}

    /** Why an entry made no difference. */
    public enum Why {
        /** It holds in another region or on other days, or says what the book says. */
        CHANGES_NOTHING,
        /** The question does not arise on this sheet. */
        NOT_ASKED
    }

    /** How the house's entries stand with the sheet that was advised on. */
    public static HouseUse of(Advice advice) {
        House house = advice.book().house();
        Set<String> measures = new HashSet<>();
        advice.facts()
                .values()
                .forEach(facts -> facts.forEach(fact -> {
                    if (fact instanceof Measure measure) {
                        measures.add(measure.getName());
                    }
                }));
        Set<String> rules = new HashSet<>(advice.book().cards().keySet());
        rules.removeIf(id -> !measures.contains(advice.book().cards().get(id).judges()));
        Set<String> asked = new HashSet<>();
        rules.forEach(id -> asked.addAll(advice.book().rules().get(id).practice()));
        List<Practice> values = new ArrayList<>();
        List<Idle> idle = new ArrayList<>();
        for (House.Value value : house.page().values()) {
            Practice now = advice.book()
                                    .lookup(
                                            value.practice(),
                                            advice.sheet().region(),
                                            advice.sheet().asOf())
                            instanceof Practice.Lookup.Found found
                    ? found.practice()
                    : null;
            boolean inForce = now != null
                    && now.house().filter(use -> use.set().equals(value)).isPresent();
            if (inForce) {
                values.add(now);
            }
            if (!inForce || !asked.contains(value.practice())) {
                idle.add(new Idle(
                        value.practice() + " of " + value.region() + " from " + value.from(),
                        inForce ? Why.NOT_ASKED : Why.CHANGES_NOTHING));
            }
        }
        for (House.Rating rating : house.page().severities()) {
            if (!house.severities().containsKey(rating.rule())) {
                idle.add(new Idle(rating.rule(), Why.CHANGES_NOTHING));
            } else if (!rules.contains(rating.rule())) {
                idle.add(new Idle(rating.rule(), Why.NOT_ASKED));
            }
        }
        return new HouseUse(
                values,
                house.severities().keySet().stream()
                        .map(house.severities()::get)
                        .toList(),
                idle);
    }
}
