package fitworthy.figures.electrical;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.ElectricalDetails;
import fitworthy.sheet.ElectricalDetails.Battery;
import fitworthy.sheet.ElectricalDetails.BatteryPlace;
import fitworthy.sheet.ElectricalDetails.Chemistry;
import fitworthy.sheet.Engine;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;

/** The charge that all circuits draw together from alternator and batteries, and where the batteries stand. */
public final class ChargeMeasures implements Topic {
    private static final MeasureKind ALTERNATOR_LOAD = number(
                    "electrical.alternator-load", "A", 0, "current drawn while driving")
            .byLoading();
    private static final MeasureKind ALTERNATOR = number(
                    "electrical.alternator",
                    "%",
                    1,
                    "current drawn while driving, as a share of the alternator's rating")
            .byLoading();
    private static final MeasureKind ALTERNATOR_NEEDED = number(
                    "electrical.alternator-needed", "A", 0, "rating of an alternator that can be counted on for it")
            .byLoading();
    private static final MeasureKind STARTER_DRAIN = number(
                    "electrical.starter-drain", "%", 1, "capacity of the starter battery that the longest stay takes")
            .byLoading();
    private static final MeasureKind STANDBY_MOST = number(
                    "electrical.standby-most",
                    "mA",
                    0,
                    "standing draw that the starter battery bears for the longest stay")
            .byLoading();
    private static final MeasureKind DAILY = rated(
                    "electrical.daily", "Ah", 1, "charge drawn a day", "charge put back on a day's drive")
            .byLoading();
    public static final MeasureKind DEPTH_LEAD = number(
                    "electrical.depth-lead", "%", 1, "capacity of the lead-acid battery that the longest stay takes")
            .byLoading();
    public static final MeasureKind DEPTH_LITHIUM = number(
                    "electrical.depth-lithium", "%", 1, "capacity of the lithium battery that the longest stay takes")
            .byLoading();
    private static final MeasureKind CAPACITY_NEEDED = number(
                    "electrical.capacity-needed", "Ah", 0, "capacity that lasts the longest stay")
            .byLoading();
    private static final MeasureKind GAS_OUT = word("electrical.gas-out", "whether its box is vented to the outside");
    private static final MeasureKind LITHIUM_PLACE =
            word("electrical.lithium-place", "where the lithium battery stands");
    private static final MeasureKind LITHIUM_CURVE =
            word("electrical.lithium-curve", "whether the lithium battery is charged by the curve it needs");

    private static final String SECOND_BATTERY = "second battery";

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                ALTERNATOR_LOAD,
                ALTERNATOR,
                ALTERNATOR_NEEDED,
                STARTER_DRAIN,
                STANDBY_MOST,
                DAILY,
                DEPTH_LEAD,
                DEPTH_LITHIUM,
                CAPACITY_NEEDED,
                GAS_OUT,
                LITHIUM_PLACE,
                LITHIUM_CURVE);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        plan.fitments(Fitment.Kind.BATTERY).forEach(battery -> battery(plan, battery, measures));
    }

    private static void battery(Plan plan, Fitment fitment, List<Measure> measures) {
        Battery battery = (Battery) fitment.details();
        Choice<Chemistry> chemistry = battery.chemistry();
        if (chemistry.is(Chemistry.LITHIUM)) {
            measures.add(Measure.of(LITHIUM_PLACE, fitment.name(), battery.place()));
            plan.fitments(Fitment.Kind.CHARGER)
                    .forEach(charger -> measures.add(Measure.of(
                            LITHIUM_CURVE,
                            charger.name(),
                            ((ElectricalDetails.Charger) charger.details()).lithiumCurve())));
        } else if (!battery.place().known() || battery.place().is(BatteryPlace.CABIN)) {
            Choice<?> answer = !battery.place().known()
                    ? battery.place()
                    : !chemistry.known() ? chemistry : battery.ventedOutside();
            measures.add(Measure.of(GAS_OUT, fitment.name(), answer));
        }
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        List<Circuit> circuits = LoadedCircuits.circuits(loading);
        if (circuits.isEmpty()) {
            return;
        }
        Engine engine = loading.plan().vehicle().engine();
        List<Working.Input> drawn = new ArrayList<>(List.of(in("the vehicle itself", engine.ownLoad(), "A")));
        circuits.stream()
                .filter(circuit -> !circuit.driving().is(YesNo.NO))
                .forEach(circuit -> drawn.add(in(circuit.name(), whileDriving(circuit), "A")));
        drawn.addAll(
                LoadedCircuits.parts(loading, ElectricalDetails.Charger.class, ElectricalDetails.Charger::input, "A"));
        Figure load = Working.total(drawn);
        Working sum = new Working.Sum("drawn", drawn);
        measures.add(Measure.of(ALTERNATOR_LOAD, "alternator", load).worked(sum));
        measures.add(Measure.of(ALTERNATOR, "alternator", load.dividedBy(engine.alternator()))
                .worked("share = drawn / rating", in("drawn", load, "A"), in("rating", engine.alternator(), "A"))
                .worked(sum));
        Figure most = loading.plan().practice(PracticeId.ELECTRICAL_ALTERNATOR_MOST);
        measures.add(Measure.enough(ALTERNATOR_NEEDED, "alternator", load.dividedBy(most))
                .worked("needed = drawn / most", in("drawn", load, "A"), in("most", most, "%"))
                .worked(sum));
        if (loading.setsOut()) {
            starter(loading, circuits, measures);
        }
        SecondBattery.of(loading).ifPresent(battery -> second(loading, battery, measures));
    }

    private static void starter(Loading loading, List<Circuit> circuits, List<Measure> measures) {
        List<Circuit> starter = circuits.stream()
                .filter(circuit -> circuit.battery().is(Circuit.Supply.STARTER))
                .toList();
        Engine engine = loading.plan().vehicle().engine();
        if (!starter.isEmpty()) {
            List<Working.Input> parts = new ArrayList<>(List.of(in("the vehicle itself", engine.ownStandby(), "A")));
            starter.forEach(circuit -> parts.add(in(circuit.name(), circuit.standby(), "A")));
            Figure idle = Working.total(parts);
            Figure parked = trip(loading).parked();
            measures.add(Measure.of(
                            STARTER_DRAIN,
                            "starter battery",
                            BatteryLife.depth(idle.times(24), parked, engine.starterBattery()))
                    .worked(
                            "taken = idle x stay / capacity",
                            in("idle", idle, "A"),
                            in("stay", parked, "h"),
                            in("capacity", engine.starterBattery(), "Ah"))
                    .worked(new Working.Sum("idle", parts)));
            Figure most = loading.plan().practice(PracticeId.ELECTRICAL_STARTER_DRAIN_MOST);
            measures.add(Measure.most(
                            STANDBY_MOST,
                            "starter battery",
                            most.times(engine.starterBattery()).dividedBy(parked))
                    .worked(
                            "draw = 1000 x most x capacity / stay",
                            in("most", most, "%"),
                            in("capacity", engine.starterBattery(), "Ah"),
                            in("stay", parked, "h")));
        }
    }

    private static void second(Loading loading, SecondBattery battery, List<Measure> measures) {
        Sheet.Trip trip = trip(loading);
        Figure drawn = battery.drawn();
        Figure sun = battery.sun();
        Figure driven = battery.driven();
        Figure power = Working.total(battery.panels());
        Figure output = Working.total(battery.chargers());
        Battery first = battery.batteries().get(0);
        Working[] shone = battery.panels().isEmpty()
                ? new Working[0]
                : new Working[] {
                    new Working.Formula(
                            "sun = power x hours / voltage",
                            List.of(
                                    in("power", power, "W"),
                                    in("hours", trip.sun(), "h"),
                                    in("voltage", first.voltage(), "V"))),
                    new Working.Sum("power", battery.panels())
                };
        Working[] charged = battery.chargers().isEmpty()
                ? new Working[0]
                : new Working[] {
                    new Working.Formula(
                            "driven = output x driving",
                            List.of(in("output", output, "A"), in("driving", trip.driving(), "h"))),
                    new Working.Sum("output", battery.chargers())
                };
        Working taken = new Working.Sum("drawn", battery.drains());
        measures.add(Measure.of(DAILY, SECOND_BATTERY, drawn, sun.plus(driven))
                .worked(taken)
                .worked("put back = sun + driven", in("sun", sun, "Ah"), in("driven", driven, "Ah"))
                .worked(shone)
                .worked(charged));
        Choice<Chemistry> chemistry = first.chemistry();
        Figure depth = BatteryLife.depth(drawn.minus(sun), trip.parked(), battery.capacity());
        measures.add(Measure.of(
                        chemistry.is(Chemistry.LITHIUM) ? DEPTH_LITHIUM : DEPTH_LEAD,
                        SECOND_BATTERY,
                        chemistry.known() ? depth : Figure.missing(chemistry.missing()))
                .worked(
                        "taken = max(0, drawn - sun) x stay / 24 / capacity",
                        in("drawn", drawn, "Ah"),
                        in("sun", sun, "Ah"),
                        in("stay", trip.parked(), "h"),
                        in("capacity", battery.capacity(), "Ah"))
                .worked(taken)
                .worked(shone)
                .worked(new Working.Sum("capacity", battery.capacities())));
        Figure most = loading.plan()
                .practice(
                        chemistry.is(Chemistry.LITHIUM)
                                ? PracticeId.ELECTRICAL_DEPTH_LITHIUM_MOST
                                : PracticeId.ELECTRICAL_DEPTH_LEAD_MOST);
        measures.add(Measure.enough(
                        CAPACITY_NEEDED,
                        SECOND_BATTERY,
                        chemistry.known()
                                ? depth.times(battery.capacity()).dividedBy(most)
                                : Figure.missing(chemistry.missing()))
                .worked(
                        "needed = taken x capacity / most",
                        in("taken", depth, "%"),
                        in("capacity", battery.capacity(), "Ah"),
                        in("most", most, "%")));
    }

    private static Figure whileDriving(Circuit circuit) {
        return !circuit.driving().known()
                ? Figure.missing(circuit.driving().missing())
                : circuit.driving().is(YesNo.YES) ? circuit.current() : Figure.of(0, 0);
    }

    private static Sheet.Trip trip(Loading loading) {
        return loading.plan().sheet().trip();
    }
}
