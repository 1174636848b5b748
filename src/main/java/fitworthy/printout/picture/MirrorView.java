package fitworthy.printout.picture;

import fitworthy.book.Practice;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.mirrors.MirrorMeasures;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.printout.picture.Svg.Anchor;
import fitworthy.printout.picture.Svg.Pen;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Details;
import fitworthy.sheet.Details.Mirror;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Trailer;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the outside mirrors show past the trailer, from above and to scale. The vehicle drives to the left of the page,
 * so that its left side lies below.
 */
final class MirrorView {

    private static final double MARGIN = 10;
    private static final double TEXTS = 46;
    private static final double HIGHEST = 260;
    /** How many times the width asked for is drawn at most. */
    private static final double MOST = 1.3;

    /** A mirror and the way its side lies on the page. */
    private record Side(String name, int down, Mirror mirror) {}

    private final Facts facts;
    private final Plan plan;
    private final Trailer trailer;
    private final double wheelbase;
    private final Figure widest;
    private final double half;
    private final Figure coupling;
    private final Figure end;
    private final Optional<Practice> farWidth;
    private final Optional<Practice> farDistance;
    private final double eyeX;
    /** How far beyond the side the road is drawn. */
    private final double beyond;

    private final double far;
    private final double from;
    private final double scale;
    private final double middle;
    private final Svg svg = new Svg("picture-mirrors");
    private final StringBuilder words = new StringBuilder();

    /** What is to be seen beside the vehicle at some distance behind the driver's eye. */
    private record Field(MeasureKind seen, PracticeId distance, PracticeId width) {}

    private static final List<Field> FIELDS = List.of(
            new Field(MirrorMeasures.FAR_FIELD, PracticeId.MIRRORS_FAR_DISTANCE, PracticeId.MIRRORS_FAR_WIDTH),
            new Field(MirrorMeasures.NEAR_FIELD, PracticeId.MIRRORS_NEAR_DISTANCE, PracticeId.MIRRORS_NEAR_WIDTH));

    /** For the load case in which least is seen. */
    static Optional<Picture> of(List<Facts> cases) {
        return cases.stream()
                .filter(facts -> facts.loading().plan().wheelbase().known()
                        && facts.all(MirrorMeasures.PAST_TRAILER).stream().anyMatch(Measure::isKnown))
                .min(Comparator.comparingDouble(MirrorView::least))
                .map(facts -> new MirrorView(facts).picture());
    }

    private static double least(Facts facts) {
        return Stream.concat(
                        facts.all(MirrorMeasures.FAR_FIELD).stream()
                                .filter(Measure::isKnown)
                                .map(Measure::getValue),
                        facts.all(MirrorMeasures.PAST_TRAILER).stream()
                                .filter(Measure::isKnown)
                                .map(Measure::getExcess)
                                .filter(beyond -> beyond <= 0))
                .mapToDouble(Double::doubleValue)
                .min()
                .orElse(Double.MAX_VALUE);
    }

    private MirrorView(Facts facts) {
        this.facts = facts;
        Loading loading = facts.loading();
        plan = loading.plan();
        trailer = loading.trailer().orElseThrow();
        wheelbase = plan.wheelbase().value();
        widest = loading.widestBehind(trailer);
        half = widest.or(trailer.width().times(0.5)).value();
        coupling = plan.wheelbase().plus(plan.ballOverhang());
        end = coupling.plus(trailer.length());
        farWidth = facts.practice(PracticeId.MIRRORS_FAR_WIDTH);
        farDistance = facts.practice(PracticeId.MIRRORS_FAR_DISTANCE);
        eyeX = plan.vehicle().view().eye().x().or(Figure.of(wheelbase / 2)).value();
        double behind = end.or(Figure.of(wheelbase * 3)).value();
        far = farDistance
                .map(distance -> eyeX + distance.value())
                .filter(x -> x > behind)
                .orElse(behind + 3);
        from = -wheelbase * 0.3;
        double asked = farWidth.map(Practice::value).orElse(2.0);
        double seen = facts.all(MirrorMeasures.FAR_FIELD).stream()
                .mapToDouble(Measure::getValue)
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        beyond = Math.max(asked, Math.min(seen, MOST * asked));
        scale = Math.min((Svg.WIDTH - 2 * MARGIN) / (far + 0.3 - from), HIGHEST / 2 / (half + beyond));
        middle = TEXTS + 10 + (half + beyond) * scale;
    }

    private double x(double metres) {
        return MARGIN + (metres - from) * scale;
    }

    /** @param down 1 on the left side, -1 on the right */
    private double y(double out, int down) {
        return middle + down * out * scale;
    }

    private Picture picture() {
        words.append("From above, to scale, loaded as \"")
                .append(Lettering.named(facts.loadCase()))
                .append("\", on a straight and level road. ");
        hidden();
        Details.Mirrors mirrors = facts.loading().mirrors();
        List<Side> sides =
                List.of(new Side("right mirror", -1, mirrors.right()), new Side("left mirror", 1, mirrors.left()));
        train();
        sides.forEach(this::field);
        double below = 2 * middle - TEXTS + 10;
        told(sides.get(0), 10);
        told(sides.get(1), below);
        return svg.picture(
                "What the mirrors show past the trailer", words.toString().strip(), below + TEXTS - 14);
    }

    /** The road straight behind the trailer, which no outside mirror shows. */
    private void hidden() {
        double start = end.or(Figure.of(far - 2)).value();
        svg.hatch(Pen.SKETCH, x(start), y(-half, 1), (far - start) * scale, 2 * half * scale, 6);
        String text = "hidden";
        double width = Lettering.width(text, Svg.SMALL) + 6;
        if (width < (far - start) * scale) {
            svg.box("", Pen.NONE, Svg.WHITE, x((start + far) / 2) - width / 2, middle - 6, width, 12);
            svg.text(Svg.SMALL, Anchor.MIDDLE, x((start + far) / 2), middle + 2.7, text);
        }
    }

    private void train() {
        body(
                "vehicle",
                Pen.SKETCH,
                from,
                plan.wheelbase()
                        .plus(facts.loading().rearOverhang())
                        .or(Figure.of(wheelbase * 1.3))
                        .value(),
                plan.vehicle().size().bodyWidth().or(widest).value(),
                Svg.WHITE);
        for (Fitment fitment : facts.loading().bodies()) {
            Details.Body load = (Details.Body) fitment.details();
            if (load.front().known() && load.length().known() && load.width().known()) {
                body(
                        "",
                        Pen.LINE,
                        load.front().value(),
                        load.front().plus(load.length()).value(),
                        load.width().value(),
                        Svg.WHITE);
            }
        }
        double ball = coupling.or(Figure.of(wheelbase * 1.4)).value();
        double front = ball + trailer.drawbar().or(Figure.of(wheelbase * 0.4)).value();
        double rear = end.or(Figure.of(front + wheelbase)).value();
        double width = trailer.width().or(Figure.of(2 * half)).value();
        boolean known = coupling.known() && trailer.drawbar().known();
        svg.lines(
                "",
                known ? Pen.LINE : Pen.DASHED,
                "none",
                x(front),
                y(width / 4, 1),
                x(ball),
                middle,
                x(front),
                y(width / 4, -1));
        body(
                "trailer",
                known && end.known() && trailer.width().known() ? Pen.LINE : Pen.DASHED,
                front,
                rear,
                width,
                Svg.PALE);
        svg.circle("ball", coupling.known() ? Pen.LINE : Pen.DASHED, Svg.WHITE, x(ball), middle, 1.5);
        String name = Lettering.fitted(trailer.name(), Svg.SMALL, (rear - front) * scale - 4);
        svg.text(Svg.SMALL, Anchor.MIDDLE, x((front + rear) / 2), middle + 2.7, name);
        Figure eyeY = plan.vehicle().view().eye().y();
        if (plan.vehicle().view().eye().x().known() && eyeY.known()) {
            svg.circle("eye", Pen.LINE, Svg.BLACK, x(eyeX), y(eyeY.value(), 1), 1.2);
        }
        double y = 2 * middle - TEXTS - 12;
        svg.line("metres", Pen.BOLD, MARGIN, y, MARGIN + 2 * scale, y);
        svg.text(Svg.SMALL, Anchor.START, MARGIN + 2 * scale + 4, y + 2.7, "2 m");
    }

    private void body(String part, Pen pen, double start, double stop, double width, String fill) {
        svg.box(part, pen, fill, x(start), y(-width / 2, 1), (stop - start) * scale, width * scale);
    }

    private void field(Side side) {
        Mirror mirror = side.mirror();
        double glassX = x(mirror.x().or(Figure.of(wheelbase * 0.27)).value());
        String part = side.name().replace(' ', '-');
        Measure past = facts.one(MirrorMeasures.PAST_TRAILER, side.name()).orElseThrow();
        Optional<Measure> seen =
                facts.one(MirrorMeasures.FAR_FIELD, side.name()).filter(Measure::isKnown);
        double inner = y(half, side.down());
        boolean blind = mirror.reach().known() && mirror.reach().value() <= half;
        if (!past.isKnown() || seen.isEmpty() && !blind) {
            svg.line(part + "-line", Pen.DASHED, glassX, inner, x(far), inner);
            svg.text(Svg.LARGE, Anchor.END, x(far) - 8, inner + side.down() * 10 + 4, "?");
        } else if (blind) {
            double hit = firstHit(mirror.reach().value());
            svg.line(
                    part + "-line",
                    Pen.LINE,
                    glassX,
                    y(mirror.reach().value(), side.down()),
                    x(hit),
                    y(mirror.reach().value(), side.down()));
            gauge(part + "-far", PracticeId.MIRRORS_FAR_WIDTH, farDistance, 0, side);
        } else {
            seen(part, side, glassX, seen.get().getValue());
            gauge(
                    part + "-far",
                    PracticeId.MIRRORS_FAR_WIDTH,
                    farDistance,
                    seen.get().getValue(),
                    side);
        }
        if (mirror.reach().known()) {
            Figure eyeY = plan.vehicle().view().eye().y();
            if (eyeY.known()) {
                svg.line(
                        Pen.HAIR,
                        x(eyeX),
                        y(eyeY.value(), 1),
                        glassX,
                        y(mirror.reach().value(), side.down()));
            }
            double width = mirror.glass().or(Figure.of(0.15)).value();
            svg.line(
                    part + "-glass",
                    mirror.x().known() && mirror.glass().known() ? Pen.BOLD : Pen.DASHED,
                    glassX,
                    y(mirror.reach().value() - width, side.down()),
                    glassX,
                    y(mirror.reach().value(), side.down()));
        }
    }

    /**
     * The road seen from the glass to far behind, by its widths near and far; cut where it is wider than the drawing.
     */
    private void seen(String part, Side side, double glassX, double width) {
        Mirror mirror = side.mirror();
        Optional<Measure> near =
                facts.one(MirrorMeasures.NEAR_FIELD, side.name()).filter(Measure::isKnown);
        Optional<Practice> nearDistance = facts.practice(PracticeId.MIRRORS_NEAR_DISTANCE);
        double reach = mirror.reach().value() - half;
        double start = mirror.x().value();
        double startWidth = reach;
        List<Double> outline = new ArrayList<>(List.of(
                glassX,
                y(Math.max(half, mirror.reach().minus(mirror.glass()).value()), side.down()),
                x(far),
                y(half, side.down())));
        List<Double> edge = new ArrayList<>(List.of(glassX, y(half + reach, side.down())));
        if (near.isPresent() && nearDistance.isPresent()) {
            start = eyeX + nearDistance.get().value();
            startWidth = near.get().getValue();
            edge.addAll(List.of(x(start), y(half + Math.min(startWidth, beyond), side.down())));
        }
        if (width > beyond && startWidth < beyond) {
            edge.addAll(List.of(
                    x(start + (far - start) * (beyond - startWidth) / (width - startWidth)),
                    y(half + beyond, side.down())));
        }
        edge.addAll(List.of(x(far), y(half + Math.min(width, beyond), side.down())));
        for (int i = edge.size() - 2; i >= 0; i -= 2) {
            outline.addAll(edge.subList(i, i + 2));
        }
        svg.lines(part + "-field", Pen.NONE, Svg.PALE, points(outline));
        svg.lines(part + "-edge", Pen.HAIR, "none", points(edge));
        svg.line(part + "-line", Pen.LINE, glassX, y(half, side.down()), x(far), y(half, side.down()));
        near.ifPresent(
                each -> gauge(part + "-near", PracticeId.MIRRORS_NEAR_WIDTH, nearDistance, each.getValue(), side));
        if (width * scale > 24) {
            svg.text(Svg.SMALL, Anchor.END, x(far) - 12, y(half, side.down()) + side.down() * 10 + 2.7, "seen");
        }
    }

    private static double[] points(List<Double> points) {
        return points.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Where a line straight back from the glass meets the load or the trailer. */
    private double firstHit(double reach) {
        double trailerFront =
                coupling.plus(trailer.drawbar()).or(Figure.of(wheelbase * 1.5)).value();
        return facts.loading().bodies().stream()
                .map(fitment -> (Details.Body) fitment.details())
                .filter(load ->
                        load.width().value() / 2 >= reach && load.front().known())
                .mapToDouble(load -> load.front().value())
                .min()
                .orElse(trailerFront);
    }

    /** Across the road: grey what is seen, hatched what is missing of the width asked for. */
    private void gauge(String part, PracticeId width, Optional<Practice> distance, double seen, Side side) {
        if (distance.isEmpty()) {
            return;
        }
        double x = x(eyeX + distance.get().value());
        double asked = facts.practice(width).map(Practice::value).orElse(seen);
        strip(part + "-seen", x, 0, Math.min(seen, asked), side, true);
        if (asked > seen) {
            strip(part + "-unseen", x, seen, asked, side, false);
        }
        if (seen > asked) {
            svg.line(
                    part + "-more",
                    Pen.LINE,
                    x,
                    y(half + asked, side.down()),
                    x,
                    y(half + Math.min(seen, beyond), side.down()));
        }
    }

    private void strip(String part, double x, double start, double stop, Side side, boolean seen) {
        double top = Math.min(y(half + start, side.down()), y(half + stop, side.down()));
        double height = (stop - start) * scale;
        svg.box(part, Pen.LINE, seen ? Svg.GREY : Svg.WHITE, x - 6, top, 6, height);
        if (!seen) {
            svg.hatch(Pen.LINE, x - 6, top, 6, height, 3);
            if (height > 9) {
                svg.text(Svg.SMALL, Anchor.END, x - 10, top + height / 2 + 2.7, "not seen");
            }
        }
    }

    /** What the picture shows on one side, in figures. */
    private void told(Side side, double top) {
        Measure past = facts.one(MirrorMeasures.PAST_TRAILER, side.name()).orElseThrow();
        String name = Words.capital(side.name());
        String where = !past.isKnown()
                ? "reach or width of the trailer not known"
                : "glass out to " + Wording.quantity(past.getValue(), past.kind()) + ", side of the trailer at "
                        + Wording.quantity(past.getLimit(), past.kind())
                        + (past.getExcess() > 0 ? "" : ": sees nothing past it");
        svg.bold(Svg.NORMAL, Anchor.START, MARGIN, top, name);
        svg.text(Svg.NORMAL, Anchor.START, MARGIN + 70, top, where);
        words.append(name).append(": ").append(where);
        double y = top + 12;
        for (Field asks : FIELDS) {
            Optional<Measure> field = facts.one(asks.seen(), side.name());
            Optional<Practice> distance = facts.practice(asks.distance());
            Optional<Practice> asked = facts.practice(asks.width());
            if (field.isPresent()) {
                String line = distance.map(Wording::value).orElse("far") + " behind the eye: "
                        + (field.get().isKnown() ? Wording.value(field.get()) : "?") + " of road seen"
                        + asked.map(each -> ", " + Wording.value(each) + " asked for")
                                .orElse("");
                boolean tooLittle = field.get().isKnown()
                        && asked.isPresent()
                        && field.get().getValue() < asked.get().value();
                svg.text(
                        "",
                        Svg.NORMAL,
                        Anchor.START,
                        tooLittle,
                        Svg.BLACK,
                        MARGIN + 70,
                        y,
                        line + (tooLittle ? ": TOO LITTLE" : ""));
                words.append("; ")
                        .append(line.replace("?", "an amount not known"))
                        .append(tooLittle ? ", too little" : "");
                y += 12;
            }
        }
        words.append(". ");
    }
}
