package fitworthy.figures.mass;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.BallLoad;
import fitworthy.figures.plan.Centre;
import fitworthy.figures.plan.FrontLift;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.MassWorkings;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.figures.plan.Track;
import fitworthy.figures.plan.UsedUp;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Trailer;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What is left on the front axle at its lightest on the way, how high the centre of gravity gets and how far to one side, as
 * tanks and supplies in the trailer are used up.
 */
public final class EmptiedMeasures implements Topic {

    public static final MeasureKind FRONT_LIFT = number("mass.front-lift-emptied", "%", 1, "front axle load lost")
            .onTheWay("once what holds that axle down is used up")
            .byLoading();
    private static final MeasureKind BALL_LIFT = number(
                    "mass.ball-lift-emptied",
                    "kg",
                    0,
                    "most that the ball lifts off the front axle, less what a load-levelling hitch brings back,")
            .onTheWay("as supplies run out")
            .signed()
            .byLoading();

    private static final MeasureKind COG = rated(
                    "mass.cog-emptied",
                    "mm",
                    0,
                    "height of the centre of gravity",
                    "height that the vehicle's maker allows")
            .onTheWay("once the tanks below it are used up")
            .byLoading();

    private static final MeasureKind SIDE = number(
                    "mass.side-emptied", "%", 1, "difference between left and right, as a share of the loaded mass,")
            .onTheWay("once the tanks on one side are used up")
            .byLoading();

    @Override
    public List<MeasureKind> kinds() {
        return List.of(FRONT_LIFT, BALL_LIFT, COG, SIDE);
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        Plan plan = loading.plan();
        UsedUp.lightestFront(loading).ifPresent(state -> {
            FrontLift lift = FrontLift.of(loading, state.masses());
            measures.add(Measure.of(FRONT_LIFT, "front axle", lift.lost())
                    .worked(lift.working())
                    .worked(state.working(
                            loading.axles().front(), lift.load(), mass -> mass.onFront(plan.wheelbase()))));
        });
        Figure most = plan.ratings().cogHeight();
        // What is too high already is a matter of its own.
        if (most.known() && !Centre.of(loading.highest()).z().isAbove(most)) {
            UsedUp.highest(loading)
                    .ifPresent(state -> measures.add(Measure.of(COG, "vehicle", state.height(), most)
                            .worked(MassWorkings.centre(state.masses(), "height", PointMass::height))));
        }
        side(loading, measures);
        // A pin stands over the rear axle or ahead of it.
        if (plan.trailer().filter(Trailer::onFifthWheel).isEmpty()) {
            UsedUp.heaviestBall(loading)
                    .flatMap(UsedUp::trailer)
                    .ifPresent(gone -> measures.add(ballLift(plan, gone.load(), gone.left())));
        }
    }

    /** By the side that leaves the more behind when it is used up first; what is lopsided already is a matter of its own. */
    private static void side(Loading loading, List<Measure> measures) {
        Plan plan = loading.plan();
        Figure track = Track.of(plan);
        Figure now = LoadMeasures.sideShare(loading.centre().y(), track);
        if (now.isAbove(plan.practice(PracticeId.MASS_SIDE_MOST))) {
            return;
        }
        Stream.<Predicate<Figure>>of(y -> y.isAbove(Figure.ZERO), y -> y.isBelow(Figure.ZERO))
                .flatMap(there -> UsedUp.nothingAside(loading, there).stream())
                .map(state -> side(state, track))
                .reduce((one, other) -> other.getValue() > one.getValue() ? other : one)
                .ifPresent(measures::add);
    }

    private static Measure side(UsedUp state, Figure track) {
        Figure left = Centre.of(state.masses()).y();
        return Measure.of(SIDE, "vehicle", LoadMeasures.sideShare(left, track))
                .worked("difference = |2 x left / track|", in("left", left, "mm"), in("track", track, "mm"))
                .worked(MassWorkings.centre(
                        state.masses(), "left", mass -> mass.at().y()));
    }

    /** The bars of a load-levelling hitch bring back what they were set to, and no more of a heavier ball. */
    private static Measure ballLift(Plan plan, BallLoad load, BallLoad.Left left) {
        Figure lever = plan.ballOverhang().dividedBy(plan.wheelbase());
        Figure lifted = left.ball().times(lever);
        boolean bars = Levelling.helpsFront(plan);
        Figure back =
                bars ? load.filledIn().ball().times(lever).times(plan.towBar().levellingShare()) : Figure.of(0, 0);
        Measure measure = Measure.of(BALL_LIFT, "front axle", lifted.minus(back));
        return (bars
                        ? measure.worked("lifted = then - back", in("then", lifted, "kg"), in("back", back, "kg"))
                                .worked(
                                        "back = share x ball x overhang / wheelbase",
                                        in("share", plan.towBar().levellingShare(), "%"),
                                        in("ball", load.filledIn().ball(), "kg"),
                                        in("overhang", plan.ballOverhang(), "mm"),
                                        in("wheelbase", plan.wheelbase(), "mm"))
                                .given(plan.ratings().levelling())
                        : measure)
                .worked(
                        (bars ? "then" : "lifted") + " = ball then x overhang / wheelbase",
                        in("ball then", left.ball(), "kg"),
                        in("overhang", plan.ballOverhang(), "mm"),
                        in("wheelbase", plan.wheelbase(), "mm"))
                .worked(load.working("ball then", left));
    }
}
