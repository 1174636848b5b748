package fitworthy.figures.radio;

import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Point;

/** How far a radio reaches at best, and how far apart aerials stand. Lengths in m, frequencies in Hz. */
public final class RadioRange {

    private static final double EARTH = 6_371_000;
    /** Radio bends round the Earth as if it were this much larger: the usual standard atmosphere. */
    private static final double BENDING = 4 / 3.0;

    private static final double LIGHT = 299_792_458;
    private static final double SOCKET_OHMS = 50;

    private RadioRange() {}

    /**
     * Loss between two aerials in free space, in dB: {@code 32.4 + 20 log f + 20 log d} with f in MHz and d in km
     * (ITU-R P.525, second-hand).
     */
    public static double freeSpaceLoss(double frequency, double distance) {
        return 32.4 + 20 * Math.log10(frequency / 1e6) + 20 * Math.log10(distance / 1e3);
    }

    /**
     * Distance at which a signal just comes through in free space between two vehicles with this radio and aerial.
     * Losses in cables and by trees are not counted, and tolerances are not carried through.
     *
     * @param power of the transmitter, W
     * @param gain of each aerial, dBi
     * @param sensitivity weakest signal understood, V at 50 ohm
     */
    public static Figure freeSpace(Figure power, Figure gain, Figure sensitivity, Figure frequency) {
        Figure all = power.plus(gain).plus(sensitivity).plus(frequency);
        if (!all.known()) {
            return all;
        }
        double received = sensitivity.value() * sensitivity.value() / SOCKET_OHMS;
        double budget = 10 * Math.log10(power.value() / received) + 2 * gain.value();
        return Figure.of(1e3 * Math.pow(10, (budget - freeSpaceLoss(frequency.value(), 1e3)) / 20), 0);
    }

    /**
     * Radio horizon between two aerials over smooth ground, {@code sqrt(2 k R h1) + sqrt(2 k R h2)}: 4.12 km for the
     * square root of each height in m. US Federal Standard 1037C gives 4.13.
     */
    public static Figure horizon(Figure height, Figure otherHeight) {
        return horizon(height).plus(horizon(otherHeight));
    }

    private static Figure horizon(Figure height) {
        double reach = Math.sqrt(2 * BENDING * EARTH * height.value());
        return height.known() ? Figure.of(reach, reach / 2 * height.tolerance() / height.value()) : height;
    }

    /**
     * Distance between two places in wavelengths of a frequency. Each coordinate counts with its own slope,
     * {@code along / distance}, which holds for aerials that stand closer than their places are known, too.
     */
    public static Figure wavelengths(Point one, Point other, Figure frequency) {
        Figure x = one.x().minus(other.x());
        Figure y = one.y().minus(other.y());
        Figure z = one.z().minus(other.z());
        Figure all = x.plus(y).plus(z);
        if (!all.known()) {
            return all;
        }
        double distance = length(x.value(), y.value(), z.value());
        double tolerance =
                length(x.value() * x.tolerance(), y.value() * y.tolerance(), z.value() * z.tolerance()) / distance;
        return frequency.times(Figure.of(distance, tolerance)).times(1 / LIGHT);
    }

    private static double length(double x, double y, double z) {
        return Math.sqrt(x * x + y * y + z * z);
    }

    /**
     * Angle in degrees between straight ahead and an object ahead of the eye, seen from above. Its slopes are {@code ahead} and
     * {@code aside} over the square of the distance, straight ahead too.
     *
     * @param eye the driver's eye
     * @param object a place ahead of it
     */
    public static Figure sightAngle(Point eye, Point object) {
        Figure ahead = eye.x().minus(object.x());
        Figure aside = object.y().minus(eye.y());
        double angle = Math.atan2(Math.abs(aside.value()), ahead.value());
        double tolerance = Math.hypot(ahead.value() * aside.tolerance(), aside.value() * ahead.tolerance())
                / (ahead.value() * ahead.value() + aside.value() * aside.value());
        return ahead.missingWith(aside, Figure.of(Math.toDegrees(angle), Math.toDegrees(tolerance)));
    }

    /**
     * How far in m an object ahead of the eye has to move to the passenger's side to be seen at an angle:
     * {@link #sightAngle} the other way round. Never below zero.
     */
    public static Figure aside(Point eye, Point object, Figure angle) {
        return Derived.of(
                v -> Math.max(0, (v[0] - v[1]) * Math.tan(Math.toRadians(v[2])) + v[3]),
                eye.x(),
                object.x(),
                angle,
                toTheEye(eye, object));
    }

    /** From an object to straight ahead of the eye in m, to the passenger's side; below zero where it is past that. */
    public static Figure toTheEye(Point eye, Point object) {
        Figure left = eye.y().minus(object.y());
        return eye.y().known() && eye.y().value() > 0 ? left.times(-1) : left;
    }
}
