package fitworthy.proof;

import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import fitworthy.advice.Advice;
import fitworthy.advice.Outcome.Finding;
import fitworthy.figures.measure.Measure;
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
import java.util.List;
import java.util.Map;

/**
 * The text of a case for a new rule: one that the topic has, once more, in another region and on another day.
 *
 * @param folder the rule book's
 * @param region the region that its sheet is put into
 * @param day the day that it is put on
 */
record SkeletonCase(Path folder, String region, LocalDate day) {

    /** What a case expects of a measure. */
    static String expected(Measure measure) {
        return "subject: " + SkeletonText.quoted(measure.getSubject())
                + (measure.getLoadCase().isEmpty() ? "" : ", in: " + SkeletonText.quoted(measure.getLoadCase()));
    }

    /** The sheet of a case in the region and on the day. */
    Node.Mapping sheet(Case old) {
        return moved(old.tree(), old.place());
    }

    private Node.Mapping moved(Node.Mapping sheet, Place place) {
        return sheet.with("as-of", new Node.Scalar(place, day.toString(), false))
                .with("region", new Node.Scalar(place, region, false));
    }

    /**
     * The case, with what it finds there.
     *
     * @param advice how it comes out there without the new rule
     * @param added what the new rule finds, a line each
     * @param other what else the case says of the new rule; empty where it finds something
     */
    String text(Case old, Advice advice, String name, List<String> added, String other) {
        Node.Mapping original = original(old);
        Node.Mapping sheet = original.get("sheet") instanceof Node.Mapping changes
                ? changes
                : new Node.Mapping(original.place(), Map.of());
        StringBuilder lines = new StringBuilder("  - name: ")
                .append(SkeletonText.quoted(name))
                .append("\n    sheet:\n");
        yaml(moved(sheet, original.place()))
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
        expect.addAll(added);
        if (!expect.isEmpty()) {
            lines.append("    expect:\n");
            expect.forEach(finding -> lines.append("      - ").append(finding).append('\n'));
        }
        if (!other.isEmpty()) {
            lines.append("    ").append(other).append('\n');
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
