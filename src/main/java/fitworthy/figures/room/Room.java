package fitworthy.figures.room;

import fitworthy.figures.plan.Loading;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a loading leaves for more: each answer by itself, with all else as planned.
 *
 * @param trailer the heaviest trailer, kg; nothing where the sheet has none
 * @param ball the most that may be on the ball, kg; nothing where the sheet has no trailer
 * @param aboard how much more people and cargo may weigh, kg, by place
 * @param tanks how full each tank may be
 */
public record Room(Optional<Most> trailer, Optional<Most> ball, Map<String, Most> aboard, List<TankRoom> tanks) {

    /** Works it out for a loading. */
    public static Room of(Loading loading) {
        Optional<HeaviestTrailer.Both> trailer = HeaviestTrailer.of(loading);
        return new Room(
                trailer.map(HeaviestTrailer.Both::heaviest),
                trailer.map(HeaviestTrailer.Both::ball),
                Stowage.of(loading),
                TankRoom.of(loading));
    }
}
