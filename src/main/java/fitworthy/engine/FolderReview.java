package fitworthy.engine;

import fitworthy.book.UsualFigures;
import fitworthy.figures.room.RoomMeasures;
import fitworthy.source.Fault;
import fitworthy.source.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What lies in a book's folder though nothing reads it: what its keeper wrote there is nobody's advice. */
public final class FolderReview {

    static final String COVER = "book.yaml";

    private static final Set<String> OF_BOOK = Set.of(COVER, "sources.yaml", "plain-sheet.yaml");
    private static final Set<String> OF_TOPIC = Set.of("cards.yaml", "practice.yaml", "cases.yaml");
    /** What the folders hold that are no topic's. */
    private static final Map<String, Set<String>> OTHERS = Map.of(
            "tables",
            Set.of("cable.csv", "load-index.csv", "order.csv", "speed-symbol.csv", "synonyms.csv"),
            RoomMeasures.TOPIC,
            Set.of("cases.yaml"),
            UsualFigures.FOLDER,
            Stream.concat(UsualFigures.PAGES.stream(), Stream.of("places.yaml", "cases.yaml"))
                    .collect(Collectors.toSet()));

    private FolderReview() {}

    /** Whether a folder of the book holds rules. */
    static boolean isTopic(Path folder) {
        return !OTHERS.containsKey(folder.getFileName().toString());
    }

    /** Tells every file and folder that is not one of a book; hidden ones, which editors make, are let be. */
    public static void look(Path folder, List<Fault> faults) {
        for (Path each : in(folder, faults)) {
            if (!Files.isDirectory(each)) {
                tell(each, OF_BOOK, faults);
            } else {
                in(each, faults).forEach(file -> tell(file, read(each), faults));
            }
        }
    }

    /** What is read of a folder in the book. */
    private static Set<String> read(Path folder) {
        String name = folder.getFileName().toString();
        Set<String> read = new TreeSet<>(OTHERS.getOrDefault(name, OF_TOPIC));
        if (isTopic(folder)) {
            read.add(name + ".drl");
        }
        return read;
    }

    /** The file that was most likely meant to be a page which is not there. */
    static Optional<Path> meant(Path page) {
        return in(page.getParent(), new ArrayList<>()).stream()
                .filter(file -> !Files.isDirectory(file) && stem(file).equals(stem(page)))
                .findFirst();
    }

    /** What lies in a folder, sorted, but for what is hidden; a fault where it cannot be read. */
    static List<Path> in(Path folder, List<Fault> faults) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(path -> !path.getFileName().toString().startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            faults.add(
                    new Fault(Place.of(folder.toString()), "", "the folder cannot be read", "check its permissions"));
            return List.of();
        }
    }

    private static void tell(Path path, Set<String> names, List<Fault> faults) {
        if (names.contains(path.getFileName().toString()) && !Files.isDirectory(path)) {
            return;
        }
        String wanted = names.stream()
                .filter(name -> stem(path).equals(stem(Path.of(name))))
                .findFirst()
                .orElse("");
        faults.add(new Fault(
                Place.of(path.toString()),
                "",
                "nothing reads this, so what it says holds nowhere"
                        + (wanted.isEmpty() ? "" : ": it is not called " + wanted),
                wanted.isEmpty()
                        ? "one of " + String.join(", ", new TreeSet<>(names)) + "; else take it out of the book"
                        : Files.exists(path.resolveSibling(wanted))
                                ? "what is to hold in " + wanted
                                        + ", which is there too, and this taken out of the book"
                                : "call it " + wanted + ", in small letters and with this ending"));
    }

    /** A name as far as slips in it leave it alone: without its endings, capitals and an s. */
    private static String stem(Path file) {
        return file.getFileName()
                .toString()
                .toLowerCase(Locale.ROOT)
                .replaceFirst("\\..*", "")
                .replaceFirst("s$", "");
    }
}
