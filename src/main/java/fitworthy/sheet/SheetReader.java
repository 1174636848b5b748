package fitworthy.sheet;

import fitworthy.schema.Binder;
import fitworthy.schema.Bound;
import fitworthy.schema.KnownGroups;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads a build sheet whole, or says everything that is wrong with it. */
public final class SheetReader {

    private SheetReader() {}

    /**
     * Reads a sheet file, YAML or JSON.
     *
     * @param regions the regions the rule book knows
     * @throws FaultsException with every fault found
     */
    public static Sheet read(Path file, Set<String> regions) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        Node.Mapping root = NodeReader.read(file, faults);
        return sheet(root, regions, faults);
    }

    /**
     * Makes a sheet of a tree already read.
     *
     * @param root the tree, or null where reading it failed
     * @param faults what was found wrong so far; gets what is found here
     * @throws FaultsException where there is any fault
     */
    public static Sheet sheet(Node.Mapping root, Set<String> regions, List<Fault> faults) throws FaultsException {
        Map<String, List<String>> named = new LinkedHashMap<>();
        regions.forEach(region -> named.put(region, List.of()));
        return bound(root, named, faults, KnownGroups.NONE).record();
    }

    /**
     * The same, with what a sheet that is like it can be made of.
     *
     * @param regions what people call each region of the rule book, by its id
     * @param before what a sheet that was like it was made of
     */
    public static Bound<Sheet> bound(
            Node.Mapping root, Map<String, List<String>> regions, List<Fault> faults, KnownGroups before)
            throws FaultsException {
        if (root != null) {
            Bound<Sheet> read = Binder.bind(Sheet.class, Sidewalls.split(root, faults), faults, before);
            new SheetChecks(read, regions, faults).run();
            if (faults.isEmpty()) {
                return read;
            }
        }
        throw new FaultsException(faults);
    }
}
