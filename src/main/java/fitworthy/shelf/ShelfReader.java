package fitworthy.shelf;

import fitworthy.schema.Binder;
import fitworthy.source.Digests;
import fitworthy.source.Fault;
import fitworthy.source.InputFile;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Reads a shelf: every YAML or JSON file of a folder, with lists of things that each have a name of their own. */
public final class ShelfReader {

    static final int MOST_FILES = 100;
    /** Of all files together, in characters. */
    static final int LARGEST = 4 * InputFile.LARGEST_BYTES;

    private static final List<String> LISTS =
            Stream.of(Kind.values()).map(Kind::onShelf).toList();

    private final Path folder;
    private final List<Fault> faults = new ArrayList<>();
    private final Map<Kind, Map<String, Node.Mapping>> things = new EnumMap<>(Kind.class);
    private final List<String> texts = new ArrayList<>();
    private int length;

    private ShelfReader(Path folder) {
        this.folder = folder;
    }

    /** Reads a folder. What is wrong with its files is told by the shelf. */
    public static Shelf read(Path folder) {
        return new ShelfReader(folder).shelf();
    }

    /** The same, and what is wrong with any of its things; a thing may leave to the sheet what a sheet has to say. */
    public static Shelf readAndChecked(Path folder) {
        Shelf shelf = read(folder);
        List<Fault> faults = new ArrayList<>(shelf.faults());
        shelf.things()
                .forEach((kind, named) -> named.forEach((name, thing) -> Binder.bindPartly(
                        kind.record(), kind.onShelf() + "." + name, new Node.Entry(thing.place(), thing), faults)));
        faults.addAll(ofNoPart(shelf));
        return new Shelf(folder, shelf.files(), shelf.things(), shelf.content(), faults);
    }

    /** Circuits that no part brings along, since the one which they are said to be of does not lie there. */
    private static List<Fault> ofNoPart(Shelf shelf) {
        Set<String> parts = shelf.of(Kind.FITMENTS).keySet();
        List<Fault> faults = new ArrayList<>();
        shelf.of(Kind.CIRCUITS).forEach((name, circuit) -> {
            if (circuit.get(Shelf.PART) instanceof Node.Scalar part && !parts.contains(part.text())) {
                faults.add(new Fault(
                        part.place(),
                        Kind.CIRCUITS.onShelf() + "." + name + "." + Shelf.PART,
                        "'" + Words.shortened(part.text(), 60) + "' is not among the fitments of this shelf, so that"
                                + " no part brings this circuit along" + Words.suggestion(part.text(), parts),
                        parts.isEmpty()
                                ? "leave it out, for the sheet to say"
                                : Shelf.PART + ": " + parts.iterator().next()
                                        + ", or another of them; or leave it out, for the sheet to say"));
            }
        });
        return faults;
    }

    private Shelf shelf() {
        List<Path> files = files();
        for (Path file : files) {
            String text = InputFile.page(folder, file, faults);
            length += text == null ? 0 : text.length();
            if (length > LARGEST) {
                tell(
                        Place.of(folder.toString()),
                        "",
                        "the files of this shelf are larger than " + (LARGEST >> 20) + " MiB together",
                        "a shelf for each trade or branch, named by --shelf");
                break;
            }
            texts.add(file.getFileName().toString());
            texts.add(String.valueOf(text));
            Node.Mapping page = NodeReader.read(file.toString(), text, faults);
            if (page != null) {
                page.entries().forEach(this::list);
            }
        }
        String content = Digests.of(texts.toArray(String[]::new)).substring(0, 12);
        return new Shelf(folder, files, things, content, List.copyOf(faults));
    }

    /** Hidden files are an editor's, and what is no text of ours may lie beside those that are. */
    private List<Path> files() {
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> files = all.filter(file -> file.getFileName().toString().matches("[^.].*\\.(yaml|yml|json)"))
                    .sorted()
                    .limit(MOST_FILES + 1L)
                    .toList();
            if (files.isEmpty() || files.size() > MOST_FILES) {
                tell(
                        Place.of(folder.toString()),
                        "",
                        files.isEmpty()
                                ? "there is nothing on this shelf"
                                : "there are more than " + MOST_FILES + " files on this shelf",
                        "one or more of *.yaml, *.yml or *.json with a list such as fitments: in each");
                return List.of();
            }
            return files;
        } catch (IOException e) {
            tell(
                    Place.of(folder.toString()),
                    "",
                    Files.isDirectory(folder) ? "the folder cannot be read" : "there is no such folder",
                    Files.isDirectory(folder) ? "check its permissions" : "a folder of *.yaml, *.yml or *.json");
            return List.of();
        }
    }

    private void list(String name, Node.Entry entry) {
        Kind kind = LISTS.contains(name) ? Kind.values()[LISTS.indexOf(name)] : null;
        if (kind == null) {
            tell(
                    entry.place(),
                    name,
                    "a shelf has no list of this name" + Words.suggestion(name, LISTS),
                    "one of " + String.join(", ", LISTS));
        } else if (entry.value() instanceof Node.Listing listing) {
            for (int i = 1; i <= listing.items().size(); i++) {
                thing(kind, listing.items().get(i - 1), NodePath.of(name).to(i).toString());
            }
        } else if (!(entry.value() instanceof Node.Blank)) {
            tell(
                    entry.value().place(),
                    name,
                    "is " + entry.value().described() + " where a list belongs",
                    name + ": with '- name: ...' for each");
        }
    }

    private void thing(Kind kind, Node node, String path) {
        if (!(node instanceof Node.Mapping thing)) {
            tell(
                    node.place(),
                    path,
                    "is " + node.described() + " where a group of fields belongs",
                    "- name: Front bar, and its other fields below");
            return;
        }
        if (thing.get(Expansion.FROM) != null) {
            tell(
                    thing.entries().get(Expansion.FROM).place(),
                    path + "." + Expansion.FROM,
                    "a thing on the shelf is written out and taken from no other",
                    "its own fields; or one thing here, and what differs on the sheet");
        }
        String name = thing.name();
        if (name == null || name.isBlank()) {
            tell(thing.place(), path + ".name", "has no name, by which a sheet takes it", "name: Front bar");
            return;
        }
        Node.Mapping other =
                things.computeIfAbsent(kind, none -> new LinkedHashMap<>()).putIfAbsent(name, thing);
        if (other != null) {
            tell(
                    thing.get("name").place(),
                    path + ".name",
                    "another of the " + kind.onShelf() + " is called '" + Words.shortened(name, 60) + "', at "
                            + other.place(),
                    "a name of its own for each, such as '" + Words.shortened(name, 60) + " 2'");
        }
    }

    private void tell(Place place, String path, String problem, String mend) {
        faults.add(new Fault(place, path, problem, mend));
    }
}
