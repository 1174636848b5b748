package fitworthy.figures.towing;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.BallLimits;
import fitworthy.figures.plan.BallLoad;
import fitworthy.figures.plan.Coupling;
import fitworthy.figures.plan.KerbMass;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.MassWorkings;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.figures.plan.TowingAfterCut;
import fitworthy.figures.plan.TrailerAxles;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.TowingDetails;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Trailer.Brakes;
import fitworthy.sheet.Vehicle;
import java.util.List;

/** Whether the masses, the coupling and the ball of the trailer suit the vehicle. */
public final class HitchMeasures implements Topic {
    public static final MeasureKind TRAILER = rated(
                    "towing.trailer", "kg", 0, "loaded mass of the trailer", "the vehicle's tow rating")
            .onTrailer();
    private static final MeasureKind UNRATED = number(
            "towing.unrated",
            "%",
            1,
            "loaded braked trailer as a share of the unladen vehicle, which has no tow rating");
    private static final MeasureKind UNRATED_HEAVIEST =
            number("towing.unrated-heaviest", "kg", 0, "heaviest loaded trailer for the unladen vehicle");
    public static final MeasureKind PLATE = rated(
                    "towing.plate", "kg", 0, "loaded mass of the trailer", "the trailer's plate")
            .onTrailer();
    public static final MeasureKind COUPLING = rated(
                    "towing.coupling", "kg", 0, "loaded mass of the trailer", "the plate of the coupling")
            .onTrailer();
    private static final MeasureKind COUPLING_PLATE = rated(
                    "towing.coupling-plate", "kg", 0, "greatest mass of the trailer", "the plate of the coupling")
            .onTrailer();
    public static final MeasureKind FORCE = rated(
                    "towing.force", "kN", 2, "force that the greatest masses put on the coupling", "its plate")
            .onTrailer();
    public static final MeasureKind BALL = rated("towing.ball", "kg", 0, "load on the ball", "ball load limit")
            .signed()
            .onTrailer();
    private static final MeasureKind TOWED = yesNo("towing.towed", "whether a loading tows it");
    private static final MeasureKind BALL_LOAD =
            number("towing.ball-load", "kg", 0, "load on the ball").signed();
    private static final MeasureKind BALL_SHARE = number(
                    "towing.ball-share", "%", 1, "ball load as a share of the loaded trailer")
            .signed()
            .bothWays();
    private static final MeasureKind BALL_NEEDED =
            number("towing.ball-needed", "kg", 0, "least load on the ball for the loaded trailer");
    private static final MeasureKind ON_PIN =
            yesNo("towing.on-pin", "whether the trailer is coupled by a pin, to a fifth wheel or gooseneck");
    private static final MeasureKind PIN_SHARE = number(
                    "towing.pin-share", "%", 1, "load on the pin as a share of the loaded trailer")
            .signed()
            .bothWays();
    private static final MeasureKind PIN_NEEDED =
            number("towing.pin-needed", "kg", 0, "least load on the pin for the loaded trailer");
    private static final MeasureKind PIN_BEHIND = number(
                    "towing.pin-behind", "mm", 0, "how far the king pin is behind the rear axle")
            .signed();
    private static final MeasureKind RATED = number("towing.rated", "kg", 0, "greatest mass of the trailer");
    private static final MeasureKind PAIR =
            number("towing.pair", "kg", 0, "greatest masses of vehicle and trailer together");
    private static final MeasureKind RATIO =
            number("towing.ratio", "%", 1, "trailer's greatest mass as a share of the vehicle's kerb mass");
    private static final MeasureKind OUTWEIGHED = rated(
                    "towing.outweighed", "kg", 0, "loaded mass of the trailer", "loaded mass of the vehicle")
            .byLoading();
    private static final MeasureKind OVERHANG =
            number("towing.overhang", "%", 1, "ball to rear axle as a share of the wheelbase");
    private static final MeasureKind NOSE_UP = number(
                    "towing.nose-up", "mm", 0, "height of the ball above the level trailer's coupling")
            .signed();

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                TRAILER,
                UNRATED,
                UNRATED_HEAVIEST,
                PLATE,
                COUPLING,
                COUPLING_PLATE,
                FORCE,
                BALL,
                TOWED,
                BALL_LOAD,
                BALL_SHARE,
                BALL_NEEDED,
                ON_PIN,
                PIN_SHARE,
                PIN_NEEDED,
                PIN_BEHIND,
                RATED,
                PAIR,
                RATIO,
                OUTWEIGHED,
                OVERHANG,
                NOSE_UP);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        plan.trailer().ifPresent(trailer -> {
            measures.add(Measure.of(
                    TOWED, "trailer", Choice.yesNo(plan.cases().stream().anyMatch(loading -> loading.towing()
                            .is(YesNo.YES)))));
            masses(plan, trailer, measures);
            couplings(plan, trailer, measures);
            ball(plan, trailer, measures);
            pair(plan, trailer, measures);
        });
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        loading.trailer()
                .ifPresent(
                        trailer -> measures.add(Measure.of(OUTWEIGHED, "trailer", trailer.mass(), loading.uncoupled())
                                .worked(
                                        "vehicle = loaded - ball",
                                        in("loaded", loading.axles().total(), "kg"),
                                        in("ball", trailer.ball(), "kg"))
                                .worked(MassWorkings.axles(
                                        loading.masses(), loading.plan().wheelbase()))));
    }

    private static void masses(Plan plan, Trailer trailer, List<Measure> measures) {
        Vehicle.Ratings ratings = plan.ratings();
        boolean unrated =
                ratings.towingStated().is(YesNo.NO) && !ratings.towing().known();
        Choice<Brakes> brakes = trailer.brakes();
        if (!brakes.known()) {
            measures.add(Measure.of(TRAILER, "trailer", trailer.mass(), Figure.missing(brakes.missing())));
        } else if (brakes.is(Brakes.NONE)) {
            measures.add(Measure.of(
                    TRAILER,
                    "unbraked trailer",
                    trailer.mass(),
                    TowingAfterCut.against(plan, ratings.towingUnbraked(), trailer.mass())));
        } else if (!unrated) {
            measures.add(Measure.of(
                    TRAILER,
                    "braked trailer",
                    trailer.mass(),
                    TowingAfterCut.against(plan, ratings.towing(), trailer.mass())));
        }
        if (unrated && !brakes.is(Brakes.NONE)) {
            unrated(plan, trailer, measures);
        }
        measures.add(Measure.of(PLATE, "trailer", trailer.mass(), trailer.rated()));
    }

    /** A trailer that has brakes, or may have, behind a vehicle whose maker states no tow rating. */
    private static void unrated(Plan plan, Trailer trailer, List<Measure> measures) {
        Vehicle.Masses mass = plan.vehicle().mass();
        Figure unladen = KerbMass.unladen(plan);
        Working worked = new Working.Formula(
                "unladen = kerb - driver + built",
                List.of(
                        in("kerb", mass.kerb(), "kg"),
                        in("driver", mass.kerbDriver(), "kg"),
                        in("built", KerbMass.builtOn(plan), "kg")));
        measures.add(Measure.of(UNRATED, "braked trailer", trailer.mass().dividedBy(unladen))
                .worked("share = trailer / unladen", in("trailer", trailer.mass(), "kg"), in("unladen", unladen, "kg"))
                .worked(worked)
                .given(trailer.brakes()));
        Figure most = plan.practice(PracticeId.TOWING_UNRATED_MOST);
        measures.add(Measure.most(UNRATED_HEAVIEST, "braked trailer", most.times(unladen))
                .worked("heaviest = most x unladen", in("most", most, "%"), in("unladen", unladen, "kg"))
                .worked(worked));
    }

    private static void couplings(Plan plan, Trailer trailer, List<Measure> measures) {
        coupling("tow bar", plan.towBar().plate(), plan, trailer, measures);
        coupling("trailer coupling", trailer.coupling(), plan, trailer, measures);
    }

    /**
     * A plate states a trailer mass or a D value: what it states is judged, and where it states neither it is
     * asked.
     */
    private static void coupling(
            String subject, TowingDetails.CouplingPlate plate, Plan plan, Trailer trailer, List<Measure> measures) {
        if (Coupling.asksMass(plate)) {
            measures.add(Measure.of(COUPLING, subject, trailer.mass(), plate.trailer()));
            // A coupling that is too weak for the day's load is a fault of its own.
            if (!trailer.mass().isAbove(plate.trailer())) {
                measures.add(Measure.of(COUPLING_PLATE, subject, trailer.rated(), plate.trailer()));
            }
        }
        Figure vehicle = plan.ratings().gvm();
        if (Coupling.asksD(plate, plan, trailer)) {
            Working.Input t = in("T", vehicle, "t");
            Working.Input r = in("R", trailer.rated(), "t");
            String name = subject + ", D";
            measures.add(
                    trailer.onFifthWheel()
                            ? Measure.of(
                                            FORCE,
                                            name,
                                            Coupling.fifthWheel(vehicle, trailer.rated(), trailer.ball()),
                                            plate.d())
                                    .worked("D = 0.6 x 9.81 x T x R / (T + R - U)", t, r, in("U", trailer.ball(), "t"))
                            : Measure.of(FORCE, name, Coupling.d(vehicle, trailer.rated()), plate.d())
                                    .worked("D = 9.81 x T x R / (T + R)", t, r));
        }
        if (Coupling.forCentreAxles(plate)) {
            measures.add(
                    Measure.of(FORCE, subject + ", Dc", Coupling.d(vehicle, TrailerAxles.load(trailer)), plate.dc())
                            .worked(
                                    "Dc = 9.81 x T x C / (T + C)",
                                    in("T", vehicle, "t"),
                                    in("C", TrailerAxles.load(trailer), "t"))
                            .worked(TrailerAxles.working("C", trailer, "t")));
        }
        if (Coupling.forCentreAxles(plate)) {
            Choice<YesNo> air = plan.vehicle().rearAirSprings();
            Figure body = trailer.length().minus(trailer.drawbar());
            Figure force = Coupling.v(TrailerAxles.load(trailer), body, trailer.axle(), air.is(YesNo.YES));
            measures.add(Measure.of(
                            FORCE, subject + ", V", air.known() ? force : Figure.missing(air.missing()), plate.v())
                    .worked(
                            air.is(YesNo.YES) ? "V = 1.8 x C x max(1, X^2 / l^2)" : "V = 2.4 x C x max(1, X^2 / l^2)",
                            in("C", TrailerAxles.load(trailer), "t"),
                            in("X", body, "m"),
                            in("l", trailer.axle(), "m"))
                    .worked(
                            "X = length - drawbar",
                            in("length", trailer.length(), "m"),
                            in("drawbar", trailer.drawbar(), "m"))
                    .worked(TrailerAxles.working("C", trailer, "t")));
        }
    }

    private static void ball(Plan plan, Trailer trailer, List<Measure> measures) {
        Working[] worked = BallLoad.of(plan.sheet()).orElseThrow().working();
        // A limit of what presses down is not kept by what pulls up.
        if (trailer.onFifthWheel() || !trailer.ball().isBelow(Figure.ZERO)) {
            BallLimits.of(plan, trailer)
                    .against(plan, trailer.ball())
                    .forEach((subject, limit) -> measures.add(
                            Measure.of(BALL, subject, trailer.ball(), limit).worked(worked)));
        }
        measures.add(Measure.of(ON_PIN, "trailer", Choice.yesNo(trailer.onFifthWheel())));
        if (!trailer.onFifthWheel()) {
            measures.add(Measure.of(BALL_LOAD, "tow ball", trailer.ball()).worked(worked));
        }
        share(plan, trailer, worked, measures);
    }

    /** The share of the trailer that ball or pin carries, each with a least share of its own. */
    private static void share(Plan plan, Trailer trailer, Working[] worked, List<Measure> measures) {
        boolean pin = trailer.onFifthWheel();
        String on = pin ? "pin" : "ball";
        String subject = pin ? "king pin" : "tow ball";
        Figure least = plan.practice(pin ? PracticeId.TOWING_PIN_SHARE_LEAST : PracticeId.TOWING_BALL_SHARE_LEAST);
        measures.add(
                Measure.of(pin ? PIN_SHARE : BALL_SHARE, subject, trailer.ball().dividedBy(trailer.mass()))
                        .worked(
                                "share = " + on + " / trailer",
                                in(on, trailer.ball(), "kg"),
                                in("trailer", trailer.mass(), "kg"))
                        .worked(worked));
        measures.add(Measure.enough(pin ? PIN_NEEDED : BALL_NEEDED, subject, least.times(trailer.mass()))
                .worked("needed = least x trailer", in("least", least, "%"), in("trailer", trailer.mass(), "kg")));
    }

    private static void pair(Plan plan, Trailer trailer, List<Measure> measures) {
        measures.add(Measure.of(RATED, "trailer", trailer.rated()));
        Figure gvm = plan.ratings().gvm();
        measures.add(Measure.of(PAIR, "vehicle and trailer", gvm.plus(trailer.rated()))
                .worked("pair = GVM + trailer", in("GVM", gvm, "kg"), in("trailer", trailer.rated(), "kg")));
        Figure kerb = plan.vehicle().mass().kerb();
        measures.add(Measure.of(RATIO, "trailer", trailer.rated().dividedBy(kerb))
                .worked("share = greatest / kerb", in("greatest", trailer.rated(), "kg"), in("kerb", kerb, "kg")));
        if (trailer.onFifthWheel()) {
            measures.add(Measure.of(PIN_BEHIND, "king pin", plan.ballOverhang()));
        } else {
            measures.add(Measure.of(OVERHANG, "tow ball", plan.ballOverhang().dividedBy(plan.wheelbase()))
                    .worked(
                            "share = distance / wheelbase",
                            in("distance", plan.ballOverhang(), "mm"),
                            in("wheelbase", plan.wheelbase(), "mm")));
            measures.add(Measure.of(NOSE_UP, "trailer", plan.ballHeight().minus(trailer.couplingHeight()))
                    .worked(
                            "above = ball - coupling",
                            in("ball", plan.ballHeight(), "mm"),
                            in("coupling", trailer.couplingHeight(), "mm")));
        }
    }
}
