package fitworthy.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.schema.Binder;
import fitworthy.schema.Bound;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.FieldSchema.Content;
import fitworthy.schema.RecordSchema;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What decides over life or papers is never usual, whatever fields the sheet gets. */
class NeverUsualTest {

    /** Words by which a field's meaning says that it is a rating, a limit, or what somebody states or has agreed to. */
    private static final Pattern DECIDES = Pattern.compile("\\brat(?:ed|ing)s?\\b|\\blimits?\\b|\\bgreatest\\b"
            + "|\\bheaviest\\b|\\bbreaking\\b|\\bapprov|\\bcertif|\\bstates?\\b|\\ballow|\\bin writing\\b|withstand"
            + "|\\bmark of\\b|\\bmay carry\\b|sold for");

    /** What speaks so and is a measure of the thing itself, found with a tape, a meter or off a data sheet. */
    private static final Set<String> MEASURES = Set.of(
            "vehicle.engine.rated-speed",
            "vehicle.engine.manifold-temperature",
            "vehicle.engine.volumetric-efficiency",
            "vehicle.engine.boost",
            "vehicle.engine.blow-by",
            "vehicle.engine.filter-rating",
            "vehicle.engine.alternator",
            "fuel-separator.rating",
            "fuel-filter.rating",
            "winch.current",
            "solar-panel.power",
            "trip.sun",
            "trailer.width",
            "tray.width",
            "canopy.width",
            "circuit.cable.rating-hot");

    private static Map<String, FieldSchema> guessable() {
        Map<String, FieldSchema> fields = new TreeMap<>();
        for (String thing : UsualField.things()) {
            new UsualField(thing, NodePath.TOP).types().forEach(type -> collect(thing, NodePath.TOP, type, fields));
        }
        return fields;
    }

    private static void collect(
            String thing, NodePath above, Class<? extends Record> type, Map<String, FieldSchema> fields) {
        for (FieldSchema field : RecordSchema.of(type).fields()) {
            NodePath path = above.to(field.name());
            if (field.content() == Content.GROUP) {
                collect(thing, path, field.type().asSubclass(Record.class), fields);
            } else if (field.content() == Content.FIGURE || field.content() == Content.CHOICE) {
                fields.put(thing + "." + path, field);
            }
        }
    }

    @Test
    void whatSpeaksOfALimitOrAStatementIsRefused() {
        Set<String> let = new TreeSet<>();
        guessable().forEach((id, field) -> {
            if (DECIDES.matcher(field.description().value()).find()
                    && NeverUsual.because(UsualField.of(id).path(), field).isEmpty()) {
                let.add(id);
            }
        });
        assertEquals(new TreeSet<>(MEASURES), let);
    }

    @Test
    void theBookHoldsNoneOfThem() throws FaultsException {
        Book book = Books.shipped();
        assertTrue(book.usual().ids().size() > 200, "the book's usual figures");
        for (UsualFigures.Entry entry : book.usual().inOrder()) {
            assertEquals(
                    "",
                    NeverUsual.because(
                                    entry.field().path(), entry.field().schema().orElseThrow())
                            .orElse(""),
                    entry.id());
        }
    }

    @Test
    void anAnswerThatLetsACheckPassIsRefusedAndTheCarefulOneIsNot() {
        assertEquals("[]", faults("vehicle.airbags", "value: yes"));
        assertTrue(faults("vehicle.airbags", "value: no").contains("only 'yes' errs on the careful side"), "airbags");
        assertEquals("[]", faults("trailer.brakes", "value: none"));
        assertTrue(faults("trailer.brakes", "value: electric").contains("'electric' is never usual"), "brakes");
        assertEquals("[]", faults("battery.vented-outside", "value: no"));
        assertTrue(faults("battery.vented-outside", "value: yes").contains("never usual"), "a vent");
        assertEquals("[]", faults("vehicle.view.mirrors.indicators", "value: yes"));
        assertTrue(faults("mirrors.indicators", "value: yes").contains("never usual"), "what new mirrors have");
    }

    /** What is told of a page with these lines. */
    private static String faults(String id, String value) {
        List<Fault> faults = new ArrayList<>();
        Node.Mapping page = NodeReader.read(
                "parts.yaml",
                id + ":\n  meaning: A thing\n  values:\n    - {region: any, from: 2000-01-01, basis: memory, " + value
                        + "}\n",
                faults);
        Map<String, Bound<UsualFigure>> usual = new TreeMap<>();
        page.entries()
                .forEach((key, entry) ->
                        usual.put(key, Binder.bind(UsualFigure.class, key, entry, group -> Map.of(), faults)));
        BookParts parts = new BookParts(
                Books.RULES,
                Map.of("any", new Region("Anywhere", List.of(), "", "", "", "", List.of())),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                usual,
                Map.of(),
                new Unread());
        new UsualChecks(parts, List.of("on the roof"), faults).check();
        return faults.toString();
    }

    @Test
    void aUsualFigureIsOfAFieldThatThereIsAndPlausible() {
        assertEquals("[]", faults("bar.mass", "value: 60 kg +/- 20 kg"));
        assertEquals("[]", faults("bar.at", "value: on the roof"));
        assertTrue(faults("winch.pull", "value: 4000 kg +/- 500 kg").contains("never usual"), "a pull");
        assertTrue(faults("bar.airbag-statement", "value: yes").contains("never usual"), "a statement");
        for (String id : List.of(
                "trailer.every-wheel-braked",
                "trailer.breakaway",
                "battery.fixed",
                "battery.cut-off",
                "circuit.earth",
                "lamps.with-main-beam",
                "bar.lamps-visible",
                "springs.lines-reach",
                "recovery-kit.line-damper",
                "fuel-separator.shielded",
                "tank.built-in.earthed",
                "vehicle.intake.airbox.lid-sealed")) {
            assertTrue(faults(id, "value: yes").contains("is never usual"), id);
        }
        assertTrue(faults("trailer.chains", "value: 2 +/- 0").contains("is never usual"), "chains");
        assertTrue(
                faults("vehicle.tyres.reference-pressure", "value: 250 kPa +/- 0 kPa")
                        .contains("is never usual"),
                "what an index holds at");
        assertTrue(faults("circuit.cable.section", "value: 4 mm2 +/- 0 mm2").contains("is never usual"), "a section");
        assertTrue(faults("bar.name", "value: Bar").contains("never usual"), "a name");
        assertTrue(faults("tank.stock", "value: yes").contains("never usual"), "what no sheet can do without");
        assertTrue(faults("baar.mass", "value: 60 kg +/- 20 kg").contains("did you mean 'bar'"), "a kind");
        assertTrue(faults("bar.maas", "value: 60 kg +/- 20 kg").contains("did you mean 'mass'"), "a field");
        assertTrue(faults("bar", "value: 60 kg +/- 20 kg").contains("is no kind of part"), "no field");
        assertTrue(faults("bar.mass", "value: 60 kg").contains("has no tolerance"), "a tolerance");
        assertTrue(faults("bar.mass", "value: 60 mm +/- 2 mm").contains("unit of length"), "a unit");
        assertTrue(faults("bar.mass", "value: 6000 kg +/- 20 kg").contains("which is not between"), "a size");
        assertTrue(faults("aerial.place", "value: shifted").contains("is not one of the answers"), "a word");
        assertTrue(faults("bar.at", "value: on the moon").contains("is not one of the answers"), "a place");
        assertTrue(
                faults("bar.mass", "value: 60 kg +/- 20 kg, per: much of lowest")
                        .contains("can hold"),
                "per");
        assertTrue(faults("bar.mass", "value: 60 kg +/- 20 kg, per: nothing").contains("no amount"), "per");
        assertTrue(
                faults("bar.mass", "value: 60 kg +/- 20 kg, when: it is blue").contains("no field is called"),
                "a field of when");
        assertTrue(faults("bar.mass", "value: 60 kg +/- 20 kg, when: blue").contains("is no condition"), "when");
        assertTrue(
                faults("bar.mass", "value: 60 kg +/- 20 kg, per: 1 kg of mass").contains("goes by itself"), "a circle");
        assertTrue(faults("bar.mass", "value: unknown").equals("[]"), "what is usual no more");
    }

    /** A bar weighs as one does; a wheelbase is a length and a chemistry a word. */
    @Test
    void anExampleOfAUsualFigureIsOfTheKindOfItsField() {
        assertEquals(Map.of("value", "60 kg"), UsualFigure.examples("bar.mass"));
        assertTrue(UsualFigure.examples("vehicle.size.wheelbase").get("value").endsWith(" mm"));
        assertTrue(UsualFigure.examples("battery.chemistry").get("value").contains("lithium"));
        assertEquals(Map.of(), UsualFigure.examples("nothing.of-the-kind"));
    }
}
