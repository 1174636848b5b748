package fitworthy.figures.mass;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.figures.plan.Weighed;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.Job;
import fitworthy.sheet.MassDetails;
import fitworthy.sheet.MassDetails.ChassisExtension;
import fitworthy.sheet.MassDetails.RatingApproval;
import fitworthy.sheet.Tank;
import fitworthy.sheet.Vehicle;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What ratings a plan goes by, where they are raised, and whether its parts have a mass at all. */
final class RatingMeasures implements Topic {

    private static final MeasureKind RATED_TRAILER =
            rated("mass.rated-trailer", "kg", 0, "heaviest trailer on paper", "what the GCM leaves at full GVM");
    private static final MeasureKind FULL_COMBINED =
            rated("mass.full-combined", "kg", 0, "the planned trailer behind the vehicle at full GVM", "GCM");
    private static final MeasureKind GVM = number("mass.gvm", "kg", 0, "GVM as planned");
    private static final MeasureKind GCM_RAISED =
            rated("mass.gcm-raised", "kg", 0, "GCM as planned on a vehicle already registered", "GCM as made");
    private static final MeasureKind GVM_OVER_AXLES =
            rated("mass.gvm-axles", "kg", 0, "GVM as planned", "sum of the axle limits");
    private static final MeasureKind RAISED = MeasureKind.word(
            "mass.raised", "whether the GVM is raised before or after first registration", Registration.class);
    private static final MeasureKind KIT_APPROVED =
            MeasureKind.yesNo("mass.kit-approved", "whether the kit that raises ratings has an approval");
    private static final MeasureKind WHEELBASE_ADDED = number("mass.wheelbase-added", "mm", 0, "added wheelbase");
    private static final MeasureKind IN_STRETCH = MeasureKind.yesNo(
            "mass.tank-in-stretch", "whether a tank of the maker's is placed where the frame is lengthened");
    private static final MeasureKind WHEELBASE_PLANNED = MeasureKind.yesNo(
            "mass.wheelbase-planned",
            "whether the cut is agreed, a weighing after it planned, and told what stands behind it");
    private static final MeasureKind WEIGHED =
            MeasureKind.yesNo("mass.weighed", "whether the sheet has a mass for it, and for what it replaces");
    /** Kinds that go on where a part of the vehicle comes off. */
    private static final Set<Kind> REPLACING = EnumSet.of(Kind.SPRINGS, Kind.BAR);
    /** Further kinds that are too heavy to be left out. */
    private static final Set<Kind> HEAVY = EnumSet.of(
            Kind.WINCH, Kind.TOW_BAR, Kind.BATTERY, Kind.GAS_BOTTLE, Kind.FIREARM_BOX, Kind.ROOF_RACK, Kind.LOCKER);

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                RATED_TRAILER,
                FULL_COMBINED,
                GVM,
                GVM_OVER_AXLES,
                GCM_RAISED,
                RAISED,
                KIT_APPROVED,
                WHEELBASE_ADDED,
                WHEELBASE_PLANNED,
                IN_STRETCH,
                WEIGHED);
    }

    private enum Registration {
        BEFORE,
        AFTER
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        for (Fitment part : plan.sheet().fitments()) {
            if (part.isDone()) {
                continue; // It was weighed with the vehicle.
            }
            if (REPLACING.contains(part.kind())) {
                measures.add(Measure.of(WEIGHED, part.name(), Weighed.withReplaced(part)));
            } else if (HEAVY.contains(part.kind())) {
                measures.add(Measure.of(WEIGHED, part.name(), Weighed.alone(part)));
            }
        }
        for (Tank tank : plan.sheet().tanks()) {
            if (!tank.isDone() && tank.stock().is(YesNo.NO)) {
                measures.add(Measure.of(WEIGHED, tank.name(), Weighed.shell(tank)));
            }
        }
        Vehicle.Ratings ratings = plan.ratings();
        Vehicle.Ratings made = plan.vehicle().ratings();
        measures.add(Measure.of(GVM, "vehicle", ratings.gvm()));
        boolean raised = plan.raising()
                .filter(kit -> ((MassDetails.RatingUpgrade) kit.details()).gvm().known())
                .isPresent();
        Choice<YesNo> registered = plan.registered();
        if (!registered.is(YesNo.NO)
                && plan.toBeDone(MassDetails.RatingUpgrade.class).stream()
                        .anyMatch(upgrade -> upgrade.gcm().known())) {
            Figure gcm = registered.known() ? ratings.gcm() : Figure.missing(registered.missing());
            measures.add(Measure.of(GCM_RAISED, "vehicle", gcm, made.gcm()));
        }
        for (Fitment part : plan.sheet().fitments()) {
            if (part.details() instanceof MassDetails.RatingUpgrade kit && !part.isDone()) {
                measures.add(Measure.of(
                        KIT_APPROVED,
                        part.name(),
                        kit.approval().known()
                                ? Choice.yesNo(!kit.approval().is(RatingApproval.NONE))
                                : Choice.<YesNo>missing(kit.approval().missing())));
            }
        }
        // A kit that raises nothing that the sheet names may raise the GVM; one that nobody approves does not.
        plan.toBeDone(MassDetails.RatingUpgrade.class).stream()
                .filter(upgrade -> upgrade.gvm().known() || !upgrade.states())
                .filter(upgrade -> !upgrade.approval().is(RatingApproval.NONE))
                .findFirst()
                .map(upgrade -> upgrade.gvm().known()
                        ? raised(registered)
                        : Choice.<Registration>missing(upgrade.gvm().missing().get(0)))
                .ifPresent(answer -> measures.add(Measure.of(RAISED, "vehicle", answer)));
        if (raised) {
            if (plan.tows()) {
                ratedTrailer(plan, measures);
            }
            measures.add(Measure.of(
                            GVM_OVER_AXLES,
                            "vehicle",
                            ratings.gvm(),
                            ratings.frontAxle().plus(ratings.rearAxle()))
                    .worked(
                            "limits = front + rear",
                            in("front", ratings.frontAxle(), "kg"),
                            in("rear", ratings.rearAxle(), "kg")));
            plan.trailer()
                    .ifPresent(trailer -> measures.add(Measure.of(
                                    FULL_COMBINED,
                                    "vehicle and trailer",
                                    ratings.gvm().minus(trailer.ball()).plus(trailer.mass()),
                                    ratings.gcm())
                            .worked(
                                    "combined = GVM - ball + trailer",
                                    in("GVM", ratings.gvm(), "kg"),
                                    in("ball", trailer.ball(), "kg"),
                                    in("trailer", trailer.mass(), "kg"))));
        }
        Figure wheelbase = plan.stretch().made();
        Figure added = plan.wheelbase().minus(wheelbase);
        if (!added.isAtMost(Figure.ZERO)) {
            measures.add(Measure.of(WHEELBASE_ADDED, "vehicle", added)
                    .worked(
                            "added = planned - made",
                            in("planned", plan.wheelbase(), "mm"),
                            in("made", wheelbase, "mm")));
            measures.add(Measure.of(WHEELBASE_PLANNED, "vehicle", Choice.yesNo(isPlanned(plan))));
            inStretch(plan, added, measures);
        }
    }

    /** A tank of the maker's hangs ahead of the cut or behind what is put in there, not between. */
    private static void inStretch(Plan plan, Figure added, List<Measure> measures) {
        Figure cut = plan.stretch().cut();
        Figure end = cut.plus(added);
        for (Tank tank : plan.sheet().tanks()) {
            Figure x = plan.places().of(tank).x();
            boolean betweenAxles = !x.isAtMost(Figure.ZERO) && !x.isAtLeast(plan.wheelbase());
            if (tank.stock().is(YesNo.YES) && betweenAxles) {
                measures.add(Measure.of(IN_STRETCH, tank.name(), between(x, cut, end)));
            }
        }
    }

    /** Whether a place is behind the one and ahead of the other; no where one of the two is known not to be so. */
    private static Choice<YesNo> between(Figure x, Figure cut, Figure end) {
        Figure known = x.missingWith(cut, x.missingWith(end, x));
        return x.isAtMost(cut) || x.isAtLeast(end)
                ? Choice.of(YesNo.NO)
                : known.known()
                        ? Choice.of(YesNo.YES)
                        : Choice.missing(known.missing().get(0));
    }

    private static Choice<?> raised(Choice<YesNo> registered) {
        return registered.known()
                ? Choice.of(registered.is(YesNo.YES) ? Registration.AFTER : Registration.BEFORE)
                : registered;
    }

    private static void ratedTrailer(Plan plan, List<Measure> measures) {
        Vehicle.Ratings ratings = plan.ratings();
        // The GVM holds the load on the ball; without a planned trailer none is counted.
        Figure ball =
                plan.trailer().map(trailer -> trailer.ball().or(Figure.ZERO)).orElse(Figure.ZERO);
        measures.add(Measure.of(
                        RATED_TRAILER,
                        "vehicle",
                        ratings.towing(),
                        ratings.gcm().minus(ratings.gvm()).plus(ball))
                .worked(
                        "left = GCM - GVM + ball",
                        in("GCM", ratings.gcm(), "kg"),
                        in("GVM", ratings.gvm(), "kg"),
                        in("ball", ball, "kg")));
    }

    private static boolean isPlanned(Plan plan) {
        return plan.sheet().jobs().stream().anyMatch(job -> job.kind().is(Job.Kind.WEIGHING))
                && plan.details(ChassisExtension.class).stream()
                        .allMatch(cut ->
                                cut.approved().is(YesNo.YES) && cut.behindCut().known());
    }
}
