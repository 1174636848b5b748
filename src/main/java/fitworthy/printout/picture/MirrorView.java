package fitworthy.printout.picture;

import fitworthy.book.Practice;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.mirrors.MirrorViewMeasures;
import fitworthy.figures.plan.PracticeId;
import fitworthy.printout.picture.Svg.Anchor;
import fitworthy.printout.picture.Svg.Pen;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Figure;
import fitworthy.sheet.BodyDetails;
import fitworthy.sheet.MirrorDetails;
import fitworthy.sheet.MirrorDetails.Mirror;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the outside mirrors show past the trailer, from above and to scale. */
final class MirrorView {

    /** What is to be seen beside the vehicle at some distance behind the driver's eye. */
    private record Field(MeasureKind seen, PracticeId distance, PracticeId width) {}

    private static final List<Field> FIELDS = List.of(
            new Field(MirrorViewMeasures.FAR_FIELD, PracticeId.MIRRORS_FAR_DISTANCE, PracticeId.MIRRORS_FAR_WIDTH),
            new Field(MirrorViewMeasures.NEAR_FIELD, PracticeId.MIRRORS_NEAR_DISTANCE, PracticeId.MIRRORS_NEAR_WIDTH));

    /** A mirror and the way its side lies on the page. */
    private record Side(String name, int down, Mirror mirror) {}

    private final MirrorScale at;
    private final Svg svg = new Svg("picture-mirrors");
    private final StringBuilder words = new StringBuilder();

    /** For the load case in which least is seen. */
    static Optional<Picture> of(List<PictureFacts> cases) {
        return cases.stream()
                .filter(facts -> facts.loading().plan().wheelbase().known()
                        && facts.all(MirrorViewMeasures.PAST_TRAILER).stream().anyMatch(Measure::isKnown))
                .min(Comparator.comparingDouble(MirrorView::least))
                .map(facts -> new MirrorView(facts).picture());
    }

    private static double least(PictureFacts facts) {
        return Stream.concat(
                        facts.all(MirrorViewMeasures.FAR_FIELD).stream()
                                .filter(Measure::isKnown)
                                .map(Measure::getValue),
                        facts.all(MirrorViewMeasures.PAST_TRAILER).stream()
                                .filter(Measure::isKnown)
                                .map(Measure::getExcess)
                                .filter(beyond -> beyond <= 0))
                .mapToDouble(Double::doubleValue)
                .min()
                .orElse(Double.MAX_VALUE);
    }

    private MirrorView(PictureFacts facts) {
        this.at = new MirrorScale(facts);
    }

    private Picture picture() {
        words.append("From above, to scale, loaded as \"")
                .append(Lettering.named(at.facts.loadCase()))
                .append("\", on a straight and level road. ");
        CombinationFromAbove train = new CombinationFromAbove(at, svg);
        train.hidden();
        MirrorDetails.Mirrors mirrors = at.facts.loading().mirrors();
        List<Side> sides =
                List.of(new Side("right mirror", -1, mirrors.right()), new Side("left mirror", 1, mirrors.left()));
        train.draw();
        sides.forEach(this::field);
        double below = 2 * at.middle - MirrorScale.TEXTS + 10;
        figures(sides.get(0), 10);
        figures(sides.get(1), below);
        return svg.picture(
                "What the mirrors show past the trailer", words.toString().strip(), below + MirrorScale.TEXTS - 14);
    }

    private void field(Side side) {
        Mirror mirror = side.mirror();
        double glassX = at.x(mirror.x().or(Figure.of(at.wheelbase * 0.27)).value());
        String part = side.name().replace(' ', '-');
        Measure past =
                at.facts.one(MirrorViewMeasures.PAST_TRAILER, side.name()).orElseThrow();
        Optional<Measure> seen =
                at.facts.one(MirrorViewMeasures.FAR_FIELD, side.name()).filter(Measure::isKnown);
        double inner = at.y(at.half, side.down());
        boolean blind = mirror.reach().known() && mirror.reach().value() <= at.half;
        if (!past.isKnown() || seen.isEmpty() && !blind) {
            svg.line(part + "-line", Pen.DASHED, glassX, inner, at.x(at.far), inner);
            svg.text(Svg.LARGE, Anchor.END, at.x(at.far) - 8, inner + side.down() * 10 + 4, "?");
        } else if (blind) {
            double hit = firstHit(mirror.reach().value());
            svg.line(
                    part + "-line",
                    Pen.LINE,
                    glassX,
                    at.y(mirror.reach().value(), side.down()),
                    at.x(hit),
                    at.y(mirror.reach().value(), side.down()));
            gauge(part + "-far", PracticeId.MIRRORS_FAR_WIDTH, at.farDistance, 0, side);
        } else {
            seen(part, side, glassX, seen.get().getValue());
            gauge(
                    part + "-far",
                    PracticeId.MIRRORS_FAR_WIDTH,
                    at.farDistance,
                    seen.get().getValue(),
                    side);
        }
        if (mirror.reach().known()) {
            Figure eyeY = at.plan.vehicle().view().eye().y();
            if (eyeY.known()) {
                svg.line(
                        Pen.HAIR,
                        at.x(at.eyeX),
                        at.y(eyeY.value(), 1),
                        glassX,
                        at.y(mirror.reach().value(), side.down()));
            }
            double width = mirror.glass().or(Figure.of(0.15)).value();
            svg.line(
                    part + "-glass",
                    mirror.x().known() && mirror.glass().known() ? Pen.BOLD : Pen.DASHED,
                    glassX,
                    at.y(mirror.reach().value() - width, side.down()),
                    glassX,
                    at.y(mirror.reach().value(), side.down()));
        }
    }

    /**
     * The road seen from the glass to far behind, by its widths near and far; cut where it is wider than the drawing.
     */
    private void seen(String part, Side side, double glassX, double width) {
        Mirror mirror = side.mirror();
        Optional<Measure> near =
                at.facts.one(MirrorViewMeasures.NEAR_FIELD, side.name()).filter(Measure::isKnown);
        Optional<Practice> nearDistance = at.facts.practice(PracticeId.MIRRORS_NEAR_DISTANCE);
        double reach = mirror.reach().value() - at.half;
        double start = mirror.x().value();
        double startWidth = reach;
        List<Double> outline = new ArrayList<>(List.of(
                glassX,
                at.y(Math.max(at.half, mirror.reach().minus(mirror.glass()).value()), side.down()),
                at.x(at.far),
                at.y(at.half, side.down())));
        List<Double> edge = new ArrayList<>(List.of(glassX, at.y(at.half + reach, side.down())));
        if (near.isPresent() && nearDistance.isPresent()) {
            start = at.eyeX + nearDistance.get().value();
            startWidth = near.get().getValue();
            edge.addAll(List.of(at.x(start), at.y(at.half + Math.min(startWidth, at.beyond), side.down())));
        }
        if (width > at.beyond && startWidth < at.beyond) {
            edge.addAll(List.of(
                    at.x(start + (at.far - start) * (at.beyond - startWidth) / (width - startWidth)),
                    at.y(at.half + at.beyond, side.down())));
        }
        edge.addAll(List.of(at.x(at.far), at.y(at.half + Math.min(width, at.beyond), side.down())));
        for (int i = edge.size() - 2; i >= 0; i -= 2) {
            outline.addAll(edge.subList(i, i + 2));
        }
        svg.lines(part + "-field", Pen.NONE, Svg.PALE, points(outline));
        svg.lines(part + "-edge", Pen.HAIR, "none", points(edge));
        svg.line(
                part + "-line", Pen.LINE, glassX, at.y(at.half, side.down()), at.x(at.far), at.y(at.half, side.down()));
        near.ifPresent(
                least -> gauge(part + "-near", PracticeId.MIRRORS_NEAR_WIDTH, nearDistance, least.getValue(), side));
        if (width * at.scale > 24) {
            svg.text(
                    Svg.SMALL,
                    Anchor.END,
                    at.x(at.far) - 12,
                    at.y(at.half, side.down()) + side.down() * 10 + 2.7,
                    "seen");
        }
    }

    private static double[] points(List<Double> points) {
        return points.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Where a line straight back from the glass meets the load or the trailer. */
    private double firstHit(double reach) {
        double trailerFront = at.coupling
                .plus(at.trailer.drawbar())
                .or(Figure.of(at.wheelbase * 1.5))
                .value();
        return at.facts.loading().bodies().stream()
                .map(fitment -> (BodyDetails.Body) fitment.details())
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
        double x = at.x(at.eyeX + distance.get().value());
        double asked = at.facts.practice(width).map(Practice::value).orElse(seen);
        strip(part + "-seen", x, 0, Math.min(seen, asked), side, true);
        if (asked > seen) {
            strip(part + "-unseen", x, seen, asked, side, false);
        }
        if (seen > asked) {
            svg.line(
                    part + "-more",
                    Pen.LINE,
                    x,
                    at.y(at.half + asked, side.down()),
                    x,
                    at.y(at.half + Math.min(seen, at.beyond), side.down()));
        }
    }

    private void strip(String part, double x, double start, double stop, Side side, boolean seen) {
        double top = Math.min(at.y(at.half + start, side.down()), at.y(at.half + stop, side.down()));
        double height = (stop - start) * at.scale;
        svg.box(part, Pen.LINE, seen ? Svg.GREY : Svg.WHITE, x - 6, top, 6, height);
        if (!seen) {
            svg.hatch(Pen.LINE, x - 6, top, 6, height, 3);
            if (height > 9) {
                svg.text(Svg.SMALL, Anchor.END, x - 10, top + height / 2 + 2.7, "not seen");
            }
        }
    }

    /** What the picture shows on one side, in figures. */
    private void figures(Side side, double top) {
        Measure past =
                at.facts.one(MirrorViewMeasures.PAST_TRAILER, side.name()).orElseThrow();
        String name = Words.capital(side.name());
        String where = !past.isKnown()
                ? "reach or width of the trailer not known"
                : "glass out to " + Digits.quantity(past.getValue(), past.kind()) + ", side of the trailer at "
                        + Digits.quantity(past.getLimit(), past.kind())
                        + (past.getExcess() > 0 ? "" : ": sees nothing past it");
        svg.bold(Svg.NORMAL, Anchor.START, MirrorScale.MARGIN, top, name);
        svg.text(Svg.NORMAL, Anchor.START, MirrorScale.MARGIN + 70, top, where);
        words.append(name).append(": ").append(where);
        double y = top + 12;
        for (Field asks : FIELDS) {
            Optional<Measure> field = at.facts.one(asks.seen(), side.name());
            Optional<Practice> distance = at.facts.practice(asks.distance());
            Optional<Practice> asked = at.facts.practice(asks.width());
            if (field.isPresent()) {
                String line = distance.map(Wording::value).orElse("far") + " behind the eye: "
                        + (field.get().isKnown() ? Wording.value(field.get()) : "?") + " of road seen"
                        + asked.map(width -> ", " + Wording.value(width) + " asked for")
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
                        MirrorScale.MARGIN + 70,
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
