package fitworthy.counter.sheets;

import fitworthy.source.Digests;
import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * A sheet in the list, as its file has it; what it does not say is empty.
 *
 * @param file the name of its file
 * @param text what the file holds; empty where it cannot be read as text
 * @param unreadable why it cannot be
 * @param region where it is registered, by its id
 * @param day whose practice values apply
 */
public record Listed(
        String file,
        FileTime changed,
        String text,
        List<Fault> unreadable,
        String title,
        String customer,
        String quote,
        String vehicle,
        String region,
        String day) {

    /** Reads no more of it than is listed; a file that is no sheet is listed by its name. */
    static Listed of(String file, FileTime changed, String text, List<Fault> unreadable) {
        Node.Mapping tree = NodeReader.read(Place.of(file), text, new ArrayList<>());
        return new Listed(
                file,
                changed,
                text,
                unreadable,
                word(tree, "title"),
                word(tree, "customer"),
                word(tree, "quote"),
                vehicle(tree),
                word(tree, "region"),
                word(tree, "as-of"));
    }

    /** The same, changed at another time. */
    Listed at(FileTime time) {
        return new Listed(file, time, text, unreadable, title, customer, quote, vehicle, region, day);
    }

    private static String vehicle(Node.Mapping tree) {
        return tree != null && tree.get("vehicle") instanceof Node.Mapping own
                ? Stream.of("name", "from")
                        .map(field -> word(own, field))
                        .filter(name -> !name.isEmpty())
                        .findFirst()
                        .orElse("")
                : word(tree, "vehicle");
    }

    private static String word(Node.Mapping of, String field) {
        return of != null && of.get(field) instanceof Node.Scalar word ? word.text() : "";
    }

    /** What it is called: by its title, or by its file where it has none. */
    public String name() {
        return title.isBlank() ? file : title;
    }

    /** The id of the element that says what it comes to. */
    public String id() {
        return "came-" + Digests.of(file);
    }

    /** What is said of it in a line, below its name. */
    public List<String> particulars() {
        return Stream.of(
                        customer,
                        quote.isEmpty() ? "" : "quote " + quote,
                        vehicle,
                        day.isEmpty() ? "" : "as of " + day,
                        file)
                .filter(text -> !text.isEmpty())
                .toList();
    }

    /** Whether each of these words stands in something that is listed of it, in large or small letters. */
    boolean holds(String words) {
        String all = String.join(" ", title, customer, quote, vehicle, file).toLowerCase(Locale.ROOT);
        return Stream.of(words.toLowerCase(Locale.ROOT).strip().split("\\s+")).allMatch(all::contains);
    }
}
