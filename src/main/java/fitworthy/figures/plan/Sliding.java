package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.sheet.BodyDetails.HoldDown;
import java.util.function.Function;

/** A way in which a canopy or a load slides off what it stands on. */
public enum Sliding {
    FORWARD(PracticeId.BODY_FORWARD_LEAST, HoldDown::forward),
    ASIDE(PracticeId.BODY_ASIDE_LEAST, HoldDown::aside),
    BACK(PracticeId.BODY_BACK_LEAST, HoldDown::back);

    private final PracticeId least;
    private final Function<HoldDown, Figure> holds;

    Sliding(PracticeId least, Function<HoldDown, Figure> holds) {
        this.least = least;
        this.holds = holds;
    }

    /** What has to hold it that way, over its weight. */
    public Figure least(Plan plan) {
        return plan.practice(least);
    }

    /** What holds it that way, kg. */
    public Figure holds(HoldDown holdDown) {
        return holds.apply(holdDown);
    }
}
