package fitworthy.printout.picture;

import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.printout.picture.LabelPlaces.Box;
import fitworthy.printout.picture.Svg.Anchor;
import fitworthy.printout.picture.Svg.Pen;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Every mass as a numbered mark at its place in a side view, with a legend and a key. */
final class MassMarks {

    private static final double LARGEST_MARK = 21;
    private static final int COLUMNS = 3;
    private static final double ROW = 10.5;

    /** A mass on the page. @param number its number in the key */
    private record Mark(int number, PointMass mass, double x, double y, double radius, boolean placed) {}

    private final SideScale at;
    private final Svg svg;
    private final List<Mark> marks = new ArrayList<>();

    MassMarks(SideScale at, Svg svg) {
        this.at = at;
        this.svg = svg;
        number();
    }

    /** Numbers the masses from front to rear, those at one place together, those without a place last. */
    private void number() {
        double largest = at.masses.stream()
                .mapToDouble(mass -> Math.abs(mass.mass().value()))
                .filter(Double::isFinite)
                .max()
                .orElse(1);
        List<PointMass> ordered = at.masses.stream()
                .sorted(Comparator.comparing((PointMass each) -> !placed(each))
                        .thenComparingDouble(mass -> mass.at().x().value())
                        .thenComparingDouble(mass -> mass.at().z().value()))
                .toList();
        int unplaced = 0;
        for (PointMass each : ordered) {
            double size = each.mass().known()
                    ? LARGEST_MARK * Math.sqrt(Math.abs(each.mass().value()) / largest)
                    : 4;
            double x = placed(each) ? at.x(each.at().x().value()) : Svg.WIDTH - SideScale.MARGIN - 4 - 22 * unplaced++;
            double z = each.at().z().known() ? each.at().z().value() : at.radius;
            marks.add(new Mark(marks.size() + 1, each, x, placed(each) ? at.y(z) : SideScale.TOP, size, placed(each)));
        }
    }

    private static boolean placed(PointMass mass) {
        return mass.at().x().known();
    }

    /** Draws the marks with their numbers. @param upright where black lines stand that no number is to be put on */
    void draw(List<Double> upright) {
        marks.stream()
                .sorted(Comparator.comparingDouble((Mark mark) -> -mark.radius()))
                .forEach(this::mark);
        LabelPlaces places =
                new LabelPlaces(new Box(2, SideScale.TOP - 8, Svg.WIDTH - 4, at.ground - SideScale.TOP + 6));
        AxleLoads axles = at.loading.axles();
        if (axles.cogX().known()) {
            double x = at.x(axles.cogX().value());
            places.take(new Box(x - 6, at.y(at.centreHeight()) - 6, 12, 12));
            places.take(new Box(x, 0, 0, at.ground));
        }
        upright.forEach(x -> places.take(new Box(x, 0, 0, at.ground - at.radius * at.scale)));
        marks.stream()
                .filter(mark ->
                        mark.mass().sort() != Sort.VEHICLE && mark.mass().sort() != Sort.COUNTED)
                .forEach(mark -> places.take(new Box(
                        mark.x() - mark.radius() * 0.8,
                        mark.y() - mark.radius() * 0.8,
                        mark.radius() * 1.6,
                        mark.radius() * 1.6)));
        marks.stream()
                .filter(mark -> !mark.placed())
                .reduce((one, other) -> other)
                .ifPresent(last ->
                        svg.text(Svg.SMALL, Anchor.END, last.x() - 20, SideScale.TOP + 2.7, "place not known:"));
        List<Mark> place = new ArrayList<>();
        for (Mark mark : marks) {
            if (!place.isEmpty()
                    && (mark.x() != place.get(0).x() || mark.y() != place.get(0).y())) {
                label(place, places);
                place.clear();
            }
            place.add(mark);
        }
        if (!place.isEmpty()) {
            label(place, places);
        }
    }

    private void mark(Mark mark) {
        Figure mass = mark.mass().mass();
        boolean known = mass.known() && mark.placed() && mark.mass().at().z().known();
        String fill = !mass.known() || mass.value() < 0
                ? "none"
                : switch (mark.mass().sort()) {
                    case VEHICLE, COUNTED, RESIDUAL -> Svg.PALE;
                    case FITMENT, TANK, REMOVED -> Svg.DARK;
                    case LIQUID, OCCUPANT, CARGO -> Svg.GREY;
                    case BALL -> Svg.BLACK;
                };
        boolean dark = fill.equals(Svg.DARK) || fill.equals(Svg.BLACK);
        Pen pen = !known ? Pen.DASHED : !dark ? Pen.LINE : mark.radius() > 3 ? Pen.EDGE : Pen.NONE;
        svg.circle("mass-" + mark.number(), pen, fill, mark.x(), mark.y(), mark.radius());
    }

    private void label(List<Mark> place, LabelPlaces places) {
        Mark first = place.get(0);
        int last = place.get(place.size() - 1).number();
        String text =
                first.number() == last ? "" + last : first.number() + (last == first.number() + 1 ? "," : "-") + last;
        double radius = place.stream().mapToDouble(Mark::radius).max().orElseThrow();
        double width = Lettering.width(text, Svg.SMALL);
        Box box = places.place(
                first.x(), first.y(), first.mass().sort() == Sort.VEHICLE ? radius * 0.5 : radius, width, 6.5);
        double reach = Math.hypot(box.middleX() - first.x(), box.middleY() - first.y());
        if (reach > radius + 7) {
            double back = Math.min(0.8, (3.5 + width / 4) / reach);
            svg.line(
                    Pen.HAIR,
                    first.x() + (box.middleX() - first.x()) * radius / reach,
                    first.y() + (box.middleY() - first.y()) * radius / reach,
                    box.middleX() + (first.x() - box.middleX()) * back,
                    box.middleY() + (first.y() - box.middleY()) * back);
        }
        svg.text(Svg.SMALL, Anchor.MIDDLE, box.middleX(), box.y() + 6, text);
    }

    /** What the shades of the marks stand for. @return the lowest line used */
    double legend(double top) {
        double x = SideScale.MARGIN;
        double y = top + 6;
        x = sample(x, y, 4, Pen.LINE, Svg.PALE, "bare vehicle");
        x = sample(x, y, 4, Pen.EDGE, Svg.DARK, "planned part");
        x = sample(x, y, 4, Pen.LINE, Svg.GREY, "liquid, person, cargo");
        x = sample(x, y, 4, Pen.LINE, Svg.WHITE, "taken off");
        if (at.loading.towing()) {
            x = sample(x, y, 4, Pen.NONE, Svg.BLACK, "ball");
        }
        double largest = marks.stream()
                .filter(mark -> mark.mass().mass().known())
                .max(Comparator.comparingDouble(Mark::radius))
                .map(mark -> Math.abs(mark.mass().mass().value()))
                .orElse(1.0);
        sample(
                x,
                y,
                LARGEST_MARK * Math.sqrt(Math.min(100, largest) / largest),
                Pen.LINE,
                Svg.WHITE,
                "area of " + kilograms(Math.min(100, largest)));
        svg.line("metre", Pen.BOLD, SideScale.MARGIN, y + 14, SideScale.MARGIN + at.scale, y + 14);
        svg.text(
                Svg.SMALL,
                Anchor.START,
                SideScale.MARGIN + at.scale + 4,
                y + 17,
                Lettering.fitted(
                        "1 m. Black lines and marks are to scale;" + " the grey outline is a sketch.",
                        Svg.SMALL,
                        Svg.WIDTH - 2 * SideScale.MARGIN - at.scale));
        return y + 20;
    }

    private double sample(double x, double y, double radius, Pen pen, String fill, String text) {
        svg.circle("", pen, fill, x + radius, y, radius);
        svg.text(Svg.SMALL, Anchor.START, x + 2 * radius + 3, y + 2.7, text);
        return x + 2 * radius + 3 + Lettering.width(text, Svg.SMALL) + 9;
    }

    /** Every mass by its number. @return the lowest line used */
    double key(double top) {
        int rows = (marks.size() + 1 + COLUMNS - 1) / COLUMNS;
        double column = (Svg.WIDTH - 2 * SideScale.MARGIN + 10) / COLUMNS;
        svg.line(Pen.HAIR, SideScale.MARGIN, top, Svg.WIDTH - SideScale.MARGIN, top);
        for (int i = 0; i <= marks.size(); i++) {
            double x = SideScale.MARGIN + i / rows * column;
            double y = top + 10 + i % rows * ROW;
            boolean sum = i == marks.size();
            Figure mass = sum ? at.loading.axles().total() : marks.get(i).mass().mass();
            if (!sum) {
                svg.text(Svg.SMALL, Anchor.END, x + 11, y, "" + marks.get(i).number());
            }
            svg.text(
                    sum ? "key-sum-name" : "",
                    Svg.SMALL,
                    Anchor.START,
                    sum,
                    Svg.BLACK,
                    x + 15,
                    y,
                    sum ? "sum" : Lettering.fitted(marks.get(i).mass().name(), Svg.SMALL, column - 15 - 10 - 34));
            svg.text(
                    sum ? "key-sum" : "key-" + marks.get(i).number(),
                    Svg.SMALL,
                    Anchor.END,
                    sum,
                    Svg.BLACK,
                    x + column - 10,
                    y,
                    mass.known() ? kilograms(mass.value()) : "? kg");
        }
        return top + 10 + rows * ROW;
    }

    private static String kilograms(double mass) {
        boolean whole = Math.abs(mass) >= 10 || mass == Math.rint(mass);
        return Wording.number(mass, "kg", whole ? 0 : 1) + " kg";
    }

    /** Every mass in words, from front to rear. */
    String words() {
        StringBuilder text = new StringBuilder();
        for (Mark mark : marks) {
            text.append(mark.number())
                    .append(" ")
                    .append(Lettering.named(mark.mass().name()))
                    .append(" ")
                    .append(
                            mark.mass().mass().known()
                                    ? kilograms(mark.mass().mass().value())
                                    : "mass not known")
                    .append(
                            mark.placed()
                                    ? " at "
                                            + Wording.number(
                                                    mark.mass().at().x().value(), "mm", 0) + " mm"
                                    : ", place not known")
                    .append(mark.number() < marks.size() ? "; " : ".");
        }
        return text.toString();
    }
}
