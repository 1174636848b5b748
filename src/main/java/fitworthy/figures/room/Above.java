package fitworthy.figures.room;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.RackLoad;
import fitworthy.figures.plan.RoofLimit;
import fitworthy.figures.plan.RoofLoad;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;

/** What the roof and the racks of a loading leave for more of something up there. */
final class Above {

    private final Loading loading;
    private final RoofLoad roof;
    private final List<RackLoad> racks;

    Above(Loading loading) {
        this.loading = loading;
        this.roof = RoofLoad.of(loading);
        this.racks = RackLoad.of(loading);
    }

    /**
     * What is more than the limits that are known allow is told as a bound, see {@link Most}.
     *
     * @param steps those that hold of it; of some it is not known how much they leave
     * @param bounds what such leave at the most, with all up there that may be
     */
    record Limits(List<Step> steps, List<Step> bounds) {}

    /**
     * @param taken what is taken more of
     * @param in what it stands in or on; empty where nothing
     * @param onRoof whether it is on the roof
     * @param instead the name of the mass of it that is there now and does not count; empty where it is all added
     */
    Limits limits(Taken taken, String in, Choice<YesNo> onRoof, String instead) {
        Limits limits = new Limits(new ArrayList<>(), new ArrayList<>());
        if (!onRoof.is(YesNo.NO)) {
            RoofLoad others = roof.only(name -> !name.equals(instead));
            Figure known = atRest(RoofLimit.onTheWay(loading.plan().sheet()));
            add(
                    limits,
                    Limit.ROOF,
                    taken,
                    onRoof.known() ? known : Figure.missing(onRoof.missing()),
                    offRoad(others),
                    others);
        }
        racks.stream().filter(rack -> rack.takes(in, onRoof)).forEach(rack -> {
            RoofLoad others = rack.beside(in).only(name -> !name.equals(instead));
            add(limits, Limit.RACK, taken, rack.most(), Figure.ZERO, others);
        });
        return limits;
    }

    private Figure atRest(Figure onTheWay) {
        return RoofLimit.atRest(loading)
                .map(rest -> onTheWay.least(rest.left()))
                .orElse(onTheWay);
    }

    /** Of more than is up there it is asked for wherever the trip leaves the seal, unless the roof is overloaded as it is. */
    private Figure offRoad(RoofLoad others) {
        Sheet sheet = loading.plan().sheet();
        return RoofLimit.lacksOffRoad(sheet) && !others.sum().isAbove(RoofLimit.onTheWay(sheet))
                ? loading.plan().ratings().roofOffRoad()
                : Figure.ZERO;
    }

    /** What something stands in or on: the rack that bears it, whatever else the sheet says. @param name of its mass */
    String under(String name, String in) {
        return racks.stream()
                .filter(rack -> rack.bears(name))
                .map(RackLoad::rack)
                .findFirst()
                .orElse(in);
    }

    /** @param asked what else has to be known @param others what is up there, or may be */
    private static void add(Limits limits, Limit limit, Taken taken, Figure rated, Figure asked, RoofLoad others) {
        Figure load = others.sum();
        Figure most = rated.missingWith(asked, rated);
        for (Choice<YesNo> other : others.told()) {
            most = other.known() ? most : most.missingWith(Figure.missing(other.missing()), most);
        }
        Step step = step(limit, taken, most, load);
        limits.steps.add(step);
        Step bound = step(limit, taken, rated, load);
        if (!step.known() && bound.known()) {
            limits.bounds.add(bound);
        }
    }

    private static Step step(Limit limit, Taken taken, Figure most, Figure load) {
        Figure left = most.minus(load);
        List<Working.Input> inputs = new ArrayList<>(List.of(in("limit", most, "kg"), in("load", load, "kg")));
        inputs.addAll(taken.inputs());
        return new Step(
                limit,
                left,
                taken.weighs(),
                units -> Math.hypot(left.tolerance(), units * taken.weighs().tolerance()),
                new Working.Formula(
                        taken.toUnits().isEmpty()
                                ? "left = limit - load"
                                : taken.result() + " = (limit - load)" + taken.toUnits(),
                        inputs));
    }
}
