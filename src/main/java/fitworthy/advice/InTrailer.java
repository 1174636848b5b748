package fitworthy.advice;

import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.BallLoad;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.towing.HitchMeasures;
import fitworthy.figures.towing.UnderTrailerMeasures;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Trailer.Stowed;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** What is listed in the trailer, and what it puts on a limit: of the trailer's own nothing else bears on it. */
final class InTrailer {

    private static final Set<MeasureKind> WHOLE =
            Set.of(HitchMeasures.TRAILER, HitchMeasures.PLATE, HitchMeasures.COUPLING, LoadMeasures.COMBINED);
    private static final Set<MeasureKind> ON_AXLES =
            Set.of(UnderTrailerMeasures.AXLE_LOAD, UnderTrailerMeasures.TYRE_LOAD, UnderTrailerMeasures.LEVELLED);

    private InTrailer() {}

    /** What each puts on a limit, kg by its name; nothing where its place is asked and not known. */
    static Map<String, Double> shares(Plan plan, Measure measure) {
        Map<String, Double> shares = new LinkedHashMap<>();
        BallLoad.of(plan.sheet()).ifPresent(load -> load.aboard().forEach(thing -> {
            Figure share = share(plan, load, thing, measure.kind());
            shares.merge(thing.name(), share.known() ? share.value() : 0, Double::sum);
        }));
        return shares;
    }

    private static Figure share(Plan plan, BallLoad load, Stowed thing, MeasureKind kind) {
        if (WHOLE.contains(kind)) {
            return thing.mass();
        }
        Figure onBall = load.onBall(thing);
        if (ON_AXLES.contains(kind)) {
            // Bars that are tight leave the vehicle less to hold at the ball.
            return thing.mass()
                    .minus(
                            kind == UnderTrailerMeasures.LEVELLED
                                    ? Levelling.of(plan, load.trailer().withBall(onBall))
                                            .held()
                                    : onBall);
        }
        return kind == HitchMeasures.BALL ? onBall : Figure.ZERO;
    }
}
