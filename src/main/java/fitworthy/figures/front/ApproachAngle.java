package fitworthy.figures.front;

import fitworthy.quantity.Figure;

/**
 * How steep a ramp the front of a vehicle meets with its tyres before anything else: the angle between the ground and
 * the plane that touches the front tyres and the lowest point ahead of them. The definition is that of ISO 612 (from
 * memory).
 */
public final class ApproachAngle {

    private ApproachAngle() {}

    /**
     * The angle, from the tangent to the tyre's circle through the point: {@code atan((h - r) / d) + asin(r / l)},
     * where {@code l} is the distance from the wheel's centre to the point. The tyre is taken as round and the ground
     * as hard.
     *
     * @param height height {@code h} of the lowest point ahead of the tyres, m
     * @param ahead distance {@code d} from the front axle forward to that point, m
     * @param radius height {@code r} of the wheel's centre, m
     * @return the angle in degrees, 90 where the point lies behind the front of the tyre; the tolerance combines those
     *     of the three lengths to first order
     */
    public static Figure of(Figure height, Figure ahead, Figure radius) {
        double h = height.value();
        double d = ahead.value();
        double r = radius.value();
        double tolerance = Math.hypot(
                Math.hypot(
                        half(degrees(h + height.tolerance(), d, r), degrees(h - height.tolerance(), d, r)),
                        half(degrees(h, d + ahead.tolerance(), r), degrees(h, d - ahead.tolerance(), r))),
                half(degrees(h, d, r + radius.tolerance()), degrees(h, d, r - radius.tolerance())));
        return height.missingWith(ahead, height).missingWith(radius, Figure.of(degrees(h, d, r), tolerance));
    }

    private static double degrees(double height, double ahead, double radius) {
        double fromCentre = Math.hypot(height - radius, ahead);
        return fromCentre <= radius
                ? 90
                : Math.toDegrees(Math.atan2(height - radius, ahead) + Math.asin(radius / fromCentre));
    }

    private static double half(double one, double other) {
        return (one - other) / 2;
    }
}
