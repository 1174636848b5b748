package fitworthy.printout.words;

import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Loading;
import java.util.List;

/** How the axles are told of a vehicle that tows with a load-levelling hitch. */
public final class LevelledWords {

    private LevelledWords() {}

    /** Why its axles do not sum to the whole; empty where they do. */
    public static String sum(List<Loading> loadings) {
        return loadings.stream().anyMatch(Levelling::helps)
                ? "Towing, the front axle stands here with the bars of the load-levelling hitch tight, all else with them off. So"
                        + " the axles sum to more than the vehicle."
                : "";
    }
}
