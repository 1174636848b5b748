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
     * @param taken what is taken more of
     * @param in what it stands in or on; empty where nothing
     * @param onRoof whether it is on the roof
     * @param instead the name of the mass of it that is there now and does not count; empty where it is all added
     */
    List<Step> steps(Taken taken, String in, Choice<YesNo> onRoof, String instead) {
        List<Step> steps = new ArrayList<>();
        if (!onRoof.is(YesNo.NO)) {
            RoofLoad others = roof.only(name -> !name.equals(instead));
            Figure onTheWay = RoofLimit.of(loading, others.sum()).most();
            Figure limit = RoofLimit.atRest(loading)
                    .map(rest -> onTheWay.least(rest.left()))
                    .orElse(onTheWay);
            Figure told = onRoof.known() ? limit : Figure.missing(onRoof.missing());
            steps.add(step(Limit.ROOF, taken, told, others));
        }
        racks.stream()
                .filter(rack -> rack.takes(in, onRoof))
                .map(rack ->
                        step(Limit.RACK, taken, rack.most(), rack.beside(in).only(name -> !name.equals(instead))))
                .forEach(steps::add);
        return steps;
    }

    /** What something stands in or on: the rack that bears it, whatever else the sheet says. @param name of its mass */
    String under(String name, String in) {
        return racks.stream()
                .filter(rack -> rack.bears(name))
                .map(RackLoad::rack)
                .findFirst()
                .orElse(in);
    }

    /** @param others what is up there; where it is not known whether it is, nor is what is left */
    private static Step step(Limit limit, Taken taken, Figure rated, RoofLoad others) {
        Figure load = others.sum();
        Figure most = rated;
        for (Choice<YesNo> other : others.told()) {
            most = other.known() ? most : most.missingWith(Figure.missing(other.missing()), most);
        }
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
