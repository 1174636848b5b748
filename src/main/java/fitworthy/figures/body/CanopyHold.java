package fitworthy.figures.body;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Held;
import fitworthy.figures.plan.LoadBox;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.quantity.Figure;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.BodyDetails.HoldDown;
import java.util.List;
import java.util.stream.Stream;

/** What holds a canopy that comes off, direction by direction: asked of a heavy one, and looked at where it is told. */
final class CanopyHold {
    private static final MeasureKind FORWARD =
            number("body.canopy-forward", "", 2, "what holds it from sliding forward, over its weight");
    private static final MeasureKind ASIDE =
            number("body.canopy-aside", "", 2, "what holds it from sliding to the side, over its weight");
    private static final MeasureKind BACK =
            number("body.canopy-back", "", 2, "what holds it from sliding back, over its weight");
    private static final MeasureKind FORWARD_NEEDED =
            number("body.canopy-forward-needed", "kg", 0, "what has to hold it from sliding forward");
    private static final MeasureKind ASIDE_NEEDED =
            number("body.canopy-aside-needed", "kg", 0, "what has to hold it from sliding to the side");
    private static final MeasureKind BACK_NEEDED =
            number("body.canopy-back-needed", "kg", 0, "what has to hold it from sliding back");
    private static final MeasureKind TIPS =
            number("body.canopy-tips", "", 2, "how many times its weight tips it over its front edge");
    private static final MeasureKind DOWN_NEEDED =
            number("body.canopy-down-needed", "kg", 0, "what its hold-downs have to bear pulling down");

    static final List<MeasureKind> KINDS =
            List.of(FORWARD, ASIDE, BACK, FORWARD_NEEDED, ASIDE_NEEDED, BACK_NEEDED, TIPS, DOWN_NEEDED);

    private CanopyHold() {}

    /** @param loaded what its hold-downs hold */
    static void measures(Plan plan, String name, Body body, Held loaded, List<Measure> measures) {
        HoldDown holds = body.holdDown();
        Figure held = loaded.mass();
        boolean told = Stream.of(
                        holds.forward(),
                        holds.aside(),
                        holds.back(),
                        holds.cogHeight(),
                        holds.cogBehind(),
                        holds.down(),
                        holds.downBehind())
                .anyMatch(Figure::known);
        if (!told && held.isAtMost(plan.practice(PracticeId.BODY_CANOPY_HEAVY))) {
            return;
        }
        measures.add(over(FORWARD, name, holds.forward(), held).worked(loaded.working(holds.loaded())));
        measures.add(over(ASIDE, name, holds.aside(), held).worked(loaded.working(holds.loaded())));
        measures.add(over(BACK, name, holds.back(), held).worked(loaded.working(holds.loaded())));
        measures.add(needed(FORWARD_NEEDED, name, plan.practice(PracticeId.BODY_FORWARD_LEAST), held));
        measures.add(needed(ASIDE_NEEDED, name, plan.practice(PracticeId.BODY_ASIDE_LEAST), held));
        measures.add(needed(BACK_NEEDED, name, plan.practice(PracticeId.BODY_BACK_LEAST), held));
        tips(name, body, held, plan.practice(PracticeId.BODY_TIPS_FORWARD_LEAST), measures);
    }

    private static Measure over(MeasureKind kind, String name, Figure holds, Figure held) {
        return Measure.of(kind, name, holds.dividedBy(held))
                .worked("ratio = holds / held", in("holds", holds, "kg"), in("held", held, "kg"));
    }

    private static Measure needed(MeasureKind kind, String name, Figure least, Figure held) {
        return Measure.enough(kind, name, least.times(held))
                .worked("needed = least x held", in("least", least, ""), in("held", held, "kg"));
    }

    /** One that stands by itself needs nothing that pulls it down. */
    private static void tips(String name, Body body, Figure held, Figure least, List<Measure> measures) {
        HoldDown holds = body.holdDown();
        Figure height = holds.cogHeight();
        Figure behind = holds.cogBehind().or(body.length().times(0.5));
        Figure alone = LoadBox.tipsForward(behind, height, Figure.ZERO, Figure.ZERO, Figure.of(1, 0));
        // What pulls it down is asked where it can decide.
        if (!alone.known() || alone.isAtLeast(least)) {
            measures.add(Measure.of(TIPS, name, alone)
                    .worked("ratio = behind / height", in("behind", behind, "mm"), in("height", height, "mm")));
            measures.add(Measure.of(DOWN_NEEDED, name, alone.missingWith(held, Figure.of(0, 0)))
                    .worked(
                            "needed = max(0, least x height - behind) x held",
                            in("least", least, ""),
                            in("height", height, "mm"),
                            in("behind", behind, "mm"),
                            in("held", held, "kg")));
            return;
        }
        Figure down = holds.down();
        Figure lever = holds.downBehind();
        measures.add(Measure.of(TIPS, name, LoadBox.tipsForward(behind, height, down, lever, held))
                .worked(
                        "ratio = (behind + down x lever / held) / height",
                        in("behind", behind, "mm"),
                        in("down", down, "kg"),
                        in("lever", lever, "mm"),
                        in("held", held, "kg"),
                        in("height", height, "mm")));
        measures.add(Measure.enough(DOWN_NEEDED, name, LoadBox.downNeeded(least, behind, height, lever, held))
                .worked(
                        "needed = max(0, least x height - behind) x held / lever",
                        in("least", least, ""),
                        in("height", height, "mm"),
                        in("behind", behind, "mm"),
                        in("held", held, "kg"),
                        in("lever", lever, "mm")));
    }
}
