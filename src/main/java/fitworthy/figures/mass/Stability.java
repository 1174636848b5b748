package fitworthy.figures.mass;

import fitworthy.quantity.Figure;

/** How hard a vehicle is to tip over sideways, as a rigid body; on which slope it does, {@code LoadBox} tells. */
final class Stability {

    private Stability() {}

    /**
     * Static stability factor: half the track over the height of the centre of gravity, as the National Highway Traffic
     * Safety Administration of the United States defines it (read in its chapter on the choice of it).
     *
     * @param track m
     * @param height of the centre of gravity above the road, m
     */
    static Figure factor(Figure track, Figure height) {
        return track.dividedBy(height).times(0.5);
    }
}
