package fitworthy.figures.towing;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.BallLimits;
import fitworthy.figures.plan.BallLoad;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Trailer;
import java.util.List;

/** What a planned load-levelling hitch moves, and whether it may. Asked only where one is planned. */
final class LevellingMeasures implements Topic {
    private static final MeasureKind ALLOWED =
            yesNo("towing.levelling", "whether the vehicle's maker allows the planned load-levelling hitch");
    private static final MeasureKind SHARE =
            number("towing.levelling-share", "%", 0, "share of the load lifted off the front axle that it brings back");
    private static final MeasureKind SHARE_LEFT = number("towing.levelling-share-left", "%", 0, "the same")
            .onTheWay("once supplies ahead of the trailer's axles are used up");
    private static final MeasureKind OFF_REAR =
            number("towing.levelled-rear", "kg", 0, "load that it takes off the rear axle");
    private static final MeasureKind BARS_MOST = rated(
                    "towing.bars-most",
                    "kg",
                    0,
                    "greatest load on the ball on the way, as far as it is allowed there",
                    "most that the bars are made for")
            .onTrailer();
    private static final MeasureKind BARS_LEAST = rated(
                    "towing.bars-least",
                    "kg",
                    0,
                    "least load on the ball on the way",
                    "least that the bars are made for")
            .signed()
            .onTrailer();
    private static final MeasureKind ON_AIR =
            yesNo("towing.levelling-on-air", "whether the rear axle under it rides on air springs");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(ALLOWED, SHARE, SHARE_LEFT, OFF_REAR, BARS_MOST, BARS_LEAST, ON_AIR);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        plan.trailer().ifPresent(trailer -> {
            Choice<YesNo> told = plan.towBar().levelling();
            Choice<YesNo> allowed = plan.ratings().levelling();
            if (Levelling.planned(plan)) {
                measures.add(Measure.of(ALLOWED, "load-levelling hitch", allowed));
                // What is to be left out needs no other bars, and is set to nothing.
                if (!allowed.is(YesNo.NO)) {
                    moved(plan, trailer, measures);
                }
            } else if (!told.known() && allowed.is(YesNo.NO)) {
                measures.add(
                        Measure.of(ALLOWED, "load-levelling hitch", allowed).given(told));
            }
        });
    }

    private static void moved(Plan plan, Trailer trailer, List<Measure> measures) {
        String hitch = "load-levelling hitch";
        Levelling levelling = Levelling.of(plan, trailer);
        measures.add(Measure.of(SHARE, hitch, levelling.share()));
        measures.add(Measure.of(OFF_REAR, "rear axle", levelling.offRear())
                .worked(
                        "off = ball x share x (overhang / wheelbase + reach)",
                        in("ball", trailer.ball(), "kg"),
                        in("share", levelling.share(), "%"),
                        in("overhang", plan.ballOverhang(), "mm"),
                        in("wheelbase", plan.wheelbase(), "mm"),
                        in("reach", levelling.reach(), "%"))
                .worked(Levelling.reached(plan, trailer)));
        BallLoad load = BallLoad.of(plan.sheet()).orElseThrow();
        left(levelling.share(), hitch, load, measures);
        BallLoad.Left heaviest = load.heaviest();
        bars(
                BARS_MOST,
                hitch,
                load,
                heaviest,
                allowed(plan, trailer, heaviest.ball()),
                plan.towBar().barsMost(),
                measures);
        BallLoad.Left lowest = load.lowest();
        bars(BARS_LEAST, hitch, load, lowest, lowest.ball(), plan.towBar().barsLeast(), measures);
        boolean added = !plan.fitments(Fitment.Kind.AIR_SPRINGS).isEmpty();
        measures.add(Measure.of(
                ON_AIR, hitch, added ? Choice.of(YesNo.YES) : plan.vehicle().rearAirSprings()));
    }

    /** The bars keep the moment that they were set to, and a lighter ball lifts less. */
    private static void left(Figure share, String hitch, BallLoad load, List<Measure> measures) {
        BallLoad.Left left = load.lowest();
        boolean lifts = !left.ball().isAtMost(Figure.ZERO);
        if (lifts && !(left.ball().known() && left.gone().isEmpty())) {
            Figure off = load.off(left);
            measures.add(Measure.of(
                            SHARE_LEFT,
                            hitch,
                            left.ball().missingWith(share, share.plus(share.times(off.dividedBy(left.ball())))))
                    .worked(
                            "left = share x (1 + off / ball then)",
                            in("share", share, "%"),
                            in("off", off, "kg"),
                            in("ball then", left.ball(), "kg"))
                    .worked(load.working("ball then", left)));
        }
    }

    /** A load on the ball, no more than is allowed there: what is above that has to come off it, whatever the bars. */
    private static Figure allowed(Plan plan, Trailer trailer, Figure ball) {
        return BallLimits.of(plan, trailer).known().reduce(ball, Figure::least);
    }

    /** Bars that are not taken off on the way have to suit the ball with supplies and without. */
    private static void bars(
            MeasureKind kind,
            String hitch,
            BallLoad load,
            BallLoad.Left left,
            Figure ball,
            Figure limit,
            List<Measure> measures) {
        Measure bars = Measure.of(kind, hitch, ball, limit);
        measures.add(left.gone().isEmpty() ? bars : bars.worked(load.working("load", left)));
    }
}
