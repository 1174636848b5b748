package fitworthy.counter.side;

import fitworthy.advice.Advice;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Pane;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.printout.MarginTable;
import fitworthy.printout.picture.Pictures;
import fitworthy.printout.picture.SideDrawing;
import fitworthy.quantity.Missing;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The vehicle from its side, in the loading that was chosen. */
public final class SidePane implements Pane {

    /**
     * What it shows.
     *
     * @param sheet the name of the sheet's file
     * @param loadings to choose from
     * @param loading the one that is shown
     * @param drawing nothing where the wheelbase is not known
     * @param missing what is missing to draw it
     */
    public record View(
            String sheet,
            List<String> loadings,
            String loading,
            Optional<SideDrawing> drawing,
            List<Handle> handles,
            List<Missing> missing) {}

    @Override
    public String id() {
        return "side";
    }

    @Override
    public boolean staysAsSent() {
        return true;
    }

    /** Not while something is moved in it, which would take that out of the hand. */
    @Override
    public boolean isNew(Seen seen) {
        return seen.asked("moving").isEmpty();
    }

    @Override
    public String html(Seen seen) {
        return seen.now()
                .advice()
                .map(advice -> Pages.html("side/side.jte", Map.of("view", view(seen, advice))))
                .orElseGet(() -> Pages.html("side/fault.jte", Map.of()));
    }

    private static View view(Seen seen, Advice advice) {
        Loading loading = Shown.loading(seen, advice);
        String name = loading.loadCase().name();
        Plan plan = loading.plan();
        Optional<SideDrawing> drawing = Pictures.side(advice, name);
        return new View(
                seen.sheet().name(),
                MarginTable.loadings(advice),
                name,
                drawing,
                drawing.map(drawn -> Handle.of(drawn, plan)).orElse(List.of()),
                plan.wheelbase().missing());
    }
}
