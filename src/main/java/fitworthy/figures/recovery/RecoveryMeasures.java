package fitworthy.figures.recovery;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Alternator;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Engine;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.FrontDetails.Winch;
import fitworthy.sheet.RecoveryDetails.KineticStrap;
import fitworthy.sheet.RecoveryDetails.PulleyBlock;
import fitworthy.sheet.RecoveryDetails.RecoveryKit;
import fitworthy.sheet.RecoveryDetails.RecoveryPoint;
import fitworthy.sheet.RecoveryDetails.Shackles;
import fitworthy.sheet.Vehicle;
import fitworthy.sheet.Vehicle.MadeFor;
import fitworthy.sheet.VehicleEnd;
import fitworthy.source.Words;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** What pulls a stuck vehicle out, asked only where something for it is planned, and what is carried far from help. */
public final class RecoveryMeasures implements Topic {

    /** What the point at one end of the vehicle was made for. */
    public static final MeasureKind POINT = word("recovery.point", "what the point was made for", MadeFor.class);

    private static final MeasureKind IDLE = word(
            "recovery.point-idle", "what the point was made for, where nothing planned pulls on it", MadeFor.class);
    private static final MeasureKind POINT_LIMIT =
            rated("recovery.point-limit", "kg", 0, "working load limit of the point", "what it may have to hold");
    private static final MeasureKind PULL = number(
                    "recovery.winch-pull", "", 2, "rated pull, rigged as planned, over the vehicle's mass")
            .byLoading();
    private static final MeasureKind WINCH_NEEDED = number(
                    "recovery.winch-needed", "kg", 0, "rated pull that is enough for the vehicle")
            .byLoading();
    private static final MeasureKind SINGLE = number(
                    "recovery.winch-single", "", 2, "rated pull with a single line over the vehicle's mass")
            .byLoading();
    private static final MeasureKind COUPLED = number(
                    "recovery.winch-coupled",
                    "",
                    2,
                    "rated pull, rigged as planned, over the mass of vehicle and trailer")
            .byLoading();
    private static final MeasureKind LINE =
            rated("recovery.winch-line", "kg", 0, "breaking strength of the line", "rated pull of the winch");
    private static final MeasureKind CURRENT =
            rated("recovery.winch-current", "A", 0, "current at the rated pull", "what the feed may give");
    private static final MeasureKind RUN = number(
            "recovery.winch-run", "min", 1, "time at the rated load, all else off, until the battery is half empty");
    private static final MeasureKind STRAP = number(
                    "recovery.strap", "", 2, "breaking strength of the strap over the GVM")
            .bothWays();
    private static final MeasureKind STRAP_NEEDED =
            number("recovery.strap-needed", "kg", 0, "least breaking strength of a strap for this GVM");
    private static final MeasureKind STRAP_HIGHEST =
            number("recovery.strap-highest", "kg", 0, "greatest breaking strength of a strap for this GVM");
    private static final MeasureKind SHACKLE =
            rated("recovery.shackle", "kg", 0, "working load limit of a shackle", "what it may have to hold");
    private static final MeasureKind BLOCK =
            rated("recovery.block", "kg", 0, "working load limit of the pulley block", "twice the pull of its line");
    private static final MeasureKind TREE_STRAP =
            rated("recovery.tree-strap", "kg", 0, "working load limit of the tree strap", "what it may have to hold");
    private static final MeasureKind KIT = yesNo("recovery.kit", "whether it is on the plan");

    @Override
    public List<MeasureKind> kinds() {
        return Stream.concat(
                        Stream.of(
                                POINT,
                                IDLE,
                                POINT_LIMIT,
                                PULL,
                                SINGLE,
                                COUPLED,
                                LINE,
                                CURRENT,
                                RUN,
                                STRAP,
                                SHACKLE,
                                BLOCK,
                                TREE_STRAP,
                                KIT,
                                WINCH_NEEDED,
                                STRAP_NEEDED,
                                STRAP_HIGHEST),
                        FarFromHelp.KINDS.stream())
                .toList();
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        FarFromHelp.plan(plan, measures);
        boolean pulled = plan.sheet().fitments().stream().anyMatch(RecoveryMeasures::pulls);
        if (!pulled && plan.details(RecoveryPoint.class).isEmpty()) {
            return;
        }
        Vehicle.RecoveryPoints made = plan.vehicle().recovery();
        MeasureKind asked = pulled ? POINT : IDLE;
        point(asked, plan, VehicleEnd.FRONT, made.front(), measures);
        point(asked, plan, VehicleEnd.REAR, made.rear(), measures);
        Figure gvm = plan.ratings().gvm();
        for (Fitment fitment : plan.sheet().fitments()) {
            String name = fitment.name();
            if (fitment.details() instanceof Winch winch) {
                winch(plan, name, winch, measures);
            } else if (fitment.details() instanceof KineticStrap strap) {
                measures.add(Measure.of(STRAP, name, strap.strength().dividedBy(gvm))
                        .worked("ratio = strap / GVM", in("strap", strap.strength(), "kg"), in("GVM", gvm, "kg")));
                Figure least = plan.practice(PracticeId.RECOVERY_STRAP_LEAST);
                Figure most = plan.practice(PracticeId.RECOVERY_STRAP_MOST);
                measures.add(Measure.enough(STRAP_NEEDED, name, least.times(gvm))
                        .worked("needed = least x GVM", in("least", least, ""), in("GVM", gvm, "kg")));
                measures.add(Measure.most(STRAP_HIGHEST, name, most.times(gvm))
                        .worked("highest = most x GVM", in("most", most, ""), in("GVM", gvm, "kg")));
            } else {
                Rigging.of(plan)
                        .ifPresentOrElse(
                                rigging -> rigged(rigging, gvm, fitment, measures),
                                () -> unrigged(gvm, fitment, measures));
            }
        }
    }

    /** Any winch may pull on them. */
    private static void rigged(Rigging rigging, Figure gvm, Fitment fitment, List<Measure> measures) {
        String name = fitment.name();
        if (fitment.details() instanceof Shackles shackles) {
            measures.add(Measure.of(SHACKLE, name, shackles.limit(), gvm.most(rigging.at(shackles)))
                    .worked(rigging.held(shackles, gvm)));
        } else if (fitment.details() instanceof PulleyBlock block) {
            measures.add(
                    Measure.of(BLOCK, name, block.limit(), rigging.farEnd()).worked(rigging.borne()));
        } else if (fitment.details() instanceof RecoveryKit kit
                && !kit.treeStrap().is(YesNo.NO)) {
            measures.add(Measure.of(TREE_STRAP, name, kit.treeStrapLimit(), rigging.farEnd())
                    .worked(rigging.borne())
                    .given(kit.treeStrap()));
        }
    }

    private static void unrigged(Figure gvm, Fitment fitment, List<Measure> measures) {
        if (fitment.details() instanceof Shackles shackles) {
            measures.add(Measure.of(SHACKLE, fitment.name(), shackles.limit(), gvm));
        }
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        boolean block = !loading.plan().fitments(Fitment.Kind.PULLEY_BLOCK).isEmpty();
        for (Fitment fitment : loading.plan().fitments(Fitment.Kind.WINCH)) {
            Figure pull = ((Winch) fitment.details()).pull();
            Figure vehicle = loading.uncoupled();
            measures.add(pull(PULL, fitment.name(), pull, vehicle, block));
            Figure least = loading.plan().practice(PracticeId.RECOVERY_WINCH_FACTOR);
            measures.add(Measure.enough(
                            WINCH_NEEDED, fitment.name(), least.times(vehicle).times(block ? 0.5 : 1))
                    .worked(
                            block ? "needed = least x mass / 2" : "needed = least x mass",
                            in("least", least, ""),
                            in("mass", vehicle, "kg")));
            if (block) {
                measures.add(pull(SINGLE, fitment.name(), pull, vehicle, false));
            }
            if (loading.towing()) {
                measures.add(pull(COUPLED, fitment.name(), pull, loading.combined(), block));
            }
        }
    }

    private static Measure pull(MeasureKind kind, String winch, Figure pull, Figure mass, boolean block) {
        Figure single = pull.dividedBy(mass);
        return Measure.of(kind, winch, block ? single.times(2) : single)
                .worked(
                        block ? "ratio = 2 x pull / mass" : "ratio = pull / mass",
                        in("pull", pull, "kg"),
                        in("mass", mass, "kg"));
    }

    /** Whether it is carried to pull on a point. */
    private static boolean pulls(Fitment fitment) {
        return switch (fitment.kind()) {
            case WINCH, PULLEY_BLOCK, KINETIC_STRAP, SHACKLES, RECOVERY_KIT -> true;
            default -> false;
        };
    }

    /** The planned points of one end, or the one the vehicle came with. */
    private static void point(
            MeasureKind asked, Plan plan, VehicleEnd at, Vehicle.RecoveryPoint made, List<Measure> measures) {
        String end = Words.hyphenated(at.name());
        List<RecoveryPoint> planned = plan.details(RecoveryPoint.class).stream()
                .filter(point -> point.end().is(at))
                .toList();
        if (!planned.isEmpty()) {
            measures.add(Measure.of(asked, end, Choice.of(MadeFor.RECOVERY)));
            planned.stream()
                    .map(RecoveryPoint::limit)
                    .reduce(Figure::least)
                    .ifPresent(limit -> measures.add(pointLimit(plan, end, at, limit)));
            return;
        }
        measures.add(Measure.of(asked, end, made.madeFor()));
        if (!made.madeFor().known() || made.madeFor().is(MadeFor.RECOVERY)) {
            measures.add(pointLimit(plan, end, at, made.limit()).given(made.madeFor()));
        }
    }

    /** What a point at one end may have to hold, kg: the vehicle, or the end of a doubled line. */
    public static Figure held(Plan plan, VehicleEnd at) {
        Figure gvm = plan.ratings().gvm();
        return Rigging.endingAt(at, plan)
                .map(rigging -> gvm.most(rigging.pull()))
                .orElse(gvm);
    }

    /** The vehicle hangs on it, and beside a winch with a block the end of the line. */
    private static Measure pointLimit(Plan plan, String end, VehicleEnd at, Figure limit) {
        Measure limited = Measure.of(POINT_LIMIT, end, limit, held(plan, at));
        return Rigging.endingAt(at, plan)
                .map(rigging -> limited.worked(
                        "held = max(GVM, pull)",
                        in("GVM", plan.ratings().gvm(), "kg"),
                        in("pull", rigging.pull(), "kg")))
                .orElse(limited);
    }

    private static void winch(Plan plan, String name, Winch winch, List<Measure> measures) {
        measures.add(Measure.of(LINE, name, winch.line(), winch.pull()));
        measures.add(Measure.of(CURRENT, name, winch.current(), winch.feed()));
        Engine engine = plan.vehicle().engine();
        boolean second = winch.fedBy().is(Winch.FedBy.SECOND);
        Figure battery = WinchRun.battery(plan, winch);
        Figure run =
                WinchRun.hours(battery, winch.current(), second ? Figure.of(0, 0) : Alternator.leftByVehicle(plan));
        if (!Double.isInfinite(run.value())) {
            measures.add(Measure.of(RUN, name, run)
                    .worked(
                            second
                                    ? "time = 60 x 0.5 x battery / winch"
                                    : "time = 60 x 0.5 x battery / (winch - (hot x alternator - own))",
                            in("battery", battery, "Ah"),
                            in("winch", winch.current(), "A"),
                            in("hot", plan.practice(PracticeId.ELECTRICAL_ALTERNATOR_MOST), "%"),
                            in("alternator", engine.alternator(), "A"),
                            in("own", engine.ownLoad(), "A")));
        }
        measures.add(Measure.of(KIT, "tree strap", carried(plan, RecoveryKit::treeStrap)));
        measures.add(Measure.of(KIT, "line damper", carried(plan, RecoveryKit::lineDamper)));
    }

    /** Whether any of the kits holds a part. */
    private static Choice<YesNo> carried(Plan plan, Function<RecoveryKit, Choice<YesNo>> part) {
        return Choice.any(plan.details(RecoveryKit.class).stream().map(part)).orElse(Choice.of(YesNo.NO));
    }
}
