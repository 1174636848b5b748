package fitworthy.printout.picture;

import fitworthy.advice.Advice;
import java.util.ArrayList;
import java.util.List;

/** The pictures that an advice gives cause for. They draw the figures of the advice and compute none of their own. */
public final class Pictures {

    private Pictures() {}

    public static List<Picture> of(Advice advice) {
        List<PictureFacts> cases = PictureFacts.of(advice);
        List<Picture> pictures = new ArrayList<>();
        SideView.of(cases).ifPresent(pictures::add);
        Headroom.of(cases).ifPresent(pictures::add);
        MirrorView.of(cases).ifPresent(pictures::add);
        pictures.addAll(AirPath.of(cases));
        Energy.of(cases).ifPresent(pictures::add);
        return pictures;
    }
}
