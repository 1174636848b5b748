package fitworthy.figures.towing;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.MassSheet;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Details;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Trailer.Brakes;
import fitworthy.sheet.Vehicle;
import java.util.List;

/**
 * Whether vehicle, tow bar and trailer go together. Their masses on axles and in the GCM are a matter of the masses.
 */
public final class TowingMeasures implements Topic {

    public static final MeasureKind TRAILER =
            rated("towing.trailer", "kg", 0, "loaded mass of the trailer", "the vehicle's tow rating");
    private static final MeasureKind UNRATED = number(
            "towing.unrated",
            "%",
            1,
            "loaded mass of a braked trailer as a share of the unladen vehicle that has no tow rating");
    public static final MeasureKind PLATE =
            rated("towing.plate", "kg", 0, "loaded mass of the trailer", "the trailer's plate");
    public static final MeasureKind COUPLING =
            rated("towing.coupling", "kg", 0, "loaded mass of the trailer", "the plate of the coupling");
    public static final MeasureKind FORCE =
            rated("towing.force", "kN", 2, "force that the greatest masses put on the coupling", "its plate");
    public static final MeasureKind BALL = rated("towing.ball", "kg", 0, "load on the ball", "its limit");
    private static final MeasureKind BALL_LOAD = number("towing.ball-load", "kg", 0, "load on the ball");
    private static final MeasureKind BALL_SHARE =
            number("towing.ball-share", "%", 1, "load on the ball as a share of the loaded trailer");
    private static final MeasureKind BALL_NEEDED =
            number("towing.ball-needed", "kg", 0, "least load on the ball for the loaded trailer");
    private static final MeasureKind UNRATED_HEAVIEST =
            number("towing.unrated-heaviest", "kg", 0, "heaviest loaded trailer for the vehicle's kerb mass");
    private static final MeasureKind RATED = number("towing.rated", "kg", 0, "greatest mass of the trailer");
    private static final MeasureKind AXLES = number("towing.axles", "kg", 0, "greatest load on the trailer's axles");
    private static final MeasureKind UNBRAKED_AXLES =
            number("towing.unbraked-axles", "kg", 0, "greatest load on the axles of a trailer without brakes");
    private static final MeasureKind UNBRAKED =
            number("towing.unbraked", "kg", 0, "greatest mass of a trailer without brakes");
    private static final MeasureKind PLAIN_BRAKES = number(
            "towing.plain-brakes",
            "kg",
            0,
            "greatest load on the axles of a trailer with over-run brakes or with wheels unbraked");
    private static final MeasureKind NO_BREAKAWAY = number(
            "towing.no-breakaway",
            "kg",
            0,
            "greatest load on the axles of a trailer that does not brake by itself when it breaks away");
    private static final MeasureKind BREAKAWAY_HOLD =
            number("towing.breakaway-hold", "min", 0, "how long the trailer's brakes hold after it broke away");
    private static final MeasureKind CHAINS = number("towing.chains", "", 0, "safety chains");
    private static final MeasureKind BRAKE_CONTROL =
            word("towing.brake-control", "whether the vehicle has a brake controller with a feed of its own");
    private static final MeasureKind CONNECTION = word("towing.connection", "whether trailer and vehicle agree in it");
    private static final MeasureKind RATIO =
            number("towing.ratio", "%", 1, "greatest mass of the trailer as a share of the vehicle's kerb mass");
    private static final MeasureKind OUTWEIGHED =
            rated("towing.outweighed", "kg", 0, "loaded mass of the trailer", "loaded mass of the vehicle");
    private static final MeasureKind OVERHANG =
            number("towing.overhang", "%", 1, "distance of the ball from the rear axle as a share of the wheelbase");
    private static final MeasureKind LEVELLING =
            word("towing.levelling", "whether the vehicle's maker allows the load-levelling hitch that is planned");
    private static final MeasureKind NOSE_UP =
            number("towing.nose-up", "mm", 0, "height of the ball above the level trailer's coupling");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                TRAILER,
                UNRATED,
                PLATE,
                COUPLING,
                FORCE,
                BALL,
                BALL_LOAD,
                BALL_SHARE,
                RATED,
                AXLES,
                UNBRAKED_AXLES,
                UNBRAKED,
                PLAIN_BRAKES,
                NO_BREAKAWAY,
                BREAKAWAY_HOLD,
                CHAINS,
                BRAKE_CONTROL,
                CONNECTION,
                RATIO,
                OUTWEIGHED,
                OVERHANG,
                LEVELLING,
                NOSE_UP,
                BALL_NEEDED,
                UNRATED_HEAVIEST);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        plan.sheet().trailer().ifPresent(trailer -> new Pair(plan, plan.towBar(), trailer, measures).add());
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        loading.trailer()
                .ifPresent(trailer -> measures.add(Measure.of(
                                OUTWEIGHED, "trailer", loading.loadCase().name(), trailer.mass(), loading.uncoupled())
                        .worked(
                                "vehicle = loaded - ball",
                                in("loaded", loading.axles().total(), "kg"),
                                in("ball", trailer.ball(), "kg"))
                        .worked(MassSheet.axles(loading.masses(), loading.plan().wheelbase()))));
    }

    /** A vehicle and the trailer planned for it. */
    private record Pair(Plan plan, Details.TowBar towBar, Trailer trailer, List<Measure> measures) {

        void add() {
            masses();
            couplings();
            ball();
            brakes();
            number(RATED, "trailer", trailer.rated());
            axles(AXLES, axles());
            number(CHAINS, "trailer", trailer.chains());
            connections();
            Figure kerb = plan.vehicle().mass().kerb();
            measures.add(Measure.of(RATIO, "trailer", "", trailer.rated().dividedBy(kerb))
                    .worked("share = greatest / kerb", in("greatest", trailer.rated(), "kg"), in("kerb", kerb, "kg")));
            if (!fifthWheel()) {
                measures.add(
                        Measure.of(OVERHANG, "tow ball", "", plan.ballOverhang().dividedBy(plan.wheelbase()))
                                .worked(
                                        "share = distance / wheelbase",
                                        in("distance", plan.ballOverhang(), "mm"),
                                        in("wheelbase", plan.wheelbase(), "mm")));
                measures.add(
                        Measure.of(NOSE_UP, "trailer", "", plan.ballHeight().minus(trailer.couplingHeight()))
                                .worked(
                                        "above = ball - coupling",
                                        in("ball", plan.ballHeight(), "mm"),
                                        in("coupling", trailer.couplingHeight(), "mm")));
            }
            if (towBar.levelling().is(YesNo.YES)) {
                measures.add(Measure.of(
                        LEVELLING, "load-levelling hitch", "", plan.ratings().levelling()));
            }
        }

        private void masses() {
            Vehicle.Ratings ratings = plan.ratings();
            boolean unrated =
                    ratings.towingStated().is(YesNo.NO) && !ratings.towing().known();
            Choice<Brakes> brakes = trailer.brakes();
            if (!brakes.known()) {
                rated(TRAILER, "trailer", trailer.mass(), Figure.missing(brakes.missing()));
            } else if (brakes.is(Brakes.NONE)) {
                rated(TRAILER, "unbraked trailer", trailer.mass(), ratings.towingUnbraked());
            } else if (unrated) {
                Figure kerb = plan.vehicle().mass().kerb();
                measures.add(Measure.of(
                                UNRATED, "braked trailer", "", trailer.mass().dividedBy(kerb))
                        .worked("share = trailer / kerb", in("trailer", trailer.mass(), "kg"), in("kerb", kerb, "kg")));
                Figure most = plan.practice(PracticeId.TOWING_UNRATED_MOST);
                measures.add(Measure.most(UNRATED_HEAVIEST, "braked trailer", "", most.times(kerb))
                        .worked("heaviest = most x kerb", in("most", most, "%"), in("kerb", kerb, "kg")));
            } else {
                rated(TRAILER, "braked trailer", trailer.mass(), ratings.towing());
            }
            rated(PLATE, "trailer", trailer.mass(), trailer.rated());
        }

        private void couplings() {
            coupling("tow bar", towBar.plate());
            coupling("trailer coupling", trailer.coupling());
        }

        /**
         * A plate states a trailer mass or a D value: what it states is judged, and where it states neither it is
         * asked.
         */
        private void coupling(String subject, Details.CouplingPlate plate) {
            if (plate.trailer().known() || !plate.d().known()) {
                rated(COUPLING, subject, trailer.mass(), plate.trailer());
            }
            Figure vehicle = plan.ratings().gvm();
            if (plate.d().known()) {
                Working.Input t = in("T", vehicle, "t");
                Working.Input r = in("R", trailer.rated(), "t");
                String name = subject + ", D";
                measures.add(
                        fifthWheel()
                                ? Measure.of(
                                                FORCE,
                                                name,
                                                "",
                                                Coupling.fifthWheel(vehicle, trailer.rated(), trailer.ball()),
                                                plate.d())
                                        .worked(
                                                "D = 0.6 x 9.81 x T x R / (T + R - U)",
                                                t,
                                                r,
                                                in("U", trailer.ball(), "t"))
                                : Measure.of(FORCE, name, "", Coupling.d(vehicle, trailer.rated()), plate.d())
                                        .worked("D = 9.81 x T x R / (T + R)", t, r));
            }
            if (plate.dc().known()) {
                measures.add(Measure.of(FORCE, subject + ", Dc", "", Coupling.d(vehicle, axles()), plate.dc())
                        .worked("Dc = 9.81 x T x C / (T + C)", in("T", vehicle, "t"), in("C", axles(), "t"))
                        .worked(lessBall("C")));
            }
            if (plate.v().known()) {
                Choice<YesNo> air = plan.vehicle().rearAirSprings();
                Figure body = trailer.length().minus(trailer.drawbar());
                Figure force = Coupling.v(axles(), body, trailer.axle(), air.is(YesNo.YES));
                measures.add(Measure.of(FORCE, subject + ", V", "", given(air, force), plate.v())
                        .worked(
                                air.is(YesNo.YES)
                                        ? "V = 1.8 x C x max(1, X^2 / l^2)"
                                        : "V = 2.4 x C x max(1, X^2 / l^2)",
                                in("C", axles(), "t"),
                                in("X", body, "m"),
                                in("l", trailer.axle(), "m"))
                        .worked(
                                "X = length - drawbar",
                                in("length", trailer.length(), "m"),
                                in("drawbar", trailer.drawbar(), "m"))
                        .worked(lessBall("C")));
            }
        }

        private void ball() {
            rated(BALL, "vehicle", trailer.ball(), plan.ratings().ball());
            rated(BALL, "tow bar", trailer.ball(), towBar.plate().ball());
            if (trailer.coupling().ball().known()) {
                rated(
                        BALL,
                        "trailer coupling",
                        trailer.ball(),
                        trailer.coupling().ball());
            }
            if (!fifthWheel()) {
                number(BALL_LOAD, "tow ball", trailer.ball());
                measures.add(
                        Measure.of(BALL_SHARE, "tow ball", "", trailer.ball().dividedBy(trailer.mass()))
                                .worked(
                                        "share = ball / trailer",
                                        in("ball", trailer.ball(), "kg"),
                                        in("trailer", trailer.mass(), "kg")));
                Figure least = plan.practice(PracticeId.TOWING_BALL_SHARE_LEAST);
                measures.add(Measure.enough(BALL_NEEDED, "tow ball", "", least.times(trailer.mass()))
                        .worked(
                                "needed = least x trailer",
                                in("least", least, "%"),
                                in("trailer", trailer.mass(), "kg")));
            }
        }

        private void brakes() {
            Choice<Brakes> brakes = trailer.brakes();
            if (!brakes.known() || brakes.is(Brakes.NONE)) {
                axles(UNBRAKED_AXLES, given(brakes, axles()));
                number(UNBRAKED, "trailer", given(brakes, trailer.rated()));
            }
            if (!brakes.known()
                    || brakes.is(Brakes.OVER_RUN)
                    || braked() && !trailer.everyWheelBraked().is(YesNo.YES)) {
                axles(
                        PLAIN_BRAKES,
                        brakes.is(Brakes.OVER_RUN)
                                ? axles()
                                : given(brakes, given(trailer.everyWheelBraked(), axles())));
            }
            if (!brakes.known() || braked() && !trailer.breakaway().is(YesNo.YES)) {
                axles(NO_BREAKAWAY, given(brakes, given(trailer.breakaway(), axles())));
            }
            boolean controlled = brakes.known() && brakes.value().controlled();
            if (controlled && trailer.breakaway().is(YesNo.YES)) {
                number(BREAKAWAY_HOLD, "trailer", trailer.breakawayHold());
            }
            if (!brakes.known() || controlled) {
                measures.add(Measure.of(
                        BRAKE_CONTROL,
                        "brake controller",
                        "",
                        brakes.known() ? controller() : new Choice<YesNo>(null, brakes.missing())));
            }
        }

        private Choice<YesNo> controller() {
            return plan.planned(Details.BrakeController.class)
                    .map(Details.BrakeController::feed)
                    .orElse(plan.vehicle().brakeController());
        }

        private void connections() {
            Choice<Details.Plug> plug = trailer.plug();
            Choice<Details.Plug> socket = towBar.socket();
            connection(
                    "plug",
                    !plug.known()
                            ? new Choice<YesNo>(null, plug.missing())
                            : !socket.known()
                                    ? new Choice<YesNo>(null, socket.missing())
                                    : answer(plug.value().fits(socket.value())));
            Figure gap = trailer.voltage().minus(towBar.voltage());
            connection(
                    "lamp voltage",
                    gap.known()
                            ? answer(gap.value() == 0)
                            : new Choice<YesNo>(null, gap.missing().get(0)));
        }

        private void connection(String subject, Choice<YesNo> agrees) {
            measures.add(Measure.of(CONNECTION, subject, "", agrees));
        }

        private boolean fifthWheel() {
            return trailer.hitch().is(Trailer.Hitch.FIFTH_WHEEL);
        }

        private boolean braked() {
            return trailer.brakes().known() && !trailer.brakes().is(Brakes.NONE);
        }

        private Figure axles() {
            return trailer.gtm().or(trailer.rated().minus(trailer.ball()));
        }

        /** How {@link #axles} came about in the units of the coupling; nothing where the sheet gives it. */
        private Working[] lessBall(String result) {
            return trailer.gtm().known()
                    ? new Working[0]
                    : new Working[] {
                        new Working.Formula(
                                result + " = rated - ball",
                                List.of(in("rated", trailer.rated(), "t"), in("ball", trailer.ball(), "t")))
                    };
        }

        private void axles(MeasureKind kind, Figure load) {
            Measure measure = Measure.of(kind, "trailer", "", load);
            measures.add(
                    trailer.gtm().known()
                            ? measure
                            : measure.worked(
                                    "axles = rated - ball",
                                    in("rated", trailer.rated(), "kg"),
                                    in("ball", trailer.ball(), "kg")));
        }

        private void number(MeasureKind kind, String subject, Figure figure) {
            measures.add(Measure.of(kind, subject, "", figure));
        }

        private void rated(MeasureKind kind, String subject, Figure figure, Figure limit) {
            measures.add(Measure.of(kind, subject, "", figure, limit));
        }

        /** The figure where the question is answered, else what the answer lacks. */
        private static Figure given(Choice<?> question, Figure figure) {
            return question.known() ? figure : Figure.missing(question.missing());
        }

        private static Choice<YesNo> answer(boolean yes) {
            return Choice.of(yes ? YesNo.YES : YesNo.NO);
        }
    }
}
