package fitworthy.sheet;

import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.ShopWords.Meaning;
import fitworthy.sheet.ShopWords.Thing;
import java.util.List;
import java.util.Map;

/**
 * A part, or what else is planned.
 *
 * @param said what was said of it by the fields that hold it, such as mass, length or the place under at
 * @param shelf the list of a sheet that takes it from the shelf; empty where it does not lie there
 * @param replaces whether the shelf says already what comes off for it
 */
public record Wanted(String name, Meaning meaning, Map<String, String> said, String shelf, boolean replaces) {

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
