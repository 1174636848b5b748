package fitworthy.figures;

import static fitworthy.figures.MeasureKind.number;
import static fitworthy.figures.MeasureKind.rated;

import fitworthy.figures.PointMass.Sort;
import fitworthy.sheet.Details;
import fitworthy.sheet.Figure;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.Tank;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Vehicle;
import fitworthy.sheet.YesNo;
import fitworthy.source.Words;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What follows only from parts and topics taken together. */
final class AcrossMeasures implements Topic {

    private static final MeasureKind OVERLAP = number("across.overlap", "mm", 0,
            "how deep the spaces of two parts reach into each other");
    private static final MeasureKind TWINS = number("across.twins", "", 0, "parts for one and the same job");
    private static final MeasureKind FULL_TANKS = rated("across.full-tanks", "kg", 0,
            "load once every added tank is full", "limit");
    private static final MeasureKind ADDED_LIQUID = number("across.added-liquid", "kg", 0, "what the added tanks hold");
    private static final MeasureKind KIT_USE = rated("across.kit-use", "kg", 0, "GVM as made",
            "what the GCM leaves for the vehicle with this trailer");
    private static final MeasureKind BAR_LOAD = number("across.bar-load", "kg", 0, "load of the bar on the front axle");
    private static final MeasureKind APPROVALS = number("across.approval-parts", "", 0,
            "kinds of planned part that an engineer may have to certify");

    /** One of each is enough; where two are planned the figures go by the first. */
    private static final Set<Kind> ONE_IS_ENOUGH = Set.of(Kind.BRAKE_CONTROLLER, Kind.FUEL_SEPARATOR,
            Kind.CRANKCASE_SEPARATOR, Kind.SWITCH_PANEL, Kind.SNORKEL, Kind.AIRBOX, Kind.TOW_BAR, Kind.RATING_UPGRADE,
            Kind.TYRES, Kind.WHEELS, Kind.MIRRORS, Kind.BAR);
    private static final Set<Kind> CERTIFIED = Set.of(Kind.CHASSIS_EXTENSION, Kind.RATING_UPGRADE, Kind.SPRINGS,
            Kind.BODY_LIFT, Kind.TYRES, Kind.SEAT_CHANGE);

    @Override
    public List<MeasureKind> kinds() {
        return List.of(OVERLAP, TWINS, FULL_TANKS, ADDED_LIQUID, KIT_USE, BAR_LOAD, APPROVALS);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        twins(plan, measures);
        long approvals = plan.sheet().fitments().stream().map(Fitment::kind).filter(CERTIFIED::contains).distinct().count()
                + (added(plan).stream().anyMatch(tank -> !tank.liquid().is(Tank.Liquid.WATER)) ? 1 : 0);
        if (approvals > 0) {
            measures.add(Measure.of(APPROVALS, "certificates", "", Figure.of(approvals, 0)));
        }
        Optional<Trailer> trailer = plan.sheet().trailer();
        if (trailer.isPresent() && plan.details(Details.RatingUpgrade.class).stream().anyMatch(kit -> kit.gvm().known())) {
            measures.add(Measure.of(KIT_USE, "rating kit", "", plan.vehicle().ratings().gvm(),
                    plan.ratings().gcm().minus(trailer.get().mass())));
        }
    }

    /** How many there are of every kind planned more than once, or that there is none such. */
    private static void twins(Plan plan, List<Measure> measures) {
        Map<Kind, Integer> counts = new EnumMap<>(Kind.class);
        plan.sheet().fitments().stream().map(Fitment::kind).filter(ONE_IS_ENOUGH::contains)
                .forEach(kind -> counts.merge(kind, 1, Integer::sum));
        if (plan.vehicle().brakeController().is(YesNo.YES)) {
            counts.computeIfPresent(Kind.BRAKE_CONTROLLER, (kind, count) -> count + 1);
        }
        boolean single = counts.values().stream().allMatch(count -> count == 1);
        if (single && !counts.isEmpty()) {
            measures.add(Measure.of(TWINS, "parts", "", Figure.of(1, 0)));
        }
        counts.forEach((kind, count) -> {
            if (count > 1) {
                measures.add(Measure.of(TWINS, words(kind), "", Figure.of(count, 0)));
            }
        });
    }

    private static String words(Kind kind) {
        return Words.hyphenated(kind.name()).replace('-', ' ');
    }

    private static List<Tank> added(Plan plan) {
        return plan.sheet().tanks().stream().filter(tank -> tank.stock().is(YesNo.NO)).toList();
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        Plan plan = loading.plan();
        String loadCase = loading.loadCase().name();
        overlaps(loading, measures);
        tanks(loading, added(plan), measures);
        plan.fitments(Kind.BAR).stream().filter(loading::carries).forEach(bar -> loading.masses().stream()
                .filter(each -> each.sort() == Sort.FITMENT && each.name().equals(bar.name()))
                .forEach(mass -> measures.add(Measure.of(BAR_LOAD, bar.name(), loadCase, mass.onFront(plan.wheelbase())))));
    }

    private static void overlaps(Loading loading, List<Measure> measures) {
        String loadCase = loading.loadCase().name();
        List<Fitment> placed = loading.plan().sheet().fitments().stream()
                .filter(each -> each.space().isPresent() && loading.carries(each)).toList();
        int before = measures.size();
        for (int i = 0; i < placed.size(); i++) {
            for (Fitment other : placed.subList(i + 1, placed.size())) {
                Figure overlap = Boxes.overlap(placed.get(i).space().get(), other.space().get());
                if (overlap.value() != 0) {
                    measures.add(Measure.of(OVERLAP, placed.get(i).name() + " and " + other.name(), loadCase, overlap));
                }
            }
        }
        if (placed.size() > 1 && measures.size() == before) {
            measures.add(Measure.of(OVERLAP, "parts with a given space", loadCase, Figure.of(0, 0)));
        }
    }

    private static void tanks(Loading loading, List<Tank> added, List<Measure> measures) {
        if (added.isEmpty()) {
            return;
        }
        Plan plan = loading.plan();
        String loadCase = loading.loadCase().name();
        Figure held = Figure.of(0, 0);
        AxleLoads now = loading.axles();
        Figure total = now.total();
        Figure front = now.front();
        Figure rear = now.rear();
        for (Tank tank : added) {
            Figure fill = loading.fill(tank);
            held = held.plus(Liquids.mass(tank, fill));
            Figure more = Liquids.mass(tank, Figure.of(1, 0).minus(fill));
            Figure onRear = more.times(tank.at().x().dividedBy(plan.wheelbase()));
            total = total.plus(more);
            front = front.plus(more.minus(onRear));
            rear = rear.plus(onRear);
        }
        measures.add(Measure.of(ADDED_LIQUID, "added tanks", loadCase, held));
        // Nobody sets out from the weighbridge, and what is overloaded already is a matter of its own.
        if (loading.loadCase().weighed().isEmpty()) {
            Vehicle.Ratings ratings = plan.ratings();
            full(measures, "vehicle", loadCase, now.total(), total, ratings.gvm());
            full(measures, "front axle", loadCase, now.front(), front, ratings.frontAxle());
            full(measures, "rear axle", loadCase, now.rear(), rear, ratings.rearAxle());
        }
    }

    private static void full(List<Measure> measures, String subject, String loadCase, Figure now, Figure full, Figure limit) {
        if (!(now.value() > limit.value())) {
            measures.add(Measure.of(FULL_TANKS, subject, loadCase, full, limit));
        }
    }
}
