package fitworthy.book;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** What stands in a book's files and could not be read, so that nothing is said of its absence. */
public final class Unread {

    private final Set<Path> files = new HashSet<>();
    private final Map<Path, Set<String>> entries = new HashMap<>();

    /** A file of which something may be missing. */
    public void file(Path file) {
        files.add(file);
    }

    /** An entry with something wrong in it. */
    public void entry(Path file, String id) {
        entries.computeIfAbsent(file, first -> new HashSet<>()).add(id);
    }

    boolean mayBeIn(Path file) {
        return files.contains(file);
    }

    boolean mayBeIn(Path file, String id) {
        return mayBeIn(file) || entries.getOrDefault(file, Set.of()).contains(id);
    }

    /** Whether there is any such file of a topic's rules. */
    boolean anyRules() {
        return files.stream().anyMatch(file -> file.toString().endsWith(".drl"));
    }
}
