package fitworthy.sheet;

import fitworthy.schema.ChoiceWords;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.ShopWords.Meaning;
import fitworthy.sheet.ShopWords.Thing;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

    private static final Pattern BARE = Pattern.compile("\\p{L}[\\p{L}\\p{N}./]*([ -][\\p{L}\\p{N}./]+)*");
    /** What YAML or a sheet would take for something else than a name. */
    private static final Set<String> TAKEN = Set.of("yes", "no", "true", "false", "on", "off", "null", "y", "n");

    /** What may take the place of a tub, the nearest to it first. */
    private static final List<Kind> BODIES = List.of(Kind.TRAY, Kind.CANOPY);
    /** What nobody travels without, whether a letter says so or not. */
    private static final List<String> ALONG = List.of("Luggage", "Food");

    private static final String MAIN_TANK = "Main tank";
    private static final String MASS = "mass";
    private static final String PLACE_ASKED = ", at: {x: ask}";
    private static final String AT = "at";
    private static final String CAPACITY = "capacity";
    private static final String STOCK = "stock: yes";
    /** What comes off under a tray or canopy, its mass and place left to the book. */
    public static final String TUB = "{name: tub}";
    /** The field of a tray or canopy that says that nothing comes off for it. */
    public static final String TUB_STAYS = "tub-stays";

    private final Whole whole;
    /** Whether something stands in a field that was left out. */
    private final Predicate<NodePath> usual;

    private final List<String> fitments = new ArrayList<>();
    private final List<String> tanks = new ArrayList<>();
    private final List<String> circuits = new ArrayList<>();
    private final List<String> cargo = new ArrayList<>();
    private final Set<String> names = new HashSet<>();

    /** What becomes of the tub that a vehicle came with. */
    public enum Tub {
        NOT_SAID,
        COMES_OFF,
        STAYS_ON,
        NEVER_HAD
    }

    /**
     * A part, or what else is planned.
     *
     * @param said what was said of it by the fields that hold it, such as mass, length or the place under at
     * @param shelf the list of a sheet that takes it from the shelf; empty where it does not lie there
     * @param replaces whether the shelf says already what comes off for it
     */
    public record Wanted(String name, Meaning meaning, Map<String, String> said, String shelf, boolean replaces) {

        /** Whether it is of the kind by itself, and does not only bring such a part along. */
        public boolean isFirst(Kind kind) {
            return !meaning.kinds().isEmpty() && meaning.kinds().get(0) == kind;
        }
    }

    /** A trailer, with its loaded mass, ball load and plate; each is empty where it was not said. */
    public record Towed(String name, String mass, String ball, String rated, boolean shelf) {}

    /**
     * What a letter commonly tells beside its wishes.
     *
     * @param mainTank what the vehicle's own tank holds; empty where it was not said
     * @param masses of the people, the driver's first; no more than there are people
     * @param trip fields of the trip with what they hold
     * @param readyBy the day by which all has to be done; empty where it was not said
     */
    public record Told(Tub tub, String mainTank, List<String> masses, Map<String, String> trip, String readyBy) {

        /** Nothing. */
        public static final Told NOTHING = new Told(Tub.NOT_SAID, "", List.of(), Map.of(), "");
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

        /** What becomes of the tub: as it was told, else as one of the wishes says. */
        private Tub tub() {
            return Stream.concat(Stream.of(told.tub()), parts.stream().map(SheetDraft::tub))
                    .filter(tub -> tub != Tub.NOT_SAID)
                    .findFirst()
                    .orElse(Tub.NOT_SAID);
        }

        /** The trays and canopies, one that takes the place of the tub before one that may stand on it. */
        private List<Wanted> bodies() {
            return BODIES.stream()
                    .flatMap(kind -> parts.stream().filter(part -> part.isFirst(kind)))
                    .toList();
        }
    }

    /** What a wish says of the tub. */
    public static Tub tub(Wanted wanted) {
        List<Thing> things = wanted.meaning().things();
        return things.contains(Thing.TUB_OFF)
                ? Tub.COMES_OFF
                : things.contains(Thing.TUB_STAYS) ? Tub.STAYS_ON : Tub.NOT_SAID;
    }

    /** Whether it is a tray or canopy. */
    public static boolean isBody(Wanted wanted) {
        return BODIES.stream().anyMatch(wanted::isFirst);
    }

    private SheetDraft(Whole whole, Predicate<NodePath> usual) {
        this.whole = whole;
        this.usual = usual;
    }

    /**
     * The text of a sheet, which a reader accepts.
     *
     * @param filled reads a sheet, with what it takes from the shelf and what it leaves to the rule book filled in
     */
    public static String text(Whole whole, Function<String, Node.Mapping> filled) {
        Node.Mapping tree = filled.apply(new SheetDraft(whole, path -> true).text());
        return new SheetDraft(whole, path -> path.in(tree) != null).text();
    }

    /**
     * What a sheet gets by something more that is planned: entries of its lists, each on one line.
     *
     * @param fuel what the engine burns
     * @param taken names that other things of the sheet have
     * @param usual whether something stands in a field that is left out, by the place of an item among the new ones
     */
    public static Map<String, List<String>> added(
            Wanted wanted, Tank.Liquid fuel, Set<String> taken, Predicate<NodePath> usual) {
        SheetDraft draft = new SheetDraft(
                new Whole(
                        Heading.NONE,
                        "",
                        false,
                        fuel,
                        0,
                        "",
                        List.of(),
                        null,
                        List.of(),
                        Optional.empty(),
                        Told.NOTHING),
                usual);
        draft.names.addAll(taken);
        draft.add(wanted);
        Map<String, List<String>> added = new LinkedHashMap<>();
        added.put("fitments", draft.fitments);
        added.put("circuits", draft.circuits);
        added.put("tanks", draft.tanks);
        added.put("cargo", draft.cargo);
        return added;
    }

    private String text() {
        if (whole.parts().stream().noneMatch(part -> part.meaning().things().contains(Thing.MAIN_TANK))) {
            names.add(MAIN_TANK);
            String capacity = whole.told().mainTank();
            tanks.add("{name: " + MAIN_TANK + ", liquid: " + fuel() + ", capacity: "
                    + (capacity.isEmpty() ? "usual" : capacity) + ", " + STOCK + "}");
        }
        for (String common : ALONG) {
            if (whole.parts().stream().noneMatch(part -> part.name().equalsIgnoreCase(common))) {
                names.add(common);
                cargo.add("{name: " + common + "}");
            }
        }
        whole.parts().forEach(this::add);
        List<String> lines = new ArrayList<>();
        whole.heading().notes().forEach(note -> lines.add(("# " + Words.seen(note)).strip()));
        lines.add("# Put a figure in place of each 'ask'. What is left out is taken as usual, and counts as a guess.");
        lines.add("title: " + quoted(whole.vehicle()));
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
        list("fitments:  # mass: its maker or a scale; at: where it sits, such as 'on the roof'", fitments, lines);
        list("circuits:", circuits, lines);
        list("tanks:", tanks, lines);
        list("cargo:  # and what else comes along: tools, a dog, water cans ...", cargo, lines);
        whole.trailer().ifPresent(towed -> {
            lines.addAll(trailer(towed));
            lines.add("cases: [{name: without the trailer}, {name: towing, towing: yes}]");
        });
        lines.add("trip: {people: " + whole.people() + fields(whole.told().trip()) + "}");
        list("occupants:", people(), lines);
        return String.join("\n", lines) + "\n";
    }

    private static void named(String field, String name, List<String> lines) {
        if (!name.isEmpty()) {
            lines.add(field + ": " + quoted(name));
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
        boolean none = whole.tub() == Tub.NEVER_HAD;
        if (whole.shelf()) {
            return List.of(
                    "vehicle: " + taken(whole.vehicle(), whole.vehicle(), none ? Map.of("tub", "no") : Map.of(), ""));
        }
        List<String> lines = new ArrayList<>(List.of(
                "vehicle:",
                "  name: " + quoted(whole.vehicle()),
                "  size: {wheelbase: ask}  # the handbook",
                "  # a weighbridge, an axle at a time; or the handbook",
                "  mass: {kerb: ask, front-axle: usual, rear-axle: usual, kerb-fuel: usual, kerb-driver: usual}",
                "  # the plate; the handbook for gcm, towing, ball and roof",
                "  ratings: {gvm: ask, front-axle: ask, rear-axle: ask, gcm: ask, towing: ask, ball: ask, roof: ask}",
                "  tyres: {size: , load-index: ask, speed-symbol: }  # the sidewall, such as 265/65R17 112S",
                "  engine: {fuel: " + fuel() + "}"));
        if (whole.tub() != Tub.NOT_SAID) {
            lines.add("  tub: " + (none ? "no" : "yes"));
        } else if (!whole.bodies().isEmpty()) {
            lines.add("  tub: ask  # whether it comes with one; what comes off for a tray goes under its 'removes'");
        }
        return lines;
    }

    private static List<String> trailer(Towed towed) {
        if (towed.shelf()) {
            Map<String, String> said = new LinkedHashMap<>();
            said.put(MASS, towed.mass());
            said.put("ball", towed.ball());
            said.put("rated", towed.rated());
            said.values().removeIf(String::isEmpty);
            return List.of("trailer: " + taken(towed.name(), towed.name(), said, ""));
        }
        return List.of(
                "# a weighbridge, a ball scale; its plate for rated",
                "trailer: {name: " + quoted(towed.name()) + ", mass: " + orAsk(towed.mass()) + ", ball: "
                        + orAsk(towed.ball()) + ", rated: " + orAsk(towed.rated()) + "}");
    }

    /** What is taken from the shelf: by its name alone, or with what is otherwise on this sheet. */
    private static String taken(String name, String own, Map<String, String> said, String tub) {
        String more = (own.equals(name) ? "" : ", name: " + quoted(own)) + fields(said) + tub;
        return more.isEmpty() ? quoted(name) : "{from: " + quoted(name) + more + "}";
    }

    /** Fields as they follow others in a group. */
    private static String fields(Map<String, String> said) {
        return said.entrySet().stream()
                .map(field -> ", " + field.getKey() + ": " + field.getValue())
                .collect(Collectors.joining());
    }

    private static void list(String heading, List<String> entries, List<String> lines) {
        if (!entries.isEmpty()) {
            lines.add(heading);
            entries.forEach(entry -> lines.add("  - " + entry));
        }
    }

    private String fuel() {
        return Words.hyphenated(whole.fuel().name());
    }

    /** What a word stands for: its first part has its name, and what else it is belongs to that. */
    private void add(Wanted wanted) {
        if (!wanted.shelf().isEmpty()) {
            boolean tank = wanted.shelf().equals("tanks");
            (tank ? tanks : wanted.shelf().equals("cargo") ? cargo : fitments)
                    .add(taken(wanted.name(), free(wanted.name()), wanted.said(), ofTub(wanted)));
            return;
        }
        String first = "";
        for (Kind kind : wanted.meaning().kinds()) {
            if (first.isEmpty()) {
                first = part(Words.capital(wanted.name()), kind, withSet(wanted, kind), ofTub(wanted));
            } else if (whole.parts().stream().noneMatch(other -> other.isFirst(kind))) {
                part(Words.capital(Words.hyphenated(kind.name()).replace('-', ' ')), kind, Map.of(), "");
            }
        }
        for (Thing thing :
                wanted.meaning().isOfTub() ? List.<Thing>of() : wanted.meaning().things()) {
            String name = first.isEmpty() ? free(Words.capital(wanted.name())) : first;
            String belongs = first.isEmpty() ? "" : ", part: " + quoted(first);
            switch (thing) {
                case CIRCUIT -> circuits.add("{name: " + quoted(name) + belongs + "}");
                case CARGO ->
                    cargo.add("{name: " + quoted(name)
                            + told(wanted.said(), NodePath.of("cargo").to(cargo.size() + 1)) + "}");
                case WATER_TANK, WATER_CAN -> tanks.add(tank(name, "water", wanted.said(), thing));
                default -> tanks.add(tank(name, fuel(), wanted.said(), thing));
            }
        }
    }

    /** What becomes of the tub, at one tray or canopy; nothing where the shelf says of any what comes off for it. */
    private String ofTub(Wanted wanted) {
        List<Wanted> bodies = whole.bodies();
        if (bodies.isEmpty() || bodies.get(0) != wanted || bodies.stream().anyMatch(Wanted::replaces)) {
            return "";
        }
        return switch (whole.tub()) {
            case COMES_OFF -> ", removes: " + TUB;
            case STAYS_ON -> ", " + TUB_STAYS + ": yes";
            default -> "";
        };
    }

    /** What was said of a part, and of the set that it takes one end of: the lift of a kit that heavier springs go with. */
    private Map<String, String> withSet(Wanted wanted, Kind kind) {
        Map<String, String> said = new LinkedHashMap<>();
        whole.parts().stream()
                .filter(other -> takesEndOf(wanted, other, kind))
                .forEach(other -> said.putAll(other.said()));
        said.keySet().removeAll(List.of(MASS, AT));
        said.putAll(wanted.said());
        return said;
    }

    /** Whether a part is for one end, of which another wish of its kind means both. */
    public static boolean takesEndOf(Wanted part, Wanted whole, Kind kind) {
        return part.isFirst(kind)
                && whole.isFirst(kind)
                && part != whole
                && hasEnds(kind)
                && !namedEnds(part.name()).isEmpty()
                && namedEnds(whole.name()).isEmpty();
    }

    /** Lists a part, at each end where its kind has to say at which. @return the name that it has */
    private String part(String name, Kind kind, Map<String, String> said, String tub) {
        String word = Words.hyphenated(kind.name());
        String first = "";
        for (String end : ends(name, kind)) {
            boolean told = end.isEmpty() || name.toLowerCase(Locale.ROOT).contains(end);
            String own = free(told ? name : name + " " + end);
            NodePath path = NodePath.of("fitments").to(fitments.size() + 1);
            String needed = RecordSchema.of(kind.details()).fields().stream()
                    .filter(field -> field.description().needed() && field.content() == FieldSchema.Content.FIGURE)
                    .filter(field -> !said.containsKey(field.name()))
                    .map(field -> unless(path.to(field.name()), ", " + field.name() + ": ask"))
                    .collect(Collectors.joining());
            fitments.add("{name: " + quoted(own) + ", kind: " + word + (end.isEmpty() ? "" : ", end: " + end) + needed
                    + told(said, path) + tub + "}");
            first = first.isEmpty() ? own : first;
        }
        return first;
    }

    /**
     * The end that the name of a part says, else both but for what another part of its kind takes by name; one without a
     * name where the kind has none.
     */
    private List<String> ends(String name, Kind kind) {
        if (!hasEnds(kind)) {
            return List.of("");
        }
        List<String> said = namedEnds(name);
        if (!said.isEmpty()) {
            return said;
        }
        List<String> ends = new ArrayList<>(ChoiceWords.of(VehicleEnd.class));
        whole.parts().stream()
                .filter(other -> other.isFirst(kind))
                .forEach(other -> ends.removeAll(namedEnds(other.name())));
        return ends.isEmpty() ? ChoiceWords.of(VehicleEnd.class) : ends;
    }

    private static boolean hasEnds(Kind kind) {
        return RecordSchema.of(kind.details()).fields().stream()
                .anyMatch(field -> field.description().needed() && field.type() == VehicleEnd.class);
    }

    private static List<String> namedEnds(String name) {
        return ChoiceWords.of(VehicleEnd.class).stream()
                .filter(end -> name.toLowerCase(Locale.ROOT).contains(end))
                .toList();
    }

    private String tank(String name, String liquid, Map<String, String> said, Thing thing) {
        NodePath path = NodePath.of("tanks").to(tanks.size() + 1);
        boolean can = thing == Thing.FUEL_CAN || thing == Thing.WATER_CAN;
        return "{name: " + quoted(name) + ", liquid: " + liquid + ", capacity: "
                + orAsk(said.getOrDefault(CAPACITY, "")) + ", " + (thing == Thing.MAIN_TANK ? STOCK : "stock: no")
                + (can ? ", portable: yes" : "") + unless(path.to("fill"), ", fill: ask") + place(said, path) + "}";
    }

    /** What was said of something that weighs something, and what has to be known as far as nothing is usual of it. */
    private String told(Map<String, String> said, NodePath path) {
        Map<String, String> others = new LinkedHashMap<>(said);
        others.keySet().removeAll(List.of(MASS, AT));
        return fields(others)
                + (said.containsKey(MASS) ? ", mass: " + said.get(MASS) : unless(path.to(MASS), ", mass: ask"))
                + place(said, path);
    }

    private String place(Map<String, String> said, NodePath path) {
        return said.containsKey(AT) ? ", at: " + said.get(AT) : unless(path.to(AT), PLACE_ASKED);
    }

    /** What is written where nothing is usual in a field. */
    private String unless(NodePath field, String asked) {
        return usual.test(field) ? "" : asked;
    }

    private static String orAsk(String figure) {
        return figure.isEmpty() ? "ask" : figure;
    }

    /** The name, with a number where another thing has it. */
    private String free(String name) {
        String free = name;
        for (int i = 2; !names.add(free); i++) {
            free = name + " " + i;
        }
        return free;
    }

    private static String quoted(String name) {
        return BARE.matcher(name).matches() && !TAKEN.contains(name.toLowerCase(Locale.ROOT))
                ? name
                : '"' + name.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
