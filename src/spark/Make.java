import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes so many different sheets, a line of JSON each, in files of ten thousand: the plain and the shipped ones,
 * varied.
 */
public final class Make {

    public static void main(String[] args) throws Exception {
        int count = Integer.parseInt(args[0]);
        Path folder = Files.createDirectories(Path.of(args[1]));
        try (var old = Files.list(folder)) {
            old.forEach(each -> each.toFile().delete());
        }
        ObjectMapper yaml = new ObjectMapper(new YAMLFactory());
        ObjectMapper json = new ObjectMapper();
        List<JsonNode> sheets = new ArrayList<>();
        for (String each : List.of(
                "rules/plain-sheet.yaml",
                "scenarios/weekender.yaml",
                "scenarios/touring.yaml",
                "scenarios/overloaded.yaml")) {
            sheets.add(yaml.readTree(Path.of(each).toFile()));
        }
        for (int from = 0; from < count; from += 10_000) {
            Path file = folder.resolve("sheets-%06d.ndjson".formatted(from));
            try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8))) {
                for (int i = from; i < Math.min(count, from + 10_000); i++) {
                    ObjectNode sheet = sheets.get(i % sheets.size()).deepCopy();
                    sheet.put("title", "Sheet " + i);
                    ((ObjectNode) sheet.at("/vehicle/ratings")).put("gvm", 2500 + i % 1500 + " kg");
                    ((ObjectNode) sheet.at("/cargo/0")).put("mass", 20 + i % 211 + " kg +/- 2 kg");
                    out.println(json.writeValueAsString(sheet));
                }
            }
        }
    }
}
