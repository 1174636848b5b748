package fitworthy.figures.body;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Held;
import fitworthy.figures.plan.LoadBox;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Masses;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.figures.plan.VehicleClass;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails;
import fitworthy.sheet.BodyDetails.AtRear;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.BodyDetails.FirearmBox;
import fitworthy.sheet.BodyDetails.GasBottle;
import fitworthy.sheet.BodyDetails.GasPlace;
import fitworthy.sheet.BodyDetails.RearEnd;
import fitworthy.sheet.BodyDetails.SeatChange;
import fitworthy.sheet.ElectricalDetails.Battery;
import fitworthy.sheet.ElectricalDetails.BatteryPlace;
import fitworthy.sheet.ElectricalDetails.Chemistry;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.MassDetails.ChassisExtension;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Trailer;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** What chassis, tray and canopy do to the vehicle's rear, and what is kept in them; mass is a matter of the axles. */
final class BodyBuildMeasures implements Topic {

    private static final MeasureKind OVERHANG = number(
                    "body.overhang", "%", 1, "rear overhang as a share of the wheelbase")
            .byLoading();
    private static final MeasureKind OVERHANG_KEPT = number(
                    "body.overhang-kept",
                    "%",
                    1,
                    "rear overhang that is no longer than as made, as a share of the wheelbase")
            .byLoading();
    private static final MeasureKind OVERHANG_LONGEST = number(
                    "body.overhang-longest", "mm", 0, "longest rear overhang for the wheelbase")
            .byLoading();
    private static final MeasureKind OVERHANG_GROWN = rated(
                    "body.overhang-grown", "mm", 0, "rear overhang", "rear overhang as made")
            .byLoading();
    private static final MeasureKind CHASSIS_APPROVED =
            yesNo("body.chassis-approved", "whether the longer wheelbase is agreed in writing");
    private static final MeasureKind BEHIND_AXLE =
            number("body.behind-axle", "%", 0, "part of its length behind the rear axle");
    private static final MeasureKind WIDTH = number("body.width", "mm", 0, "its greatest width");
    private static final MeasureKind WIDTH_PASSENGER =
            number("body.width-passenger", "mm", 0, "its greatest width on a passenger vehicle");
    private static final MeasureKind LAMPS_CHECKED = yesNo(
                    "body.lamps-checked", "whether all the lamps that the body brings were checked, and where they sit")
            .byLoading();
    private static final MeasureKind LAMPS =
            word("body.lamps", "what is seen of the rear lamps", AtRear.class).byLoading();
    private static final MeasureKind PLATE =
            word("body.plate", "what is seen of the number plate", AtRear.class).byLoading();
    private static final MeasureKind HIGH_STOP_LAMP = word(
                    "body.high-stop-lamp", "what is seen of the high-mounted stop lamp", AtRear.class)
            .byLoading();
    private static final MeasureKind HOLD_DOWN =
            number("body.hold-down", "", 1, "working load of its hold-downs over the weight they hold");
    private static final MeasureKind HOLD_DOWN_HELD = number(
            "body.hold-down-held", "kg", 0, "what its hold-downs hold, as written or all that the sheet puts in it");
    private static final MeasureKind HOLD_DOWN_NEEDED =
            number("body.hold-down-needed", "kg", 0, "working load that its hold-downs need together");
    private static final MeasureKind HOLD_DOWN_ASKED = rated(
            "body.hold-down-asked",
            "",
            2,
            "how many times the weight they hold its hold-downs have to bear",
            "how many times they do");
    private static final MeasureKind HOLD_DOWN_POINTS = number("body.hold-down-points", "", 0, "hold-down points");
    private static final MeasureKind LEG =
            rated("body.leg", "kg", 0, "load on one leg when it stands on two", "what the leg may carry");
    private static final MeasureKind TIPPING = number("body.tipping", "deg", 1, "slope on which it tips off its legs");
    private static final MeasureKind FEET_NEEDED =
            number("body.feet-needed", "mm", 0, "spacing of the feet that stands on the slope asked");
    private static final MeasureKind DUST = yesNo("body.dust-sealed", "whether it is sealed against dust");
    private static final MeasureKind GAS_PLACE = word("body.gas-place", "where the gas bottle travels", GasPlace.class);
    private static final MeasureKind GAS_VENT =
            yesNo("body.gas-vent", "whether the closed space of the gas bottle is open to the outside at its floor");
    private static final MeasureKind GAS_ALARM =
            yesNo("body.gas-alarm", "whether a gas alarm hangs in the space of the gas bottle");
    private static final MeasureKind GAS_MOUNT =
            number("body.gas-mount", "", 1, "what the bottle's bracket withstands over the weight of the full bottle");
    private static final MeasureKind GAS_MOUNT_NEEDED =
            number("body.gas-mount-needed", "kg", 0, "what the bottle's bracket has to withstand");
    private static final MeasureKind BATTERY_VENT = rated(
            "body.battery-vent",
            "cm2",
            1,
            "free area of the smaller vent of the battery's box",
            "what its gas asks for");
    private static final MeasureKind DOOR = rated(
                    "body.door", "mm", 0, "reach of what opens to the rear", "gap to the trailer")
            .byLoading();
    private static final MeasureKind SEATS = yesNo("body.seats-changed", "whether seats are changed for good");
    private static final MeasureKind SEATS_TESTED =
            yesNo("body.seats-tested", "whether added seats, belts and what holds them were tested in this model");

    @Override
    public List<MeasureKind> kinds() {
        List<MeasureKind> kinds = new ArrayList<>(List.of(
                OVERHANG,
                OVERHANG_KEPT,
                OVERHANG_GROWN,
                CHASSIS_APPROVED,
                BEHIND_AXLE,
                WIDTH,
                WIDTH_PASSENGER,
                LAMPS_CHECKED,
                LAMPS,
                PLATE,
                HIGH_STOP_LAMP,
                HOLD_DOWN,
                HOLD_DOWN_POINTS,
                LEG,
                TIPPING,
                DUST,
                GAS_PLACE,
                GAS_VENT,
                GAS_ALARM,
                GAS_MOUNT,
                BATTERY_VENT,
                DOOR,
                SEATS,
                SEATS_TESTED,
                OVERHANG_LONGEST,
                HOLD_DOWN_HELD,
                HOLD_DOWN_NEEDED,
                HOLD_DOWN_ASKED,
                FEET_NEEDED,
                GAS_MOUNT_NEEDED));
        kinds.addAll(Firearms.KINDS);
        kinds.addAll(CanopyHold.KINDS);
        return kinds;
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        for (Fitment fitment : plan.sheet().fitments()) {
            String name = fitment.name();
            if (fitment.details() instanceof ChassisExtension extension && !fitment.isDone()) {
                measures.add(Measure.of(CHASSIS_APPROVED, name, extension.approved()));
            } else if (fitment.details() instanceof Body body) {
                body(plan, fitment, body, measures);
            } else if (fitment.details() instanceof GasBottle bottle) {
                gas(plan, fitment, bottle, measures);
            } else if (fitment.details() instanceof Battery battery) {
                battery(name, battery, measures);
            } else if (fitment.details() instanceof FirearmBox box) {
                Firearms.box(name, box, measures);
            } else if (fitment.details() instanceof SeatChange change && !fitment.isDone()) {
                measures.add(Measure.of(SEATS, name, change.permanent()));
                added(plan, name, change, measures);
            }
        }
    }

    /** Who takes seats out has no new belts to prove; where nobody says how many there are, some may be added. */
    private static void added(Plan plan, String name, SeatChange change, List<Measure> measures) {
        Figure more = change.seats().minus(plan.vehicle().seats());
        if (!more.isAtMost(Figure.ZERO)) {
            measures.add(
                    more.known() || change.tested().known()
                            ? Measure.of(SEATS_TESTED, name, change.tested())
                            : Measure.of(SEATS_TESTED, name, "", more.missing()));
        }
    }

    /** What stands in the maker's bed and ends no further back can be ordered in no other length, nor elsewhere. */
    private static boolean isAsLongAsTheBed(Plan plan, Body body) {
        Figure end = plan.vehicle().size().rearOverhang().plus(plan.wheelbase());
        Figure own = body.front().plus(body.length());
        return body.tubStays().is(YesNo.YES) && own.known() && end.known() && own.value() <= end.value() + 1e-6;
    }

    private static void body(Plan plan, Fitment fitment, Body body, List<Measure> measures) {
        String name = fitment.name();
        if (!isAsLongAsTheBed(plan, body)) {
            measures.add(
                    Measure.of(BEHIND_AXLE, name, LoadBox.behindAxle(body.front(), body.length(), plan.wheelbase()))
                            .worked(
                                    "part = min(1, max(0, (front + length - wheelbase) / length))",
                                    in("front", body.front(), "mm"),
                                    in("length", body.length(), "mm"),
                                    in("wheelbase", plan.wheelbase(), "mm")));
        }
        measures.add(Measure.of(WIDTH, name, body.width()));
        if (!VehicleClass.goods(plan)) {
            Figure width = body.width();
            measures.add(Measure.of(
                    WIDTH_PASSENGER,
                    name,
                    VehicleClass.known(plan)
                            ? width
                            : width.missingWith(Figure.missing(VehicleClass.missing()), width)));
        }
        boolean closed =
                fitment.kind() == Fitment.Kind.CANOPY || body.dustSealed().known();
        if (closed && !plan.sheet().trip().dust().is(Sheet.Dust.NONE)) {
            measures.add(Measure.of(DUST, name, body.dustSealed()));
        }
        boolean comesOff =
                fitment.removable().is(YesNo.YES) || !fitment.removable().known() && body.tellsHowItComesOff();
        if (comesOff || body.holdDown().isTold()) {
            held(plan, fitment, body, comesOff, measures);
        }
    }

    /** Nobody has to tell how one is held that stays on; what is told is looked at, and what it holds asked for that. */
    private static void held(Plan plan, Fitment fitment, Body body, boolean comesOff, List<Measure> measures) {
        Held loaded = Held.of(plan, fitment, body.holdDown().loaded());
        List<Measure> held = new ArrayList<>();
        holdDown(plan, fitment, body, loaded, held);
        if (comesOff) {
            legs(plan, fitment, body, loaded.mass(), held);
            held.forEach(measure -> measures.add(measure.given(fitment.removable())));
        } else {
            List<Missing> asked = body.holdDown().loaded().missing();
            held.stream()
                    .filter(measure -> asked.containsAll(measure.missing()))
                    .forEach(measures::add);
        }
    }

    /** How it is held while it is on. */
    private static void holdDown(Plan plan, Fitment fitment, Body body, Held inIt, List<Measure> measures) {
        String name = fitment.name();
        BodyDetails.HoldDown holdDown = body.holdDown();
        Figure least = plan.practice(PracticeId.BODY_HOLD_DOWN_LEAST);
        Held loaded = inIt.orTooMuch(holdDown.points().times(holdDown.limit()), least);
        Figure held = loaded.mass();
        Hold hold = Hold.by(holdDown.points(), holdDown.limit(), held, least);
        Working sum = loaded.working(holdDown.loaded());
        measures.add(Measure.of(HOLD_DOWN, name, hold.share()).worked(hold.working(), sum));
        measures.add(Measure.of(HOLD_DOWN_ASKED, name, least, hold.share()).worked(hold.working(), sum));
        measures.add(Measure.of(HOLD_DOWN_HELD, name, held).worked(sum).asLeast(loaded.least()));
        measures.add(Measure.enough(HOLD_DOWN_NEEDED, name, least.times(held))
                .worked("needed = least x held", in("least", least, ""), in("held", held, "kg")));
        measures.add(Measure.of(HOLD_DOWN_POINTS, name, holdDown.points()));
        CanopyHold.measures(plan, fitment, body, loaded, measures);
    }

    /** How it stands while it is off. @param held what its hold-downs hold, kg */
    private static void legs(Plan plan, Fitment fitment, Body body, Figure held, List<Measure> measures) {
        String name = fitment.name();
        BodyDetails.Legs legs = body.legs();
        Figure lifted = Held.lifted(plan, fitment, legs.lifted(), held);
        measures.add(Measure.of(LEG, name, LoadBox.onOneLeg(lifted), legs.limit())
                .worked("load = lifted / 2", in("lifted", lifted, "kg")));
        measures.add(Measure.of(TIPPING, name, LoadBox.tippingAngle(legs.spacing(), legs.cogHeight()))
                .worked(
                        "slope = atan(spacing / 2 / height)",
                        in("spacing", legs.spacing(), "mm"),
                        in("height", legs.cogHeight(), "mm")));
        Figure slope = plan.practice(PracticeId.BODY_TIPPING_LEAST);
        measures.add(Measure.enough(FEET_NEEDED, name, LoadBox.feetNeeded(slope, legs.cogHeight()))
                .worked(
                        "spacing = 2 x height x tan(slope)",
                        in("height", legs.cogHeight(), "mm"),
                        in("slope", slope, "deg")));
    }

    private static void gas(Plan plan, Fitment fitment, GasBottle bottle, List<Measure> measures) {
        measures.add(Measure.of(GAS_PLACE, fitment.name(), bottle.place()));
        if (!bottle.place().is(GasPlace.OPEN_AIR)) {
            measures.add(Measure.of(GAS_VENT, fitment.name(), bottle.dropVent()));
        }
        // A locker of its own is open to the outside and to nothing else.
        if (!bottle.place().is(GasPlace.OPEN_AIR) && !bottle.place().is(GasPlace.LOCKER)) {
            measures.add(
                    Measure.of(GAS_ALARM, fitment.name(), bottle.gasAlarm()).given(bottle.place()));
        }
        Figure full = Masses.of(fitment, plan.sheet());
        measures.add(Measure.of(GAS_MOUNT, fitment.name(), bottle.mount().dividedBy(full))
                .worked("ratio = bracket / bottle", in("bracket", bottle.mount(), "kg"), in("bottle", full, "kg")));
        Figure least = plan.practice(PracticeId.BODY_GAS_MOUNT_LEAST);
        measures.add(Measure.enough(GAS_MOUNT_NEEDED, fitment.name(), least.times(full))
                .worked("needed = least x bottle", in("least", least, ""), in("bottle", full, "kg")));
    }

    /** That it is not vented at all is told by the electrics where people are in with it; elsewhere it has no vents. */
    private static void battery(String name, Battery battery, List<Measure> measures) {
        boolean open =
                battery.place().is(BatteryPlace.ENGINE_BAY) || battery.place().is(BatteryPlace.OUTSIDE);
        boolean shut = battery.ventedOutside().is(YesNo.NO);
        boolean told = shut && (!battery.place().known() || battery.place().is(BatteryPlace.CABIN));
        if (!open && !told && !battery.chemistry().is(Chemistry.LITHIUM)) {
            Figure needed = !battery.place().known()
                    ? Figure.missing(battery.place().missing())
                    : !battery.chemistry().known()
                            ? Figure.missing(battery.chemistry().missing())
                            : BatteryVent.area(
                                    battery.voltage(),
                                    battery.capacity(),
                                    battery.chemistry().is(Chemistry.LEAD_ACID));
            Measure vents = shut
                    ? Measure.of(BATTERY_VENT, name, Figure.ZERO, needed).given(battery.ventedOutside())
                    : Measure.of(BATTERY_VENT, name, battery.vents(), needed);
            measures.add(vents.worked(
                    battery.chemistry().is(Chemistry.LEAD_ACID)
                            ? "needed = 28 x 0.05 x voltage / 2 x 0.02 x capacity"
                            : "needed = 28 x 0.05 x voltage / 2 x 0.01 x capacity",
                    in("voltage", battery.voltage(), "V"),
                    in("capacity", battery.capacity(), "Ah")));
        }
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        Plan plan = loading.plan();
        boolean bodies = !plan.details(Body.class).isEmpty();
        if (bodies || !plan.details(ChassisExtension.class).isEmpty()) {
            Figure overhang = loading.rearOverhang();
            Working end = rearmost(loading, overhang);
            Figure made = plan.vehicle().size().rearOverhang();
            Figure most = plan.practice(PracticeId.BODY_OVERHANG_MOST);
            boolean kept = overhang.isAtMost(made);
            Figure share = overhang.dividedBy(plan.wheelbase());
            // What reaches no further back than as made is no fault of the plan, and asked of nobody where the book
            // records no share.
            List<MeasureKind> judged = new ArrayList<>();
            if (!kept || most.known() && !share.isAbove(most)) {
                judged.add(OVERHANG);
            }
            if (kept && most.known()) {
                judged.add(OVERHANG_KEPT);
            }
            judged.forEach(kind -> measures.add(Measure.of(kind, "vehicle", share)
                    .worked(
                            "share = overhang / wheelbase",
                            in("overhang", overhang, "mm"),
                            in("wheelbase", plan.wheelbase(), "mm"))
                    .worked(end)));
            measures.add(Measure.most(OVERHANG_LONGEST, "vehicle", most.times(plan.wheelbase()))
                    .worked(
                            "longest = most x wheelbase",
                            in("most", most, "%"),
                            in("wheelbase", plan.wheelbase(), "mm")));
            measures.add(Measure.of(OVERHANG_GROWN, "vehicle", overhang, made).worked(end));
        }
        if (bodies) {
            measures.add(Measure.of(LAMPS, "rear lamps", seen(loading, RearEnd::lamps)));
            lampsChecked(loading, measures);
            measures.add(Measure.of(PLATE, "number plate", seen(loading, RearEnd::plate)));
            measures.add(Measure.of(HIGH_STOP_LAMP, "high-mounted stop lamp", seen(loading, RearEnd::highStopLamp)));
        }
        loading.trailer()
                .filter(trailer -> !trailer.hitch().is(Trailer.Hitch.FIFTH_WHEEL))
                .ifPresent(trailer -> doors(loading, trailer, measures));
    }

    /** How the tray or canopy that ends the vehicle does so; nothing where the vehicle's own overhang counts. */
    private static Working rearmost(Loading loading, Figure overhang) {
        Figure wheelbase = loading.plan().wheelbase();
        return () -> loading.bodies().stream()
                .map(fitment -> (Body) fitment.details())
                .filter(body ->
                        LoadBox.overhang(body.front(), body.length(), wheelbase).equals(overhang))
                .findFirst()
                .map(body -> end("overhang", body, wheelbase).lines())
                .orElse(List.of());
    }

    private static Working end(String result, Body body, Figure wheelbase) {
        return new Working.Formula(
                result + " = front + length - wheelbase",
                List.of(
                        in("front", body.front(), "mm"),
                        in("length", body.length(), "mm"),
                        in("wheelbase", wheelbase, "mm")));
    }

    /** Asked of the part whose lamps are seen; that nobody has said so is no answer less: somebody has to look. */
    private static void lampsChecked(Loading loading, List<Measure> measures) {
        loading.bodies().stream()
                .filter(fitment -> !((Body) fitment.details()).rear().lamps().is(AtRear.IN_VIEW))
                .reduce((inner, outer) -> outer)
                .filter(fitment -> !fitment.isDone())
                .map(fitment -> ((Body) fitment.details()).rear())
                .filter(rear -> !rear.lamps().is(AtRear.HIDDEN))
                .ifPresent(rear -> measures.add(Measure.of(
                                LAMPS_CHECKED,
                                "rear lamps",
                                Choice.yesNo(rear.lampsChecked().is(YesNo.YES)))
                        .given(rear.lamps())));
    }

    /** From behind the outermost part that carries or hides it decides; without one the vehicle's own shows. */
    private static Choice<AtRear> seen(Loading loading, Function<RearEnd, Choice<AtRear>> what) {
        return loading.bodies().stream()
                .map(fitment -> what.apply(((Body) fitment.details()).rear()))
                .filter(answer -> !answer.is(AtRear.IN_VIEW))
                .reduce((inner, outer) -> outer)
                .orElse(Choice.of(AtRear.IN_VIEW));
    }

    private static void doors(Loading loading, Trailer trailer, List<Measure> measures) {
        Plan plan = loading.plan();
        for (Fitment fitment : loading.bodies()) {
            Body body = (Body) fitment.details();
            if (!body.rearSwing().isZero()) {
                Figure end = LoadBox.overhang(body.front(), body.length(), plan.wheelbase());
                Figure gap = plan.ballOverhang().plus(trailer.drawbar()).minus(end);
                measures.add(Measure.of(DOOR, fitment.name(), body.rearSwing(), gap)
                        .worked(
                                "gap = ball + drawbar - end",
                                in("ball", plan.ballOverhang(), "mm"),
                                in("drawbar", trailer.drawbar(), "mm"),
                                in("end", end, "mm"))
                        .worked(end("end", body, plan.wheelbase())));
            }
        }
    }
}
