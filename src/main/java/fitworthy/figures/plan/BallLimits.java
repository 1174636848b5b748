package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.sheet.Trailer;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The most that may be on the ball, kg, by each of the three that bear it.
 *
 * @param vehicle as its maker rates it
 * @param afterCut what that is worth after a planned cut; missing where nobody says
 * @param towBar by the plate of the tow bar
 * @param coupling by the plate of the trailer's coupling
 */
public record BallLimits(Figure vehicle, Figure afterCut, Figure towBar, Figure coupling) {

    /** Those of the vehicle as planned and of a trailer. */
    public static BallLimits of(Plan plan, Trailer trailer) {
        Figure vehicle = plan.ratings().ball();
        return new BallLimits(
                vehicle,
                TowingAfterCut.rating(plan, vehicle),
                plan.towBar().plate().ball(),
                trailer.coupling().ball());
    }

    /** Those that are known, before any cut. */
    public Stream<Figure> known() {
        return Stream.of(vehicle, towBar, coupling).filter(Figure::known);
    }

    /** What to hold a load on the ball against, by whose limit it is. */
    public Map<String, Figure> against(Plan plan, Figure load) {
        Map<String, Figure> limits = new LinkedHashMap<>();
        limits.put("vehicle", TowingAfterCut.against(plan, vehicle, load));
        limits.put("tow bar", towBar);
        limits.put("trailer coupling", coupling);
        return limits;
    }
}
