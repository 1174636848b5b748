package fitworthy.figures.room;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.BallLimits;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Masses;
import fitworthy.figures.plan.PassengerTyres;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.TowingAfterCut;
import fitworthy.figures.plan.UsedUp;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Point;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Trailer.Brakes;
import fitworthy.sheet.Vehicle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The heaviest that the sheet's trailer may be behind the vehicle loaded in one way. The load on the ball goes with its
 * mass: it stays the share of it that the sheet gives.
 */
final class HeaviestTrailer {

    private final Plan plan;
    private final Trailer trailer;
    private final Carrier carrier;
    private final Figure ball;
    private final Figure share;
    private final BallLimits onBall;
    /** What supplies in it add to the load on the ball once they are used up, kg; nothing where they change nothing. */
    private final Optional<Figure> supplies;

    private final List<Step> steps = new ArrayList<>();
    /** What ratings allow at the most that may be less. */
    private final List<Step> bounds = new ArrayList<>();

    /** @param carrier the vehicle loaded so, without the trailer */
    private HeaviestTrailer(Loading loading, Trailer trailer, Carrier carrier, Optional<Figure> supplies) {
        this.plan = loading.plan();
        this.trailer = trailer;
        this.carrier = carrier;
        this.supplies = supplies;
        // With the tolerance that a load on the ball which is given none is taken to have.
        this.ball = loading.masses().stream()
                .filter(mass -> mass.sort() == Sort.BALL)
                .map(PointMass::mass)
                .findFirst()
                .orElse(trailer.ball());
        this.share = ball.dividedBy(trailer.mass());
        this.onBall = BallLimits.of(plan, trailer);
    }

    /**
     * The two answers of a trailer.
     *
     * @param heaviest in kg
     * @param ball the most that may be on the ball, kg, whatever the trailer weighs
     */
    record Both(Most heaviest, Most ball) {}

    /** Nothing where the sheet has no trailer. */
    static Optional<Both> of(Loading loading) {
        return loading.plan().trailer().map(trailer -> {
            Loading coupled = loading.coupled();
            Carrier carrier = Carrier.withoutTrailer(coupled);
            Optional<Figure> supplies =
                    UsedUp.heaviestBall(coupled).map(state -> state.off().times(-1));
            HeaviestTrailer heaviest = new HeaviestTrailer(loading, trailer, carrier, supplies);
            return new Both(heaviest.most(), heaviest.ballAlone());
        });
    }

    private Most most() {
        rating();
        plates();
        steps.addAll(onTheBall(trailer.mass()));
        steps.add(carrier.gcmForTrailer());
        if (!trailer.mass().known() && trailer.rated().known()) {
            onTheBall(trailer.rated()).stream().filter(Step::bounds).forEach(bounds::add);
        }
        if (!onBall.afterCut().known()) {
            bounds.add(onTheBall(Limit.BALL_RATING, onBall.vehicle(), trailer.mass()));
        }
        return Most.of(steps, bounds);
    }

    private Most ballAlone() {
        List<Step> limits = new ArrayList<>();
        ballRatings().forEach((limit, most) -> limits.add(Step.stated(limit, most)));
        limits.addAll(steps(new Taken("most", Sort.BALL, ballPoint(), Figure.of(1, 0), "", List.of())));
        return Most.of(
                limits,
                onBall.afterCut().known() ? List.of() : List.of(Step.stated(Limit.BALL_RATING, onBall.vehicle())));
    }

    private Point ballPoint() {
        return Masses.onBall(plan, ball).at();
    }

    /** What the limits of the vehicle leave. A front axle that is too light without the trailer is a matter of its own. */
    private List<Step> steps(Taken taken) {
        return carrier.steps(taken).stream()
                .filter(step -> !step.limit().isLeast() || !(step.left().value() < 0))
                .toList();
    }

    /**
     * What is met by the load on the ball.
     *
     * @param mass what the trailer weighs with it. Where nobody knows, the most that its plate allows: the load is then the
     *     least share of it, so that the heaviest comes out no lighter than it is
     */
    private List<Step> onTheBall(Figure mass) {
        Figure part = ball.dividedBy(mass);
        List<Step> limits = new ArrayList<>();
        ballRatings().forEach((limit, most) -> limits.add(onTheBall(limit, most, mass)));
        limits.addAll(steps(new Taken(
                "heaviest",
                Sort.BALL,
                ballPoint(),
                part,
                " x trailer / ball",
                List.of(in("trailer", mass, "kg"), in("ball", ball, "kg")))));
        return limits;
    }

    private Step onTheBall(Limit limit, Figure most, Figure mass) {
        Figure part = ball.dividedBy(mass);
        return new Step(
                limit,
                most,
                part,
                units -> Math.hypot(most.tolerance(), units * part.tolerance()),
                new Working.Formula(
                        "heaviest = limit x trailer / ball",
                        List.of(in("limit", most, "kg"), in("trailer", mass, "kg"), in("ball", ball, "kg"))));
    }

    private void rating() {
        Vehicle.Ratings ratings = plan.ratings();
        boolean unrated =
                ratings.towingStated().is(YesNo.NO) && !ratings.towing().known();
        if (!trailer.brakes().known()) {
            plain(Limit.TOW_RATING, Figure.missing(trailer.brakes().missing()));
        } else if (trailer.brakes().is(Brakes.NONE)) {
            rating(Limit.TOW_RATING_UNBRAKED, ratings.towingUnbraked());
        } else if (unrated) {
            Figure most = plan.practice(PracticeId.TOWING_UNRATED_MOST);
            Figure kerb = plan.vehicle().mass().kerb();
            steps.add(Step.plain(
                    Limit.TOW_LIMIT_BY_KERB_MASS,
                    most.times(kerb),
                    new Working.Formula(
                            "heaviest = most x kerb", List.of(in("most", most, "%"), in("kerb", kerb, "kg")))));
        } else {
            rating(Limit.TOW_RATING, ratings.towing());
        }
    }

    /** As made it bounds the answer where nobody says whether it holds. */
    private void rating(Limit limit, Figure made) {
        Figure holds = TowingAfterCut.rating(plan, made);
        plain(limit, holds);
        if (!holds.known()) {
            bounds.add(Step.stated(limit, made));
        }
    }

    private void plates() {
        plain(Limit.TRAILER_PLATE, trailer.rated());
        Working.Input held = in("ball", ball, "kg");
        Working[] barsOn = {};
        if (Levelling.planned(plan)) {
            Levelling levelling = Levelling.of(plan, trailer);
            held = in("held", levelling.held(), "kg");
            barsOn = new Working[] {
                new Working.Formula(
                        "held = ball x (1 - share x reach)",
                        List.of(
                                in("ball", ball, "kg"),
                                in("share", levelling.share(), "%"),
                                in("reach", levelling.reach(), "%"))),
                Levelling.reached(plan, trailer)
            };
        }
        onAxles(held, barsOn);
        new PlateLimits(plan, trailer, ball, share)
                .add(PlateLimits.TOW_BAR, plan.towBar().plate(), steps);
        new PlateLimits(plan, trailer, ball, share).add(PlateLimits.TRAILER, trailer.coupling(), steps);
    }

    /** @param held what of its mass the vehicle holds up @param before how that came about */
    private void onAxles(Working.Input held, Working... before) {
        steps.add(Step.onAxles(Limit.TRAILER_AXLES, trailer.gtm(), held, trailer.mass(), before));
        trailer.tyres().ifPresent(tyres -> {
            PassengerTyres passenger = PassengerTyres.under(plan, tyres.passenger());
            Figure carried = plan.tables().tyreLoad(tyres.loadIndex()).times(tyres.count());
            Figure counted = Carrier.surely(passenger, carried);
            List<Working> workings = new ArrayList<>(List.of(before));
            workings.add(passenger.working(carried, counted, "axles"));
            workings.add(new Working.Formula(
                    (counted.equals(carried) ? "axles" : "carried") + " = tyres x load of one",
                    List.of(
                            in("tyres", tyres.count(), ""),
                            in("load of one", plan.tables().tyreLoad(tyres.loadIndex()), "kg"))));
            steps.add(
                    Step.onAxles(Limit.TRAILER_TYRES, counted, held, trailer.mass(), workings.toArray(Working[]::new)));
        });
    }

    private Map<Limit, Figure> ballRatings() {
        Map<Limit, Figure> ratings = new LinkedHashMap<>();
        ratings.put(Limit.BALL_RATING, onBall.afterCut());
        ratings.put(Limit.TOW_BAR_BALL, onBall.towBar());
        ratings.put(Limit.TRAILER_COUPLING_BALL, onBall.coupling());
        supplies.ifPresent(more -> {
            ratings.put(Limit.BALL_RATING_LATER, onBall.afterCut().minus(more));
            ratings.put(Limit.TOW_BAR_BALL_LATER, onBall.towBar().minus(more));
            ratings.put(Limit.TRAILER_COUPLING_BALL_LATER, onBall.coupling().minus(more));
        });
        return ratings;
    }

    private void plain(Limit limit, Figure most) {
        steps.add(Step.stated(limit, most));
    }
}
