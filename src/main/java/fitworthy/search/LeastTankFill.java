package fitworthy.search;

import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Engine;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** How far a tank has to be filled for the trip that the sheet describes: nothing is gained by running dry. */
final class LeastTankFill {

    /** Metres of the hundred kilometres that a consumption is given for. */
    private static final double PER_100_KM = 100_000;

    private static final double HOURS_A_DAY = 24;

    private final Sheet sheet;

    private final double reserve;

    /**
     * @param sheet with only the chosen parts in it
     * @param reserve the part of the fuel that is left at the end of the longest leg, 0 to below 1
     */
    LeastTankFill(Sheet sheet, double reserve) {
        this.sheet = sheet;
        this.reserve = reserve;
    }

    /**
     * The least fill of a tank, 0 to 1, with the others filled as planned: 1 where the sheet does not say what the trip
     * needs, so that nobody is sent off with a half tank on a way that nobody knows; 0 where the trip needs none of it.
     */
    double of(Tank tank) {
        boolean water = tank.liquid().is(Tank.Liquid.WATER);
        if (!water && !burnt(tank)) {
            return 0;
        }
        List<Tank> others = sheet.tanks().stream()
                .filter(other -> other != tank && (water ? other.liquid().is(Tank.Liquid.WATER) : burnt(other)))
                .toList();
        Stream<Optional<LoadCase>> cases = sheet.cases().isEmpty()
                ? Stream.of(Optional.empty())
                : sheet.cases().stream()
                        .filter(loadCase -> !loadCase.trip().is(YesNo.NO)
                                && loadCase.weighed().isEmpty())
                        .map(Optional::of);
        double litres = cases.map(loadCase -> {
                    Figure needed = water ? water() : fuel(loadCase);
                    return needed.known()
                            ? Math.max(0, needed.value() - held(others, loadCase))
                            : Double.POSITIVE_INFINITY;
                })
                .reduce(0.0, Math::max);
        return Math.min(1, litres / tank.capacity().value());
    }

    private boolean burnt(Tank tank) {
        Tank.Liquid burnt =
                sheet.vehicle().engine().fuel().is(Engine.Fuel.PETROL) ? Tank.Liquid.PETROL : Tank.Liquid.DIESEL;
        return tank.liquid().is(burnt) && !tank.builtIn().feedsEngine().is(YesNo.NO);
    }

    private Figure fuel(Optional<LoadCase> loadCase) {
        boolean towing = loadCase.map(loaded -> loaded.towing().is(YesNo.YES))
                .orElse(sheet.trailer().isPresent());
        Engine engine = sheet.vehicle().engine();
        Figure consumption = towing ? engine.consumptionTowing().or(engine.consumption()) : engine.consumption();
        return sheet.trip().longestLeg().times(consumption).times(1 / PER_100_KM / (1 - reserve));
    }

    private Figure water() {
        Sheet.Trip trip = sheet.trip();
        return trip.people().times(trip.waterUse()).times(trip.days()).times(1 / HOURS_A_DAY);
    }

    private static double held(List<Tank> tanks, Optional<LoadCase> loadCase) {
        return tanks.stream()
                .mapToDouble(tank -> tank.capacity().value()
                        * loadCase.map(loaded -> loaded.filled().getOrDefault(tank.name(), tank.fill()))
                                .orElse(tank.fill())
                                .value())
                .sum();
    }
}
