package fitworthy.figures.plan;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Trailer;
import java.util.List;

/**
 * What a load-levelling hitch moves. Its bars put a moment M between vehicle and trailer and no weight. By moments about
 * the axles, rigid frames on level ground: the trailer, held up at distance d behind the ball, gives M / d less to the
 * ball and as much more to its axles; the front axle gets M (d + h) / (d L), with h from rear axle to ball and L the
 * wheelbase; the rear axle loses both. M follows from the share s of what the ball lifts, {@code s B h / L}, that is
 * brought back: {@code M = s B h d / (d + h)}.
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

    /** Whether the plan has one. */
    public static boolean planned(Plan plan) {
        return plan.towBar().levelling().is(YesNo.YES);
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
        return trailer.minus(ball.times(Figure.of(1, 0).minus(share.times(reach))));
    }
}
