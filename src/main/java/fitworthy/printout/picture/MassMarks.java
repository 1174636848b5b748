package fitworthy.printout.picture;

import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.plan.Centre;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.printout.picture.LabelPlaces.Box;
import fitworthy.printout.picture.SideDrawing.Line;
import fitworthy.printout.picture.SideDrawing.Mark;
import fitworthy.printout.picture.Svg.Anchor;
import fitworthy.printout.picture.Svg.Pen;
import fitworthy.printout.words.Digits;
import fitworthy.quantity.Figure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Every mass as a numbered mark at its place in a side view, with a legend and a key. Of very many the heaviest alone:
 * more marks than a page has room for could not be told apart.
 */
final class MassMarks {

    static final int MOST = 150;

    /** What is not known may be heavy. */
    private static final Comparator<PointMass> HEAVIEST_FIRST = Comparator.comparing(
                    (PointMass mass) -> mass.mass().known())
            .thenComparingDouble(mass -> -Math.abs(mass.mass().value()));

    private static final double LARGEST_MARK = 21;
    private static final int COLUMNS = 3;
    private static final double ROW = 10.5;
    private static final String SUM = "key-sum";

    private final SideScale at;
    private final Svg svg;
    private final List<Mark> marks = new ArrayList<>();
    /** What is too light for a mark of its own. */
    private final List<PointMass> lighter;

    MassMarks(SideScale at, Svg svg) {
        this.at = at;
        this.svg = svg;
        Set<PointMass> heaviest = Collections.newSetFromMap(new IdentityHashMap<>());
        at.masses.stream().sorted(HEAVIEST_FIRST).limit(MOST).forEach(heaviest::add);
        Map<Boolean, List<PointMass>> marked =
                at.masses.stream().collect(Collectors.partitioningBy(heaviest::contains));
        this.lighter = marked.get(false);
        number(marked.get(true));
    }

    /** Numbers masses from front to rear, those at one place together, those without a place last. */
    private void number(List<PointMass> masses) {
        double largest = masses.stream()
                .mapToDouble(mass -> Math.abs(mass.mass().value()))
                .filter(Double::isFinite)
                .max()
                .orElse(1);
        List<PointMass> ordered = masses.stream()
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
        Centre centre = at.loading.centre();
        if (centre.x().known()) {
            double x = at.x(centre.x().value());
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
                "area of " + SideDrawing.kilograms(Math.min(100, largest)));
        svg.line("metre", Pen.BOLD, SideScale.MARGIN, y + 14, SideScale.MARGIN + at.scale, y + 14);
        svg.text(
                Svg.SMALL,
                Anchor.START,
                SideScale.MARGIN + at.scale + 4,
                y + 17,
                Lettering.fitted(
                        "1 m. Full lines and marks are to scale; the grey outline is a sketch.",
                        Svg.SMALL,
                        Svg.WIDTH - 2 * SideScale.MARGIN - at.scale));
        return y + 20;
    }

    private double sample(double x, double y, double radius, Pen pen, String fill, String text) {
        svg.circle("", pen, fill, x + radius, y, radius);
        svg.text(Svg.SMALL, Anchor.START, x + 2 * radius + 3, y + 2.7, text);
        return x + 2 * radius + 3 + Lettering.width(text, Svg.SMALL) + 9;
    }

    List<Mark> marks() {
        return marks;
    }

    /** The lines of the key. */
    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        for (Mark mark : marks) {
            String number = String.valueOf(mark.number());
            lines.add(new Line(
                    number, mark.mass().name(), SideDrawing.shown(mark.mass().mass()), "key-" + number));
        }
        if (!lighter.isEmpty()) {
            lines.add(new Line("", lighterWords(), SideDrawing.shown(lighterSum()), "key-lighter"));
        }
        lines.add(new Line("", "sum", sum(at.loading.axles().total()), SUM));
        return lines;
    }

    /** Held against the GVM elsewhere, so never lighter than it is. */
    private static String sum(Figure total) {
        return total.known() ? SideDrawing.kilograms(LoadMeasures.LOADED.printed(total.value(), 1)) : "? kg";
    }

    private Figure lighterSum() {
        return lighter.stream().map(PointMass::mass).reduce(Figure.ZERO, Figure::plus);
    }

    private String lighterWords() {
        return lighter.size() + " lighter ones";
    }

    /** Every mass by its number. @return the lowest line used */
    double key(double top) {
        List<Line> lines = lines();
        int rows = (lines.size() + COLUMNS - 1) / COLUMNS;
        double column = (Svg.WIDTH - 2 * SideScale.MARGIN + 10) / COLUMNS;
        svg.line(Pen.HAIR, SideScale.MARGIN, top, Svg.WIDTH - SideScale.MARGIN, top);
        List<List<String>> names = lines.stream()
                .map(line -> Lettering.lines(line.name(), Svg.SMALL, column - 15 - 10 - 34))
                .toList();
        double[] down = new double[rows + 1];
        for (int row = 0; row < rows; row++) {
            int tallest = 1;
            for (int i = row; i < lines.size(); i += rows) {
                tallest = Math.max(tallest, names.get(i).size());
            }
            down[row + 1] = down[row] + tallest * ROW;
        }
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            double x = SideScale.MARGIN + i / rows * column;
            double y = top + 10 + down[i % rows];
            boolean sum = line.id().equals(SUM);
            if (!line.number().isEmpty()) {
                svg.text(Svg.SMALL, Anchor.END, x + 11, y, line.number());
            }
            for (int part = 0; part < names.get(i).size(); part++) {
                svg.text(
                        sum ? SUM + "-name" : "",
                        Svg.SMALL,
                        Anchor.START,
                        sum,
                        Svg.BLACK,
                        x + 15,
                        y + part * ROW,
                        names.get(i).get(part));
            }
            svg.text(line.id(), Svg.SMALL, Anchor.END, sum, Svg.BLACK, x + column - 10, y, line.mass());
        }
        return top + 10 + down[rows];
    }

    /** Every mass in words, from front to rear. */
    String words() {
        List<String> masses = new ArrayList<>();
        for (Mark mark : marks) {
            String place = mark.placed()
                    ? " at " + Digits.number(mark.mass().at().x().value(), "mm", 0) + " mm"
                    : ", place not known";
            masses.add(mark.number() + " " + Lettering.named(mark.mass().name()) + " "
                    + SideDrawing.words(mark.mass().mass()) + place);
        }
        if (!lighter.isEmpty()) {
            masses.add(lighterWords() + ", " + SideDrawing.words(lighterSum()));
        }
        return String.join("; ", masses) + ".";
    }
}
