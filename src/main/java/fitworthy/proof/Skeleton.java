package fitworthy.proof;

import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Book;
import fitworthy.engine.RuleEngine;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.printout.words.Wording;
import fitworthy.proof.Cases.Case;
import fitworthy.quantity.Dimension;
import fitworthy.sheet.SheetReader;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The beginnings of a new rule or region: what to add at the end of which files, so that the book still proves. A new
 * rule holds from a day after every case of its topic, so that it changes nobody's advice before its words have been
 * written, and its limit stands between two cases that the topic has.
 */
public final class Skeleton {

    /** Stands where somebody has to find the words. */
    static final String UNWRITTEN = "To be written";
    /** How near to the limit the two cases have to come, as a share of it. */
    private static final double NEAR = 0.05;

    private final RuleEngine engine;
    private final Book book;
    private final Path folder;
    private final String region;
    private final LocalDate from;

    private Skeleton(Path folder, RuleEngine engine, String region, LocalDate from) {
        this.folder = folder;
        this.engine = engine;
        this.book = engine.book();
        this.region = region;
        this.from = from;
    }

    /** A case of the topic as it comes out on the day. @param highest the largest number among {@code measures} */
    private record Seen(Case text, Advice advice, List<Measure> measures, double highest) {}

    /**
     * A rule with its card, practice value and two cases.
     *
     * @param id {@code topic.what}; the topic has to be there
     * @param about the measure it judges
     * @param region the region it begins in
     * @param from the day from which it holds, after the day of every case of the topic
     * @return what to add, by file
     * @throws FaultsException where the names do not fit the book, or no two cases are near enough to put a limit
     *     between
     */
    public static Map<Path, String> rule(
            Path folder, RuleEngine engine, String id, String about, String region, LocalDate from)
            throws FaultsException {
        Book book = engine.book();
        MeasureKind kind = Measures.kinds().get(about);
        String topic = id.contains(".") ? id.substring(0, id.indexOf('.')) : id;
        if (!book.topics().contains(topic) || !id.matches("[a-z]+\\.[a-z][a-z0-9-]*")) {
            throw refused(
                    "ID", "'" + id + "' does not begin with a topic of the book", String.join(", ", book.topics()));
        }
        if (book.cards().containsKey(id)) {
            throw refused(
                    "ID",
                    "the book has a rule '" + id + "' already, at "
                            + book.places().get(id),
                    "a new name");
        }
        if (kind == null) {
            throw refused(
                    "--about",
                    "there is no measure '" + about + "'"
                            + Words.suggestion(about, Measures.kinds().keySet()),
                    "a name listed in docs/measures.md");
        }
        if (!book.regions().containsKey(region)) {
            throw refused(
                    "--region",
                    "the book has no region '" + region + "'"
                            + Words.suggestion(region, book.regions().keySet()),
                    String.join(", ", book.regions().keySet()));
        }
        return new Skeleton(folder, engine, region, from).rule(topic, id, kind);
    }

    /**
     * A region that goes by its parent's values until it has its own.
     *
     * @return what to add to the book's cover
     * @throws FaultsException where it is there already or its parent is not
     */
    public static Map<Path, String> region(Path folder, Book book, String id, String name, String parent)
            throws FaultsException {
        if (book.regions().containsKey(id)) {
            throw refused(
                    "ID", "the book has a region '" + id + "' already", "a new id, or its values in practice.yaml");
        }
        if (!id.matches("[a-z]+(-[a-z]+)*")) {
            throw refused(
                    "ID", "'" + id + "' is not written as regions are", "small letters and hyphens, such as au-tas");
        }
        if (!book.regions().containsKey(parent)) {
            throw refused(
                    "--parent",
                    "the book has no region '" + parent + "'"
                            + Words.suggestion(parent, book.regions().keySet()),
                    String.join(", ", book.regions().keySet()));
        }
        return Map.of(
                folder.resolve("book.yaml"), "  " + id + ": {name: " + quoted(name) + ", parent: " + parent + "}\n");
    }

    private static FaultsException refused(String where, String problem, String right) {
        return new FaultsException(List.of(new Fault(Place.of(where), "", problem, right)));
    }

    private Map<Path, String> rule(String topic, String id, MeasureKind kind) throws FaultsException {
        List<Seen> seen = seen(topic, kind);
        boolean word = seen.stream().flatMap(each -> each.measures().stream()).anyMatch(each -> !each.getWord()
                .isEmpty());
        Path own = folder.resolve(topic);
        return word ? words(own, id, kind, seen) : numbers(own, id, kind, seen);
    }

    /** Every case of the topic in which the measure is known, in the region and on the day. */
    private List<Seen> seen(String topic, MeasureKind kind) throws FaultsException {
        List<Seen> seen = new ArrayList<>();
        for (Case each : Cases.read(folder, book)) {
            if (!each.topic().equals(topic)) {
                continue;
            }
            if (!each.sheet().asOf().isBefore(from)) {
                throw refused(
                        "--from",
                        "the case at " + each.place() + " is about "
                                + each.sheet().asOf() + ", so a rule from " + from + " on would change it",
                        "--from " + each.sheet().asOf().plusYears(1).withDayOfYear(1));
            }
            Node.Mapping tree = each.tree()
                    .with("as-of", new Node.Scalar(each.place(), from.toString(), false))
                    .with("region", new Node.Scalar(each.place(), region, false));
            Advice advice = Adviser.advise(
                    engine, SheetReader.sheet(tree, book.regions().keySet(), new ArrayList<>()));
            List<Measure> known = advice.facts().values().stream()
                    .flatMap(List::stream)
                    .filter(Measure.class::isInstance)
                    .map(Measure.class::cast)
                    .filter(fact -> fact.getName().equals(kind.name()) && fact.isKnown())
                    .distinct()
                    .toList();
            if (!known.isEmpty()) {
                seen.add(new Seen(
                        each,
                        advice,
                        known,
                        known.stream().mapToDouble(Measure::getValue).max().orElseThrow()));
            }
        }
        if (seen.isEmpty()) {
            throw refused(
                    "--about",
                    "no case of " + topic + " has the measure " + kind.name(),
                    "write a case in which it is known first");
        }
        return seen;
    }

    private Map<Path, String> numbers(Path own, String id, MeasureKind kind, List<Seen> seen) throws FaultsException {
        List<Seen> rising =
                seen.stream().sorted(Comparator.comparingDouble(Seen::highest)).toList();
        double unit = Dimension.size(kind.unit());
        for (int i = 1; i < rising.size(); i++) {
            BigDecimal limit =
                    new BigDecimal(rising.get(i - 1).highest() / unit).setScale(kind.decimals(), RoundingMode.CEILING);
            double most = limit.doubleValue() * unit;
            double over = rising.get(i).highest();
            if (most > 0
                    && over > most
                    && over - most <= NEAR * most
                    && most - rising.get(i - 1).highest() <= NEAR * most) {
                String practice = id + "-most";
                Map<Path, String> added = files(
                        own,
                        id,
                        kind,
                        practice,
                        limit.toPlainString() + " " + kind.unit(),
                        ", known, value > $own.value");
                added.put(
                        own.resolve("cases.yaml"),
                        aCase(rising.get(i), "Beyond the limit of " + id, id, over(rising.get(i), most))
                                + aCase(rising.get(i - 1), "Within the limit of " + id, id, List.of()));
                return added;
            }
        }
        throw refused(
                "--about",
                "no two cases of the topic come near enough to each other in " + kind.name()
                        + " to put a limit between them",
                "write two cases in which it differs by less than 5 % first");
    }

    private Map<Path, String> words(Path own, String id, MeasureKind kind, List<Seen> seen) {
        Seen first = seen.stream()
                .filter(each ->
                        each.measures().stream().anyMatch(fact -> fact.getWord().equals("no")))
                .findFirst()
                .orElse(seen.get(0));
        String word = first.measures().stream()
                .map(Measure::getWord)
                .filter("no"::equals)
                .findFirst()
                .orElse(first.measures().get(0).getWord());
        Map<Path, String> added = files(own, id, kind, id + "-asked", "1", ", word == \"" + word + "\"");
        List<String> expected = first.measures().stream()
                .filter(each -> each.getWord().equals(word))
                .map(Skeleton::expected)
                .toList();
        added.put(own.resolve("cases.yaml"), aCase(first, "Answered '" + word + "' to " + kind.name(), id, expected));
        return added;
    }

    private Map<Path, String> files(
            Path own, String id, MeasureKind kind, String practice, String value, String comparison) {
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

    private static List<String> over(Seen seen, double most) {
        return seen.measures().stream()
                .filter(each -> each.getValue() > most)
                .map(each -> expected(each) + ", value: " + Wording.quantity(each.getValue(), each.kind()))
                .toList();
    }

    private static String expected(Measure measure) {
        return "subject: " + quoted(measure.getSubject())
                + (measure.getLoadCase().isEmpty() ? "" : ", in: " + quoted(measure.getLoadCase()));
    }

    /** The case once more, on the day and in the region, with what it finds there and what the new rule adds. */
    private String aCase(Seen seen, String name, String id, List<String> added) {
        Node.Mapping original = original(seen.text());
        Node.Mapping sheet = original.get("sheet") instanceof Node.Mapping changes
                ? changes
                : new Node.Mapping(original.place(), Map.of());
        sheet = sheet.with("as-of", new Node.Scalar(original.place(), from.toString(), false))
                .with("region", new Node.Scalar(original.place(), region, false));
        StringBuilder text =
                new StringBuilder("  - name: ").append(quoted(name)).append("\n    sheet:\n");
        yaml(sheet).lines().forEach(line -> text.append("      ").append(line).append('\n'));
        if (!seen.text().text().without().isEmpty()) {
            text.append("    without: [")
                    .append(String.join(", ", seen.text().text().without()))
                    .append("]\n");
        }
        List<String> expect = new ArrayList<>();
        for (Finding each : seen.advice().findings()) {
            if (each.judged().id().startsWith(seen.text().topic() + ".")) {
                expect.add("{id: " + each.judged().id() + ", "
                        + expected(each.judged().measure()) + "}");
            }
        }
        added.forEach(each -> expect.add("{id: " + id + ", " + each + "}"));
        if (!expect.isEmpty()) {
            text.append("    expect:\n");
            expect.forEach(each -> text.append("      - ").append(each).append('\n'));
        }
        if (added.isEmpty()) {
            text.append("    met: [").append(id).append("]\n");
        }
        return text.toString();
    }

    private Node.Mapping original(Case text) {
        Node root = NodeReader.read(folder.resolve(text.topic()).resolve("cases.yaml"), new ArrayList<>());
        Node.Listing cases = (Node.Listing) ((Node.Mapping) root).get("cases");
        return (Node.Mapping) cases.items().stream()
                .filter(each -> each.place().equals(text.place()))
                .findFirst()
                .orElseThrow();
    }

    private static String quoted(String text) {
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
