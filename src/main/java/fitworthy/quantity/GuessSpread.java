package fitworthy.quantity;

import java.util.EnumMap;
import java.util.Map;

/**
 * How far a guess may be off where its writer does not say: assumptions of ours, told in docs/method.md. A guess is told
 * apart from a fact whatever its spread; that only decides whether the verdict is called open.
 */
public final class GuessSpread {

    private static final double USUAL = 0.2;
    private static final Map<Dimension, Double> SHARES = new EnumMap<>(Map.of(
            Dimension.MASS, 0.15,
            Dimension.LENGTH, 0.1,
            Dimension.VOLUME, 0.1,
            Dimension.PRESSURE, 0.1,
            Dimension.SPEED, 0.1,
            Dimension.DENSITY, 0.05,
            Dimension.VOLTAGE, 0.05,
            Dimension.SHARE, 0.1));
    /** Of what is measured from somewhere and may be close to it, in the unit used inside: a place, a temperature. */
    private static final Map<Dimension, Double> LEAST =
            new EnumMap<>(Map.of(Dimension.LENGTH, 0.1, Dimension.TEMPERATURE, 5.0, Dimension.ANGLE, 5.0));

    private GuessSpread() {}

    /**
     * The guess with its tolerance: its own where it has one.
     *
     * @param signed whether it may be below zero, so that it is no share of itself that it is off by
     */
    public static Figure of(Figure guess, Dimension dimension, boolean signed) {
        double share = Math.abs(guess.value()) * SHARES.getOrDefault(dimension, USUAL);
        return guess.orWithin(signed ? Math.max(share, LEAST.getOrDefault(dimension, 0.0)) : share);
    }
}
