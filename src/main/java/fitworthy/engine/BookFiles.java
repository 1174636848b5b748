package fitworthy.engine;

import fitworthy.book.Region;
import fitworthy.book.Unread;
import fitworthy.schema.Binder;
import fitworthy.schema.Bound;
import fitworthy.source.Digests;
import fitworthy.source.Fault;
import fitworthy.source.InputFile;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/** The files of a rule book: their text, counted into the book's hash, and the entries that it holds. */
final class BookFiles {

    private final Path folder;
    private final BookPageCache pages;
    private final List<Fault> faults;
    private final MessageDigest digest = Digests.sha256();

    /** @param faults gets what is wrong with a file */
    BookFiles(Path folder, BookPageCache pages, List<Fault> faults) {
        this.folder = folder;
        this.pages = pages;
        this.faults = faults;
    }

    /** The digest of every file read. */
    String hash() {
        return HexFormat.of().formatHex(digest.digest()).substring(0, 12);
    }

    /** The entries of a page that nothing is wrong with; of what else stands there it takes note. */
    <R extends Record> Map<String, Bound<R>> sound(Path file, Class<R> type, Unread unread) {
        return sound(file, type, (id, group) -> Map.of(), unread);
    }

    /**
     * The same with examples of its own in messages.
     *
     * @param fitting examples by field for a group of an entry, by its id
     */
    <R extends Record> Map<String, Bound<R>> sound(
            Path file, Class<R> type, BiFunction<String, Node.Mapping, Map<String, String>> fitting, Unread unread) {
        int before = faults.size();
        Node.Mapping root = read(file);
        if (root == null || faults.size() > before) {
            unread.file(file);
        }
        Map<String, Bound<R>> entries = new LinkedHashMap<>();
        if (root != null) {
            root.entries().forEach((id, entry) -> {
                int told = faults.size();
                Optional<Bound<R>> bound = entry(type, id, entry, group -> fitting.apply(id, group));
                if (bound.isPresent() && faults.size() == told) {
                    entries.put(id, bound.get());
                } else {
                    unread.entry(file, id);
                }
            });
        }
        return entries;
    }

    /** The regions of the cover. */
    Map<String, Bound<Region>> regions(Node node) {
        Map<String, Bound<Region>> regions = new LinkedHashMap<>();
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((id, entry) -> entry(Region.class, id, entry, group -> Map.of())
                    .ifPresent(bound -> regions.put(id, bound)));
        }
        return regions;
    }

    private <R extends Record> Optional<Bound<R>> entry(
            Class<R> type, String id, Node.Entry entry, Function<Node.Mapping, Map<String, String>> fitting) {
        if (entry.value() instanceof Node.Mapping) {
            return Optional.of(Binder.bind(type, id, entry, fitting, faults));
        }
        faults.add(new Fault(
                entry.place(),
                id,
                "is " + entry.value().described() + " where a group of fields belongs",
                id + ": with its fields indented below"));
        return Optional.empty();
    }

    /** A file's text alone. */
    String textOf(Path file) {
        Text text = text(file);
        return text == null ? null : text.text();
    }

    /** A page of the book, as kept by an earlier run where its text is still the same. */
    Node.Mapping read(Path file) {
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
    record Text(String text, String digest) {}

    /** A file's text, counted into the book's hash; null with a fault where it cannot be read. */
    Text text(Path file) {
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

    /** How a file is named in messages and kept. */
    String name(Path file) {
        return folder.resolve(folder.relativize(file)).toString();
    }
}
