package fitworthy.book;

import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Map;

/**
 * Where a part of an entry of the book's pages stands. A page is read again when somebody asks, which is when something
 * is wrong with it; a book that is right need not remember the line of every value.
 */
public final class Places {

    private final Map<String, Node> pages = new HashMap<>();

    /**
     * The place of a part of an entry, or of as much of the way there as the page has.
     *
     * @param entry where the entry begins
     * @param id the entry
     * @param path names of fields, and numbers of items from 0 on
     */
    public Place of(Place entry, String id, Object... path) {
        Node node = pages.computeIfAbsent(entry.file(), Places::page);
        Place place = entry;
        if (node instanceof Node.Mapping page && page.entries().containsKey(id)) {
            node = page.entries().get(id).value();
            for (Object step : path) {
                if (node instanceof Node.Mapping fields && fields.entries().containsKey(step)) {
                    node = fields.entries().get(step).value();
                } else if (node instanceof Node.Listing list
                        && step instanceof Integer item
                        && item < list.items().size()) {
                    node = list.items().get(item);
                } else {
                    return place;
                }
                place = node.place();
            }
        }
        return place;
    }

    private static Node page(String file) {
        return NodeReader.read(Path.of(file), new ArrayList<>());
    }
}
