package fitworthy.printout.picture;

import fitworthy.printout.picture.Svg.Anchor;
import fitworthy.printout.picture.Svg.Pen;
import fitworthy.quantity.Figure;
import fitworthy.sheet.BodyDetails;
import fitworthy.sheet.Fitment;

/** Vehicle and trailer from above, and the road that they hide. */
final class CombinationFromAbove {

    private final MirrorScale at;
    private final Svg svg;

    CombinationFromAbove(MirrorScale at, Svg svg) {
        this.at = at;
        this.svg = svg;
    }

    /** The road straight behind the trailer, which no outside mirror shows. */
    void hidden() {
        double start = at.end.or(Figure.of(at.far - 2)).value();
        svg.hatch(Pen.SKETCH, at.x(start), at.y(-at.half, 1), (at.far - start) * at.scale, 2 * at.half * at.scale, 6);
        String text = "hidden";
        double width = Lettering.width(text, Svg.SMALL) + 6;
        if (width < (at.far - start) * at.scale) {
            svg.box("", Pen.NONE, Svg.WHITE, at.x((start + at.far) / 2) - width / 2, at.middle - 6, width, 12);
            svg.text(Svg.SMALL, Anchor.MIDDLE, at.x((start + at.far) / 2), at.middle + 2.7, text);
        }
    }

    /** Vehicle, loads and trailer, to scale. */
    void draw() {
        body(
                "vehicle",
                Pen.SKETCH,
                at.from,
                at.plan
                        .wheelbase()
                        .plus(at.facts.loading().rearOverhang())
                        .or(Figure.of(at.wheelbase * 1.3))
                        .value(),
                at.plan.vehicle().size().bodyWidth().or(at.widest).value(),
                Svg.WHITE);
        for (Fitment fitment : at.facts.loading().bodies()) {
            BodyDetails.Body load = (BodyDetails.Body) fitment.details();
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
        double ball = at.coupling.or(Figure.of(at.wheelbase * 1.4)).value();
        double front =
                ball + at.trailer.drawbar().or(Figure.of(at.wheelbase * 0.4)).value();
        double rear = at.end.or(Figure.of(front + at.wheelbase)).value();
        double width = at.trailer.width().or(Figure.of(2 * at.half)).value();
        boolean known = at.coupling.known() && at.trailer.drawbar().known();
        svg.lines(
                "",
                known ? Pen.LINE : Pen.DASHED,
                "none",
                at.x(front),
                at.y(width / 4, 1),
                at.x(ball),
                at.middle,
                at.x(front),
                at.y(width / 4, -1));
        body(
                "trailer",
                known && at.end.known() && at.trailer.width().known() ? Pen.LINE : Pen.DASHED,
                front,
                rear,
                width,
                Svg.PALE);
        svg.circle("ball", at.coupling.known() ? Pen.LINE : Pen.DASHED, Svg.WHITE, at.x(ball), at.middle, 1.5);
        String name = Lettering.fitted(at.trailer.name(), Svg.SMALL, (rear - front) * at.scale - 4);
        svg.text(Svg.SMALL, Anchor.MIDDLE, at.x((front + rear) / 2), at.middle + 2.7, name);
        Figure eyeY = at.plan.vehicle().view().eye().y();
        if (at.plan.vehicle().view().eye().x().known() && eyeY.known()) {
            svg.circle("eye", Pen.LINE, Svg.BLACK, at.x(at.eyeX), at.y(eyeY.value(), 1), 1.2);
        }
        double y = 2 * at.middle - MirrorScale.TEXTS - 12;
        svg.line("metres", Pen.BOLD, MirrorScale.MARGIN, y, MirrorScale.MARGIN + 2 * at.scale, y);
        svg.text(Svg.SMALL, Anchor.START, MirrorScale.MARGIN + 2 * at.scale + 4, y + 2.7, "2 m");
    }

    private void body(String part, Pen pen, double start, double stop, double width, String fill) {
        svg.box(part, pen, fill, at.x(start), at.y(-width / 2, 1), (stop - start) * at.scale, width * at.scale);
    }
}
