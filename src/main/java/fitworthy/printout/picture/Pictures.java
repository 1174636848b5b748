package fitworthy.printout.picture;

import fitworthy.advice.Advice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The pictures that an advice gives cause for. They draw the figures of the advice and compute none of their own. */
public final class Pictures {

    private Pictures() {}

    /** The margin to each mass limit; absent where nothing of it is known. */
    public static Optional<Picture> margins(Advice advice) {
        return MarginBars.of(advice);
    }

    public static List<Picture> of(Advice advice) {
        return of(advice, true);
    }

    /** The same without how much is used of each limit. */
    public static List<Picture> ofPlan(Advice advice) {
        return of(advice, false);
    }

    private static List<Picture> of(Advice advice, boolean limits) {
        List<PictureFacts> cases = PictureFacts.of(advice);
        List<Picture> pictures = new ArrayList<>();
        SideView.of(cases).ifPresent(pictures::add);
        if (limits) {
            Headroom.of(cases).ifPresent(pictures::add);
        }
        MirrorView.of(cases).ifPresent(pictures::add);
        pictures.addAll(AirPath.of(cases));
        Energy.of(cases).ifPresent(pictures::add);
        return pictures;
    }
}
