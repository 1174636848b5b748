package fitworthy.printout;

import static fitworthy.printout.Report.Column.figure;
import static fitworthy.printout.Report.Column.text;

import fitworthy.figures.AxleLoads;
import fitworthy.figures.Loading;
import fitworthy.figures.PointMass;
import fitworthy.printout.Report.Block;
import fitworthy.printout.Report.Paragraph;
import fitworthy.printout.Report.Row;
import fitworthy.printout.Report.Subheading;
import fitworthy.printout.Report.Table;
import fitworthy.sheet.Figure;
import fitworthy.sheet.Vehicle;
import java.util.ArrayList;
import java.util.List;

/** The masses of a loading one by one, what each puts on the axles, and what the axles carry against their limits. */
final class MassTable {

    private MassTable() {}

    static List<Block> blocks(Loading loading) {
        Figure wheelbase = loading.plan().wheelbase();
        Vehicle.Ratings limits = loading.plan().ratings();
        AxleLoads axles = loading.axles();
        List<Row> rows = new ArrayList<>();
        for (PointMass each : loading.masses()) {
            AxleLoads own = AxleLoads.of(List.of(each), wheelbase);
            rows.add(Row.of(each.name(), kilograms(each.mass(), 1), tolerance(each.mass()), millimetres(each.at().x()),
                    millimetres(each.at().y()), millimetres(each.at().z()), kilograms(own.front(), 1),
                    kilograms(own.rear(), 1)));
        }
        rows.add(Row.sum("sum; place of the centre of gravity", kilograms(axles.total(), 1), tolerance(axles.total()),
                millimetres(axles.cogX()), millimetres(axles.cogY()), millimetres(axles.cogZ()),
                kilograms(axles.front(), 1), kilograms(axles.rear(), 1)));
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Subheading(3, loading.loadCase().name(), ""));
        blocks.add(new Table("Masses in kg; places in mm behind the front axle, left of the centre line and above the ground",
                List.of(text("Item", 32), figure("Mass", 10), figure("+/-", 8), figure("Behind", 10), figure("Left", 9),
                        figure("Up", 9), figure("Front axle", 11), figure("Rear axle", 11)), rows));
        blocks.add(new Table("Against the limits, in kg", List.of(text("", 32), figure("Load", 17), figure("+/-", 17),
                figure("Limit", 17), figure("Left", 17)), limits(loading, axles, limits)));
        blocks.add(new Paragraph("front = mass x (1 - behind / wheelbase), rear = mass x behind / wheelbase; wheelbase "
                + millimetres(wheelbase) + " mm. What is taken off counts below zero."));
        return blocks;
    }

    private static List<Row> limits(Loading loading, AxleLoads axles, Vehicle.Ratings limits) {
        List<Row> rows = new ArrayList<>(List.of(limit("front axle", axles.front(), limits.frontAxle()),
                limit("rear axle", axles.rear(), limits.rearAxle()), limit("vehicle, GVM", axles.total(), limits.gvm())));
        if (loading.towing()) {
            rows.add(limit("vehicle and trailer, GCM", loading.combined(), limits.gcm()));
        }
        return rows;
    }

    private static Row limit(String name, Figure load, Figure limit) {
        return Row.of(name, kilograms(load, 0), tolerance(load), kilograms(limit, 0), kilograms(limit.minus(load), 0));
    }

    private static String kilograms(Figure figure, int decimals) {
        return figure.known() ? Wording.number(figure.value(), "kg", decimals) : "not known";
    }

    private static String tolerance(Figure figure) {
        return figure.known() ? Wording.number(figure.tolerance(), "kg", 1) : "";
    }

    private static String millimetres(Figure figure) {
        return figure.known() ? Wording.number(figure.value(), "mm", 0) : "not known";
    }
}
