package fitworthy.figures.mass;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Centre;
import fitworthy.figures.plan.FrontLift;
import fitworthy.figures.plan.LeastLoads;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.LoadBox;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.MassWorkings;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.RoofLimit;
import fitworthy.figures.plan.RoofLoad;
import fitworthy.figures.plan.StandingHeight;
import fitworthy.figures.plan.Topic;
import fitworthy.figures.plan.Track;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Vehicle;
import fitworthy.sheet.VehicleEnd;
import java.util.ArrayList;
import java.util.List;

/** Loads on axles, ball and roof, and the balance of the vehicle. */
public final class LoadMeasures implements Topic {

    public static final MeasureKind LOADED =
            rated("mass.loaded", "kg", 0, "loaded mass", "GVM").byLoading();
    public static final MeasureKind AXLE =
            rated("mass.axle", "kg", 0, "load on the axle", "axle limit").byLoading();
    public static final MeasureKind COMBINED = rated(
                    "mass.combined", "kg", 0, "loaded mass of vehicle and trailer together", "GCM")
            .byLoading();
    private static final MeasureKind BALL =
            number("mass.ball", "kg", 0, "load on the tow ball").signed().byLoading();
    public static final MeasureKind FRONT_LIFT = number(
                    "mass.front-lift", "%", 1, "front axle load lost against the bare vehicle")
            .byLoading();
    private static final MeasureKind FRONT_LEAST = number(
                    "mass.front-least", "kg", 0, "load that the front axle has to keep")
            .byLoading();
    private static final MeasureKind BEHIND_AXLE = number(
                    "mass.behind-axle", "kg", 1, "load it lifts off the front axle")
            .byLoading();
    private static final MeasureKind BALL_LIFT = number(
                    "mass.ball-lift",
                    "kg",
                    0,
                    "load that the ball lifts off the front axle, less what an allowed load-levelling hitch brings back")
            .signed()
            .byLoading();
    private static final MeasureKind SIDE = number(
                    "mass.side", "%", 1, "difference between left and right, as a share of the loaded mass")
            .byLoading();
    private static final MeasureKind ACROSS = number(
                    "mass.across", "kg", 0, "mass to be moved from above one wheel to above the other side's")
            .byLoading();
    public static final MeasureKind ROOF =
            rated("mass.roof", "kg", 0, "load on the roof", "roof limit").byLoading();
    public static final MeasureKind ROOF_AT_REST = rated(
                    "mass.roof-at-rest",
                    "kg",
                    0,
                    "load on the roof at rest, with who sleeps there",
                    "roof limit at rest")
            .byLoading();
    private static final MeasureKind ASLEEP =
            number("mass.roof-asleep", "kg", 0, "who sleeps on the roof").byLoading();
    private static final MeasureKind ROOF_GOVERNS = word(
                    "mass.roof-governs", "whose limit it is that counts for the roof", RoofLimit.Governs.class)
            .byLoading();
    private static final MeasureKind COG_RISE = number(
                    "mass.cog-rise",
                    "%",
                    1,
                    "rise of the centre of gravity over the bare vehicle's (of a cab chassis with its tray on)")
            .signed()
            .byLoading();
    private static final MeasureKind COG = rated(
                    "mass.cog",
                    "mm",
                    0,
                    "height of the centre of gravity above the road",
                    "greatest height by its maker")
            .byLoading();
    private static final MeasureKind COG_HEIGHT = number("mass.cog-height", "mm", 0, "height of the centre of gravity")
            .byLoading();
    private static final MeasureKind COG_JUDGED = word(
                    "mass.cog-judged", "by what it is judged how high the centre of gravity may be", CogJudged.class)
            .byLoading();
    private static final MeasureKind STABILITY = number(
                    "mass.stability",
                    "",
                    2,
                    "static stability factor: from the centre of gravity to the tyres on the heavier side, over its height")
            .byLoading();
    private static final MeasureKind STABILITY_LOST = number(
                    "mass.stability-lost", "%", 1, "static stability factor lost against the bare vehicle")
            .signed()
            .byLoading();
    private static final MeasureKind TIP_SLOPE = number(
                    "mass.tip-slope",
                    "deg",
                    0,
                    "side slope on which it would tip over to its heavier side, standing on rigid springs")
            .byLoading();

    private enum CogJudged {
        /** The height that the vehicle's maker names is on the sheet. */
        BY_HEIGHT,
        /** It is made to carry a body, and how high that may be its maker alone can tell. */
        BY_MAKER,
        BY_RISE;

        static CogJudged of(Plan plan) {
            return plan.ratings().cogHeight().known() ? BY_HEIGHT : BareHeight.isCabChassis(plan) ? BY_MAKER : BY_RISE;
        }
    }

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
                ROOF_AT_REST,
                ASLEEP,
                ROOF_GOVERNS,
                COG_RISE,
                COG,
                COG_HEIGHT,
                COG_JUDGED,
                STABILITY,
                STABILITY_LOST,
                TIP_SLOPE,
                FRONT_LEAST,
                ACROSS);
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        Plan plan = loading.plan();
        Vehicle.Ratings ratings = plan.ratings();
        AxleLoads axles = loading.axles();
        Centre centre = loading.centre();
        Working sheet = MassWorkings.axles(loading.masses(), plan.wheelbase());
        LeastLoads least = loading.least();
        measures.add(Measure.of(LOADED, "vehicle", axles.total(), ratings.gvm())
                .worked(sheet)
                .atLeast(least.total()));
        measures.add(Measure.of(
                        AXLE,
                        "front axle",
                        plan.stretch().against(Levelling.front(loading), ratings.frontAxle()),
                        ratings.frontAxle())
                .worked(sheet)
                .worked(Levelling.frontWorked(loading))
                .atLeast(least.front()));
        measures.add(Measure.of(
                        AXLE, "rear axle", plan.stretch().against(axles.rear(), ratings.rearAxle()), ratings.rearAxle())
                .worked(sheet)
                .atLeast(least.rear()));
        FrontLift lift = FrontLift.of(loading, loading.masses());
        measures.add(Measure.of(FRONT_LIFT, "front axle", lift.lost()).worked(lift.working()));
        Figure mostLost = plan.practice(PracticeId.MASS_FRONT_LIFT_MOST);
        measures.add(Measure.enough(FRONT_LEAST, "front axle", lift.least(mostLost))
                .worked("kept = (1 - most) x bare", in("most", mostLost, "%"), in("bare", lift.bare(), "kg")));
        Figure track = Track.of(plan);
        Figure difference = sideShare(centre.y(), track);
        measures.add(Measure.of(SIDE, "vehicle", difference)
                .worked("difference = |2 x left / track|", in("left", centre.y(), "mm"), in("track", track, "mm"))
                .worked(MassWorkings.centre(
                        loading.masses(), "left", mass -> mass.at().y())));
        Figure mostAside = plan.practice(PracticeId.MASS_SIDE_MOST);
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
        List<PointMass> highest = loading.highest();
        Figure height = Centre.of(highest).z();
        Figure bareHeight = BareHeight.of(plan);
        measures.add(Measure.of(
                        COG_RISE, "vehicle", height.dividedBy(bareHeight).minus(Figure.of(1, 0)))
                .worked("rise = height / unladen - 1", in("height", height, "mm"), in("unladen", bareHeight, "mm"))
                .worked(BareHeight.working(plan).toArray(Working[]::new))
                .worked(StandingHeight.of(plan, VehicleEnd.FRONT).working("vehicle over the front axle"))
                .worked(StandingHeight.of(plan, VehicleEnd.REAR).working("vehicle over the rear axle"))
                .worked(MassWorkings.centre(highest, "height", PointMass::height)));
        measures.add(Measure.of(COG_JUDGED, "vehicle", Choice.of(CogJudged.of(plan))));
        if (ratings.cogHeight().known()) {
            measures.add(Measure.of(COG, "vehicle", height, ratings.cogHeight())
                    .worked(MassWorkings.centre(highest, "height", PointMass::height)));
        }
        measures.add(Measure.of(COG_HEIGHT, "vehicle", height)
                .worked(MassWorkings.centre(highest, "height", PointMass::height)));
        stability(loading, track, measures);
        Figure front = Levelling.front(loading);
        loading.masses().stream()
                .filter(mass -> isCarried(mass) && behindRearAxle(mass, plan))
                // What the front axle cannot bear had better stay where it lifts it.
                .filter(mass -> !front.minus(mass.onFront(plan.wheelbase())).isAbove(ratings.frontAxle()))
                .forEach(mass -> measures.add(Measure.of(
                                BEHIND_AXLE,
                                mass.name(),
                                mass.onFront(plan.wheelbase()).times(-1))
                        .worked(
                                "lifted = mass x (at / wheelbase - 1)",
                                in("mass", mass.mass(), "kg"),
                                in("at", mass.at().x(), "mm"),
                                in("wheelbase", plan.wheelbase(), "mm"))));
        roof(loading, measures);
        if (loading.towing()) {
            towing(loading, measures);
        }
    }

    /** It goes over the tyres on its heavier side, the nearer ones to its centre of gravity. */
    private static void stability(Loading loading, Figure track, List<Measure> measures) {
        Plan plan = loading.plan();
        Centre centre = Centre.of(
                loading.eitherWay(masses -> factor(Centre.of(masses), track).times(-1)));
        Figure between = between(centre, track);
        Figure factor = factor(centre, track);
        Figure bare = Stability.factor(plan.vehicle().size().track(), BareHeight.of(plan));
        Working half = new Working.Formula(
                "factor = (track / 2 - |left|) / height",
                List.of(in("track", track, "mm"), in("left", centre.y(), "mm"), in("height", centre.z(), "mm")));
        measures.add(Measure.of(STABILITY, "vehicle", factor).worked(half));
        measures.add(Measure.of(STABILITY_LOST, "vehicle", Figure.of(1, 0).minus(factor.dividedBy(bare)))
                .worked("lost = 1 - factor / bare", in("factor", factor, ""), in("bare", bare, ""))
                .worked(half));
        measures.add(Measure.of(TIP_SLOPE, "vehicle", LoadBox.tippingAngle(between, centre.z()))
                .worked("slope = atan(factor)", in("factor", factor, ""))
                .worked(half));
    }

    private static Figure factor(Centre centre, Figure track) {
        return Stability.factor(between(centre, track), centre.z());
    }

    /** The track of one that lies on the centre line and tips over alike, in m. */
    private static Figure between(Centre centre, Figure track) {
        return track.minus(aside(centre.y()).times(2));
    }

    /**
     * What is on a roof or a rack. Where all that may be up there is surely not too much, nobody has to say what is; else what
     * is known to be there counts, which is the least that it can be.
     */
    static Measure upThere(Measure load, RoofLoad what, Figure most) {
        Measure told = what.sum().isSurelyWithin(most)
                ? load
                : load.given(what.told().toArray(Choice<?>[]::new)).atLeast(what.least());
        return told.worked(new Working.Sum("load", told.isAtLeast() ? what.known() : what.loads()));
    }

    private static void roof(Loading loading, List<Measure> measures) {
        RoofLoad roof = RoofLoad.of(loading);
        if (!roof.loads().isEmpty()) {
            RoofLimit limit = RoofLimit.of(loading, roof.sum().or(roof.least()));
            measures.add(upThere(Measure.of(ROOF, "roof", roof.sum(), limit.most()), roof, limit.most()));
            measures.add(Measure.of(ROOF_GOVERNS, "roof", limit.governs()));
            RoofLimit.atRest(loading).ifPresent(rest -> atRest(roof, rest, measures));
        }
    }

    private static void atRest(RoofLoad roof, RoofLimit.AtRest rest, List<Measure> measures) {
        Figure load = roof.sum().plus(rest.asleep());
        Measure whole = Measure.of(ROOF_AT_REST, "roof", load, rest.bears());
        Measure told = !rest.asleep().known() || roof.sum().isSurelyWithin(rest.left())
                ? whole
                : whole.given(roof.told().toArray(Choice<?>[]::new))
                        .atLeast(roof.least().plus(rest.asleep()));
        List<Working.Input> loads = new ArrayList<>(told.isAtLeast() ? roof.known() : roof.loads());
        loads.add(in("asleep", rest.asleep(), "kg"));
        measures.add(told.worked(new Working.Sum("load", loads)));
        measures.add(Measure.of(ASLEEP, "roof", rest.asleep()));
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
                .worked(MassWorkings.axles(loading.masses(), plan.wheelbase()))
                .atLeast(loading.leastCombined()));
        measures.add(Measure.of(BALL, "tow ball", ball));
        // A pin stands over the rear axle or ahead of it; one that the sheet has behind it is asked about.
        if (plan.trailer().filter(Trailer::onFifthWheel).isEmpty()) {
            measures.add(lift(plan, ball));
        }
    }

    private static Measure lift(Plan plan, Figure ball) {
        Working.Input[] lever = {
            in("ball", ball, "kg"), in("overhang", plan.ballOverhang(), "mm"), in("wheelbase", plan.wheelbase(), "mm")
        };
        Figure lifted = ball.times(plan.ballOverhang().dividedBy(plan.wheelbase()));
        Choice<YesNo> allowed = plan.ratings().levelling();
        if (!Levelling.planned(plan) || allowed.is(YesNo.NO)) {
            return Measure.of(BALL_LIFT, "front axle", lifted).worked("lifted = ball x overhang / wheelbase", lever);
        }
        Figure share = plan.towBar().levellingShare();
        Figure left = lifted.times(Figure.of(1, 0).minus(share));
        return Measure.of(BALL_LIFT, "front axle", left)
                .worked("lifted = before x (1 - share)", in("before", lifted, "kg"), in("share", share, "%"))
                .worked("before = ball x overhang / wheelbase", lever)
                .given(allowed);
    }

    /** {@code 2 |y| / track}: the difference between the two sides over the sum, from moments about the centre line. */
    static Figure sideShare(Figure cogY, Figure track) {
        return aside(cogY).times(2).dividedBy(track);
    }

    /** {@code |y|}: how far the centre of gravity lies from the centre line, in m. */
    private static Figure aside(Figure cogY) {
        return cogY.known() ? Figure.of(Math.abs(cogY.value()), cogY.tolerance()) : cogY;
    }

    private static boolean isCarried(PointMass mass) {
        return switch (mass.sort()) {
            case FITMENT, TANK, LIQUID, CARGO -> !(mass.mass().value() <= 0);
            default -> false;
        };
    }

    private static boolean behindRearAxle(PointMass mass, Plan plan) {
        return !mass.at().x().isAtMost(plan.wheelbase());
    }
}
