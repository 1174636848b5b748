package fitworthy.printout.picture;

import fitworthy.printout.picture.Svg.Anchor;
import fitworthy.printout.picture.Svg.Pen;
import fitworthy.printout.words.Digits;
import fitworthy.quantity.Figure;
import fitworthy.sheet.BodyDetails;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.FrontDetails;
import fitworthy.sheet.Trailer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The vehicle from its left side with its bodies, bar and ball, and its lengths below. */
final class VehicleSide {

    private final SideScale at;
    private final Svg svg;
    /** Where black lines stand that no label is to be put on. */
    private final List<Double> upright = new ArrayList<>();

    VehicleSide(SideScale at, Svg svg) {
        this.at = at;
        this.svg = svg;
    }

    /** Draws it. @return where upright black lines stand that no label is to be put on */
    List<Double> draw() {
        outline();
        bodies();
        barAndBall();
        return upright;
    }

    /** What a vehicle may look like; the sheet knows no heights of bonnet, cab and floor. */
    private void outline() {
        double floor = at.radius * 1.35;
        double end = at.rear.or(Figure.of(at.wheelbase * 1.3)).value();
        double cab = at.loading.bodies().stream()
                        .map(body -> ((BodyDetails.Body) body.details()).front())
                        .filter(Figure::known)
                        .mapToDouble(Figure::value)
                        .min()
                        .orElse(end + 0.06)
                - 0.06;
        cab = Math.max(cab, at.wheelbase * 0.5);
        svg.lines(
                "",
                Pen.SKETCH,
                "none",
                at.x(at.front),
                at.y(floor),
                at.x(at.front),
                at.y(at.radius * 2.5),
                at.x(at.front + 0.08),
                at.y(at.radius * 2.75),
                at.x(at.wheelbase * 0.2),
                at.y(at.radius * 3),
                at.x(at.wheelbase * 0.36),
                at.y(at.roof()),
                at.x(cab),
                at.y(at.roof()),
                at.x(cab),
                at.y(floor));
        svg.lines("", Pen.SKETCH, "none", at.x(at.front), at.y(floor), at.x(end), at.y(floor));
        svg.line(
                "ground",
                Pen.LINE,
                at.x(at.left) - 8,
                at.ground,
                at.x(Math.max(end, at.ball.or(at.rear).or(Figure.of(end)).value())) + 8,
                at.ground);
        for (boolean atRear : List.of(false, true)) {
            double centre = atRear ? at.wheelbase : 0;
            svg.circle(
                    atRear ? "wheel-rear" : "wheel-front",
                    at.wheel.known() ? Pen.LINE : Pen.DASHED,
                    Svg.WHITE,
                    at.x(centre),
                    at.y(at.radius),
                    at.radius * at.scale);
            svg.circle("", Pen.SKETCH, "none", at.x(centre), at.y(at.radius), at.radius * at.scale * 0.55);
        }
    }

    /** Ends of trays and canopies are the sheet's; how high they reach is taken from where their mass sits. */
    private void bodies() {
        double top = Double.NaN;
        int number = 0;
        for (Fitment fitment : at.loading.bodies()) {
            BodyDetails.Body body = (BodyDetails.Body) fitment.details();
            double middle = fitment.at()
                    .map(place -> place.z().value())
                    .filter(Double::isFinite)
                    .orElse(at.radius * 2.2);
            boolean tray = fitment.kind() == Fitment.Kind.TRAY;
            double bottom = tray ? middle - 0.06 : Double.isNaN(top) ? middle - 0.45 : Math.min(top, middle - 0.2);
            double height = tray ? 0.12 : 2 * (middle - bottom);
            boolean known = body.front().known() && body.length().known();
            double start = body.front().or(Figure.of(at.wheelbase * 0.65)).value();
            double length = body.length().or(Figure.of(at.wheelbase * 0.6)).value();
            svg.box(
                    "body-" + ++number,
                    known ? Pen.LINE : Pen.DASHED,
                    "none",
                    at.x(start),
                    at.y(bottom + height),
                    length * at.scale,
                    height * at.scale);
            upright.addAll(List.of(at.x(start), at.x(start + length)));
            top = tray ? bottom + height : top;
        }
    }

    private void barAndBall() {
        at.carried(FrontDetails.Bar.class)
                .filter(bar -> bar.ahead().known())
                .limit(1)
                .forEach(bar -> {
                    upright.add(at.x(at.front));
                    double lowest = bar.lowest().or(Figure.of(at.radius)).value();
                    svg.lines(
                            "bar",
                            bar.lowest().known() ? Pen.BOLD : Pen.DASHED,
                            "none",
                            at.x(at.front + 0.12),
                            at.y(lowest),
                            at.x(at.front),
                            at.y(lowest),
                            at.x(at.front),
                            at.y(Math.max(lowest + 0.1, at.radius * 2.75)));
                });
        if (at.ball.known()) {
            double height = at.plan.ballHeight().or(Figure.of(at.radius)).value();
            svg.line(
                    "",
                    Pen.SKETCH,
                    at.x(Math.min(at.ball.value(), at.rear.or(at.ball).value())),
                    at.y(height),
                    at.x(at.ball.value()),
                    at.y(height));
            svg.circle(
                    "ball",
                    at.plan.ballHeight().known() ? Pen.LINE : Pen.DASHED,
                    Svg.WHITE,
                    at.x(at.ball.value()),
                    at.y(height),
                    2.5);
        }
    }

    /** The draw of a trailer, as far as the page goes. */
    void draw(Optional<Trailer> towed) {
        if (towed.isPresent() && at.ball.known()) {
            double y = at.y(at.plan.ballHeight().or(Figure.of(at.radius)).value());
            svg.lines("draw", Pen.SKETCH, "none", Svg.WIDTH, y - 4, at.x(at.ball.value()), y, Svg.WIDTH, y + 4);
        }
    }

    /** Dimension lines below the ground. @return the lowest line used */
    double dimensions() {
        double y = at.ground + 14;
        dimension("wheelbase", "wheelbase ", 0, at.plan.wheelbase(), y);
        dimension("overhang", "overhang ", at.wheelbase, at.rear, y);
        if (at.ball.known() || at.loading.towing()) {
            y += 13;
            dimension("ball", "to the ball ", at.wheelbase, at.ball, y);
        }
        return y;
    }

    private void dimension(String part, String what, double from, Figure to, double y) {
        double end = to.or(Figure.of(at.wheelbase * 1.3)).value();
        double width = Math.abs(end - from) * at.scale;
        String length = to.known() ? Digits.number(end - from, "mm", 0) + " mm" : "?";
        svg.line("dimension-" + part, to.known() ? Pen.HAIR : Pen.DASHED, at.x(from), y, at.x(end), y);
        svg.line(Pen.HAIR, at.x(from), at.ground, at.x(from), y + 3);
        svg.line(Pen.HAIR, at.x(end), at.ground, at.x(end), y + 3);
        if (width > 12) {
            svg.head(at.x(from), y, from - end, 0);
            svg.head(at.x(end), y, end - from, 0);
        }
        String text = Lettering.width(what + length, Svg.SMALL) < width ? what + length : length;
        double middle = Math.min((at.x(from) + at.x(end)) / 2, Svg.WIDTH - 2 - Lettering.width(text, Svg.SMALL) / 2);
        svg.text(Svg.SMALL, Anchor.MIDDLE, middle, y - 2, text);
    }
}
