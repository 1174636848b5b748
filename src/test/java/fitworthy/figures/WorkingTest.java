package fitworthy.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.book.Book;
import fitworthy.book.Practice;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetReader;
import fitworthy.source.FaultsException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is printed of how a figure was worked out leads to that figure. */
class WorkingTest {

    /** Measures whose number and limit the sheet itself gives. */
    private static final Set<String> PLAIN = Set.of(
            "across.people",
            "across.seats",
            "across.trip-seats",
            "body.hold-down-points",
            "body.width",
            "body.width-passenger",
            "body.shaft-angle",
            "electrical.charger-in",
            "electrical.charger-out",
            "electrical.coldest",
            "electrical.fuse-load",
            "electrical.fuse-way",
            "electrical.fuse-way-enclosed",
            "electrical.own-voltage",
            "electrical.section",
            "electrical.supply-voltage",
            "fuel.blow-by",
            "fuel.exhaust-gap",
            "fuel.flow",
            "fuel.stage",
            "fuel.unapproved",
            "fuel.way",
            "intake.bore",
            "intake.breathers",
            "intake.drain-water",
            "intake.dust-run",
            "intake.fan",
            "intake.maker-depth",
            "intake.water",
            "mass.ball",
            "mass.gvm",
            "radio.gain-open",
            "radio.power",
            "recovery.days-away",
            "recovery.point-limit",
            "recovery.winch-current",
            "recovery.winch-line",
            "suspension.height-change",
            "suspension.joint-angle",
            "towing.axles",
            "towing.ball",
            "towing.ball-load",
            "towing.bars-least",
            "towing.bars-most",
            "towing.breakaway-hold",
            "towing.chains",
            "towing.coupling",
            "towing.coupling-plate",
            "towing.drawn-by",
            "towing.gcm",
            "towing.plate",
            "towing.rated",
            "towing.speed",
            "towing.trailer",
            "towing.width",
            "tyres.clearance",
            "tyres.pressure-most",
            "tyres.rim-narrow",
            "tyres.rim-wide",
            "tyres.road-pressure",
            "tyres.top-speed",
            "water.clearance",
            "water.coldest",
            "water.days",
            "water.use");

    static List<Measure> measures(Sheet sheet) throws FaultsException {
        Book book = Books.shipped();
        Plan plan = new Plan(
                sheet.planned(),
                book.tables(),
                asked -> book.lookup(asked.id(), sheet) instanceof Practice.Lookup.Found found
                        ? Figure.of(found.practice().value(), 0)
                        : Figure.missing(new Missing(asked.id(), "a practice value", "the book")));
        List<Measure> measures = new ArrayList<>(Measures.of(plan));
        Loading.all(plan).forEach(loading -> measures.addAll(Measures.of(loading)));
        return measures;
    }

    private static Sheet touring() throws FaultsException {
        return SheetReader.sheet(
                Sheets.scenario("touring"), Books.shipped().regions().keySet(), new ArrayList<>());
    }

    private static List<String> lines(Measure measure) {
        return measure.workings().stream()
                .flatMap(each -> each.lines().stream())
                .toList();
    }

    private static Measure measure(List<Measure> measures, String name, String subject) {
        return measures.stream()
                .filter(each -> each.getName().equals(name) && each.getSubject().equals(subject))
                .findFirst()
                .orElseThrow(() -> new AssertionError(name + " of " + subject + " is not among " + measures));
    }

    /** Over every case of the book, so that no formula can say other than what the code computes. */
    @Test
    void everyFormulaComesToItsFigure() throws FaultsException {
        Set<String> worked = new TreeSet<>();
        Set<String> checked = new TreeSet<>();
        List<Sheet> sheets = new ArrayList<>(List.of(touring()));
        Books.cases().forEach(each -> sheets.add(each.sheet()));
        for (Sheet sheet : sheets) {
            for (Measure measure : measures(sheet)) {
                if (measure.isKnown() && !WorkedOut.results(lines(measure)).isEmpty()) {
                    worked.add(measure.getName());
                }
                if (check(measure)) {
                    checked.add(measure.getName());
                }
            }
        }
        assertEquals(worked, checked);
        assertTrue(checked.size() > 50, "checked " + checked);
    }

    /** The columns of every table of masses add up to the sums below them, and one of these is the measure. */
    @Test
    void everyTableOfMassesAddsUp() throws FaultsException {
        int tables = 0;
        for (Measure measure : measures(touring())) {
            List<double[]> rows = new ArrayList<>();
            for (String line : lines(measure)) {
                if (line.startsWith("sum ")) {
                    double[] sum = columns(line);
                    // Of a row printed to a tenth a twentieth may be lost.
                    int places = rows.get(0).length;
                    double lost = 0.05 * (rows.size() + 1);
                    assertEquals(
                            sum[0], rows.stream().mapToDouble(row -> row[0]).sum(), lost, measure + " " + line);
                    assertEquals(
                            sum[sum.length - 1],
                            rows.stream().mapToDouble(row -> row[places - 1]).sum(),
                            lost,
                            measure + " " + line);
                    tables++;
                    rows.clear();
                } else if (line.length() > 30 && line.substring(30).matches("( +-?[0-9.]+){3,5}")) {
                    rows.add(columns(line));
                }
            }
        }
        assertTrue(tables > 20, "tables " + tables);
    }

    private static double[] columns(String row) {
        return Stream.of(row.substring(30).strip().split(" +"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    /**
     * Each result is the measure's number or limit to its last printed digit, or what a formula before it was given.
     */
    private static boolean check(Measure measure) {
        List<String> lines = lines(measure);
        Map<String, Double> inputs = WorkedOut.inputs(lines);
        boolean checked = false;
        for (WorkedOut.Result result : WorkedOut.results(lines)) {
            Double input = inputs.get(result.name());
            if (Double.isNaN(result.value()) || input == null && !measure.isKnown()) {
                continue;
            }
            boolean right = input != null
                    ? near(input, result.value(), 1e-4 * Math.max(0.1, Math.abs(input)))
                    : comesOut(measure, measure.getValue(), result.value())
                            || measure.hasLimit() && comesOut(measure, measure.getLimit(), result.value());
            assertTrue(right, () -> measure + ": " + result + " of " + lines);
            checked = true;
        }
        return checked;
    }

    /** So far off may a result be of three terms that are printed in six digits each, as a share. */
    private static final double SIX_DIGITS = 1.5e-5;

    /** Whether it is what is printed, which is rounded to the nearest digit or to the safe side. */
    private static boolean comesOut(Measure measure, double value, double result) {
        double digits = Math.pow(10, measure.kind().decimals())
                / ("%".equals(measure.kind().unit()) ? 0.01 : 1);
        double printed = Figure.rounded(printed(measure, value) * digits);
        double got = Figure.rounded(result * digits);
        return printed == got
                || Math.round(printed) == Math.round(got)
                || Math.floor(printed) == Math.floor(got)
                || Math.ceil(printed) == Math.ceil(got)
                || Math.floor(printed) == Math.floor(got * (1 - SIX_DIGITS))
                || Math.ceil(printed) == Math.ceil(got * (1 + SIX_DIGITS));
    }

    private static boolean near(double expected, double actual, double tolerance) {
        return Math.abs(expected - actual) <= tolerance || expected == actual;
    }

    /** In the unit of the printout, a hundredth for a per cent. */
    private static double printed(Measure measure, double value) {
        return "%".equals(measure.kind().unit())
                ? value
                : value / Dimension.size(measure.kind().unit());
    }

    private static Set<Double> figures(Object value, Set<Double> found) throws ReflectiveOperationException {
        if (value instanceof Figure figure) {
            if (figure.known()) {
                found.add(figure.value());
            }
        } else if (value instanceof Optional<?> optional) {
            figures(optional.orElse(null), found);
        } else if (value instanceof Map<?, ?> map) {
            figures(map.values(), found);
        } else if (value instanceof Collection<?> all) {
            for (Object each : all) {
                figures(each, found);
            }
        } else if (value instanceof Record record && !(value instanceof Choice)) {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                component.getAccessor().setAccessible(true);
                figures(component.getAccessor().invoke(record), found);
            }
        }
        return found;
    }

    @Test
    void everyNumberOfTheTouringSheetIsWorkedOutOrStandsOnIt() throws FaultsException, ReflectiveOperationException {
        Sheet sheet = touring();
        Set<Double> given = figures(sheet, new HashSet<>());
        for (Measure measure : measures(sheet)) {
            if (measure.isKnown()
                    && measure.getWord().isEmpty()
                    && measure.workings().isEmpty()) {
                assertTrue(PLAIN.contains(measure.getName()), () -> measure + " has no working");
                assertTrue(stands(given, Math.abs(measure.getValue())), () -> measure + " is not on the sheet");
                assertTrue(
                        !measure.hasLimit() || stands(given, measure.getLimit()),
                        () -> measure + ": limit not on the sheet");
            }
        }
    }

    private static boolean stands(Set<Double> given, double value) {
        return given.stream().anyMatch(each -> Math.abs(Figure.rounded(each) - value) <= 1e-11 * Math.abs(value));
    }

    /** By hand: 431.8 + 2 x 0.70 x 285 = 830.8 mm, 431.8 + 2 x 0.65 x 265 = 776.3 mm, 54.5 mm between them. */
    @Test
    void growthOfTyres() throws FaultsException {
        Measure growth = measure(
                measures(Sheets.plainWith("fitments: [{name: New tyres, kind: tyres, mass: 0 kg, size: 285/70R17}]")),
                "tyres.diameter-growth",
                "tyres");
        assertEquals(
                List.of(
                        "growth = after - before, after = 830.8 mm, before = 776.3 mm",
                        "after = rim + 2 x width x height, rim = 431.8 mm, width = 285 mm, height = 70 %",
                        "before = rim + 2 x width x height, rim = 431.8 mm, width = 265 mm, height = 65 %"),
                lines(growth));
        assertEquals(0.0545, growth.getValue(), 1e-9);
    }

    /** By hand: 9.81 x 3 x 2 / 5 = 11.772 kN. */
    @Test
    void forceOnACoupling() throws FaultsException {
        Measure force = measure(
                measures(
                        Sheets.plainWith(
                                """
                fitments: [{name: Bar, kind: tow-bar, mass: 0 kg, plate: {d: 12 kN}}]
                trailer: {name: Camper, mass: 1800 kg, rated: 2000 kg, ball: 180 kg}
                """)),
                "towing.force",
                "tow bar, D");
        assertEquals(List.of("D = 9.81 x T x R / (T + R), T = 3 t, R = 2 t"), lines(force));
        assertEquals(11772, force.getValue(), 1e-6);
    }

    /**
     * By hand: 3 L at 1700 fills a minute is 85 L/s, at 90 % and twice the density 153 L/s; pi / 4 x 0.1^2 is
     * 0.00785398 m2.
     */
    @Test
    void velocityOfAir() throws FaultsException {
        Measure velocity = measure(
                measures(
                        Sheets.plainWith(
                                """
                vehicle:
                  engine: {displacement: 3.0 L, rated-speed: 3400 rpm, volumetric-efficiency: 90 %, boost: 101.325 kPa,
                    manifold-temperature: 25 degC}
                fitments: [{name: Snorkel, kind: snorkel, mass: 5 kg, at: {x: 0 mm, y: 0 mm, z: 1400 mm}, bore: 100 mm}]
                """)),
                "intake.velocity",
                "Snorkel");
        assertEquals(
                List.of(
                        "velocity = 0.001 x displacement x speed / 60 / 2 x efficiency x density / (pi / 4 x "
                                + "bore^2), displacement = 3 L, speed = 3400 rpm, efficiency = 90 %, density = 2, bore = 0.1 m",
                        "density = (boost + 101.325) / 101.325 x 298.15 / (manifold + 273.15), boost = 101.325 kPa, manifold "
                                + "= 25 degC"),
                lines(velocity));
        assertEquals(0.153 / 0.00785398, velocity.getValue(), 1e-4);
    }

    /** By hand: 60 kg at 2700 of 2850 mm leaves 60 x (1 - 2700 / 2850) = 3.16 kg in front and 56.84 kg behind. */
    @Test
    void shareOfTheLuggageOnTheAxles() throws FaultsException {
        List<String> lines = lines(measure(measures(Sheets.plainWith("title: as it is")), "mass.axle", "front axle"));
        assertEquals(
                "front = mass x (1 - at / wheelbase), rear = mass x at / wheelbase, wheelbase = 2850 mm", lines.get(0));
        assertTrue(
                lines.contains("Luggage                           60.0     0.0    2700     3.2    56.8"),
                lines.toString());
    }

    /**
     * By hand: 2 x 4 m x 5 A / (58 x 5) is 0.13793 V at 20 degC, 3.93 % more at 30 degC, and that of 12 V is 1.1946 %.
     */
    @Test
    void dropInACable() throws FaultsException {
        Measure drop = measure(
                measures(
                        Sheets.plainWith(
                                """
                circuits: [{name: Fridge, voltage: 12 V, current: 5 A, need: critical,
                  cable: {section: 5 mm2, length: 4 m, engine-bay: no}}]
                """)),
                "electrical.drop-critical",
                "Fridge");
        assertEquals(
                List.of("lost = 2 x length x current x (1 + 0.00393 x (air - 20)) / 58 / section / voltage,"
                        + " length = 4 m, current = 5 A, air = 30 degC, section = 5 mm2, voltage = 12 V"),
                lines(drop));
        assertEquals(0.011946, drop.getValue(), 1e-6);
    }

    /** By hand: 80 L at 12 L/100km last 666.7 km; 80 + 20 L last 833.3 km. */
    @Test
    void range() throws FaultsException {
        Measure range = measure(
                measures(
                        Sheets.plainWith(
                                """
                tanks: [{name: Second tank, liquid: diesel, capacity: 40 L, fill: 50 %, stock: yes,
                  at: {x: 2400 mm, y: 0 mm, z: 600 mm}}]
                """)),
                "fuel.leg",
                "fuel aboard");
        assertEquals(
                List.of(
                        "range = 100 x fuel / consumption, fuel = 100 L, consumption = 12 L/100km",
                        "fuel = 80 L (Main tank) + 20 L (Second tank)"),
                lines(range));
        assertEquals(833_333, range.getLimit(), 1);
    }

    @Test
    void whatIsNotKnownIsSaidToBe() throws FaultsException {
        Measure range = measure(
                measures(Sheets.plainWith("vehicle: {engine: {fuel: diesel}}")), "tyres.axle-limit", "front axle");
        Measure unknown = range.worked("a = b", Working.in("b", Figure.missing(new Missing("b", "b", "b")), "kg"));
        assertEquals("a = b, b = not known", lines(unknown).get(lines(unknown).size() - 1));
        assertEquals(range.getValue(), unknown.getValue());
    }
}
