package fitworthy.sheet;

import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.ShopWords.Meaning;
import fitworthy.sheet.ShopWords.Thing;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A part, or what else is planned.
 *
 * @param said what was said of it by the fields that hold it, such as mass, length or the place under at
 * @param shelf the list of a sheet that takes it from the shelf; empty where it does not lie there
 * @param replaces whether the shelf says already what comes off for it
 * @param feeds the circuits that the shelf keeps for it
 * @param reason what it is wished for, which no field holds; empty where it was not said
 * @param ownRims whether they are tyres for the wheels that the vehicle has, which no field holds either
 */
public record Wanted(
        String name,
        Meaning meaning,
        Map<String, String> said,
        String shelf,
        boolean replaces,
        List<Feed> feeds,
        String reason,
        boolean ownRims) {

    /**
     * A circuit of the shelf.
     *
     * @param board the circuit that it hangs on; empty where that is the battery
     */
    public record Feed(String name, String board) {}

    /** What does not lie on the shelf. */
    public Wanted(String name, Meaning meaning, Map<String, String> said) {
        this(name, meaning, said, "", false, List.of());
    }

    public Wanted(
            String name, Meaning meaning, Map<String, String> said, String shelf, boolean replaces, List<Feed> feeds) {
        this(name, meaning, said, shelf, replaces, feeds, "", false);
    }

    /** The same, of which something else was said. */
    public Wanted with(Map<String, String> told) {
        return new Wanted(name, meaning, told, shelf, replaces, feeds, reason, ownRims);
    }

    /** The same, wished for a reason. */
    public Wanted because(String told) {
        return new Wanted(name, meaning, said, shelf, replaces, feeds, told, ownRims);
    }

    /** The same, as tyres for the wheels that the vehicle has. */
    public Wanted onOwnRims() {
        return new Wanted(name, meaning, said, shelf, replaces, feeds, reason, true);
    }

    /** Whether it is of the shelf, and its place was said in words. */
    public boolean isPlaced() {
        return !shelf.isEmpty() && said.containsKey("at");
    }

    /** The same where the shelf has it. */
    public Wanted whereItLies() {
        Map<String, String> others = new LinkedHashMap<>(said);
        others.remove("at");
        return with(others);
    }

    /** The field of a kind that asks where on the vehicle it stands, in words of its own. */
    public static final String ROOM = "place";

    /** What may take the place of a tub, the nearest to it first. */
    private static final List<Kind> BODIES = List.of(Kind.TRAY, Kind.CANOPY);

    /** Whether it is of the kind by itself, and does not only bring such a part along. */
    public boolean isFirst(Kind kind) {
        return !meaning.kinds().isEmpty() && meaning.kinds().get(0) == kind;
    }

    /** Whether it is a tray or canopy. */
    public boolean isBody() {
        return BODIES.stream().anyMatch(this::isFirst);
    }

    /** What the wheels among these are called; nothing where there are none. */
    public static Optional<String> wheels(Collection<Wanted> parts) {
        return parts.stream()
                .filter(part -> part.isFirst(Kind.WHEELS))
                .map(Wanted::name)
                .findFirst();
    }

    /** The trays and canopies, one that takes the place of the tub before one that may stand on it. */
    static List<Wanted> bodies(List<Wanted> parts) {
        return BODIES.stream()
                .flatMap(kind -> parts.stream().filter(part -> part.isFirst(kind)))
                .toList();
    }

    /** What it says of the tub. */
    public TubFate tub() {
        List<Thing> things = meaning.things();
        return things.contains(Thing.TUB_OFF)
                ? TubFate.COMES_OFF
                : things.contains(Thing.TUB_STAYS) ? TubFate.STAYS_ON : TubFate.NOT_SAID;
    }

    /** Whether its kind has to say at which end of the vehicle it is. */
    public boolean hasEnds() {
        return meaning.kinds().stream().limit(1).anyMatch(PartEnds::has);
    }

    /**
     * The same at one end, which its name then says; nothing where its kind does not ask for one, or its name says another.
     *
     * @param end front or rear
     */
    public Optional<Wanted> atEnd(String end) {
        List<String> named = PartEnds.named(name);
        if (!hasEnds() || !named.isEmpty() && !named.equals(List.of(end)) || named.isEmpty() && !shelf.isEmpty()) {
            return Optional.empty();
        }
        String own = named.isEmpty() ? name + " at the " + end : name;
        return Optional.of(new Wanted(own, meaning, said, shelf, replaces, feeds, reason, ownRims));
    }

    /** Whether it is for one end, of which another wish of its kind means both. */
    public boolean takesEndOf(Wanted whole, Kind kind) {
        return isFirst(kind)
                && whole.isFirst(kind)
                && this != whole
                && PartEnds.has(kind)
                && !PartEnds.named(name).isEmpty()
                && PartEnds.named(whole.name()).isEmpty();
    }
}
