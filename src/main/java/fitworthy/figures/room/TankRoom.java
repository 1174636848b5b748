package fitworthy.figures.room;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.FuelRange;
import fitworthy.figures.plan.Liquids;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.OnRoof;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Tank;
import java.util.ArrayList;
import java.util.List;

/**
 * How full a tank may be with all else as planned, and how far the fuel then goes.
 *
 * @param tank the tank
 * @param planned what is planned in it, L
 * @param most how much may be in it, L
 * @param feeds whether the engine burns what is in it
 */
public record TankRoom(Tank tank, Figure planned, Most most, boolean feeds) {

    /** Of each tank that is on and is filled. */
    static List<TankRoom> of(Loading loading) {
        List<Tank> feeding = FuelRange.feeding(loading.plan());
        Above above = new Above(loading);
        return loading.plan().sheet().tanks().stream()
                .filter(tank -> loading.carries(tank) && !loading.isReplaced(tank))
                .map(tank -> of(loading, above, tank, feeding.contains(tank)))
                .toList();
    }

    private static TankRoom of(Loading loading, Above above, Tank tank, boolean feeds) {
        String filled = Liquids.name(tank);
        Carrier carrier = Carrier.of(loading, filled);
        Figure density = Liquids.densityOf(tank);
        Taken more = new Taken(
                "most",
                Sort.LIQUID,
                loading.plan().places().of(tank),
                density,
                " / density",
                List.of(in("density", density, "kg/L")));
        List<Step> steps = new ArrayList<>(carrier.steps(more));
        Above.Limits up = above.limits(
                more,
                above.under(filled, tank.in()),
                OnRoof.of(tank, loading.plan().sheet()),
                filled);
        steps.addAll(up.steps());
        steps.add(Step.plain(
                Limit.FULL,
                tank.capacity(),
                new Working.Formula("most = capacity", List.of(in("capacity", tank.capacity(), "L")))));
        return new TankRoom(tank, Liquids.litres(tank, loading.fill(tank)), Most.of(steps, up.bounds()), feeds);
    }

    /** How much may be in it, L; none where a limit is passed even so. */
    public Figure litres() {
        return litres(most.figure());
    }

    /** The same as far as the limits are known. */
    public Figure atMost() {
        return litres(most.atMost());
    }

    private Figure litres(Figure figure) {
        return most.isOver() && figure.known() ? Figure.of(0, 0) : figure;
    }

    /** The same in whole litres, as somebody fills in who is told. */
    Figure wholeLitres() {
        Figure litres = litres();
        return litres.known() ? Figure.of(Math.floor(Figure.rounded(litres.value())), litres.tolerance()) : litres;
    }

    /** Fuel for the engine with this tank so full in whole litres and the others as planned, L. */
    Figure fuel(Loading loading) {
        return FuelRange.aboard(loading).minus(planned).plus(wholeLitres());
    }
}
