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
import fitworthy.figures.plan.Tables;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.Details;
import fitworthy.sheet.Details.Battery;
import fitworthy.sheet.Details.BatteryPlace;
import fitworthy.sheet.Details.Chemistry;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/** Cables and fuses circuit by circuit, and the charge that all of them draw together. */
public final class ElectricalMeasures implements Topic {

    private static final MeasureKind ALTERNATOR_LOAD =
            number("electrical.alternator-load", "A", 0, "current drawn while driving");
    private static final MeasureKind ALTERNATOR = number(
            "electrical.alternator", "%", 1, "current drawn while driving, as a share of the alternator's rating");
    private static final MeasureKind ALTERNATOR_NEEDED =
            number("electrical.alternator-needed", "A", 0, "rating of an alternator that can be counted on for it");
    private static final MeasureKind DAILY =
            rated("electrical.daily", "Ah", 1, "charge drawn a day", "charge put back on a day's drive");
    public static final MeasureKind DEPTH_LEAD =
            number("electrical.depth-lead", "%", 1, "capacity of the lead-acid battery that the longest stay takes");
    public static final MeasureKind DEPTH_LITHIUM =
            number("electrical.depth-lithium", "%", 1, "capacity of the lithium battery that the longest stay takes");
    private static final MeasureKind CAPACITY_NEEDED =
            number("electrical.capacity-needed", "Ah", 0, "capacity that lasts the longest stay");
    private static final MeasureKind STANDBY_MOST = number(
            "electrical.standby-most", "mA", 0, "standing draw that the starter battery bears for the longest stay");
    private static final MeasureKind STARTER_DRAIN =
            number("electrical.starter-drain", "%", 1, "capacity of the starter battery that the longest stay takes");
    private static final MeasureKind DROP_CRITICAL =
            number("electrical.drop-critical", "%", 2, "voltage lost in the cable of a critical load");
    private static final MeasureKind DROP_OTHER = number("electrical.drop-other", "%", 2, "voltage lost in the cable");
    private static final MeasureKind SECTION = number("electrical.section", "mm2", 1, "section of its copper");
    private static final MeasureKind SECTION_NEEDED =
            number("electrical.section-needed", "mm2", 1, "section that loses no more voltage than is allowed");
    private static final MeasureKind CABLE = rated(
            "electrical.cable", "mm2", 1, "section of the cable", "least section in the table that carries the load");
    private static final MeasureKind CABLE_MAKER =
            rated("electrical.cable-maker", "A", 1, "load", "rating by the cable's maker");
    private static final MeasureKind FUSED = word("electrical.fused", "whether the circuit has a fuse");
    private static final MeasureKind FUSE_LOAD = rated("electrical.fuse-load", "A", 1, "load", "rating of the fuse");
    private static final MeasureKind FUSE_SHARE =
            number("electrical.fuse-share", "%", 0, "rating of the fuse, as a share of what the cable carries");
    private static final MeasureKind CABLE_CARRIES =
            number("electrical.cable-carries", "A", 0, "what the cable carries");
    private static final MeasureKind FUSE_WAY =
            number("electrical.fuse-way", "mm", 0, "bare cable between the battery and the fuse");
    private static final MeasureKind FUSE_WAY_ENCLOSED =
            number("electrical.fuse-way-enclosed", "mm", 0, "enclosed cable between the battery and the fuse");
    private static final MeasureKind EARTH =
            word("electrical.earth", "whether it returns by a cable of its own or a cleaned chassis stud");
    private static final MeasureKind PANEL_USED =
            number("electrical.panel-used", "", 0, "circuits switched by the panel");
    private static final MeasureKind PANEL_WAYS = number("electrical.panel-ways", "", 0, "circuits the panel has");
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
                DAILY,
                DEPTH_LEAD,
                DEPTH_LITHIUM,
                STARTER_DRAIN,
                DROP_CRITICAL,
                DROP_OTHER,
                SECTION,
                CABLE,
                CABLE_MAKER,
                FUSED,
                FUSE_LOAD,
                FUSE_SHARE,
                CABLE_CARRIES,
                FUSE_WAY,
                FUSE_WAY_ENCLOSED,
                EARTH,
                PANEL_USED,
                PANEL_WAYS,
                GAS_OUT,
                LITHIUM_PLACE,
                LITHIUM_CURVE,
                SECTION_NEEDED,
                ALTERNATOR_NEEDED,
                CAPACITY_NEEDED,
                STANDBY_MOST);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        for (Circuit circuit : plan.sheet().circuits()) {
            drop(plan, circuit, measures);
            fuse(circuit, measures);
            measures.add(Measure.of(EARTH, circuit.name(), "", circuit.earth()));
            if (!circuit.shortTime().is(YesNo.YES)) {
                lasting(plan.tables(), circuit, measures);
            }
        }
        panel(plan, measures);
        plan.fitments(Fitment.Kind.BATTERY).forEach(battery -> battery(plan, battery, measures));
    }

    private static void drop(Plan plan, Circuit circuit, List<Measure> measures) {
        Circuit.Cable cable = circuit.cable();
        Figure temperature = Cable.temperature(cable.engineBay());
        Figure share = Cable.drop(cable.length(), circuit.current(), cable.section(), temperature)
                .dividedBy(circuit.voltage());
        boolean other = circuit.need().is(Circuit.Need.OTHER);
        measures.add(Measure.of(
                        other ? DROP_OTHER : DROP_CRITICAL,
                        circuit.name(),
                        "",
                        circuit.need().known()
                                ? share
                                : Figure.missing(circuit.need().missing()))
                .worked(
                        "lost = 2 x length x current x (1 + 0.00393 x (air - 20)) / 58 / section / voltage",
                        in("length", cable.length(), "m"),
                        in("current", circuit.current(), "A"),
                        in("air", temperature, "degC"),
                        in("section", cable.section(), "mm2"),
                        in("voltage", circuit.voltage(), "V")));
        measures.add(Measure.of(SECTION, circuit.name(), "", cable.section()));
        Figure most =
                plan.practice(other ? PracticeId.ELECTRICAL_DROP_OTHER_MOST : PracticeId.ELECTRICAL_DROP_CRITICAL_MOST);
        measures.add(Measure.enough(
                        SECTION_NEEDED,
                        circuit.name(),
                        "",
                        circuit.need().known()
                                ? cable.section().times(share).dividedBy(most)
                                : Figure.missing(circuit.need().missing()))
                .worked(
                        "needed = section x lost / most",
                        in("section", cable.section(), "mm2"),
                        in("lost", share, "%"),
                        in("most", most, "%")));
    }

    private static void fuse(Circuit circuit, List<Measure> measures) {
        Circuit.Fuse fuse = circuit.fuse();
        boolean fused = fuse.rating().value() > 0;
        measures.add(Measure.of(
                FUSED,
                circuit.name(),
                "",
                fuse.rating().known()
                        ? yesNo(fused)
                        : new Choice<YesNo>(null, fuse.rating().missing().get(0))));
        if (fused || !fuse.rating().known()) {
            measures.add(Measure.of(
                    fuse.enclosed().is(YesNo.YES) ? FUSE_WAY_ENCLOSED : FUSE_WAY, circuit.name(), "", fuse.distance()));
        }
    }

    /** What warms a cable only if it goes on for longer than a winch pull. */
    private static void lasting(Tables tables, Circuit circuit, List<Measure> measures) {
        Circuit.Cable cable = circuit.cable();
        Figure place = Cable.ratingLeft(cable.engineBay());
        Figure carries = cable.rating().or(tables.cableRating(cable.section(), place));
        if (cable.rating().known()) {
            measures.add(Measure.of(CABLE_MAKER, circuit.name(), "", circuit.current(), cable.rating()));
        } else {
            measures.add(
                    Measure.of(CABLE, circuit.name(), "", cable.section(), tables.cableFor(circuit.current(), place))
                            .worked(
                                    "from the table of cables, the least that carries current / warmth",
                                    in("current", circuit.current(), "A"),
                                    in("warmth", place, "")));
        }
        Figure fuse = circuit.fuse().rating();
        if (fuse.value() > 0 || !fuse.known()) {
            measures.add(Measure.of(FUSE_LOAD, circuit.name(), "", circuit.current(), fuse));
            Working[] rating = cable.rating().known()
                    ? new Working[0]
                    : new Working[] {
                        new Working.Formula(
                                "from the table of cables, times warmth",
                                List.of(in("section", cable.section(), "mm2"), in("warmth", place, "")))
                    };
            measures.add(Measure.of(FUSE_SHARE, circuit.name(), "", fuse.dividedBy(carries))
                    .worked("share = fuse / carries", in("fuse", fuse, "A"), in("carries", carries, "A"))
                    .worked(rating));
            measures.add(Measure.of(CABLE_CARRIES, circuit.name(), "", carries).worked(rating));
        }
    }

    private static void panel(Plan plan, List<Measure> measures) {
        List<Working.Input> panels = plan.fitments(Fitment.Kind.SWITCH_PANEL).stream()
                .map(each -> in(each.name(), ((Details.SwitchPanel) each.details()).ways(), ""))
                .toList();
        panels.stream().map(Working.Input::figure).reduce(Figure::plus).ifPresent(ways -> {
            List<Working.Input> used = plan.sheet().circuits().stream()
                    .filter(each -> each.switched().is(YesNo.YES))
                    .map(each -> in(each.name(), Figure.of(1, 0), ""))
                    .toList();
            measures.add(Measure.of(PANEL_USED, "switch panel", "", Figure.of(used.size(), 0))
                    .worked(new Working.Sum("used", used)));
            measures.add(Measure.of(PANEL_WAYS, "switch panel", "", ways).worked(new Working.Sum("ways", panels)));
        });
    }

    private static void battery(Plan plan, Fitment fitment, List<Measure> measures) {
        Battery battery = (Battery) fitment.details();
        Choice<Chemistry> chemistry = battery.chemistry();
        if (chemistry.is(Chemistry.LITHIUM)) {
            measures.add(Measure.of(LITHIUM_PLACE, fitment.name(), "", battery.place()));
            plan.fitments(Fitment.Kind.CHARGER)
                    .forEach(charger -> measures.add(Measure.of(
                            LITHIUM_CURVE, charger.name(), "", ((Details.Charger) charger.details()).lithiumCurve())));
        } else if (!battery.place().known() || battery.place().is(BatteryPlace.CABIN)) {
            Choice<?> answer = !battery.place().known()
                    ? battery.place()
                    : !chemistry.known() ? chemistry : battery.ventedOutside();
            measures.add(Measure.of(GAS_OUT, fitment.name(), "", answer));
        }
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        List<Circuit> circuits = circuits(loading);
        if (circuits.isEmpty()) {
            return;
        }
        String loadCase = loading.loadCase().name();
        Vehicle.Engine engine = loading.plan().vehicle().engine();
        List<Working.Input> drawn = new ArrayList<>(List.of(in("the vehicle itself", engine.ownLoad(), "A")));
        circuits.stream()
                .filter(each -> !each.driving().is(YesNo.NO))
                .forEach(each -> drawn.add(in(each.name(), whileDriving(each), "A")));
        drawn.addAll(parts(loading, Details.Charger.class, Details.Charger::input, "A"));
        Figure load = sum(drawn);
        Working sum = new Working.Sum("drawn", drawn);
        measures.add(Measure.of(ALTERNATOR_LOAD, "alternator", loadCase, load).worked(sum));
        measures.add(Measure.of(ALTERNATOR, "alternator", loadCase, load.dividedBy(engine.alternator()))
                .worked("share = drawn / rating", in("drawn", load, "A"), in("rating", engine.alternator(), "A"))
                .worked(sum));
        Figure most = loading.plan().practice(PracticeId.ELECTRICAL_ALTERNATOR_MOST);
        measures.add(Measure.enough(ALTERNATOR_NEEDED, "alternator", loadCase, load.dividedBy(most))
                .worked("needed = drawn / most", in("drawn", load, "A"), in("most", most, "%"))
                .worked(sum));
        if (loading.setsOut()) {
            starter(loading, circuits, measures);
        }
        SecondBattery.of(loading).ifPresent(battery -> second(loading, battery, measures));
    }

    private static void starter(Loading loading, List<Circuit> circuits, List<Measure> measures) {
        List<Circuit> starter = circuits.stream()
                .filter(each -> each.battery().is(Circuit.Supply.STARTER))
                .toList();
        Vehicle.Engine engine = loading.plan().vehicle().engine();
        if (!starter.isEmpty()) {
            List<Working.Input> parts = new ArrayList<>(List.of(in("the vehicle itself", engine.ownStandby(), "A")));
            starter.forEach(each -> parts.add(in(each.name(), each.standby(), "A")));
            Figure idle = sum(parts);
            Figure parked = trip(loading).parked();
            measures.add(Measure.of(
                            STARTER_DRAIN,
                            "starter battery",
                            loading.loadCase().name(),
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
                            loading.loadCase().name(),
                            most.times(engine.starterBattery()).dividedBy(parked))
                    .worked(
                            "draw = 1000 x most x capacity / stay",
                            in("most", most, "%"),
                            in("capacity", engine.starterBattery(), "Ah"),
                            in("stay", parked, "h")));
        }
    }

    private static void second(Loading loading, SecondBattery battery, List<Measure> measures) {
        String loadCase = loading.loadCase().name();
        Sheet.Trip trip = trip(loading);
        Figure drawn = battery.drawn();
        Figure sun = battery.sun();
        Figure driven = battery.driven();
        Figure power = sum(battery.panels());
        Figure output = sum(battery.chargers());
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
        measures.add(Measure.of(DAILY, SECOND_BATTERY, loadCase, drawn, sun.plus(driven))
                .worked(taken)
                .worked("put back = sun + driven", in("sun", sun, "Ah"), in("driven", driven, "Ah"))
                .worked(shone)
                .worked(charged));
        Choice<Chemistry> chemistry = first.chemistry();
        Figure depth = BatteryLife.depth(drawn.minus(sun), trip.parked(), battery.capacity());
        measures.add(Measure.of(
                        chemistry.is(Chemistry.LITHIUM) ? DEPTH_LITHIUM : DEPTH_LEAD,
                        SECOND_BATTERY,
                        loadCase,
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
                        loadCase,
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

    /** The circuits whose part is on in this case. */
    static List<Circuit> circuits(Loading loading) {
        return loading.plan().sheet().circuits().stream()
                .filter(each -> !loading.loadCase().off().contains(each.part()))
                .toList();
    }

    static <D extends Details> List<D> details(Loading loading, Class<D> type) {
        Predicate<Fitment> on = loading::carries;
        return loading.plan().sheet().fitments().stream()
                .filter(on)
                .map(Fitment::details)
                .filter(type::isInstance)
                .map(type::cast)
                .toList();
    }

    /** A figure of each part of this type that is on in this case. */
    static <D extends Details> List<Working.Input> parts(
            Loading loading, Class<D> type, Function<D, Figure> figure, String unit) {
        return loading.plan().sheet().fitments().stream()
                .filter(each -> loading.carries(each) && type.isInstance(each.details()))
                .map(each -> in(each.name(), figure.apply(type.cast(each.details())), unit))
                .toList();
    }

    static Figure sum(List<Working.Input> parts) {
        return parts.stream().map(Working.Input::figure).reduce(Figure.of(0, 0), Figure::plus);
    }

    private static Choice<YesNo> yesNo(boolean yes) {
        return Choice.of(yes ? YesNo.YES : YesNo.NO);
    }
}
