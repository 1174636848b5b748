package fitworthy.figures.plan;

import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every mass of a plan loaded in one way: the bare vehicle, what is fitted and taken off, tanks, people and cargo. */
public final class Masses {

    /**
     * Tolerance of an axle mass of the bare vehicle that was given none, as a share: an assumption, see docs/method.md.
     */
    private static final double BARE_VEHICLE_TOLERANCE = 0.01;
    /** Tolerance of a part's mass where the sheet names none: an assumption, see docs/method.md. */
    private static final double PART_TOLERANCE = 0.05;

    private Masses() {}

    /** The masses as the sheet gives them, without any correction to a weighbridge reading. */
    static List<PointMass> of(Plan plan, LoadCase loadCase) {
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
                new Point(plan.wheelbase().exact(), zero, mass.cogHeight()),
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

    /** What the parts that stay on all the time, and what they replace, add to the axles; empty tanks included. */
    public static AxleLoads fixedParts(Plan plan) {
        return AxleLoads.of(fixed(plan), plan.wheelbase());
    }

    /** The masses that {@link #fixedParts} adds up. */
    public static List<PointMass> fixed(Plan plan) {
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
        return of(plan, bare).stream()
                .filter(mass -> switch (mass.sort()) {
                    case FITMENT, REMOVED, TANK -> true;
                    default -> false;
                })
                .toList();
    }

    /** How full a tank is, 0 to 1; a stock tank that another replaces is empty. */
    static Figure fill(Plan plan, LoadCase loadCase, Tank tank) {
        boolean replaced = tank.stock().is(YesNo.YES)
                && plan.sheet().tanks().stream().anyMatch(other -> other.removes()
                        .filter(gone -> gone.name().equals(tank.name()))
                        .isPresent());
        return replaced ? Figure.of(0, 0) : loadCase.filled().getOrDefault(tank.name(), tank.fill());
    }
}
