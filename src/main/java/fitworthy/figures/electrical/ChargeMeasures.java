package fitworthy.figures.electrical;

import static fitworthy.figures.measure.MeasureKind.lookedUp;
import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.ElectricalDetails;
import fitworthy.sheet.ElectricalDetails.Battery;
import fitworthy.sheet.ElectricalDetails.Chemistry;
import fitworthy.sheet.Engine;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The charge that all circuits draw together from alternator and batteries. */
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
                    "electrical.standby-most", "mA", 0, "mean draw that the starter battery bears for the longest stay")
            .byLoading();
    private static final MeasureKind STARTER_HEAVIEST = lookedUp(
                    "electrical.starter-heaviest", "what draws most of it while parked, of all that is drawn")
            .byLoading();
    private static final MeasureKind DAILY = rated(
                    "electrical.daily", "Ah", 1, "charge drawn a day", "charge that sun and a day's drive can give")
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
    private static final MeasureKind CHARGER_GAIN = number(
                    "electrical.charger-gain", "%", 0, "power that the charger gives, as a share of what it takes")
            .byLoading();
    private static final MeasureKind CHARGER_IN = number(
                    "electrical.charger-in", "A", 1, "the most it takes from the alternator")
            .byLoading();
    private static final MeasureKind CHARGER_OUT = number(
                    "electrical.charger-out", "A", 1, "the most it gives the battery")
            .byLoading();

    private static final String SECOND_BATTERY = "second battery";

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                ALTERNATOR_LOAD,
                ALTERNATOR,
                ALTERNATOR_NEEDED,
                STARTER_DRAIN,
                STANDBY_MOST,
                STARTER_HEAVIEST,
                DAILY,
                DEPTH_LEAD,
                DEPTH_LITHIUM,
                CAPACITY_NEEDED,
                CHARGER_GAIN,
                CHARGER_IN,
                CHARGER_OUT);
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        CircuitsOn circuits = new CircuitsOn(loading);
        EnergyFlow way = new EnergyFlow(circuits);
        if (!circuits.any() && way.chargers().isEmpty()) {
            return;
        }
        Engine engine = loading.plan().vehicle().engine();
        List<Working.Input> drawn = way.onAlternator();
        Figure load = Working.total(drawn);
        Working sum = new Working.Sum("drawn", drawn);
        Working converted = circuits.converted(Circuit.Supply.STARTER);
        measures.add(Measure.of(ALTERNATOR_LOAD, "alternator", load).worked(sum, converted));
        measures.add(Measure.of(ALTERNATOR, "alternator", load.dividedBy(engine.alternator()))
                .worked("share = drawn / rating", in("drawn", load, "A"), in("rating", engine.alternator(), "A"))
                .worked(sum, converted));
        Figure most = loading.plan().practice(PracticeId.ELECTRICAL_ALTERNATOR_MOST);
        measures.add(Measure.enough(ALTERNATOR_NEEDED, "alternator", load.dividedBy(most))
                .worked("needed = drawn / most", in("drawn", load, "A"), in("most", most, "%"))
                .worked(sum));
        if (loading.setsOut() && circuits.any()) {
            starter(circuits, measures);
            Optional<SecondBattery> second = SecondBattery.of(circuits, way);
            second.ifPresent(battery -> second(circuits, way, battery, measures));
            if (second.isPresent()) {
                way.chargers().forEach(charger -> charger(way, charger, measures));
            } else if (loading.plan().fitments(Fitment.Kind.BATTERY).isEmpty()) {
                untold(circuits, measures);
            }
        }
    }

    /** What hangs on a second battery that nobody tells of is not in order for that. */
    private static void untold(CircuitsOn circuits, List<Measure> measures) {
        List<Working.Input> drains = new SecondDraw(circuits).drains();
        if (!drains.isEmpty()) {
            measures.add(Measure.of(DAILY, SECOND_BATTERY, Working.total(drains), circuits.voltage()));
        }
    }

    /** Whether a charger is said to give more power than it takes; a relay gives what it takes. */
    private static void charger(EnergyFlow way, Fitment fitment, List<Measure> measures) {
        ElectricalDetails.Charger charger = (ElectricalDetails.Charger) fitment.details();
        if (charger.isolator().is(YesNo.YES)) {
            return;
        }
        Figure taken = way.taken(fitment);
        measures.add(Measure.of(CHARGER_GAIN, fitment.name(), charger.output().dividedBy(taken))
                .worked("share = out / taken", in("out", charger.output(), "A"), in("taken", taken, "A")));
        measures.add(Measure.of(CHARGER_IN, fitment.name(), charger.input()));
        measures.add(Measure.of(CHARGER_OUT, fitment.name(), charger.output()));
    }

    private static void starter(CircuitsOn circuits, List<Measure> measures) {
        ParkedDraw parkedDraw = new ParkedDraw(circuits);
        if (!parkedDraw.isAny()) {
            return;
        }
        Loading loading = circuits.loading();
        Engine engine = loading.plan().vehicle().engine();
        List<Working.Input> parts = parkedDraw.each();
        Figure idle = Working.total(parts);
        Figure parked = trip(loading).parked();
        measures.add(Measure.of(
                        STARTER_DRAIN,
                        "starter battery",
                        BatteryLife.depth(idle.times(24), Figure.ZERO, parked, engine.starterBattery()))
                .worked(
                        "taken = mean x stay / capacity",
                        in("mean", idle, "A"),
                        in("stay", parked, "h"),
                        in("capacity", engine.starterBattery(), "Ah"))
                .worked(new Working.Sum("mean", parts), circuits.converted(Circuit.Supply.STARTER)));
        measures.add(Measure.of(STARTER_HEAVIEST, "starter battery", heaviest(parts, idle), idle.missing()));
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

    /** The load that draws most, standing and in use together, as in "Fridge (1.33 A of 1.36 A)". */
    private static String heaviest(List<Working.Input> parts, Figure idle) {
        Map<String, Double> byLoad = new LinkedHashMap<>();
        parts.forEach(part -> byLoad.merge(
                ParkedDraw.HOW_PARKED.matcher(part.name()).replaceFirst(""),
                part.figure().value(),
                Double::sum));
        return byLoad.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(load -> load.getKey() + " (" + amperes(load.getValue()) + " of " + amperes(idle.value()) + ")")
                .orElse("nothing");
    }

    private static String amperes(double current) {
        return (Double.isFinite(current) ? BigDecimal.valueOf(current).setScale(2, RoundingMode.HALF_UP) : current)
                + " A";
    }

    private static void second(CircuitsOn circuits, EnergyFlow way, SecondBattery battery, List<Measure> measures) {
        Loading loading = circuits.loading();
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
                                    in("voltage", circuits.voltage(), "V"))),
                    new Working.Sum("power", battery.panels())
                };
        Working[] charged = battery.chargers().isEmpty()
                ? new Working[0]
                : new Working[] {
                    new Working.Formula(
                            "driven = output x given x driving",
                            List.of(
                                    in("output", output, "A"),
                                    in("given", battery.given(), "%"),
                                    in("driving", trip.driving(), "h"))),
                    new Working.Sum("output", battery.chargers()),
                    given(loading, way)
                };
        Working taken = new Working.Sum("drawn", battery.drains());
        measures.add(Measure.of(DAILY, SECOND_BATTERY, drawn, sun.plus(driven))
                .worked(taken, circuits.converted(Circuit.Supply.SECOND))
                .worked("put back = sun + driven", in("sun", sun, "Ah"), in("driven", driven, "Ah"))
                .worked(shone)
                .worked(charged));
        Choice<Chemistry> chemistry = first.chemistry();
        Figure depth = BatteryLife.depth(drawn, sun, trip.parked(), battery.capacity());
        boolean lithium = chemistry.is(Chemistry.LITHIUM);
        for (MeasureKind kind : chemistry.known()
                ? List.of(lithium ? DEPTH_LITHIUM : DEPTH_LEAD)
                : List.of(DEPTH_LITHIUM, DEPTH_LEAD)) {
            measures.add(Measure.of(kind, SECOND_BATTERY, depth)
                    .worked(emptied(battery, trip))
                    .worked(taken, circuits.converted(Circuit.Supply.SECOND))
                    .worked(shone)
                    .worked(new Working.Sum("capacity", battery.capacities()))
                    .given(chemistry));
        }
        Figure most = loading.plan()
                .practice(lithium ? PracticeId.ELECTRICAL_DEPTH_LITHIUM_MOST : PracticeId.ELECTRICAL_DEPTH_LEAD_MOST);
        measures.add(Measure.enough(
                        CAPACITY_NEEDED,
                        SECOND_BATTERY,
                        depth.times(battery.capacity()).dividedBy(most))
                .worked(
                        "needed = taken x capacity / most",
                        in("taken", depth, "%"),
                        in("capacity", battery.capacity(), "Ah"),
                        in("most", most, "%"))
                .given(chemistry));
    }

    /** How {@link BatteryLife#depth} came about. */
    private static Working[] emptied(SecondBattery battery, Sheet.Trip trip) {
        Figure drawn = battery.drawn();
        Figure sun = battery.sun();
        Working.Input a = in("drawn", drawn, "Ah");
        Working.Input stay = in("stay", trip.parked(), "h");
        Working.Input capacity = in("capacity", battery.capacity(), "Ah");
        if (battery.panels().isEmpty()) {
            return new Working[] {
                new Working.Formula("taken = drawn x stay / 24 / capacity", List.of(a, stay, capacity))
            };
        }
        Working.Input put = in("sun", sun, "Ah");
        return new Working[] {
            new Working.Formula(
                    "taken = min(drawn x stay / 24, short x stay / 24 + night) / capacity",
                    List.of(
                            a,
                            stay,
                            in("short", BatteryLife.shortfall(drawn, sun), "Ah"),
                            in("night", BatteryLife.night(drawn, sun), "Ah"),
                            capacity)),
            new Working.Formula("short = max(0, drawn - sun)", List.of(a, put)),
            new Working.Formula("night = min(drawn x 16 / 24, max(0, sun - drawn x 8 / 24))", List.of(a, put))
        };
    }

    /** What of their input the alternator leaves over for the chargers. */
    private static Working given(Loading loading, EnergyFlow way) {
        Figure asked = Working.total(way.chargerInputs());
        return asked.isZero()
                ? List::of
                : new Working.Formula(
                        "given = min(1, max(0, most x rating - before) / asked)",
                        List.of(
                                in("most", loading.plan().practice(PracticeId.ELECTRICAL_ALTERNATOR_MOST), "%"),
                                in("rating", loading.plan().vehicle().engine().alternator(), "A"),
                                in("before", Working.total(way.beforeChargers()), "A"),
                                in("asked", asked, "A")));
    }

    private static Sheet.Trip trip(Loading loading) {
        return loading.plan().sheet().trip();
    }
}
