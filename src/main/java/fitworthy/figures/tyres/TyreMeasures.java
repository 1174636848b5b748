package fitworthy.figures.tyres;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.MassSheet;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.figures.plan.TyreSet;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.TyreSize;
import fitworthy.sheet.Vehicle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Tyres and wheels: what they carry, how fast, and what a change of them does. The maker's own wheels under the maker's
 * own axle limits raise no question of their rating; what a change does is asked only where tyres or wheels are
 * planned.
 */
public final class TyreMeasures implements Topic {

    public static final MeasureKind LOAD = rated("tyres.load", "kg", 0, "load on the axle", "what its tyres carry");
    private static final MeasureKind AXLE_LIMIT =
            rated("tyres.axle-limit", "kg", 0, "axle limit", "what its tyres carry");
    private static final MeasureKind INDEX_NEEDED = number("tyres.index-needed", "", 0, "load index for this load");
    private static final MeasureKind AXLE_INDEX_NEEDED =
            number("tyres.axle-index-needed", "", 0, "load index for the axle limit");
    private static final MeasureKind WHEEL_NEEDED =
            number("tyres.wheel-needed", "kg", 0, "rating of a wheel for this load");
    private static final MeasureKind AXLE_WHEEL_NEEDED =
            number("tyres.axle-wheel-needed", "kg", 0, "rating of a wheel for the axle limit");
    public static final MeasureKind WHEEL_LOAD =
            rated("tyres.wheel-load", "kg", 0, "load on the axle", "what its wheels carry");
    private static final MeasureKind WHEEL_AXLE_LIMIT =
            rated("tyres.wheel-axle-limit", "kg", 0, "axle limit", "what its wheels carry");
    private static final MeasureKind WHEEL_BELOW_TYRE =
            rated("tyres.wheel-below-tyre", "kg", 0, "load of one tyre", "rating of one wheel");
    private static final MeasureKind SPEED =
            rated("tyres.speed", "km/h", 0, "highest speed that will be driven", "speed of the tyres' symbol");
    private static final MeasureKind SYMBOL_NEEDED =
            MeasureKind.word("tyres.symbol-needed", "slowest speed symbol for this speed");
    private static final MeasureKind SPEED_RATING =
            number("tyres.speed-rating", "km/h", 0, "speed of the symbol of tyres slower than the maker's");
    private static final MeasureKind GROWTH =
            number("tyres.diameter-growth", "mm", 1, "growth of the nominal diameter");
    private static final MeasureKind LOSS = number("tyres.diameter-loss", "mm", 1, "loss of nominal diameter");
    private static final MeasureKind CHANGE =
            number("tyres.diameter-change", "%", 2, "change of the nominal diameter either way");
    private static final MeasureKind SPEEDOMETER =
            number("tyres.speedometer", "%", 1, "speed shown as a share of the true speed");
    private static final MeasureKind GEARING =
            number("tyres.gearing", "%", 1, "by how much the larger tyres lengthen the gearing");
    private static final MeasureKind LIFT = number("tyres.lift", "mm", 0, "lift from the larger tyres");
    private static final MeasureKind RIM_NARROW =
            rated("tyres.rim-narrow", "in", 1, "rim width", "narrowest rim for the tyre");
    private static final MeasureKind RIM_WIDE =
            rated("tyres.rim-wide", "in", 1, "rim width", "widest rim for the tyre");
    private static final MeasureKind RIM_SAME =
            MeasureKind.word("tyres.rim-same", "whether tyres and wheels have the same rim diameter");
    private static final MeasureKind WIDTH =
            number("tyres.width", "%", 0, "section width as a share of that of the maker's tyres");
    private static final MeasureKind TRACK = number("tyres.track", "mm", 0, "added track");
    private static final MeasureKind TRACK_PASSENGER =
            number("tyres.track-passenger", "mm", 0, "added track of a passenger car");
    private static final MeasureKind PRESSURE =
            rated("tyres.pressure", "kPa", 0, "planned pressure", "pressure for the load");
    private static final MeasureKind SPARE_SAME =
            MeasureKind.word("tyres.spare-same", "whether the spare is of the same size as the tyres on the road");
    private static final MeasureKind SPARE_LOAD =
            rated("tyres.spare-load", "kg", 0, "load on one tyre of the axle", "load of the spare");
    private static final MeasureKind CLEARANCE = number("tyres.clearance", "mm", 1, "least gap round the tyre");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                LOAD,
                AXLE_LIMIT,
                WHEEL_LOAD,
                WHEEL_AXLE_LIMIT,
                WHEEL_BELOW_TYRE,
                SPEED,
                SPEED_RATING,
                GROWTH,
                LOSS,
                CHANGE,
                SPEEDOMETER,
                GEARING,
                LIFT,
                RIM_NARROW,
                RIM_WIDE,
                RIM_SAME,
                WIDTH,
                TRACK,
                TRACK_PASSENGER,
                PRESSURE,
                SPARE_SAME,
                SPARE_LOAD,
                CLEARANCE,
                INDEX_NEEDED,
                AXLE_INDEX_NEEDED,
                WHEEL_NEEDED,
                AXLE_WHEEL_NEEDED,
                SYMBOL_NEEDED);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Vehicle.Tyres tyres = plan.tyres();
        Vehicle.Ratings ratings = plan.ratings();
        axleLimit(plan, "front axle", ratings.frontAxle(), false, measures);
        axleLimit(plan, "rear axle", ratings.rearAxle(), true, measures);
        measures.add(Measure.of(
                        SPEED,
                        "tyres",
                        "",
                        plan.sheet().trip().topSpeed(),
                        plan.tyreSet().speed(plan.tables()))
                .worked(symbol(tyres)));
        measures.add(symbolNeeded(plan));
        measures.add(Measure.of(SPARE_SAME, "spare", "", spareSame(plan)));
        if (wheelsInQuestion(plan)) {
            Figure rating = plan.wheels().rating();
            measures.add(
                    Measure.of(WHEEL_BELOW_TYRE, "wheels", "", plan.tables().tyreLoad(tyres.loadIndex()), rating)
                            .worked(index(tyres.loadIndex())));
        }
        boolean newTyres = planned(plan, Fitment.Kind.TYRES).isPresent();
        boolean newWheels = planned(plan, Fitment.Kind.WHEELS).isPresent();
        if (newTyres || newWheels) {
            measures.add(Measure.of(RIM_NARROW, "wheels", "", plan.wheels().width(), tyres.rimLeast()));
            measures.add(Measure.of(RIM_WIDE, "wheels", "", plan.wheels().width(), tyres.rimMost()));
            measures.add(Measure.of(RIM_SAME, "wheels", "", rimSame(plan, newWheels)));
            measures.add(Measure.of(CLEARANCE, "tyres", "", tyres.clearance()));
        }
        if (newTyres) {
            newTyres(plan, measures);
        }
        if (newWheels) {
            track(plan, measures);
        }
    }

    private static void axleLimit(Plan plan, String axle, Figure limit, boolean rear, List<Measure> measures) {
        measures.add(
                Measure.of(AXLE_LIMIT, axle, "", limit, tyresCarry(plan, rear)).worked(carried(plan, rear)));
        measures.add(indexNeeded(AXLE_INDEX_NEEDED, plan, axle, "", limit, rear));
        if (wheelsInQuestion(plan)) {
            measures.add(Measure.of(WHEEL_AXLE_LIMIT, axle, "", limit, wheelsCarry(plan, rear))
                    .worked(wheelsCarried(plan, rear)));
            measures.add(wheelNeeded(AXLE_WHEEL_NEEDED, plan, axle, "", limit, rear));
        }
    }

    private static Measure indexNeeded(
            MeasureKind kind, Plan plan, String axle, String loadCase, Figure load, boolean rear) {
        Figure each = load.times(1.0 / wheels(plan, rear));
        return Measure.of(kind, axle, loadCase, plan.tables().tyreIndex(each))
                .worked(() -> List.of("from the table of load indices, the first that carries "
                        + in("load", each, "kg").shown()));
    }

    private static Measure symbolNeeded(Plan plan) {
        Figure speed = plan.sheet().trip().topSpeed();
        Optional<String> symbol = speed.known() ? plan.tables().tyreSymbol(speed.value()) : Optional.empty();
        return Measure.of(
                SYMBOL_NEEDED,
                "tyres",
                "",
                symbol.orElse(""),
                !speed.known()
                        ? speed.missing()
                        : symbol.isPresent()
                                ? List.of()
                                : List.of(new Missing(
                                        "speed symbol",
                                        "a symbol for such a speed in the rule book's table",
                                        "rules/tables/speed-symbol.csv")));
    }

    private static Measure wheelNeeded(
            MeasureKind kind, Plan plan, String axle, String loadCase, Figure load, boolean rear) {
        return Measure.enough(kind, axle, loadCase, load.times(1.0 / wheels(plan, rear)))
                .worked(
                        "needed = load / wheels",
                        in("load", load, "kg"),
                        in("wheels", Figure.of(wheels(plan, rear)), ""));
    }

    private static void newTyres(Plan plan, List<Measure> measures) {
        TyreSet stock = plan.stockTyreSet();
        TyreSet planned = plan.tyreSet();
        Vehicle.Tyres tyres = plan.tyres();
        Figure before = stock.diameter();
        Figure after = planned.diameter();
        Figure growth = plan.tyreGrowth();
        Working.Input[] diameters = {in("after", after, "mm"), in("before", before, "mm")};
        Working[] sizes = {planned.nominal("after"), stock.nominal("before")};
        measures.add(Measure.of(CHANGE, "tyres", "", size(TyreFigures.growth(before, after)))
                .worked("change = |after / before - 1|", diameters)
                .worked(sizes));
        if (growth.value() < 0) {
            measures.add(Measure.of(LOSS, "tyres", "", growth.times(-1))
                    .worked("loss = before - after", diameters)
                    .worked(sizes));
        } else {
            measures.add(Measure.of(GROWTH, "tyres", "", growth)
                    .worked("growth = after - before", diameters)
                    .worked(sizes));
            measures.add(Measure.of(GEARING, "tyres", "", TyreFigures.growth(before, after))
                    .worked("growth = after / before - 1", diameters)
                    .worked(sizes));
            measures.add(Measure.of(LIFT, "tyres", "", growth.times(0.5))
                    .worked("lift = (after - before) / 2", diameters)
                    .worked(sizes));
            if (growth.value() != 0 && !tyres.speedometerSet().is(YesNo.YES)) {
                Figure over = plan.vehicle().speedometerOver();
                measures.add(Measure.of(SPEEDOMETER, "speedometer", "", TyreFigures.speedShown(over, before, after))
                        .worked(
                                "shown = (1 + over) x before / after",
                                in("over", over, "%"),
                                diameters[0],
                                diameters[1])
                        .worked(sizes));
            }
        }
        Figure width = planned.width();
        Figure madeWidth = stock.width();
        measures.add(
                Measure.of(WIDTH, "tyres", "", classed(plan, "the greatest width of tyres", width.dividedBy(madeWidth)))
                        .worked("width = after / before", in("after", width, "mm"), in("before", madeWidth, "mm")));
        Figure madeSpeed = stock.speed(plan.tables());
        Figure speed = planned.speed(plan.tables());
        if (!(speed.value() >= madeSpeed.value())) {
            measures.add(Measure.of(
                            SPEED_RATING,
                            "tyres",
                            "",
                            classed(plan, "the least speed symbol", speed.missingWith(madeSpeed, speed)))
                    .worked(symbol(tyres)));
        }
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        axle(loading, "front axle", loading.axles().front(), false, measures);
        axle(loading, "rear axle", loading.axles().rear(), true, measures);
    }

    private static void axle(Loading loading, String axle, Figure load, boolean rear, List<Measure> measures) {
        Plan plan = loading.plan();
        String loadCase = loading.loadCase().name();
        Vehicle.Tyres tyres = plan.tyres();
        Figure carried = tyresCarry(plan, rear);
        Working sheet = MassSheet.axles(loading.masses(), plan.wheelbase());
        measures.add(Measure.of(LOAD, axle, loadCase, load, carried)
                .worked(carried(plan, rear))
                .worked(sheet));
        measures.add(indexNeeded(INDEX_NEEDED, plan, axle, loadCase, load, rear));
        if (wheelsInQuestion(plan)) {
            measures.add(wheelNeeded(WHEEL_NEEDED, plan, axle, loadCase, load, rear));
            measures.add(Measure.of(WHEEL_LOAD, axle, loadCase, load, wheelsCarry(plan, rear))
                    .worked(wheelsCarried(plan, rear), sheet));
        }
        // Overloaded tyres are a fault that no pressure mends.
        if (!(load.value() > carried.value())) {
            measures.add(Measure.of(
                            PRESSURE,
                            axle,
                            loadCase,
                            rear ? tyres.rearPressure() : tyres.frontPressure(),
                            TyreFigures.pressureNeeded(tyres.referencePressure(), load, carried))
                    .worked(
                            "needed = reference x load / carried",
                            in("reference", tyres.referencePressure(), "kPa"),
                            in("load", load, "kg"),
                            in("carried", carried, "kg"))
                    .worked(carried(plan, rear)));
        }
        Figure spare = plan.vehicle().spare().loadIndex();
        measures.add(Measure.of(
                        SPARE_LOAD,
                        axle,
                        loadCase,
                        load.times(1.0 / wheels(plan, rear)),
                        plan.tables().tyreLoad(spare))
                .worked("load = axle / tyres", in("axle", load, "kg"), tyreCount(plan, rear))
                .worked(index(spare)));
    }

    private static Working[] carried(Plan plan, boolean rear) {
        Figure index = index(plan, rear);
        return new Working[] {
            new Working.Formula(
                    "carried = tyres x load of one",
                    List.of(
                            tyreCount(plan, rear),
                            in("load of one", plan.tables().tyreLoad(index), "kg"))),
            index(index)
        };
    }

    private static Working wheelsCarried(Plan plan, boolean rear) {
        return new Working.Formula(
                "carried = wheels x rating",
                List.of(
                        in("wheels", Figure.of(wheels(plan, rear)), ""),
                        in("rating", plan.wheels().rating(), "kg")));
    }

    private static Working.Input tyreCount(Plan plan, boolean rear) {
        return in("tyres", Figure.of(wheels(plan, rear)), "");
    }

    private static Working index(Figure index) {
        return new Working.Formula("from the table of load indices", List.of(in("index", index, "")));
    }

    private static Working symbol(Vehicle.Tyres tyres) {
        return () -> List.of("from the table of speed symbols, symbol = " + tyres.speedSymbol());
    }

    private static Figure tyresCarry(Plan plan, boolean rear) {
        return plan.tables().tyreLoad(index(plan, rear)).times(wheels(plan, rear));
    }

    private static Figure index(Plan plan, boolean rear) {
        return rear && dualRear(plan)
                ? plan.tyres().dualLoadIndex()
                : plan.tyres().loadIndex();
    }

    private static Figure wheelsCarry(Plan plan, boolean rear) {
        return plan.wheels().rating().times(wheels(plan, rear));
    }

    private static int wheels(Plan plan, boolean rear) {
        return rear && dualRear(plan) ? 4 : 2;
    }

    private static boolean dualRear(Plan plan) {
        Choice<YesNo> planned = plan.wheels().dualRear();
        return (planned.known() ? planned : plan.vehicle().wheels().dualRear()).is(YesNo.YES);
    }

    private static boolean wheelsInQuestion(Plan plan) {
        Vehicle.Ratings made = plan.vehicle().ratings();
        boolean raised = !plan.ratings().frontAxle().equals(made.frontAxle())
                || !plan.ratings().rearAxle().equals(made.rearAxle());
        return planned(plan, Fitment.Kind.WHEELS).isPresent()
                || raised
                || plan.wheels().rating().known();
    }

    private static Choice<YesNo> spareSame(Plan plan) {
        Vehicle.Spare spare = plan.vehicle().spare();
        if (spare.size().isEmpty()) {
            return new Choice<>(null, RecordSchema.of(Vehicle.Spare.class).missing("vehicle.spare", "size"));
        }
        if (plan.tyres().size().isEmpty()) {
            return new Choice<>(null, plan.tyreSet().missing("size"));
        }
        return yesNo(
                TyreSize.read(spare.size()).equals(TyreSize.read(plan.tyres().size())));
    }

    /** Wheels that stay have the rim diameter of the tyres that came on them. */
    private static Choice<YesNo> rimSame(Plan plan, boolean newWheels) {
        Figure tyre = plan.tyreSet().rim();
        Figure wheel = newWheels
                ? plan.wheels().diameter()
                : plan.wheels().diameter().or(plan.stockTyreSet().rim());
        List<Missing> missing = tyre.missingWith(wheel, tyre).missing();
        // Rims come in steps of half an inch, so a millimetre tells them apart.
        return missing.isEmpty()
                ? yesNo(Math.abs(tyre.value() - wheel.value()) < 0.001)
                : new Choice<>(null, missing.get(0));
    }

    private static Choice<YesNo> yesNo(boolean answer) {
        return Choice.of(answer ? YesNo.YES : YesNo.NO);
    }

    private static void track(Plan plan, List<Measure> measures) {
        Figure before = plan.vehicle().wheels().offset();
        Figure after = plan.wheels().offset();
        Figure added = TyreFigures.trackAdded(before, after);
        measures.add((passenger(plan)
                        ? Measure.of(TRACK_PASSENGER, "wheels", "", added)
                        : Measure.of(TRACK, "wheels", "", classed(plan, "the greatest added track", added)))
                .worked("added = 2 x (before - after)", in("before", before, "mm"), in("after", after, "mm")));
    }

    /**
     * The figure where the vehicle is of an off-road or goods class, whose limits the book holds, else what is missing.
     */
    private static Figure classed(Plan plan, String limit, Figure figure) {
        if (passenger(plan)) {
            return figure.missingWith(
                    Figure.missing(new Missing(
                            "limit for passenger cars",
                            limit + " of a passenger car, which the rule book does not hold",
                            "the local authority")),
                    figure);
        }
        String category = category(plan);
        boolean offRoadOrGoods = category.equals("MC")
                || category.startsWith("MD")
                || category.equals("NA")
                || category.startsWith("NB");
        return offRoadOrGoods
                ? figure
                : figure.missingWith(
                        Figure.missing(RecordSchema.of(Vehicle.class).missing("vehicle", "category")), figure);
    }

    private static boolean passenger(Plan plan) {
        return category(plan).equals("MA") || category(plan).equals("MB");
    }

    private static String category(Plan plan) {
        return plan.vehicle().category().strip().toUpperCase(Locale.ROOT);
    }

    private static Optional<Fitment> planned(Plan plan, Fitment.Kind kind) {
        return plan.fitments(kind).stream().findFirst();
    }

    private static Figure size(Figure figure) {
        return figure.value() < 0 ? figure.times(-1) : figure;
    }
}
