package fitworthy.counter.side;

import fitworthy.advice.Arrangement;
import fitworthy.advice.Margin;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Pane;
import java.util.List;
import java.util.Map;

/** The vehicle from its side, and what is left of each limit. */
public final class SidePane implements Pane {

    @Override
    public String id() {
        return "side";
    }

    @Override
    public String html(Seen seen) {
        List<Margin> margins =
                seen.now().arrangement().map(Arrangement::margins).orElse(List.of());
        return Pages.html("side/side.jte", Map.of("margins", margins));
    }
}
