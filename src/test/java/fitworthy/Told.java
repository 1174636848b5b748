package fitworthy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import fitworthy.advice.Advice;
import fitworthy.book.Severity;
import fitworthy.printout.json.JsonPrintout;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** Everything that is printed of advice, in an order that does not hang on the order of the sheet or of the book. */
public final class Told {

    private static final ObjectMapper JSON = new ObjectMapper();
    /** What the order of a sum may change; a printed figure has twelve digits. */
    private static final double SAME = 1e-9;

    private final JsonNode all;

    private Told(JsonNode all) {
        this.all = all;
    }

    public static Told of(Advice advice) {
        return of(advice, text -> text);
    }

    /** @param reworded what is made of the printed text before it is compared */
    public static Told of(Advice advice, UnaryOperator<String> reworded) {
        StringWriter text = new StringWriter();
        JsonPrintout.print(new PrintWriter(text), advice, Severity.NOTE);
        try {
            return new Told(sorted(JSON.readTree(reworded.apply(text.toString()))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode sorted(JsonNode node) {
        if (node instanceof ObjectNode fields) {
            fields.properties()
                    .forEach(each -> each.setValue(
                            each.getKey().equals("words") ? listed(each.getValue()) : sorted(each.getValue())));
        } else if (node instanceof ArrayNode items) {
            List<JsonNode> all = new ArrayList<>();
            items.forEach(each -> all.add(sorted(each)));
            all.sort(Comparator.comparing(Told::name).thenComparing(JsonNode::toString));
            items.removeAll().addAll(all);
        }
        return node;
    }

    /** What is listed in a sentence. */
    private static JsonNode listed(JsonNode words) {
        return TextNode.valueOf(Stream.of(words.asText().split(", ")).sorted().collect(Collectors.joining(", ")));
    }

    /** What an item is about, without its figures. */
    private static String name(JsonNode item) {
        return item.isTextual()
                ? item.asText()
                : item.path("id").asText() + "|" + item.path("measure").asText() + "|"
                        + item.path("subject").asText() + "|"
                        + item.path("case").asText() + "|" + item.path("field").asText();
    }

    /**
     * Where two differ; figures count as the same where the last digits alone differ.
     *
     * @param but fields that may differ
     */
    public List<String> against(Told other, String... but) {
        List<String> differences = new ArrayList<>();
        compare("", all, other.all, List.of(but), differences);
        return differences;
    }

    private static void compare(String path, JsonNode one, JsonNode other, List<String> but, List<String> into) {
        if (one.isNumber() && other.isNumber()) {
            double size = Math.max(1, Math.max(Math.abs(one.asDouble()), Math.abs(other.asDouble())));
            if (Math.abs(one.asDouble() - other.asDouble()) > SAME * size) {
                into.add(path + ": " + one + " against " + other);
            }
        } else if (one.isObject() && other.isObject()) {
            TreeSet<String> names = new TreeSet<>();
            one.fieldNames().forEachRemaining(names::add);
            other.fieldNames().forEachRemaining(names::add);
            names.removeAll(but);
            names.forEach(name -> compare(path + "." + name, one.path(name), other.path(name), but, into));
        } else if (one.isArray() && other.isArray()) {
            List<String> names = names(one);
            List<String> others = names(other);
            if (!names.equals(others)) {
                List<String> only = new ArrayList<>(names);
                others.forEach(only::remove);
                List<String> onlyOther = new ArrayList<>(others);
                names.forEach(onlyOther::remove);
                into.add(path + ": only here " + only + ", only there " + onlyOther);
                return;
            }
            Iterator<JsonNode> each = other.iterator();
            one.forEach(item -> compare(path + "[" + name(item) + "]", item, each.next(), but, into));
        } else if (!one.equals(other)) {
            into.add(path + ": " + one + " against " + other);
        }
    }

    private static List<String> names(JsonNode items) {
        return StreamSupport.stream(items.spliterator(), false).map(Told::name).toList();
    }
}
