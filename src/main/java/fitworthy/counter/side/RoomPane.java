package fitworthy.counter.side;

import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Pane;
import fitworthy.printout.screen.RoomBrief;
import java.util.Map;

/** What each loading leaves for more. */
public final class RoomPane implements Pane {

    @Override
    public String id() {
        return "room";
    }

    @Override
    public boolean staysAsSent() {
        return true;
    }

    @Override
    public String html(Seen seen) {
        return seen.now()
                .room()
                .map(room -> Pages.html(
                        "side/room.jte",
                        Map.of(
                                "headings",
                                RoomBrief.HEADINGS,
                                "rows",
                                room.loadings().stream().map(RoomBrief::row).toList(),
                                "loading",
                                seen.now()
                                        .advice()
                                        .map(advice -> Shown.loading(seen, advice)
                                                .loadCase()
                                                .name())
                                        .orElse(""))))
                .orElse("");
    }
}
