package fitworthy.proof;

import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import fitworthy.advice.Advice;
import fitworthy.advice.Outcome.Finding;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.proof.Cases.Case;
import fitworthy.source.Node;
import fitworthy.source.Place;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The text of a new rule as its topic's files have it.
 *
 * @param folder the rule book's
 * @param region where the rule begins
 * @param from the day from which it holds
 */
record SkeletonText(Path folder, String region, LocalDate from) {

    /** Stands where somebody has to find the words. */
    static final String UNWRITTEN = "To be written";

    /** Condition, card and practice value, by file. @param own the topic's folder */
    Map<Path, String> rule(Path own, String id, MeasureKind kind, String practice, String value, String comparison) {
        boolean number = practice.endsWith("-most");
        Map<Path, String> added = new LinkedHashMap<>();
        added.put(
                own.resolve(own.getFileName() + ".drl"),
                """

                rule "%s"
                when
                    $own : Practice(id == "%s")
                    $judged : Measure(name == "%s"%s)
                then
                    advice.give("%s", $judged, $own);
                end
                """
                        .formatted(id, practice, kind.name(), comparison, id));
        added.put(
                own.resolve("cards.yaml"),
                """

                %s:
                  title: "To be written: %s, {subject}"
                  severity: note
                  about: [%s]
                  %s: %s
                  met: "To be written: %s is in order"
                  why: To be written.
                  remedy: To be written%s.
                  ask: To be written.
                  basis: memory
                  since: %s
                """
                        .formatted(
                                id,
                                kind.meaning(),
                                kind.name(),
                                number ? "against" : "practice",
                                number ? practice : "[" + practice + "]",
                                kind.meaning(),
                                number ? ", by {margin} to {limit}" : "",
                                from));
        added.put(
                own.resolve("practice.yaml"),
                """

                %s:
                  unit: "%s"
                  meaning: To be written
                  values:
                    - {region: any, from: 2000-01-01, value: none, basis: memory}
                    - {region: %s, from: %s, value: %s, basis: memory}
                """
                        .formatted(practice, number ? kind.unit() : "", region, from, value.strip()));
        return added;
    }

    /** What a case expects of a measure. */
    static String expected(Measure measure) {
        return "subject: " + quoted(measure.getSubject())
                + (measure.getLoadCase().isEmpty() ? "" : ", in: " + quoted(measure.getLoadCase()));
    }

    /** A sheet as it is on the day and in the region. @param place where it was read */
    Node.Mapping onTheDay(Node.Mapping sheet, Place place) {
        return sheet.with("as-of", new Node.Scalar(place, from.toString(), false))
                .with("region", new Node.Scalar(place, region, false));
    }

    /**
     * A case once more, on the day and in the region, with what it finds there and what the new rule adds.
     *
     * @param advice how it comes out there without the new rule
     * @param added what the new rule finds
     * @param quiet the field that says what becomes of the new rule where it finds nothing
     */
    String aCase(Case old, Advice advice, String name, String id, List<String> added, String quiet) {
        Node.Mapping original = original(old);
        Node.Mapping sheet = original.get("sheet") instanceof Node.Mapping changes
                ? changes
                : new Node.Mapping(original.place(), Map.of());
        StringBuilder lines =
                new StringBuilder("  - name: ").append(quoted(name)).append("\n    sheet:\n");
        yaml(onTheDay(sheet, original.place()))
                .lines()
                .forEach(line -> lines.append("      ").append(line).append('\n'));
        if (!old.text().without().isEmpty()) {
            lines.append("    without: [")
                    .append(String.join(", ", old.text().without()))
                    .append("]\n");
        }
        List<String> expect = new ArrayList<>();
        for (Finding finding : advice.findings()) {
            if (finding.judged().id().startsWith(old.topic() + ".")) {
                expect.add("{id: " + finding.judged().id() + ", "
                        + expected(finding.judged().measure()) + "}");
            }
        }
        added.forEach(finding -> expect.add("{id: " + id + ", " + finding + "}"));
        if (!expect.isEmpty()) {
            lines.append("    expect:\n");
            expect.forEach(finding -> lines.append("      - ").append(finding).append('\n'));
        }
        if (added.isEmpty()) {
            lines.append("    ").append(quiet).append(": [").append(id).append("]\n");
        }
        return lines.toString();
    }

    private Node.Mapping original(Case old) {
        Path page = folder.resolve(old.topic()).resolve("cases.yaml");
        Node.Listing cases =
                (Node.Listing) Cases.page(folder, page, new ArrayList<>()).get("cases");
        return (Node.Mapping) cases.items().stream()
                .filter(item -> item.place().equals(old.place()))
                .findFirst()
                .orElseThrow();
    }

    static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private static String yaml(Node node) {
        StringWriter out = new StringWriter();
        try (YAMLGenerator generator = YAMLFactory.builder()
                .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
                .enable(YAMLGenerator.Feature.MINIMIZE_QUOTES)
                .build()
                .createGenerator(out)) {
            write(generator, node);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private static void write(YAMLGenerator out, Node node) throws IOException {
        if (node instanceof Node.Mapping mapping) {
            out.writeStartObject();
            for (Map.Entry<String, Node.Entry> each : mapping.entries().entrySet()) {
                out.writeFieldName(each.getKey());
                write(out, each.getValue().value());
            }
            out.writeEndObject();
        } else if (node instanceof Node.Listing listing) {
            out.writeStartArray();
            for (Node each : listing.items()) {
                write(out, each);
            }
            out.writeEndArray();
        } else if (node instanceof Node.Scalar scalar) {
            if (scalar.number()) {
                out.writeNumber(new BigDecimal(scalar.text()));
            } else {
                out.writeString(scalar.text());
            }
        } else {
            out.writeNull();
        }
    }
}
