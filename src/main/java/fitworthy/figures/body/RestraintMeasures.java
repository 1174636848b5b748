package fitworthy.figures.body;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Held;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Masses;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Sliding;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.BodyDetails.GasBottle;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fixing;
import fitworthy.sheet.Footing;
import fitworthy.sheet.Lashing;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tied;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What keeps loads where they are: a barrier before loose ones, straps and bolts where the sheet tells of some. */
final class RestraintMeasures implements Topic {
    private static final MeasureKind LOOSE = number(
                    "body.loose", "kg", 0, "load that lies loose in one space with people")
            .byLoading();
    private static final MeasureKind STOPPED = yesNo("body.stopped", "whether a wall keeps it from sliding forward");
    private static final MeasureKind HELD =
            number("body.held", "", 2, "what grip and straps hold it with, over its weight");
    private static final MeasureKind FIXED =
            number("body.fixed", "", 1, "what its bolts or brackets bear together over the weight they hold");
    private static final MeasureKind FIXING_HELD = number(
            "body.fixing-held",
            "kg",
            0,
            "what its bolts or brackets hold, as written or all that the sheet puts in it");
    private static final MeasureKind FIXING_NEEDED =
            number("body.fixing-needed", "kg", 0, "what its bolts or brackets have to bear together");
    private static final MeasureKind HELD_ASKED = rated(
            "body.held-asked",
            "",
            2,
            "how many times its weight has to hold it, the way that leaves least",
            "what does");
    private static final Way FORWARD = new Way("body.tied-forward", "as it would slide forward", Sliding.FORWARD);
    private static final Way ASIDE = new Way("body.tied-aside", "to the sides", Sliding.ASIDE);
    private static final Way BACK = new Way("body.tied-back", "as it would slide back", Sliding.BACK);
    private static final MeasureKind HELD_ABOVE =
            yesNo("body.held-above", "whether it is held so high that it cannot tip over");
    private static final MeasureKind STANDS_FORWARD = number(
            "body.stands-forward", "", 2, "half the length of its base over the height of its centre of gravity");
    private static final MeasureKind STANDS_ASIDE =
            number("body.stands-aside", "", 2, "half the width of its base over the height of its centre of gravity");
    private static final MeasureKind BASE_LENGTH =
            number("body.base-length-needed", "mm", 0, "length of base on which it stands by itself");
    private static final MeasureKind BASE_WIDTH =
            number("body.base-width-needed", "mm", 0, "width of base on which it stands by itself");
    private static final MeasureKind STRAPS = number("body.straps-needed", "", 0, "straps that it needs");
    private static final MeasureKind STRAPS_CAN =
            yesNo("body.straps-can", "whether as many such straps as there is room for can hold it");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                LOOSE,
                STOPPED,
                HELD,
                FIXED,
                STRAPS,
                STRAPS_CAN,
                FIXING_HELD,
                FIXING_NEEDED,
                HELD_ASKED,
                FORWARD.held,
                FORWARD.needed,
                ASIDE.held,
                ASIDE.needed,
                BACK.held,
                BACK.needed,
                HELD_ABOVE,
                STANDS_FORWARD,
                STANDS_ASIDE,
                BASE_LENGTH,
                BASE_WIDTH);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        for (Sheet.Load load : plan.sheet().cargo()) {
            load.lashing().ifPresent(lashing -> strapped(plan, load, lashing, measures));
            load.tied().ifPresent(tied -> tied(plan, load, tied, measures));
            load.footing().ifPresent(footing -> standing(plan, load, footing, measures));
        }
        for (Fitment part : plan.sheet().fitments()) {
            part.fixing().ifPresent(fixing -> fixed(plan, part, fixing, measures));
            if (part.fixing().isEmpty()
                    && part.details() instanceof GasBottle bottle
                    && bottle.mount().known()) {
                bracketed(plan, part, bottle.mount(), measures);
            }
        }
    }

    /** A gas bottle, which no law has to ask for what any load has to be held with. */
    private static void bracketed(Plan plan, Fitment bottle, Figure bracket, List<Measure> measures) {
        Figure least = plan.practice(PracticeId.BODY_HOLD_DOWN_LEAST);
        Figure full = Masses.of(bottle, plan.sheet());
        Working.Input weight = in("bottle", full, "kg");
        measures.add(Measure.of(FIXED, bottle.name(), bracket.dividedBy(full))
                .worked("ratio = bracket / bottle", in("bracket", bracket, "kg"), weight));
        measures.add(Measure.of(FIXING_HELD, bottle.name(), full));
        measures.add(Measure.enough(FIXING_NEEDED, bottle.name(), least.times(full))
                .worked("needed = least x bottle", in("least", least, ""), weight));
    }

    /** By its weakest direction, so the most that is asked in any counts. */
    private static void fixed(Plan plan, Fitment part, Fixing fixing, List<Measure> measures) {
        Figure least = plan.practice(PracticeId.BODY_HOLD_DOWN_LEAST);
        Held loaded =
                Held.of(plan, part, fixing.loaded()).orTooMuch(fixing.points().times(fixing.limit()), least);
        Figure held = loaded.mass();
        Hold hold = Hold.by(fixing.points(), fixing.limit(), held, least);
        Working sum = loaded.working(fixing.loaded());
        measures.add(Measure.of(FIXED, part.name(), hold.share()).worked(hold.working(), sum));
        Hold.nearest(HELD_ASKED, part.name(), List.of(hold)).ifPresent(measures::add);
        measures.add(Measure.of(FIXING_HELD, part.name(), held).worked(sum).asLeast(loaded.least()));
        measures.add(Measure.enough(FIXING_NEEDED, part.name(), least.times(held))
                .worked("needed = least x held", in("least", least, ""), in("held", held, "kg")));
    }

    /** Grip holds it alike in all directions, so without a wall the most that is asked in any counts. */
    private static void strapped(Plan plan, Sheet.Load load, Lashing lashing, List<Measure> measures) {
        boolean pressed = !lashing.straps().isZero() && !lashing.angle().isZero();
        Working.Input grip = in("grip", lashing.grip(), "%");
        Figure mass = Masses.of(load, plan.sheet());
        Working.Input weight = in("load", mass, "kg");
        Working.Input pull = in("pull", lashing.tension(), "kg");
        Working.Input angle = in("angle", lashing.angle(), "deg");
        Figure share = plan.practice(
                lashing.stopped().is(YesNo.YES) ? PracticeId.BODY_BACK_LEAST : PracticeId.BODY_HOLD_DOWN_LEAST);
        measures.add(Measure.of(STOPPED, load.name(), lashing.stopped()));
        Figure held = Straps.held(lashing, mass);
        Working.Formula worked = new Working.Formula(
                // Grip counts only where something presses the load down.
                pressed
                        ? "held = grip x (1 + straps x 1.5 x pull x sin(angle) / load)"
                        : "held = grip x straps x 1.5 x pull x sin(angle) / load",
                List.of(grip, in("straps", lashing.straps(), ""), pull, angle, weight));
        measures.add(Measure.of(HELD, load.name(), held).worked(worked));
        Hold.nearest(HELD_ASKED, load.name(), List.of(new Hold(held, share, worked)))
                .map(asked -> asked.given(lashing.stopped()))
                .ifPresent(measures::add);
        Figure needed = Straps.needed(lashing, mass, share);
        // As many as are planned can be laid, however many that is.
        Figure most = plan.practice(PracticeId.BODY_STRAPS_MOST).most(lashing.straps());
        measures.add(Measure.of(
                STRAPS_CAN,
                load.name(),
                needed.isAtMost(most) ? "yes" : "no",
                needed.missingWith(most, needed).missing()));
        if (!needed.known() || Double.isFinite(needed.value())) {
            measures.add(Measure.enough(STRAPS, load.name(), needed)
                    .worked(
                            "straps = max(1, (share / grip - 1) x load / (1.5 x pull x sin(angle)))",
                            in("share", share, ""),
                            grip,
                            weight,
                            pull,
                            angle));
        }
    }

    /** Grip is left out: it holds until the load begins to move, and the lashings from then on. */
    private static void tied(Plan plan, Sheet.Load load, Tied tied, List<Measure> measures) {
        List<Hold> holds = new ArrayList<>();
        if (!tied.stopped().is(YesNo.YES)) {
            holds.add(FORWARD.measures(plan, load, tied, tied.forward(), tied.along(), measures));
        }
        holds.add(ASIDE.measures(plan, load, tied, tied.aside(), tied.across(), measures));
        holds.add(BACK.measures(plan, load, tied, tied.back(), tied.along(), measures));
        Hold.nearest(HELD_ASKED, load.name(), holds).ifPresent(measures::add);
    }

    /** What is said of lashings against one way in which a load may slide. */
    private static final class Way {
        private final MeasureKind held;
        private final MeasureKind needed;
        private final Sliding sliding;

        Way(String id, String as, Sliding sliding) {
            this.held = number(id, "", 2, "what its lashings hold it with " + as + ", over its weight");
            this.needed = number(id + "-needed", "kg", 0, "what each of its lashings has to bear " + as);
            this.sliding = sliding;
        }

        /** @param share of the pull of these lashings that acts that way */
        Hold measures(Plan plan, Sheet.Load load, Tied tied, Figure lashings, Figure share, List<Measure> measures) {
            Figure mass = Masses.of(load, plan.sheet());
            Figure holds = DirectLashing.held(lashings, tied.limit(), share, mass);
            Working.Formula worked = new Working.Formula(
                    "held = lashings x limit x share / load",
                    List.of(
                            in("lashings", lashings, ""),
                            in("limit", tied.limit(), "kg"),
                            in("share", share, "%"),
                            in("load", mass, "kg")));
            Figure least = sliding.least(plan);
            measures.add(Measure.of(held, load.name(), holds).worked(worked));
            // Where none of them pulls that way no strength is enough.
            if (!lashings.isZero() && !share.isZero()) {
                measures.add(Measure.enough(needed, load.name(), DirectLashing.needed(lashings, share, mass, least))
                        .worked(
                                "needed = least x load / (lashings x share)",
                                in("least", least, ""),
                                in("load", mass, "kg"),
                                in("lashings", lashings, ""),
                                in("share", share, "%")));
            }
            return new Hold(holds, least, worked);
        }
    }

    /** It tips about an edge of its base where braking or a bend asks for more than its weight gives. */
    private static void standing(Plan plan, Sheet.Load load, Footing footing, List<Measure> measures) {
        Figure height = footing.cogHeight();
        Working.Input above = in("height", height, "mm");
        Figure forward = plan.practice(PracticeId.BODY_TIPS_FORWARD_LEAST);
        Figure aside = plan.practice(PracticeId.BODY_TIPS_ASIDE_LEAST);
        measures.add(Measure.of(HELD_ABOVE, load.name(), footing.heldAbove()));
        measures.add(Measure.of(
                        STANDS_FORWARD, load.name(), footing.length().times(0.5).dividedBy(height))
                .worked("ratio = length / (2 x height)", in("length", footing.length(), "mm"), above));
        measures.add(
                Measure.of(STANDS_ASIDE, load.name(), footing.width().times(0.5).dividedBy(height))
                        .worked("ratio = width / (2 x height)", in("width", footing.width(), "mm"), above));
        measures.add(
                Measure.enough(BASE_LENGTH, load.name(), forward.times(height).times(2))
                        .worked("needed = 2 x least x height", in("least", forward, ""), above));
        measures.add(Measure.enough(BASE_WIDTH, load.name(), aside.times(height).times(2))
                .worked("needed = 2 x least x height", in("least", aside, ""), above));
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        Choice<YesNo> barrier = loading.plan().vehicle().cargoBarrier();
        if (barrier.is(YesNo.YES)) {
            return;
        }
        List<Working.Input> loose = loading.plan().sheet().cargo().stream()
                .filter(load -> loading.carries(load)
                        && load.lashing().isEmpty()
                        && load.tied().isEmpty()
                        && ClosedIn.liesLoose(loading.plan().sheet(), load))
                .filter(load -> !load.roof().is(YesNo.YES)
                        && !ClosedIn.onRack(loading.plan().sheet(), load))
                .map(load -> in(load.name(), besidePeople(loading, load), "kg"))
                .filter(input -> !input.figure().isZero())
                .toList();
        if (!loose.isEmpty()) {
            Figure sum = Working.total(loose);
            Measure load = Measure.of(LOOSE, "loose load", sum).worked(new Working.Sum("load", loose));
            // The barrier is asked for where it can decide.
            boolean little = sum.isAtMost(loading.plan().practice(PracticeId.BODY_LOOSE_MOST));
            measures.add(little ? load : load.given(barrier));
        }
    }

    /** Its mass where it lies in one space with people: ahead of any tray or canopy, and not in a tub. */
    private static Figure besidePeople(Loading loading, Sheet.Load load) {
        Optional<Figure> front =
                HoldingMeasures.front(loading.bodies().stream().map(fitment -> (Body) fitment.details()));
        Figure mass = Masses.of(load, loading.plan().sheet());
        if (front.isEmpty()) {
            return loading.plan().vehicle().tub().is(YesNo.YES) ? Figure.of(0, 0) : mass;
        }
        Figure behind = loading.plan().places().of(load).x().minus(front.get());
        return behind.isBelow(Figure.ZERO) ? mass : behind.missingWith(behind, Figure.of(0, 0));
    }
}
