package fitworthy.engine;

import fitworthy.book.Book;
import fitworthy.book.BookChecks;
import fitworthy.book.BookParts;
import fitworthy.book.Card;
import fitworthy.book.DatedLimit;
import fitworthy.book.House;
import fitworthy.book.Region;
import fitworthy.book.Source;
import fitworthy.book.TableReader;
import fitworthy.book.TitlePage;
import fitworthy.book.Unread;
import fitworthy.book.UsualChecks;
import fitworthy.book.UsualFigure;
import fitworthy.book.UsualFigures;
import fitworthy.book.UsualPlace;
import fitworthy.book.UsualPlaces;
import fitworthy.figures.Measures;
import fitworthy.figures.plan.Tables;
import fitworthy.rules.RuleParser;
import fitworthy.rules.RuleText;
import fitworthy.schema.Binder;
import fitworthy.schema.Bound;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.InputFile;
import fitworthy.source.Located;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import org.kie.api.runtime.KieSessionsPool;

/** Reads a rules folder, checks its contract and compiles its rules, or says everything that is wrong with it. */
public final class BookLoader {

    private final Path folder;
    private final CacheFolder cached;
    private final RuleCache cache;
    private final List<Fault> faults = new ArrayList<>();
    private final BookPageCache pages;
    private final BookFiles files;
    private final CompletableFuture<Optional<RuleCache.Loaded>> keptRules;
    /** Whether a page stands under a name by which nothing reads it. */
    private boolean misnamed;

    private BookLoader(Path folder, Path cacheFolder) {
        this.folder = folder;
        this.cached = new CacheFolder(cacheFolder);
        this.cache = new RuleCache(cached);
        this.pages = new BookPageCache(cached);
        this.files = new BookFiles(folder, pages, faults);
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
        Path coverFile = folder.resolve(FolderReview.COVER);
        if (!Files.exists(coverFile)) {
            faults.add(new Fault(
                    Place.of(folder.toString()),
                    "",
                    "there is no book.yaml in this folder",
                    FolderReview.meant(coverFile)
                            .map(file -> "call " + file.getFileName() + " " + FolderReview.COVER)
                            .orElse("name the rules folder: --rules rules")));
            throw new FaultsException(faults);
        }
        if (!Adding.check(folder, faults)) {
            throw new FaultsException(faults);
        }
        Unread unread = new Unread();
        Node.Mapping root = files.read(coverFile);
        if (root != null && !(root.get("regions") instanceof Node.Mapping)) {
            faults.add(new Fault(root.place(), "regions", "is missing", "regions: {any: {name: Anywhere}}"));
        }
        Map<String, Region> regions = new LinkedHashMap<>();
        Map<String, Located> located = new TreeMap<>();
        if (root != null) {
            files.regions(root.get("regions")).forEach((id, bound) -> {
                regions.put(id, bound.record());
                located.put("regions." + id, bound.places());
            });
        }
        TitlePage cover = root == null ? null : cover(root.without("regions"));
        if (!faults.isEmpty()) {
            unread.file(coverFile);
        }
        BookParts parts = new BookParts(
                folder,
                regions,
                new TreeMap<>(),
                new TreeMap<>(),
                new TreeMap<>(),
                new TreeMap<>(),
                new TreeMap<>(),
                located,
                unread);
        sources(parts);
        Map<String, String> texts = new LinkedHashMap<>();
        for (Path topic : topics(folder, faults)) {
            topic(topic, parts, texts);
        }
        usual(parts);
        Tables tables = TableReader.read(folder.resolve("tables"), files::textOf, faults);
        UsualPlaces places = places(folder.resolve(UsualFigures.FOLDER).resolve("places.yaml"), parts);
        String key = RuleCache.key(texts);
        Optional<RuleCache.Loaded> loaded =
                faults.isEmpty() ? keptRules.join().filter(rules -> rules.key().equals(key)) : Optional.empty();
        rules(texts, parts);
        String hash = files.hash();
        if (!faults.isEmpty() || !ShippedRules.passed(hash)) {
            new BookChecks(parts, faults).check();
            new UsualChecks(parts, places.ways(), faults).check();
        }
        if (!faults.isEmpty() || misnamed) {
            FolderReview.look(folder, faults);
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
                new UsualFigures(parts.usual()),
                parts.places(),
                tables,
                places,
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
        return FolderReview.in(folder, faults).stream()
                .filter(Files::isDirectory)
                .filter(FolderReview::isTopic)
                .toList();
    }

    private void sources(BookParts parts) {
        Path file = folder.resolve("sources.yaml");
        files.sound(file, Source.class, parts.unread()).forEach((id, bound) -> {
            parts.sources().put(id, bound.record());
            parts.places().put(id, bound.places());
        });
    }

    private void usual(BookParts parts) {
        for (String page : UsualFigures.PAGES) {
            Path file = folder.resolve(UsualFigures.FOLDER).resolve(page);
            if (exists(file, parts.unread())) {
                files.sound(file, UsualFigure.class, (id, group) -> UsualFigure.examples(id), parts.unread())
                        .forEach((id, bound) -> {
                            Bound<UsualFigure> first = parts.usual().putIfAbsent(id, bound);
                            if (first != null) {
                                twice(id, bound.places().beginning(), first.places());
                            }
                        });
            }
        }
    }

    /** Whether a page is there that a book may do without; under another name it is a fault, told with all that is stray. */
    private boolean exists(Path page, Unread unread) {
        if (Files.exists(page)) {
            return true;
        }
        if (FolderReview.meant(page).isPresent()) {
            misnamed = true;
            unread.file(page);
        }
        return false;
    }

    private void twice(String id, Place place, Located first) {
        faults.add(
                new Fault(place, id, "stands in the book twice; first at " + first.beginning(), "one id, one entry"));
    }

    /** The places in words; a book may do without. */
    private UsualPlaces places(Path file, BookParts parts) {
        return exists(file, parts.unread())
                ? UsualPlaces.of(files.sound(file, UsualPlace.class, parts.unread()), parts, faults)
                : UsualPlaces.NONE;
    }

    private void topic(Path topic, BookParts parts, Map<String, String> texts) {
        Path drl = rulesOf(topic);
        BookFiles.Text text = files.text(drl);
        if (text == null) {
            parts.unread().file(drl);
        } else {
            texts.put(files.name(drl), text.text());
        }
        collect(topic.resolve("cards.yaml"), Card.class, (id, group) -> Map.of(), parts.cards(), parts);
        Path practice = topic.resolve("practice.yaml");
        if (exists(practice, parts.unread())) {
            collect(practice, DatedLimit.class, (id, group) -> DatedLimit.examples(group), parts.practice(), parts);
        }
    }

    private <R extends Record> void collect(
            Path file,
            Class<R> type,
            BiFunction<String, Node.Mapping, Map<String, String>> fitting,
            Map<String, R> into,
            BookParts parts) {
        String topic = file.getParent().getFileName().toString();
        files.sound(file, type, fitting, parts.unread()).forEach((id, bound) -> {
            Place place = bound.places().beginning();
            if (!id.startsWith(topic + ".")) {
                faults.add(new Fault(
                        place, id, "does not begin with its topic", topic + "." + id.substring(id.indexOf('.') + 1)));
            }
            Located first = parts.places().put(id, bound.places());
            if (first != null) {
                twice(id, place, first);
            }
            into.put(id, bound.record());
        });
    }

    private void rules(Map<String, String> texts, BookParts parts) {
        texts.forEach((file, text) -> {
            int before = faults.size();
            for (RuleText rule : RuleParser.sound(file, text, Measures.kinds().keySet(), faults)) {
                RuleText earlier = parts.rules().put(rule.id(), rule);
                if (earlier != null) {
                    faults.add(new Fault(
                            rule.place(),
                            "",
                            "a second rule is called '" + rule.id() + "'; the first is " + earlier.place(),
                            "one rule an id"));
                }
            }
            if (faults.size() > before) {
                parts.unread().file(Path.of(file));
            }
        });
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
}
