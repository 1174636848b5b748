package fitworthy.figures.plan;

import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Total;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import fitworthy.sheet.Vehicle;
import fitworthy.sheet.VehicleEnd;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Every mass of a plan loaded in one way: the bare vehicle, what is fitted and taken off, tanks, people and cargo. */
public final class Masses {

    /**
     * Tolerance of an axle mass of the bare vehicle that was given none, as a share: an assumption, see docs/method.md.
     */
    private static final double BARE_VEHICLE_TOLERANCE = 0.01;
    /** Part of a spring that moves with the wheel: common practice. */
    private static final double HALF_OF_A_SPRING = 0.5;

    private static final Set<Sort> FIXED = EnumSet.of(Sort.FITMENT, Sort.REMOVED, Sort.TANK);
    private static final Set<Sort> FIXED_AND_COUNTED = EnumSet.of(Sort.FITMENT, Sort.REMOVED, Sort.TANK, Sort.COUNTED);

    private final Plan plan;
    private final Sheet sheet;
    /** The tolerance of a mass that is given none, as a share of it. */
    private final double share;

    private Masses(Plan plan) {
        this.plan = plan;
        this.sheet = plan.sheet();
        this.share = AssumedTolerance.of(sheet);
    }

    /** The mass of a part of a sheet, with the tolerance taken for it where it is given none. */
    public static Figure of(Fitment part, Sheet sheet) {
        return part.mass().orTolerance(AssumedTolerance.of(sheet));
    }

    /** The same of a piece of cargo. */
    public static Figure of(Sheet.Load load, Sheet sheet) {
        return load.mass().orTolerance(AssumedTolerance.of(sheet));
    }

    /** The masses as the sheet gives them, without any correction to a weighbridge reading. */
    static List<PointMass> of(Plan plan, LoadCase loadCase) {
        return new Masses(plan).all(loadCase);
    }

    private List<PointMass> all(LoadCase loadCase) {
        Set<String> off = plan.off(loadCase);
        List<PointMass> masses = new ArrayList<>(bareVehicle());
        for (Fitment fitment : sheet.fitments()) {
            double unsprung = unsprung(fitment.kind());
            fitment.removes().ifPresent(gone -> put(removed(gone, unsprung), fitment.isDone(), true, masses));
            fitment.at()
                    .map(at -> new PointMass(
                            fitment.name(),
                            Sort.FITMENT,
                            of(fitment, sheet),
                            at(at, unsprung),
                            OnRoof.of(fitment, sheet),
                            unsprung))
                    .ifPresent(part -> put(part, fitment.isDone(), !off.contains(fitment.name()), masses));
        }
        for (Tank tank : sheet.tanks()) {
            tank.removes().ifPresent(gone -> put(removed(gone, 0), tank.isDone(), true, masses));
            tank(tank, loadCase, off, masses);
        }
        for (Sheet.Person person : sheet.occupants()) {
            if (loadCase.takes(person.name())) {
                masses.add(load(person.name(), Sort.OCCUPANT, person.mass(), person.at(), Choice.of(YesNo.NO)));
            }
        }
        for (Sheet.Load cargo : sheet.cargo()) {
            // What stands in or on a part that is off is left with it.
            if (loadCase.carries(cargo.name()) && !off.contains(cargo.in())) {
                masses.add(load(cargo.name(), Sort.CARGO, cargo.mass(), cargo.at(), OnRoof.of(cargo, sheet)));
            }
        }
        if (loadCase.towing().is(YesNo.YES)) {
            masses.add(onBall(plan, plan.trailer().orElseThrow().ball()));
        }
        return masses;
    }

    /** A load on the ball. @param load in kg */
    public static PointMass onBall(Plan plan, Figure load) {
        return new PointMass(
                "load on the ball",
                Sort.BALL,
                load,
                new Point(plan.wheelbase().plus(plan.ballOverhang()), Figure.of(0, 0), plan.ballHeight()),
                false);
    }

    /**
     * A part, or what one took off. What is done was weighed with the vehicle: it is taken out of the kerb mass, which
     * leaves the vehicle as made, and is exact as long as it is on.
     */
    private void put(PointMass part, boolean done, boolean on, List<PointMass> masses) {
        PointMass known = done && on ? part.exact() : part;
        if (done) {
            masses.add(new PointMass(
                    PointMass.inKerbMass(part.name()),
                    Sort.COUNTED,
                    known.mass().times(-1),
                    new Point(
                            known.at().x(),
                            Figure.of(0, 0),
                            plan.vehicle().mass().cogHeight()),
                    Choice.of(YesNo.NO),
                    0,
                    StandingHeight.raised(plan, known.at().x(), 0)));
        }
        if (on) {
            masses.add(known);
        }
    }

    private void tank(Tank tank, LoadCase loadCase, Set<String> off, List<PointMass> masses) {
        boolean on = !off.contains(tank.name());
        Point at = plan.places().of(tank);
        Choice<YesNo> roof = OnRoof.of(tank, sheet);
        if (tank.stock().is(YesNo.NO)) {
            PointMass shell = new PointMass(tank.name(), Sort.TANK, tank.mass().orTolerance(share), at, roof, 0);
            put(shell, tank.isDone(), on, masses);
        }
        if (on) {
            masses.add(new PointMass(
                    Liquids.name(tank), Sort.LIQUID, Liquids.mass(tank, fill(plan, loadCase, off, tank)), at, roof, 0));
        }
    }

    private PointMass load(String name, Sort sort, Figure mass, Point at, Choice<YesNo> roof) {
        return new PointMass(name, sort, mass.orTolerance(share), plan.places().known(at), roof, 0);
    }

    /** What was weighed with the vehicle and stays on, and stands where the sheet does not say. */
    public static List<Fitment> unplaced(Plan plan) {
        return plan.sheet().fitments().stream()
                .filter(part ->
                        part.isDone() && part.at().isEmpty() && !part.mass().isZero())
                .toList();
    }

    /** Which share of a kind of part the springs do not carry; of a spring itself half of it. */
    private static double unsprung(Fitment.Kind kind) {
        return switch (kind) {
            case TYRES, WHEELS, WHEEL_SPACERS -> 1;
            case SPRINGS -> HALF_OF_A_SPRING;
            default -> 0;
        };
    }

    /** What stands on the axles is where they are. */
    private Point at(Point given, double unsprung) {
        return unsprung > 0 ? given.orTolerance(0) : plan.places().known(given);
    }

    /** The axles of the vehicle as made, where each acts as planned, with the fuel and driver of the kerb mass in them. */
    public static List<PointMass> axles(Plan plan) {
        Vehicle.Masses mass = plan.vehicle().mass();
        double kerbShare = mass.kerb().tolerance() / Math.sqrt(2);
        Figure rear = plan.stretch().rearAxleMass(plan.vehicle());
        if (mass.frontAxle().guess().isPresent()
                && mass.rearAxle().guess().isPresent()
                && mass.kerb().guess().isEmpty()) {
            double each = mass.kerb().orTolerance(BARE_VEHICLE_TOLERANCE).tolerance() / Math.sqrt(2);
            return opposite(plan, rear, each, mass.frontAxle().tolerance());
        }
        if (mass.kerb().hasTolerance()
                && mass.kerb().tolerance() == 0
                && !mass.frontAxle().hasTolerance()
                && !mass.rearAxle().hasTolerance()) {
            double lighter = Math.min(mass.frontAxle().value(), mass.rearAxle().value());
            return opposite(plan, rear, 0, lighter * BARE_VEHICLE_TOLERANCE);
        }
        return List.of(
                axle(VehicleEnd.FRONT, bare(mass.frontAxle(), kerbShare), Figure.of(0, 0), plan),
                axle(VehicleEnd.REAR, bare(mass.rearAxle(), kerbShare), rear, plan));
    }

    /**
     * The axles where the kerb mass is stated and how it stands on them is not as sure: what one may carry more the other
     * carries less, as if the front's place were off by so much. The sum is as sure as the kerb mass.
     *
     * @param each what either may be off by itself, kg
     * @param front what the front may be off in all, kg
     */
    private static List<PointMass> opposite(Plan plan, Figure rear, double each, double front) {
        Vehicle.Masses mass = plan.vehicle().mass();
        double weight = mass.frontAxle().value();
        double split = Math.sqrt(Math.max(0, front * front - each * each));
        Figure off = Figure.of(0, split * plan.wheelbase().value() / weight);
        return List.of(
                axle(VehicleEnd.FRONT, Figure.of(weight, each), off, plan),
                axle(VehicleEnd.REAR, Figure.of(mass.rearAxle().value(), each), rear, plan));
    }

    private static PointMass axle(VehicleEnd end, Figure mass, Figure x, Plan plan) {
        return new PointMass(
                end == VehicleEnd.FRONT ? "vehicle, front axle" : "vehicle, rear axle",
                Sort.VEHICLE,
                mass,
                new Point(x, Figure.of(0, 0), StandingHeight.of(plan, end).height()),
                false);
    }

    /** The vehicle at its axles, less the fuel and the driver counted in its kerb mass. */
    private List<PointMass> bareVehicle() {
        Vehicle.Masses mass = plan.vehicle().mass();
        List<PointMass> masses = new ArrayList<>(axles(plan));
        for (Tank tank : sheet.tanks()) {
            if (holdsKerbFuel(sheet, tank) && mass.kerbFuel().value() > 0) {
                Point at = plan.places().of(tank);
                masses.add(new PointMass(
                        tank.name() + ", fuel in the kerb mass",
                        Sort.VEHICLE,
                        Liquids.mass(tank, mass.kerbFuel()).times(-1),
                        at,
                        Choice.of(YesNo.NO),
                        0,
                        // It goes with its tank, from where the vehicle as made then stands.
                        isReplaced(plan, tank) ? StandingHeight.raised(plan, at.x(), 0) : Figure.ZERO));
            }
        }
        if (mass.kerbDriver().value() > 0) {
            masses.add(new PointMass(
                    "driver in the kerb mass",
                    Sort.VEHICLE,
                    mass.kerbDriver().times(-1),
                    plan.places().known(sheet.occupants().get(0).at()),
                    false));
        }
        return masses;
    }

    /** The maker's tank, or one that was put in its place before the vehicle was weighed. */
    static boolean holdsKerbFuel(Sheet sheet, Tank tank) {
        return tank.stock().is(YesNo.YES)
                ? sheet.tanks().stream().noneMatch(other -> other.isDone() && other.replaces(tank))
                : tank.isDone()
                        && sheet.tanks().stream().anyMatch(made -> made.stock().is(YesNo.YES) && tank.replaces(made));
    }

    private static Figure bare(Figure axle, double fromKerb) {
        return axle.orTolerance(fromKerb > 0 ? fromKerb / axle.value() : BARE_VEHICLE_TOLERANCE);
    }

    /** What is taken off the vehicle as made, which with the rest of it stands higher by then. */
    private PointMass removed(Fitment.Removed gone, double unsprung) {
        Point made = plan.stretch().moved(at(gone.at(), unsprung), unsprung > 0);
        return new PointMass(
                PointMass.takenOff(gone.name()),
                Sort.REMOVED,
                gone.mass().orTolerance(share).times(-1),
                made,
                Choice.of(YesNo.NO),
                unsprung,
                StandingHeight.raised(plan, made.x(), unsprung));
    }

    /**
     * What the parts that stay on all the time, and what they replace, add to the load on the springs; empty tanks
     * included.
     */
    public static AxleLoads onSprings(Plan plan) {
        return AxleLoads.of(fixedOnSprings(plan), plan.wheelbase());
    }

    /** The masses that {@link #onSprings} adds up: without wheels and tyres, and without half of the springs. */
    public static List<PointMass> fixedOnSprings(Plan plan) {
        return fixed(plan).stream()
                .filter(mass -> mass.unsprung() < 1)
                .map(PointMass::sprung)
                .toList();
    }

    /** The vehicle as made and the parts that stay on: what stands on the springs before anybody or anything is aboard. */
    public static List<PointMass> bareAndFixed(Plan plan) {
        return Stream.concat(axles(plan).stream(), fixed(plan, FIXED_AND_COUNTED))
                .toList();
    }

    /** The parts that stay on all the time, and what they replace. */
    public static List<PointMass> fixed(Plan plan) {
        return fixed(plan, FIXED).toList();
    }

    /** What these put on the kerb mass, kg: what is done was weighed with the vehicle. */
    static Figure addedToKerb(Plan plan) {
        return Total.of(fixed(plan, FIXED_AND_COUNTED).map(PointMass::mass));
    }

    private static Stream<PointMass> fixed(Plan plan, Set<Sort> sorts) {
        return plan.unladen(() -> unladen(plan)).stream().filter(mass -> sorts.contains(mass.sort()));
    }

    /** Every mass with nobody and nothing aboard, and without the parts that come off. */
    private static List<PointMass> unladen(Plan plan) {
        List<String> removable = Stream.concat(
                        plan.sheet().fitments().stream()
                                .filter(fitment -> fitment.removable().is(YesNo.YES))
                                .map(Fitment::name),
                        plan.sheet().tanks().stream().filter(Tank::comesOff).map(Tank::name))
                .toList();
        return List.copyOf(of(
                plan,
                new LoadCase(
                        "fixed parts",
                        Optional.of(List.of()),
                        Optional.of(List.of()),
                        removable,
                        Map.of(),
                        Choice.of(YesNo.NO),
                        Choice.of(YesNo.NO),
                        Optional.empty())));
    }

    /** How full a tank is, 0 to 1; one that is off or that another replaces is empty. */
    static Figure fill(Plan plan, LoadCase loadCase, Set<String> off, Tank tank) {
        return isReplaced(plan, tank) || off.contains(tank.name())
                ? Figure.of(0, 0)
                : loadCase.filled().getOrDefault(tank.name(), tank.fill());
    }

    /** Whether another tank stands in the place of this one of the maker's. */
    static boolean isReplaced(Plan plan, Tank tank) {
        return tank.stock().is(YesNo.YES) && plan.sheet().tanks().stream().anyMatch(other -> other.replaces(tank));
    }
}
