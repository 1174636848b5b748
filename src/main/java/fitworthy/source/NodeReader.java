package fitworthy.source;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads YAML or JSON text into located {@link Node}s. Duplicate keys, aliases, tags, deep nesting and large files are
 * faults, so that what a person reads is what the program reads, in bounded memory.
 */
public final class NodeReader {

    static final int DEEPEST = 40;
    static final long LARGEST_BYTES = 4L << 20;

    private static final JsonFactory JSON = new JsonFactory();

    /** Made on first use: a JSON input never loads the YAML parser. */
    private static final class Yaml {
        static final YAMLFactory FACTORY = new YAMLFactory();
    }

    private final String file;
    private final List<Fault> faults;

    private NodeReader(String file, List<Fault> faults) {
        this.file = file;
        this.faults = faults;
    }

    /**
     * Reads a file.
     *
     * @param faults gets every fault found
     * @return the root mapping, or null where the text cannot be read as one
     */
    public static Node.Mapping read(Path path, List<Fault> faults) {
        String file = path.toString();
        String text = text(path, faults);
        return text == null ? null : read(file, text, faults);
    }

    /** The whole file as UTF-8 text, or null with a fault where it cannot be had. */
    public static String text(Path path, List<Fault> faults) {
        Place place = Place.of(path.toString());
        try {
            if (Files.isDirectory(path)) {
                faults.add(new Fault(place, "", "this is a folder", "name a file, such as scenarios/touring.yaml"));
                return null;
            }
            if (Files.size(path) > LARGEST_BYTES) {
                faults.add(new Fault(place, "", "the file is larger than " + (LARGEST_BYTES >> 20) + " MiB",
                        "split it, or remove what does not belong in it"));
                return null;
            }
            String text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(Files.readAllBytes(path))).toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (NoSuchFileException e) {
            faults.add(new Fault(place, "", "there is no such file", "check the spelling of the path"));
        } catch (CharacterCodingException e) {
            faults.add(new Fault(place, "", "the file is not UTF-8 text", "save it as UTF-8"));
        } catch (IOException e) {
            faults.add(new Fault(place, "", "the file cannot be read: " + e.getMessage(), "check its permissions"));
        }
        return null;
    }

    /**
     * Reads text; JSON where the first character is an opening brace, YAML otherwise.
     *
     * @return the root mapping, or null where the text cannot be read as one
     */
    public static Node.Mapping read(String file, String text, List<Fault> faults) {
        NodeReader reader = new NodeReader(file, faults);
        JsonFactory factory = text.stripLeading().startsWith("{") ? JSON : Yaml.FACTORY;
        try (JsonParser parser = factory.createParser(text)) {
            if (parser.nextToken() == null) {
                faults.add(new Fault(Place.of(file), "", "the file is empty", "begin with 'region: au'"));
                return null;
            }
            Node root = reader.node(parser, "", 0);
            if (root != null && parser.nextToken() != null) {
                faults.add(new Fault(reader.place(parser.currentTokenLocation()), "",
                        "more text follows the end of the document", "keep one document in a file"));
            }
            if (root instanceof Node.Mapping mapping) {
                return mapping;
            }
            if (root != null) {
                faults.add(new Fault(root.place(), "", "the file is " + root.described() + ", not a group of fields",
                        "begin with 'region: au'"));
            }
        } catch (JsonProcessingException e) {
            String problem = Words.shortened(String.valueOf(e.getOriginalMessage()), 160);
            faults.add(new Fault(reader.place(e.getLocation()), "", "not readable: " + problem,
                    "two spaces to indent, 'name: value' a line"));
        } catch (IOException e) {
            throw new IllegalStateException("reading from memory failed", e);
        }
        return null;
    }

    private Node node(JsonParser parser, String path, int depth) throws IOException {
        Place place = place(parser.currentTokenLocation());
        if (depth > DEEPEST) {
            faults.add(new Fault(place, path, "nested deeper than " + DEEPEST + " levels", "keep the sheet flat"));
            parser.skipChildren();
            return null;
        }
        if (parser instanceof YAMLParser yaml && (yaml.isCurrentAlias() || yaml.getObjectId() != null)) {
            faults.add(new Fault(place, path, "anchors and aliases (& and *) are not read here",
                    "write the value out where it belongs"));
        }
        return switch (parser.currentToken()) {
            case START_OBJECT -> mapping(parser, path, depth, place);
            case START_ARRAY -> listing(parser, path, depth, place);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Node.Scalar(place, parser.getText(), true);
            case VALUE_NULL -> new Node.Scalar(place, "", false);
            default -> new Node.Scalar(place, parser.getText(), false);
        };
    }

    private Node mapping(JsonParser parser, String path, int depth, Place place) throws IOException {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            Place keyPlace = place(parser.currentTokenLocation());
            String key = parser.currentName();
            parser.nextToken();
            Node value = node(parser, path.isEmpty() ? key : path + "." + key, depth + 1);
            Node.Entry earlier = entries.get(key);
            if (earlier != null) {
                faults.add(new Fault(keyPlace, path.isEmpty() ? key : path + "." + key,
                        "'" + Words.shortened(key, 60) + "' is given twice; first on line " + earlier.place().line(),
                        "keep one of the two"));
            } else if (value != null) {
                entries.put(key, new Node.Entry(keyPlace, value));
            }
        }
        return new Node.Mapping(place, entries);
    }

    private Node listing(JsonParser parser, String path, int depth, Place place) throws IOException {
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            Node item = node(parser, path + "." + (items.size() + 1), depth + 1);
            if (item != null) {
                items.add(item);
            }
        }
        return new Node.Listing(place, items);
    }

    private Place place(JsonLocation location) {
        return location == null ? Place.of(file) : new Place(file, location.getLineNr(), location.getColumnNr());
    }
}
