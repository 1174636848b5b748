package fitworthy.figures.towing;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.KerbMass;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.figures.plan.TrailerAxles;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.TowingDetails;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Trailer.Brakes;
import fitworthy.sheet.Vehicle;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the trailer is braked, held and lit by. */
final class TrailerBrakeMeasures implements Topic {
    private static final MeasureKind AXLES = number("towing.axles", "kg", 0, "greatest load on the trailer's axles");
    private static final MeasureKind UNBRAKED_AXLES =
            number("towing.unbraked-axles", "kg", 0, "greatest load on the axles of a trailer without brakes");
    private static final MeasureKind UNBRAKED =
            number("towing.unbraked", "kg", 0, "greatest mass of a trailer without brakes");
    private static final MeasureKind UNBRAKED_CAMP =
            number("towing.unbraked-camp", "kg", 0, "greatest mass of a trailer to live in without brakes");
    private static final MeasureKind PLAIN_BRAKES = number(
            "towing.plain-brakes",
            "kg",
            0,
            "greatest axle load of a trailer with over-run brakes or some wheels unbraked");
    private static final MeasureKind SOME_WHEELS =
            number("towing.some-wheels", "kg", 0, "greatest mass of a trailer with brakes on some wheels only");
    private static final MeasureKind NO_BREAKAWAY = number(
            "towing.no-breakaway", "kg", 0, "greatest axle load of this trailer, counted as without a breakaway brake");
    private static final MeasureKind NO_BREAKAWAY_MASS = number(
            "towing.no-breakaway-mass",
            "kg",
            0,
            "greatest mass of this braked trailer, counted as without a breakaway brake");
    private static final MeasureKind NO_BREAKAWAY_CAMP = number(
            "towing.no-breakaway-camp",
            "kg",
            0,
            "greatest mass of this braked trailer to live in, counted as without a breakaway brake");
    private static final MeasureKind BREAKAWAY_HOLD =
            number("towing.breakaway-hold", "min", 0, "how long the trailer's brakes hold after a breakaway");
    private static final MeasureKind BRAKE_CONTROL =
            yesNo("towing.brake-control", "whether the vehicle has a brake controller with a feed of its own");
    private static final MeasureKind UNBRAKED_SHARE = number(
            "towing.unbraked-share",
            "%",
            1,
            "loaded trailer without brakes as a share of the vehicle with its tank full and nobody aboard");
    private static final MeasureKind UNBRAKED_HEAVIEST = number(
            "towing.unbraked-heaviest", "kg", 0, "heaviest loaded trailer without brakes for that mass of the vehicle");
    private static final MeasureKind CHAINS = number("towing.chains", "", 0, "safety chains");
    private static final MeasureKind CHAINS_ALONE = number(
            "towing.chains-alone",
            "",
            0,
            "safety chains of a trailer that does not brake by itself when it breaks away");
    private static final MeasureKind CONNECTION = yesNo("towing.connection", "whether trailer and vehicle match in it");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                AXLES,
                UNBRAKED_AXLES,
                UNBRAKED,
                UNBRAKED_CAMP,
                PLAIN_BRAKES,
                SOME_WHEELS,
                NO_BREAKAWAY,
                NO_BREAKAWAY_MASS,
                NO_BREAKAWAY_CAMP,
                BREAKAWAY_HOLD,
                BRAKE_CONTROL,
                UNBRAKED_SHARE,
                UNBRAKED_HEAVIEST,
                CHAINS,
                CHAINS_ALONE,
                CONNECTION);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        plan.trailer().ifPresent(trailer -> {
            brakes(plan, trailer, measures);
            measures.add(onAxles(AXLES, trailer));
            chains(plan, trailer).ifPresent(chains -> measures.add(Measure.of(CHAINS, "trailer", chains)));
            if (!trailer.breakaway().is(YesNo.YES)) {
                measures.add(
                        Measure.of(CHAINS_ALONE, "trailer", trailer.chains()).given(trailer.breakaway()));
            }
            connections(plan, trailer, measures);
        });
    }

    private static void brakes(Plan plan, Trailer trailer, List<Measure> measures) {
        Choice<Brakes> brakes = trailer.brakes();
        boolean open = !brakes.known();
        boolean braked = brakes.known() && !brakes.is(Brakes.NONE);
        boolean controlled = brakes.known() && brakes.value().controlled();
        if (open || brakes.is(Brakes.NONE)) {
            measures.add(onAxles(UNBRAKED_AXLES, trailer, brakes));
            measures.add(Measure.of(UNBRAKED, "trailer", given(trailer.rated(), brakes)));
            massByUse(
                            trailer,
                            plan.practice(PracticeId.TOWING_UNBRAKED_CAMP_MOST),
                            plan.practice(PracticeId.TOWING_UNBRAKED_MASS_MOST))
                    .ifPresent(mass -> measures.add(Measure.of(UNBRAKED_CAMP, "trailer", given(mass, brakes))));
            share(plan, trailer, measures);
        }
        if (brakes.is(Brakes.OVER_RUN)) {
            measures.add(onAxles(PLAIN_BRAKES, trailer));
        } else if (open || braked && !trailer.everyWheelBraked().is(YesNo.YES)) {
            measures.add(onAxles(PLAIN_BRAKES, trailer, brakes, trailer.everyWheelBraked()));
        }
        if (open || braked && !trailer.everyWheelBraked().is(YesNo.YES)) {
            Figure rated = trailer.rated();
            measures.add(Measure.of(
                    SOME_WHEELS,
                    "trailer",
                    above(
                            plan.practice(PracticeId.TOWING_SOME_WHEELS_MOST),
                            rated,
                            brakes,
                            trailer.everyWheelBraked())));
        }
        if (open || braked && !trailer.breakaway().is(YesNo.YES)) {
            breakaway(plan, trailer, measures);
        }
        if ((open || controlled) && !trailer.breakaway().is(YesNo.NO)) {
            measures.add(Measure.of(BREAKAWAY_HOLD, "trailer", trailer.breakawayHold())
                    .given(brakes, trailer.breakaway()));
        }
        if (open || controlled) {
            measures.add(Measure.of(
                    BRAKE_CONTROL, "brake controller", open ? Choice.missing(brakes.missing()) : controller(plan)));
        }
    }

    /** Whether it brakes by itself is asked where it has to alone: what is light enough passes whatever the answer. */
    private static void breakaway(Plan plan, Trailer trailer, List<Measure> measures) {
        Figure campMost = plan.practice(PracticeId.TOWING_UNBRAKED_CAMP_MOST);
        Figure massMost = plan.practice(PracticeId.TOWING_NO_BREAKAWAY_MASS_MOST);
        Choice<?>[] questions = {trailer.brakes(), trailer.breakaway()};
        measures.add(
                TrailerAxles.load(trailer).isAtMost(plan.practice(PracticeId.TOWING_NO_BREAKAWAY_MOST))
                        ? onAxles(NO_BREAKAWAY, trailer)
                        : onAxles(NO_BREAKAWAY, trailer, questions));
        measures.add(Measure.of(NO_BREAKAWAY_MASS, "trailer", above(massMost, trailer.rated(), questions)));
        massByUse(trailer, campMost, massMost)
                .ifPresent(mass ->
                        measures.add(Measure.of(NO_BREAKAWAY_CAMP, "trailer", above(campMost, mass, questions))));
    }

    /** The figure where every question is answered or it is no more than may go without. */
    private static Figure above(Figure most, Figure figure, Choice<?>... questions) {
        return figure.isAtMost(most) ? figure : given(figure, questions);
    }

    /**
     * The chains of a trailer that needs some: on a fifth wheel, by where it is, none or only one that does not brake by itself
     * when it breaks away; whether it does is asked where its chains would be too few.
     */
    private static Optional<Figure> chains(Plan plan, Trailer trailer) {
        Figure chains = trailer.chains();
        if (!trailer.onFifthWheel()
                || !plan.practice(PracticeId.TOWING_FIFTH_WHEEL_CHAINS).isZero()) {
            return Optional.of(chains);
        }
        Choice<YesNo> breakaway = trailer.breakaway();
        if (plan.practice(PracticeId.TOWING_FIFTH_WHEEL_CHAINS_ALONE).isZero() || breakaway.is(YesNo.YES)) {
            return Optional.empty();
        }
        Figure needed = plan.practice(
                trailer.rated().isAtMost(plan.practice(PracticeId.TOWING_ONE_CHAIN_MOST))
                        ? PracticeId.TOWING_CHAINS_LEAST
                        : PracticeId.TOWING_CHAINS_HEAVY_LEAST);
        return Optional.of(chains.isAtLeast(needed) ? chains : given(chains, breakaway));
    }

    /**
     * What the trailer may weigh, kg, where that is held against the law on trailers to live in. Between the mass from
     * which that law holds for such a one and the one from which it holds for all, what it is decides and is asked: nothing
     * of another.
     */
    private static Optional<Figure> massByUse(Trailer trailer, Figure campMost, Figure most) {
        Figure rated = trailer.rated();
        if (!rated.isAbove(campMost) || !rated.isAtMost(most)) {
            return Optional.of(rated);
        }
        return trailer.livedIn().is(YesNo.NO) ? Optional.empty() : Optional.of(given(rated, trailer.livedIn()));
    }

    private static void share(Plan plan, Trailer trailer, List<Measure> measures) {
        Vehicle.Masses mass = plan.vehicle().mass();
        Figure kerbside = KerbMass.kerbside(plan);
        Working worked = new Working.Formula(
                "kerbside = kerb - driver + built + fuel",
                List.of(
                        in("kerb", mass.kerb(), "kg"),
                        in("driver", mass.kerbDriver(), "kg"),
                        in("built", KerbMass.builtOn(plan), "kg"),
                        in("fuel", KerbMass.fuelToFill(plan), "kg")));
        measures.add(Measure.of(UNBRAKED_SHARE, "trailer", trailer.mass().dividedBy(kerbside))
                .worked(
                        "share = trailer / kerbside",
                        in("trailer", trailer.mass(), "kg"),
                        in("kerbside", kerbside, "kg"))
                .worked(worked)
                .given(trailer.brakes()));
        Figure most = plan.practice(PracticeId.TOWING_UNBRAKED_SHARE_MOST);
        measures.add(Measure.most(UNBRAKED_HEAVIEST, "trailer", most.times(kerbside))
                .worked("heaviest = most x kerbside", in("most", most, "%"), in("kerbside", kerbside, "kg"))
                .worked(worked));
    }

    private static Choice<YesNo> controller(Plan plan) {
        return plan.planned(TowingDetails.BrakeController.class)
                .map(TowingDetails.BrakeController::feed)
                .orElse(plan.vehicle().brakeController());
    }

    private static void connections(Plan plan, Trailer trailer, List<Measure> measures) {
        Choice<TowingDetails.Plug> plug = trailer.plug();
        Choice<TowingDetails.Plug> socket = plan.towBar().socket();
        measures.add(Measure.of(
                CONNECTION,
                "plug",
                !plug.known()
                        ? plug
                        : !socket.known() ? socket : Choice.yesNo(plug.value().fits(socket.value()))));
        Figure gap = trailer.voltage().minus(plan.towBar().voltage());
        measures.add(Measure.of(
                CONNECTION,
                "lamp voltage",
                gap.known()
                        ? Choice.yesNo(gap.isZero())
                        : Choice.missing(gap.missing().get(0))));
    }

    private static Measure onAxles(MeasureKind kind, Trailer trailer, Choice<?>... questions) {
        return Measure.of(kind, "trailer", given(TrailerAxles.load(trailer), questions))
                .worked(TrailerAxles.working("axles", trailer, "kg"));
    }

    /** The figure where every question is answered, else what the first without an answer lacks. */
    private static Figure given(Figure figure, Choice<?>... questions) {
        return Stream.of(questions)
                .filter(question -> !question.known())
                .findFirst()
                .map(question -> Figure.missing(question.missing()))
                .orElse(figure);
    }
}
