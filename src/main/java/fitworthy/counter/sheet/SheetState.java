package fitworthy.counter.sheet;

import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Pane;
import java.util.Map;

/** Whether the sheet can be read, and what can be undone. */
public final class SheetState implements Pane {

    @Override
    public String id() {
        return "state";
    }

    @Override
    public String html(Seen seen) {
        return Pages.html(
                "sheet/state.jte",
                Map.of(
                        "sheet", seen.sheet(),
                        "undo", seen.sheet().undoes(),
                        "redo", seen.sheet().redoes(),
                        "faults", seen.now().faults()));
    }
}
