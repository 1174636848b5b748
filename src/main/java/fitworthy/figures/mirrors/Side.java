package fitworthy.figures.mirrors;

import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.sheet.MirrorDetails.Mirror;
import fitworthy.sheet.MirrorDetails.Mirrors;
import java.util.List;

/** A mirror and the direction it lies in. @param sign 1 to the left, -1 to the right */
record Side(String name, int sign, Mirror mirror) {

    static List<Side> both(Mirrors mirrors) {
        return List.of(new Side("left mirror", 1, mirrors.left()), new Side("right mirror", -1, mirrors.right()));
    }

    /** The mirror that the vehicle came with there. */
    Mirror made(Plan plan) {
        Mirrors made = plan.vehicle().view().mirrors();
        return sign > 0 ? made.left() : made.right();
    }

    /** The same with its glass elsewhere. @param reach from the centre line, m */
    Side reaching(Figure reach) {
        return new Side(
                name,
                sign,
                new Mirror(
                        mirror.x(),
                        reach,
                        mirror.glass(),
                        mirror.curve(),
                        mirror.radius(),
                        mirror.edge(),
                        mirror.edgeStowed()));
    }
}
