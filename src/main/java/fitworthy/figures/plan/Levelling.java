package fitworthy.figures.plan;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Point;
import fitworthy.sheet.TowingDetails;
import fitworthy.sheet.Trailer;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a load-levelling hitch moves. Its bars put a moment M between vehicle and trailer and no weight. By moments about
 * the axles, rigid frames on level ground: the trailer, held up at distance d behind the ball, gives M / d less to the
 * ball and as much more to its axles; the front axle gets M (d + h) / (d L), with h from rear axle to ball and L the
 * wheelbase; the rear axle loses both. M follows from the share s of what the ball lifts, {@code s B h / L}, that is
 * brought back: {@code M = s B h d / (d + h)}. It is set once and stays as the ball gets lighter on the way, though the pair
 * then stands a little straighter and slackens the bars: that errs to the safe side for the front axle.
 *
 * @param ball load on the ball before the bars are on, B, kg
 * @param share of the lift that is brought back, s
 * @param lever overhang over wheelbase, h / L
 * @param reach overhang over the distance from rear axle to the trailer's axles, h / (d + h)
 */
public record Levelling(Figure ball, Figure share, Figure lever, Figure reach) {

    public static Levelling of(Plan plan, Trailer trailer) {
        Figure overhang = plan.ballOverhang();
        return new Levelling(
                trailer.ball(),
                plan.towBar().levellingShare(),
                overhang.dividedBy(plan.wheelbase()),
                overhang.dividedBy(trailer.axle().plus(overhang)));
    }

    /** Whether the plan has one: as it says, or as it says what one is set to or made for. */
    public static boolean planned(Plan plan) {
        TowingDetails.TowBar bar = plan.towBar();
        return bar.levelling().known()
                ? bar.levelling().is(YesNo.YES)
                : Stream.of(bar.levellingShare(), bar.barsMost(), bar.barsLeast())
                        .anyMatch(Figure::known);
    }

    /**
     * Masses as the front axle carries them with the bars on. By moments about the rear axle what they bring back is as
     * if the ball stood that much nearer to it, at {@code (1 - share) overhang}. Where there is no such hitch, or the
     * vehicle's maker rules it out, as they are.
     */
    public static List<PointMass> onFront(Plan plan, List<PointMass> masses) {
        if (!helpsFront(plan)) {
            return masses;
        }
        Figure left = Figure.of(1, 0).minus(plan.towBar().levellingShare());
        Figure at = plan.wheelbase().plus(plan.ballOverhang().times(left));
        return masses.stream()
                .map(mass -> mass.sort() == PointMass.Sort.BALL ? mass.at(at) : mass)
                .toList();
    }

    /**
     * The same once supplies are gone from the trailer. The bars are not set anew: they keep their moment, and with it what
     * they bring back of the load that was on the ball as they were set.
     *
     * @param masses with what is left on the ball
     * @param gone what that is less than as planned, in kg
     */
    public static List<PointMass> onFront(Plan plan, List<PointMass> masses, Figure gone) {
        List<PointMass> moved = onFront(plan, masses);
        if (!helpsFront(plan) || gone.isZero()) {
            return moved;
        }
        Point ball = Masses.onBall(plan, gone).at();
        PointMass held = new PointMass(
                "held by the bars",
                PointMass.Sort.RESIDUAL,
                gone.times(plan.towBar().levellingShare()).times(-1),
                ball,
                false);
        return Stream.concat(moved.stream(), Stream.of(held)).toList();
    }

    /** What the front axle carries, in kg: with the bars on, which is more than without. */
    public static Figure front(Loading loading) {
        return helps(loading)
                ? front(loading.plan(), loading.masses())
                : loading.axles().front();
    }

    /** The same of masses that a vehicle carries, in kg. */
    public static Figure front(Plan plan, List<PointMass> masses) {
        return AxleLoads.front(onFront(plan, masses), plan.wheelbase());
    }

    /** Whether its bars bring something back to the front axle: not where the vehicle's maker rules it out. */
    public static boolean helpsFront(Plan plan) {
        return planned(plan) && !plan.ratings().levelling().is(YesNo.NO);
    }

    /** The same of a loading: only one that tows. */
    public static boolean helps(Loading loading) {
        return helpsFront(loading.plan()) && loading.trailer().isPresent();
    }

    /** How {@link #front} follows from the loads without the bars; nothing where there are none, or it is not known. */
    public static Working[] frontWorked(Loading loading) {
        Plan plan = loading.plan();
        return helps(loading) && front(loading).known()
                ? new Working[] {
                    new Working.Formula(
                            "with its bars = front + share x ball x overhang / wheelbase",
                            List.of(
                                    in("front", loading.axles().front(), "kg"),
                                    in("share", plan.towBar().levellingShare(), "%"),
                                    in("ball", loading.trailer().orElseThrow().ball(), "kg"),
                                    in("overhang", plan.ballOverhang(), "mm"),
                                    in("wheelbase", plan.wheelbase(), "mm")))
                }
                : new Working[0];
    }

    /** How the reach came about. */
    public static Working reached(Plan plan, Trailer trailer) {
        return new Working.Formula(
                "reach = overhang / (axle + overhang)",
                List.of(in("overhang", plan.ballOverhang(), "mm"), in("axle", trailer.axle(), "mm")));
    }

    /** Load that the rear axle is relieved of, in kg. */
    public Figure offRear() {
        return ball.times(share).times(lever.plus(reach));
    }

    /** Load on the trailer's axles with the bars on, in kg. @param trailer its whole mass, kg */
    public Figure onTrailerAxles(Figure trailer) {
        return trailer.minus(held());
    }

    /** What of the trailer the vehicle still holds up at the ball, in kg. */
    public Figure held() {
        return ball.times(Figure.of(1, 0).minus(share.times(reach)));
    }
}
