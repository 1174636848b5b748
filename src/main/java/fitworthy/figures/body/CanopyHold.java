package fitworthy.figures.body;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Held;
import fitworthy.figures.plan.LoadBox;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Sliding;
import fitworthy.quantity.Figure;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.BodyDetails.HoldDown;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Point;
import java.util.List;
import java.util.stream.Stream;

/** What holds a canopy that comes off, direction by direction: asked of a heavy one, and looked at where it is told. */
final class CanopyHold {
    private static final List<Way> WAYS = List.of(
            new Way(Sliding.FORWARD, "body.canopy-forward", "from sliding forward"),
            new Way(Sliding.ASIDE, "body.canopy-aside", "from sliding to the side"),
            new Way(Sliding.BACK, "body.canopy-back", "from sliding back"));
    private static final MeasureKind TIPS =
            number("body.canopy-tips", "", 2, "how many times its weight tips it over its front edge");
    private static final MeasureKind DOWN_NEEDED =
            number("body.canopy-down-needed", "kg", 0, "what its hold-downs have to bear pulling down");
    private static final MeasureKind TIPS_ASKED = rated(
            "body.canopy-tips-asked",
            "",
            2,
            "how many times its weight it has to bear before it tips over its front edge",
            "how many times it does");

    static final List<MeasureKind> KINDS = Stream.concat(
                    WAYS.stream().flatMap(way -> Stream.of(way.held, way.needed, way.asked)),
                    Stream.of(TIPS, DOWN_NEEDED, TIPS_ASKED))
            .toList();

    private CanopyHold() {}

    /** @param loaded what its hold-downs hold */
    static void measures(Plan plan, Fitment canopy, Body body, Held loaded, List<Measure> measures) {
        String name = canopy.name();
        HoldDown holds = body.holdDown();
        Figure held = loaded.mass();
        if (!holds.tellsWays() && held.isAtMost(plan.practice(PracticeId.BODY_CANOPY_HEAVY))) {
            return;
        }
        WAYS.forEach(way -> way.measures(plan, name, holds, loaded, measures));
        tips(plan, canopy, body, held, measures);
    }

    /** What is said of one way in which it may slide. */
    private static final class Way {
        private final Sliding sliding;
        private final MeasureKind held;
        private final MeasureKind needed;
        private final MeasureKind asked;

        Way(Sliding sliding, String id, String from) {
            this.sliding = sliding;
            this.held = number(id, "", 2, "what holds it " + from + ", over its weight");
            this.needed = number(id + "-needed", "kg", 0, "what has to hold it " + from);
            this.asked = rated(id + "-asked", "", 2, "how many times its weight has to hold it " + from, "what does");
        }

        void measures(Plan plan, String name, HoldDown holdDown, Held loaded, List<Measure> measures) {
            Figure holds = sliding.holds(holdDown);
            Figure mass = loaded.mass();
            Figure least = sliding.least(plan);
            Figure share = holds.dividedBy(mass);
            Working.Formula ratio = new Working.Formula(
                    "ratio = holds / held", List.of(in("holds", holds, "kg"), in("held", mass, "kg")));
            Working sum = loaded.working(holdDown.loaded());
            measures.add(Measure.of(held, name, share).worked(ratio, sum));
            measures.add(Measure.enough(needed, name, least.times(mass))
                    .worked("needed = least x held", in("least", least, ""), in("held", mass, "kg")));
            measures.add(Measure.of(asked, name, least, share).worked(ratio, sum));
        }
    }

    /** One that stands by itself needs nothing that pulls it down. */
    private static void tips(Plan plan, Fitment canopy, Body body, Figure held, List<Measure> measures) {
        String name = canopy.name();
        Figure least = plan.practice(PracticeId.BODY_TIPS_FORWARD_LEAST);
        HoldDown holds = body.holdDown();
        Figure height = holds.cogHeight();
        Figure behind = behind(plan, canopy, body);
        Figure alone = LoadBox.tipsForward(behind, height, Figure.ZERO, Figure.ZERO, Figure.of(1, 0));
        // What pulls it down is asked where it can decide.
        if (!alone.known() || alone.isAtLeast(least)) {
            tips(
                    name,
                    alone,
                    least,
                    new Working.Formula(
                            "ratio = behind / height", List.of(in("behind", behind, "mm"), in("height", height, "mm"))),
                    measures);
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
        tips(
                name,
                LoadBox.tipsForward(behind, height, down, lever, held),
                least,
                new Working.Formula(
                        "ratio = (behind + down x lever / held) / height",
                        List.of(
                                in("behind", behind, "mm"),
                                in("down", down, "kg"),
                                in("lever", lever, "mm"),
                                in("held", held, "kg"),
                                in("height", height, "mm"))),
                measures);
        measures.add(Measure.enough(DOWN_NEEDED, name, LoadBox.downNeeded(least, behind, height, lever, held))
                .worked(
                        "needed = max(0, least x height - behind) x held / lever",
                        in("least", least, ""),
                        in("height", height, "mm"),
                        in("behind", behind, "mm"),
                        in("held", held, "kg"),
                        in("lever", lever, "mm")));
    }

    /**
     * How far the middle of all that is held lies behind the front edge: as given, else by the masses that the sheet puts in
     * it, the canopy's own at half its length where that has no place.
     */
    private static Figure behind(Plan plan, Fitment canopy, Body body) {
        Figure given = body.holdDown().cogBehind();
        if (given.known()) {
            return given;
        }
        Point half = new Point(body.front().plus(body.length().times(0.5)), Figure.ZERO, Figure.ZERO);
        Figure behind = Held.middle(plan, canopy, half).minus(body.front());
        return behind.known() ? behind : given;
    }

    private static void tips(String name, Figure tips, Figure least, Working working, List<Measure> measures) {
        measures.add(Measure.of(TIPS, name, tips).worked(working));
        measures.add(Measure.of(TIPS_ASKED, name, least, tips).worked(working));
    }
}
