package fitworthy.figures.plan;

import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;

/**
 * How steep a ramp meets a vehicle's tyres before anything else: the angle between the ground and the plane that touches
 * the tyres and a point low at one end, or over a crest the angle between two such planes that meet in a point low between
 * the axles. The definitions are those of ISO 612 (from memory). The tyre is taken as round and the ground as hard.
 */
public final class GroundAngle {

    private GroundAngle() {}

    /**
     * At an end, from the tangent to the tyre's circle through the point: {@code atan((h - r) / d) + asin(r / l)}, where
     * {@code l} is the distance from the wheel's centre to the point.
     *
     * @param height height {@code h} of the point, m
     * @param away distance {@code d} along the vehicle from the axle to it, m
     * @param radius height {@code r} of the wheel's centre, m
     * @return the angle in degrees, 90 where the point lies within the tyre's circle
     */
    public static Figure at(Figure height, Figure away, Figure radius) {
        return Derived.of(v -> degrees(v[0], v[1], v[2]), height, away, radius);
    }

    /**
     * Between the axles: the angles that the point makes with the tyres on either side of it, together.
     *
     * @param front distance from the front axle back to the point, m
     * @param rear distance from the rear axle forward to it, m
     * @return in degrees
     */
    public static Figure over(Figure height, Figure front, Figure rear, Figure radius) {
        return Derived.of(v -> degrees(v[0], v[1], v[3]) + degrees(v[0], v[2], v[3]), height, front, rear, radius);
    }

    private static double degrees(double height, double away, double radius) {
        double fromCentre = Math.hypot(height - radius, away);
        return fromCentre <= radius
                ? 90
                : Math.toDegrees(Math.atan2(height - radius, away) + Math.asin(radius / fromCentre));
    }
}
