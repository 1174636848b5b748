package fitworthy.shelf;

import fitworthy.source.Fault;
import fitworthy.source.Node;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * What a shop has written down once for all its sheets.
 *
 * @param folder where it lies
 * @param files the files that were read, by name
 * @param things what lies there, by kind and by name
 * @param content digest of the files; empty where there is no shelf
 * @param faults what is wrong with the files, so that nothing may be taken
 */
public record Shelf(
        Path folder,
        List<Path> files,
        Map<Kind, Map<String, Node.Mapping>> things,
        String content,
        List<Fault> faults) {

    /** That there is none. */
    public static final Shelf NONE = new Shelf(null, List.of(), Map.of(), "", List.of());

    public boolean isNone() {
        return folder == null;
    }

    /** What lies there of a kind, by name. */
    public Map<String, Node.Mapping> of(Kind kind) {
        return things.getOrDefault(kind, Map.of());
    }
}
