package fitworthy.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.SheetFields;
import fitworthy.quantity.Figure;
import fitworthy.schema.Binder;
import fitworthy.schema.Bound;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.FieldSchema.Content;
import fitworthy.schema.Given;
import fitworthy.schema.Plausible;
import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.Place;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every figure and day of the sheet is refused just beyond what it can be, and told as unusual beyond what is usual. */
class PlausibleTest {

    private static final Place HERE = Place.of("made");
    private static final Set<Content> LIMITED = Set.of(Content.FIGURE, Content.FIGURES, Content.DATE);

    private static Stream<Map.Entry<String, FieldSchema>> limited() {
        return SheetFields.all().entrySet().stream()
                .filter(field -> LIMITED.contains(field.getValue().content()));
    }

    /** What a group has that gives this field alone; what else it needs is told at other fields. */
    private static Bound<? extends Record> bound(FieldSchema field, String text, List<Fault> faults) {
        Node value = new Node.Scalar(HERE, text, false);
        Node given = field.content() == Content.FIGURES ? group("Tank", value) : value;
        return Binder.bind(
                field.accessor().getDeclaringClass().asSubclass(Record.class), group(field.name(), given), faults);
    }

    private static Node.Mapping group(String name, Node value) {
        return new Node.Mapping(HERE, Map.of(name, new Node.Entry(HERE, value)));
    }

    private static List<String> refusals(FieldSchema field, String text) {
        List<Fault> faults = new ArrayList<>();
        bound(field, text, faults);
        return faults.stream()
                .filter(fault ->
                        fault.path().equals(field.name()) || fault.path().startsWith(field.name() + "."))
                .map(Fault::problem)
                .toList();
    }

    /** An end moved outwards or inwards by a ten-thousandth of itself, or of its unit; a day by a day. */
    private static String moved(String end, int way) {
        if (end.matches(FieldSchema.DATE)) {
            return LocalDate.parse(end).plusDays(way).toString();
        }
        int space = end.indexOf(' ');
        BigDecimal number = new BigDecimal(space < 0 ? end : end.substring(0, space));
        BigDecimal step = (number.signum() == 0 ? BigDecimal.ONE : number.abs()).movePointLeft(4);
        return number.add(step.multiply(BigDecimal.valueOf(way))).toPlainString()
                + (space < 0 ? "" : end.substring(space));
    }

    @Test
    void everyFigureAndDayHasAnEnd() {
        Set<String> open = new TreeSet<>();
        limited()
                .filter(field -> !field.getValue().description().within().isLimited())
                .forEach(field -> open.add(field.getKey()));
        assertEquals(Set.of(), open);
    }

    @Test
    void noKindIsSaidOfNothing() {
        Set<Plausible> idle = new TreeSet<>(Set.of(Plausible.values()));
        idle.remove(Plausible.ANYTHING);
        limited().forEach(field -> idle.remove(field.getValue().description().within()));
        assertEquals(Set.of(), idle);
    }

    @TestFactory
    Stream<DynamicTest> aFieldIsRefusedBeyondItsEndsAlone() {
        return limited()
                .map(named -> DynamicTest.dynamicTest(named.getKey(), () -> {
                    FieldSchema field = named.getValue();
                    Plausible kind = field.description().within();
                    for (String within :
                            List.of(kind.least(), moved(kind.least(), 1), kind.most(), moved(kind.most(), -1))) {
                        assertEquals(List.of(), refusals(field, within), within);
                    }
                    for (String beyond : List.of(moved(kind.least(), -1), moved(kind.most(), 1))) {
                        List<String> problems = refusals(field, beyond);
                        assertEquals(1, problems.size(), beyond + " " + problems);
                        assertTrue(
                                problems.get(0).endsWith("which is not between " + kind.least() + " and " + kind.most())
                                        || problems.get(0).endsWith("is negative"),
                                problems.get(0));
                    }
                }));
    }

    /** What is usual can be, and an example of a field is usual. */
    @TestFactory
    Stream<DynamicTest> aFieldIsUnusualBeyondTheUsualRangeAlone() {
        return limited()
                .filter(field -> field.getValue().description().within().hasUsual())
                .map(named -> DynamicTest.dynamicTest(named.getKey(), () -> {
                    FieldSchema field = named.getValue();
                    Plausible kind = field.description().within();
                    String[] ends = kind.usual().split(" to ");
                    for (String within :
                            List.of(ends[0], moved(ends[0], 1), ends[1], moved(ends[1], -1), field.example())) {
                        assertTrue(usual(field, within), within);
                    }
                    if (!ends[0].equals(kind.least())) {
                        assertFalse(usual(field, moved(ends[0], -1)), ends[0]);
                    }
                    if (!ends[1].equals(kind.most())) {
                        assertFalse(usual(field, moved(ends[1], 1)), ends[1]);
                    }
                }));
    }

    private static boolean usual(FieldSchema field, String text) {
        List<Given> given = Given.in(bound(field, text, new ArrayList<>()).record(), (one, value) -> one.equals(field));
        assertEquals(1, given.size(), field.name());
        return field.description().within().isUsual(((Figure) given.get(0).value()).value());
    }
}
