package fitworthy.figures.plan;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Engine;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Tank;
import java.util.List;

/** How far a vehicle gets on its fuel. */
public final class FuelRange {

    /** The distance a consumption is given for, m. */
    private static final double PER_100_KM = 100_000;

    private FuelRange() {}

    /**
     * Distance until the fuel is used up: {@code litres / consumption * 100 km}.
     *
     * @param litres usable fuel aboard, L
     * @param consumption L/100km, above zero
     * @return m; missing where either is
     */
    public static Figure metres(Figure litres, Figure consumption) {
        return litres.dividedBy(consumption).times(PER_100_KM);
    }

    /** Fuel in L for a distance in m: {@link #metres} the other way round. */
    public static Figure litres(Figure metres, Figure consumption) {
        return metres.times(consumption).times(1 / PER_100_KM);
    }

    /** Fuel aboard that the engine burns, L. */
    public static Figure aboard(Loading loading) {
        Choice<Engine.Fuel> burns = loading.plan().vehicle().engine().fuel();
        return !burns.known()
                ? Figure.missing(burns.missing())
                : feeding(loading.plan()).stream()
                        .map(tank -> Liquids.litres(tank, loading.fill(tank)))
                        .reduce(Figure::plus)
                        .orElse(Figure.missing(new Missing("tanks", "a tank with the engine's fuel", "the handbook")));
    }

    /** How far a vehicle gets on the fuel aboard, m; missing where fuel or consumption is. */
    public static Figure of(Loading loading) {
        return metres(aboard(loading), consumption(loading));
    }

    /** How much the engine burns in a loading, L/100km. */
    public static Figure consumption(Loading loading) {
        return consumption(loading.plan(), loading.towing());
    }

    private static Figure consumption(Plan plan, boolean towing) {
        Engine engine = plan.vehicle().engine();
        return towing ? engine.consumptionTowing() : engine.consumption();
    }

    /** The same in the loading that sets out and burns most, as far as that is known; no less than in this one. */
    public static Figure mostConsumption(Loading loading) {
        Plan plan = loading.plan();
        return plan.cases().stream()
                .filter(LoadCase::setsOut)
                .map(each -> consumption(plan, each.towing().is(YesNo.YES)))
                .filter(Figure::known)
                .reduce(consumption(loading), Figure::most);
    }

    /** The tanks whose fuel the engine can burn and is given; none where it is not known what it burns. */
    public static List<Tank> feeding(Plan plan) {
        Engine engine = plan.vehicle().engine();
        return plan.sheet().tanks().stream()
                .filter(tank -> engine.fuel().known()
                        && holds(tank, engine.fuel().value())
                        && !tank.builtIn().feedsEngine().is(YesNo.NO))
                .toList();
    }

    /** Whether it holds what such an engine burns. */
    public static boolean holds(Tank tank, Engine.Fuel fuel) {
        return tank.liquid().is(fuel == Engine.Fuel.DIESEL ? Tank.Liquid.DIESEL : Tank.Liquid.PETROL);
    }
}
