package fitworthy.figures.tyres;

import static fitworthy.figures.measure.MeasureKind.lookedUp;
import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.MassWorkings;
import fitworthy.figures.plan.PassengerTyres;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.RunningGear;
import fitworthy.figures.plan.Topic;
import fitworthy.figures.plan.TyreSet;
import fitworthy.figures.plan.VehicleClass;
import fitworthy.figures.plan.WheelbaseStretch;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.TyreDetails;
import fitworthy.sheet.TyreSize;
import fitworthy.sheet.Vehicle;
import java.util.List;

/**
 * What tyres and wheels are rated for: load and speed, and the pressure for the load. The maker's own wheels under the
 * maker's own axle limits raise no question of their rating.
 */
public final class TyreRatingMeasures implements Topic {
    public static final MeasureKind LOAD = rated("tyres.load", "kg", 0, "load on the axle", "what its tyres carry")
            .byLoading();
    private static final MeasureKind AXLE_LIMIT =
            rated("tyres.axle-limit", "kg", 0, "axle limit", "what its tyres carry");
    public static final MeasureKind INDEX_NEEDED =
            number("tyres.index-needed", "", 0, "load index for this load").byLoading();
    public static final MeasureKind AXLE_INDEX_NEEDED =
            number("tyres.axle-index-needed", "", 0, "load index for the axle limit");
    private static final MeasureKind INDEX_MARKED = lookedUp(
                    "tyres.index-marked", "load index for this load as a sidewall has it")
            .byLoading();
    private static final MeasureKind AXLE_INDEX_MARKED =
            lookedUp("tyres.axle-index-marked", "load index for the axle limit as a sidewall has it");
    public static final MeasureKind WHEEL_LOAD = rated(
                    "tyres.wheel-load", "kg", 0, "load on the axle", "what its wheels carry")
            .byLoading();
    private static final MeasureKind WHEEL_AXLE_LIMIT =
            rated("tyres.wheel-axle-limit", "kg", 0, "axle limit", "what its wheels carry");
    public static final MeasureKind WHEEL_NEEDED = number(
                    "tyres.wheel-needed", "kg", 0, "rating of a wheel for this load")
            .byLoading();
    public static final MeasureKind AXLE_WHEEL_NEEDED =
            number("tyres.axle-wheel-needed", "kg", 0, "rating of a wheel for the axle limit");
    private static final MeasureKind WHEEL_BELOW_TYRE =
            rated("tyres.wheel-below-tyre", "kg", 0, "load of one tyre", "rating of one wheel");
    private static final MeasureKind LOAD_LOST = number(
            "tyres.load-lost", "kg", 0, "how much less one planned tyre carries than one that the vehicle came with");
    private static final MeasureKind SPEED =
            rated("tyres.speed", "km/h", 0, "highest speed that will be driven", "speed of the tyres' symbol");
    public static final MeasureKind SYMBOL_NEEDED =
            lookedUp("tyres.symbol-needed", "slowest speed symbol for this speed that is accepted on new tyres");
    private static final MeasureKind ROAD_PRESSURE =
            number("tyres.road-pressure", "kPa", 0, "pressure planned for the road");
    private static final MeasureKind TOP_SPEED =
            number("tyres.top-speed", "km/h", 0, "highest speed that will be driven");
    private static final MeasureKind PRESSURE = rated(
                    "tyres.pressure", "kPa", 0, "planned pressure", "pressure for the load")
            .byLoading()
            .bothWays();
    private static final MeasureKind SPARE_LOAD = rated(
                    "tyres.spare-load", "kg", 0, "load on one tyre of the axle", "load of the spare")
            .byLoading();

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                LOAD,
                AXLE_LIMIT,
                INDEX_NEEDED,
                AXLE_INDEX_NEEDED,
                INDEX_MARKED,
                AXLE_INDEX_MARKED,
                WHEEL_LOAD,
                WHEEL_AXLE_LIMIT,
                WHEEL_NEEDED,
                AXLE_WHEEL_NEEDED,
                WHEEL_BELOW_TYRE,
                LOAD_LOST,
                SPEED,
                SYMBOL_NEEDED,
                PRESSURE,
                ROAD_PRESSURE,
                TOP_SPEED,
                SPARE_LOAD);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Vehicle.Ratings ratings = plan.ratings();
        axleLimit(plan, "front axle", ratings.frontAxle(), false, measures);
        axleLimit(plan, "rear axle", ratings.rearAxle(), true, measures);
        if (!plan.fitments(Fitment.Kind.TYRES).isEmpty()) {
            plan.tyreSets().forEach(set -> loadLost(plan, set, measures));
        }
        for (TyreSet tyres : plan.tyreSets()) {
            measures.add(Measure.of(
                            SPEED,
                            tyres.subject(plan.tyreSets()),
                            plan.sheet().trip().topSpeed(),
                            tyres.speed(plan.tables()))
                    .worked(tyres.symbol()));
        }
        measures.add(symbolNeeded(plan));
        measures.add(Measure.of(ROAD_PRESSURE, "front axle", plan.tyres().frontPressure()));
        measures.add(Measure.of(ROAD_PRESSURE, "rear axle", plan.tyres().rearPressure()));
        measures.add(Measure.of(TOP_SPEED, "trip", plan.sheet().trip().topSpeed()));
        // As the maker paired them nobody counts on the tyre.
        if (!plan.fitments(Fitment.Kind.WHEELS).isEmpty()
                || !plan.fitments(Fitment.Kind.TYRES).isEmpty()) {
            Figure index = plan.tyreSets().stream()
                    .map(set -> set.tyres().loadIndex())
                    .reduce(Figure::most)
                    .orElseThrow();
            measures.add(Measure.of(
                            WHEEL_BELOW_TYRE,
                            "wheels",
                            plan.tables().tyreLoad(index),
                            plan.wheels().rating())
                    .worked(RunningGear.indexed(index)));
        }
    }

    private static void loadLost(Plan plan, TyreSet planned, List<Measure> measures) {
        Figure cameWith = plan.stockTyreSet().tyres().loadIndex();
        Figure index = planned.tyres().loadIndex();
        Figure before = plan.tables().tyreLoad(cameWith);
        Figure after = plan.tables().tyreLoad(index);
        measures.add(Measure.of(
                        LOAD_LOST,
                        planned.subject(plan.tyreSets()),
                        before.minus(after).most(Figure.of(0, 0)))
                .worked(
                        RunningGear.indexed(cameWith),
                        RunningGear.indexed(index),
                        new Working.Formula(
                                "lost = max(0, came with - planned)",
                                List.of(in("came with", before, "kg"), in("planned", after, "kg")))));
    }

    private static void axleLimit(Plan plan, String axle, Figure limit, boolean rear, List<Measure> measures) {
        PassengerTyres tyres = RunningGear.onTheRoad(plan);
        Figure carried = RunningGear.tyresCarry(plan, rear);
        Figure counted = tyres.counted(carried, limit);
        measures.add(Measure.of(AXLE_LIMIT, axle, limit, counted)
                .worked(tyres.working(carried, counted))
                .worked(RunningGear.tyresCarried(plan, rear)));
        measures.add(indexNeeded(AXLE_INDEX_NEEDED, plan, axle, limit, rear));
        measures.add(indexMarked(
                AXLE_INDEX_MARKED,
                plan,
                axle,
                plan.ratings().frontAxle(),
                plan.ratings().rearAxle(),
                rear));
        if (RunningGear.wheelsInQuestion(plan)) {
            measures.add(Measure.of(WHEEL_AXLE_LIMIT, axle, limit, RunningGear.wheelsCarry(plan, rear))
                    .worked(RunningGear.wheelsCarried(plan, rear)));
            measures.add(wheelNeeded(AXLE_WHEEL_NEEDED, plan, axle, limit, rear));
        }
    }

    private static Measure indexNeeded(MeasureKind kind, Plan plan, String axle, Figure load, boolean rear) {
        Figure onOne = onOne(plan, load, rear);
        return Measure.of(kind, axle, plan.tables().tyreIndex(onOne))
                .worked(() -> List.of("from the table of load indices, the first that carries "
                        + in("load", onOne, "kg").shown()));
    }

    private static Figure onOne(Plan plan, Figure load, boolean rear) {
        return RunningGear.onTheRoad(plan).forIndex(load.times(1.0 / RunningGear.wheels(plan, rear)));
    }

    /**
     * The index to ask for. Where two wheels stand on each side at the rear a sidewall has one for single and one for dual
     * fitting, and where all tyres are of one set each axle needs its own of them.
     */
    private static Measure indexMarked(
            MeasureKind kind, Plan plan, String axle, Figure front, Figure rearLoad, boolean rear) {
        Figure single = plan.tables().tyreIndex(onOne(plan, front, false));
        Figure dual = plan.tables().tyreIndex(onOne(plan, rearLoad, true));
        Figure own = rear ? dual : single;
        boolean twin = RunningGear.wheels(plan, true) > RunningGear.wheels(plan, false);
        boolean both = twin && plan.tyreSets().size() == 1 && single.known() && dual.known();
        String words = both
                ? index(single.most(dual)) + "/" + index(dual) + " (single/dual)"
                : index(own) + (twin && rear ? " (dual)" : "");
        return Measure.of(kind, axle, own.known() ? words : "", own.missing());
    }

    private static String index(Figure index) {
        return Long.toString(Math.round(index.value()));
    }

    private static Measure symbolNeeded(Plan plan) {
        Figure speed = plan.sheet().trip().topSpeed().most(TyreChangeMeasures.leastSymbol(plan));
        return Measure.of(
                SYMBOL_NEEDED, "tyres", speed.known() ? plan.tables().tyreSymbol(speed) : "", speed.missing());
    }

    private static Measure wheelNeeded(MeasureKind kind, Plan plan, String axle, Figure load, boolean rear) {
        return Measure.enough(kind, axle, load.times(1.0 / RunningGear.wheels(plan, rear)))
                .worked(
                        "needed = load / wheels",
                        in("load", load, "kg"),
                        in("wheels", Figure.of(RunningGear.wheels(plan, rear)), ""));
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        Figure front = Levelling.front(loading);
        Figure rear = loading.axles().rear();
        axle(loading, "front axle", front, loading.least().front(), false, measures);
        axle(loading, "rear axle", rear, loading.least().rear(), true, measures);
        Figure mostFront = mostOn(loading.plan(), front, loading.least().front(), false);
        Figure mostRear = mostOn(loading.plan(), rear, loading.least().rear(), true);
        measures.add(indexMarked(INDEX_MARKED, loading.plan(), "front axle", mostFront, mostRear, false));
        measures.add(indexMarked(INDEX_MARKED, loading.plan(), "rear axle", mostFront, mostRear, true));
    }

    /** @param least what the axle carries at least, by what is known of it */
    private static void axle(
            Loading loading, String axle, Figure load, Figure least, boolean rear, List<Measure> measures) {
        Plan plan = loading.plan();
        Figure carried = RunningGear.tyresCarry(plan, rear);
        Working sheet = MassWorkings.axles(loading.masses(), plan.wheelbase());
        Working[] barsOn = rear ? new Working[0] : Levelling.frontWorked(loading);
        measures.add(Measure.of(LOAD, axle, plan.stretch().against(load, carried), carried)
                .worked(RunningGear.tyresCarried(plan, rear))
                .worked(sheet)
                .worked(barsOn)
                .atLeast(least));
        Figure known = load.known() ? load : least;
        measures.add(indexNeeded(INDEX_NEEDED, plan, axle, mostOn(plan, load, least, rear), rear));
        if (RunningGear.wheelsInQuestion(plan)) {
            Figure wheels = RunningGear.wheelsCarry(plan, rear);
            measures.add(wheelNeeded(
                    WHEEL_NEEDED, plan, axle, plan.stretch().most(known.isAbove(wheels) ? known : load), rear));
            measures.add(Measure.of(WHEEL_LOAD, axle, plan.stretch().against(load, wheels), wheels)
                    .worked(RunningGear.wheelsCarried(plan, rear), sheet)
                    .worked(barsOn)
                    .atLeast(least));
        }
        // Overloaded tyres are a fault that no pressure mends.
        if (!known.isAbove(carried)) {
            pressure(plan, axle, load, carried, rear, measures);
        }
        spare(plan, axle, load, least, rear, measures);
    }

    /** What tyres have to carry on an axle: of a load that is not known, the least where that is too much already. */
    private static Figure mostOn(Plan plan, Figure load, Figure least, boolean rear) {
        Figure known = load.known() ? load : least;
        return plan.stretch().most(known.isAbove(RunningGear.tyresCarry(plan, rear)) ? known : load);
    }

    private static void pressure(
            Plan plan, String axle, Figure load, Figure carried, boolean rear, List<Measure> measures) {
        WheelbaseStretch stretch = plan.stretch();
        TyreDetails.Tyres tyres = plan.tyres(rear);
        Figure reference = tyres.referencePressure();
        Figure planned = rear ? tyres.rearPressure() : tyres.frontPressure();
        Figure needed = TyreFigures.pressureNeeded(reference, load, carried);
        Figure within = TyreFigures.pressureNeeded(reference, stretch.unsettled(), carried);
        Figure sure = planned.isAtMost(needed) ? stretch.most(load) : load;
        measures.add(Measure.of(
                        PRESSURE,
                        axle,
                        stretch.settled(planned, within, needed),
                        TyreFigures.pressureNeeded(reference, sure, carried))
                .worked(
                        "needed = reference x load / carried",
                        in("reference", reference, "kPa"),
                        in("load", sure, "kg"),
                        in("carried", carried, "kg"))
                .worked(RunningGear.tyresCarried(plan, rear)));
    }

    private static void spare(Plan plan, String axle, Figure load, Figure least, boolean rear, List<Measure> measures) {
        Figure index = plan.vehicle().spare().loadIndex();
        Figure onOne = load.times(1.0 / RunningGear.wheels(plan, rear));
        Figure carried = plan.tables().tyreLoad(index);
        PassengerTyres spare = VehicleClass.tyres(plan, sparePassenger(plan));
        Figure counted = spare.counted(carried, onOne);
        Figure within = plan.stretch().unsettled().times(1.0 / RunningGear.wheels(plan, rear));
        measures.add(Measure.of(SPARE_LOAD, axle, plan.stretch().settled(onOne, within, counted), counted)
                .worked("load = axle / tyres", in("axle", load, "kg"), RunningGear.tyreCount(plan, rear))
                .worked(spare.working(carried, counted), RunningGear.indexed(index))
                .atLeast(least.times(1.0 / RunningGear.wheels(plan, rear))));
    }

    /** By the mark in its size, else as the tyres on the road where it is of their size. */
    private static Choice<YesNo> sparePassenger(Plan plan) {
        String size = plan.vehicle().spare().size();
        boolean same = TyreSize.read(size).isPresent()
                && TyreSize.read(size).equals(TyreSize.read(plan.tyres().size()));
        return TyreSize.passenger(size)
                .map(Choice::yesNo)
                .orElseGet(() -> same
                        ? plan.tyreSet().passenger()
                        : Choice.missing(new Missing(
                                "vehicle.spare.size",
                                "whether the spare is a passenger tyre, by a P or LT in its size",
                                "the sidewall")));
    }
}
