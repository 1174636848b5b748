package fitworthy.printout.picture;

import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Details;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.FrontDetails;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** What a view of the vehicle from its left side is of, and where on the page each of its places lies. */
final class SideScale {

    static final double MARGIN = 16;
    static final double TOP = 24;
    /** Room for the drawing above the ground. */
    private static final double HIGHEST = 250;

    final PictureFacts facts;
    final Loading loading;
    final Plan plan;
    final double wheelbase;
    final Figure wheel;
    /** Height of a wheel's centre; a guess where the sheet does not give it, and then drawn as one. */
    final double radius;

    final double front;
    final Figure rear;
    final Figure ball;
    final double scale;
    final double left;
    final double ground;
    /** The masses of this loading, without those of nothing. */
    final List<PointMass> masses;

    SideScale(PictureFacts facts) {
        this.facts = facts;
        loading = facts.loading();
        plan = loading.plan();
        wheelbase = plan.wheelbase().value();
        wheel = plan.tyreDiameter().times(0.5);
        radius = wheel.or(Figure.of(wheelbase * 0.13)).value();
        Figure bar = carried(FrontDetails.Bar.class)
                .map(FrontDetails.Bar::ahead)
                .filter(Figure::known)
                .findFirst()
                .orElse(Figure.of(wheelbase * 0.29));
        front = -bar.value();
        rear = plan.wheelbase().plus(loading.rearOverhang());
        ball = plan.wheelbase().plus(plan.ballOverhang());
        masses = loading.masses().stream()
                .filter(mass -> mass.mass().value() != 0)
                .toList();
        double[] across = Stream.concat(
                        Stream.of(front, rear.value(), ball.value(), wheelbase * 1.3),
                        masses.stream().map(mass -> mass.at().x().value()))
                .mapToDouble(Double::doubleValue)
                .filter(Double::isFinite)
                .toArray();
        double highest = Stream.concat(
                        Stream.of(roof()),
                        masses.stream().map(mass -> mass.at().z().value()))
                .mapToDouble(Double::doubleValue)
                .filter(Double::isFinite)
                .max()
                .orElseThrow();
        left = Arrays.stream(across).min().orElseThrow();
        scale = Math.min(
                (Svg.WIDTH - 2 * MARGIN) / (Arrays.stream(across).max().orElseThrow() - left), HIGHEST / highest);
        ground = TOP + 12 + highest * scale;
    }

    /** The details of each part of a kind that this loading carries. */
    <D extends Details> Stream<D> carried(Class<D> type) {
        return plan.sheet().fitments().stream()
                .filter(loading::carries)
                .map(Fitment::details)
                .filter(type::isInstance)
                .map(type::cast);
    }

    /** @param metres behind the front axle */
    double x(double metres) {
        return MARGIN + (metres - left) * scale;
    }

    /** @param metres above the ground */
    double y(double metres) {
        return ground - metres * scale;
    }

    /** How high the sketch of the vehicle is, in metres. */
    double roof() {
        return radius * 4.7;
    }

    /** How high the centre of gravity is, in metres; a guess where it is not known. */
    double centreHeight() {
        return loading.centre().z().or(Figure.of(radius)).value();
    }
}
