package fitworthy.figures.room;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.PassengerTyres;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.RunningGear;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The vehicle loaded in one way, without what is asked for: what each of its limits leaves for that.
 *
 * @param plan the plan
 * @param masses what is on it
 * @param towed the trailer that counts against the GCM, where it is not what is asked for
 */
record Carrier(Plan plan, List<PointMass> masses, Optional<Trailer> towed) {

    /** A loading without some of its masses. */
    static Carrier of(Loading loading, Predicate<PointMass> without) {
        return new Carrier(
                loading.plan(),
                loading.masses().stream().filter(without.negate()).toList(),
                loading.trailer());
    }

    /** How a limit counts what is on the axles. */
    private record Counted(Limit limit, Figure most, double front, double rear, List<Working> workings) {}

    /** What GVM, axles, tyres and wheels leave for something, and the GCM where a trailer is on. */
    List<Step> steps(Taken taken) {
        List<Step> steps = new ArrayList<>();
        for (Counted counted : limits()) {
            steps.add(step(counted, taken, load(counted), 0));
        }
        towed.ifPresent(trailer -> steps.add(gcm(taken, trailer)));
        return steps;
    }

    private List<Counted> limits() {
        Vehicle.Ratings ratings = plan.ratings();
        List<Counted> limits = new ArrayList<>(List.of(
                new Counted(Limit.GVM, ratings.gvm(), 1, 1, List.of()),
                new Counted(Limit.FRONT_AXLE, ratings.frontAxle(), 1, 0, List.of()),
                new Counted(Limit.REAR_AXLE, ratings.rearAxle(), 0, 1, List.of()),
                tyres(Limit.FRONT_TYRES, false),
                tyres(Limit.REAR_TYRES, true)));
        if (RunningGear.wheelsInQuestion(plan)) {
            limits.add(wheels(Limit.FRONT_WHEELS, false));
            limits.add(wheels(Limit.REAR_WHEELS, true));
        }
        return limits;
    }

    private Counted tyres(Limit limit, boolean rear) {
        PassengerTyres tyres = RunningGear.onTheRoad(plan);
        Figure carried = RunningGear.tyresCarry(plan, rear);
        Figure counted = surely(tyres, carried);
        List<Working> workings = new ArrayList<>(List.of(tyres.working(carried, counted)));
        workings.addAll(List.of(RunningGear.tyresCarried(plan, rear)));
        return new Counted(limit, counted, rear ? 0 : 1, rear ? 1 : 0, workings);
    }

    /** What tyres count for in any case: less where it is not known whether they count in full. */
    static Figure surely(PassengerTyres tyres, Figure carried) {
        return tyres.counted(carried, Figure.ZERO);
    }

    private Counted wheels(Limit limit, boolean rear) {
        return new Counted(
                limit,
                RunningGear.wheelsCarry(plan, rear),
                rear ? 0 : 1,
                rear ? 1 : 0,
                List.of(RunningGear.wheelsCarried(plan, rear)));
    }

    private Figure load(Counted counted) {
        Figure load = Figure.of(0, 0);
        for (PointMass mass : masses) {
            Figure onFront = mass.onFront(plan.wheelbase());
            load = load.plus(onFront.times(counted.front))
                    .plus(mass.mass().minus(onFront).times(counted.rear));
        }
        return load;
    }

    private Step gcm(Taken taken, Trailer trailer) {
        Counted counted = new Counted(Limit.GCM, plan.ratings().gcm(), 1, 1, List.of());
        Figure combined = withoutBall().load(counted).plus(trailer.mass());
        return withoutBall().step(counted, taken, combined, trailer.mass().tolerance());
    }

    /** The trailer's whole mass holds the load on the ball. */
    private Carrier withoutBall() {
        return new Carrier(
                plan,
                masses.stream()
                        .filter(mass -> mass.sort() != PointMass.Sort.BALL)
                        .toList(),
                towed);
    }

    /** What the GCM leaves for a trailer, of which the whole mass counts. */
    Step gcmForTrailer() {
        Counted counted = new Counted(Limit.GCM, plan.ratings().gcm(), 1, 1, List.of());
        Figure load = load(counted);
        double tolerance = AxleLoads.tolerance(masses, plan.wheelbase(), 1, 1);
        return new Step(
                Limit.GCM,
                counted.most.minus(load),
                Figure.of(1, 0),
                units -> Math.hypot(counted.most.tolerance(), tolerance),
                new Working.Formula(
                        "heaviest = GCM - vehicle", List.of(in("GCM", counted.most, "kg"), in("vehicle", load, "kg"))));
    }

    /** @param apart tolerance of what counts and is on no axle of the vehicle, kg */
    private Step step(Counted counted, Taken taken, Figure load, double apart) {
        Figure wheelbase = plan.wheelbase();
        Figure share = taken.at().x().dividedBy(wheelbase).times(counted.rear - counted.front);
        Figure takes = taken.weighs().times(share.plus(Figure.of(counted.front, 0)));
        Figure left = counted.most.minus(load);
        return new Step(
                counted.limit,
                left,
                takes,
                units -> Math.hypot(
                        Math.hypot(counted.most.tolerance(), apart),
                        AxleLoads.tolerance(with(taken.mass(units)), wheelbase, counted.front, counted.rear)),
                working(counted, taken, load, left));
    }

    private List<PointMass> with(PointMass more) {
        List<PointMass> all = new ArrayList<>(masses);
        all.add(more);
        return all;
    }

    private Working working(Counted counted, Taken taken, Figure load, Figure left) {
        return () -> {
            List<Working.Input> inputs =
                    new ArrayList<>(List.of(in("limit", counted.most, "kg"), in("load", load, "kg")));
            String formula = "left = limit - load";
            if (!(left.value() < 0)) {
                formula = taken.result() + " = (limit - load)" + lever(counted) + taken.toUnits();
                inputs.addAll(taken.inputs());
                if (!lever(counted).isEmpty()) {
                    inputs.add(in("at", taken.at().x(), "mm"));
                    inputs.add(in("wheelbase", plan.wheelbase(), "mm"));
                }
            }
            List<String> lines = new ArrayList<>(new Working.Formula(formula, inputs).lines());
            counted.workings.forEach(working -> lines.addAll(working.lines()));
            return lines;
        };
    }

    /** What of a mass is on one axle, turned round. */
    private static String lever(Counted counted) {
        return counted.front == counted.rear
                ? ""
                : counted.rear > 0 ? " x wheelbase / at" : " / (1 - at / wheelbase)";
    }
}
