package fitworthy.figures.room;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Coupling;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.TowingDetails.CouplingPlate;
import fitworthy.sheet.Trailer;
import java.util.ArrayList;
import java.util.List;

/**
 * What the plates of tow bar and trailer coupling allow. D, Dc and V values go by the greatest masses: the heaviest trailer
 * is then one whose plate says no more either.
 *
 * @param ball load on the ball, kg
 * @param share the same as a share of the trailer's mass
 */
record PlateLimits(Plan plan, Trailer trailer, Figure ball, Figure share) {

    /** The limits of one plate. */
    record Names(Limit mass, Limit d, Limit dc, Limit v) {}

    static final Names TOW_BAR = new Names(Limit.TOW_BAR_PLATE, Limit.TOW_BAR_D, Limit.TOW_BAR_DC, Limit.TOW_BAR_V);
    static final Names TRAILER = new Names(
            Limit.TRAILER_COUPLING, Limit.TRAILER_COUPLING_D, Limit.TRAILER_COUPLING_DC, Limit.TRAILER_COUPLING_V);

    /** Adds those that the book holds this plate against. */
    void add(Names names, CouplingPlate plate, List<Step> steps) {
        if (Coupling.asksMass(plate)) {
            steps.add(Step.stated(names.mass, plate.trailer()));
        }
        if (Coupling.asksD(plate, plan, trailer)) {
            steps.add(d(names.d, plate.d()));
        }
        if (Coupling.forCentreAxles(plate)) {
            steps.add(onAxles(
                    names.dc,
                    Coupling.heaviest(plan.ratings().gvm(), plate.dc()),
                    "axles = 1000 x D x T / (9.81 x T - D)",
                    in("D", plate.dc(), "kN"),
                    in("T", plan.ratings().gvm(), "t")));
            steps.add(v(names.v, plate.v()));
        }
    }

    private Step d(Limit limit, Figure force) {
        Figure vehicle = plan.ratings().gvm();
        List<Working.Input> inputs = new ArrayList<>(List.of(in("D", force, "kN"), in("T", vehicle, "t")));
        if (!trailer.onFifthWheel()) {
            return Step.plain(
                    limit,
                    Coupling.heaviest(vehicle, force),
                    new Working.Formula("heaviest = 1000 x D x T / (9.81 x T - D)", inputs));
        }
        inputs.add(in("ball", ball, "kg"));
        inputs.add(in("trailer", trailer.mass(), "kg"));
        return Step.plain(
                limit,
                Coupling.heaviestOnFifthWheel(vehicle, share, force),
                new Working.Formula("heaviest = 1000 x D x T / (0.6 x 9.81 x T - D x (1 - ball / trailer))", inputs));
    }

    private Step v(Limit limit, Figure force) {
        Choice<YesNo> air = plan.vehicle().rearAirSprings();
        Figure body = trailer.length().minus(trailer.drawbar());
        Figure most = Coupling.heaviestOnAxles(force, body, trailer.axle(), air.is(YesNo.YES));
        return onAxles(
                limit,
                air.known() ? most : Figure.missing(air.missing()),
                "axles = 1000 x V / (a x max(1, X^2 / l^2))",
                in("V", force, "kN"),
                in("a", Figure.of(air.is(YesNo.YES) ? 1.8 : 2.4), ""),
                in("X", body, "m"),
                in("l", trailer.axle(), "m"));
    }

    /** Where what may be on the trailer's axles is known. */
    private Step onAxles(Limit limit, Figure axles, String formula, Working.Input... inputs) {
        return Step.onAxles(
                limit, axles, in("ball", ball, "kg"), trailer.mass(), new Working.Formula(formula, List.of(inputs)));
    }
}
