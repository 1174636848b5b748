package fitworthy.quantity;

import java.util.Optional;

/** The numbers by which American wire is sold (AWG, in Australia also B and S): 0.127 mm across at 36, 92 times that in 39 steps. */
public final class WireGauge {

    private static final int THINNEST = 36;
    private static final double STEPS = 39;
    private static final double THINNEST_MM = 0.127;
    private static final double TIMES = 92;

    /** How much thicker a gauge may be than the round figure that tables give for it. */
    private static final double ROUND = 1.06;

    private WireGauge() {}

    /** Its section in mm2. @param number 0 for 1/0, -1 for 2/0 and so on */
    static double section(double number) {
        return Math.PI / 4 * Math.pow(THINNEST_MM * Math.pow(TIMES, (THINNEST - number) / STEPS), 2);
    }

    /** The gauge that is as thick as a section in mm2 or hardly thicker, such as {@code 2/0 AWG}; empty where none is. */
    public static Optional<String> of(double section) {
        double across = Math.sqrt(section * 4 / Math.PI);
        int number = (int) Math.floor(THINNEST - STEPS * Math.log(across / THINNEST_MM) / Math.log(TIMES) + 1e-9);
        return section(number) > section * ROUND
                ? Optional.empty()
                : Optional.of((number > 0 ? String.valueOf(number) : 1 - number + "/0") + " AWG");
    }
}
