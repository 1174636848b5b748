package fitworthy.printout;

import static fitworthy.document.Report.Column.figure;
import static fitworthy.document.Report.Column.text;

import fitworthy.document.Report.Block;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Table;
import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Centre;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.PointMass;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.Digits.Held;
import fitworthy.printout.words.LevelledWords;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Vehicle;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Every mass once with the loadings it is in, what it puts on the axles, and what the axles carry against their limits.
 */
final class MassTable {

    private MassTable() {}

    static List<Block> blocks(List<Loading> loadings) {
        Figure wheelbase = loadings.get(0).plan().wheelbase();
        Map<List<String>, List<String>> casesByMass = new LinkedHashMap<>();
        for (Loading loading : loadings) {
            for (PointMass each : loading.masses()) {
                casesByMass
                        .computeIfAbsent(cells(each, wheelbase), key -> new ArrayList<>())
                        .add(loading.loadCase().name());
            }
        }
        List<String> all =
                loadings.stream().map(loading -> loading.loadCase().name()).toList();
        List<Row> rows = new ArrayList<>();
        casesByMass.forEach((cells, cases) -> rows.add(row(cells, where(cases, all), false)));
        for (Loading loading : loadings) {
            rows.add(sum("sum; place of the centre of gravity", loading.masses(), loading));
            List<PointMass> highest = loading.highest();
            if (!highest.equals(loading.masses())) {
                rows.add(sum("the same without the load on the ball", highest, loading));
            }
        }
        List<Row> limits =
                loadings.stream().flatMap(loading -> limits(loading).stream()).toList();
        String levelled = LevelledWords.sum(loadings);
        return List.of(
                new Table(
                        "Masses in kg; places in mm behind the front axle, left of the centre line and above the "
                                + "ground",
                        List.of(
                                text("Item", 28),
                                text("Loading", 15),
                                figure("Mass", 9),
                                figure("+/-", 7),
                                figure("Behind", 8),
                                figure("Left", 7),
                                figure("Up", 7),
                                figure("Front axle", 9),
                                figure("Rear axle", 10)),
                        rows),
                new Paragraph("front = mass x (1 - behind / wheelbase), rear = mass x behind / wheelbase; wheelbase "
                        + millimetres(wheelbase)
                        + " mm. What is taken off counts below zero, and as high as it sits once the vehicle is lifted."
                        + (levelled.isEmpty() ? "" : " Against the limits: " + Words.small(levelled))),
                new Table(
                        "Against the limits, in kg",
                        List.of(
                                text("Limit", 28),
                                text("Loading", 20),
                                figure("Load", 13),
                                figure("+/-", 13),
                                figure("Limit", 13),
                                figure("Left", 13)),
                        limits));
    }

    private static Row sum(String item, List<PointMass> masses, Loading loading) {
        AxleLoads axles = AxleLoads.of(masses, loading.plan().wheelbase());
        Centre centre = Centre.of(masses);
        return row(
                List.of(
                        item,
                        kilograms(axles.total(), 1),
                        tolerance(axles.total()),
                        millimetres(centre.x()),
                        millimetres(centre.y()),
                        millimetres(centre.z()),
                        kilograms(axles.front(), 1),
                        kilograms(axles.rear(), 1)),
                loading.loadCase().name(),
                true);
    }

    private static List<String> cells(PointMass mass, Figure wheelbase) {
        AxleLoads own = AxleLoads.of(List.of(mass), wheelbase);
        return List.of(
                mass.name(),
                kilograms(mass.mass(), 1),
                tolerance(mass.mass()),
                millimetres(mass.at().x()),
                millimetres(mass.at().y()),
                millimetres(mass.height()),
                kilograms(own.front(), 1),
                kilograms(own.rear(), 1));
    }

    private static Row row(List<String> cells, String where, boolean sum) {
        List<String> row = new ArrayList<>(cells);
        row.add(1, where);
        return new Row(row, "", sum);
    }

    /** The loadings that a mass is in, said in the fewest names. */
    private static String where(List<String> cases, List<String> all) {
        List<String> others = new ArrayList<>(all);
        others.removeAll(cases);
        return others.isEmpty()
                ? "every"
                : others.size() < cases.size() ? "not " + String.join(", ", others) : String.join(", ", cases);
    }

    private static List<Row> limits(Loading loading) {
        AxleLoads axles = loading.axles();
        Vehicle.Ratings limits = loading.plan().ratings();
        String name = loading.loadCase().name();
        List<Row> rows = new ArrayList<>(List.of(
                limit("front axle", name, LoadMeasures.AXLE, Levelling.front(loading), limits.frontAxle()),
                limit("rear axle", name, LoadMeasures.AXLE, axles.rear(), limits.rearAxle()),
                limit("vehicle, GVM", name, LoadMeasures.LOADED, axles.total(), limits.gvm())));
        if (loading.towing()) {
            rows.add(limit("vehicle and trailer, GCM", name, LoadMeasures.COMBINED, loading.combined(), limits.gcm()));
        }
        return rows;
    }

    private static Row limit(String name, String loading, MeasureKind kind, Figure load, Figure limit) {
        Held held = Held.of(Measure.of(kind, name, load, limit));
        return Row.of(
                name,
                loading,
                number(held, held.value()),
                tolerance(load),
                number(held, held.limit()),
                number(held, held.left()));
    }

    private static String number(Held held, double mass) {
        return Double.isNaN(mass)
                ? "not known"
                : Digits.number(mass, "kg", held.kind().decimals());
    }

    private static String kilograms(Figure figure, int decimals) {
        return figure.known() ? Digits.number(figure.value(), "kg", decimals) : "not known";
    }

    private static String tolerance(Figure figure) {
        return figure.known() ? Digits.number(figure.tolerance(), "kg", 1) : "";
    }

    private static String millimetres(Figure figure) {
        return figure.known() ? Digits.number(figure.value(), "mm", 0) : "not known";
    }
}
