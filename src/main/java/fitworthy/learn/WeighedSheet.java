package fitworthy.learn;

import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Masses;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.figures.plan.Tables;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Sheet;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The weighbridge readings of one sheet against its parts: two rows for each weighing, front axle and rear axle.
 *
 * @param off reading less sum, in kg
 * @param covariance of the errors of readings, places, people, cargo, liquids and what was taken off, in kg squared
 * @param parts the parts, and what each does to the rows
 * @param axles the vehicle's own axle masses, and what each does to the rows
 * @param unused load cases whose parts do not sum up, with what is missing
 */
record WeighedSheet(double[] off, double[][] covariance, List<Effect> parts, List<Axle> axles, List<Unused> unused) {

    /** Tolerance of an axle's reading that names none, in kg: half of the 20 kg that weighbridges count by, from memory. */
    private static final double READING = 10;

    /** No reading is taken to be surer than this, in kg. */
    private static final double SUREST = 1;

    /** What one kilogram of a part does to the rows. @param guessed whether its mass is a guess */
    record Effect(Part part, Figure written, boolean guessed, double[] onRows) {

        /** Whether it is not in all rows alike, so that one sheet can tell it: on in one weighing and off in another. */
        boolean comesOff() {
            for (int i = 2; i < onRows.length; i++) {
                if (onRows[i] != onRows[i - 2]) {
                    return true;
                }
            }
            return false;
        }

        boolean counts() {
            for (double row : onRows) {
                if (row != 0) {
                    return true;
                }
            }
            return false;
        }

        /** In how many weighings it makes a difference. */
        int weighings() {
            int count = 0;
            for (int i = 0; i < onRows.length; i += 2) {
                count += onRows[i] != 0 || onRows[i + 1] != 0 ? 1 : 0;
            }
            return count;
        }
    }

    /** An axle mass of the vehicle as made. @param source the same in sheets that give the same masses of the same vehicle */
    record Axle(List<Object> source, double tolerance, double[] onRows) {}

    /** A reading that cannot be used. */
    record Unused(String loading, List<Missing> missing) {}

    /** @return nothing but what is unused where no reading can be used */
    static WeighedSheet of(Sheet sheet, Tables tables) {
        Sheet planned = sheet.planned();
        List<Loading> all = weighed(surely(planned), tables);
        List<Loading> weighed =
                all.stream().filter(loading -> sum(loading).known()).toList();
        List<Unused> unused = all.stream()
                .filter(loading -> !sum(loading).known())
                .map(loading ->
                        new Unused(loading.loadCase().name(), sum(loading).missing()))
                .toList();
        double[] off = new double[2 * weighed.size()];
        double[] sums = sums(weighed);
        for (int i = 0; i < weighed.size(); i++) {
            LoadCase.Weighed reading = weighed.get(i).loadCase().weighed().orElseThrow();
            off[2 * i] = reading.frontAxle().value() - sums[2 * i];
            off[2 * i + 1] = reading.rearAxle().value() - sums[2 * i + 1];
        }
        List<String> names =
                weighed.stream().map(loading -> loading.loadCase().name()).toList();
        List<Effect> parts = planned.fitments().stream()
                .filter(part -> part.mass().value() > 0)
                .map(part -> new Effect(
                        Part.of(part),
                        Masses.of(part, planned),
                        part.mass().guess().isPresent(),
                        onRows(part, planned, tables, names, sums)))
                .toList();
        return new WeighedSheet(off, covariance(weighed), parts, axles(weighed), unused);
    }

    private static List<Loading> weighed(Sheet sheet, Tables tables) {
        // No mass rests on a practice value.
        return Loading.weighed(new Plan(sheet, tables, id -> Figure.missing(Missing.inBook(id.toString(), ""))));
    }

    /** The sheet with the masses of its parts as if they were exact: their errors are what is looked for. */
    private static Sheet surely(Sheet sheet) {
        return RecordSchema.with(
                sheet,
                "fitments",
                sheet.fitments().stream()
                        .map(part -> RecordSchema.with(part, "mass", part.mass().exact()))
                        .toList());
    }

    /** What another kilogram of a part does, which is the same from any mass on. */
    private static double[] onRows(
            Fitment part, Sheet sheet, Tables tables, Collection<String> loadings, double[] before) {
        Fitment heavier = RecordSchema.with(part, "mass", part.mass().plus(Figure.of(1)));
        Sheet changed = RecordSchema.with(
                sheet,
                "fitments",
                sheet.fitments().stream()
                        .map(other -> other == part ? heavier : other)
                        .toList());
        double[] rows = sums(weighed(changed, tables).stream()
                .filter(loading -> loadings.contains(loading.loadCase().name()))
                .toList());
        for (int i = 0; i < rows.length; i++) {
            rows[i] = Figure.rounded(Math.rint((rows[i] - before[i]) * 1e9) / 1e9);
        }
        return rows;
    }

    private static Figure sum(Loading loading) {
        LoadCase.Weighed reading = loading.loadCase().weighed().orElseThrow();
        AxleLoads axles = loading.axles();
        return axles.front().plus(axles.rear()).plus(reading.frontAxle()).plus(reading.rearAxle());
    }

    private static double[] sums(List<Loading> loadings) {
        return loadings.stream()
                .flatMap(loading ->
                        List.of(loading.axles().front(), loading.axles().rear()).stream())
                .mapToDouble(Figure::value)
                .toArray();
    }

    private static List<Axle> axles(List<Loading> weighed) {
        if (weighed.isEmpty()) {
            return List.of();
        }
        Plan plan = weighed.get(0).plan();
        return Masses.axles(plan).stream()
                .map(axle -> {
                    double[] rows = new double[2 * weighed.size()];
                    for (int i = 0; i < weighed.size(); i++) {
                        rows[2 * i] = onFront(axle, plan);
                        rows[2 * i + 1] = 1 - onFront(axle, plan);
                    }
                    return new Axle(
                            List.of(
                                    axle.name(),
                                    plan.vehicle().name(),
                                    plan.vehicle().mass()),
                            axle.mass().tolerance(),
                            rows);
                })
                .toList();
    }

    private static double onFront(PointMass mass, Plan plan) {
        return 1 - mass.at().x().value() / plan.wheelbase().value();
    }

    /** Errors of one source stand in several rows, as {@link AxleLoads#tolerance} combines them for one; each is 95 % wide. */
    private static double[][] covariance(List<Loading> weighed) {
        int rows = 2 * weighed.size();
        Map<Object, double[]> sources = new HashMap<>();
        for (int i = 0; i < weighed.size(); i++) {
            Loading loading = weighed.get(i);
            LoadCase.Weighed reading = loading.loadCase().weighed().orElseThrow();
            add(sources, "front axle's reading " + i, 2 * i, error(reading.frontAxle()), 0, rows);
            add(sources, "rear axle's reading " + i, 2 * i, 0, error(reading.rearAxle()), rows);
            List<PointMass> axles = Masses.axles(loading.plan());
            Figure wheelbase = loading.plan().wheelbase();
            for (PointMass mass : loading.masses()) {
                double front = onFront(mass, loading.plan());
                double error = axles.contains(mass) ? 0 : mass.mass().tolerance();
                add(sources, mass, 2 * i, error * front, error * (1 - front), rows);
                double moved = mass.mass().value() * mass.at().x().tolerance() / wheelbase.value();
                add(sources, AxleLoads.Place.of(mass), 2 * i, -moved, moved, rows);
                double stretched = mass.sort() == Sort.VEHICLE
                        ? 0
                        : mass.mass().value() * (1 - front) / wheelbase.value() * wheelbase.tolerance();
                add(sources, "wheelbase", 2 * i, stretched, -stretched, rows);
            }
        }
        return covariance(sources.values(), rows);
    }

    private static double error(Figure reading) {
        return Math.max(reading.orWithin(READING).tolerance(), SUREST);
    }

    private static void add(
            Map<Object, double[]> sources, Object source, int row, double front, double rear, int rows) {
        double[] effect = sources.computeIfAbsent(source, key -> new double[rows]);
        effect[row] += front;
        effect[row + 1] += rear;
    }

    /** @param sources what half the width of an interval of 95 % of each independent error does to the rows */
    static double[][] covariance(Collection<double[]> sources, int rows) {
        double[][] covariance = new double[rows][rows];
        for (double[] source : sources) {
            for (int i = 0; i < rows; i++) {
                for (int j = 0; j < rows; j++) {
                    covariance[i][j] += source[i] * source[j] / (LeastSquares.NORMAL * LeastSquares.NORMAL);
                }
            }
        }
        return covariance;
    }
}
