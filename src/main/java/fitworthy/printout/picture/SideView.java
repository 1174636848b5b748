package fitworthy.printout.picture;

import fitworthy.figures.mass.MassMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.printout.picture.LabelPlaces.Box;
import fitworthy.printout.picture.Svg.Anchor;
import fitworthy.printout.picture.Svg.Pen;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Details;
import fitworthy.sheet.Fitment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The vehicle from its left side, to scale, with every mass at its place and what the axles carry, in the load case
 * that uses most of a limit. Only what the sheet gives is drawn in black; the outline behind it is a sketch.
 */
final class SideView {

    private static final String ID = "picture-side";
    private static final double MARGIN = 16;
    private static final double TOP = 24;
    /** Room for the drawing above the ground. */
    private static final double HIGHEST = 250;

    private static final double LARGEST_MARK = 21;
    private static final int COLUMNS = 3;
    private static final double ROW = 10.5;

    /** A mass on the page. @param number its number in the key */
    private record Mark(int number, PointMass mass, double x, double y, double radius, boolean placed) {}

    private final Facts facts;
    private final Loading loading;
    private final Plan plan;
    private final double wheelbase;
    private final Figure wheel;
    /** Height of a wheel's centre; a guess where the sheet does not give it, and then drawn as one. */
    private final double radius;

    private final double front;
    private final Figure rear;
    private final Figure ball;
    private final double scale;
    private final double left;
    private final double ground;
    private final List<Mark> marks = new ArrayList<>();
    /** Where black lines stand that no label is to be put on. */
    private final List<Double> upright = new ArrayList<>();

    private final Svg svg = new Svg(ID);

    /** Nothing where the wheelbase is not known, since every place counts from an axle. */
    static Optional<Picture> of(List<Facts> cases) {
        return cases.stream()
                .filter(facts -> facts.loading().plan().wheelbase().known())
                .max(Comparator.comparingDouble(SideView::most))
                .map(facts -> new SideView(facts).picture());
    }

    /** The largest share of a limit that a load case uses. */
    private static double most(Facts facts) {
        return Stream.of(MassMeasures.LOADED, MassMeasures.AXLE)
                .flatMap(kind -> facts.all(kind).stream())
                .flatMap(measure -> Facts.used(measure).stream())
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0);
    }

    private SideView(Facts facts) {
        this.facts = facts;
        loading = facts.loading();
        plan = loading.plan();
        wheelbase = plan.wheelbase().value();
        wheel = plan.tyreDiameter().times(0.5);
        radius = wheel.or(Figure.of(wheelbase * 0.13)).value();
        Figure bar = carried(Details.Bar.class)
                .map(Details.Bar::ahead)
                .filter(Figure::known)
                .findFirst()
                .orElse(Figure.of(wheelbase * 0.29));
        front = -bar.value();
        rear = plan.wheelbase().plus(loading.rearOverhang());
        ball = plan.wheelbase().plus(plan.ballOverhang());
        List<PointMass> masses = loading.masses().stream()
                .filter(each -> each.mass().value() != 0)
                .toList();
        double[] across = Stream.concat(
                        Stream.of(front, rear.value(), ball.value(), wheelbase * 1.3),
                        masses.stream().map(each -> each.at().x().value()))
                .mapToDouble(Double::doubleValue)
                .filter(Double::isFinite)
                .toArray();
        double highest = Stream.concat(
                        Stream.of(roof()),
                        masses.stream().map(each -> each.at().z().value()))
                .mapToDouble(Double::doubleValue)
                .filter(Double::isFinite)
                .max()
                .orElseThrow();
        left = Arrays.stream(across).min().orElseThrow();
        scale = Math.min(
                (Svg.WIDTH - 2 * MARGIN) / (Arrays.stream(across).max().orElseThrow() - left), HIGHEST / highest);
        ground = TOP + 12 + highest * scale;
        number(masses);
    }

    private <D extends Details> Stream<D> carried(Class<D> type) {
        return plan.sheet().fitments().stream()
                .filter(loading::carries)
                .map(Fitment::details)
                .filter(type::isInstance)
                .map(type::cast);
    }

    private double x(double metres) {
        return MARGIN + (metres - left) * scale;
    }

    private double y(double metres) {
        return ground - metres * scale;
    }

    /** Numbers the masses from front to rear, those at one place together, those without a place last. */
    private void number(List<PointMass> masses) {
        double largest = masses.stream()
                .mapToDouble(each -> Math.abs(each.mass().value()))
                .filter(Double::isFinite)
                .max()
                .orElse(1);
        List<PointMass> ordered = masses.stream()
                .sorted(Comparator.comparing((PointMass each) -> !placed(each))
                        .thenComparingDouble(each -> each.at().x().value())
                        .thenComparingDouble(each -> each.at().z().value()))
                .toList();
        int unplaced = 0;
        for (PointMass each : ordered) {
            double size = each.mass().known()
                    ? LARGEST_MARK * Math.sqrt(Math.abs(each.mass().value()) / largest)
                    : 4;
            double x = placed(each) ? x(each.at().x().value()) : Svg.WIDTH - MARGIN - 4 - 22 * unplaced++;
            double z = each.at().z().known() ? each.at().z().value() : radius;
            marks.add(new Mark(marks.size() + 1, each, x, placed(each) ? y(z) : TOP, size, placed(each)));
        }
    }

    private static boolean placed(PointMass mass) {
        return mass.at().x().known();
    }

    private Picture picture() {
        outline();
        bodies();
        barAndBall();
        double below = dimensions();
        marks();
        centre();
        below = loads(below + 8);
        below = legend(below + 8);
        below = key(below + 8);
        return svg.picture("Where the weight sits: " + Lettering.named(facts.loadCase()), description(), below);
    }

    private double roof() {
        return radius * 4.7;
    }

    /** What a vehicle may look like; the sheet knows no heights of bonnet, cab and floor. */
    private void outline() {
        double floor = radius * 1.35;
        double end = rear.or(Figure.of(wheelbase * 1.3)).value();
        double cab = loading.bodies().stream()
                        .map(each -> ((Details.Body) each.details()).front())
                        .filter(Figure::known)
                        .mapToDouble(Figure::value)
                        .min()
                        .orElse(end + 0.06)
                - 0.06;
        cab = Math.max(cab, wheelbase * 0.5);
        svg.lines(
                "",
                Pen.SKETCH,
                "none",
                x(front),
                y(floor),
                x(front),
                y(radius * 2.5),
                x(front + 0.08),
                y(radius * 2.75),
                x(wheelbase * 0.2),
                y(radius * 3),
                x(wheelbase * 0.36),
                y(roof()),
                x(cab),
                y(roof()),
                x(cab),
                y(floor));
        svg.lines("", Pen.SKETCH, "none", x(front), y(floor), x(end), y(floor));
        svg.line(
                "ground",
                Pen.LINE,
                x(left) - 8,
                ground,
                x(Math.max(end, ball.or(rear).or(Figure.of(end)).value())) + 8,
                ground);
        for (boolean atRear : List.of(false, true)) {
            double centre = atRear ? wheelbase : 0;
            svg.circle(
                    atRear ? "wheel-rear" : "wheel-front",
                    wheel.known() ? Pen.LINE : Pen.DASHED,
                    Svg.WHITE,
                    x(centre),
                    y(radius),
                    radius * scale);
            svg.circle("", Pen.SKETCH, "none", x(centre), y(radius), radius * scale * 0.55);
        }
    }

    /** Ends of trays and canopies are the sheet's; how high they reach is taken from where their mass sits. */
    private void bodies() {
        double top = Double.NaN;
        int number = 0;
        for (Fitment fitment : loading.bodies()) {
            Details.Body body = (Details.Body) fitment.details();
            double middle = fitment.at()
                    .map(each -> each.z().value())
                    .filter(Double::isFinite)
                    .orElse(radius * 2.2);
            boolean tray = fitment.kind() == Fitment.Kind.TRAY;
            double bottom = tray ? middle - 0.06 : Double.isNaN(top) ? middle - 0.45 : Math.min(top, middle - 0.2);
            double height = tray ? 0.12 : 2 * (middle - bottom);
            boolean known = body.front().known() && body.length().known();
            double start = body.front().or(Figure.of(wheelbase * 0.65)).value();
            double length = body.length().or(Figure.of(wheelbase * 0.6)).value();
            svg.box(
                    "body-" + ++number,
                    known ? Pen.LINE : Pen.DASHED,
                    "none",
                    x(start),
                    y(bottom + height),
                    length * scale,
                    height * scale);
            upright.addAll(List.of(x(start), x(start + length)));
            top = tray ? bottom + height : top;
        }
    }

    private void barAndBall() {
        carried(Details.Bar.class).filter(bar -> bar.ahead().known()).limit(1).forEach(bar -> {
            upright.add(x(front));
            double lowest = bar.lowest().or(Figure.of(radius)).value();
            svg.lines(
                    "bar",
                    bar.lowest().known() ? Pen.BOLD : Pen.DASHED,
                    "none",
                    x(front + 0.12),
                    y(lowest),
                    x(front),
                    y(lowest),
                    x(front),
                    y(Math.max(lowest + 0.1, radius * 2.75)));
        });
        if (ball.known()) {
            double height = plan.ballHeight().or(Figure.of(radius)).value();
            svg.line(
                    "",
                    Pen.SKETCH,
                    x(Math.min(ball.value(), rear.or(ball).value())),
                    y(height),
                    x(ball.value()),
                    y(height));
            svg.circle(
                    "ball",
                    plan.ballHeight().known() ? Pen.LINE : Pen.DASHED,
                    Svg.WHITE,
                    x(ball.value()),
                    y(height),
                    2.5);
        }
    }

    /** Dimension lines below the ground. @return the lowest line used */
    private double dimensions() {
        double y = ground + 14;
        dimension("wheelbase", "wheelbase ", 0, plan.wheelbase(), y);
        dimension("overhang", "overhang ", wheelbase, rear, y);
        if (ball.known() || loading.towing()) {
            y += 13;
            dimension("ball", "to the ball ", wheelbase, ball, y);
        }
        return y;
    }

    private void dimension(String part, String what, double from, Figure to, double y) {
        double end = to.or(Figure.of(wheelbase * 1.3)).value();
        double width = Math.abs(end - from) * scale;
        String length = to.known() ? Wording.number(end - from, "mm", 0) + " mm" : "?";
        svg.line("dimension-" + part, to.known() ? Pen.HAIR : Pen.DASHED, x(from), y, x(end), y);
        svg.line(Pen.HAIR, x(from), ground, x(from), y + 3);
        svg.line(Pen.HAIR, x(end), ground, x(end), y + 3);
        if (width > 12) {
            svg.head(x(from), y, from - end, 0);
            svg.head(x(end), y, end - from, 0);
        }
        String text = Lettering.width(what + length, Svg.SMALL) < width ? what + length : length;
        double middle = Math.min((x(from) + x(end)) / 2, Svg.WIDTH - 2 - Lettering.width(text, Svg.SMALL) / 2);
        svg.text(Svg.SMALL, Anchor.MIDDLE, middle, y - 2, text);
    }

    private void marks() {
        marks.stream()
                .sorted(Comparator.comparingDouble((Mark mark) -> -mark.radius()))
                .forEach(this::mark);
        LabelPlaces places = new LabelPlaces(new Box(2, TOP - 8, Svg.WIDTH - 4, ground - TOP + 6));
        AxleLoads axles = loading.axles();
        if (axles.cogX().known()) {
            double x = x(axles.cogX().value());
            places.take(new Box(x - 6, y(centreHeight(axles)) - 6, 12, 12));
            places.take(new Box(x, 0, 0, ground));
        }
        upright.forEach(x -> places.take(new Box(x, 0, 0, ground - radius * scale)));
        marks.stream()
                .filter(mark -> mark.mass().sort() != Sort.VEHICLE)
                .forEach(mark -> places.take(new Box(
                        mark.x() - mark.radius() * 0.8,
                        mark.y() - mark.radius() * 0.8,
                        mark.radius() * 1.6,
                        mark.radius() * 1.6)));
        marks.stream()
                .filter(mark -> !mark.placed())
                .reduce((one, other) -> other)
                .ifPresent(last -> svg.text(Svg.SMALL, Anchor.END, last.x() - 20, TOP + 2.7, "place not known:"));
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
                    case VEHICLE, RESIDUAL -> Svg.PALE;
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

    private double centreHeight(AxleLoads axles) {
        return axles.cogZ().or(Figure.of(radius)).value();
    }

    /** The centre of gravity, by the usual sign. */
    private void centre() {
        AxleLoads axles = loading.axles();
        if (!axles.cogX().known()) {
            svg.text(Svg.NORMAL, Anchor.START, MARGIN, 10, "Centre of gravity: ? (a mass or its place is not known)");
            return;
        }
        double x = x(axles.cogX().value());
        double y = y(centreHeight(axles));
        Pen pen = axles.cogZ().known() ? Pen.LINE : Pen.DASHED;
        svg.line(Pen.DASHED, x, 14, x, ground);
        svg.circle("centre", pen, Svg.WHITE, x, y, 5.5);
        if (axles.cogZ().known()) {
            String radius = " A5.5 5.5 0 0 1 ";
            svg.path(
                    "",
                    Pen.NONE,
                    Svg.BLACK,
                    "M" + Svg.number(x) + " " + Svg.number(y) + " V" + Svg.number(y - 5.5)
                            + radius
                            + Svg.number(x + 5.5) + " " + Svg.number(y) + " Z M" + Svg.number(x) + " " + Svg.number(y)
                            + " V"
                            + Svg.number(y + 5.5) + radius + Svg.number(x - 5.5) + " " + Svg.number(y) + " Z");
        }
        String text = "Centre of gravity: " + centreWords(axles);
        double half = Lettering.width(text, Svg.NORMAL) / 2;
        svg.text(Svg.NORMAL, Anchor.MIDDLE, Math.max(half + 2, Math.min(x, Svg.WIDTH - half - 2)), 10, text);
    }

    private static String centreWords(AxleLoads axles) {
        return Wording.number(axles.cogX().value(), "mm", 0) + " mm behind the front axle, "
                + (axles.cogZ().known() ? Wording.number(axles.cogZ().value(), "mm", 0) + " mm" : "?") + " high";
    }

    /** What the axles carry, and the whole. @return the lowest line used */
    private double loads(double top) {
        double half = 74;
        double front = Math.min(Math.max(x(0), half + 4), Svg.WIDTH / 2 - 2 * half - 4);
        double rear = Math.max(Math.min(x(wheelbase), Svg.WIDTH - half - 4), Svg.WIDTH / 2 + 2 * half + 4);
        load(
                "load-front",
                "Front axle",
                facts.one(MassMeasures.AXLE, "front axle").orElseThrow(),
                front,
                half,
                top);
        load(
                "load-total",
                "Whole vehicle (GVM)",
                facts.one(MassMeasures.LOADED, "vehicle").orElseThrow(),
                (front + rear) / 2,
                half,
                top);
        load("load-rear", "Rear axle", facts.one(MassMeasures.AXLE, "rear axle").orElseThrow(), rear, half, top);
        for (double axle : List.of(0.0, wheelbase)) {
            svg.line(Pen.BOLD, x(axle), top + 2, x(axle), ground + 4);
            svg.head(x(axle), ground + 0.5, 0, -1);
        }
        return top + 52;
    }

    private void load(String part, String title, Measure measure, double middle, double half, double top) {
        svg.bold(Svg.LARGE, Anchor.MIDDLE, middle, top + 12, title);
        svg.text(
                Svg.LARGE,
                Anchor.MIDDLE,
                middle,
                top + 25,
                quantity(measure, measure.getValue()) + " of " + quantity(measure, measure.getLimit()));
        Bar.draw(svg, part, measure, middle - half + 6, top + 30, 2 * half - 12, 7, 1.25);
        String left = Bar.left(measure)
                + (Bar.uncertain(measure) ? " +/- " + Wording.quantity(measure.getTolerance(), measure.kind()) : "");
        svg.text(
                "",
                Lettering.width(left, Svg.LARGE) > 2 * half ? Svg.NORMAL : Svg.LARGE,
                Anchor.MIDDLE,
                measure.isKnown() && measure.getHeadroom() < 0,
                Svg.BLACK,
                middle,
                top + 50,
                left);
    }

    private static String quantity(Measure measure, double value) {
        return Double.isNaN(value) ? "? " + measure.kind().unit() : Wording.quantity(value, measure.kind());
    }

    private double legend(double top) {
        double x = MARGIN;
        double y = top + 6;
        x = sample(x, y, 4, Pen.LINE, Svg.PALE, "bare vehicle");
        x = sample(x, y, 4, Pen.EDGE, Svg.DARK, "planned part");
        x = sample(x, y, 4, Pen.LINE, Svg.GREY, "liquid, person, cargo");
        x = sample(x, y, 4, Pen.LINE, Svg.WHITE, "taken off");
        if (loading.towing()) {
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
        svg.line("metre", Pen.BOLD, MARGIN, y + 14, MARGIN + scale, y + 14);
        svg.text(
                Svg.SMALL,
                Anchor.START,
                MARGIN + scale + 4,
                y + 17,
                Lettering.fitted(
                        "1 m. Black lines and marks are to scale;" + " the grey outline is a sketch.",
                        Svg.SMALL,
                        Svg.WIDTH - 2 * MARGIN - scale));
        return y + 20;
    }

    private double sample(double x, double y, double radius, Pen pen, String fill, String text) {
        svg.circle("", pen, fill, x + radius, y, radius);
        svg.text(Svg.SMALL, Anchor.START, x + 2 * radius + 3, y + 2.7, text);
        return x + 2 * radius + 3 + Lettering.width(text, Svg.SMALL) + 9;
    }

    /** Every mass by its number. @return the lowest line used */
    private double key(double top) {
        int rows = (marks.size() + 1 + COLUMNS - 1) / COLUMNS;
        double column = (Svg.WIDTH - 2 * MARGIN + 10) / COLUMNS;
        svg.line(Pen.HAIR, MARGIN, top, Svg.WIDTH - MARGIN, top);
        for (int i = 0; i <= marks.size(); i++) {
            double x = MARGIN + i / rows * column;
            double y = top + 10 + i % rows * ROW;
            boolean sum = i == marks.size();
            Figure mass = sum ? loading.axles().total() : marks.get(i).mass().mass();
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

    private String description() {
        StringBuilder text = new StringBuilder("The vehicle from its left side, to scale, loaded as \"")
                .append(Lettering.named(facts.loadCase()))
                .append("\". Wheelbase ")
                .append(millimetres(plan.wheelbase()))
                .append("; overhang behind the rear axle ")
                .append(millimetres(loading.rearOverhang()));
        if (ball.known() || loading.towing()) {
            text.append("; tow ball ").append(millimetres(plan.ballOverhang())).append(" behind the rear axle");
        }
        text.append(". ");
        for (Measure each : List.of(
                facts.one(MassMeasures.AXLE, "front axle").orElseThrow(),
                facts.one(MassMeasures.AXLE, "rear axle").orElseThrow(),
                facts.one(MassMeasures.LOADED, "vehicle").orElseThrow())) {
            text.append(
                            each.kind() == MassMeasures.LOADED
                                    ? "Whole vehicle"
                                    : each.getSubject().substring(0, 1).toUpperCase(Locale.ROOT)
                                            + each.getSubject().substring(1))
                    .append(": ")
                    .append(Bar.words(each))
                    .append(". ");
        }
        AxleLoads axles = loading.axles();
        text.append("Centre of gravity ")
                .append(axles.cogX().known() ? centreWords(axles) : "not known")
                .append(". Masses from front to rear: ");
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

    private static String millimetres(Figure figure) {
        return figure.known() ? Wording.number(figure.value(), "mm", 0) + " mm" : "not known";
    }
}
