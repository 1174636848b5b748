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

    /** The vehicle from its side in a loading; nothing where the wheelbase is not known or there is no such loading. */
    public static Optional<SideDrawing> side(Advice advice, String loading) {
        return PictureFacts.of(advice).stream()
                .filter(facts -> facts.loadCase().equals(loading))
                .findFirst()
                .flatMap(SideView::drawing);
    }

    /** The loading that uses most of a limit of the vehicle; the first where nothing of that is known. */
    public static String fullest(Advice advice) {
        return PictureFacts.of(advice).stream()
                .reduce((one, other) -> SideView.FULLEST_LAST.compare(one, other) < 0 ? other : one)
                .orElseThrow()
                .loadCase();
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
