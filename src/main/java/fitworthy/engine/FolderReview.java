package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.book.UsualFigures;
import fitworthy.figures.room.RoomMeasures;
import fitworthy.source.Fault;
import fitworthy.source.Place;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What lies in a book's folder though nothing reads it: what its keeper wrote there is nobody's advice. */
public final class FolderReview {

    private static final Set<String> OF_BOOK = Set.of("book.yaml", "sources.yaml", "plain-sheet.yaml");
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

    /** Tells every file and folder that is not one of a book; hidden ones, which editors make, are let be. */
    public static void look(Path folder, Book book, List<Fault> faults) {
        for (Path each : in(folder)) {
            String name = each.getFileName().toString();
            if (!Files.isDirectory(each)) {
                tell(each, OF_BOOK.contains(name), OF_BOOK, faults);
            } else {
                Set<String> read = OTHERS.getOrDefault(name, OF_TOPIC);
                for (Path file : in(each)) {
                    String own = file.getFileName().toString();
                    tell(
                            file,
                            !Files.isDirectory(file)
                                    && (read.contains(own)
                                            || book.topics().contains(name) && own.equals(name + ".drl")),
                            read,
                            faults);
                }
            }
        }
    }

    private static List<Path> in(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(path -> !path.getFileName().toString().startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void tell(Path path, boolean read, Set<String> names, List<Fault> faults) {
        if (!read) {
            faults.add(new Fault(
                    Place.of(path.toString()),
                    "",
                    "nothing reads this, so what it says holds nowhere",
                    "one of " + String.join(", ", names.stream().sorted().toList())
                            + " or the topic's .drl; else take it out of the book"));
        }
    }
}
