package fitworthy.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion.VersionFlag;
import com.networknt.schema.ValidationMessage;
import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.schema.Binder;
import fitworthy.schema.ChoiceWords;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.source.Fault;
import fitworthy.source.NodeReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Holds the committed schema to the reader: what one takes the other takes, and the same for what they refuse. */
class SheetSchemaTest {

    private static final JsonSchemaFactory FACTORY = JsonSchemaFactory.getInstance(VersionFlag.V202012);
    private static final JsonSchema SCHEMA = schema();

    private static JsonSchema schema() {
        try {
            return FACTORY.getSchema(
                    Files.readString(SheetDocs.SCHEMA),
                    SchemaValidatorsConfig.builder()
                            .formatAssertionsEnabled(true)
                            .build());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Set<ValidationMessage> against(String yaml) throws IOException {
        return SCHEMA.validate(new YAMLMapper().readTree(yaml));
    }

    private static void bothTake(String yaml) throws IOException, fitworthy.source.FaultsException {
        assertEquals(List.of(), BadSheet.faults(yaml));
        assertEquals(Set.of(), against(yaml));
    }

    @Test
    void schemaIsASchema() throws IOException {
        JsonSchema meta = FACTORY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertEquals(Set.of(), meta.validate(new ObjectMapper().readTree(SheetDocs.SCHEMA.toFile())));
    }

    @TestFactory
    Stream<DynamicTest> shippedSheetsAreTakenByBoth() throws IOException {
        List<Path> sheets = new ArrayList<>(List.of(Books.RULES.resolve("plain-sheet.yaml")));
        if (Files.isDirectory(Path.of("scenarios"))) {
            try (Stream<Path> all = Files.list(Path.of("scenarios"))) {
                all.filter(each -> each.toString().matches(".*\\.(yaml|json)"))
                        .sorted()
                        .forEach(sheets::add);
            }
        }
        return sheets.stream()
                .map(each -> DynamicTest.dynamicTest(each.toString(), () -> {
                    Sheets.read(Sheets.file(each.toString()));
                    assertEquals(Set.of(), against(Files.readString(each)));
                }));
    }

    @TestFactory
    Stream<DynamicTest> variationsAreTakenByBoth() {
        return Stream.of(new String[][] {
                    {"gvm: 3100 kg", "gvm: 3.1 t"},
                    {"gvm: 3100 kg", "gvm: 3100kg"},
                    {"gvm: 3100 kg", "gvm: +3100 kg +/- 10 kg"},
                    {"gvm: 3100 kg", "gvm: 3100 kg \u00B1 2 %"},
                    {"gvm: 3100 kg", "gvm: 3100\u00A0kg +/\u2212 10000 g"},
                    {"gvm: 3100 kg", "gvm: ' 3100 kg '"},
                    {"gvm: 3100 kg", "gvm: about 3100 kg"},
                    {"gvm: 3100 kg", "gvm: about  3.1 t +/- 5 %"},
                    {"gvm: 3100 kg", "gvm: ask"},
                    {"gvm: 3100 kg", "gvm: unknown"},
                    {"stability-control: yes", "stability-control: about no"},
                    {"stability-control: yes", "stability-control: unknown"},
                    {"gvm: 3100 kg", "gvm:"},
                    {"gvm: 3100 kg", "{}"},
                    {"x: -700 mm", "x: \u2212700 mm, y: 1 ft"},
                    {"stability-control: yes", "stability-control: true"},
                    {"stability-control: yes", "stability-control: yes\n  seats: 5"},
                    {"stability-control: yes", "stability-control: yes\n  seats: '5'"},
                    {"stability-control: yes", "stability-control:\n  seats:"},
                    {"capacity: 80 L", "capacity: 21 US gal"},
                    {"title: Touring wagon", "title: 1042"},
                    {"ratings:\n    gvm: 3100 kg", "ratings:"},
                    {"kind: bar", "kind: snorkel, head-height: 1.9 m, joints: [{name: head, sealed: no}]"},
                    {"kind: bar", "kind: bar, price: 1450 AUD, lead-time: 3 weeks"},
                    {"filled: {Main v1.2: 50 %}", "filled:"},
                    {"off: [Canopy]", "off: []"},
                    {"off: [Canopy]", "off:"}
                })
                .map(each -> DynamicTest.dynamicTest(each[0] + " => " + each[1], () -> bothTake(BadSheet.with(each))));
    }

    @TestFactory
    Stream<DynamicTest> faultsOfShapeAreRefusedByBoth() {
        return SheetReaderTest.SHAPE.stream()
                .map(each -> DynamicTest.dynamicTest(each.old() + " => " + each.now(), () -> {
                    String yaml = BadSheet.with(each.old(), each.now());
                    assertFalse(BadSheet.faults(yaml).isEmpty(), "the reader takes it");
                    assertFalse(against(yaml).isEmpty(), "the schema takes it");
                }));
    }

    /** A sheet of every field's own example, with a fitment of every kind. */
    @Test
    void everyExampleIsTakenByBoth() throws IOException {
        ObjectNode sheet = examples(Sheet.class);
        ArrayNode fitments = sheet.putArray("fitments");
        for (Fitment.Kind kind : Fitment.Kind.values()) {
            ObjectNode fitment = examples(Fitment.class);
            fitment.put("kind", ChoiceWords.of(Fitment.Kind.class).get(kind.ordinal()));
            fitment.setAll(examples(kind.details()));
            fitments.add(fitment);
        }
        assertEquals(Set.of(), SCHEMA.validate(sheet));
        List<Fault> faults = new ArrayList<>();
        Binder.bind(Sheet.class, NodeReader.read("examples", sheet.toPrettyString(), faults), faults);
        assertEquals(List.of(), faults);
    }

    private static ObjectNode examples(Class<? extends Record> type) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        for (FieldSchema field : RecordSchema.of(type).fields()) {
            JsonNode value =
                    switch (field.content()) {
                        case CHOICE ->
                            node.textNode(ChoiceWords.of(field.type()).get(0));
                        case GROUP -> examples(field.type().asSubclass(Record.class));
                        case GROUPS ->
                            node.arrayNode().add(examples(field.type().asSubclass(Record.class)));
                        case TEXTS -> node.arrayNode().add("a name");
                        case FIGURES -> node.objectNode().put("a name", field.example());
                        case FIELDS_OF_KIND -> null;
                        default -> {
                            assertTrue(!field.example().isEmpty(), () -> type + "." + field.name() + " has no example");
                            yield node.textNode(field.example());
                        }
                    };
            if (value != null) {
                node.set(field.name(), value);
            }
        }
        return node;
    }
}
