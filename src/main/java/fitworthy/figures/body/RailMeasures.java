package fitworthy.figures.body;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Rails;
import java.util.ArrayList;
import java.util.List;

/** How much the chassis rails are bent at the place that the sheet names, standing still, and what they bear. */
final class RailMeasures implements Topic {
    private static final String SUBJECT = "chassis rails";

    private static final MeasureKind MOMENT =
            number("body.rail-moment", "Nm", 0, "moment that bends them").byLoading();
    private static final MeasureKind RESERVE = number(
                    "body.rail-reserve", "", 2, "how many times the load they bear before they yield")
            .byLoading();
    private static final MeasureKind STEEL = number(
                    "body.rail-steel-needed", "MPa", 0, "yield stress that their steel needs")
            .byLoading();

    @Override
    public List<MeasureKind> kinds() {
        return List.of(RESERVE, MOMENT, STEEL);
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        loading.plan().vehicle().rails().ifPresent(rails -> bent(loading, rails, measures));
    }

    private static void bent(Loading loading, Rails rails, List<Measure> measures) {
        Plan plan = loading.plan();
        List<Working.Input> parts = parts(loading, rails);
        Figure sum = Working.total(parts);
        Figure moment = Derived.of(v -> Math.abs(v[0]), sum);
        measures.add(Measure.of(MOMENT, SUBJECT, moment)
                .worked("moment = |sum|", in("sum", sum, "Nm"))
                .worked(new Working.Sum("sum", parts)));
        boolean box = rails.shape().is(Rails.Shape.BOX);
        Figure hollow = rails.shape().known()
                ? rails.width().minus(rails.wall().times(box ? 2 : 1))
                : Figure.missing(rails.shape().missing());
        Figure modulus = RailBending.modulus(rails.depth(), rails.width(), hollow, rails.wall());
        Figure reserve = modulus.times(rails.yield()).times(2).dividedBy(moment);
        measures.add(Measure.of(RESERVE, SUBJECT, reserve)
                .worked(
                        "reserve = 2 x yield x modulus / moment / 1000",
                        in("yield", rails.yield(), "MPa"),
                        in("modulus", modulus.times(1e9), ""),
                        in("moment", moment, "Nm"))
                .worked(
                        "modulus = (width x depth^3 - hollow x (depth - 2 x wall)^3) / (6 x depth)",
                        in("width", rails.width(), "mm"),
                        in("depth", rails.depth(), "mm"),
                        in("hollow", hollow, "mm"),
                        in("wall", rails.wall(), "mm")));
        Figure least = plan.practice(PracticeId.BODY_RAIL_RESERVE_LEAST);
        measures.add(Measure.enough(STEEL, SUBJECT, rails.yield().times(least).dividedBy(reserve))
                .worked(
                        "needed = yield x least / reserve",
                        in("yield", rails.yield(), "MPa"),
                        in("least", least, ""),
                        in("reserve", reserve, "")));
    }

    /** What each mass does; the vehicle itself by what of it is behind the place. */
    private static List<Working.Input> parts(Loading loading, Rails rails) {
        Figure wheelbase = loading.plan().wheelbase();
        List<Working.Input> parts = new ArrayList<>();
        Figure rear = Figure.of(0, 0);
        for (PointMass mass : loading.masses()) {
            // The axles as weighed; fuel and driver counted in them are taken out where they are.
            if (mass.sort() == PointMass.Sort.VEHICLE && mass.mass().value() > 0) {
                rear = rear.plus(mass.mass().minus(mass.onFront(wheelbase)));
            } else {
                parts.add(in(mass.name(), RailBending.of(mass, rails.at(), wheelbase), "Nm"));
            }
        }
        parts.add(in(
                "the vehicle itself",
                RailBending.own(rear, rails.behind(), rails.middle(), rails.at(), wheelbase),
                "Nm"));
        return parts;
    }
}
