package fitworthy.book;

import fitworthy.book.Practice.Lookup;
import fitworthy.quantity.Choice;
import fitworthy.rules.RuleText;
import fitworthy.rules.Stricter;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * The practice values of a book, the house's among them; those of a region are looked up once from one day of change to
 * the next.
 */
final class PracticeValues {

    private final Map<String, Region> regions;
    private final Map<String, DatedLimit> practice;
    private final House house;
    private final Map<String, RuleText> rules;
    private final Map<String, Card> cards;
    private final Map<String, Source> sources;
    private final NavigableSet<LocalDate> changes = new TreeSet<>();
    private final NavigableSet<LocalDate> registrations = new TreeSet<>();
    private final Map<Asked, EffectiveRules> looked = new ConcurrentHashMap<>();

    /**
     * What is looked up once.
     *
     * @param begun the day of change before the day asked for
     * @param registered the like of the vehicle's first registration; null where that is not known
     */
    private record Asked(String region, LocalDate begun, LocalDate registered) {}

    PracticeValues(
            Map<String, Region> regions,
            Map<String, DatedLimit> practice,
            House house,
            Map<String, RuleText> rules,
            Map<String, Card> cards,
            Map<String, Source> sources) {
        this.sources = sources;
        this.regions = regions;
        this.practice = practice;
        this.house = house;
        this.rules = rules;
        this.cards = cards;
        practice.values().forEach(entry -> {
            entry.values().forEach(value -> {
                changes.add(value.from());
                Stream.ofNullable(value.registeredFrom()).forEach(registrations::add);
            });
            Stream.ofNullable(entry.ends()).forEach(changes::add);
        });
        cards.values().forEach(card -> Stream.ofNullable(card.ends()).forEach(changes::add));
        house.page().values().forEach(value -> changes.add(value.from()));
    }

    /** What is in force in a region on a day. @param registered when the vehicle was first registered; null if not known */
    EffectiveRules at(String region, LocalDate day, LocalDate registered) {
        return looked.computeIfAbsent(
                new Asked(region, last(changes, day), registered == null ? null : last(registrations, registered)),
                this::inForce);
    }

    /** The last of some days up to one. */
    private static LocalDate last(NavigableSet<LocalDate> days, LocalDate day) {
        return Objects.requireNonNullElse(days.floor(day), LocalDate.MIN);
    }

    private EffectiveRules inForce(Asked asked) {
        List<String> lineage = Region.lineage(regions, asked.region());
        LocalDate begun = asked.begun();
        Map<String, Lookup> values = new TreeMap<>();
        for (String id : practice.keySet()) {
            values.put(id, value(id, lineage, asked));
        }
        Map<String, Card> worded = new TreeMap<>();
        InRegion there = new InRegion(regions, sources, lineage);
        cards.forEach((id, card) -> worded.put(id, there.card(card)));
        return new EffectiveRules(
                values,
                rules.values().stream()
                        .filter(rule -> Retired.of(rule.id(), cards.get(rule.id()), practice)
                                .filter(ended -> ended.on(begun))
                                .isEmpty())
                        .toList(),
                worded);
    }

    /** The house's where it sets one, else what the book records; neither once it has ended. */
    private Lookup value(String id, List<String> lineage, Asked asked) {
        LocalDate begun = asked.begun();
        Optional<Retired> ended = Retired.of(id, practice.get(id)).filter(retired -> retired.on(begun));
        if (ended.isPresent()) {
            return new Lookup.Ended(ended.get().day());
        }
        Lookup recorded = recorded(id, lineage, begun, asked.registered());
        return house.value(id, lineage, begun)
                .map(set -> inPlace(recorded, set, practice.get(id)))
                .orElse(recorded);
    }

    /** A practice value with the house's in place of what the book records; the book's where they say the same. */
    private Lookup inPlace(Lookup recorded, House.Value set, DatedLimit entry) {
        double number = entry.number(set.value());
        if (recorded instanceof Lookup.Found found && found.practice().value() == number) {
            return recorded;
        }
        Practice.HouseValue use = new Practice.HouseValue(
                set, recorded, looser(recorded, number, house.stricter().get(set.practice())));
        String note = use.inPlaceOf() + (use.looser() ? " Looser: " + House.onWhoseWord(set.reason(), set.name()) : "");
        return new Lookup.Found(new Practice(
                set.practice(),
                number,
                entry.unit(),
                entry.meaning(),
                new DatedLimit.Value(
                        set.region(),
                        set.from(),
                        null,
                        set.value(),
                        Choice.of(Basis.HOUSE),
                        List.of(),
                        null,
                        null,
                        "",
                        "",
                        "",
                        note),
                Optional.of(use)));
    }

    /**
     * Whether a number lets more through than what is recorded. A number where nothing was recorded does: a check that
     * was not assessed may now be met. So does any change where it cannot be told which way is stricter.
     */
    private static boolean looser(Lookup recorded, double number, Stricter stricter) {
        if (recorded instanceof Lookup.Found found) {
            return switch (stricter) {
                case HIGHER -> number < found.practice().value();
                case LOWER -> number > found.practice().value();
                case UNTOLD -> true;
            };
        }
        return recorded instanceof Lookup.NotRecorded
                || recorded instanceof Lookup.RegistrationAsked
                || stricter == Stricter.UNTOLD;
    }

    /** The latest value that has begun in a region, else the parent region's. */
    private Lookup recorded(String id, List<String> lineage, LocalDate day, LocalDate registered) {
        DatedLimit entry = practice.get(id);
        if (registered == null && entry.asksRegistration(lineage, day)) {
            return new Lookup.RegistrationAsked();
        }
        return entry.inForce(lineage, day, registered == null ? LocalDate.MAX : registered)
                .map(value -> value.none()
                        ? new Lookup.NoneApplies()
                        : new Lookup.Found(new Practice(
                                id,
                                entry.number(value.value()),
                                entry.unit(),
                                entry.meaning(),
                                value,
                                Optional.empty())))
                .orElseGet(Lookup.NotRecorded::new);
    }
}
