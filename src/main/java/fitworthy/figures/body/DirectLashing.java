package fitworthy.figures.body;

import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;

/**
 * Lashings that pull against the way in which a load would slide. Of what one bears, so much acts that way as its ends are
 * apart that way, over its length; grip is left out (the heavy vehicle regulator's guide, Australia, by a worked case in a
 * trade paper).
 */
final class DirectLashing {

    private DirectLashing() {}

    /**
     * What holds the load one way, as a share of its weight: {@code n LC share / m}.
     *
     * @param limit what one bears in a straight pull, kg
     * @param share of its pull that acts that way
     * @param load its mass m, kg
     */
    static Figure held(Figure lashings, Figure limit, Figure share, Figure load) {
        return lashings.times(limit).times(share).dividedBy(load);
    }

    /** What each has to bear to hold a share of the weight, in kg, where some of their pull acts that way. */
    static Figure needed(Figure lashings, Figure share, Figure load, Figure least) {
        return Derived.of(in -> in[3] * in[2] / (in[0] * in[1]), lashings, share, load, least);
    }
}
