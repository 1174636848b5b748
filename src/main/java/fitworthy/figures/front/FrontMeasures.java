package fitworthy.figures.front;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.GroundAngle;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.FrontDetails.Bar;
import fitworthy.sheet.FrontDetails.LampPlace;
import fitworthy.sheet.FrontDetails.LampUse;
import fitworthy.sheet.FrontDetails.Lamps;
import fitworthy.sheet.FrontDetails.Sensors;
import fitworthy.sheet.FrontDetails.Winch;
import fitworthy.sheet.Job;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.TyreDetails.Tyres;
import fitworthy.sheet.Vehicle.Assistance;
import java.util.ArrayList;
import java.util.List;

/** What a bar, a winch, lamps and a change of height do to what looks ahead; mass is a matter of the axle loads. */
public final class FrontMeasures implements Topic {

    private static final MeasureKind AIRBAG_STATEMENT =
            yesNo("front.airbag-statement", "whether the bar's maker states that it suits the airbags");
    private static final MeasureKind BAR_MARKED =
            yesNo("front.bar-marked", "whether the bar bears the mark of its standard");
    private static final MeasureKind SENSORS_SET =
            yesNo("front.sensors-set", "whether setting the sensors again is planned");
    private static final MeasureKind ASSISTANCE =
            word("front.assistance", "what becomes of the sensors of the driver assistance", Assistance.class);
    private static final MeasureKind SENSORS = word("front.sensors", "what becomes of the sensors", Sensors.class);
    private static final MeasureKind PLATE = yesNo("front.plate-visible", "whether the number plate can be read");
    private static final MeasureKind LAMPS_VISIBLE =
            yesNo("front.lamps-visible", "whether the vehicle's own lamps stay in view");
    private static final MeasureKind APPROACH = number("front.approach", "deg", 1, "approach angle below the bar");
    private static final MeasureKind GRILLE =
            number("front.grille-hidden", "%", 0, "part of the grille that is hidden");
    private static final MeasureKind DRIVING_LAMPS = number("front.driving-lamps", "", 0, "driving lamps added");
    private static final MeasureKind FOG_LAMPS = number("front.fog-lamps", "", 0, "front fog lamps added");
    private static final MeasureKind ROOF_LAMPS = number("front.roof-lamps", "", 0, "driving lamps on the roof");
    private static final MeasureKind BAR_LAMPS =
            number("front.bar-lamps", "", 0, "driving lamps on top of the bar or ahead of it");
    private static final MeasureKind DAZZLE = yesNo("front.dazzle", "whether their light reaches the driver's eye");
    private static final MeasureKind MAIN_BEAM =
            yesNo("front.main-beam", "whether they light only together with the main beam");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                AIRBAG_STATEMENT,
                BAR_MARKED,
                SENSORS,
                SENSORS_SET,
                ASSISTANCE,
                PLATE,
                LAMPS_VISIBLE,
                APPROACH,
                GRILLE,
                DRIVING_LAMPS,
                FOG_LAMPS,
                ROOF_LAMPS,
                BAR_LAMPS,
                DAZZLE,
                MAIN_BEAM);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        for (Fitment fitment : plan.sheet().fitments()) {
            if (fitment.details() instanceof Bar bar) {
                bar(plan, fitment.name(), bar, measures);
            } else if (fitment.details() instanceof Lamps lamps && mayBe(lamps.use(), LampUse.DRIVING)) {
                lamps(fitment.name(), lamps, measures);
            }
        }
        added(DRIVING_LAMPS, "driving lamps", lamps(plan, LampUse.DRIVING), measures);
        added(FOG_LAMPS, "fog lamps", lamps(plan, LampUse.FOG), measures);
        added(GRILLE, "grille", hidden(plan), measures);
        assistance(plan, measures);
    }

    /** Asked where the sensors come to look elsewhere; a bar that moves some of them asks it of all. */
    private static void assistance(Plan plan, List<Measure> measures) {
        if (plan.toBeDone(Bar.class).stream().anyMatch(bar -> bar.sensors().is(Sensors.MOVED))) {
            return;
        }
        boolean moved = plan.sheet().fitments().stream().anyMatch(part -> !part.isDone() && movesView(part.kind()))
                || plan.sheet().jobs().stream().anyMatch(job -> job.kind().is(Job.Kind.ALIGNMENT));
        Figure growth = plan.toBeDone(Tyres.class).isEmpty() ? Figure.of(0, 0) : plan.tyreGrowth();
        Choice<Assistance> answer = plan.vehicle().assistance();
        if (moved || !growth.isZero()) {
            boolean open = !moved && !growth.known() && answer.is(Assistance.LEFT);
            measures.add(Measure.of(
                    ASSISTANCE,
                    "camera and radar",
                    open ? Choice.missing(growth.missing().get(0)) : answer));
        }
    }

    private static boolean movesView(Fitment.Kind kind) {
        return switch (kind) {
            case SPRINGS, BODY_LIFT, WINDSCREEN -> true;
            default -> false;
        };
    }

    /** The sum of what each part adds, where there is a part. */
    private static void added(MeasureKind kind, String subject, List<Working.Input> parts, List<Measure> measures) {
        parts.stream()
                .map(Working.Input::figure)
                .reduce(Figure::plus)
                .ifPresent(
                        sum -> measures.add(Measure.of(kind, subject, sum).worked(new Working.Sum("together", parts))));
    }

    private static void bar(Plan plan, String name, Bar bar, List<Measure> measures) {
        if (mayBe(plan.vehicle().airbags(), YesNo.YES)) {
            measures.add(Measure.of(AIRBAG_STATEMENT, name, bar.airbagStatement()));
        }
        measures.add(Measure.of(BAR_MARKED, name, bar.marked()));
        measures.add(Measure.of(SENSORS, name, bar.sensors()));
        if (mayBe(bar.sensors(), Sensors.MOVED)) {
            measures.add(Measure.of(SENSORS_SET, name, bar.sensorsSet()).given(bar.sensors()));
        }
        measures.add(Measure.of(PLATE, name, bar.plateVisible()));
        measures.add(Measure.of(LAMPS_VISIBLE, name, bar.lampsVisible()));
        if (!plan.sheet().trip().terrain().is(Sheet.Terrain.TOWN)) {
            Figure radius = plan.vehicle().size().wheelCentre();
            measures.add(Measure.of(APPROACH, name, GroundAngle.at(bar.lowest(), bar.ahead(), radius))
                    .worked(
                            "angle = atan((lowest - centre) / ahead) + asin(centre / sqrt((lowest - centre)^2 + "
                                    + "ahead^2))",
                            in("lowest", bar.lowest(), "mm"),
                            in("centre", radius, "mm"),
                            in("ahead", bar.ahead(), "mm")));
        }
    }

    private static void lamps(String name, Lamps lamps, List<Measure> measures) {
        if (mayBe(lamps.place(), LampPlace.ROOF)) {
            measures.add(Measure.of(ROOF_LAMPS, name, placed(lamps)));
        }
        if (mayBe(lamps.place(), LampPlace.AHEAD_OF_BAR) || lamps.place().is(LampPlace.ON_TOP_OF_BAR)) {
            measures.add(Measure.of(BAR_LAMPS, name, placed(lamps)));
        }
        measures.add(Measure.of(DAZZLE, name, lamps.dazzlesDriver()));
        measures.add(Measure.of(MAIN_BEAM, name, lamps.withMainBeam()));
    }

    /** What each set that may be for one use adds to it. */
    private static List<Working.Input> lamps(Plan plan, LampUse use) {
        return plan.sheet().fitments().stream()
                .filter(fitment -> fitment.details() instanceof Lamps lamps && mayBe(lamps.use(), use))
                .map(fitment -> in(fitment.name(), count((Lamps) fitment.details()), ""))
                .toList();
    }

    /** How many lamps of a set that may be for some use are; missing where its use is. */
    private static Figure count(Lamps lamps) {
        return lamps.use().known() ? lamps.count() : Figure.missing(lamps.use().missing());
    }

    private static Figure placed(Lamps lamps) {
        return lamps.place().known()
                ? count(lamps)
                : Figure.missing(lamps.place().missing());
    }

    /** What bar, winch and lamps each hide of the grille; lamps on the roof and work lamps hide nothing. */
    private static List<Working.Input> hidden(Plan plan) {
        List<Working.Input> hidden = new ArrayList<>();
        for (Fitment fitment : plan.sheet().fitments()) {
            if (fitment.details() instanceof Bar bar) {
                hidden.add(in(fitment.name(), bar.grilleHidden(), "%"));
            } else if (fitment.details() instanceof Winch winch) {
                hidden.add(in(fitment.name(), winch.grilleHidden(), "%"));
            } else if (fitment.details() instanceof Lamps lamps
                    && !lamps.use().is(LampUse.WORK)
                    && !lamps.place().is(LampPlace.ROOF)) {
                hidden.add(in(fitment.name(), lamps.grilleHidden(), "%"));
            }
        }
        return hidden;
    }

    /** Whether an answer is this one, or was not given. */
    private static <E extends Enum<E>> boolean mayBe(Choice<E> choice, E answer) {
        return !choice.known() || choice.is(answer);
    }
}
