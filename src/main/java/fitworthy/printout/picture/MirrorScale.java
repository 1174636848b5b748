package fitworthy.printout.picture;

import fitworthy.book.Practice;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.mirrors.MirrorViewMeasures;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Trailer;
import java.util.Optional;

/**
 * What a view of vehicle, trailer and road from above is of, and where on the page each of its places lies. The vehicle
 * drives to the left of the page, so that its left side lies below.
 */
final class MirrorScale {

    static final double MARGIN = 10;
    /** Room for words above and below the drawing. */
    static final double TEXTS = 46;

    private static final double HIGHEST = 260;
    /** How many times the width asked for is drawn at most. */
    private static final double MOST = 1.3;

    final PictureFacts facts;
    final Plan plan;
    final Trailer trailer;
    final double wheelbase;
    final Figure widest;
    final double half;
    final Figure coupling;
    final Figure end;
    final Optional<Practice> farWidth;
    final Optional<Practice> farDistance;
    final double eyeX;
    /** How far beyond the side the road is drawn. */
    final double beyond;

    final double far;
    final double from;
    final double scale;
    final double middle;

    MirrorScale(PictureFacts facts) {
        this.facts = facts;
        Loading loading = facts.loading();
        plan = loading.plan();
        trailer = loading.trailer().orElseThrow();
        wheelbase = plan.wheelbase().value();
        widest = loading.widestBehind(trailer);
        half = widest.or(trailer.width().times(0.5)).value();
        coupling = plan.wheelbase().plus(plan.ballOverhang());
        end = coupling.plus(trailer.length());
        farWidth = facts.practice(PracticeId.MIRRORS_FAR_WIDTH);
        farDistance = facts.practice(PracticeId.MIRRORS_FAR_DISTANCE);
        eyeX = plan.vehicle().view().eye().x().or(Figure.of(wheelbase / 2)).value();
        double behind = end.or(Figure.of(wheelbase * 3)).value();
        far = farDistance
                .map(distance -> eyeX + distance.value())
                .filter(x -> x > behind)
                .orElse(behind + 3);
        from = -wheelbase * 0.3;
        double asked = farWidth.map(Practice::value).orElse(2.0);
        double seen = facts.all(MirrorViewMeasures.FAR_FIELD).stream()
                .mapToDouble(Measure::getValue)
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        beyond = Math.max(asked, Math.min(seen, MOST * asked));
        scale = Math.min((Svg.WIDTH - 2 * MARGIN) / (far + 0.3 - from), HIGHEST / 2 / (half + beyond));
        middle = TEXTS + 10 + (half + beyond) * scale;
    }

    /** @param metres behind the front axle */
    double x(double metres) {
        return MARGIN + (metres - from) * scale;
    }

    /** @param out metres from the middle of the road @param down 1 on the left side, -1 on the right */
    double y(double out, int down) {
        return middle + down * out * scale;
    }
}
