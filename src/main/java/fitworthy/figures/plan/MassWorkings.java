package fitworthy.figures.plan;

import static fitworthy.figures.measure.Working.row;

import fitworthy.figures.measure.Working;
import fitworthy.quantity.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Supplier;

/** The masses one by one, with what each does to a sum, as lines of a table. */
public final class MassWorkings {

    private MassWorkings() {}

    private record Masses(Supplier<List<String>> table) implements Working {
        @Override
        public List<String> lines() {
            return table.get();
        }

        @Override
        public boolean listsMasses() {
            return true;
        }
    }

    /** What each mass puts on the two axles. */
    public static Working axles(List<PointMass> masses, Figure wheelbase) {
        return new Masses(() -> {
            AxleLoads sum = AxleLoads.of(masses, wheelbase);
            List<String> lines = new ArrayList<>();
            lines.addAll(new Working.Formula(
                            "front = mass x (1 - at / wheelbase), rear = mass x at / wheelbase",
                            List.of(Working.in("wheelbase", wheelbase, "mm")))
                    .lines());
            lines.add(row("", "mass", "+/-", "at", "front", "rear"));
            lines.add(row("", "kg", "kg", "mm", "kg", "kg"));
            for (PointMass part : masses) {
                AxleLoads own = AxleLoads.of(List.of(part), wheelbase);
                lines.add(row(
                        Working.marked(
                                part.name(), of(part.mass()), at(part.at().x())),
                        tenths(part.mass()),
                        tolerance(part.mass()),
                        millimetres(part.at().x()),
                        tenths(own.front()),
                        tenths(own.rear())));
            }
            lines.add(row(
                    "sum", tenths(sum.total()), tolerance(sum.total()), "", tenths(sum.front()), tenths(sum.rear())));
            lines.add(row("its tolerance", "", "", "", tolerance(sum.front()), tolerance(sum.rear())));
            return lines;
        });
    }

    /** What each mass adds to the moment that places the centre of gravity along one coordinate. */
    public static Working centre(List<PointMass> masses, String result, Function<PointMass, Figure> coordinate) {
        return moments(
                masses,
                result + " = 1000 x moment / mass, of the sums of moment = mass x at / 1000",
                coordinate,
                part -> part.mass().times(coordinate.apply(part)),
                "kg m");
    }

    /**
     * What each mass adds to a moment.
     *
     * @param formula what the sums are good for and how a row is worked out
     * @param does the moment of one mass, in the unit
     */
    public static Working moments(
            List<PointMass> masses,
            String formula,
            Function<PointMass, Figure> coordinate,
            Function<PointMass, Figure> does,
            String unit) {
        return new Masses(() -> {
            Figure mass = Figure.ZERO;
            Figure moment = Figure.ZERO;
            List<String> lines = new ArrayList<>();
            lines.add(formula);
            lines.add(row("", "mass", "at", "moment"));
            lines.add(row("", "kg", "mm", unit));
            for (PointMass part : masses) {
                Figure at = coordinate.apply(part);
                Figure own = does.apply(part);
                mass = mass.plus(part.mass());
                moment = moment.plus(own);
                lines.add(row(
                        Working.marked(part.name(), of(part.mass()), at(at)),
                        tenths(part.mass()),
                        millimetres(at),
                        tenths(own)));
            }
            lines.add(row("sum", tenths(mass), "", tenths(moment)));
            return lines;
        });
    }

    private static Working.Input of(Figure mass) {
        return Working.in("", mass, "kg");
    }

    private static Working.Input at(Figure place) {
        return Working.in("at", place, "mm");
    }

    private static String tenths(Figure figure) {
        return figure.known() ? String.format(Locale.ROOT, "%.1f", figure.value()) : "?";
    }

    private static String tolerance(Figure figure) {
        return tenths(figure.known() ? Figure.of(figure.tolerance()) : figure);
    }

    private static String millimetres(Figure figure) {
        return figure.known() ? String.format(Locale.ROOT, "%.0f", figure.value() * 1000) : "?";
    }
}
