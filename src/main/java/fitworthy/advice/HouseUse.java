package fitworthy.advice;

import fitworthy.book.House;
import fitworthy.book.Practice;
import fitworthy.book.Retired;
import fitworthy.figures.measure.Measure;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a house sets over the book, as it stands with one sheet.
 *
 * @param values its values that stand in place of the book's in the sheet's region on its day
 * @param severities its severities that differ from the book's
 * @param idle what of it made no difference to this sheet
 * @param ended what of it is for a rule or practice value that is asked for no more
 */
public record HouseUse(List<Practice> values, List<House.SetSeverity> severities, List<Idle> idle, List<Ended> ended) {

    /**
     * An entry that made no difference.
     *
     * @param entry it in words, such as {@code mass.side-most of us from 2026-01-01}
     */
    public record Idle(String entry, Why why) {}

    /** An entry that is not needed any more. @param retired since when, in words */
    public record Ended(String entry, String retired) {}

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
        HouseUse use = new HouseUse(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        if (house.isNone()) {
            return use;
        }
        Set<String> rules = arising(advice);
        Set<String> asked = new HashSet<>();
        rules.forEach(id -> asked.addAll(advice.book().rules().get(id).practice()));
        house.page().values().forEach(value -> use.value(value, advice, asked));
        house.page().severities().forEach(rating -> use.severity(rating, advice, rules));
        return use;
    }

    /** The rules whose question arises on the sheet. */
    private static Set<String> arising(Advice advice) {
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
        return rules;
    }

    private void value(House.Value value, Advice advice, Set<String> asked) {
        LocalDate day = advice.sheet().asOf();
        String entry = value.practice() + " of " + value.region() + " from " + value.from();
        Optional<String> retired = advice.book().unused(value.practice(), day);
        if (retired.isPresent()) {
            ended.add(new Ended(entry, retired.get()));
            return;
        }
        Practice now = advice.book().lookup(value.practice(), advice.sheet()) instanceof Practice.Lookup.Found found
                ? found.practice()
                : null;
        boolean inForce = now != null
                && now.house().filter(use -> use.set().equals(value)).isPresent();
        if (inForce) {
            values.add(now);
        }
        if (!inForce || !asked.contains(value.practice())) {
            idle.add(new Idle(entry, inForce ? Why.NOT_ASKED : Why.CHANGES_NOTHING));
        }
    }

    private void severity(House.Rating rating, Advice advice, Set<String> rules) {
        String rule = rating.rule();
        House.SetSeverity set = advice.book().house().severities().get(rule);
        Optional<Retired> retired = advice.book().retired(rule, advice.sheet().asOf());
        if (retired.isPresent()) {
            ended.add(new Ended(rule, retired.get().words(rule)));
            return;
        }
        if (set == null) {
            idle.add(new Idle(rule, Why.CHANGES_NOTHING));
            return;
        }
        severities.add(set);
        if (!rules.contains(rule)) {
            idle.add(new Idle(rule, Why.NOT_ASKED));
        }
    }
}
