import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fitworthy.shelf.Shelves;
import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes so many different sheets, a line of JSON each, in ten files: the plain and the shipped ones, varied. With a
 * third argument those of the last file carry a thousand pieces of cargo each.
 */
public final class Make {

    public static void main(String[] args) throws Exception {
        int count = Integer.parseInt(args[0]);
        Path folder = Files.createDirectories(Path.of(args[1]));
        try (var old = Files.list(folder)) {
            old.forEach(each -> each.toFile().delete());
        }
        ObjectMapper json = new ObjectMapper();
        List<JsonNode> sheets = new ArrayList<>();
        for (String each : List.of(
                "rules/plain-sheet.yaml",
                "scenarios/weekender.yaml",
                "scenarios/touring.yaml",
                "scenarios/overloaded.yaml")) {
            List<Fault> faults = new ArrayList<>();
            sheets.add(json(Shelves.beside().expanded(NodeReader.read(Path.of(each), faults), faults)));
        }
        boolean heavy = args.length > 2;
        int each = Math.max(1, count / 10);
        for (int from = 0; from < count; from += each) {
            Path file = folder.resolve("sheets-%06d.ndjson".formatted(from));
            try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8))) {
                for (int i = from; i < Math.min(count, from + each); i++) {
                    ObjectNode sheet = sheets.get(i % sheets.size()).deepCopy();
                    sheet.put("title", "Sheet " + i);
                    ((ObjectNode) sheet.at("/vehicle/ratings")).put("gvm", 2500 + i % 1500 + " kg");
                    ((ObjectNode) sheet.at("/cargo/0")).put("mass", 20 + i % 211 + " kg +/- 2 kg");
                    if (heavy && i >= count - each) {
                        carryMuch(sheet.withArray("/cargo"));
                    }
                    out.println(json.writeValueAsString(sheet));
                }
            }
        }
    }

    private static void carryMuch(ArrayNode cargo) {
        for (int i = 0; i < 1000; i++) {
            ObjectNode piece = cargo.get(0).deepCopy();
            cargo.add(piece.put("name", "Piece " + i).put("mass", "0.1 kg"));
        }
    }

    private static JsonNode json(Node node) {
        JsonNodeFactory made = JsonNodeFactory.instance;
        if (node instanceof Node.Mapping group) {
            ObjectNode fields = made.objectNode();
            group.entries().forEach((name, entry) -> fields.set(name, json(entry.value())));
            return fields;
        }
        if (node instanceof Node.Listing list) {
            ArrayNode items = made.arrayNode();
            list.items().forEach(item -> items.add(json(item)));
            return items;
        }
        return !(node instanceof Node.Scalar value)
                ? made.nullNode()
                : value.number() ? made.numberNode(new BigDecimal(value.text())) : made.textNode(value.text());
    }
}
