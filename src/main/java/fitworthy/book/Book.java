package fitworthy.book;

import fitworthy.figures.plan.Tables;
import fitworthy.rules.Condition;
import fitworthy.rules.RuleText;
import fitworthy.source.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.kie.api.runtime.KieSessionsPool;

/**
 * A rule book that has passed its contract.
 *
 * @param cover its name, edition and general words
 * @param hash digest of every file it was read from
 * @param regions regions by id
 * @param cards cards by id
 * @param rules its rules, by id
 * @param practice practice values by id
 * @param sources texts cited, by id
 * @param places where cards and practice values stand, by id
 * @param tables published tables
 * @param sessions sessions over the compiled rules
 * @param house what a shop sets over it
 * @param values the practice values of each region by day
 */
public record Book(
        Cover cover,
        String hash,
        Map<String, Region> regions,
        Map<String, Card> cards,
        Map<String, RuleText> rules,
        Map<String, DatedLimit> practice,
        Map<String, Source> sources,
        Map<String, Place> places,
        Tables tables,
        KieSessionsPool sessions,
        House house,
        PracticeValues values) {

    public Book(
            Cover cover,
            String hash,
            Map<String, Region> regions,
            Map<String, Card> cards,
            Map<String, RuleText> rules,
            Map<String, DatedLimit> practice,
            Map<String, Source> sources,
            Map<String, Place> places,
            Tables tables,
            KieSessionsPool sessions,
            House house) {
        this(
                cover,
                hash,
                regions,
                cards,
                rules,
                practice,
                sources,
                places,
                tables,
                sessions,
                house,
                new PracticeValues(regions, practice, house, rules, cards));
    }

    /** A practice value looked up: the value, or that none applies there, or (empty) that nothing is recorded. */
    public sealed interface Lookup {
        record Found(Practice practice) implements Lookup {}

        record NoneApplies() implements Lookup {}

        record NotRecorded() implements Lookup {}
    }

    /** The topics, each a folder of the book. */
    public Set<String> topics() {
        Set<String> topics = new TreeSet<>();
        cards.keySet().forEach(id -> topics.add(topic(id)));
        return topics;
    }

    /** The topic of a rule or practice value. */
    public static String topic(String id) {
        return id.substring(0, id.indexOf('.'));
    }

    /** The rules that compare with a practice value. */
    public List<String> users(String value) {
        return rules.keySet().stream()
                .filter(id -> rules.get(id).practice().contains(value))
                .toList();
    }

    /** When a rule fires. */
    public Condition condition(String id) {
        return rules.get(id).condition();
    }

    /** This book with what a shop sets over it. Its values stay; the cards carry the shop's severities. */
    public Book with(House shop) {
        Map<String, Card> rated = new TreeMap<>(cards);
        shop.severities()
                .forEach((id, set) ->
                        rated.put(id, cards.get(id).with(set.set().severity().value())));
        return new Book(cover, hash, regions, rated, rules, practice, sources, places, tables, sessions, shop);
    }

    /** A region and the regions whose values hold where it records none, nearest first. */
    public List<String> lineage(String region) {
        return PracticeValues.lineage(regions, region);
    }

    /** A practice value in a region on a day: the shop's where it sets one, else what the book records. */
    public Lookup lookup(String id, String region, LocalDate day) {
        return inForce(region, day).lookups().get(id);
    }

    /** What of it is in force in a region on a day. */
    public EffectiveRules inForce(String region, LocalDate day) {
        return values.at(region, day);
    }
}
