package fitworthy.book;

import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Tables;
import fitworthy.rules.Condition;
import fitworthy.rules.RuleText;
import fitworthy.sheet.Sheet;
import fitworthy.source.Located;
import fitworthy.source.Place;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
 * @param usual what fields of a sheet commonly hold
 * @param places where cards, practice values and sources stand, by id
 * @param tables published tables
 * @param usualPlaces the places in words that a sheet may name
 * @param house what the house sets over it
 * @param values the practice values of each region by day
 * @param formerIds what was called otherwise before
 */
public record Book(
        TitlePage cover,
        String hash,
        Map<String, Region> regions,
        Map<String, Card> cards,
        Map<String, RuleText> rules,
        Map<String, DatedLimit> practice,
        Map<String, Source> sources,
        UsualFigures usual,
        Map<String, Located> places,
        Tables tables,
        UsualPlaces usualPlaces,
        House house,
        PracticeValues values,
        FormerIds formerIds) {

    public Book(
            TitlePage cover,
            String hash,
            Map<String, Region> regions,
            Map<String, Card> cards,
            Map<String, RuleText> rules,
            Map<String, DatedLimit> practice,
            Map<String, Source> sources,
            UsualFigures usual,
            Map<String, Located> places,
            Tables tables,
            UsualPlaces usualPlaces,
            House house) {
        this(
                cover,
                hash,
                regions,
                cards,
                rules,
                practice,
                sources,
                usual,
                places,
                tables,
                usualPlaces,
                house,
                new PracticeValues(regions, practice, house, rules, cards, sources),
                new FormerIds(cards, practice));
    }

    /** What people call each region, by its id. */
    public Map<String, List<String>> regionNames() {
        Map<String, List<String>> names = new LinkedHashMap<>();
        regions.forEach((id, region) -> names.put(
                id,
                Stream.concat(Stream.of(region.name()), region.also().stream()).toList()));
        return names;
    }

    /** The topics, each a folder of the book. */
    public Set<String> topics() {
        Set<String> topics = new TreeSet<>();
        cards.keySet().forEach(id -> topics.add(topic(id)));
        return topics;
    }

    /** The topic of a rule or practice value; all of it where it names none, which is a fault of the book. */
    public static String topic(String id) {
        int end = id.indexOf('.');
        return end < 0 ? id : id.substring(0, end);
    }

    /** Where a card, a practice value or a source begins. */
    public Place place(String id) {
        return places.get(id).beginning();
    }

    /** The rules that compare with a practice value. */
    public List<String> users(String value) {
        return rules.keySet().stream()
                .filter(id -> rules.get(id).practice().contains(value))
                .toList();
    }

    /** When a rule fires. */
    public Condition condition(String id) {
        return rules.get(id).asRun().condition();
    }

    /** Since when a rule is not checked any more, or from when on it will not be; nothing where no end is set, or no rule. */
    public Optional<Retired> retired(String rule) {
        return Optional.ofNullable(cards.get(rule)).flatMap(card -> Retired.of(rule, card, practice));
    }

    /** The same where that is so on a day. */
    public Optional<Retired> retired(String rule, LocalDate day) {
        return retired(rule).filter(ended -> ended.on(day));
    }

    /**
     * Why nothing compares with a practice value any more on a day: it has ended, or all its rules have, in words;
     * nothing where it still counts.
     */
    public Optional<String> unused(String value, LocalDate day) {
        Optional<Retired> own = Retired.of(value, practice.get(value)).filter(ended -> ended.on(day));
        List<String> users = users(value);
        boolean idle =
                Arrays.stream(PracticeId.values()).noneMatch(asked -> asked.id().equals(value))
                        && users.stream().allMatch(rule -> retired(rule, day).isPresent());
        return own.map(ended -> "the practice value " + value + " was retired on " + ended.day())
                .or(() -> idle
                        ? users.stream()
                                .map(rule -> retired(rule, day).orElseThrow().words(rule))
                                .findFirst()
                        : Optional.empty());
    }

    /** This book with what a house sets over it. Its values stay; the cards carry the house's severities. */
    public Book with(House house) {
        if (house == this.house) {
            return this;
        }
        Map<String, Card> rated = new TreeMap<>(cards);
        house.severities()
                .forEach((id, set) ->
                        rated.put(id, cards.get(id).with(set.set().severity().value())));
        return new Book(
                cover, hash, regions, rated, rules, practice, sources, usual, places, tables, usualPlaces, house);
    }

    /** This book without some of its rules and their cards; the practice values stay. */
    public Book without(Set<String> ids) {
        Map<String, Card> otherCards = new TreeMap<>(cards);
        Map<String, RuleText> others = new TreeMap<>(rules);
        otherCards.keySet().removeAll(ids);
        others.keySet().removeAll(ids);
        return new Book(
                cover, hash, regions, otherCards, others, practice, sources, usual, places, tables, usualPlaces, house);
    }

    /**
     * What is printed at the end of what is printed for a region: the caution, what the book leaves to others, and how to
     * read its terms and units.
     */
    public String smallPrint(String region) {
        return joined(cover.caution(), nearest(region, Region::leftOpen), terms(region));
    }

    /** Who is asked in a region that does not have somebody; the same where it has. */
    public Party asked(String region, Party wanted) {
        return Region.asked(regions, lineage(region), wanted);
    }

    /** The last of it: what the terms and units are called there; empty where they are called as they are printed. */
    public String terms(String region) {
        return joined(nearest(region, Region::terms), nearest(region, Region::units));
    }

    private static String joined(String... words) {
        return Stream.of(words).filter(each -> !each.isEmpty()).collect(Collectors.joining(" "));
    }

    private String nearest(String region, Function<Region, String> words) {
        return lineage(region).stream()
                .map(regions::get)
                .map(words)
                .filter(said -> !said.isEmpty())
                .findFirst()
                .orElse("");
    }

    /** A region and the regions whose values hold where it records none, nearest first. */
    public List<String> lineage(String region) {
        return Region.lineage(regions, region);
    }

    /**
     * The same for what a sheet writes as its region. Where the book does not know it, what holds anywhere is to be
     * filled in all the same: that the region is wrong is one fault, and nothing else is missing for it.
     */
    public List<String> lineageWritten(String region) {
        return regions.containsKey(region) ? lineage(region) : List.of("any");
    }

    /** A practice value for a sheet: the house's where it sets one, else what the book records. */
    public Practice.Lookup lookup(String id, Sheet sheet) {
        return inForce(sheet).lookups().get(id);
    }

    /** The same in a region on a day, for a vehicle first registered on that day. */
    public Practice.Lookup lookup(String id, String region, LocalDate day) {
        return lookup(id, region, day, day);
    }

    Practice.Lookup lookup(String id, String region, LocalDate day, LocalDate registered) {
        return values.at(region, day, registered).lookups().get(id);
    }

    /** What of it is in force for a sheet: in its region, on its day, for a vehicle of its age. */
    public EffectiveRules inForce(Sheet sheet) {
        return values.at(sheet.region(), sheet.asOf(), sheet.vehicle().registered());
    }
}
