package fitworthy.figures.plan;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the roof may carry on the way, racks and all: the lesser of what the vehicle's maker allows on the road and off it.
 * What he does not name beside the limit on the road is asked for where it could be less than the load. Who sleeps up there
 * is no load while the vehicle moves, and counts against what the roof bears {@linkplain AtRest at rest}.
 *
 * @param most in kg; missing where what is not known of it could turn a verdict
 * @param governs which of them it is; missing where one of them is not known
 */
public record RoofLimit(Figure most, Choice<Governs> governs) {

    /** Whose limit it is. */
    public enum Governs {
        MAKER,
        OFF_ROAD
    }

    /**
     * The roof while people sleep there.
     *
     * @param asleep what they weigh, kg; asked for where a tent is up there and nobody says that none sleep in it
     * @param bears what the roof bears then, kg; asked for, since no other figure tells it
     */
    public record AtRest(Figure asleep, Figure bears) {
        /** What it leaves for the tent and all else up there, kg. */
        public Figure left() {
            return bears.minus(asleep);
        }
    }

    private record Bound(Governs governs, Figure kg) {}

    /** That of a loading. @param load what is known to be on the roof, kg */
    public static RoofLimit of(Loading loading, Figure load) {
        Vehicle.Ratings ratings = loading.plan().ratings();
        List<Bound> bounds = new ArrayList<>();
        bounds.add(new Bound(Governs.MAKER, ratings.roof()));
        if (leavesTheSeal(loading.plan().sheet())
                && (ratings.roofOffRoad().known() || load.isAbove(asked(loading.plan())))) {
            bounds.add(new Bound(Governs.OFF_ROAD, ratings.roofOffRoad()));
        }
        return least(bounds, load);
    }

    /** That of a loading at rest, where people sleep on the roof in it. */
    public static Optional<AtRest> atRest(Loading loading) {
        Sheet sheet = loading.plan().sheet();
        Figure asleep = sheet.trip().roofSleepers().orTolerance(AssumedTolerance.of(sheet));
        boolean sleeping = asleep.known() ? asleep.value() > 0 && sleptIn(loading) : tentUp(loading);
        return sleeping
                ? Optional.of(new AtRest(asleep, loading.plan().ratings().roofAtRest()))
                : Optional.empty();
    }

    /** The load from which what the maker names beside his limit on the road could be less, kg. */
    static Figure asked(Plan plan) {
        return plan.ratings().roof().times(plan.practice(PracticeId.MASS_ROOF_ASKED));
    }

    /** Whether a tent that stands on the roof is up there, by its name: a part, or a load that is called a roof tent. */
    private static boolean tentUp(Loading loading) {
        return loading.setsOut()
                && RoofLoad.of(loading).known().stream()
                        .map(on -> on.name().toLowerCase(Locale.ROOT))
                        .filter(name -> name.contains("tent"))
                        .anyMatch(name -> name.contains("roof")
                                || loading.plan().sheet().fitments().stream()
                                        .anyMatch(part -> part.name().equalsIgnoreCase(name)));
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
                                .map(part -> OnRoof.of(part, sheet)),
                        sheet.cargo().stream()
                                .filter(load -> load.name().equals(tent)
                                        && (load.roof().is(YesNo.NO)
                                                || !load.in().isEmpty()))
                                .map(load -> OnRoof.of(load, sheet)))
                .anyMatch(roof -> roof.is(YesNo.NO));
    }

    /** What the vehicle's maker allows on the way of the trip, in kg. */
    public static Figure onTheWay(Sheet sheet) {
        Vehicle.Ratings ratings = sheet.vehicle().ratings();
        return leavesTheSeal(sheet) && ratings.roofOffRoad().known()
                ? ratings.roof().least(ratings.roofOffRoad())
                : ratings.roof();
    }

    /** Whether the trip leaves sealed roads and nobody says what the vehicle's maker allows there, which may be less. */
    public static boolean lacksOffRoad(Sheet sheet) {
        return leavesTheSeal(sheet) && !sheet.vehicle().ratings().roofOffRoad().known();
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
                        : Choice.missing(missing.missing().get(0)));
    }
}
