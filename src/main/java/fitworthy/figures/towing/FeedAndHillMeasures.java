package fitworthy.figures.towing;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Trailer.BatteryFeed;
import java.util.List;

/** What a trailer asks of the vehicle's wiring and of its cooling on long climbs. */
final class FeedAndHillMeasures implements Topic {
    private static final MeasureKind FEED =
            word("towing.battery-feed", "how the vehicle charges a battery in the trailer", BatteryFeed.class);
    private static final MeasureKind HILLS =
            yesNo("towing.hill-conditions", "whether its maker's conditions for towing in hills are read and met");
    private static final MeasureKind HILL_SHARE =
            number("towing.hill-share", "%", 0, "trailer on a hilly trip, over the vehicle's tow rating");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(FEED, HILLS, HILL_SHARE);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        plan.trailer().ifPresent(trailer -> {
            feed(trailer, measures);
            hills(plan, trailer, measures);
        });
    }

    /** One whose brakes are electric mostly has a battery, a box trailer has none. */
    private static void feed(Trailer trailer, List<Measure> measures) {
        Choice<Trailer.Brakes> brakes = trailer.brakes();
        Measure feed = Measure.of(FEED, "trailer", trailer.batteryFeed());
        if (trailer.batteryFeed().known()) {
            measures.add(feed);
        } else if (!brakes.known() || brakes.value().controlled()) {
            measures.add(feed.given(brakes));
        }
    }

    private static void hills(Plan plan, Trailer trailer, List<Measure> measures) {
        Choice<Sheet.Terrain> terrain = plan.sheet().trip().terrain();
        if (terrain.known() && !terrain.is(Sheet.Terrain.HILLS)) {
            return;
        }
        Figure rating = plan.ratings().towing();
        measures.add(Measure.of(HILLS, "vehicle", plan.vehicle().hillTowing()).given(terrain));
        measures.add(Measure.of(HILL_SHARE, "vehicle", trailer.mass().dividedBy(rating))
                .given(terrain)
                .worked("share = trailer / rating", in("trailer", trailer.mass(), "kg"), in("rating", rating, "kg")));
    }
}
