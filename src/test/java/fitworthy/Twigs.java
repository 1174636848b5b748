package fitworthy;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/** The ends of a node tree, where its values stand, and copies in which each of them is changed. */
public final class Twigs {

    private Twigs() {}

    /** A value and the way to it. */
    public record Twig(NodePath path, Node.Scalar value) {
        public String field() {
            return path.last().toString();
        }
    }

    /** Every value of a tree. */
    public static List<Twig> of(Node root) {
        List<Twig> twigs = new ArrayList<>();
        collect(root, NodePath.TOP, twigs);
        return twigs;
    }

    private static void collect(Node node, NodePath path, List<Twig> into) {
        if (node instanceof Node.Scalar scalar) {
            into.add(new Twig(path, scalar));
        } else if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((key, entry) -> collect(entry.value(), path.to(key), into));
        } else if (node instanceof Node.Listing listing) {
            for (int i = 1; i <= listing.items().size(); i++) {
                collect(listing.items().get(i - 1), path.to(i), into);
            }
        }
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
