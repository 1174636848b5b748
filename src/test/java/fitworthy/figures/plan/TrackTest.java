package fitworthy.figures.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Figure;
import org.junit.jupiter.api.Test;

class TrackTest {

    /**
     * An Australian guide on wheels (copy on savepdf.org) allows 12.5 mm of offset a side where it allows 25 mm of
     * track on a passenger car.
     */
    @Test
    void trackGrowsByTwiceTheOffset() {
        assertEquals(0.025, Track.added(Figure.of(0.030), Figure.of(0.0175)).value(), 1e-12);
        assertEquals(-0.010, Track.added(Figure.of(0.030), Figure.of(0.035)).value(), 1e-12);
    }
}
