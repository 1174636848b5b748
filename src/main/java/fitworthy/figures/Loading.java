package fitworthy.figures;

import fitworthy.figures.PointMass.Sort;
import fitworthy.sheet.Choice;
import fitworthy.sheet.Details;
import fitworthy.sheet.Figure;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Vehicle;
import fitworthy.sheet.YesNo;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The plan loaded in one way: every mass and what the axles carry.
 *
 * @param plan the plan
 * @param loadCase the way it is loaded
 * @param masses every mass, the correction to a weighbridge reading included
 * @param axles the loads of these masses
 */
public record Loading(Plan plan, LoadCase loadCase, List<PointMass> masses, AxleLoads axles) {

    /**
     * Tolerance of an axle mass of the bare vehicle that was given none, as a share: an assumption, see docs/method.md.
     */
    private static final double BARE_VEHICLE_TOLERANCE = 0.01;
    /** Tolerance of a part's mass where the sheet names none: an assumption, see docs/method.md. */
    private static final double PART_TOLERANCE = 0.05;

    /** What a weighbridge showed against the summed parts. @param front kg, reading less sum @param rear likewise */
    public record Residual(Figure front, Figure rear) {}

    /** Every load case of a plan, each corrected to the first weighbridge reading where there is one. */
    public static List<Loading> all(Plan plan) {
        List<Loading> loadings =
                plan.cases().stream().map(loadCase -> summed(plan, loadCase)).toList();
        Optional<Loading> weighed = loadings.stream()
                .filter(each -> each.loadCase.weighed().isPresent())
                .findFirst();
        return weighed.isEmpty()
                ? loadings
                : loadings.stream().map(each -> each.correctedTo(weighed.get())).toList();
    }

    /** What the parts that stay on all the time, and what they replace, add to the axles; empty tanks included. */
    public static AxleLoads fixedParts(Plan plan) {
        return AxleLoads.of(fixedMasses(plan), plan.wheelbase());
    }

    /** The masses that {@link #fixedParts} adds up. */
    static List<PointMass> fixedMasses(Plan plan) {
        List<String> removable = plan.sheet().fitments().stream()
                .filter(fitment -> fitment.removable().is(YesNo.YES))
                .map(Fitment::name)
                .toList();
        LoadCase bare = new LoadCase(
                "fixed parts",
                Optional.of(List.of()),
                Optional.of(List.of()),
                removable,
                Map.of(),
                Choice.of(YesNo.NO),
                Choice.of(YesNo.NO),
                Optional.empty());
        return masses(plan, bare).stream()
                .filter(each -> switch (each.sort()) {
                    case FITMENT, REMOVED, TANK -> true;
                    default -> false;
                })
                .toList();
    }

    /** The parts alone, without any weighbridge correction. */
    private static Loading summed(Plan plan, LoadCase loadCase) {
        List<PointMass> masses = masses(plan, loadCase);
        return new Loading(plan, loadCase, masses, AxleLoads.of(masses, plan.wheelbase()));
    }

    public boolean towing() {
        return loadCase.towing().is(YesNo.YES);
    }

    /** The trailer where this case tows one. */
    public Optional<Trailer> trailer() {
        return towing() ? plan.sheet().trailer() : Optional.empty();
    }

    /** What the vehicle weighs without the load on the ball, in kg. */
    public Figure uncoupled() {
        return AxleLoads.of(
                        masses.stream().filter(each -> each.sort() != Sort.BALL).toList(), plan.wheelbase())
                .total();
    }

    /** Mass of the vehicle, with the trailer where one is on, in kg. */
    public Figure combined() {
        // The trailer's whole mass already holds the load on the ball.
        return trailer().map(trailer -> uncoupled().plus(trailer.mass())).orElse(uncoupled());
    }

    /** Whether the trip is set out on in this loading: not where the sheet says so, nor on a weighbridge. */
    public boolean setsOut() {
        return !loadCase.trip().is(YesNo.NO) && loadCase.weighed().isEmpty();
    }

    public boolean carries(Fitment fitment) {
        return !loadCase.off().contains(fitment.name());
    }

    /** The trays and canopies that are on, trays first. */
    public List<Fitment> bodies() {
        return plan.sheet().fitments().stream()
                .filter(fitment -> fitment.details() instanceof Details.Body && carries(fitment))
                .sorted(Comparator.comparing(fitment -> fitment.kind() == Fitment.Kind.CANOPY))
                .toList();
    }

    /** From the rear axle to the rearmost point of the vehicle, tray and canopy included, in m. */
    public Figure rearOverhang() {
        return BodyMeasures.overhang(this);
    }

    /** The outside mirrors: the planned ones where they are on. */
    public Details.Mirrors mirrors() {
        return MirrorMeasures.planned(this).orElse(plan.vehicle().view().mirrors());
    }

    /**
     * From the centre line to the side that a mirror has to show the road beyond: of trailer, tray and canopy the
     * widest, in m.
     */
    public Figure widestBehind(Trailer towed) {
        return bodies().stream()
                .map(fitment -> ((Details.Body) fitment.details()).width().times(0.5))
                .reduce(towed.width().times(0.5), Figure::most);
    }

    /** How full a tank is, 0 to 1; a stock tank that another replaces is empty. */
    public Figure fill(Tank tank) {
        return fill(plan, loadCase, tank);
    }

    private static Figure fill(Plan plan, LoadCase loadCase, Tank tank) {
        boolean replaced = tank.stock().is(YesNo.YES)
                && plan.sheet().tanks().stream().anyMatch(other -> other.removes()
                        .filter(gone -> gone.name().equals(tank.name()))
                        .isPresent());
        return replaced ? Figure.of(0, 0) : loadCase.filled().getOrDefault(tank.name(), tank.fill());
    }

    /** Reading less sum for this case's own weighbridge reading, without the trailer. */
    public Optional<Residual> residual() {
        return loadCase.weighed().map(reading -> {
            AxleLoads sum = parts();
            return new Residual(
                    reading.frontAxle().minus(sum.front()), reading.rearAxle().minus(sum.rear()));
        });
    }

    /** The loads of the summed parts without the trailer and without the correction to a weighbridge reading. */
    AxleLoads parts() {
        return AxleLoads.of(
                masses(plan, loadCase).stream()
                        .filter(each -> each.sort() != Sort.BALL)
                        .toList(),
                plan.wheelbase());
    }

    /**
     * This case with the residual of a weighed case added at the axles. What is aboard in both cases is known by the
     * weighing, so only what differs between them keeps its tolerance.
     */
    private Loading correctedTo(Loading weighed) {
        LoadCase.Weighed reading = weighed.loadCase.weighed().orElseThrow();
        Residual residual = weighed.residual().orElseThrow();
        Set<PointMass> aboard = new HashSet<>(masses);
        Set<PointMass> known = new HashSet<>(weighed.masses);
        List<PointMass> corrected = new ArrayList<>(masses.stream()
                .map(each -> known.contains(each) ? exact(each) : each)
                .toList());
        List<PointMass> onlyWeighed = weighed.masses.stream()
                .filter(each -> !aboard.contains(each) && each.sort() != Sort.BALL)
                .toList();
        AxleLoads differing = AxleLoads.of(onlyWeighed, plan.wheelbase());
        corrected.add(residual("front", residual.front(), reading.frontAxle(), differing.front(), Figure.of(0, 0)));
        corrected.add(residual("rear", residual.rear(), reading.rearAxle(), differing.rear(), exact(plan.wheelbase())));
        return new Loading(plan, loadCase, corrected, AxleLoads.of(corrected, plan.wheelbase()));
    }

    private PointMass residual(String axle, Figure residual, Figure reading, Figure differing, Figure x) {
        Figure mass = residual.known()
                ? Figure.of(residual.value(), Math.hypot(reading.tolerance(), differing.tolerance()))
                : residual;
        return new PointMass(
                "weighbridge less parts, " + axle,
                Sort.RESIDUAL,
                mass,
                new Point(x, Figure.of(0, 0), plan.vehicle().mass().cogHeight()),
                false);
    }

    private static PointMass exact(PointMass each) {
        Point at = new Point(exact(each.at().x()), each.at().y(), each.at().z());
        return new PointMass(each.name(), each.sort(), exact(each.mass()), at, each.roof());
    }

    private static Figure exact(Figure figure) {
        return figure.known() ? Figure.of(figure.value(), 0) : figure;
    }

    private static List<PointMass> masses(Plan plan, LoadCase loadCase) {
        Sheet sheet = plan.sheet();
        double assumed = sheet.assumedTolerance().or(Figure.of(PART_TOLERANCE)).value();
        List<PointMass> masses = new ArrayList<>(bareVehicle(plan));
        for (Fitment fitment : sheet.fitments()) {
            fitment.removes().ifPresent(gone -> masses.add(removed(gone, assumed)));
            if (!loadCase.off().contains(fitment.name()) && fitment.at().isPresent()) {
                masses.add(new PointMass(
                        fitment.name(),
                        Sort.FITMENT,
                        fitment.mass().orTolerance(assumed),
                        fitment.at().get(),
                        fitment.roof().is(YesNo.YES)));
            }
        }
        for (Tank tank : sheet.tanks()) {
            tank.removes().ifPresent(gone -> masses.add(removed(gone, assumed)));
            if (tank.stock().is(YesNo.NO)) {
                masses.add(new PointMass(tank.name(), Sort.TANK, tank.mass().orTolerance(assumed), tank.at(), false));
            }
            masses.add(new PointMass(
                    tank.name() + ", filled",
                    Sort.LIQUID,
                    Liquids.mass(tank, fill(plan, loadCase, tank)),
                    tank.at(),
                    false));
        }
        loads(sheet.occupants(), loadCase.aboard(), Sort.OCCUPANT, assumed, masses);
        loads(sheet.cargo(), loadCase.carrying(), Sort.CARGO, assumed, masses);
        if (loadCase.towing().is(YesNo.YES)) {
            Trailer trailer = sheet.trailer().orElseThrow();
            masses.add(new PointMass(
                    "load on the ball",
                    Sort.BALL,
                    trailer.ball().orTolerance(assumed),
                    new Point(plan.wheelbase().plus(plan.ballOverhang()), Figure.of(0, 0), plan.ballHeight()),
                    false));
        }
        return masses;
    }

    private static void loads(
            List<Sheet.Load> all, Optional<List<String>> taken, Sort sort, double assumed, List<PointMass> masses) {
        for (Sheet.Load load : all) {
            if (taken.isEmpty() || taken.get().contains(load.name())) {
                masses.add(new PointMass(
                        load.name(),
                        sort,
                        load.mass().orTolerance(assumed),
                        load.at(),
                        load.roof().is(YesNo.YES)));
            }
        }
    }

    /**
     * The vehicle at its axles, less the fuel and the driver counted in its kerb mass. With a longer wheelbase each
     * axle keeps its kerb mass: exact only where what is ahead of the cut stays over the front and the rest moves with
     * the rear axle, which is why such a vehicle has to be weighed.
     */
    private static List<PointMass> bareVehicle(Plan plan) {
        Sheet sheet = plan.sheet();
        Vehicle.Masses mass = plan.vehicle().mass();
        Figure zero = Figure.of(0, 0);
        double kerbShare = mass.kerb().tolerance() / Math.sqrt(2);
        List<PointMass> masses = new ArrayList<>();
        masses.add(new PointMass(
                "vehicle, front axle",
                Sort.VEHICLE,
                bare(mass.frontAxle(), kerbShare),
                new Point(zero, zero, mass.cogHeight()),
                false));
        masses.add(new PointMass(
                "vehicle, rear axle",
                Sort.VEHICLE,
                bare(mass.rearAxle(), kerbShare),
                new Point(exact(plan.wheelbase()), zero, mass.cogHeight()),
                false));
        for (Tank tank : sheet.tanks()) {
            if (tank.stock().is(YesNo.YES) && mass.kerbFuel().value() > 0) {
                masses.add(new PointMass(
                        tank.name() + ", fuel in the kerb mass",
                        Sort.VEHICLE,
                        Liquids.mass(tank, mass.kerbFuel()).times(-1),
                        tank.at(),
                        false));
            }
        }
        if (mass.kerbDriver().value() > 0) {
            masses.add(new PointMass(
                    "driver in the kerb mass",
                    Sort.VEHICLE,
                    mass.kerbDriver().times(-1),
                    sheet.occupants().get(0).at(),
                    false));
        }
        return masses;
    }

    private static Figure bare(Figure axle, double fromKerb) {
        return axle.orTolerance(fromKerb > 0 ? fromKerb / axle.value() : BARE_VEHICLE_TOLERANCE);
    }

    private static PointMass removed(Fitment.Removed gone, double assumed) {
        return new PointMass(
                gone.name() + ", taken off",
                Sort.REMOVED,
                gone.mass().orTolerance(assumed).times(-1),
                gone.at(),
                false);
    }
}
