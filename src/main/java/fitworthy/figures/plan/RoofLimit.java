package fitworthy.figures.plan;

import fitworthy.figures.measure.Working;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the roof may carry, racks and all: the least of what the vehicle's maker allows on the road and off it, and of what
 * it bears at rest less the people who sleep on it. What a maker does not name beside the limit on the road is not asked
 * for, but for the limit at rest where people sleep there: theirs is no load while the vehicle moves.
 *
 * @param most in kg; missing where what is not known of it could turn a verdict
 * @param governs which of them it is; missing where one of them is not known
 */
public record RoofLimit(Figure most, Choice<Governs> governs, Working working) {

    /** Whose limit it is. */
    public enum Governs {
        MAKER,
        OFF_ROAD,
        AT_REST
    }

    private record Bound(Governs governs, Figure kg, Working working) {}

    /** That of a loading. @param load what is known to be on the roof, kg */
    public static RoofLimit of(Loading loading, Figure load) {
        Sheet sheet = loading.plan().sheet();
        Vehicle.Ratings ratings = loading.plan().ratings();
        List<Bound> bounds = new ArrayList<>();
        bounds.add(new Bound(Governs.MAKER, ratings.roof(), List::of));
        if (leavesTheSeal(sheet) && ratings.roofOffRoad().known()) {
            bounds.add(new Bound(Governs.OFF_ROAD, ratings.roofOffRoad(), List::of));
        }
        Figure sleepers = sheet.trip().roofSleepers();
        if (sleepers.value() > 0 && sleptIn(loading)) {
            Figure atRest = ratings.roofAtRest();
            bounds.add(new Bound(
                    Governs.AT_REST,
                    atRest.minus(sleepers),
                    new Working.Formula(
                            "limit = at rest - asleep",
                            List.of(Working.in("at rest", atRest, "kg"), Working.in("asleep", sleepers, "kg")))));
        }
        return least(bounds, load);
    }

    /**
     * Whether what people sleep in is on the roof in a loading, as it is where the sheet does not say what that is: a tent on
     * a canopy does not load the roof of the cab.
     */
    private static boolean sleptIn(Loading loading) {
        Sheet sheet = loading.plan().sheet();
        String tent = sheet.trip().roofTent();
        return loading.setsOut()
                && !loading.isOff(tent)
                && !elsewhere(tent, sheet)
                && sheet.cargo().stream()
                        .filter(load -> load.name().equals(tent))
                        .allMatch(loading::carries);
    }

    /** Whether the sheet puts what people sleep in elsewhere; that it is low, or of no known height, is not enough. */
    private static boolean elsewhere(String tent, Sheet sheet) {
        return Stream.concat(
                        sheet.fitments().stream()
                                .filter(part -> part.name().equals(tent)
                                        && (part.roof().is(YesNo.NO)
                                                || !part.in().isEmpty()))
                                .map(part -> Masses.onRoof(part, sheet)),
                        sheet.cargo().stream()
                                .filter(load -> load.name().equals(tent)
                                        && (load.roof().is(YesNo.NO)
                                                || !load.in().isEmpty()))
                                .map(load -> Masses.onRoof(load, sheet)))
                .anyMatch(roof -> roof.is(YesNo.NO));
    }

    /** What the vehicle's maker allows on the way of the trip, in kg. */
    public static Figure onTheWay(Sheet sheet) {
        Vehicle.Ratings ratings = sheet.vehicle().ratings();
        return leavesTheSeal(sheet) && ratings.roofOffRoad().known()
                ? ratings.roof().least(ratings.roofOffRoad())
                : ratings.roof();
    }

    /** Roads without dust are sealed, if none goes through water. */
    static boolean leavesTheSeal(Sheet sheet) {
        Sheet.Trip trip = sheet.trip();
        boolean sealed = trip.dust().is(Sheet.Dust.NONE) && trip.waterDepth().isZero();
        return !sealed && !trip.terrain().is(Sheet.Terrain.TOWN);
    }

    /** What is passed already is passed whatever the others are. */
    private static RoofLimit least(List<Bound> bounds, Figure load) {
        Bound least = bounds.get(0);
        Figure missing = Figure.ZERO;
        for (Bound bound : bounds) {
            missing = missing.missingWith(bound.kg(), missing);
            if (bound.kg().known() && !least.kg().isAtMost(bound.kg())) {
                least = bound;
            }
        }
        boolean decides = missing.known() || load.isAbove(least.kg());
        return new RoofLimit(
                decides ? least.kg() : missing,
                missing.known()
                        ? Choice.of(least.governs())
                        : Choice.missing(missing.missing().get(0)),
                least.working());
    }
}
