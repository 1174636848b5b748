package fitworthy.figures.body;

import static fitworthy.figures.measure.MeasureKind.yesNo;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.Held;
import fitworthy.figures.plan.Liquids;
import fitworthy.figures.plan.OnRoof;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.MassDetails.ChassisExtension;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whether anything holds what is heavy, asked where the sheet tells of no straps or bolts to be worked out. What is said
 * not to be held is told of what is lighter too.
 */
final class HoldingMeasures implements Topic {
    private static final MeasureKind SECURED =
            yesNo("body.secured", "whether straps, a net or walls keep a heavy load where it is");
    private static final MeasureKind ROOF_SECURED =
            yesNo("body.roof-secured", "whether straps or bolts keep a load on the roof");
    private static final MeasureKind FIXING_STATED =
            yesNo("body.fixing-stated", "whether it is stated in writing how it is fixed to hold in a crash");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(SECURED, ROOF_SECURED, FIXING_STATED);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        plan.sheet().cargo().forEach(load -> load(plan, load, measures));
        Set<String> carriers = carriers(plan.sheet());
        plan.sheet().fitments().forEach(part -> {
            part(plan, part, carriers, measures);
            bolted(plan, part, measures);
            mounted(plan, part, measures);
        });
        plan.sheet().tanks().forEach(tank -> tank(plan, tank, measures));
    }

    private static void load(Plan plan, Sheet.Load load, List<Measure> measures) {
        if (load.lashing().isPresent() || load.tied().isPresent() || load.isAlive()) {
            return;
        }
        Choice<YesNo> roof = OnRoof.of(load, plan.sheet());
        if (mayBe(roof) && isByItself(plan, load.in()) && isHeavyOnRoof(plan, load.mass(), load.secured())) {
            measures.add(Measure.of(ROOF_SECURED, load.name(), load.secured()).given(roof));
        } else if (maySlide(plan, load)
                && (isHeavy(plan, load.mass(), load.secured())
                        || isOnCanopy(plan, load) && isHeavyOnRoof(plan, load.mass(), load.secured()))) {
            measures.add(Measure.of(SECURED, load.name(), load.secured()));
        }
    }

    /** One that nothing closes in, and that does not count as too much that lies loose beside people. */
    private static boolean maySlide(Plan plan, Sheet.Load load) {
        Sheet sheet = plan.sheet();
        Point at = plan.places().of(load);
        boolean inCanopy = !ClosedIn.onRack(sheet, load) && isAtCanopy(plan, at) && !OnRoof.isHigh(at);
        boolean light = load.mass().isAtMost(plan.practice(PracticeId.BODY_LOOSE_MOST));
        return !inCanopy
                && !ClosedIn.by(sheet, load)
                && (light
                        || !ClosedIn.liesLoose(sheet, load)
                        || plan.vehicle().cargoBarrier().is(YesNo.YES)
                        || behindPeople(plan, at));
    }

    /** Where as high as a roof is on top of it. */
    private static boolean isOnCanopy(Plan plan, Sheet.Load load) {
        Point at = plan.places().of(load);
        return isAtCanopy(plan, at) && OnRoof.isHigh(at);
    }

    private static boolean isAtCanopy(Plan plan, Point at) {
        return !plan.fitments(Fitment.Kind.CANOPY).isEmpty() && !aheadOfBodies(plan, at);
    }

    /** The parts in which something is: of all others what they weigh themselves is enough to look at. */
    private static Set<String> carriers(Sheet sheet) {
        return Stream.of(
                        sheet.fitments().stream().map(Fitment::in),
                        sheet.tanks().stream().map(Tank::in),
                        sheet.cargo().stream().map(Sheet.Load::in))
                .flatMap(names -> names)
                .collect(Collectors.toSet());
    }

    /** A battery, a box for firearms and the like are asked by themselves. */
    private static void part(Plan plan, Fitment part, Set<String> carriers, List<Measure> measures) {
        boolean box = part.kind() == Fitment.Kind.OTHER || part.kind() == Fitment.Kind.LOCKER;
        if (!box || part.isDone() || part.fixing().isPresent() || !isByItself(plan, part.in())) {
            return;
        }
        // What of it has no known mass may be heavy.
        Figure mass = carriers.contains(part.name()) ? loaded(plan, part) : part.mass();
        Optional<Point> at = plan.places().of(part);
        stated(plan, part.name(), part.fixingStated(), mass, OnRoof.of(part, plan.sheet()), at)
                .ifPresent(measures::add);
    }

    /** A heavy canopy that stays on, of which the sheet tells nothing that holds it. */
    private static void bolted(Plan plan, Fitment canopy, List<Measure> measures) {
        if (canopy.kind() != Fitment.Kind.CANOPY
                || canopy.isDone()
                || canopy.fixing().isPresent()) {
            return;
        }
        Body body = (Body) canopy.details();
        boolean told = canopy.removable().is(YesNo.YES) || body.tellsHowItComesOff();
        if (!told && !loaded(plan, canopy).isAtMost(plan.practice(PracticeId.BODY_CANOPY_HEAVY))) {
            measures.add(Measure.of(FIXING_STATED, canopy.name(), canopy.fixingStated()));
        }
    }

    /** A tray on a cut chassis, whose mounts are no maker's any more, and any of which the sheet tells how it is mounted. */
    private static void mounted(Plan plan, Fitment tray, List<Measure> measures) {
        boolean told = tray.fixingStated().known()
                || !plan.toBeDone(ChassisExtension.class).isEmpty();
        if (tray.kind() == Fitment.Kind.TRAY && !tray.isDone() && tray.fixing().isEmpty() && told) {
            measures.add(Measure.of(FIXING_STATED, tray.name(), tray.fixingStated()));
        }
    }

    private static Figure loaded(Plan plan, Fitment part) {
        Figure sure = Held.of(plan, part, Figure.ZERO).mass();
        return plan.sheet().cargo().stream()
                .filter(load -> load.in().equals(part.name()))
                .map(Sheet.Load::mass)
                .reduce(sure, (sum, mass) -> mass.missingWith(mass, sum));
    }

    /**
     * One that is added, by what it weighs when it is full. One under the floor hangs in its maker's cradle, in no space with
     * people; of one that may hang there it is asked first where it is.
     */
    private static void tank(Plan plan, Tank tank, List<Measure> measures) {
        Point at = plan.places().of(tank);
        Figure most = plan.practice(PracticeId.BODY_UNDER_FLOOR_MOST);
        boolean hangs = at.z().isAtMost(most);
        if (!Alterations.added(tank) || tank.isDone() || tank.isCan() || !isByItself(plan, tank.in()) || hangs) {
            return;
        }
        Figure within = at.z().missingWith(most, at.z());
        Choice<YesNo> told = within.known() || tank.fixingStated().is(YesNo.YES)
                ? Choice.of(YesNo.YES)
                : Choice.missing(within.missing().get(0));
        Figure full = tank.mass().plus(Liquids.mass(tank, Figure.of(1, 0)));
        stated(plan, tank.name(), tank.fixingStated(), full, OnRoof.of(tank, plan.sheet()), Optional.of(at))
                .map(measure -> measure.given(told))
                .ifPresent(measures::add);
    }

    private static Optional<Measure> stated(
            Plan plan, String name, Choice<YesNo> stated, Figure mass, Choice<YesNo> roof, Optional<Point> at) {
        boolean asked = mayBe(roof)
                ? isHeavyOnRoof(plan, mass, stated)
                : isHeavy(plan, mass, stated)
                        && at.filter(place -> !behindPeople(plan, place)).isPresent();
        Measure measure = Measure.of(FIXING_STATED, name, stated);
        return asked ? Optional.of(mayBe(roof) ? measure.given(roof) : measure) : Optional.empty();
    }

    /** What stands in a box or a canopy is held by that, what stands on a rack by itself. */
    private static boolean isByItself(Plan plan, String in) {
        return in.isEmpty()
                || plan.fitments(Fitment.Kind.ROOF_RACK).stream()
                        .anyMatch(rack -> rack.name().equals(in));
    }

    private static boolean mayBe(Choice<YesNo> roof) {
        return !roof.is(YesNo.NO);
    }

    private static boolean isHeavy(Plan plan, Figure mass, Choice<YesNo> held) {
        return isAbove(plan, mass, held, PracticeId.BODY_LOOSE_MOST);
    }

    private static boolean isHeavyOnRoof(Plan plan, Figure mass, Choice<YesNo> held) {
        return isAbove(plan, mass, held, PracticeId.BODY_ROOF_UNTIED_MOST);
    }

    /** @param asked mass from which it is asked; what is said not to be held counts from far less on */
    private static boolean isAbove(Plan plan, Figure mass, Choice<YesNo> held, PracticeId asked) {
        return !mass.isAtMost(plan.practice(held.is(YesNo.NO) ? PracticeId.BODY_SAID_LOOSE_MOST : asked));
    }

    /** Surely not in one space with people: on a tray, in a canopy or in a tub. */
    private static boolean behindPeople(Plan plan, Point at) {
        return front(plan.details(Body.class).stream())
                .map(front -> at.x().isAtLeast(front))
                .orElseGet(() -> plan.vehicle().tub().is(YesNo.YES));
    }

    private static boolean aheadOfBodies(Plan plan, Point at) {
        return front(plan.details(Body.class).stream())
                .filter(front -> at.x().isBelow(front))
                .isPresent();
    }

    /** Where the foremost of trays and canopies begins; empty without any. */
    static Optional<Figure> front(Stream<Body> bodies) {
        return bodies.map(Body::front).reduce(Figure::least);
    }
}
