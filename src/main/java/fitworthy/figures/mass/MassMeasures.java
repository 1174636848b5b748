package fitworthy.figures.mass;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.MassWorkings;
import fitworthy.figures.plan.Masses;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.figures.plan.Track;
import fitworthy.figures.plan.Weighed;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.MassDetails;
import fitworthy.sheet.Point;
import fitworthy.sheet.Vehicle;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Masses, axle loads and the balance of the vehicle. */
public final class MassMeasures implements Topic {

    public static final MeasureKind LOADED =
            rated("mass.loaded", "kg", 0, "loaded mass", "GVM").byLoading();
    public static final MeasureKind AXLE =
            rated("mass.axle", "kg", 0, "load on the axle", "axle limit").byLoading();
    public static final MeasureKind COMBINED = rated(
                    "mass.combined", "kg", 0, "loaded mass of vehicle and trailer together", "GCM")
            .byLoading();
    private static final MeasureKind BALL =
            number("mass.ball", "kg", 0, "load on the tow ball").byLoading();
    private static final MeasureKind FRONT_LIFT = number(
                    "mass.front-lift", "%", 1, "front axle load lost against the bare vehicle")
            .byLoading();
    private static final MeasureKind FRONT_LEAST = number(
                    "mass.front-least", "kg", 0, "load that the front axle has to keep")
            .byLoading();
    private static final MeasureKind BEHIND_AXLE = number(
                    "mass.behind-axle", "kg", 1, "load it lifts off the front axle")
            .byLoading();
    private static final MeasureKind BALL_LIFT = number(
                    "mass.ball-lift", "kg", 0, "load that the ball lifts off the front axle")
            .byLoading();
    private static final MeasureKind SIDE = number(
                    "mass.side", "%", 1, "difference between left and right, as a share of the loaded mass")
            .byLoading();
    private static final MeasureKind ACROSS = number(
                    "mass.across", "kg", 0, "what has to move from above one wheel to above the other side's")
            .byLoading();
    public static final MeasureKind ROOF =
            rated("mass.roof", "kg", 0, "load on the roof", "roof limit").byLoading();
    private static final MeasureKind COG_RISE = number(
                    "mass.cog-rise", "%", 1, "rise of the centre of gravity over the bare vehicle")
            .byLoading();
    private static final MeasureKind RATED_TRAILER =
            rated("mass.rated-trailer", "kg", 0, "heaviest trailer on paper", "what the GCM leaves at full GVM");
    private static final MeasureKind FULL_COMBINED =
            rated("mass.full-combined", "kg", 0, "the planned trailer behind the vehicle at full GVM", "GCM");
    private static final MeasureKind GVM = number("mass.gvm", "kg", 0, "GVM as planned");
    private static final MeasureKind GCM_RAISED =
            rated("mass.gcm-raised", "kg", 0, "GCM as planned on a vehicle already registered", "GCM as made");
    private static final MeasureKind GVM_OVER_AXLES =
            rated("mass.gvm-axles", "kg", 0, "GVM as planned", "sum of the axle limits");
    private static final MeasureKind RAISED =
            MeasureKind.word("mass.raised", "whether the GVM is raised before or after first registration");
    private static final MeasureKind WHEELBASE_ADDED = number("mass.wheelbase-added", "mm", 0, "added wheelbase");
    private static final MeasureKind WEIGHED =
            MeasureKind.word("mass.weighed", "whether the sheet has a mass for it, and for what it replaces");
    /** Kinds that go on where a part of the vehicle comes off. */
    private static final Set<Kind> REPLACING = EnumSet.of(Kind.SPRINGS, Kind.BAR);
    /** Further kinds that are too heavy to be left out. */
    private static final Set<Kind> HEAVY =
            EnumSet.of(Kind.WINCH, Kind.TOW_BAR, Kind.BATTERY, Kind.GAS_BOTTLE, Kind.FIREARM_BOX);

    private static final MeasureKind RESIDUAL = rated(
                    "mass.residual",
                    "kg",
                    0,
                    "difference between weighbridge and summed parts",
                    "their joint tolerance")
            .byLoading();

    private static final MeasureKind RESIDUAL_WAY = MeasureKind.word(
                    "mass.residual-way", "whether the weighbridge shows more or less there than the summed parts")
            .byLoading();
    private static final MeasureKind UNEXPLAINED = number(
                    "mass.unexplained", "kg", 0, "what the weighbridge found beyond the summed parts")
            .byLoading();
    private static final MeasureKind FOUND_OVER = MeasureKind.word(
                    "mass.found-over", "whether what the weighbridge found beyond the parts takes it over its GVM")
            .byLoading();

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                LOADED,
                AXLE,
                COMBINED,
                BALL,
                FRONT_LIFT,
                BEHIND_AXLE,
                BALL_LIFT,
                SIDE,
                ROOF,
                COG_RISE,
                RATED_TRAILER,
                FULL_COMBINED,
                GVM,
                GVM_OVER_AXLES,
                GCM_RAISED,
                RAISED,
                WHEELBASE_ADDED,
                WEIGHED,
                RESIDUAL,
                RESIDUAL_WAY,
                UNEXPLAINED,
                FOUND_OVER,
                FRONT_LEAST,
                ACROSS);
    }

    private enum Way {
        MORE,
        LESS
    }

    private enum Registration {
        BEFORE,
        AFTER
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        for (Fitment part : plan.sheet().fitments()) {
            if (part.isDone()) {
                continue; // It was weighed with the vehicle.
            }
            if (REPLACING.contains(part.kind())) {
                measures.add(Measure.of(WEIGHED, part.name(), Weighed.withReplaced(part)));
            } else if (HEAVY.contains(part.kind())) {
                measures.add(Measure.of(WEIGHED, part.name(), Weighed.alone(part)));
            }
        }
        Vehicle.Ratings ratings = plan.ratings();
        Vehicle.Ratings made = plan.vehicle().ratings();
        measures.add(Measure.of(GVM, "vehicle", ratings.gvm()));
        boolean raised = plan.planned(MassDetails.RatingUpgrade.class)
                .filter(upgrade -> upgrade.gvm().known())
                .isPresent();
        Choice<YesNo> registered = plan.registered();
        if (!registered.is(YesNo.NO)
                && plan.toBeDone(MassDetails.RatingUpgrade.class).stream()
                        .anyMatch(upgrade -> upgrade.gcm().known())) {
            Figure gcm = registered.known() ? ratings.gcm() : Figure.missing(registered.missing());
            measures.add(Measure.of(GCM_RAISED, "vehicle", gcm, made.gcm()));
        }
        // A kit that raises nothing that the sheet names may raise the GVM.
        plan.toBeDone(MassDetails.RatingUpgrade.class).stream()
                .filter(upgrade -> upgrade.gvm().known() || !upgrade.states())
                .findFirst()
                .map(upgrade -> upgrade.gvm().known()
                        ? raised(registered)
                        : Choice.<Registration>missing(upgrade.gvm().missing().get(0)))
                .ifPresent(answer -> measures.add(Measure.of(RAISED, "vehicle", answer)));
        if (raised) {
            // The GVM holds the load on the ball; without a planned trailer none is counted.
            Figure ball = plan.sheet()
                    .trailer()
                    .map(trailer -> trailer.ball().or(Figure.ZERO))
                    .orElse(Figure.ZERO);
            measures.add(Measure.of(
                            RATED_TRAILER,
                            "vehicle",
                            ratings.towing(),
                            ratings.gcm().minus(ratings.gvm()).plus(ball))
                    .worked(
                            "left = GCM - GVM + ball",
                            in("GCM", ratings.gcm(), "kg"),
                            in("GVM", ratings.gvm(), "kg"),
                            in("ball", ball, "kg")));
            measures.add(Measure.of(
                            GVM_OVER_AXLES,
                            "vehicle",
                            ratings.gvm(),
                            ratings.frontAxle().plus(ratings.rearAxle()))
                    .worked(
                            "limits = front + rear",
                            in("front", ratings.frontAxle(), "kg"),
                            in("rear", ratings.rearAxle(), "kg")));
            plan.sheet()
                    .trailer()
                    .ifPresent(trailer -> measures.add(Measure.of(
                                    FULL_COMBINED,
                                    "vehicle and trailer",
                                    ratings.gvm().minus(trailer.ball()).plus(trailer.mass()),
                                    ratings.gcm())
                            .worked(
                                    "combined = GVM - ball + trailer",
                                    in("GVM", ratings.gvm(), "kg"),
                                    in("ball", trailer.ball(), "kg"),
                                    in("trailer", trailer.mass(), "kg"))));
        }
        Figure wheelbase = plan.stretch().made();
        Figure added = plan.wheelbase().minus(wheelbase);
        if (added.value() > 0) {
            measures.add(Measure.of(WHEELBASE_ADDED, "vehicle", added)
                    .worked(
                            "added = planned - made",
                            in("planned", plan.wheelbase(), "mm"),
                            in("made", wheelbase, "mm")));
        }
    }

    private static Choice<?> raised(Choice<YesNo> registered) {
        return registered.known()
                ? Choice.of(registered.is(YesNo.YES) ? Registration.AFTER : Registration.BEFORE)
                : registered;
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        Plan plan = loading.plan();
        Vehicle.Ratings ratings = plan.ratings();
        AxleLoads axles = loading.axles();
        Working sheet = MassWorkings.axles(loading.masses(), plan.wheelbase());
        measures.add(Measure.of(LOADED, "vehicle", axles.total(), ratings.gvm()).worked(sheet));
        unexplained(loading, axles.total().minus(ratings.gvm()), measures);
        measures.add(Measure.of(AXLE, "front axle", axles.front(), ratings.frontAxle())
                .worked(sheet));
        measures.add(
                Measure.of(AXLE, "rear axle", axles.rear(), ratings.rearAxle()).worked(sheet));
        List<PointMass> counted = loading.masses().stream()
                .filter(mass -> mass.sort() == Sort.COUNTED)
                .toList();
        Figure bareFront = plan.vehicle()
                .mass()
                .frontAxle()
                .plus(AxleLoads.of(counted, plan.wheelbase()).front());
        // The axle's own mass is in the load as well, so its error is not counted twice.
        Figure gained = loading.beyond(Stream.concat(Masses.axles(plan).stream().limit(1), counted.stream())
                        .toList())
                .front();
        Figure lost = notBelowNone(gained.times(-1).dividedBy(bareFront));
        measures.add(Measure.of(FRONT_LIFT, "front axle", lost)
                .worked(
                        "lost = max(0, 1 - load / bare)",
                        in("load", axles.front(), "kg"),
                        in("bare", bareFront, "kg")));
        Figure mostLost = plan.practice(PracticeId.MASS_FRONT_LIFT_MOST);
        measures.add(Measure.enough(
                        FRONT_LEAST,
                        "front axle",
                        Figure.of(1, 0).minus(mostLost).times(bareFront))
                .worked("kept = (1 - most) x bare", in("most", mostLost, "%"), in("bare", bareFront, "kg")));
        Figure track = Track.of(plan);
        measures.add(Measure.of(SIDE, "vehicle", sideShare(axles.cogY(), track))
                .worked("difference = |2 x left / track|", in("left", axles.cogY(), "mm"), in("track", track, "mm"))
                .worked(MassWorkings.centre(loading.masses(), "left", Point::y)));
        Figure mostAside = plan.practice(PracticeId.MASS_SIDE_MOST);
        Figure difference = sideShare(axles.cogY(), track);
        measures.add(Measure.enough(
                        ACROSS,
                        "vehicle",
                        difference
                                .minus(mostAside)
                                .times(axles.total())
                                .times(0.5)
                                .most(Figure.of(0, 0)))
                .worked(
                        "across = max(0, (difference - most) x loaded / 2)",
                        in("difference", difference, "%"),
                        in("most", mostAside, "%"),
                        in("loaded", axles.total(), "kg")));
        Figure bareHeight = plan.vehicle().mass().cogHeight();
        measures.add(Measure.of(
                        COG_RISE, "vehicle", axles.cogZ().dividedBy(bareHeight).minus(Figure.of(1, 0)))
                .worked("rise = height / bare - 1", in("height", axles.cogZ(), "mm"), in("bare", bareHeight, "mm"))
                .worked(MassWorkings.centre(loading.masses(), "height", Point::z)));
        loading.masses().stream()
                .filter(mass -> isCarried(mass) && behindRearAxle(mass, plan))
                .forEach(mass -> measures.add(Measure.of(
                                BEHIND_AXLE,
                                mass.name(),
                                mass.onFront(plan.wheelbase()).times(-1))
                        .worked(
                                "lifted = mass x (at / wheelbase - 1)",
                                in("mass", mass.mass(), "kg"),
                                in("at", mass.at().x(), "mm"),
                                in("wheelbase", plan.wheelbase(), "mm"))));
        List<PointMass> roof = loading.masses().stream()
                .filter(mass -> !mass.roof().is(YesNo.NO))
                .toList();
        roof.stream()
                .map(PointMass::mass)
                .reduce(Figure::plus)
                .ifPresent(load -> measures.add(Measure.of(ROOF, "roof", load, ratings.roof())
                        .worked(new Working.Sum(
                                "load",
                                roof.stream()
                                        .map(mass -> in(mass.name(), mass.mass(), "kg"))
                                        .toList()))
                        .given(roof.stream().map(PointMass::roof).toArray(Choice<?>[]::new))));
        loading.residual().ifPresent(residual -> {
            LoadCase.Weighed reading = loading.loadCase().weighed().orElseThrow();
            AxleLoads parts = loading.parts();
            residual("front axle", residual.front(), reading.frontAxle(), parts.front(), measures);
            residual("rear axle", residual.rear(), reading.rearAxle(), parts.rear(), measures);
        });
        if (loading.towing()) {
            towing(loading, measures);
        }
    }

    /** @param over by how much the GVM is passed, kg; not above zero where it is not */
    private static void unexplained(Loading loading, Figure over, List<Measure> measures) {
        List<Working.Input> residuals = loading.masses().stream()
                .filter(mass -> mass.sort() == Sort.RESIDUAL)
                .map(mass -> in(mass.name(), mass.mass(), "kg"))
                .toList();
        Figure found = Working.total(residuals);
        if (!residuals.isEmpty()) {
            measures.add(Measure.of(UNEXPLAINED, "vehicle", found).worked(new Working.Sum("found", residuals)));
        }
        boolean decides = over.value() > 0 && found.isAtLeast(over);
        measures.add(Measure.of(FOUND_OVER, "vehicle", Choice.yesNo(decides)));
    }

    private static void towing(Loading loading, List<Measure> measures) {
        Plan plan = loading.plan();
        Figure ball = loading.masses().stream()
                .filter(mass -> mass.sort() == Sort.BALL)
                .findFirst()
                .orElseThrow()
                .mass();
        Figure trailer = loading.trailer().orElseThrow().mass();
        measures.add(Measure.of(
                        COMBINED,
                        "vehicle and trailer",
                        loading.combined(),
                        plan.ratings().gcm())
                .worked(
                        "combined = loaded - ball + trailer",
                        in("loaded", loading.axles().total(), "kg"),
                        in("ball", ball, "kg"),
                        in("trailer", trailer, "kg"))
                .worked(MassWorkings.axles(loading.masses(), plan.wheelbase())));
        measures.add(Measure.of(BALL, "tow ball", ball));
        measures.add(Measure.of(
                        BALL_LIFT, "front axle", ball.times(plan.ballOverhang().dividedBy(plan.wheelbase())))
                .worked(
                        "lifted = ball x overhang / wheelbase",
                        in("ball", ball, "kg"),
                        in("overhang", plan.ballOverhang(), "mm"),
                        in("wheelbase", plan.wheelbase(), "mm")));
    }

    /** {@code 2 |y| / track}: the difference between the two sides over the sum, from moments about the centre line. */
    private static Figure sideShare(Figure cogY, Figure track) {
        Figure share = cogY.times(2).dividedBy(track);
        return share.known() ? Figure.of(Math.abs(share.value()), share.tolerance()) : share;
    }

    /** With its tolerance, which an axle that gains a little may still turn. */
    private static Figure notBelowNone(Figure figure) {
        return figure.known() ? Figure.of(Math.max(0, figure.value()), figure.tolerance()) : figure;
    }

    private static boolean isCarried(PointMass mass) {
        return switch (mass.sort()) {
            case FITMENT, TANK, LIQUID, CARGO -> !(mass.mass().value() <= 0);
            default -> false;
        };
    }

    private static boolean behindRearAxle(PointMass mass, Plan plan) {
        return mass.at().x().minus(plan.wheelbase()).value() > 0;
    }

    private static void residual(String axle, Figure residual, Figure reading, Figure parts, List<Measure> measures) {
        Figure size = residual.known() ? Figure.of(Math.abs(residual.value()), 0) : residual;
        measures.add(Measure.of(RESIDUAL, axle, size, tolerance(residual))
                .worked("difference = |reading - parts|", in("reading", reading, "kg"), in("parts", parts, "kg"))
                .worked(
                        "tolerance = sqrt(of reading^2 + of parts^2)",
                        in("of reading", tolerance(reading), "kg"),
                        in("of parts", tolerance(parts), "kg")));
        measures.add(Measure.of(
                RESIDUAL_WAY,
                axle,
                residual.known()
                        ? Choice.of(residual.value() < 0 ? Way.LESS : Way.MORE)
                        : Choice.missing(residual.missing().get(0))));
    }

    private static Figure tolerance(Figure figure) {
        return figure.known() ? Figure.of(figure.tolerance(), 0) : figure;
    }
}
