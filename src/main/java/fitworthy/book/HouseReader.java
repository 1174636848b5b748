package fitworthy.book;

import fitworthy.quantity.Dimension;
import fitworthy.rules.Stricter;
import fitworthy.schema.Binder;
import fitworthy.schema.Bound;
import fitworthy.source.Digests;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.InputFile;
import fitworthy.source.Located;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import fitworthy.source.Words;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Reads what a house sets over a book, and holds it against the book: being looser takes a reason and somebody's name.
 */
public final class HouseReader {

    private static final String REASON_AND_NAME =
            "reason: why the shop may, and name: who stands for it, such as Workshop manager";

    private final Book book;
    private final Located places;
    private final House.Page page;
    private final Map<String, Stricter> stricter = new HashMap<>();
    private final Map<String, String> renamed = new TreeMap<>();
    private final List<Fault> faults;

    private HouseReader(Book book, Bound<House.Page> read, List<Fault> faults) {
        this.book = book;
        this.places = read.places();
        this.page = present(read.record());
        this.faults = faults;
    }

    /**
     * Reads a house file over a book.
     *
     * @throws FaultsException with every fault found
     */
    public static House read(Path file, Book book) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        String text = InputFile.text(file, faults);
        Node.Mapping root = NodeReader.read(file.toString(), text, faults);
        if (root == null) {
            throw new FaultsException(faults);
        }
        return read(root, file.toString(), text, book, faults);
    }

    /**
     * The same, where it stands inside a file.
     *
     * @param text what its digest is taken of
     * @param faults those found before
     * @throws FaultsException with every fault found
     */
    public static House read(Node.Mapping root, String file, String text, Book book, List<Fault> faults)
            throws FaultsException {
        HouseReader reader = new HouseReader(
                book, Binder.bind(House.Page.class, root, group -> examples(book, group), faults), faults);
        Map<String, House.SetSeverity> severities = reader.severities();
        Map<Integer, House.Value> sound = reader.values();
        sound.values()
                .forEach(value -> reader.stricter.computeIfAbsent(
                        value.practice(), id -> Stricter.of(book.rules().values(), id)));
        byte[] digest = Digests.sha256().digest(text.getBytes(StandardCharsets.UTF_8));
        House house = new House(
                new House.Page(reader.page.shop(), List.copyOf(sound.values()), reader.page.severities()),
                file,
                HexFormat.of().formatHex(digest).substring(0, 12),
                reader.stricter,
                severities,
                reader.renamed);
        reader.looser(book.with(house), sound);
        if (faults.isEmpty()) {
            return house;
        }
        throw new FaultsException(faults);
    }

    /** The page with present ids in place of former ones. */
    private House.Page present(House.Page read) {
        FormerIds former = book.formerIds();
        return new House.Page(
                read.shop(),
                read.values().stream()
                        .map(value -> new House.Value(
                                present(value.practice(), former),
                                value.region(),
                                value.from(),
                                value.value(),
                                value.reason(),
                                value.name()))
                        .toList(),
                read.severities().stream()
                        .map(rating -> new House.Rating(
                                present(rating.rule(), former), rating.severity(), rating.reason(), rating.name()))
                        .toList());
    }

    private String present(String id, FormerIds former) {
        String present = former.present(id);
        if (!present.equals(id)) {
            renamed.put(id, present);
        }
        return present;
    }

    /** Those that can be held against the book, by their number in the list; what is wrong with the others is told. */
    private Map<Integer, House.Value> values() {
        Map<Integer, House.Value> sound = new TreeMap<>();
        Set<String> starts = new HashSet<>();
        for (int i = 1; i <= page.values().size(); i++) {
            House.Value value = page.values().get(i - 1);
            boolean there =
                    known(value.practice(), book.practice().keySet(), "practice value", path("values", i, "practice"));
            there &= known(value.region(), book.regions().keySet(), "region", path("values", i, "region"));
            there &= value.from() != null;
            if (there && !starts.add(value.practice() + "|" + value.region() + "|" + value.from())) {
                fault(
                        "two values of " + value.practice() + " begin in " + value.region() + " on " + value.from(),
                        "one value a region and day",
                        path("values", i, "practice"));
                there = false;
            }
            boolean readable = book.practice().containsKey(value.practice()) && number(value, i);
            if (there && readable) {
                sound.put(i, value);
            }
        }
        return sound;
    }

    /** Whether it can be read; where it was left out that is told already. */
    private boolean number(House.Value value, int number) {
        if (value.value().isEmpty()) {
            return false;
        }
        Dimension dimension =
                Dimension.ofUnit(book.practice().get(value.practice()).unit());
        if (value.value().equals("none")) {
            fault(
                    "a shop cannot do away with a limit",
                    "value: " + example(value, dimension) + ", or a milder severity for its rule",
                    path("values", number, "value"));
            return false;
        }
        Optional<String> problem = LimitText.problem(
                value.practice(), value.value(), dimension, book.rules().values());
        problem.ifPresent(
                words -> fault(words, "value: " + example(value, dimension), path("values", number, "value")));
        return problem.isEmpty();
    }

    /** An example that fits the practice value which an item of the page sets. */
    private static Map<String, String> examples(Book book, Node.Mapping group) {
        return group.get("practice") instanceof Node.Scalar id
                        && book.practice().containsKey(id.text())
                ? Map.of(
                        "value",
                        Dimension.ofUnit(book.practice().get(id.text()).unit()).example())
                : Map.of();
    }

    /** What the book has there, so that nobody who copies an example loosens anything by it. */
    private String example(House.Value value, Dimension dimension) {
        return book.practice().get(value.practice()).values().stream()
                .filter(recorded -> !recorded.none())
                .min(Comparator.comparing(recorded -> !recorded.region().equals(value.region())))
                .map(DatedLimit.Value::value)
                .orElse(dimension.example());
    }

    private Map<String, House.SetSeverity> severities() {
        Map<String, House.SetSeverity> severities = new TreeMap<>();
        Set<String> seen = new HashSet<>();
        for (int i = 1; i <= page.severities().size(); i++) {
            House.Rating rating = page.severities().get(i - 1);
            known(rating.rule(), book.cards().keySet(), "rule", path("severities", i, "rule"));
            if (!seen.add(rating.rule())) {
                fault(rating.rule() + " is given a severity twice", "one a rule", path("severities", i, "rule"));
            }
            Card card = book.cards().get(rating.rule());
            if (card == null || !rating.severity().known()) {
                continue;
            }
            House.SetSeverity set =
                    new House.SetSeverity(rating, card.severity().value());
            if (set.milder() && unsigned(rating.reason(), rating.name())) {
                fault(
                        Words.hyphenated(rating.severity().value().name()) + " is milder than the book's "
                                + Words.hyphenated(set.recorded().name()) + ", which takes a reason and a name",
                        REASON_AND_NAME,
                        path("severities", i, "severity"));
            }
            if (set.recorded() != rating.severity().value()) {
                severities.put(rating.rule(), set);
            }
        }
        return severities;
    }

    /** Wherever and whenever a value holds it is held against what the book records there and then. */
    private void looser(Book over, Map<Integer, House.Value> sound) {
        sound.forEach((number, value) -> {
            if (unsigned(value.reason(), value.name())) {
                looser(over, value).ifPresent(use -> fault(why(use), REASON_AND_NAME, path("values", number, "value")));
            }
        });
    }

    private Optional<Practice.HouseValue> looser(Book over, House.Value value) {
        Set<LocalDate> days = new TreeSet<>(List.of(value.from()));
        Set<LocalDate> registrations = new TreeSet<>(List.of(LocalDate.MIN));
        book.practice().get(value.practice()).values().forEach(dated -> {
            days.add(dated.from());
            Stream.ofNullable(dated.registeredFrom()).forEach(registrations::add);
        });
        return book.regions().keySet().stream()
                .flatMap(region -> days.stream().flatMap(day -> registrations.stream()
                        .map(registered -> over.lookup(value.practice(), region, day, registered))))
                .filter(Practice.Lookup.Found.class::isInstance)
                .flatMap(found -> ((Practice.Lookup.Found) found).practice().house().stream())
                .filter(house -> house.set().equals(value) && house.looser())
                .findFirst();
    }

    private String why(Practice.HouseValue use) {
        String looser = use.set().value()
                + (stricter.get(use.set().practice()) == Stricter.UNTOLD
                        ? " changes a value of which the rules do not tell which way is stricter"
                        : use.recorded() instanceof Practice.Lookup.Found
                                ? " is looser than the book's"
                                : " would let a check be met that is not assessed now");
        return looser + ", which takes a reason and a name. " + use.inPlaceOf();
    }

    private static boolean unsigned(String reason, String name) {
        return reason.isBlank() || name.isBlank();
    }

    /** Whether the book has it; where it was left out that is told already. */
    private boolean known(String id, Collection<String> ids, String what, NodePath path) {
        boolean there = ids.contains(id);
        if (!there && !id.isEmpty()) {
            fault(
                    "the rule book has no " + what + " '" + Words.shortened(id, 60) + "'" + Words.suggestion(id, ids),
                    ids.size() < 20 ? "one of " + String.join(", ", ids) : "an id as printed with a finding",
                    path);
        }
        return there;
    }

    private void fault(String problem, String mend, NodePath path) {
        faults.add(new Fault(places.place(path), path.toString(), problem, mend));
    }

    private static NodePath path(String list, int position, String field) {
        return NodePath.of(list).to(position).to(field);
    }
}
