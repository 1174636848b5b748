package fitworthy.counter.side;

import fitworthy.advice.Advice;
import fitworthy.counter.page.Pane.Seen;
import fitworthy.figures.plan.Loading;
import fitworthy.printout.picture.Pictures;

/** Which loading a page shows. */
final class Shown {

    private Shown() {}

    /** The one that was chosen; else the one that uses most of a limit. */
    static Loading loading(Seen seen, Advice advice) {
        String asked = seen.asked("loading");
        String name = advice.facts().containsKey(asked) ? asked : Pictures.fullest(advice);
        return advice.loadings().stream()
                .filter(loading -> loading.loadCase().name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
