package fitworthy.figures.body;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.MassWorkings;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.figures.plan.WheelbaseStretch;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Rails;
import java.util.ArrayList;
import java.util.List;

/** How much the chassis rails are bent at the place that the sheet names, standing still, and what they bear. */
final class RailMeasures implements Topic {
    private static final String SUBJECT = "chassis rails";
    /** In a cubic metre. */
    private static final double MM3 = 1e9;

    private static final MeasureKind MOMENT =
            number("body.rail-moment", "Nm", 0, "moment that bends them").byLoading();
    private static final MeasureKind RESERVE = number(
                    "body.rail-reserve", "", 2, "how many times the load they bear before they yield")
            .byLoading();
    private static final MeasureKind STRESS = rated(
                    "body.rail-stress", "MPa", 1, "stress in them at rest", "stress at which their steel yields")
            .byLoading();
    private static final MeasureKind STEEL = number(
                    "body.rail-steel-needed", "MPa", 0, "yield stress that their steel needs")
            .byLoading();
    private static final MeasureKind MODULUS = number(
                    "body.rail-modulus-needed", "mm3", 0, "section modulus that one rail of their steel needs")
            .byLoading();

    @Override
    public List<MeasureKind> kinds() {
        return List.of(RESERVE, MOMENT, STRESS, STEEL, MODULUS);
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        loading.plan().vehicle().rails().ifPresent(rails -> bent(loading, rails, measures));
    }

    private static void bent(Loading loading, Rails rails, List<Measure> measures) {
        Plan plan = loading.plan();
        Moment bending = Moment.of(loading, rails);
        Figure moment = bending.most();
        measures.add(Measure.of(MOMENT, SUBJECT, moment).worked(bending.workings()));
        boolean box = rails.shape().is(Rails.Shape.BOX);
        Figure hollow = rails.shape().known()
                ? rails.width().minus(rails.wall().times(box ? 2 : 1))
                : Figure.missing(rails.shape().missing());
        Figure modulus = RailBending.modulus(rails.depth(), rails.width(), hollow, rails.wall());
        Working section = new Working.Formula(
                "modulus = (width x depth^3 - hollow x (depth - 2 x wall)^3) / (6 x depth)",
                List.of(
                        in("width", rails.width(), "mm"),
                        in("depth", rails.depth(), "mm"),
                        in("hollow", hollow, "mm"),
                        in("wall", rails.wall(), "mm")));
        Working.Input one = in("modulus", modulus.times(MM3), "mm3");
        Figure bears = modulus.times(rails.yield()).times(2);
        Figure least = plan.practice(PracticeId.BODY_RAIL_RESERVE_LEAST);
        Figure reserve = bears.dividedBy(bending.against(bears.dividedBy(least)));
        measures.add(Measure.of(RESERVE, SUBJECT, reserve)
                .worked(
                        "reserve = 2 x yield x modulus / moment / 1000",
                        in("yield", rails.yield(), "MPa"),
                        one,
                        in("moment", moment, "Nm"))
                .worked(section));
        measures.add(Measure.of(STRESS, SUBJECT, bending.against(bears).dividedBy(modulus.times(2)), rails.yield())
                .worked("stress = moment x 1000 / (2 x modulus)", in("moment", moment, "Nm"), one)
                .worked(section));
        measures.add(Measure.enough(STEEL, SUBJECT, moment.times(least).dividedBy(modulus.times(2)))
                .worked(
                        "needed = least x moment x 1000 / (2 x modulus)",
                        in("least", least, ""),
                        in("moment", moment, "Nm"),
                        one));
        measures.add(Measure.enough(
                        MODULUS,
                        SUBJECT,
                        moment.times(least).dividedBy(rails.yield().times(2)).times(MM3))
                .worked(
                        "needed = least x moment x 1000 / (2 x yield)",
                        in("least", least, ""),
                        in("moment", moment, "Nm"),
                        in("yield", rails.yield(), "MPa")));
    }

    /**
     * What bends the rails, in Nm; sagging is above zero.
     *
     * @param most either way
     * @param within how much more or less it may be for want of what is behind a cut
     */
    private record Moment(WheelbaseStretch stretch, Figure most, Figure within, Working... workings) {

        /** It, as it is held against what the rails bear. */
        Figure against(Figure bears) {
            return stretch.settled(most, within, bears);
        }

        /** The vehicle itself is known by its axles and by what of it is behind the place, all else part by part. */
        static Moment of(Loading loading, Rails rails) {
            Plan plan = loading.plan();
            Figure wheelbase = plan.wheelbase();
            List<PointMass> parts = new ArrayList<>();
            List<Working.Input> onRear = new ArrayList<>();
            for (PointMass mass : loading.masses()) {
                // The axles as weighed; fuel and driver counted in them are taken out where they are.
                if (mass.sort() == PointMass.Sort.VEHICLE && mass.mass().value() > 0) {
                    onRear.add(in(mass.name(), mass.onRear(wheelbase), "kg"));
                } else {
                    parts.add(mass);
                }
            }
            Figure place = rails.at();
            Figure behind = plan.stretch().behind(rails);
            Figure rear = Working.total(onRear);
            Figure own = RailBending.own(rear, behind, rails.middle(), place, wheelbase);
            Figure others = parts.stream()
                    .map(mass -> RailBending.of(mass, place, wheelbase))
                    .reduce(Figure.of(0, 0), Figure::plus);
            Figure sum = own.plus(others);
            Working.Input at = in("place", place, "mm");
            Working.Input between = in("wheelbase", wheelbase, "mm");
            return new Moment(
                    plan.stretch(),
                    sum.known() ? Figure.of(Math.abs(sum.value()), sum.tolerance()) : sum,
                    RailBending.ofRear(place, wheelbase).times(plan.stretch().unsettled()),
                    new Working.Formula(
                            "moment = |own + others|", List.of(in("own", own, "Nm"), in("others", others, "Nm"))),
                    () -> sense(sum),
                    new Working.Formula(
                            "own = 9.81 x (rear x max(0, wheelbase - place) - behind x (middle - place)) / 1000",
                            List.of(
                                    in("rear", rear, "kg"),
                                    between,
                                    at,
                                    in("behind", behind, "kg"),
                                    in("middle", rails.middle(), "mm"))),
                    new Working.Sum("rear", onRear),
                    MassWorkings.moments(
                            parts,
                            new Working.Formula(
                                            "others = moment, of the sums of moment = 9.81 x mass x (at x max(0, wheelbase"
                                                    + " - place) / wheelbase - max(0, at - place)) / 1000",
                                            List.of(at, between))
                                    .lines()
                                    .get(0),
                            mass -> mass.at().x(),
                            mass -> RailBending.of(mass, place, wheelbase),
                            "Nm"));
        }

        private static List<String> sense(Figure sum) {
            return !sum.known()
                    ? List.of()
                    : List.of(
                            sum.value() < 0
                                    ? "the sum is below zero: the rails hog, pulled at the top, as over the rear axle"
                                    : "the sum is above zero: the rails sag, pulled at the bottom, as between the axles");
        }
    }
}
