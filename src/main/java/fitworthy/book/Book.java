package fitworthy.book;

import fitworthy.figures.Tables;
import fitworthy.sheet.Dimension;
import fitworthy.sheet.QuantityText;
import fitworthy.source.Place;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.kie.api.KieBase;

/**
 * A rule book that has passed its contract.
 *
 * @param cover its name, edition and general words
 * @param hash digest of every file it was read from
 * @param regions regions by id
 * @param cards cards by id
 * @param rules what each rule mentions, by id
 * @param practice practice values by id
 * @param sources texts cited, by id
 * @param places where cards and practice values stand, by id
 * @param tables published tables
 * @param base the compiled rules
 * @param house what a shop sets over it
 */
public record Book(Cover cover, String hash, Map<String, Region> regions, Map<String, Card> cards,
        Map<String, RuleText> rules, Map<String, PracticeEntry> practice, Map<String, Source> sources,
        Map<String, Place> places, Tables tables, KieBase base, House house) {

    /** A practice value looked up: the value, or that none applies there, or (empty) that nothing is recorded. */
    public sealed interface Lookup {
        record Found(Practice practice) implements Lookup {}

        record NoneApplies() implements Lookup {}

        record NotRecorded() implements Lookup {}
    }

    /** The topics, each a folder of the book. */
    public Set<String> topics() {
        Set<String> topics = new TreeSet<>();
        cards.keySet().forEach(id -> topics.add(id.substring(0, id.indexOf('.'))));
        return topics;
    }

    /**
     * The condition of a rule, read again from its file.
     *
     * @throws UncheckedIOException where the file can no longer be read
     */
    public Condition condition(String id) {
        try {
            return RuleParser.condition(Files.readString(Path.of(rules.get(id).file())), id);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** This book with what a shop sets over it. Its values stay; the cards carry the shop's severities. */
    public Book with(House shop) {
        Map<String, Card> rated = new TreeMap<>(cards);
        shop.severities().forEach((id, set) -> rated.put(id, cards.get(id).with(set.set().severity().value())));
        return new Book(cover, hash, regions, rated, rules, practice, sources, places, tables, base, shop);
    }

    /** A region and the regions whose values hold where it records none, nearest first. */
    public List<String> lineage(String region) {
        List<String> lineage = new ArrayList<>();
        for (String each = region; each != null && !each.isEmpty(); each = regions.get(each).parent()) {
            lineage.add(each);
        }
        return lineage;
    }

    /** A practice value in a region on a day: the shop's where it sets one, else what the book records. */
    public Lookup lookup(String id, String region, LocalDate day) {
        Lookup recorded = recorded(id, region, day);
        return house.value(id, lineage(region), day).map(set -> house.over(recorded, set, practice.get(id)))
                .orElse(recorded);
    }

    /** The latest value that has begun in a region, else the parent region's. */
    private Lookup recorded(String id, String region, LocalDate day) {
        PracticeEntry entry = practice.get(id);
        for (String each : lineage(region)) {
            Optional<PracticeEntry.Value> value = entry.values().stream()
                    .filter(candidate -> candidate.region().equals(each) && !candidate.from().isAfter(day))
                    .max(Comparator.comparing(PracticeEntry.Value::from));
            if (value.isPresent()) {
                return value.get().none() ? new Lookup.NoneApplies()
                        : new Lookup.Found(new Practice(id, number(entry, value.get()), entry.unit(), entry.meaning(),
                                value.get(), Optional.empty()));
            }
        }
        return new Lookup.NotRecorded();
    }

    static double number(PracticeEntry entry, PracticeEntry.Value value) {
        try {
            return QuantityText.parse(value.value(), Dimension.ofUnit(entry.unit())).value();
        } catch (QuantityText.Unreadable e) {
            throw new IllegalStateException("a practice value passed the contract but is unreadable", e);
        }
    }
}
