package fitworthy.sheet;

import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.ShopWords.Thing;
import fitworthy.sheet.Wanted.Feed;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The lists of a new sheet, each entry on one line, as one wish after the other is added to them. */
final class DraftItems {

    private static final String MASS = "mass";
    private static final String AT = "at";
    private static final String STOCK = "stock: yes";
    /** Lists whose things have names of their own among each other; a circuit may be called as its part. */
    private static final List<String> THINGS = List.of("fitments", "tanks", "cargo", "occupants");

    private final List<Wanted> parts;
    private final TubFate tub;
    private final String fuel;
    /** Whether something stands in a field that was left out. */
    private final Predicate<NodePath> usual;

    private final List<String> fitments = new ArrayList<>();
    private final List<String> tanks = new ArrayList<>();
    private final List<String> circuits = new ArrayList<>();
    private final List<String> cargo = new ArrayList<>();
    private final Set<String> names = new HashSet<>();
    /** Circuits of the sheet by name, and whether each is some part's. */
    private final Map<String, Boolean> wired = new LinkedHashMap<>();
    /** What adds circuits of the shelf that hang on a board which is not there yet. */
    private final List<Runnable> waiting = new ArrayList<>();

    /**
     * @param parts all that is planned
     * @param tub what becomes of it
     * @param fuel what the engine burns
     * @param begun what the sheet has already, with what it takes from the shelf
     * @param usual whether something stands in a field that is left out, by its place in these lists
     */
    DraftItems(List<Wanted> parts, TubFate tub, Tank.Liquid fuel, Node.Mapping begun, Predicate<NodePath> usual) {
        this.parts = parts;
        this.tub = tub;
        this.fuel = Words.hyphenated(fuel.name());
        this.usual = usual;
        THINGS.forEach(list -> items(begun, list).forEach(item -> names.add(item.name())));
        items(begun, "circuits")
                .forEach(circuit ->
                        wired.put(circuit.name(), !word(circuit, "part").isEmpty()));
    }

    private static Stream<Node> items(Node.Mapping sheet, String list) {
        return sheet.get(list) instanceof Node.Listing listing
                ? listing.items().stream().filter(item -> item.name() != null)
                : Stream.empty();
    }

    private static String word(Node item, String field) {
        return item instanceof Node.Mapping thing && thing.get(field) instanceof Node.Scalar word ? word.text() : "";
    }

    /** The entries by the list that they belong into. */
    Map<String, List<String>> lists() {
        Map<String, List<String>> lists = new LinkedHashMap<>();
        lists.put("fitments", fitments);
        lists.put("circuits", circuits);
        lists.put("tanks", tanks);
        lists.put("cargo", cargo);
        return lists;
    }

    /** The vehicle's own tank. @param capacity what it holds */
    void addMainTank(String name, String capacity) {
        names.add(name);
        tanks.add("{name: " + name + ", liquid: " + fuel + ", capacity: " + capacity + ", " + STOCK + "}");
    }

    /** A load of which everything is usual. */
    void addUsualLoad(String name) {
        names.add(name);
        cargo.add("{name: " + name + "}");
    }

    /** What a word stands for: its first part has its name, and what else it is belongs to that. Its reason is a comment. */
    void add(Wanted wanted) {
        List<List<String>> all = List.of(fitments, circuits, tanks, cargo);
        List<Integer> sizes = all.stream().map(List::size).toList();
        addBare(wanted);
        addWaiting();
        for (int i = 0; i < all.size() && !wanted.reason().isEmpty(); i++) {
            if (all.get(i).size() > sizes.get(i)) {
                all.get(i).set(sizes.get(i), all.get(i).get(sizes.get(i)) + "  # " + wanted.reason());
                return;
            }
        }
    }

    private void addWaiting() {
        int before;
        do {
            before = circuits.size();
            List<Runnable> again = List.copyOf(waiting);
            waiting.clear();
            again.forEach(Runnable::run);
        } while (circuits.size() > before);
    }

    private void addBare(Wanted wanted) {
        if (!wanted.shelf().isEmpty()) {
            boolean tank = wanted.shelf().equals("tanks");
            String own = free(wanted.name());
            (tank ? tanks : wanted.shelf().equals("cargo") ? cargo : fitments)
                    .add(DraftText.taken(wanted.name(), own, DraftText.fields(wanted.said()) + ofTub(wanted)));
            wanted.feeds().forEach(feed -> feed(feed, wanted.name(), own));
            return;
        }
        String first = "";
        for (Kind kind : wanted.meaning().kinds()) {
            if (first.isEmpty()) {
                first = part(Words.capital(wanted.name()), kind, withSet(wanted, kind), ofTub(wanted));
            } else if (parts.stream().noneMatch(other -> other.isFirst(kind))) {
                part(Words.capital(Words.hyphenated(kind.name()).replace('-', ' ')), kind, Map.of(), "");
            }
        }
        for (Thing thing :
                wanted.meaning().isOfTub() ? List.<Thing>of() : wanted.meaning().things()) {
            String name = first.isEmpty() ? free(Words.capital(wanted.name())) : first;
            String belongs = first.isEmpty() ? "" : ", part: " + DraftText.quoted(first);
            switch (thing) {
                case CIRCUIT -> circuits.add("{name: " + DraftText.quoted(freeCircuit(name)) + belongs + "}");
                case CARGO ->
                    cargo.add("{name: " + DraftText.quoted(name)
                            + told(wanted.said(), NodePath.of("cargo").to(cargo.size() + 1)) + "}");
                case WATER_TANK, WATER_CAN -> tanks.add(tank(name, "water", wanted.said(), thing));
                default -> tanks.add(tank(name, fuel, wanted.said(), thing));
            }
        }
    }

    /**
     * A circuit comes with its part, once the sheet has the board that it hangs on. Where one of its name is no part's
     * yet, it is for a person to say whether that is it.
     */
    private void feed(Feed feed, String part, String own) {
        if (!feed.board().isEmpty() && !wired.containsKey(feed.board())) {
            waiting.add(() -> feed(feed, part, own));
        } else if (wired.getOrDefault(feed.name(), true)) {
            String named = own.equals(part) ? "" : ", part: " + DraftText.quoted(own);
            circuits.add(DraftText.taken(feed.name(), freeCircuit(feed.name()), named));
        }
    }

    /** What becomes of the tub, at one tray or canopy; nothing where the shelf says of any what comes off for it. */
    private String ofTub(Wanted wanted) {
        List<Wanted> bodies = Wanted.bodies(parts);
        if (bodies.isEmpty() || bodies.get(0) != wanted || bodies.stream().anyMatch(Wanted::replaces)) {
            return "";
        }
        return switch (tub) {
            case COMES_OFF -> ", removes: " + TubFate.TUB;
            case STAYS_ON -> ", " + TubFate.TUB_STAYS + ": yes";
            default -> "";
        };
    }

    /** What was said of a part, and of the set that it takes one end of: the lift of a kit that heavier springs go with. */
    private Map<String, String> withSet(Wanted wanted, Kind kind) {
        Map<String, String> said = new LinkedHashMap<>();
        parts.stream().filter(other -> wanted.takesEndOf(other, kind)).forEach(other -> said.putAll(other.said()));
        said.keySet().removeAll(List.of(MASS, AT));
        said.putAll(wanted.said());
        return said;
    }

    /** Lists a part, at each end where its kind has to say at which. @return the name that it has */
    private String part(String name, Kind kind, Map<String, String> said, String tub) {
        String word = Words.hyphenated(kind.name());
        String first = "";
        List<String> alike = parts.stream()
                .filter(other -> other.isFirst(kind))
                .map(Wanted::name)
                .toList();
        for (String end : PartEnds.of(name, kind, alike)) {
            boolean told = end.isEmpty() || name.toLowerCase(Locale.ROOT).contains(end);
            String own = free(told ? name : name + " " + end);
            NodePath path = NodePath.of("fitments").to(fitments.size() + 1);
            String needed = RecordSchema.of(kind.details()).fields().stream()
                    .filter(field -> field.description().needed() && field.content() == FieldSchema.Content.FIGURE)
                    .filter(field -> !said.containsKey(field.name()))
                    .map(field -> unless(path.to(field.name()), ", " + field.name() + ": ask"))
                    .collect(Collectors.joining());
            fitments.add("{name: " + DraftText.quoted(own) + ", kind: " + word + (end.isEmpty() ? "" : ", end: " + end)
                    + needed + told(said, path) + tub + "}");
            first = first.isEmpty() ? own : first;
        }
        return first;
    }

    private String tank(String name, String liquid, Map<String, String> said, Thing thing) {
        NodePath path = NodePath.of("tanks").to(tanks.size() + 1);
        boolean can = thing == Thing.FUEL_CAN || thing == Thing.WATER_CAN;
        return "{name: " + DraftText.quoted(name) + ", liquid: " + liquid + ", capacity: "
                + DraftText.orAsk(said.getOrDefault("capacity", "")) + ", "
                + (thing == Thing.MAIN_TANK ? STOCK : "stock: no")
                + (can ? ", portable: yes" : "") + unless(path.to("fill"), ", fill: ask") + place(said, path) + "}";
    }

    /** What was said of something that weighs something, and what has to be known as far as nothing is usual of it. */
    private String told(Map<String, String> said, NodePath path) {
        Map<String, String> others = new LinkedHashMap<>(said);
        others.keySet().removeAll(List.of(MASS, AT));
        return DraftText.fields(others)
                + (said.containsKey(MASS) ? ", mass: " + said.get(MASS) : unless(path.to(MASS), ", mass: ask"))
                + place(said, path);
    }

    private String place(Map<String, String> said, NodePath path) {
        return said.containsKey(AT) ? ", at: " + said.get(AT) : unless(path.to(AT), ", at: {x: ask}");
    }

    /** What is written where nothing is usual in a field. */
    private String unless(NodePath field, String asked) {
        return usual.test(field) ? "" : asked;
    }

    /** The name, with a number where another thing has it. */
    private String free(String name) {
        return free(name, names::add);
    }

    private String freeCircuit(String name) {
        return free(name, own -> wired.putIfAbsent(own, true) == null);
    }

    /** @param taken takes a name that nothing has yet, and says whether it could */
    private static String free(String name, Predicate<String> taken) {
        String free = name;
        for (int i = 2; !taken.test(free); i++) {
            free = name + " " + i;
        }
        return free;
    }
}
