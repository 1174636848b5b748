package fitworthy.printout.picture;

import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.plan.Centre;
import fitworthy.printout.picture.Svg.Anchor;
import fitworthy.printout.picture.Svg.Pen;
import fitworthy.printout.words.Digits;
import fitworthy.quantity.Figure;
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

    /** By how much of a limit is used. */
    static final Comparator<PictureFacts> FULLEST_LAST = Comparator.comparingDouble(SideView::most);

    private final Svg svg = new Svg("picture-side");
    private final SideScale at;
    private final VehicleSide vehicle;
    private final MassMarks masses;

    /** Nothing where the wheelbase is not known, since every place counts from an axle. */
    static Optional<Picture> of(List<PictureFacts> cases) {
        return cases.stream()
                .filter(facts -> facts.loading().plan().wheelbase().known())
                .max(FULLEST_LAST)
                .map(facts -> new SideView(facts).picture());
    }

    /** The largest share of a limit that a load case uses. */
    private static double most(PictureFacts facts) {
        return Stream.of(LoadMeasures.LOADED, LoadMeasures.AXLE)
                .flatMap(name -> facts.all(name).stream())
                .flatMap(measure -> PictureFacts.used(measure).stream())
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0);
    }

    private SideView(PictureFacts facts) {
        this.at = new SideScale(facts);
        this.vehicle = new VehicleSide(at, svg);
        this.masses = new MassMarks(at, svg);
    }

    /** The same of one load case, without the loads and the key; nothing where the wheelbase is not known. */
    static Optional<SideDrawing> drawing(PictureFacts facts) {
        return Optional.of(facts)
                .filter(known -> known.loading().plan().wheelbase().known())
                .map(known -> new SideView(known).drawing());
    }

    private SideDrawing drawing() {
        List<Double> upright = vehicle.draw();
        vehicle.draw(at.loading.trailer());
        double below = vehicle.dimensions();
        masses.draw(upright);
        centre();
        below = masses.legend(below + 8);
        return new SideDrawing(
                svg.shapes(), Svg.WIDTH, Math.ceil(below + 4), at.x(0), at.scale, masses.marks(), masses.lines());
    }

    private Picture picture() {
        List<Double> upright = vehicle.draw();
        double below = vehicle.dimensions();
        masses.draw(upright);
        centre();
        below = loads(below + 8);
        below = masses.legend(below + 8);
        below = masses.key(below + 8);
        return svg.picture("Where the weight sits: " + Lettering.named(at.facts.loadCase()), description(), below);
    }

    /** The centre of gravity, by the usual sign. */
    private void centre() {
        Centre centre = at.loading.centre();
        if (!centre.x().known()) {
            svg.text(
                    Svg.NORMAL,
                    Anchor.START,
                    SideScale.MARGIN,
                    10,
                    "Centre of gravity: ? (a mass or its place is not known)");
            return;
        }
        double x = at.x(centre.x().value());
        double y = at.y(at.centreHeight());
        Pen pen = centre.z().known() ? Pen.LINE : Pen.DASHED;
        svg.line(Pen.DASHED, x, 14, x, at.ground);
        svg.circle("centre", pen, Svg.WHITE, x, y, 5.5);
        if (centre.z().known()) {
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
        String text = "Centre of gravity: " + centreWords(centre)
                + (at.loading.towing() ? ", with the load on the ball" : "");
        double half = Lettering.width(text, Svg.NORMAL) / 2;
        svg.text(Svg.NORMAL, Anchor.MIDDLE, Math.max(half + 2, Math.min(x, Svg.WIDTH - half - 2)), 10, text);
    }

    private static String centreWords(Centre centre) {
        return Digits.number(centre.x().value(), "mm", 0) + " mm behind the front axle, "
                + (centre.z().known() ? Digits.number(centre.z().value(), "mm", 0) + " mm" : "?") + " high";
    }

    /** What the axles carry, and the whole. @return the lowest line used */
    private double loads(double top) {
        double half = 74;
        double front = Math.min(Math.max(at.x(0), half + 4), Svg.WIDTH / 2 - 2 * half - 4);
        double rear = Math.max(Math.min(at.x(at.wheelbase), Svg.WIDTH - half - 4), Svg.WIDTH / 2 + 2 * half + 4);
        load(
                "load-front",
                "Front axle",
                at.facts.one(LoadMeasures.AXLE, "front axle").orElseThrow(),
                front,
                half,
                top);
        load(
                "load-total",
                "Whole vehicle (GVM)",
                at.facts.one(LoadMeasures.LOADED, "vehicle").orElseThrow(),
                (front + rear) / 2,
                half,
                top);
        load(
                "load-rear",
                "Rear axle",
                at.facts.one(LoadMeasures.AXLE, "rear axle").orElseThrow(),
                rear,
                half,
                top);
        for (double axle : List.of(0.0, at.wheelbase)) {
            svg.line(Pen.BOLD, at.x(axle), top + 2, at.x(axle), at.ground + 4);
            svg.head(at.x(axle), at.ground + 0.5, 0, -1);
        }
        return top + 52;
    }

    private void load(String part, String title, Measure measure, double middle, double half, double top) {
        svg.bold(Svg.LARGE, Anchor.MIDDLE, middle, top + 12, title);
        svg.text(Svg.LARGE, Anchor.MIDDLE, middle, top + 25, Bar.of(measure));
        Bar.draw(svg, part, measure, middle - half + 6, top + 30, 2 * half - 12, 7, 1.25);
        String left = Bar.left(measure)
                + (Bar.uncertain(measure) ? " +/- " + Digits.quantity(measure.getTolerance(), measure.kind()) : "");
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

    private String description() {
        StringBuilder text = new StringBuilder("The vehicle from its left side, to scale, loaded as \"")
                .append(Lettering.named(at.facts.loadCase()))
                .append("\". Wheelbase ")
                .append(millimetres(at.plan.wheelbase()))
                .append("; overhang behind the rear axle ")
                .append(millimetres(at.loading.rearOverhang()));
        if (at.ball.known() || at.loading.towing()) {
            text.append("; tow ball ")
                    .append(millimetres(at.plan.ballOverhang()))
                    .append(" behind the rear axle");
        }
        text.append(". ");
        for (Measure each : List.of(
                at.facts.one(LoadMeasures.AXLE, "front axle").orElseThrow(),
                at.facts.one(LoadMeasures.AXLE, "rear axle").orElseThrow(),
                at.facts.one(LoadMeasures.LOADED, "vehicle").orElseThrow())) {
            text.append(
                            each.kind() == LoadMeasures.LOADED
                                    ? "Whole vehicle"
                                    : each.getSubject().substring(0, 1).toUpperCase(Locale.ROOT)
                                            + each.getSubject().substring(1))
                    .append(": ")
                    .append(Bar.words(each))
                    .append(". ");
        }
        Centre centre = at.loading.centre();
        text.append("Centre of gravity ")
                .append(centre.x().known() ? centreWords(centre) : "not known")
                .append(at.loading.towing() ? ", with the load on the ball" : "")
                .append(". Masses from front to rear: ");
        return text.append(masses.words()).toString();
    }

    private static String millimetres(Figure figure) {
        return figure.known() ? Digits.number(figure.value(), "mm", 0) + " mm" : "not known";
    }
}
