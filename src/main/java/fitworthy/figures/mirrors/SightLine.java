package fitworthy.figures.mirrors;

import java.util.function.DoubleUnaryOperator;

/**
 * What a driver sees in one outside mirror, in plan view. Lengths in m, x backwards from the front axle, y outwards
 * from the centre line on the side of this mirror, so that the left and the right are computed alike; the eye of a
 * driver who sits on the other side has a negative y.
 *
 * <p>The glass is turned until it shows straight back, so it stands across the middle between that direction and the
 * eye's. Seen from behind, the eye then looks through the glass as through a window from a virtual eye ahead of it: as
 * far ahead as the real one is away where the glass is flat, nearer where it is convex; what is asked of the road ends where the outer end
 * of the glass in use ends. Level road, vehicle and trailer in line, a mirror that can be turned as far as needed.
 *
 * @param eyeX the point midway between the driver's eyes
 * @param eyeY the same point
 * @param glassX the glass
 * @param radius of a convex glass, infinite for a flat one
 */
public record SightLine(double eyeX, double eyeY, double glassX, double radius) {

    /** Distance between the two eyes in m, as UN Regulation 46 takes it (from memory). */
    static final double EYES = 0.065;

    /** Ample for fixed points whose error shrinks to a third or less at each step. */
    private static final int STEPS = 60;

    /** Distance of the virtual eye behind a mirror in m: {@code 1/image = 1/object + 2/radius}, the mirror equation. */
    static double image(double object, double radius) {
        return 1 / (1 / object + 2 / radius);
    }

    /** Width in m that a glass covers across the road: its own width, foreshortened by its turn. */
    public double across(double glass, double reach) {
        return settled(glass, across -> glass * foreshortening(reach - across / 2));
    }

    /** The width of glass in m that covers so much across the road: {@link #across} the other way round. */
    public double glass(double across, double reach) {
        return across / foreshortening(reach - across / 2);
    }

    /**
     * Width of road seen in m, both eyes together. For one eye it is the similar triangles from the virtual eye over
     * the glass to the road. The other eye sees a strip displaced by the distance of the eyes, times the ratio of the
     * ways behind and before the glass; it adds no more than its own width.
     *
     * @param across the part of the glass that nothing hides, measured across the road, m
     * @param reach from the centre line to the outer edge of the glass, m
     * @param behind how far behind the driver's eye the road is looked at, m
     */
    public double seen(double across, double reach, double behind) {
        double clear = Math.max(across, 0);
        double middle = reach - clear / 2;
        double one = clear * widening(middle, clear, behind);
        return one + Math.min(one, displaced(middle, behind));
    }

    /** The part of the glass across the road in m that shows so much road: {@link #seen} the other way round. */
    public double acrossNeeded(double width, double reach, double behind) {
        return settled(0, across -> acrossAt(reach - across / 2, across, width, behind));
    }

    /**
     * How far from the centre line the outer edge of the glass has to stand to show a width of road beyond a side, in
     * m. The part that is needed begins at the side, and its middle decides how wide it has to be.
     *
     * @param side from the centre line to what hides the road, m
     * @param width of road to be seen, m
     * @param behind how far behind the driver's eye, m
     */
    public double reachNeeded(double side, double width, double behind) {
        return side + settled(0, across -> acrossAt(side + across / 2, across, width, behind));
    }

    /** The part of a glass across the road that shows so much road where its middle stands so far out, m. */
    private double acrossAt(double middle, double across, double width, double behind) {
        return Math.max(width / 2, width - displaced(middle, behind)) / widening(middle, across, behind);
    }

    /** Where the steps from a start come to; rounding may have them change between two neighbours for good. */
    private static double settled(double start, DoubleUnaryOperator step) {
        double at = start;
        for (int i = 0; i < STEPS; i++) {
            double next = step.applyAsDouble(at);
            if (next == at) {
                break;
            }
            at = next;
        }
        return at;
    }

    double distance(double y) {
        // Lengths of a vehicle need none of the care that makes Math.hypot slow.
        return Math.sqrt((eyeX - glassX) * (eyeX - glassX) + (y - eyeY) * (y - eyeY));
    }

    /** Half the angle between straight back and the eye, which is also the angle at which the glass is looked at. */
    double turn(double y) {
        return Math.atan2(y - eyeY, eyeX - glassX) / 2;
    }

    /** The cosine of {@link #turn} by that of the whole angle: the steps to a fixed point ask for it thousands of times. */
    double foreshortening(double y) {
        return Math.sqrt((1 + (eyeX - glassX) / distance(y)) / 2);
    }

    /** Road seen by one eye over the part of the glass in use. */
    private double widening(double y, double across, double behind) {
        return 1 + wayBack(behind) / toEnd(y, across);
    }

    /**
     * Distance in m of the virtual eye from the middle of the glass in use. A convex glass looked at askew
     * acts across the road as if its radius were shorter by the cosine of the angle (Coddington's equation for the
     * tangential fan; from memory).
     */
    double image(double y) {
        return image(distance(y), radius * foreshortening(y));
    }

    /**
     * Distance in m straight back from the virtual eye to the outer end of the glass in use, which ends the view. The glass
     * stands turned by t, so its inner end is nearer to the eye than its middle by {@code across/2 tan t} and its outer end
     * {@code across tan t} behind that; what a convex glass makes of it goes as its image does.
     */
    double toEnd(double y, double across) {
        double distance = distance(y);
        return image(y) * (1 + across / 2 * tangent(y) / distance);
    }

    /** The tangent of {@link #turn} by the sides of the triangle, as for {@link #foreshortening}. */
    private double tangent(double y) {
        return (y - eyeY) / (distance(y) + eyeX - glassX);
    }

    /** The eyes stand side by side across the vehicle, so a mirror far to the side sees them closer together. */
    double displaced(double y, double behind) {
        double distance = distance(y);
        double apart = EYES * Math.max(0, (eyeX - glassX) / distance);
        return apart * wayBack(behind) / distance;
    }

    double wayBack(double behind) {
        return eyeX + behind - glassX;
    }
}
