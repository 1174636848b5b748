package fitworthy.figures.fuel;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.FuelRange;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Engine;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.FuelDetails;
import fitworthy.sheet.IntakeDetails;
import fitworthy.sheet.Tank;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Fuel tanks and range, what cleans the fuel, and what cleans the gas of the crankcase. */
final class FuelSystemMeasures implements Topic {

    private static final MeasureKind MATCH = yesNo("fuel.match", "whether it holds what the engine burns");
    private static final MeasureKind LEG = rated("fuel.leg", "km", 0, "longest way between two fuel stops", "range")
            .byLoading();
    private static final MeasureKind NEEDED = number(
                    "fuel.needed", "L", 0, "fuel for the longest way between two stops")
            .byLoading();
    private static final MeasureKind NEEDED_MOST = number(
                    "fuel.needed-most", "L", 0, "fuel for that way in the loading that burns most")
            .byLoading();
    private static final MeasureKind NEEDED_RESERVE = number(
                    "fuel.needed-reserve", "L", 0, "fuel for that way in that loading and the usual reserve")
            .byLoading();
    private static final MeasureKind WAY = number("fuel.way", "km", 0, "longest way between two fuel stops");
    private static final MeasureKind SEPARATOR =
            yesNo("fuel.separator", "whether a separator takes water out of the fuel");
    private static final MeasureKind SIDE = word("fuel.side", "side of the pump on which it works", Side.class);
    private static final MeasureKind SIDE_UNSTATED =
            yesNo("fuel.side-unstated", "whether it sits behind the pump and nobody says if it is made for that");
    private static final MeasureKind STAGE =
            rated("fuel.stage", "um", 0, "rating of the element in front", "rating of the one behind it");
    private static final MeasureKind FLOW = rated("fuel.flow", "L/h", 0, "rated flow", "what the pump moves");
    private static final MeasureKind ALARM = yesNo("fuel.alarm", "whether a sensor warns of water");
    private static final MeasureKind ALARM_NOTICED =
            word("fuel.alarm-noticed", "how the driver notices the alarm", Noticed.class);
    private static final MeasureKind DRAIN = yesNo("fuel.drain", "whether the drain can be reached at the roadside");
    private static final MeasureKind EXHAUST_GAP = number("fuel.exhaust-gap", "mm", 0, "gap to the exhaust");
    private static final MeasureKind SHIELDED = yesNo("fuel.shielded", "whether frame or body shields it");
    private static final MeasureKind RELIEF =
            yesNo("fuel.crankcase-relief", "whether it has a relief valve for a blocked element");
    private static final MeasureKind OIL =
            word("fuel.crankcase-oil", "where the caught oil goes", IntakeDetails.OilOutlet.class);
    private static final MeasureKind GAS =
            word("fuel.crankcase-gas", "where the gas goes", IntakeDetails.GasOutlet.class);
    private static final MeasureKind BLOW_BY =
            rated("fuel.blow-by", "L/min", 0, "rated gas flow", "crankcase gas at rated power");
    private static final MeasureKind BREATHER = yesNo("fuel.tank-breather", "whether it breathes outside the body");
    private static final MeasureKind FILLER = yesNo("fuel.tank-filler", "whether it is filled from outside the body");
    private static final MeasureKind EARTHED = yesNo("fuel.tank-earthed", "whether tank and filler are earthed");
    private static final MeasureKind UNAPPROVED =
            number("fuel.unapproved", "L", 0, "volume of an added tank without approval");

    private static final MeasureKind CAN_PLACE =
            word("fuel.can-place", "where the can of fuel travels", Tank.CanPlace.class);
    private static final MeasureKind CAN_FIXED = yesNo("fuel.can-fixed", "whether a holder keeps the can where it is");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                MATCH,
                LEG,
                WAY,
                SEPARATOR,
                SIDE,
                SIDE_UNSTATED,
                STAGE,
                FLOW,
                ALARM,
                ALARM_NOTICED,
                DRAIN,
                EXHAUST_GAP,
                SHIELDED,
                RELIEF,
                OIL,
                GAS,
                BLOW_BY,
                BREATHER,
                FILLER,
                EARTHED,
                UNAPPROVED,
                NEEDED,
                NEEDED_MOST,
                NEEDED_RESERVE,
                CAN_PLACE,
                CAN_FIXED);
    }

    private enum Side {
        SUCTION,
        PRESSURE,
        PRESSURE_PROVEN
    }

    private enum Noticed {
        SEEN_AND_HEARD,
        SEEN,
        HEARD,
        NEITHER
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Engine engine = plan.vehicle().engine();
        for (Tank tank : plan.sheet().tanks()) {
            if (isFuel(tank) && tank.isCan()) {
                measures.add(Measure.of(CAN_PLACE, tank.name(), tank.can().place()));
                measures.add(Measure.of(CAN_FIXED, tank.name(), tank.can().fixed()));
            }
            if (isFuel(tank) && !tank.builtIn().feedsEngine().is(YesNo.NO)) {
                measures.add(Measure.of(MATCH, tank.name(), match(engine, tank)));
                if (tank.stock().is(YesNo.NO) && !tank.isCan()) {
                    addedTank(tank, measures);
                }
            }
        }
        if (!engine.fuel().is(Engine.Fuel.PETROL)) {
            measures.add(Measure.of(WAY, "trip", plan.sheet().trip().longestLeg()));
            measures.add(Measure.of(SEPARATOR, "trip", separator(plan)));
        }
        plan.fitments(Fitment.Kind.FUEL_SEPARATOR)
                .forEach(fitment -> separator(fitment.name(), (FuelDetails.FuelSeparator) fitment.details(), measures));
        stages(plan, measures);
        plan.fitments(Fitment.Kind.CRANKCASE_SEPARATOR)
                .forEach(fitment -> crankcase(
                        fitment.name(), (IntakeDetails.CrankcaseSeparator) fitment.details(), engine, measures));
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        if (!loading.setsOut()) {
            return;
        }
        Figure consumption = FuelRange.consumption(loading);
        List<Tank> tanks = FuelRange.feeding(loading.plan());
        Figure litres = FuelRange.aboard(loading);
        measures.add(
                Measure.of(LEG, "fuel aboard", loading.plan().sheet().trip().longestLeg(), FuelRange.of(loading))
                        .worked(
                                "range = 100 x fuel / consumption",
                                in("fuel", litres, "L"),
                                in("consumption", consumption, "L/100km"))
                        .worked(loading.aboard("fuel", tanks)));
        Figure leg = loading.plan().sheet().trip().longestLeg();
        measures.add(needed(NEEDED, leg, consumption));
        Figure most = FuelRange.mostConsumption(loading);
        measures.add(needed(NEEDED_MOST, leg, most));
        Figure reserve =
                loading.plan().practice(PracticeId.FUEL_RANGE_RESERVE_LEAST).or(Figure.ZERO);
        measures.add(Measure.enough(
                        NEEDED_RESERVE,
                        "fuel aboard",
                        FuelRange.litres(leg, most).dividedBy(Figure.of(1, 0).minus(reserve)))
                .worked(
                        "needed = way x consumption / 100 / (1 - reserve)",
                        in("way", leg, "km"),
                        in("consumption", most, "L/100km"),
                        in("reserve", reserve, "%")));
    }

    private static Measure needed(MeasureKind kind, Figure leg, Figure consumption) {
        return Measure.enough(kind, "fuel aboard", FuelRange.litres(leg, consumption))
                .worked(
                        "needed = way x consumption / 100",
                        in("way", leg, "km"),
                        in("consumption", consumption, "L/100km"));
    }

    private static boolean isFuel(Tank tank) {
        return tank.liquid().is(Tank.Liquid.DIESEL) || tank.liquid().is(Tank.Liquid.PETROL);
    }

    /** A planned tank of another fuel may be meant for a stove: that is asked before it is called a mistake. */
    private static Choice<YesNo> match(Engine engine, Tank tank) {
        if (!engine.fuel().known()) {
            return Choice.missing(engine.fuel().missing());
        }
        if (FuelRange.holds(tank, engine.fuel().value())) {
            return Choice.of(YesNo.YES);
        }
        boolean feeds =
                tank.stock().is(YesNo.YES) || tank.builtIn().feedsEngine().known();
        return feeds ? Choice.of(YesNo.NO) : tank.builtIn().feedsEngine();
    }

    private static void addedTank(Tank tank, List<Measure> measures) {
        Tank.BuiltIn builtIn = tank.builtIn();
        measures.add(Measure.of(BREATHER, tank.name(), builtIn.breather()));
        measures.add(Measure.of(FILLER, tank.name(), builtIn.filler()));
        measures.add(Measure.of(EARTHED, tank.name(), builtIn.earthed()));
        measures.add(Measure.of(EXHAUST_GAP, tank.name(), builtIn.exhaustGap()));
        measures.add(Measure.of(SHIELDED, tank.name(), builtIn.shielded()));
        Figure unapproved = builtIn.approved().is(YesNo.YES) || Alterations.certified(tank)
                ? Figure.of(0, 0)
                : builtIn.approved().known()
                        ? tank.capacity()
                        : Figure.missing(builtIn.approved().missing());
        measures.add(Measure.of(UNAPPROVED, tank.name(), unapproved));
    }

    private static Choice<YesNo> separator(Plan plan) {
        Engine engine = plan.vehicle().engine();
        if (!plan.fitments(Fitment.Kind.FUEL_SEPARATOR).isEmpty()) {
            return Choice.of(YesNo.YES);
        }
        return engine.fuel().known()
                ? engine.waterSeparator()
                : Choice.missing(engine.fuel().missing());
    }

    private static void separator(String name, FuelDetails.FuelSeparator separator, List<Measure> measures) {
        measures.add(Measure.of(SIDE, name, side(separator)));
        if (separator.place().is(FuelDetails.FuelPlace.AFTER_PUMP)) {
            measures.add(Measure.of(
                    SIDE_UNSTATED, name, Choice.yesNo(!separator.fineDroplets().known())));
        }
        measures.add(Measure.of(ALARM, name, separator.alarm()));
        if (!separator.alarm().is(YesNo.NO)) {
            measures.add(Measure.of(ALARM_NOTICED, name, noticed(separator)));
        }
        measures.add(Measure.of(DRAIN, name, separator.drainReachable()));
        measures.add(Measure.of(EXHAUST_GAP, name, separator.exhaustGap()));
        measures.add(Measure.of(SHIELDED, name, separator.shielded()));
    }

    private static Choice<Side> side(FuelDetails.FuelSeparator separator) {
        if (!separator.place().known()) {
            return Choice.missing(separator.place().missing());
        }
        if (separator.place().is(FuelDetails.FuelPlace.BEFORE_PUMP)) {
            return Choice.of(Side.SUCTION);
        }
        Choice<YesNo> proven = separator.fineDroplets();
        return !proven.known()
                ? Choice.missing(proven.missing())
                : Choice.of(proven.is(YesNo.YES) ? Side.PRESSURE_PROVEN : Side.PRESSURE);
    }

    private static Choice<Noticed> noticed(FuelDetails.FuelSeparator separator) {
        for (Choice<YesNo> warning : List.of(separator.alarm(), separator.lamp(), separator.buzzer())) {
            if (!warning.known()) {
                return Choice.missing(warning.missing());
            }
        }
        boolean seen = separator.lamp().is(YesNo.YES);
        boolean heard = separator.buzzer().is(YesNo.YES);
        return Choice.of(
                seen ? heard ? Noticed.SEEN_AND_HEARD : Noticed.SEEN : heard ? Noticed.HEARD : Noticed.NEITHER);
    }

    /** An element in the fuel line. */
    private record Stage(String name, Figure rating, Figure order, Figure ratedFlow) {

        static Optional<Stage> of(Fitment fitment) {
            if (fitment.details() instanceof FuelDetails.FuelSeparator separator) {
                return Optional.of(
                        new Stage(fitment.name(), separator.rating(), separator.order(), separator.ratedFlow()));
            }
            if (fitment.details() instanceof FuelDetails.FuelFilter filter) {
                return Optional.of(new Stage(fitment.name(), filter.rating(), filter.order(), filter.ratedFlow()));
            }
            return Optional.empty();
        }
    }

    /** Each planned element against the pump and against the next one; the engine's own filter is the last. */
    private static void stages(Plan plan, List<Measure> measures) {
        Engine engine = plan.vehicle().engine();
        List<Stage> planned = plan.sheet().fitments().stream()
                .map(Stage::of)
                .flatMap(Optional::stream)
                .toList();
        planned.forEach(stage -> measures.add(Measure.of(FLOW, stage.name(), stage.ratedFlow(), engine.pumpFlow())));
        if (planned.isEmpty()) {
            return;
        }
        Figure orders = planned.stream().map(Stage::order).reduce(Figure::most).orElseThrow();
        if (planned.size() > 1 && !orders.known()) {
            measures.add(Measure.of(STAGE, "fuel elements", orders, engine.filterRating()));
            return;
        }
        List<Stage> line = new ArrayList<>(planned);
        line.sort(Comparator.comparingDouble(stage -> stage.order().value()));
        line.add(new Stage("the engine's own filter", engine.filterRating(), null, null));
        for (int i = 1; i < line.size(); i++) {
            measures.add(Measure.of(
                    STAGE,
                    line.get(i - 1).name() + " ahead of " + line.get(i).name(),
                    line.get(i - 1).rating(),
                    line.get(i).rating()));
        }
    }

    private static void crankcase(
            String name, IntakeDetails.CrankcaseSeparator separator, Engine engine, List<Measure> measures) {
        measures.add(Measure.of(RELIEF, name, separator.relief()));
        measures.add(Measure.of(OIL, name, separator.oil()));
        measures.add(Measure.of(GAS, name, separator.gas()));
        measures.add(Measure.of(BLOW_BY, name, separator.ratedFlow(), engine.blowBy()));
    }
}
