package fitworthy.figures.room;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.FrontLift;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.PassengerTyres;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.RunningGear;
import fitworthy.figures.plan.UsedUp;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** The vehicle loaded in one way, without what is asked for: what each of its limits leaves for that. Masses in kg. */
final class Carrier {

    private final Plan plan;
    private final Sum sum;
    /** The same as it weighs on the front axle: with the bars of a load-levelling hitch on. */
    private final Sum inFront;
    /** GVM, axles, tyres and wheels. */
    private final List<Counted> limits = new ArrayList<>();

    /** @param loading whose masses are counted, with the trailer that later states hang on */
    private Carrier(Loading loading, List<PointMass> masses, UnaryOperator<UsedUp> counted, String filled) {
        this.plan = loading.plan();
        this.sum = Sum.of(masses, plan.wheelbase());
        this.inFront = Sum.of(Levelling.onFront(plan, masses), plan.wheelbase());
        Vehicle.Ratings ratings = plan.ratings();
        limits.add(whole(Limit.GVM, ratings.gvm(), sum.total(), masses, 0));
        limits.add(axle(Limit.FRONT_AXLE, "limit", ratings.frontAxle(), false, inFront));
        limits.add(axle(Limit.REAR_AXLE, "limit", ratings.rearAxle(), true, sum));
        Figure kept = FrontLift.least(loading, plan.practice(PracticeId.MASS_FRONT_LIFT_MOST));
        limits.add(least(Limit.FRONT_LIFT, kept, sum));
        limits.add(tyres(Limit.FRONT_TYRES, false, inFront));
        limits.add(tyres(Limit.REAR_TYRES, true, sum));
        if (RunningGear.wheelsInQuestion(plan)) {
            limits.add(wheels(Limit.FRONT_WHEELS, false, inFront));
            limits.add(wheels(Limit.REAR_WHEELS, true, sum));
        }
        later(loading, counted, filled, kept);
    }

    /** A loading without what is in one of its tanks, by name if any; with the GCM where it tows. */
    static Carrier of(Loading loading, String filled) {
        Carrier carrier = new Carrier(
                loading,
                left(loading.masses(), mass -> isFilled(mass, filled)),
                state -> state.without(mass -> isFilled(mass, filled)),
                filled);
        loading.trailer().ifPresent(carrier::gcm);
        return carrier;
    }

    private static boolean isFilled(PointMass mass, String filled) {
        return mass.sort() == Sort.LIQUID && mass.name().equals(filled);
    }

    /** A loading without its trailer. @param coupled with it on */
    static Carrier withoutTrailer(Loading coupled) {
        return new Carrier(coupled, left(coupled.masses(), mass -> mass.sort() == Sort.BALL), UsedUp::uncoupled, "");
    }

    /** What is judged once tanks and supplies are used up. A tank that is empty then leaves alike however full it was. */
    private void later(Loading loading, UnaryOperator<UsedUp> counted, String filled, Figure kept) {
        Vehicle.Ratings ratings = plan.ratings();
        UsedUp.heaviestBall(loading).map(counted).ifPresent(state -> {
            Sum then = Sum.of(state.masses(), plan.wheelbase());
            limits.add(whole(Limit.GVM_LATER, ratings.gvm(), then.total(), then.masses(), 0));
        });
        UsedUp.heaviestRear(loading)
                .or(() -> UsedUp.nothingAhead(loading))
                .map(counted)
                .ifPresent(state -> {
                    Sum then = Sum.of(state.masses(), plan.wheelbase());
                    List<Counted> rear = new ArrayList<>(List.of(
                            axle(Limit.REAR_AXLE_LATER, "limit", ratings.rearAxle(), true, then),
                            tyres(Limit.REAR_TYRES_LATER, true, then)));
                    if (RunningGear.wheelsInQuestion(plan)) {
                        rear.add(wheels(Limit.REAR_WHEELS_LATER, true, then));
                    }
                    rear.forEach(each -> limits.add(state.empties(filled) ? each.whatever() : each));
                });
        UsedUp.heaviestFront(loading)
                .or(() -> UsedUp.nothingBehind(loading))
                .map(counted)
                .ifPresent(state -> {
                    Sum then = Sum.of(state.onFront(plan), plan.wheelbase());
                    List<Counted> front = new ArrayList<>(List.of(
                            axle(Limit.FRONT_AXLE_LATER, "limit", ratings.frontAxle(), false, then),
                            tyres(Limit.FRONT_TYRES_LATER, false, then)));
                    if (RunningGear.wheelsInQuestion(plan)) {
                        front.add(wheels(Limit.FRONT_WHEELS_LATER, false, then));
                    }
                    front.forEach(each -> limits.add(state.empties(filled) ? each.whatever() : each));
                });
        UsedUp.lightestFront(loading)
                .filter(state -> !state.empties(filled))
                .map(counted)
                .ifPresent(state ->
                        limits.add(least(Limit.FRONT_LIFT_LATER, kept, Sum.of(state.masses(), plan.wheelbase()))));
    }

    private static List<PointMass> left(List<PointMass> masses, Predicate<PointMass> without) {
        return masses.stream().filter(without.negate()).toList();
    }

    /** What masses put on the axles, without the tolerance, which is asked for seldom. */
    private record Sum(List<PointMass> masses, Figure front, Figure rear, Figure total) {

        static Sum of(List<PointMass> masses, Figure wheelbase) {
            Figure front = Figure.of(0, 0);
            Figure total = Figure.of(0, 0);
            for (PointMass mass : masses) {
                front = front.plus(mass.onFront(wheelbase));
                total = total.plus(mass.mass());
            }
            return new Sum(masses, front, total.minus(front), total);
        }
    }

    /**
     * A limit with what counts against it.
     *
     * @param name what a formula calls it
     * @param front how much of what is on the front axle counts; below none where it is to be enough
     * @param rear likewise
     * @param masses what counts, by which the spread goes
     * @param apart tolerance of what counts beside these
     */
    private record Counted(
            Limit limit,
            String name,
            Figure most,
            Figure load,
            double front,
            double rear,
            List<PointMass> masses,
            double apart,
            List<Working> workings) {

        /** The same whatever is taken. */
        Counted whatever() {
            return new Counted(limit, name, most, load, 0, 0, masses, apart, workings);
        }
    }

    private static Counted whole(Limit limit, Figure most, Figure load, List<PointMass> masses, double apart) {
        return new Counted(limit, limit.words(), most, load, 1, 1, masses, apart, List.of());
    }

    private Counted axle(Limit limit, String name, Figure most, boolean rear, Sum on, Working... workings) {
        return new Counted(
                limit,
                name,
                most,
                surely(rear ? on.rear() : on.front(), most),
                rear ? 0 : 1,
                rear ? 1 : 0,
                on.masses(),
                0,
                List.of(workings));
    }

    /** What the front axle has to keep. */
    private static Counted least(Limit limit, Figure kept, Sum on) {
        return new Counted(limit, "kept", kept.times(-1), on.front().times(-1), -1, 0, on.masses(), 0, List.of());
    }

    /** A load with as much more as it may be for want of what is behind a cut; missing where that alone decides. */
    private Figure surely(Figure load, Figure most) {
        Figure held = plan.stretch().against(load, most);
        return held.isAbove(most) ? held : plan.stretch().most(held);
    }

    private Counted tyres(Limit limit, boolean rear, Sum on) {
        PassengerTyres tyres = RunningGear.onTheRoad(plan);
        Figure carried = RunningGear.tyresCarry(plan, rear);
        Figure counted = surely(tyres, carried);
        List<Working> workings = new ArrayList<>(List.of(tyres.working(carried, counted)));
        workings.addAll(List.of(RunningGear.tyresCarried(plan, rear)));
        return axle(
                limit,
                counted.equals(carried) ? "carried" : "counted",
                counted,
                rear,
                on,
                workings.toArray(Working[]::new));
    }

    /** What tyres count for in any case: less where it is not known whether they count in full. */
    static Figure surely(PassengerTyres tyres, Figure carried) {
        return tyres.counted(carried, Figure.ZERO);
    }

    private Counted wheels(Limit limit, boolean rear, Sum on) {
        return axle(
                limit, "carried", RunningGear.wheelsCarry(plan, rear), rear, on, RunningGear.wheelsCarried(plan, rear));
    }

    /** The trailer's whole mass counts, which holds the load on the ball. */
    private void gcm(Trailer trailer) {
        List<PointMass> uncoupled = left(sum.masses(), mass -> mass.sort() == Sort.BALL);
        limits.add(whole(
                Limit.GCM,
                plan.ratings().gcm(),
                Sum.of(uncoupled, plan.wheelbase()).total().plus(trailer.mass()),
                uncoupled,
                trailer.mass().tolerance()));
    }

    /** What these limits leave for something. */
    List<Step> steps(Taken taken) {
        return limits.stream()
                .map(counted -> step(counted, taken))
                // What does not lighten the front axle may be added however light that is.
                .filter(step -> !step.limit().isLeast() || !(step.takes().value() <= 0))
                .toList();
    }

    /** What the GCM leaves for a trailer, of which the whole mass counts. */
    Step gcmForTrailer() {
        Figure most = plan.ratings().gcm();
        return Step.plain(
                Limit.GCM,
                most.minus(sum.total()),
                new Working.Formula(
                        "heaviest = GCM - vehicle", List.of(in("GCM", most, "kg"), in("vehicle", sum.total(), "kg"))));
    }

    private Step step(Counted counted, Taken taken) {
        Figure wheelbase = plan.wheelbase();
        Figure share = at(counted, taken).dividedBy(wheelbase).times(counted.rear - counted.front);
        Figure left = counted.most.minus(counted.load);
        return new Step(
                counted.limit,
                left,
                taken.weighs().times(share.plus(Figure.of(counted.front, 0))),
                units -> Math.hypot(
                        Math.hypot(counted.most.tolerance(), counted.apart),
                        AxleLoads.tolerance(
                                with(counted.masses, taken.mass(units)), wheelbase, counted.front, counted.rear)),
                working(counted, taken, left));
    }

    /** Where it weighs on the axle: with the bars of a load-levelling hitch on, which what is least does not count on. */
    private Figure at(Counted counted, Taken taken) {
        PointMass one = taken.mass(1);
        return (counted.front > counted.rear
                        ? Levelling.onFront(plan, List.of(one)).get(0)
                        : one)
                .at()
                .x();
    }

    private static List<PointMass> with(List<PointMass> masses, PointMass more) {
        List<PointMass> all = new ArrayList<>(masses);
        all.add(more);
        return all;
    }

    private Working working(Counted counted, Taken taken, Figure left) {
        return () -> {
            boolean least = counted.limit.isLeast();
            int sign = least ? -1 : 1;
            List<Working.Input> inputs = new ArrayList<>(List.of(
                    in(counted.name, counted.most.times(sign), "kg"), in("load", counted.load.times(sign), "kg")));
            String between = least ? "load - " + counted.name : counted.name + " - load";
            String formula = "left = " + between;
            if (!(left.value() < 0)) {
                formula = taken.result() + " = (" + between + ")" + lever(counted) + taken.toUnits();
                inputs.addAll(taken.inputs());
                if (!lever(counted).isEmpty()) {
                    inputs.add(in("at", at(counted, taken), "mm"));
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
                : counted.rear > 0
                        ? " x wheelbase / at"
                        : counted.front > 0 ? " / (1 - at / wheelbase)" : " / (at / wheelbase - 1)";
    }
}
