package fitworthy.figures.plan;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Total;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.MassDetails;
import fitworthy.sheet.MirrorDetails;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import fitworthy.sheet.Trailer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The plan loaded in one way: every mass and what the axles carry.
 *
 * @param plan the plan
 * @param loadCase the way it is loaded
 * @param off parts and tanks that are off, or stand in or on what is
 * @param masses every mass, the correction to a weighbridge reading included
 * @param axles the loads of these masses
 * @param sure masses that sum up to the same, of which more may be known
 */
public record Loading(
        Plan plan, LoadCase loadCase, Set<String> off, List<PointMass> masses, AxleLoads axles, List<PointMass> sure) {

    /** What a weighbridge showed against the summed parts. @param front kg, reading less sum @param rear likewise */
    public record Residual(Figure front, Figure rear) {}

    /** Every load case of a plan, each corrected to the first weighbridge reading where there is one. */
    public static List<Loading> all(Plan plan) {
        List<Loading> loadings =
                plan.cases().stream().map(loadCase -> summed(plan, loadCase)).toList();
        Optional<Loading> weighed = loadings.stream()
                .filter(loading -> loading.loadCase.weighed().isPresent())
                .findFirst();
        return weighed.isEmpty()
                ? loadings
                : loadings.stream()
                        .map(loading -> loading.correctedTo(weighed.get()))
                        .toList();
    }

    /** The load cases that have a weighbridge reading, as their parts sum up and without a trailer. */
    public static List<Loading> weighed(Plan plan) {
        return plan.cases().stream()
                .filter(loadCase -> loadCase.weighed().isPresent())
                .map(loadCase -> {
                    return of(plan, loadCase, withoutBall(Masses.of(plan, loadCase)));
                })
                .toList();
    }

    /** The parts alone, without any weighbridge correction. */
    private static Loading summed(Plan plan, LoadCase loadCase) {
        return of(plan, loadCase, Masses.of(plan, loadCase));
    }

    private static Loading of(Plan plan, LoadCase loadCase, List<PointMass> masses) {
        return new Loading(plan, loadCase, plan.off(loadCase), masses, AxleLoads.of(masses, plan.wheelbase()), masses);
    }

    public boolean towing() {
        return loadCase.towing().is(YesNo.YES);
    }

    /** The trailer where this case tows one. */
    public Optional<Trailer> trailer() {
        return towing() ? plan.trailer() : Optional.empty();
    }

    /** The same with the sheet's trailer on; as it is where there is none. */
    public Loading coupled() {
        if (towing() || plan.trailer().isEmpty()) {
            return this;
        }
        PointMass ball = Masses.onBall(plan, plan.trailer().get().ball());
        List<PointMass> all = with(masses, ball);
        return new Loading(plan, loadCase.coupled(), off, all, AxleLoads.of(all, plan.wheelbase()), with(sure, ball));
    }

    private static List<PointMass> with(List<PointMass> masses, PointMass more) {
        return Stream.concat(masses.stream(), Stream.of(more)).toList();
    }

    /** What the vehicle weighs without the load on the ball, in kg. */
    public Figure uncoupled() {
        return Total.of(withoutBall(masses).stream().map(PointMass::mass));
    }

    /**
     * Its masses with the load on the ball or without, whichever make more of a figure: it is driven both ways, and on a ball
     * presses what is nothing of the vehicle's own.
     */
    public List<PointMass> eitherWay(Function<List<PointMass>, Figure> figure) {
        List<PointMass> alone = withoutBall(masses);
        return figure.apply(alone).isAbove(figure.apply(masses)) ? alone : masses;
    }

    /** The same, by how high their centre of gravity is. */
    public List<PointMass> highest() {
        return eitherWay(each -> Centre.of(each).z());
    }

    private static List<PointMass> withoutBall(List<PointMass> masses) {
        return masses.stream().filter(mass -> mass.sort() != Sort.BALL).toList();
    }

    /** Mass of the vehicle, with the trailer where one is on, in kg. */
    public Figure combined() {
        // The trailer's whole mass already holds the load on the ball.
        Figure own = uncoupled();
        return trailer().map(trailer -> own.plus(trailer.mass())).orElse(own);
    }

    /** What the axles carry at least, by what is known of it. */
    public LeastLoads least() {
        LeastLoads known = axles.front().known() && axles.rear().known()
                ? new LeastLoads(axles.front(), axles.rear(), axles.total())
                : LeastLoads.of(sure, plan.wheelbase());
        Figure unsettled = plan.stretch().unsettled();
        return new LeastLoads(known.front().minus(unsettled), known.rear().minus(unsettled), known.total());
    }

    /** What vehicle and trailer weigh at least, in kg, by what is known of it. */
    public Figure leastCombined() {
        Figure combined = combined();
        if (combined.known()) {
            return combined;
        }
        Figure vehicle = LeastLoads.of(withoutBall(sure), plan.wheelbase()).total();
        return trailer()
                .map(trailer -> vehicle.plus(trailer.mass().or(Figure.ZERO)))
                .orElse(vehicle);
    }

    /** Whether the trip is set out on in this loading: not where the sheet says so, nor on a weighbridge. */
    public boolean setsOut() {
        return loadCase.setsOut();
    }

    public boolean carries(Fitment fitment) {
        return !isOff(fitment.name());
    }

    public boolean carries(Tank tank) {
        return !isOff(tank.name());
    }

    /** How many people are aboard. */
    public int aboard() {
        return loadCase.aboard().map(List::size).orElse(plan.sheet().occupants().size());
    }

    public boolean carries(Sheet.Load cargo) {
        return loadCase.carries(cargo.name()) && !isOff(cargo.in());
    }

    /** Where the centre of gravity of these masses is. */
    public Centre centre() {
        return Centre.of(masses);
    }

    /** Whether a part or tank is off, or stands in or on one that is. */
    public boolean isOff(String name) {
        return off.contains(name);
    }

    /** What the vehicle loaded so puts on the axles beyond these masses. */
    public AxleLoads beyond(List<PointMass> known) {
        return AxleLoads.difference(masses, known, plan.wheelbase());
    }

    /** The trays and canopies that are on, trays first. */
    public List<Fitment> bodies() {
        return plan.sheet().fitments().stream()
                .filter(fitment -> fitment.details() instanceof BodyDetails.Body && carries(fitment))
                .sorted(Comparator.comparing(fitment -> fitment.kind() == Fitment.Kind.CANOPY))
                .toList();
    }

    /**
     * From the rear axle to the rearmost point of the vehicle, tray and canopy included, in m. A tray takes the place of the
     * tub with which a vehicle may end; the frame of a cab chassis, and one that was cut, may reach beyond it.
     */
    public Figure rearOverhang() {
        Optional<Figure> boxes = bodies().stream()
                .map(fitment -> (BodyDetails.Body) fitment.details())
                .map(body -> LoadBox.overhang(body.front(), body.length(), plan.wheelbase()))
                .reduce(Figure::most);
        Optional<Figure> frame =
                plan.planned(MassDetails.ChassisExtension.class).map(MassDetails.ChassisExtension::rearOverhang);
        Figure own = frame.orElse(plan.vehicle().size().rearOverhang());
        boolean tray = bodies().stream().anyMatch(fitment -> fitment.kind() == Fitment.Kind.TRAY);
        boolean replaced = tray && frame.isEmpty() && !plan.vehicle().tub().is(YesNo.NO);
        return boxes.map(rear -> replaced ? rear : rear.most(own)).orElse(own);
    }

    /** The planned outside mirrors where they are on; those that come off are on with a trailer alone. */
    public Optional<MirrorDetails.Mirrors> plannedMirrors() {
        return mirrorsAboard().filter(mirrors -> towing() || !mirrors.stow().is(MirrorDetails.Stow.COMES_OFF));
    }

    /** The planned outside mirrors that are not left out in this loading, whether or not they come off in it. */
    public Optional<MirrorDetails.Mirrors> mirrorsAboard() {
        return plan.fitments(Fitment.Kind.MIRRORS).stream()
                .filter(this::carries)
                .map(fitment -> (MirrorDetails.Mirrors) fitment.details())
                .findFirst();
    }

    /** What several tanks hold together, tank by tank. */
    public Working aboard(String result, List<Tank> tanks) {
        return new Working.Sum(
                result,
                tanks.stream()
                        .map(tank -> Working.in(tank.name(), Liquids.litres(tank, fill(tank)), "L"))
                        .toList());
    }

    /** The outside mirrors: the planned ones where they are on. */
    public MirrorDetails.Mirrors mirrors() {
        return plannedMirrors().orElse(plan.vehicle().view().mirrors());
    }

    /**
     * From the centre line to the side that a mirror has to show the road beyond: of trailer, tray and canopy the
     * widest, in m.
     */
    public Figure widestBehind(Trailer towed) {
        return bodies().stream()
                .map(fitment -> ((BodyDetails.Body) fitment.details()).width().times(0.5))
                .reduce(towed.width().times(0.5), Figure::most);
    }

    /** How full a tank is, 0 to 1; a stock tank that another replaces is empty. */
    public Figure fill(Tank tank) {
        return Masses.fill(plan, loadCase, off, tank);
    }

    /** Whether another tank stands in the place of this one of the maker's. */
    public boolean isReplaced(Tank tank) {
        return Masses.isReplaced(plan, tank);
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
    public AxleLoads parts() {
        return AxleLoads.of(withoutBall(Masses.of(plan, loadCase)), plan.wheelbase());
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
                .map(mass -> known.contains(mass) ? mass.exact() : mass)
                .toList());
        List<PointMass> onlyWeighed = weighed.masses.stream()
                .filter(mass -> !aboard.contains(mass) && mass.sort() != Sort.BALL)
                .toList();
        AxleLoads differing = AxleLoads.of(onlyWeighed, plan.wheelbase());
        corrected.add(residual("front", residual.front(), reading.frontAxle(), differing.front(), Figure.of(0, 0)));
        corrected.add(residual(
                "rear",
                residual.rear(),
                reading.rearAxle(),
                differing.rear(),
                plan.wheelbase().exact()));
        AxleLoads axles = AxleLoads.of(corrected, plan.wheelbase());
        return new Loading(
                plan,
                loadCase,
                off,
                corrected,
                axles,
                axles.total().known() ? corrected : sinceWeighed(reading, known, onlyWeighed));
    }

    /** The reading itself, with what came aboard since and without what went. */
    private List<PointMass> sinceWeighed(LoadCase.Weighed reading, Set<PointMass> known, List<PointMass> onlyWeighed) {
        Figure rear = plan.wheelbase().exact();
        return Stream.of(
                        Stream.of(
                                atAxle("front axle as weighed", reading.frontAxle(), Figure.of(0, 0)),
                                atAxle("rear axle as weighed", reading.rearAxle(), rear)),
                        masses.stream().filter(mass -> mass.sort() == Sort.BALL || !known.contains(mass)),
                        onlyWeighed.stream().map(PointMass::takenOff))
                .flatMap(each -> each)
                .toList();
    }

    private PointMass residual(String axle, Figure residual, Figure reading, Figure differing, Figure x) {
        Figure mass = residual.known()
                ? Figure.of(residual.value(), Math.hypot(reading.tolerance(), differing.tolerance()))
                : residual;
        return atAxle("weighbridge less parts, " + axle, mass, x);
    }

    private PointMass atAxle(String name, Figure mass, Figure x) {
        return new PointMass(
                name,
                Sort.RESIDUAL,
                mass,
                new Point(x, Figure.of(0, 0), plan.vehicle().mass().cogHeight()),
                false);
    }
}
