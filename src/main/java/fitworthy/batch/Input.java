package fitworthy.batch;

import fitworthy.source.Fault;
import fitworthy.source.InputFile;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.nio.file.Path;
import java.util.List;

/**
 * One sheet to be looked at.
 *
 * @param place its file, with the line where the file holds many
 * @param line the bytes of the line; null where it has a file of its own, which is read when its turn comes
 */
public record Input(Place place, byte[] line) {

    /** Its text, or null with a fault where it cannot be had. */
    public String text(List<Fault> faults) {
        return line == null ? InputFile.text(Path.of(place.file()), faults) : InputFile.text(line, place, faults);
    }

    /** The tree of its text, or null with a fault. */
    public Node.Mapping tree(String text, List<Fault> faults) {
        if (text != null && line != null && !text.stripLeading().startsWith("{")) {
            faults.add(new Fault(
                    place,
                    "",
                    "the line is not a JSON object",
                    "one sheet a line: {\"title\": \"Touring wagon\", ...}"));
            return null;
        }
        return NodeReader.read(place, text, faults);
    }
}
