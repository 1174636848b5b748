package fitworthy.figures.plan;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Tank;

/** Whether the sheet has a mass for a part that cannot weigh nothing, and for what it replaces. */
public final class Weighed {

    /** What is lighter was not weighed, in kg: common practice. */
    private static final Figure LEAST = Figure.of(1, 0);

    private Weighed() {}

    /** Whether the part has a mass, of a kilogram or more. */
    public static Choice<YesNo> alone(Fitment part) {
        return part.mass().known()
                ? Choice.yesNo(part.mass().isAtLeast(LEAST))
                : Choice.missing(part.mass().missing().get(0));
    }

    /** Whether the shell of a tank has a mass. */
    public static Choice<YesNo> shell(Tank tank) {
        return tank.mass().known()
                ? Choice.yesNo(!tank.mass().isZero())
                : Choice.missing(tank.mass().missing().get(0));
    }

    /** Whether a part that goes on where another came off has a mass, and that other as well. */
    public static Choice<YesNo> withReplaced(Fitment part) {
        return !part.mass().isAtLeast(LEAST) || part.removes().isPresent()
                ? alone(part)
                : Choice.missing(new Missing(
                        "fitments." + part.name() + ".removes",
                        "what " + part.name() + " replaces, with its mass and place; 0 kg where nothing comes off",
                        "a scale, or the makers' data"));
    }
}
