package fitworthy.figures.suspension;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.MassWorkings;
import fitworthy.figures.plan.Masses;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Papers.Alteration;
import fitworthy.sheet.SuspensionDetails.AirSprings;
import fitworthy.sheet.SuspensionDetails.BodyLift;
import fitworthy.sheet.SuspensionDetails.Dampers;
import fitworthy.sheet.SuspensionDetails.Springs;
import fitworthy.sheet.Vehicle;
import fitworthy.sheet.VehicleEnd;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Ride height, and springs against the load they carry. Asked only where springs, a lift or a heavy front are planned.
 */
public final class SuspensionMeasures implements Topic {

    private static final MeasureKind LIFT =
            number("suspension.lift", "mm", 0, "total lift").signed();
    private static final MeasureKind CERTIFIED =
            yesNo("suspension.certified", "whether the lift is done and its certificate in hand");
    private static final MeasureKind STABILITY_LIFT = number(
                    "suspension.stability-lift", "mm", 0, "total lift, with stability control")
            .signed();
    private static final MeasureKind BODY_LIFT = number("suspension.body-lift", "mm", 0, "lift by body spacers");
    private static final MeasureKind HEIGHT_CHANGE =
            number("suspension.height-change", "mm", 0, "change of ride height by the springs, up or down");
    private static final MeasureKind TRAVEL =
            number("suspension.travel", "%", 1, "share of the wheel travel that is kept");
    private static final MeasureKind LOAD_MOST = rated(
                    "suspension.load-most", "kg", 0, "fixed load on the axle", "most that the springs are made for")
            .bothWays();
    private static final MeasureKind LOAD_LEAST = rated(
                    "suspension.load-least", "kg", 0, "fixed load on the axle", "least that the springs are made for")
            .bothWays();
    private static final MeasureKind LOAD_ON_MADE =
            number("suspension.load-on-made", "kg", 0, "fixed load on the standard springs");
    private static final MeasureKind FREQUENCY = number("suspension.frequency", "Hz", 2, "natural frequency")
            .byLoading()
            .bothWays();
    private static final MeasureKind REAR_TO_FRONT = number(
                    "suspension.rear-to-front", "", 2, "natural frequency of the rear over that of the front")
            .byLoading();
    private static final MeasureKind SAG = number(
                    "suspension.sag", "%", 0, "share of the travel to the bump stop that the load takes up")
            .signed()
            .byLoading();
    private static final MeasureKind RATE_NEEDED = number(
                    "suspension.rate-needed", "N/mm", 1, "spring rate that is stiff enough")
            .byLoading();
    private static final MeasureKind SAG_RATE_NEEDED = number(
                    "suspension.sag-rate-needed", "N/mm", 1, "spring rate that keeps enough of the travel")
            .byLoading();
    private static final MeasureKind DAMPER_LIFT =
            number("suspension.damper-lift", "mm", 0, "lift by the springs on the dampers as they are");
    private static final MeasureKind LINES = yesNo("suspension.lines", "whether brake hoses and leads reach");
    private static final MeasureKind JOINT =
            number("suspension.joint-angle", "deg", 1, "largest angle of a universal joint");
    private static final MeasureKind ALIGNMENT = yesNo("suspension.alignment", "whether a wheel alignment is planned");
    private static final MeasureKind AIR_SPRINGS =
            yesNo("suspension.air-springs", "whether the vehicle's maker lets air springs press on its rails there");
    private static final MeasureKind LAMP_AIM = yesNo("suspension.lamp-aim", "whether headlamp aim is planned");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                LIFT,
                CERTIFIED,
                STABILITY_LIFT,
                BODY_LIFT,
                HEIGHT_CHANGE,
                TRAVEL,
                LOAD_MOST,
                LOAD_LEAST,
                LOAD_ON_MADE,
                FREQUENCY,
                REAR_TO_FRONT,
                SAG,
                DAMPER_LIFT,
                LINES,
                JOINT,
                ALIGNMENT,
                LAMP_AIM,
                AIR_SPRINGS,
                RATE_NEEDED,
                SAG_RATE_NEEDED);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        List<Springs> springs = plan.details(Springs.class);
        List<BodyLift> bodyLifts = plan.details(BodyLift.class);
        // Not known differs from zero too.
        if (!springs.isEmpty() || !bodyLifts.isEmpty() || !plan.tyreGrowth().isZero()) {
            lift(plan, "front axle", VehicleEnd.FRONT, measures);
            lift(plan, "rear axle", VehicleEnd.REAR, measures);
            measures.add(Measure.of(
                    CERTIFIED, "ride height", Choice.yesNo(Alterations.certified(plan, Alteration.RIDE_HEIGHT))));
        }
        for (Fitment fitment : plan.fitments(Fitment.Kind.BODY_LIFT)) {
            measures.add(Measure.of(BODY_LIFT, fitment.name(), ((BodyLift) fitment.details()).lift()));
        }
        for (Fitment fitment : plan.fitments(Fitment.Kind.SPRINGS)) {
            springs(plan, fitment, (Springs) fitment.details(), measures);
        }
        Figure front = Masses.onSprings(plan).front();
        if (planned(plan, VehicleEnd.FRONT).isEmpty() && !(front.value() <= 0)) {
            measures.add(Measure.of(LOAD_ON_MADE, "front axle", front).worked(fixedSheet(plan)));
        }
        for (Fitment fitment : plan.fitments(Fitment.Kind.AIR_SPRINGS)) {
            measures.add(Measure.of(AIR_SPRINGS, fitment.name(), ((AirSprings) fitment.details()).allowed()));
        }
        List<Springs> newSprings = plan.toBeDone(Springs.class);
        Choice.any(newSprings.stream().map(Springs::alignment))
                .ifPresent(answer -> measures.add(Measure.of(ALIGNMENT, "wheel alignment", answer)));
        Choice.any(Stream.concat(
                        newSprings.stream().map(Springs::lampAim),
                        plan.toBeDone(BodyLift.class).stream().map(BodyLift::lampAim)))
                .ifPresent(answer -> measures.add(Measure.of(LAMP_AIM, "headlamp aim", answer)));
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        Plan plan = loading.plan();
        Vehicle.Suspension made = plan.vehicle().suspension();
        Optional<Springs> front = planned(plan, VehicleEnd.FRONT);
        Optional<Springs> rear = planned(plan, VehicleEnd.REAR);
        if (front.isEmpty() && rear.isEmpty()) {
            return;
        }
        SprungAxles sprung = SprungAxles.of(loading);
        Oscillation atFront =
                new Oscillation(front, made.front(), sprung.loads().front());
        Oscillation atRear = new Oscillation(rear, made.rear(), sprung.loads().rear());
        Oscillation levelled = new Oscillation(front, made.front(), sprung.frontLevelled(loading));
        front.ifPresent(springs -> {
            measures.add(Measure.of(FREQUENCY, "front axle", levelled.frequency())
                    .worked(levelled.working("frequency", "rate")));
            stiffness("front axle", loading, springs, levelled.frequency(), measures);
            Figure beyond = AxleLoads.difference(
                            Levelling.onFront(plan, loading.masses()), Masses.bareAndFixed(plan), plan.wheelbase())
                    .front();
            sag("front axle", loading, springs, beyond, measures);
        });
        rear.ifPresent(springs -> {
            measures.add(
                    Measure.of(FREQUENCY, "rear axle", atRear.frequency()).worked(atRear.working("frequency", "rate")));
            stiffness("rear axle", loading, springs, atRear.frequency(), measures);
            sag(
                    "rear axle",
                    loading,
                    springs,
                    loading.beyond(Masses.bareAndFixed(plan)).rear(),
                    measures);
        });
        measures.add(Measure.of(REAR_TO_FRONT, "vehicle", sprung.rearToFront(atFront, atRear))
                .worked(
                        "ratio = rear / front",
                        in("rear", atRear.frequency(), "Hz"),
                        in("front", atFront.frequency(), "Hz"))
                .worked(atFront.working("front", "front rate"))
                .worked(atRear.working("rear", "rear rate")));
    }

    private static void lift(Plan plan, String axle, VehicleEnd end, List<Measure> measures) {
        Figure body = plan.details(BodyLift.class).stream().map(BodyLift::lift).reduce(Figure.of(0, 0), Figure::plus);
        Figure springs = planned(plan, end).map(Springs::lift).orElse(Figure.of(0, 0));
        Figure growth = plan.tyreGrowth();
        Figure lift = RideHeight.lift(springs, body, growth);
        Working sum = new Working.Formula(
                "lift = springs + body + growth / 2",
                List.of(in("springs", springs, "mm"), in("body", body, "mm"), in("growth", growth, "mm")));
        measures.add(Measure.of(LIFT, axle, lift).worked(sum));
        Choice<YesNo> stabilityControl = plan.vehicle().stabilityControl();
        if (!stabilityControl.is(YesNo.NO)) {
            measures.add(Measure.of(
                            STABILITY_LIFT,
                            axle,
                            stabilityControl.known() ? lift : Figure.missing(stabilityControl.missing()))
                    .worked(sum));
        }
    }

    private static void springs(Plan plan, Fitment fitment, Springs springs, List<Measure> measures) {
        String name = fitment.name();
        boolean atFront = springs.end().is(VehicleEnd.FRONT);
        Vehicle.Suspension suspension = plan.vehicle().suspension();
        AxleLoads fixed = Masses.onSprings(plan);
        Figure fixedLoad = atFront ? fixed.front() : fixed.rear();
        Figure load = fixedLoad.most(Figure.of(0));
        Working floor = new Working.Formula("load = max(0, fixed)", List.of(in("fixed", fixedLoad, "kg")));
        Figure lift = springs.lift();
        if (!Alterations.certified(fitment)) {
            measures.add(Measure.of(
                    HEIGHT_CHANGE, name, lift.known() ? Figure.of(Math.abs(lift.value()), lift.tolerance()) : lift));
        }
        Figure made = (atFront ? suspension.front() : suspension.rear()).travel();
        measures.add(Measure.of(TRAVEL, name, springs.travel().dividedBy(made))
                .worked("kept = planned / made", in("planned", springs.travel(), "mm"), in("made", made, "mm")));
        measures.add(Measure.of(LOAD_MOST, name, sure(load, springs.loadMost()::isAtLeast, plan), springs.loadMost())
                .worked(floor)
                .worked(fixedSheet(plan)));
        measures.add(Measure.of(LOAD_LEAST, name, sure(load, springs.loadLeast()::isAtMost, plan), springs.loadLeast())
                .worked(floor)
                .worked(fixedSheet(plan)));
        if (!(lift.value() <= 0)) {
            Choice<Dampers> dampers = springs.dampers();
            if (!dampers.is(Dampers.MATCHED)) {
                Measure left = Measure.of(DAMPER_LIFT, name, lift);
                // What becomes of the dampers is asked where it can decide.
                boolean enough = lift.isAtMost(plan.practice(PracticeId.SUSPENSION_DAMPER_LIFT_MOST));
                measures.add(enough ? left : left.given(dampers));
            }
            measures.add(Measure.of(LINES, name, springs.linesReach()));
            measures.add(Measure.of(JOINT, name, springs.jointAngle()));
        }
    }

    /** A load on springs, or the place of what may stand on them as well where that turns the verdict on it. */
    private static Figure sure(Figure load, Predicate<Figure> kept, Plan plan) {
        List<Fitment> unplaced = Masses.unplaced(plan);
        Figure most = unplaced.stream().map(Fitment::mass).reduce(load, Figure::plus);
        if (!most.known()) {
            return most;
        }
        return kept.test(load) == kept.test(most)
                ? load
                : Figure.missing(unplaced.stream()
                        .map(part -> new Missing(
                                "fitments." + part.name() + ".at.x",
                                "where it stands, backwards from the front axle",
                                "a tape from the front wheel centre"))
                        .toList());
    }

    private static Optional<Springs> planned(Plan plan, VehicleEnd end) {
        return plan.details(Springs.class).stream()
                .filter(springs -> springs.end().is(end))
                .findFirst();
    }

    /** The rate that the least frequency asks for; a rate goes with the square of the frequency. */
    private static void stiffness(
            String axle, Loading loading, Springs springs, Figure frequency, List<Measure> measures) {
        Figure least = loading.plan().practice(PracticeId.SUSPENSION_FREQUENCY_LEAST);
        measures.add(Measure.enough(
                        RATE_NEEDED,
                        axle,
                        Derived.of(v -> v[0] * Math.pow(v[1] / v[2], 2), springs.rate(), least, frequency))
                .worked(
                        "needed = spring x (least / frequency)^2",
                        in("spring", springs.rate(), "N/mm"),
                        in("least", least, "Hz"),
                        in("frequency", frequency, "Hz")));
    }

    private static void sag(String axle, Loading loading, Springs springs, Figure beyond, List<Measure> measures) {
        Figure rate = Oscillation.wheelRate(springs);
        Figure sag = SpringRate.deflection(beyond.times(0.5), rate).dividedBy(springs.bumpTravel());
        Plan plan = loading.plan();
        AxleLoads standing = AxleLoads.of(Masses.bareAndFixed(plan), plan.wheelbase());
        boolean front = springs.end().is(VehicleEnd.FRONT);
        measures.add(Measure.of(SAG, axle, sag)
                .worked(
                        "taken up = (load - standing) / 2 x 9.80665 / rate / travel",
                        in(
                                "load",
                                front
                                        ? Levelling.front(loading)
                                        : loading.axles().rear(),
                                "kg"),
                        in("standing", front ? standing.front() : standing.rear(), "kg"),
                        in("rate", rate, "N/m"),
                        in("travel", springs.bumpTravel(), "m"))
                .worked(Oscillation.atWheel("rate", springs)));
        Figure most = loading.plan().practice(PracticeId.SUSPENSION_SAG_MOST);
        measures.add(Measure.enough(
                        SAG_RATE_NEEDED,
                        axle,
                        springs.rate().times(sag.most(Figure.of(0, 0))).dividedBy(most))
                .worked(
                        "needed = spring x max(0, taken) / most",
                        in("spring", springs.rate(), "N/mm"),
                        in("taken", sag, "%"),
                        in("most", most, "%")));
    }

    private static Working fixedSheet(Plan plan) {
        return MassWorkings.axles(Masses.fixedOnSprings(plan), plan.wheelbase());
    }
}
