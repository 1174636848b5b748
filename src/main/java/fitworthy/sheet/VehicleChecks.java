package fitworthy.sheet;

import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.source.NodePath;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** What must hold of the bare vehicle. */
final class VehicleChecks {

    /** How far the two axle masses may be from the kerb mass: the step of a usual weighbridge, common practice. */
    private static final double WEIGHBRIDGE_STEP_KG = 20;

    private static final NodePath VEHICLE = NodePath.of("vehicle");
    private static final NodePath MASS = VEHICLE.to("mass");

    private final Sheet sheet;
    private final Vehicle vehicle;
    private final SheetFaults faults;

    VehicleChecks(Sheet sheet, SheetFaults faults) {
        this.sheet = sheet;
        this.vehicle = sheet.vehicle();
        this.faults = faults;
    }

    void run() {
        TyreChecks.check(vehicle.tyres(), VEHICLE.to("tyres"), faults);
        TyreChecks.size(vehicle.spare().size(), VEHICLE.to("spare"), faults);
        axleMasses(vehicle.mass());
        kerbTolerance(vehicle.mass());
        unsprung("front", vehicle.suspension().front(), vehicle.mass().frontAxle());
        unsprung("rear", vehicle.suspension().rear(), vehicle.mass().rearAxle());
        countedInKerbMass(vehicle.mass());
        vehicle.rails().ifPresent(this::rails);
        lowPoints(VEHICLE.to("low-points"));
    }

    /** What is behind a place has its middle behind it, and a rail is hollow. */
    private void rails(Rails rails) {
        NodePath path = VEHICLE.to("rails");
        if (rails.middle().isBelow(rails.at())) {
            faults.tell("is ahead of the place whose mass it is behind", "middle: 2700 mm", path.to("middle"));
        }
        Figure walls = rails.wall().times(2);
        if (walls.isAtLeast(rails.depth()) || walls.isAtLeast(rails.width())) {
            faults.tell("leaves nothing hollow in the rail", "wall: 3 mm", path.to("wall"));
        }
    }

    /** What hangs ahead of the front axle is told with the bar. */
    private void lowPoints(NodePath path) {
        Set<String> seen = new HashSet<>();
        for (int i = 1; i <= vehicle.lowPoints().size(); i++) {
            LowPoint point = vehicle.lowPoints().get(i - 1);
            faults.uniqueName(point.name(), seen, path.to(i));
            if (point.x().value() < 0) {
                faults.tell(
                        "is ahead of the front axle, where 'lowest' and 'ahead' of the bar tell of it",
                        "x: 2400 mm",
                        path.to(i).to("x"));
            }
        }
    }

    private void axleMasses(Vehicle.Masses mass) {
        double sum = mass.frontAxle().value() + mass.rearAxle().value();
        double allowed = Math.max(WEIGHBRIDGE_STEP_KG, mass.kerb().tolerance());
        if (Math.abs(sum - mass.kerb().value()) > allowed) {
            faults.tell(
                    String.format(
                            Locale.ROOT,
                            "front and rear axle sum to %.0f kg, but the kerb mass is %.0f kg",
                            sum,
                            mass.kerb().value()),
                    String.format(Locale.ROOT, "kerb: %.0f kg, or axle masses that sum to it", sum),
                    MASS.to("kerb"));
        }
    }

    /** The axles make up the whole, which cannot be less sure than both of them at their worst. */
    private void kerbTolerance(Vehicle.Masses mass) {
        Figure front = mass.frontAxle();
        Figure rear = mass.rearAxle();
        double both = front.tolerance() + rear.tolerance();
        if (front.hasTolerance() && rear.hasTolerance() && mass.kerb().tolerance() > both) {
            faults.tell(
                    String.format(
                            Locale.ROOT,
                            "has a tolerance of %.0f kg, but its axles together have one of %.0f kg",
                            mass.kerb().tolerance(),
                            both),
                    "wider tolerances of front-axle and rear-axle, or a narrower one here",
                    MASS.to("kerb"));
        }
    }

    private void unsprung(String end, Vehicle.AxleSuspension suspension, Figure axle) {
        if (suspension.unsprung().value() >= axle.value()) {
            faults.tell(
                    "leaves nothing of the axle's kerb mass for the springs",
                    "unsprung: 180 kg",
                    VEHICLE.to("suspension").to(end).to("unsprung"));
        }
    }

    private void countedInKerbMass(Vehicle.Masses mass) {
        boolean stockTank = sheet.tanks().stream().anyMatch(tank -> tank.stock().is(YesNo.YES));
        if (mass.kerbFuel().value() > 0 && !stockTank && faults.settled("tanks", "stock")) {
            faults.tell(
                    "counts fuel in the kerb mass, but no tank is marked 'stock: yes'",
                    "list the maker's tank under tanks with 'stock: yes'",
                    MASS.to("kerb-fuel"));
        }
        if (mass.kerbDriver().value() > 0 && sheet.occupants().isEmpty() && faults.settled("occupants")) {
            faults.tell(
                    "counts a driver in the kerb mass, but no occupant says where he sits",
                    "list the driver first under occupants",
                    MASS.to("kerb-driver"));
        }
    }
}
