package fitworthy;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fitworthy.source.Node;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/**
 * The ends of a node tree, where its values stand, and changed copies of it. A step is a field's name or a position
 * from 0.
 */
public final class Twigs {

    private Twigs() {}

    /** A value and the way to it. */
    public record Twig(List<Object> path, Node.Scalar value) {
        public String field() {
            return String.valueOf(path.get(path.size() - 1));
        }
    }

    /** Every value of a tree. */
    public static List<Twig> of(Node root) {
        List<Twig> twigs = new ArrayList<>();
        collect(root, List.of(), twigs);
        return twigs;
    }

    private static void collect(Node node, List<Object> path, List<Twig> into) {
        if (node instanceof Node.Scalar scalar) {
            into.add(new Twig(path, scalar));
        } else if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((key, entry) -> collect(entry.value(), then(path, key), into));
        } else if (node instanceof Node.Listing listing) {
            for (int i = 0; i < listing.items().size(); i++) {
                collect(listing.items().get(i), then(path, i), into);
            }
        }
    }

    private static List<Object> then(List<Object> path, Object step) {
        List<Object> longer = new ArrayList<>(path);
        longer.add(step);
        return longer;
    }

    /** A copy with another value at the end of a path, or without what stands there where the value is null. */
    public static Node.Mapping with(Node.Mapping root, List<Object> path, Node value) {
        return (Node.Mapping) changed(root, path, value);
    }

    private static Node changed(Node node, List<Object> path, Node value) {
        Object step = path.get(0);
        List<Object> rest = path.subList(1, path.size());
        if (node instanceof Node.Mapping mapping) {
            String key = (String) step;
            Node within = rest.isEmpty() ? value : changed(mapping.get(key), rest, value);
            return within == null ? mapping.without(key) : mapping.with(key, within);
        }
        Node.Listing listing = (Node.Listing) node;
        List<Node> items = new ArrayList<>(listing.items());
        int at = (Integer) step;
        Node within = rest.isEmpty() ? value : changed(items.get(at), rest, value);
        if (within == null) {
            items.remove(at);
        } else {
            items.set(at, within);
        }
        return new Node.Listing(listing.place(), items);
    }

    /** A copy in which each value is what the function makes of its field and its text. */
    public static Node.Mapping each(Node.Mapping root, BiFunction<String, String, String> change) {
        return (Node.Mapping) each("", root, change);
    }

    private static Node each(String field, Node node, BiFunction<String, String, String> change) {
        if (node instanceof Node.Scalar scalar) {
            return new Node.Scalar(scalar.place(), change.apply(field, scalar.text()), scalar.number());
        }
        if (node instanceof Node.Mapping mapping) {
            Map<String, Node.Entry> entries = new LinkedHashMap<>();
            mapping.entries()
                    .forEach((key, entry) ->
                            entries.put(key, new Node.Entry(entry.place(), each(key, entry.value(), change))));
            return new Node.Mapping(mapping.place(), entries);
        }
        if (node instanceof Node.Listing listing) {
            return new Node.Listing(
                    listing.place(),
                    listing.items().stream()
                            .map(item -> each(field, item, change))
                            .toList());
        }
        return node;
    }

    /** The tree as text of the writer's format: JSON, or YAML with a YAML factory. */
    public static String written(Node root, ObjectMapper writer) {
        try {
            return writer.writeValueAsString(plain(root));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static com.fasterxml.jackson.databind.JsonNode plain(Node node) {
        JsonNodeFactory make = JsonNodeFactory.instance;
        if (node instanceof Node.Mapping mapping) {
            ObjectNode fields = make.objectNode();
            mapping.entries().forEach((key, entry) -> fields.set(key, plain(entry.value())));
            return fields;
        }
        if (node instanceof Node.Listing listing) {
            ArrayNode items = make.arrayNode();
            listing.items().forEach(item -> items.add(plain(item)));
            return items;
        }
        return node instanceof Node.Scalar scalar ? make.textNode(scalar.text()) : make.nullNode();
    }
}
