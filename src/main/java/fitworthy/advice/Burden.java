package fitworthy.advice;

import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.figures.mass.EmptiedMeasures;
import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.mass.RackMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.BallLimits;
import fitworthy.figures.plan.FrontLift;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.figures.plan.RackLoad;
import fitworthy.figures.plan.RoofLimit;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Plausible;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Removed;
import fitworthy.sheet.Sheet;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which planned parts bear a good share of what is too much for a limit of the vehicle, and what takes most off it. */
public final class Burden {

    /** A part bears a good share where it puts this share or more of what is too much on the limit; see docs/method.md. */
    private static final double GOOD_SHARE = 0.1;

    /** What puts less than this share of a load on a limit that nobody knows settles nothing there; see docs/method.md. */
    private static final double SMALL_SHARE = 0.01;

    /** kg that count as none. */
    private static final double NOTHING = 1e-6;

    /** kg that settle something where nobody knows how much is too much. */
    private static final double ENOUGH = 1;

    private static final Set<MeasureKind> ROOFS = Set.of(LoadMeasures.ROOF, LoadMeasures.ROOF_AT_REST);
    private static final String FRONT_AXLE = "front axle";
    private static final String REAR_AXLE = "rear axle";
    private static final String VEHICLE = "vehicle";

    private final Map<String, Loading> loadings;

    Burden(List<Loading> loadings) {
        this.loadings = loadings.stream()
                .collect(Collectors.toMap(loading -> loading.loadCase().name(), Function.identity()));
    }

    /**
     * The parts and tanks, what is in them counted, that bear such a share in one of the loadings; all that weigh something
     * where nothing says how much is too much.
     */
    Set<String> parts(Group<Finding> finding) {
        Set<String> parts = new LinkedHashSet<>();
        finding.outcomes()
                .forEach(outcome -> parts.addAll(parts(
                        outcome.judged().measure(),
                        outcome.judged().loadCase(),
                        outcome.comparison()
                                .map(comparison -> GOOD_SHARE * tooMuch(comparison))
                                .orElse(NOTHING))));
        return parts;
    }

    /** The same of a limit that is passed until a kit is approved. */
    Set<String> parts(UntilApproved.Left passed) {
        return parts(passed.measure(), passed.loading(), GOOD_SHARE * tooMuch(passed.compared()));
    }

    /**
     * How much lighter than a planned part another in its place has to be, kg, where the limit is surely passed by the part
     * with nothing else aboard that could be left out: the vehicle, its people, what is done already and what the part stands
     * on. Without those that do not pass it, and without all where these pass the limit by themselves.
     */
    Map<String, Double> tooHeavy(Collection<String> parts, Group<Finding> finding) {
        Map<String, Double> tooHeavy = new HashMap<>();
        finding.outcomes().stream()
                .filter(outcome -> outcome.judged().measure().kind().unit().equals("kg"))
                .forEach(outcome -> outcome.comparison()
                        .ifPresent(comparison -> loadings(outcome.judged().loadCase())
                                .forEach(loading -> Alone.on(outcome.judged().measure(), loading)
                                        .tooHeavy(parts, comparison)
                                        .forEach((part, by) -> tooHeavy.merge(part, by, Math::max)))));
        return tooHeavy;
    }

    /**
     * What a limit carries with all left out that can be.
     *
     * @param left what that is
     * @param base what stays whatever part is looked at, and all that takes off the limit, kg
     * @param others by name what else puts load on it, kg
     * @param own by part or tank what it puts on it itself and what it weighs, kg
     */
    private record Alone(LeftAboard left, Figure base, Map<String, Figure> others, Map<String, Own> own) {

        private record Own(double share, double mass) {
            Own plus(Own other) {
                return new Own(share + other.share, mass + other.mass);
            }
        }

        static Alone on(Measure measure, Loading loading) {
            LeftAboard left = LeftAboard.of(loading.plan().sheet());
            List<RackLoad> racks = racks(loading, measure);
            // Who sleeps up there is no load on the way, and stays when all else is left out.
            Figure base = measure.kind() == LoadMeasures.ROOF_AT_REST
                    ? RoofLimit.atRest(loading).map(RoofLimit.AtRest::asleep).orElse(Figure.ZERO)
                    : Figure.ZERO;
            Map<String, Figure> others = new HashMap<>();
            Map<String, Own> own = new HashMap<>();
            for (PointMass each : loading.masses()) {
                Figure share = Burden.on(each, loading, measure, racks);
                if (!share.known()) {
                    continue;
                }
                if (left.keeps(each) || share.value() < 0) {
                    base = base.plus(share);
                } else if (each.sort() != Sort.LIQUID && each.sort() != Sort.BALL) {
                    others.merge(each.name(), share, Figure::plus);
                }
                if (each.sort() == Sort.FITMENT || each.sort() == Sort.TANK) {
                    own.merge(each.name(), new Own(share.value(), each.mass().value()), Own::plus);
                }
            }
            return new Alone(left, base, others, own);
        }

        Map<String, Double> tooHeavy(Collection<String> parts, Comparison comparison) {
            Figure limit = Figure.of(comparison.limit(), comparison.limitTolerance());
            Map<String, Double> tooHeavy = new HashMap<>();
            for (String part : parts) {
                Own its = own.getOrDefault(part, new Own(0, 0));
                Figure over = left.with(part).stream()
                        .map(name -> others.getOrDefault(name, Figure.ZERO))
                        .reduce(base, Figure::plus)
                        .minus(limit);
                if (Figure.rounded(over.value()) > over.tolerance() && over.value() < its.share) {
                    tooHeavy.put(part, over.value() * its.mass / its.share);
                }
            }
            return tooHeavy;
        }
    }

    /** Those that put a hundredth of the load or more on a limit that is not known; anything where the load is not either. */
    Set<String> partsOfUnknownLimit(Judged judged) {
        double load = judged.measure().getValue();
        return parts(judged.measure(), judged.loadCase(), Double.isNaN(load) ? NOTHING : SMALL_SHARE * load);
    }

    /**
     * Those that put a kilogram or more on an axle, or on the vehicle as a whole, whose load is not known, in each loading in
     * which it might pass its limit; none of any other limit.
     */
    Set<String> partsOfUnknownLoad(Judged judged) {
        Measure measure = judged.measure();
        Set<String> parts = new LinkedHashSet<>();
        if (isOfMasses(measure)) {
            loadings(judged.loadCase()).stream()
                    .filter(loading -> !(mostOn(loading, measure) <= measure.getLimit()))
                    .forEach(loading -> borne(loading, shares(loading, measure)).forEach((part, share) -> {
                        if (share >= ENOUGH) {
                            parts.add(part);
                        }
                    }));
        }
        return parts;
    }

    /** Whether it is what the masses of a loading put on an axle or on the vehicle, in kg. */
    private static boolean isOfMasses(Measure measure) {
        return measure.kind().unit().equals("kg")
                && Set.of(FRONT_AXLE, REAR_AXLE, VEHICLE).contains(measure.getSubject())
                && measure.kind().scope() == MeasureKind.Scope.LOADING;
    }

    /**
     * The most that can be on it, kg, with what is not known of usual mass; infinite where nobody can say. What is used up takes
     * nothing off then, and where all is known as planned it is the ball of which nobody knows how heavy it gets.
     */
    private static double mostOn(Loading loading, Measure measure) {
        Plan plan = loading.plan();
        boolean known = loading.axles().front().known();
        double most = 0;
        for (PointMass mass : loading.masses()) {
            Figure share = on(mass, loading, measure, List.of());
            boolean open = !mass.mass().known() || known && mass.sort() == Sort.BALL;
            if (open || known && mass.sort() == Sort.LIQUID) {
                Figure heaviest = open ? Figure.of(heaviest(mass.sort(), plan)) : mass.mass();
                share = on(mass.of(heaviest), loading, measure, List.of()).most(Figure.ZERO);
            }
            most += share.known() ? share.value() + share.tolerance() : Double.POSITIVE_INFINITY;
        }
        boolean bars = measure.getSubject().equals(FRONT_AXLE) && Levelling.helpsFront(plan);
        Figure unsettled = plan.stretch().most(Figure.ZERO);
        // Added as numbers: a sum of figures takes what differs from infinity by a finite amount for nothing.
        return bars || !unsettled.known() ? Double.POSITIVE_INFINITY : most + unsettled.value();
    }

    /** The most that such a mass usually is, kg; a load on the ball no more than is allowed there. */
    private static double heaviest(Sort sort, Plan plan) {
        return switch (sort) {
            case OCCUPANT -> Plausible.PERSON.mostUsual();
            case BALL ->
                BallLimits.of(plan, plan.trailer().orElseThrow())
                        .known()
                        .mapToDouble(Figure::value)
                        .min()
                        .orElse(Plausible.BALL_LOAD.mostUsual());
            case VEHICLE, COUNTED, REMOVED, RESIDUAL -> Double.POSITIVE_INFINITY;
            case FITMENT, TANK, LIQUID, CARGO -> Plausible.PART_MASS.mostUsual();
        };
    }

    /**
     * What would take load off a limit if it were left out, kg by its name, the most first: planned parts and added tanks with what
     * is in them, less what comes off for them, cargo that is not alive, and what is listed in the trailer. What takes off less than
     * a kilogram is left out.
     *
     * @param judged what is held against the limit in a loading
     */
    public static Map<String, Double> takesOff(Advice advice, Judged judged) {
        Map<String, Double> takes = new HashMap<>();
        for (Loading loading : new Burden(advice.loadings()).loadings(judged.loadCase())) {
            Map<String, Double> shares = shares(loading, judged.measure());
            borne(loading, shares).forEach((part, share) -> takes.merge(part, share, Math::max));
            standsOn(loading.plan()).forEach(takes::remove);
            loading.plan().sheet().cargo().stream()
                    .filter(cargo -> !cargo.isAlive())
                    .forEach(cargo ->
                            takes.merge(cargo.name(), shares.getOrDefault(Sort.CARGO + cargo.name(), 0.0), Math::max));
            InTrailer.shares(loading.plan(), judged.measure())
                    .forEach((thing, share) -> takes.merge(thing, share, Math::max));
        }
        return takes.entrySet().stream()
                .filter(thing -> thing.getValue() >= 1)
                .sorted(Map.Entry.<String, Double>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .collect(Collectors.toMap(
                        Map.Entry::getKey, Map.Entry::getValue, (one, other) -> one, LinkedHashMap::new));
    }

    /** The springs that a planned rating kit stands on, which nobody can do without. */
    private static List<String> standsOn(Plan plan) {
        return plan.fitments(Fitment.Kind.RATING_UPGRADE).isEmpty()
                ? List.of()
                : plan.fitments(Fitment.Kind.SPRINGS).stream()
                        .map(Fitment::name)
                        .toList();
    }

    private Set<String> parts(Measure measure, String loadCase, double least) {
        Set<String> parts = new LinkedHashSet<>();
        if (measure.kind() == RackMeasures.RACK) {
            // Another rack may carry what is too much for it.
            parts.add(measure.getSubject());
        }
        for (Loading loading : loadings(loadCase)) {
            double unit = isLift(measure)
                    ? FrontLift.of(loading, loading.masses()).bare().value()
                    : 1;
            borne(loading, shares(loading, measure)).forEach((part, share) -> {
                if (share >= least * unit) {
                    parts.add(part);
                }
            });
        }
        return parts;
    }

    /** What each planned part and added tank puts on a limit, kg by its name, in the order of the sheet. */
    private static Map<String, Double> borne(Loading loading, Map<String, Double> shares) {
        Map<String, Double> borne = new LinkedHashMap<>();
        Sheet sheet = loading.plan().sheet();
        sheet.fitments().stream()
                .filter(part -> !part.isDone())
                .forEach(part -> borne.merge(part.name(), bears(part.name(), part.removes(), shares), Math::max));
        sheet.tanks().stream()
                .filter(tank -> Alterations.added(tank) && !tank.isDone())
                .forEach(tank -> borne.merge(tank.name(), bears(tank.name(), tank.removes(), shares), Math::max));
        return borne;
    }

    private Collection<Loading> loadings(String loadCase) {
        return loadCase.isEmpty() ? loadings.values() : List.of(loadings.get(loadCase));
    }

    /**
     * kg; where a limit is kept by less than the tolerance, what is missing to keep it by that, and where it is passed by less,
     * the tolerance: what changes less than that settles nothing.
     */
    private static double tooMuch(Comparison comparison) {
        return comparison.margin() < 0
                ? Math.max(-comparison.margin(), comparison.tolerance())
                : comparison.tolerance() - comparison.margin();
    }

    /**
     * What each mass of a loading puts on a limit, in kg, by its sort and name: below zero where it takes load off an axle, as
     * what hangs behind the rear axle does of the front. What is not known puts nothing.
     */
    private static Map<String, Double> shares(Loading loading, Measure measure) {
        Map<String, Double> shares = new HashMap<>();
        List<RackLoad> racks = racks(loading, measure);
        for (PointMass mass : loading.masses()) {
            Figure share = on(mass, loading, measure, racks);
            shares.merge(mass.sort() + mass.name(), share.known() ? share.value() : 0, Double::sum);
        }
        return shares;
    }

    /** The rack that a measure is about; none where it is about another limit. */
    private static List<RackLoad> racks(Loading loading, Measure measure) {
        return measure.kind() != RackMeasures.RACK
                ? List.of()
                : RackLoad.of(loading).stream()
                        .filter(rack -> rack.rack().equals(measure.getSubject()))
                        .toList();
    }

    /** What a part puts on a limit in kg, a tank with what is in it, less what comes off for it. */
    private static double bears(String part, Optional<Removed> removes, Map<String, Double> shares) {
        return Stream.of(
                        Sort.FITMENT + part,
                        Sort.TANK + part,
                        Sort.LIQUID + part + ", filled",
                        Sort.REMOVED
                                + PointMass.takenOff(removes.map(Removed::name).orElse("")))
                .mapToDouble(mass -> shares.getOrDefault(mass, 0.0))
                .sum();
    }

    /** Whether it is what the front axle loses, as a share of its load, so that what is too much is off it. */
    private static boolean isLift(Measure measure) {
        return measure.kind() == LoadMeasures.FRONT_LIFT || measure.kind() == EmptiedMeasures.FRONT_LIFT;
    }

    /** @param racks those that the measure is about; none where it is about no rack */
    private static Figure on(PointMass mass, Loading loading, Measure measure, List<RackLoad> racks) {
        if (measure.kind().ofTrailer()) {
            return Figure.ZERO;
        }
        // Of an axle whatever is held against its limit: as planned, or once tanks or supplies are used up.
        if (measure.getSubject().equals(FRONT_AXLE) || measure.getSubject().equals(REAR_AXLE)) {
            Figure front = mass.onFront(loading.plan().wheelbase());
            if (isLift(measure)) {
                return front.times(-1);
            }
            return measure.getSubject().equals(FRONT_AXLE) ? front : mass.mass().minus(front);
        }
        boolean isElsewhere = ROOFS.contains(measure.kind()) && mass.roof().is(YesNo.NO)
                || measure.kind() == RackMeasures.RACK && racks.stream().noneMatch(rack -> rack.bears(mass.name()));
        return isElsewhere ? Figure.ZERO : mass.mass();
    }
}
