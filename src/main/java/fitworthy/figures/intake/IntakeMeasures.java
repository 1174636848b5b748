package fitworthy.figures.intake;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Engine;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.IntakeDetails;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The way of the air to the filter, and what water reaches first. None of it depends on the loading. */
public final class IntakeMeasures implements Topic {

    public static final MeasureKind JOINT = yesNo("intake.joint", "whether the joint is clamped and sealed");
    public static final MeasureKind LID = yesNo("intake.lid", "whether the airbox lid seals all round");
    public static final MeasureKind KNOWN_LEAK =
            yesNo("intake.known-leak", "whether this type of airbox is known to let dust past its seal");
    private static final MeasureKind SNORKEL_END =
            yesNo("intake.snorkel-end", "whether the airbox behind the sealed snorkel is tight");
    private static final MeasureKind DUST = word("intake.dust", "dust to be expected", Sheet.Dust.class);
    public static final MeasureKind DRAIN = word("intake.drain", "drain of the airbox", IntakeDetails.Drain.class);
    private static final MeasureKind DRAIN_WATER =
            rated("intake.drain-water", "mm", 0, "planned water depth", "height of the open drain");
    public static final MeasureKind BORE =
            rated("intake.bore", "mm", 1, "narrowest bore of the snorkel", "bore of the airbox inlet");
    private static final MeasureKind STEP =
            number("intake.step", "mm", 1, "step from the snorkel down to the airbox inlet");
    private static final MeasureKind VELOCITY = number("intake.velocity", "m/s", 1, "mean air velocity at rated power");
    private static final MeasureKind BORE_WHOLE =
            number("intake.bore-whole", "mm", 1, "bore that is enough for the inlet and the speed of the air");
    private static final MeasureKind BORE_NEEDED =
            number("intake.bore-needed", "mm", 1, "bore that keeps the air to the highest velocity published");
    public static final MeasureKind PRE_CLEANER = yesNo("intake.pre-cleaner", "whether there is a pre-cleaner");
    private static final MeasureKind DUST_RUN = rated(
            "intake.dust-run", "km", 0, "driving in dust between two services", "filter service distance in dust");
    private static final MeasureKind WATER =
            rated("intake.water", "mm", 0, "planned water depth", "height at which water gets in");
    private static final MeasureKind FAN_ALLOWED =
            word("intake.fan-allowed", "whether the maker is known to allow water so deep", Allowed.class);
    private static final MeasureKind MAKER_DEPTH =
            rated("intake.maker-depth", "mm", 0, "planned water depth", "maker's wading depth");
    private static final MeasureKind BREATHERS =
            rated("intake.breathers", "mm", 0, "planned water depth", "height of the lowest breather");
    private static final MeasureKind LEAK = number(
                    "intake.leak-above-water", "mm", 0, "height above the water at which the path below the head leaks")
            .signed();
    private static final MeasureKind BREATHERS_NEEDED = number(
            "intake.breathers-needed", "mm", 0, "height of breathers that leaves what is usual above still water");
    private static final MeasureKind BREATHERS_RAISED =
            yesNo("intake.breathers-raised", "whether the breathers are raised together with the snorkel");
    private static final MeasureKind FAN =
            rated("intake.fan", "mm", 0, "planned water depth", "height of the fan's lowest blade tip");

    private enum Allowed {
        YES,
        NO,
        NOT_SAID
    }

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                JOINT,
                LID,
                KNOWN_LEAK,
                SNORKEL_END,
                DUST,
                DRAIN,
                DRAIN_WATER,
                BORE,
                STEP,
                VELOCITY,
                PRE_CLEANER,
                DUST_RUN,
                WATER,
                LEAK,
                MAKER_DEPTH,
                FAN_ALLOWED,
                BREATHERS,
                BREATHERS_RAISED,
                FAN,
                BORE_NEEDED,
                BORE_WHOLE,
                BREATHERS_NEEDED);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Airbox airbox = Airbox.of(plan);
        List<Fitment> snorkels = plan.fitments(Fitment.Kind.SNORKEL);
        boolean dusty = !plan.sheet().trip().dust().is(Sheet.Dust.NONE);
        Figure depth = plan.sheet().trip().waterDepth();
        if (dusty || airbox.planned() || !snorkels.isEmpty()) {
            airbox(plan, airbox, measures);
        }
        for (Fitment snorkel : snorkels) {
            snorkel(plan, snorkel, airbox, measures);
        }
        if (airbox.planned()) {
            velocity(plan, airbox.name() + " inlet", airbox.details().inletBore(), Figure.ZERO, measures);
        }
        if (dusty) {
            measures.add(Measure.of(PRE_CLEANER, "air intake", preCleaner(plan)));
            measures.add(Measure.of(
                    DUST_RUN,
                    airbox.name(),
                    plan.sheet().trip().dustDistance(),
                    airbox.details().serviceDistance()));
        }
        if (!depth.known() || depth.value() > 0) {
            water(plan, airbox, depth, measures);
        }
    }

    /** The airbox that will be fitted. @param planned whether it replaces the maker's */
    private record Airbox(String name, IntakeDetails.Airbox details, boolean planned) {

        static Airbox of(Plan plan) {
            return plan.fitments(Fitment.Kind.AIRBOX).stream()
                    .findFirst()
                    .map(fitment -> new Airbox(fitment.name(), (IntakeDetails.Airbox) fitment.details(), true))
                    .orElse(new Airbox("stock airbox", plan.vehicle().intake().airbox(), false));
        }

        Choice<YesNo> tight() {
            Choice<YesNo> leak = details.knownDustLeak();
            Choice<YesNo> noLeak = !leak.known() ? leak : Choice.of(leak.is(YesNo.YES) ? YesNo.NO : YesNo.YES);
            return every(List.of(details.lidSealed(), noLeak));
        }
    }

    private static void airbox(Plan plan, Airbox airbox, List<Measure> measures) {
        measures.add(Measure.of(LID, airbox.name(), airbox.details().lidSealed()));
        measures.add(Measure.of(KNOWN_LEAK, airbox.name(), airbox.details().knownDustLeak()));
        measures.add(Measure.of(DRAIN, airbox.name(), airbox.details().drain()));
        measures.add(Measure.of(DUST, "trip", plan.sheet().trip().dust()));
    }

    private static void snorkel(Plan plan, Fitment fitment, Airbox airbox, List<Measure> measures) {
        IntakeDetails.Snorkel snorkel = (IntakeDetails.Snorkel) fitment.details();
        for (IntakeDetails.Joint joint : snorkel.joints()) {
            measures.add(Measure.of(JOINT, joint.name(), joint.sealed()));
        }
        if (snorkel.joints().isEmpty()) {
            measures.add(Measure.of(JOINT, fitment.name(), sealed(fitment)));
        }
        Choice<YesNo> sealed = sealed(fitment);
        if (!sealed.is(YesNo.NO)) {
            measures.add(Measure.of(SNORKEL_END, fitment.name(), every(List.of(sealed, airbox.tight()))));
        }
        Figure inlet = airbox.details().inletBore();
        Figure step = snorkel.bore().minus(inlet);
        measures.add(Measure.of(BORE, fitment.name(), snorkel.bore(), inlet));
        if (!step.known() || step.value() >= 0) {
            measures.add(Measure.of(STEP, fitment.name(), step)
                    .worked("step = bore - inlet", in("bore", snorkel.bore(), "mm"), in("inlet", inlet, "mm")));
        }
        velocity(plan, fitment.name(), snorkel.bore(), inlet, measures);
    }

    private static Choice<Allowed> allowed(Figure depth, Figure wading) {
        if (!wading.known()) {
            return Choice.of(Allowed.NOT_SAID);
        }
        return depth.known()
                ? Choice.of(depth.isAtMost(wading) ? Allowed.YES : Allowed.NO)
                : Choice.missing(depth.missing().get(0));
    }

    private static void water(Plan plan, Airbox airbox, Figure depth, List<Measure> measures) {
        Vehicle.Intake intake = plan.vehicle().intake();
        boolean snorkel = !plan.fitments(Fitment.Kind.SNORKEL).isEmpty();
        List<IntakeDetails.BreatherKit> kits = plan.details(IntakeDetails.BreatherKit.class);
        measures.add(Measure.of(WATER, "air intake", depth, opening(plan, airbox)));
        Choice<YesNo> tight = tight(plan, airbox);
        if (!tight.is(YesNo.YES)) {
            Figure leak = tight.known() ? intake.height() : Figure.missing(tight.missing());
            plan.fitments(Fitment.Kind.SNORKEL)
                    .forEach(head -> measures.add(Measure.of(LEAK, head.name(), leak.minus(depth))
                            .worked("above = intake - depth", in("intake", leak, "mm"), in("depth", depth, "mm"))));
        }
        measures.add(Measure.of(WATER, "lowest electrical part", depth, intake.electrics()));
        measures.add(Measure.of(MAKER_DEPTH, "vehicle", depth, intake.wading()));
        measures.add(Measure.of(FAN, "fan", depth, intake.fan()));
        measures.add(Measure.of(FAN_ALLOWED, "fan", allowed(depth, intake.wading())));
        measures.add(Measure.of(
                BREATHERS,
                "breathers",
                depth,
                kits.isEmpty() ? intake.breathers() : kits.get(0).height()));
        Figure above = plan.practice(PracticeId.INTAKE_FREEBOARD_LEAST);
        measures.add(Measure.enough(BREATHERS_NEEDED, "breathers", depth.plus(above))
                .worked("height = depth + above", in("depth", depth, "mm"), in("above", above, "mm")));
        if (snorkel) {
            measures.add(Measure.of(BREATHERS_RAISED, "breathers", Choice.of(kits.isEmpty() ? YesNo.NO : YesNo.YES)));
        }
        Choice<IntakeDetails.Drain> drain = airbox.details().drain();
        if (!drain.known() || drain.is(IntakeDetails.Drain.OPEN)) {
            Figure height = drain.known() ? airbox.details().drainHeight() : Figure.missing(drain.missing());
            measures.add(Measure.of(DRAIN_WATER, airbox.name(), depth, height));
        }
    }

    /**
     * Height at which water enters the air path: the snorkel's head where the path below it is tight. A path that leaks
     * counts as open where the maker's intake was, because its joints and the airbox sit about there.
     */
    private static Figure opening(Plan plan, Airbox airbox) {
        List<Fitment> snorkels = plan.fitments(Fitment.Kind.SNORKEL);
        if (snorkels.isEmpty()) {
            return plan.vehicle().intake().height();
        }
        Choice<YesNo> tight = tight(plan, airbox);
        if (!tight.known()) {
            return Figure.missing(tight.missing());
        }
        return tight.is(YesNo.NO)
                ? plan.vehicle().intake().height()
                : plan.details(IntakeDetails.Snorkel.class).stream()
                        .map(IntakeDetails.Snorkel::headHeight)
                        .reduce(Figure::least)
                        .orElseThrow();
    }

    /** Whether water can get in nowhere below the snorkel's head. */
    private static Choice<YesNo> tight(Plan plan, Airbox airbox) {
        return every(Stream.concat(
                        Stream.of(airbox.tight()),
                        plan.fitments(Fitment.Kind.SNORKEL).stream().map(IntakeMeasures::sealed))
                .toList());
    }

    private static Choice<YesNo> sealed(Fitment snorkel) {
        List<IntakeDetails.Joint> joints = ((IntakeDetails.Snorkel) snorkel.details()).joints();
        return joints.isEmpty()
                ? new Choice<>(
                        null,
                        new Missing(
                                "fitments." + snorkel.name() + ".joints",
                                "its joints from the head to the airbox",
                                "the fitter"))
                : every(joints.stream().map(IntakeDetails.Joint::sealed).toList());
    }

    /** Yes where all are; one no is enough for no, whatever is not known. */
    private static Choice<YesNo> every(List<Choice<YesNo>> answers) {
        return answers.stream()
                .filter(answer -> answer.is(YesNo.NO))
                .findFirst()
                .or(() -> answers.stream().filter(answer -> !answer.known()).findFirst())
                .orElse(Choice.of(YesNo.YES));
    }

    /** Yes where a pre-cleaner is planned or a snorkel's head is one; not known where a snorkel does not say. */
    private static Choice<YesNo> preCleaner(Plan plan) {
        if (!plan.fitments(Fitment.Kind.PRE_CLEANER).isEmpty()) {
            return Choice.of(YesNo.YES);
        }
        List<Choice<YesNo>> heads = new ArrayList<>(plan.details(IntakeDetails.Snorkel.class).stream()
                .map(IntakeDetails.Snorkel::preCleaner)
                .toList());
        heads.add(Choice.of(YesNo.NO));
        return heads.stream()
                .filter(answer -> answer.is(YesNo.YES))
                .findFirst()
                .or(() -> heads.stream().filter(answer -> !answer.known()).findFirst())
                .orElse(Choice.of(YesNo.NO));
    }

    /** @param inlet bore in m that a duct has to have for what it feeds; none for an inlet */
    private static void velocity(Plan plan, String subject, Figure bore, Figure inlet, List<Measure> measures) {
        Engine engine = plan.vehicle().engine();
        Figure density = AirFlow.densityRatio(engine.boost(), engine.manifoldTemperature());
        Figure drawn =
                AirFlow.drawn(engine.displacement(), engine.ratedSpeed(), engine.volumetricEfficiency(), density);
        Figure velocity = AirFlow.velocity(drawn, bore);
        measures.add(Measure.of(VELOCITY, subject, velocity)
                .worked(
                        "velocity = 0.001 x displacement x speed / 60 / 2 x efficiency x density / (pi / 4 x bore^2)",
                        in("displacement", engine.displacement(), "L"),
                        in("speed", engine.ratedSpeed(), "rpm"),
                        in("efficiency", engine.volumetricEfficiency(), "%"),
                        in("density", density, ""),
                        in("bore", bore, "m"))
                .worked(
                        "density = (boost + 101.325) / 101.325 x 298.15 / (manifold + 273.15)",
                        in("boost", engine.boost(), "kPa"),
                        in("manifold", engine.manifoldTemperature(), "degC")));
        Figure most = plan.practice(PracticeId.INTAKE_VELOCITY_MOST);
        measures.add(Measure.enough(BORE_NEEDED, subject, AirFlow.boreNeeded(drawn, most))
                .worked(
                        "needed = bore x sqrt(velocity / most)",
                        in("bore", bore, "mm"),
                        in("velocity", velocity, "m/s"),
                        in("most", most, "m/s")));
        Figure fast = AirFlow.boreNeeded(drawn, most);
        measures.add(Measure.enough(BORE_WHOLE, subject, inlet.or(fast).most(fast.or(inlet)))
                .worked("whole = max(inlet, needed)", in("inlet", inlet, "mm"), in("needed", fast, "mm")));
    }
}
