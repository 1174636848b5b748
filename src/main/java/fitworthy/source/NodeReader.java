package fitworthy.source;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Reads YAML or JSON text into located {@link Node}s. Duplicate keys, aliases, tags, deep nesting and large files are
 * faults, so that what a person reads is what the program reads, in bounded memory.
 */
public final class NodeReader {

    static final int DEEPEST = 40;
    static final int LONGEST_NAME = 200;
    static final int LONGEST_TEXT = 10_000;
    /** Some ten times the longest file shipped; the rest of what is read grows with their number. */
    public static final int MOST_VALUES = 50_000;

    static final int MOST_FAULTS = 100;

    private static final StreamReadConstraints CONSTRAINTS =
            StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build();
    private static final JsonFactory JSON =
            JsonFactory.builder().streamReadConstraints(CONSTRAINTS).build();

    private static final String BEGIN = "begin with 'title: Touring wagon'";
    private static final String NO_CONTROL_CHARACTERS = "leave it out; most often it came with a copied text";
    private static final String NOT_UTF_8 = "save the file as UTF-8; it looks like UTF-16, or like no text at all";

    /** Spaces that look like the plain one. */
    private static final Pattern ODD_BLANK = Pattern.compile(YamlSlip.ODD);

    /** Thrown to read no further. */
    private static final class Enough extends IOException {
        private Enough(String message) {
            super(message);
        }
    }

    /** Made on first use: a JSON input never loads the YAML parser. */
    private static final class Yaml {
        static final YAMLFactory FACTORY = YAMLFactory.builder()
                .streamReadConstraints(CONSTRAINTS)
                .enable(YAMLParser.Feature.EMPTY_STRING_AS_NULL)
                .build();
    }

    private final String file;
    /** How many lines of the file stand before the text. */
    private final int before;

    private final List<Fault> faults;
    /** Where reading has come to, for what the parser reports without a place. */
    private Place reached;

    private final int faultsBefore;
    private int values;

    private final String text;

    private NodeReader(Place place, String text, List<Fault> faults) {
        this.text = text;
        this.file = place.file();
        this.before = Math.max(0, place.line() - 1);
        this.faults = faults;
        this.faultsBefore = faults.size();
        this.reached = place;
    }

    /**
     * Reads a file.
     *
     * @param faults gets every fault found
     * @return the root mapping, or null where the text cannot be read as one
     */
    public static Node.Mapping read(Path path, List<Fault> faults) {
        return read(path.toString(), InputFile.text(path, faults), faults);
    }

    /**
     * Reads text; JSON where the first character is an opening brace, YAML otherwise.
     *
     * @param text null where it could not be had
     * @return the root mapping, or null where the text cannot be read as one
     */
    public static Node.Mapping read(String file, String text, List<Fault> faults) {
        return read(Place.of(file), text, faults);
    }

    /**
     * The same for a text within a file.
     *
     * @param place the file, with the line that the text begins on
     */
    public static Node.Mapping read(Place place, String text, List<Fault> faults) {
        if (text == null) {
            return null;
        }
        int control = Words.controlCharacter(text);
        if (control >= 0) {
            faults.add(new Fault(
                    place.after(text.substring(0, control)),
                    "",
                    String.format(Locale.ROOT, "the control character U+%04X stands here", (int) text.charAt(control)),
                    text.charAt(control) == 0 ? NOT_UTF_8 : NO_CONTROL_CHARACTERS));
            return null;
        }
        boolean json = text.stripLeading().startsWith("{");
        NodeReader reader = new NodeReader(place, text, faults);
        try (JsonParser parser = (json ? JSON : Yaml.FACTORY).createParser(text)) {
            return reader.root(parser);
        } catch (StreamConstraintsException e) {
            boolean deep = e.getOriginalMessage().contains("nesting");
            faults.add(new Fault(
                    reader.reached,
                    "",
                    deep ? "nested deeper than " + DEEPEST + " levels" : "a name or number is far too long",
                    "keep it like the sheets in scenarios/"));
        } catch (JsonProcessingException e) {
            Place at = reader.place(e.getLocation());
            Fault fault = json ? SyntaxFaults.json(e, at) : SyntaxFaults.yaml(e, text, at, reader.before);
            if (faults.stream().noneMatch(told -> told.place().equals(fault.place()))) {
                faults.add(fault);
            }
        } catch (Enough e) {
            faults.add(new Fault(reader.reached, "", e.getMessage(), "keep it like the sheets in scenarios/"));
        } catch (IOException e) {
            throw new IllegalStateException("reading from memory failed", e);
        }
        return null;
    }

    private Node.Mapping root(JsonParser parser) throws IOException {
        Node root = parser.nextToken() == null ? new Node.Blank(Place.of(file), false) : node(parser, NodePath.TOP);
        if (parser.currentToken() != null && parser.nextToken() != null) {
            boolean json = !(parser instanceof YAMLParser);
            faults.add(new Fault(
                    place(parser.currentTokenLocation()),
                    "",
                    json
                            ? "more text follows the end of the document"
                            : "more text follows a line of three dashes or points, which ends the file",
                    json ? "keep one document in a file" : "take that line out"));
        }
        if (root instanceof Node.Mapping mapping) {
            return mapping;
        }
        if (root instanceof Node.Blank blank) {
            if (!blank.faulted()) {
                faults.add(new Fault(root.place(), "", "the file is empty", BEGIN));
            }
        } else {
            faults.add(
                    new Fault(root.place(), "", "the file is " + root.described() + ", not a group of fields", BEGIN));
        }
        return null;
    }

    private Node node(JsonParser parser, NodePath path) throws IOException {
        Place place = place(parser.currentTokenLocation());
        if (++values > MOST_VALUES) {
            throw new Enough("more than " + MOST_VALUES + " values stand in this file");
        }
        if (faults.size() - faultsBefore >= MOST_FAULTS) {
            throw new Enough("the file has more than " + MOST_FAULTS + " faults; it was not read further");
        }
        boolean faulted = false;
        if (parser instanceof YAMLParser yaml) {
            if (yaml.isCurrentAlias() || yaml.getObjectId() != null || anchored(parser)) {
                anchor(place, path);
                faulted = yaml.isCurrentAlias();
            }
            if (yaml.getTypeId() != null) {
                faults.add(new Fault(
                        place,
                        path.toString(),
                        "tags (! and what follows it) are not read here",
                        "the value alone; in quotes where it begins with '!'"));
                faulted = true;
            }
        }
        Node node =
                switch (parser.currentToken()) {
                    case START_OBJECT -> mapping(parser, path, place);
                    case START_ARRAY -> listing(parser, path, place);
                    case VALUE_NULL -> new Node.Blank(place, false);
                    case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> scalar(place, path, parser.getText(), true);
                    default -> scalar(place, path, parser.getText(), false);
                };
        return faulted ? new Node.Blank(place, true) : node;
    }

    private void anchor(Place place, NodePath path) {
        faults.add(new Fault(
                place,
                path.toString(),
                "anchors and aliases (& and *) are not read here",
                "text that begins so in quotes; else the value written out where it belongs"));
    }

    /** Whether an anchor stands before a word or a number, of which the parser says nothing. */
    private boolean anchored(JsonParser parser) {
        long offset = parser.currentTokenLocation().getCharOffset();
        return offset >= 0 && offset < text.length() && text.charAt((int) offset) == '&';
    }

    private Node scalar(Place place, NodePath path, String text, boolean number) {
        if (text.length() > LONGEST_TEXT) {
            faults.add(
                    new Fault(place, path.toString(), "is longer than " + LONGEST_TEXT + " characters", "a few words"));
            return new Node.Blank(place, true);
        }
        if (Words.controlCharacter(text) >= 0) {
            faults.add(new Fault(
                    place,
                    path.toString(),
                    String.format(Locale.ROOT, "holds the control character U+%04X", (int)
                            text.charAt(Words.controlCharacter(text))),
                    NO_CONTROL_CHARACTERS));
            return new Node.Blank(place, true);
        }
        return new Node.Scalar(place, text, number);
    }

    private Node mapping(JsonParser parser, NodePath path, Place place) throws IOException {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        // Every field of an item whose dash is missing would be told as given twice.
        boolean inNextItem = false;
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            Place keyPlace = place(parser.currentTokenLocation());
            String key = parser.currentName();
            NodePath keyPath = path.to(key);
            if (parser instanceof YAMLParser && anchored(parser)) {
                anchor(keyPlace, keyPath);
            }
            parser.nextToken();
            Node value = node(parser, keyPath);
            Node.Entry earlier = entries.get(key);
            if (inNextItem) {
                continue;
            } else if (earlier != null && lacksDash(parser, path, entries, earlier, keyPlace)) {
                inNextItem = true;
                faults.add(new Fault(
                        keyPlace,
                        keyPath.toString(),
                        "'" + Words.shortened(key, 60) + "' is given twice; first on line "
                                + earlier.place().line(),
                        "a dash before it where the next of the list begins here: - " + Words.shortened(key, 60)
                                + ": ...; else keep one of the two"));
            } else if (earlier != null) {
                faults.add(new Fault(
                        keyPlace,
                        keyPath.toString(),
                        "'" + Words.shortened(key, 60) + "' is given twice; first on line "
                                + earlier.place().line(),
                        "keep one of the two"));
            } else if (Words.controlCharacter(key) >= 0) {
                faults.add(new Fault(
                        keyPlace,
                        keyPath.toString(),
                        String.format(Locale.ROOT, "a name with the control character U+%04X", (int)
                                key.charAt(Words.controlCharacter(key))),
                        NO_CONTROL_CHARACTERS));
            } else if (ODD_BLANK.matcher(key).find()) {
                faults.add(new Fault(
                        keyPlace,
                        keyPath.toString(),
                        "a name with a space that no keyboard types, as in text copied from a page",
                        "the spaces of this line typed anew"));
            } else if (key.length() > LONGEST_NAME) {
                faults.add(new Fault(
                        keyPlace,
                        keyPath.toString(),
                        "a name longer than " + LONGEST_NAME + " characters",
                        "the name of a field"));
            } else {
                entries.put(key, new Node.Entry(keyPlace, value));
            }
        }
        return new Node.Mapping(place, entries);
    }

    /** Whether an item of a list seems to begin anew: with its first field once more, on a later line. */
    private static boolean lacksDash(
            JsonParser parser, NodePath path, Map<String, Node.Entry> entries, Node.Entry earlier, Place again) {
        return parser instanceof YAMLParser
                && path.last() instanceof NodePath.Item
                && earlier == entries.values().iterator().next()
                && again.line() > earlier.place().line();
    }

    private Node listing(JsonParser parser, NodePath path, Place place) throws IOException {
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(node(parser, path.to(items.size() + 1)));
        }
        return new Node.Listing(place, items);
    }

    private Place place(JsonLocation location) {
        if (location != null) {
            reached = new Place(file, location.getLineNr() + before, location.getColumnNr());
        }
        return reached;
    }
}
