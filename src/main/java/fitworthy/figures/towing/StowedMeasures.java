package fitworthy.figures.towing;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.BallLimits;
import fitworthy.figures.plan.BallLoad;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Trailer;
import java.util.List;

/** Whether what is listed in the trailer comes to what is given of it, and what ball or pin carries as it is used up. */
final class StowedMeasures implements Topic {
    private static final MeasureKind GAP = rated(
            "towing.list-gap",
            "kg",
            0,
            "difference between what is given of the trailer and what its list comes to",
            "their joint tolerance");
    private static final MeasureKind SHARE = number(
                    "towing.ball-share-emptied", "%", 1, "least share of the trailer on the ball")
            .onTheWay("as supplies run out")
            .signed();
    private static final MeasureKind PIN_SHARE = number(
                    "towing.pin-share-emptied", "%", 1, "least share of the trailer on the pin")
            .onTheWay("as supplies run out");
    private static final MeasureKind BALL = rated(
                    "towing.ball-emptied", "kg", 0, "greatest load on the ball", "ball load limit")
            .onTheWay("as supplies run out")
            .onTrailer();

    @Override
    public List<MeasureKind> kinds() {
        return List.of(GAP, SHARE, PIN_SHARE, BALL);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        BallLoad.of(plan.sheet()).filter(BallLoad::isListed).ifPresent(load -> {
            Trailer given = load.trailer();
            measures.add(gap("mass", given.mass(), load.listedMass(), load.masses("list")));
            if (!load.isWorkedOut()) {
                measures.add(gap(
                        given.onFifthWheel() ? "load on the pin" : "load on the ball",
                        given.ball(),
                        load.listed(),
                        load.loads("list")));
            }
            if (!given.supplies().isEmpty()) {
                emptied(plan, load, measures);
            }
        });
    }

    private static Measure gap(String subject, Figure given, Figure listed, Working... list) {
        Figure gap = given.minus(listed);
        return Measure.of(
                        GAP,
                        subject,
                        gap.known() ? Figure.of(Math.abs(gap.value()), 0) : gap,
                        gap.known() ? Figure.of(gap.tolerance(), 0) : gap)
                .worked("difference = |given - list|", in("given", given, "kg"), in("list", listed, "kg"))
                .worked(
                        "tolerance = sqrt(of given^2 + of list^2)",
                        in("of given", Figure.of(given.tolerance(), 0), "kg"),
                        in("of list", Figure.of(listed.tolerance(), 0), "kg"))
                .worked(list);
    }

    private static void emptied(Plan plan, BallLoad load, List<Measure> measures) {
        Trailer trailer = load.trailer();
        BallLoad.Left left = load.lightest();
        boolean pin = trailer.onFifthWheel();
        measures.add(Measure.of(pin ? PIN_SHARE : SHARE, pin ? "king pin" : "tow ball", BallLoad.share(left))
                .worked("share = left / trailer", in("left", left.ball(), "kg"), in("trailer", left.mass(), "kg"))
                .worked(
                        "trailer = loaded - gone",
                        in("loaded", trailer.mass(), "kg"),
                        in("gone", trailer.mass().minus(left.mass()), "kg"))
                .worked(load.working("left", left)));
        BallLoad.Left most = load.heaviest();
        BallLimits.of(plan, trailer)
                .against(plan, most.ball())
                .forEach((subject, limit) -> measures.add(
                        Measure.of(BALL, subject, most.ball(), limit).worked(load.working("most", most))));
    }
}
