package fitworthy.counter.sheets;

import fitworthy.counter.desk.Desk;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Routes;
import io.javalin.config.RoutesConfig;
import java.util.Map;

/** The sheets of the folder. */
public final class SheetsPage implements Routes {

    private final Desk desk;

    public SheetsPage(Desk desk) {
        this.desk = desk;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(
                "/",
                sent -> sent.html(Pages.html(
                        "sheets/list.jte", Map.of("names", desk.folder().names()))));
    }
}
