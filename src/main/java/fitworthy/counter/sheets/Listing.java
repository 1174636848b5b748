package fitworthy.counter.sheets;

import fitworthy.counter.desk.SheetFolder;
import fitworthy.source.Fault;
import fitworthy.source.InputFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The sheets of a folder, what was changed last first. A file is read again whenever it may have changed. */
final class Listing {

    private final SheetFolder folder;
    private final Map<String, Listed> read = new ConcurrentHashMap<>();

    Listing(SheetFolder folder) {
        this.folder = folder;
    }

    /** @param words all of which stand in what is listed of a sheet; empty for all sheets */
    List<Listed> of(String words) {
        List<String> names = folder.names();
        read.keySet().retainAll(names);
        return names.stream()
                .flatMap(name -> sheet(name).stream())
                .filter(sheet -> words.isBlank() || sheet.holds(words))
                .sorted(Comparator.comparing(Listed::changed).reversed().thenComparing(Listed::file))
                .toList();
    }

    /** The few that were changed last; no other is read. */
    List<Listed> latest(int most) {
        return folder.names().stream()
                .sorted(Comparator.comparing(this::changed).reversed())
                .limit(most)
                .flatMap(name -> sheet(name).stream())
                .toList();
    }

    private FileTime changed(String name) {
        try {
            return Files.getLastModifiedTime(folder.path().resolve(name));
        } catch (IOException e) {
            return FileTime.fromMillis(0);
        }
    }

    /** Empty where it is there no more. */
    Optional<Listed> sheet(String name) {
        return folder.find(name).flatMap(this::now);
    }

    private Optional<Listed> now(Path file) {
        String name = file.getFileName().toString();
        try {
            FileTime changed = Files.getLastModifiedTime(file);
            List<Fault> faults = new ArrayList<>();
            String text = InputFile.text(file, faults);
            Listed before = read.get(name);
            // Its text is compared, since two changes may fall into one tick of the clock.
            Listed sheet = before != null && before.text().equals(text)
                    ? before.at(changed)
                    : Listed.of(name, changed, text == null ? "" : text, List.copyOf(faults));
            read.put(name, sheet);
            return Optional.of(sheet);
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
