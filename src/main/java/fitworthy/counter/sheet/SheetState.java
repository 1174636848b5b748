package fitworthy.counter.sheet;

import fitworthy.advice.Advice;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Pane;
import fitworthy.source.Words;
import java.util.HashMap;
import java.util.Map;

/** What it comes to in a line, whether the sheet can be read, and what can be undone. */
public final class SheetState implements Pane {

    @Override
    public String id() {
        return "state";
    }

    @Override
    public boolean staysAsSent() {
        return true;
    }

    @Override
    public String html(Seen seen) {
        Map<String, Object> values = new HashMap<>(Map.of(
                "mark",
                        seen.now()
                                .advice()
                                .flatMap(Advice::worst)
                                .map(worst -> Words.hyphenated(worst.name()))
                                .orElse("none"),
                "verdict", seen.now().loaded().orElse("No advice while the sheet has a fault."),
                "sheet", seen.sheet(),
                "undo", seen.sheet().undoes(),
                "redo", seen.sheet().redoes(),
                "faults", seen.now().faults()));
        values.put("tree", seen.now().whole());
        return Pages.html("sheet/state.jte", values);
    }
}
