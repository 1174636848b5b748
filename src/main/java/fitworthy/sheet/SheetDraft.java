package fitworthy.sheet;

import fitworthy.sheet.ShopWords.Thing;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The text of a new build sheet: what was named, and {@code ask} for each figure that nobody has said yet and that the
 * rule book knows nothing usual of, so that nothing in it is made up.
 */
public final class SheetDraft {

    /** What nobody travels without, whether a letter says so or not. */
    private static final List<String> ALONG = List.of("Luggage", "Food");

    private static final Map<String, String> HINTS = Map.of(
            "fitments", "  # mass: its maker or a scale; at: where it sits, such as 'on the roof'",
            "cargo", "  # and what else comes along: tools, a dog, water cans ...");
    /** A trailer that is called so does not hang on a ball, which is what a sheet means that says nothing. */
    private static final Pattern FIFTH_WHEEL = Pattern.compile("(?i)\\b(?:fifth|5th)[ -]?wheel");

    private static final Node.Mapping NOTHING = new Node.Mapping(Place.of(""), Map.of());
    private static final String MAIN_TANK = "Main tank";
    /** What the maker allows, as far as every plan needs it. */
    private static final List<String> RATINGS =
            List.of("gvm", "front-axle", "rear-axle", "gcm", "towing", "ball", "roof");

    private final Whole whole;
    private final DraftItems items;

    /** A trailer, with its loaded mass, ball load and plate; each is empty where it was not said. */
    public record Towed(String name, String mass, String ball, String rated, boolean shelf) {}

    /**
     * What a letter commonly tells beside its wishes.
     *
     * @param mainTank what the vehicle's own tank holds; empty where it was not said
     * @param masses of the people, the driver's first; no more than there are people
     * @param brochure figures of a vehicle that does not lie on the shelf, by their fields, such as ratings.gvm
     * @param trip fields of the trip with what they hold
     * @param readyBy the day by which all has to be done; empty where it was not said
     */
    public record Told(
            TubFate tub,
            String mainTank,
            List<String> masses,
            Map<String, String> brochure,
            Map<String, String> trip,
            String readyBy) {

        /** Nothing. */
        public static final Told NOTHING = new Told(TubFate.NOT_SAID, "", List.of(), Map.of(), Map.of(), "");

        private String ofBrochure(String field) {
            return DraftText.orAsk(brochure.getOrDefault(field, ""));
        }
    }

    /**
     * What stands above all.
     *
     * @param notes lines that are kept as comments
     * @param customer whom the quote is for; empty where it was not said
     * @param quote the quote; empty where it was not said
     */
    public record Heading(List<String> notes, String customer, String quote) {

        /** Nothing. */
        public static final Heading NONE = new Heading(List.of(), "", "");
    }

    /**
     * What the sheet is to hold.
     *
     * @param fuel what the engine burns, diesel or petrol
     * @param people how many are aboard, the driver counted
     * @param shelf whether the vehicle lies on the shelf
     * @param regions among which its region is to be chosen
     */
    public record Whole(
            Heading heading,
            String vehicle,
            boolean shelf,
            Tank.Liquid fuel,
            int people,
            String region,
            List<String> regions,
            LocalDate day,
            List<Wanted> parts,
            Optional<Towed> trailer,
            Told told) {

        private Whole of(List<Wanted> others) {
            return new Whole(heading, vehicle, shelf, fuel, people, region, regions, day, others, trailer, told);
        }

        /** What becomes of the tub: as it was told, else as one of the wishes says. */
        private TubFate tub() {
            return Stream.concat(Stream.of(told.tub()), parts.stream().map(Wanted::tub))
                    .filter(tub -> tub != TubFate.NOT_SAID)
                    .findFirst()
                    .orElse(TubFate.NOT_SAID);
        }
    }

    private SheetDraft(Whole whole, Predicate<NodePath> usual) {
        this.whole = whole;
        this.items = new DraftItems(whole.parts(), whole.tub(), whole.fuel(), NOTHING, usual);
    }

    /**
     * The text of a sheet, which a reader accepts.
     *
     * @param filled reads a sheet, with what it takes from the shelf and what it leaves to the rule book filled in
     */
    public static String text(Whole whole, Function<String, Node.Mapping> filled) {
        Node.Mapping tree = filled.apply(new SheetDraft(whole, path -> true).text());
        if (whole.parts().stream().noneMatch(Wanted::isPlaced)) {
            return new SheetDraft(whole, path -> path.in(tree) != null).text();
        }
        List<Wanted> lying = whole.parts().stream().map(SheetDraft::whereItLies).toList();
        Node.Mapping measured = filled.apply(new SheetDraft(whole.of(lying), path -> true).text());
        List<Wanted> parts = whole.parts().stream()
                .map(part -> part.isPlaced() && isWhereItLies(part, tree, measured) ? part.whereItLies() : part)
                .toList();
        return new SheetDraft(whole.of(parts), path -> path.in(tree) != null).text();
    }

    private static Wanted whereItLies(Wanted part) {
        return part.isPlaced() ? part.whereItLies() : part;
    }

    private static boolean isWhereItLies(Wanted part, Node.Mapping worded, Node.Mapping measured) {
        return MeasuredPlace.isMeant(
                part.said().get("at"), field -> text(part, field, worded), field -> text(part, field, measured));
    }

    /** What stands in a field of a part; empty where nothing does. */
    private static String text(Wanted part, NodePath field, Node.Mapping tree) {
        Stream<Node> items =
                tree.get(part.shelf()) instanceof Node.Listing list ? list.items().stream() : Stream.empty();
        return items.filter(item -> part.name().equals(item.name()))
                .findFirst()
                .map(field::in)
                .filter(Node.Scalar.class::isInstance)
                .map(node -> ((Node.Scalar) node).text())
                .orElse("");
    }

    /**
     * What a sheet gets by something more that is planned: entries of its lists, each on one line.
     *
     * @param fuel what the engine burns
     * @param begun what the sheet has already, with what it takes from the shelf
     * @param usual whether something stands in a field that is left out, by the place of an item among the new ones
     */
    public static Map<String, List<String>> added(
            Wanted wanted, Tank.Liquid fuel, Node.Mapping begun, Predicate<NodePath> usual) {
        DraftItems items = new DraftItems(List.of(), TubFate.NOT_SAID, fuel, begun, usual);
        items.add(wanted);
        return items.lists();
    }

    private String text() {
        if (whole.parts().stream().noneMatch(part -> part.meaning().things().contains(Thing.MAIN_TANK))) {
            String capacity = whole.told().mainTank();
            items.addMainTank(MAIN_TANK, capacity.isEmpty() ? "usual" : capacity);
        }
        ALONG.stream()
                .filter(common ->
                        whole.parts().stream().noneMatch(part -> part.name().equalsIgnoreCase(common)))
                .forEach(items::addUsualLoad);
        whole.parts().forEach(items::add);
        List<String> lines = new ArrayList<>();
        whole.heading().notes().forEach(note -> lines.add(("# " + Words.seen(note)).strip()));
        lines.add("# Put a figure in place of each 'ask'. What is left out is taken as usual, and counts as a guess.");
        lines.add("title: " + DraftText.quoted(whole.vehicle()));
        named("customer", whole.heading().customer(), lines);
        named("quote", whole.heading().quote(), lines);
        lines.addAll(List.of(
                "region: " + whole.region() + "  # where it is registered: " + String.join(", ", whole.regions()),
                "as-of: " + whole.day(),
                "assume-usual: yes"));
        if (!whole.told().readyBy().isEmpty()) {
            lines.add("ready-by: " + whole.told().readyBy());
        }
        lines.addAll(vehicle());
        items.lists().forEach((list, entries) -> list(list + ":" + HINTS.getOrDefault(list, ""), entries, lines));
        whole.trailer().ifPresent(towed -> {
            lines.addAll(trailer(towed));
            lines.add("cases: [{name: without the trailer}, {name: towing, towing: yes}]");
        });
        lines.add("trip: {people: " + whole.people()
                + DraftText.fields(whole.told().trip()) + "}");
        list("occupants:", people(), lines);
        return String.join("\n", lines) + "\n";
    }

    private static void named(String field, String name, List<String> lines) {
        if (!name.isEmpty()) {
            lines.add(field + ": " + DraftText.quoted(name));
        }
    }

    /** Who is aboard, where anybody's mass was said; else the book adds them. */
    private List<String> people() {
        List<String> masses = whole.told().masses();
        return IntStream.rangeClosed(1, masses.isEmpty() ? 0 : whole.people())
                .mapToObj(i -> "{name: " + person(i) + (i <= masses.size() ? ", mass: " + masses.get(i - 1) : "") + "}")
                .toList();
    }

    /** What somebody aboard is called, whose name nobody said. @param i counted from the driver, who is 1 */
    public static String person(int i) {
        return i == 1 ? "Driver" : i == 2 ? "Front passenger" : "Rear passenger " + (i - 2);
    }

    private List<String> vehicle() {
        boolean none = whole.tub() == TubFate.NEVER_HAD;
        if (whole.shelf()) {
            return List.of("vehicle: " + DraftText.taken(whole.vehicle(), whole.vehicle(), none ? ", tub: no" : ""));
        }
        List<String> lines = new ArrayList<>(List.of(
                "vehicle:",
                "  name: " + DraftText.quoted(whole.vehicle()),
                "  size: {wheelbase: ask}  # the handbook",
                "  # a weighbridge, an axle at a time; or the handbook",
                "  mass: {kerb: " + whole.told().ofBrochure("mass.kerb")
                        + ", front-axle: usual, rear-axle: usual, kerb-fuel: usual, kerb-driver: usual}",
                "  # the plate; the handbook for gcm, towing, ball and roof",
                "  ratings: {"
                        + RATINGS.stream()
                                .map(rating -> rating + ": " + whole.told().ofBrochure("ratings." + rating))
                                .collect(Collectors.joining(", "))
                        + "}",
                "  tyres: {size: , load-index: ask, speed-symbol: }  # the sidewall, such as 265/65R17 112S",
                "  engine: {fuel: " + Words.hyphenated(whole.fuel().name()) + "}"));
        if (whole.tub() != TubFate.NOT_SAID) {
            lines.add("  tub: " + (none ? "no" : "yes"));
        } else if (whole.parts().stream().anyMatch(Wanted::isBody)) {
            lines.add("  tub: ask  # whether it comes with one; what comes off for a tray goes under its 'removes'");
        }
        return lines;
    }

    private static List<String> trailer(Towed towed) {
        if (towed.shelf()) {
            Map<String, String> said = new LinkedHashMap<>();
            said.put("mass", towed.mass());
            said.put("ball", towed.ball());
            said.put("rated", towed.rated());
            said.values().removeIf(String::isEmpty);
            return List.of("trailer: " + DraftText.taken(towed.name(), towed.name(), DraftText.fields(said)));
        }
        return List.of(
                "# a weighbridge, a ball scale; its plate for rated",
                "trailer: {name: " + DraftText.quoted(towed.name()) + ", mass: " + DraftText.orAsk(towed.mass())
                        + ", ball: " + DraftText.orAsk(towed.ball()) + ", rated: " + DraftText.orAsk(towed.rated())
                        + (FIFTH_WHEEL.matcher(towed.name()).find() ? ", hitch: fifth-wheel" : "")
                        + "}");
    }

    private static void list(String heading, List<String> entries, List<String> lines) {
        if (!entries.isEmpty()) {
            lines.add(heading);
            entries.forEach(entry -> lines.add("  - " + entry));
        }
    }
}
