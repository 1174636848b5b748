package fitworthy.engine;

import fitworthy.book.Book;
import fitworthy.book.BookChecks;
import fitworthy.book.Card;
import fitworthy.book.DatedLimit;
import fitworthy.book.House;
import fitworthy.book.Region;
import fitworthy.book.Source;
import fitworthy.book.TableReader;
import fitworthy.book.TitlePage;
import fitworthy.figures.Measures;
import fitworthy.figures.plan.Tables;
import fitworthy.rules.RuleParser;
import fitworthy.rules.RuleText;
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
import fitworthy.source.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.kie.api.runtime.KieSessionsPool;

/** Reads a rules folder, checks its contract and compiles its rules, or says everything that is wrong with it. */
public final class BookLoader {

    private final Path folder;
    private final CacheFolder cached;
    private final RuleCache cache;
    private final List<Fault> faults = new ArrayList<>();
    private final MessageDigest digest = Digests.sha256();
    private final BookPageCache pages;
    private final CompletableFuture<Optional<RuleCache.Loaded>> keptRules;

    private BookLoader(Path folder, Path cacheFolder) {
        this.folder = folder;
        this.cached = new CacheFolder(cacheFolder);
        this.cache = new RuleCache(cached);
        this.pages = new BookPageCache(cached);
        this.keptRules = CompletableFuture.supplyAsync(this::keptRules);
    }

    /**
     * Begins to load a book: another thread fetches its compiled rules, where they are kept, since that takes about as
     * long as everything else that has to be done before they are needed.
     *
     * @param folder the rules folder
     * @param cacheFolder where compiled rules are kept between runs
     */
    public static BookLoader begin(Path folder, Path cacheFolder) {
        return new BookLoader(folder, cacheFolder);
    }

    /**
     * Loads a book.
     *
     * @param folder the rules folder
     * @param cacheFolder where compiled rules are kept between runs
     * @param progress told, in a sentence, of work that takes seconds
     * @throws FaultsException with every fault found; there is no half-loaded book
     */
    public static RuleEngine load(Path folder, Path cacheFolder, Consumer<String> progress) throws FaultsException {
        return begin(folder, cacheFolder).finish(progress);
    }

    /**
     * Loads the rest; to be called once.
     *
     * @param progress told, in a sentence, of work that takes seconds
     * @throws FaultsException with every fault found; there is no half-loaded book
     */
    public RuleEngine finish(Consumer<String> progress) throws FaultsException {
        if (!Files.exists(folder.resolve("book.yaml"))) {
            faults.add(new Fault(
                    Place.of(folder.toString()),
                    "",
                    "there is no book.yaml in this folder",
                    "name the rules folder: --rules rules"));
            throw new FaultsException(faults);
        }
        Node.Mapping root = read(folder.resolve("book.yaml"));
        if (root != null && !(root.get("regions") instanceof Node.Mapping)) {
            faults.add(new Fault(root.place(), "regions", "is missing", "regions: {any: {name: Anywhere}}"));
        }
        Map<String, Region> regions = root == null ? Map.of() : records(root.get("regions"), Region.class);
        TitlePage cover = root == null ? null : cover(root.without("regions"));
        BookChecks.Parts parts = new BookChecks.Parts(
                folder, regions, new TreeMap<>(), new TreeMap<>(), new TreeMap<>(), new TreeMap<>(), new TreeMap<>());
        parts.sources().putAll(records(read(folder.resolve("sources.yaml")), Source.class));
        Map<String, String> texts = new LinkedHashMap<>();
        for (Path topic : topics(folder, faults)) {
            topic(topic, parts, texts);
        }
        Tables tables = TableReader.read(folder.resolve("tables"), this::textOf, faults);
        if (!faults.isEmpty()) {
            // Told together with what is wrong in the rule files, so that both are mended at once.
            parsed(texts, faults);
            throw new FaultsException(faults);
        }
        String key = RuleCache.key(texts);
        Optional<RuleCache.Loaded> loaded =
                keptRules.join().filter(rules -> rules.key().equals(key));
        List<RuleText> rules = parsed(texts, faults);
        rules.forEach(rule -> {
            RuleText earlier = parts.rules().put(rule.id(), rule);
            if (earlier != null) {
                faults.add(new Fault(
                        rule.place(),
                        "",
                        "a second rule is called '" + rule.id() + "'; the first is " + earlier.place(),
                        "one rule an id"));
            }
        });
        String hash = HexFormat.of().formatHex(digest.digest()).substring(0, 12);
        if (faults.isEmpty() && !ShippedRules.passed(hash)) {
            new BookChecks(parts, faults).check();
        }
        if (!faults.isEmpty()) {
            throw new FaultsException(faults);
        }
        cached.refused().ifPresent(progress);
        pages.keep();
        KieSessionsPool sessions = loaded.isPresent() ? loaded.get().sessions() : compiled(key, texts, progress);
        Book book = new Book(
                cover,
                hash,
                regions,
                parts.cards(),
                parts.rules(),
                parts.practice(),
                parts.sources(),
                parts.places(),
                tables,
                House.NONE);
        return new RuleEngine(book, sessions);
    }

    private TitlePage cover(Node.Mapping page) {
        Bound<TitlePage> cover = Binder.bind(TitlePage.class, page, faults);
        cover.record().review().check(cover.places(), NodePath.of("review"), faults);
        return cover.record();
    }

    /** The rules kept under the text that the rule files have now; what is wrong with the files is said later. */
    private Optional<RuleCache.Loaded> keptRules() {
        List<Fault> ignored = new ArrayList<>();
        Map<String, String> texts = texts(folder, ignored);
        return ignored.isEmpty() ? cache.find(RuleCache.key(texts)) : Optional.empty();
    }

    /** The rule files of a book by name. */
    static Map<String, String> texts(Path folder, List<Fault> faults) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (Path topic : topics(folder, faults)) {
            String text = InputFile.page(folder, rulesOf(topic), faults);
            if (text != null) {
                texts.put(rulesOf(topic).toString(), text);
            }
        }
        return texts;
    }

    private static Path rulesOf(Path topic) {
        return topic.resolve(topic.getFileName() + ".drl");
    }

    private static List<Path> topics(Path folder, List<Fault> faults) {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(Files::isDirectory)
                    .filter(topic -> !topic.endsWith("tables"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            faults.add(
                    new Fault(Place.of(folder.toString()), "", "the folder cannot be read", "check its permissions"));
            return List.of();
        }
    }

    private void topic(Path topic, BookChecks.Parts parts, Map<String, String> texts) {
        Path drl = rulesOf(topic);
        Text text = text(drl);
        if (text != null) {
            texts.put(name(drl), text.text());
        }
        collect(topic.resolve("cards.yaml"), Card.class, parts.cards(), parts.places());
        if (Files.exists(topic.resolve("practice.yaml"))) {
            collect(topic.resolve("practice.yaml"), DatedLimit.class, parts.practice(), parts.places());
        }
    }

    private <R extends Record> void collect(
            Path file, Class<R> type, Map<String, R> into, Map<String, Located> places) {
        Node.Mapping root = read(file);
        if (root == null) {
            return;
        }
        String topic = file.getParent().getFileName().toString();
        entries(root, type).forEach((id, bound) -> {
            Place place = bound.places().beginning();
            if (!id.startsWith(topic + ".")) {
                faults.add(new Fault(place, id, "does not begin with its topic", topic + "." + id));
            }
            if (places.containsKey(id)) {
                faults.add(new Fault(
                        place,
                        id,
                        "stands in the book twice; first at " + places.get(id).beginning(),
                        "one id, one entry"));
            }
            into.put(id, bound.record());
            places.put(id, bound.places());
        });
    }

    private <R extends Record> Map<String, R> records(Node node, Class<R> type) {
        Map<String, R> records = new LinkedHashMap<>();
        entries(node, type).forEach((id, bound) -> records.put(id, bound.record()));
        return records;
    }

    private <R extends Record> Map<String, Bound<R>> entries(Node node, Class<R> type) {
        Map<String, Bound<R>> entries = new LinkedHashMap<>();
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((id, entry) -> {
                if (entry.value() instanceof Node.Mapping) {
                    entries.put(id, Binder.bind(type, id, entry, faults));
                } else {
                    faults.add(new Fault(
                            entry.place(),
                            id,
                            "is " + entry.value().described() + " where a group of fields belongs",
                            id + ": with its fields indented below"));
                }
            });
        }
        return entries;
    }

    /** The rules of these files. */
    static List<RuleText> parsed(Map<String, String> texts, List<Fault> faults) {
        List<RuleText> rules = new ArrayList<>();
        texts.forEach((file, text) ->
                rules.addAll(RuleParser.parse(file, text, Measures.kinds().keySet(), faults)));
        return rules;
    }

    private KieSessionsPool compiled(String key, Map<String, String> texts, Consumer<String> progress)
            throws FaultsException {
        progress.accept(
                "Compiling the rules" + (cached.refused().isEmpty() ? "; the next run will find them ready." : "."));
        Map<String, byte[]> files = RuleCompiler.compile(texts, faults);
        if (!faults.isEmpty()) {
            throw new FaultsException(faults);
        }
        cache.keep(key, new CompiledRules(files));
        try {
            return RuleCompiler.load(files);
        } catch (IOException e) {
            throw new IllegalStateException("rules just compiled cannot be loaded", e);
        }
    }

    private String textOf(Path file) {
        Text text = text(file);
        return text == null ? null : text.text();
    }

    /** A page of the book, as kept by an earlier run where its text is still the same. */
    private Node.Mapping read(Path file) {
        Text text = text(file);
        if (text == null) {
            return null;
        }
        Node.Mapping page = pages.find(name(file), text.digest());
        if (page == null) {
            int before = faults.size();
            page = NodeReader.read(name(file), text.text(), faults);
            if (page != null && faults.size() == before) {
                pages.add(text.digest(), page);
            }
        }
        return page;
    }

    /** A file's text and its digest. */
    private record Text(String text, String digest) {}

    /** A file's text, counted into the book's hash; null with a fault where it cannot be read. */
    private Text text(Path file) {
        String text = InputFile.page(folder, file, faults);
        if (text == null) {
            return null;
        }
        MessageDigest own = Digests.sha256();
        CacheFolder.count(own, folder.relativize(file).toString(), text);
        byte[] bytes = own.digest();
        digest.update(bytes);
        return new Text(text, HexFormat.of().formatHex(bytes));
    }

    private String name(Path file) {
        return folder.resolve(folder.relativize(file)).toString();
    }
}
