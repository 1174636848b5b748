package fitworthy.figures.across;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Liquids;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.figures.plan.UsedUp;
import fitworthy.figures.plan.WheelbaseStretch;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Tank;
import fitworthy.sheet.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** What the axles carry as tanks are filled and used up on the way. */
final class TankLoads {

    private static final MeasureKind FULL_TANKS = rated("across.full-tanks", "kg", 0, "load", "limit")
            .in("once every added tank is full")
            .byLoading();
    private static final MeasureKind USED_TANKS = rated("across.used-tanks", "kg", 0, "load", "limit")
            .onTheWay("once the tanks beyond the other axle are used up")
            .byLoading();
    private static final MeasureKind ADDED_LIQUID =
            number("across.added-liquid", "kg", 0, "what the added tanks hold").byLoading();

    static final List<MeasureKind> KINDS = List.of(FULL_TANKS, USED_TANKS, ADDED_LIQUID);

    private TankLoads() {}

    static void loading(Loading loading, List<Measure> measures) {
        List<Tank> added = loading.plan().sheet().tanks().stream()
                .filter(tank -> Alterations.added(tank) && loading.carries(tank))
                .toList();
        if (!added.isEmpty()) {
            filled(loading, added, measures);
        }
        usedUp(loading, measures);
    }

    private static void filled(Loading loading, List<Tank> added, List<Measure> measures) {
        Plan plan = loading.plan();
        List<Working.Input> held = new ArrayList<>();
        List<PointMass> more = new ArrayList<>();
        for (Tank tank : added) {
            Figure fill = loading.fill(tank);
            held.add(in(tank.name(), Liquids.mass(tank, fill), "kg"));
            more.add(new PointMass(
                    tank.name(),
                    Sort.LIQUID,
                    Liquids.mass(tank, Figure.of(1, 0).minus(fill)),
                    plan.places().of(tank),
                    false));
        }
        measures.add(
                Measure.of(ADDED_LIQUID, "added tanks", Working.total(held)).worked(new Working.Sum("liquid", held)));
        // Nobody sets out from the weighbridge, and what is overloaded already is a matter of its own.
        if (loading.loadCase().weighed().isEmpty()) {
            Figure wheelbase = plan.wheelbase();
            Vehicle.Ratings ratings = plan.ratings();
            AxleLoads now = loading.axles();
            // What is in a tank already is out of its place by as much as what is filled in.
            List<PointMass> filled =
                    Stream.concat(loading.masses().stream(), more.stream()).toList();
            AxleLoads full = AxleLoads.of(filled, wheelbase);
            WheelbaseStretch stretch = plan.stretch();
            full(measures, "vehicle", now.total(), full.total(), ratings.gvm(), more, PointMass::mass);
            full(
                    measures,
                    "front axle",
                    stretch.against(Levelling.front(loading), ratings.frontAxle()),
                    stretch.against(Levelling.front(plan, filled), ratings.frontAxle()),
                    ratings.frontAxle(),
                    more,
                    mass -> mass.onFront(wheelbase));
            full(
                    measures,
                    "rear axle",
                    stretch.against(now.rear(), ratings.rearAxle()),
                    stretch.against(full.rear(), ratings.rearAxle()),
                    ratings.rearAxle(),
                    more,
                    mass -> mass.mass().minus(mass.onFront(wheelbase)));
        }
    }

    private static void full(
            List<Measure> measures,
            String subject,
            Figure now,
            Figure full,
            Figure limit,
            List<PointMass> more,
            Function<PointMass, Figure> share) {
        if (!now.isAbove(limit)) {
            List<Working.Input> parts = Stream.concat(
                            Stream.of(in("as planned", now, "kg")),
                            more.stream().map(mass -> in("filling " + mass.name(), share.apply(mass), "kg")))
                    .toList();
            measures.add(Measure.of(FULL_TANKS, subject, full, limit).worked(new Working.Sum("load", parts)));
        }
    }

    /** What is used up beyond one axle no longer lifts the other; what is used up between them only makes both lighter. */
    private static void usedUp(Loading loading, List<Measure> measures) {
        Plan plan = loading.plan();
        Figure wheelbase = plan.wheelbase();
        UsedUp.nothingBehind(loading)
                .ifPresent(state -> used(
                        plan,
                        "front axle",
                        Levelling.front(loading),
                        state.front(plan),
                        plan.ratings().frontAxle(),
                        mass -> mass.onFront(wheelbase),
                        state,
                        measures));
        UsedUp.nothingAhead(loading)
                .ifPresent(state -> used(
                        plan,
                        "rear axle",
                        loading.axles().rear(),
                        AxleLoads.of(state.masses(), wheelbase).rear(),
                        plan.ratings().rearAxle(),
                        mass -> mass.onRear(wheelbase),
                        state,
                        measures));
    }

    /** What is overloaded already is a matter of its own. @param now as planned, kg @param then in that state, kg */
    private static void used(
            Plan plan,
            String axle,
            Figure now,
            Figure then,
            Figure limit,
            Function<PointMass, Figure> share,
            UsedUp state,
            List<Measure> measures) {
        WheelbaseStretch stretch = plan.stretch();
        Figure planned = stretch.against(now, limit);
        if (!planned.isAbove(limit)) {
            Figure used = stretch.against(then, limit);
            measures.add(Measure.of(USED_TANKS, axle, used, limit).worked(state.working(planned, used, share)));
        }
    }
}
