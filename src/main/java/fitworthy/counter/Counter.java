package fitworthy.counter;

import fitworthy.counter.desk.Desk;
import fitworthy.counter.handbook.BookPages;
import fitworthy.counter.output.LettersPage;
import fitworthy.counter.output.PrintPage;
import fitworthy.counter.output.TablesPage;
import fitworthy.counter.page.Routes;
import fitworthy.counter.plan.PlanPane;
import fitworthy.counter.sheet.SheetPage;
import fitworthy.counter.sheet.SheetState;
import fitworthy.counter.sheets.CopyPage;
import fitworthy.counter.sheets.NewPage;
import fitworthy.counter.sheets.SheetsPage;
import fitworthy.counter.side.SidePane;
import fitworthy.counter.told.AdvicePane;
import fitworthy.source.FaultsException;
import io.javalin.Javalin;
import java.util.List;

/** The page at the counter, served on this machine until it is closed. */
public final class Counter implements AutoCloseable {

    private final Javalin server;
    private final Guard guard = new Guard();

    /**
     * @param port 0 for any that is free
     * @throws FaultsException where a file of the rule book cannot be read
     */
    public Counter(Desk desk, int port) throws FaultsException {
        List<Routes> routes = List.of(
                guard,
                new Assets(),
                new SheetsPage(desk),
                new CopyPage(desk.folder()),
                new NewPage(desk),
                new TablesPage(desk),
                new LettersPage(desk),
                new PrintPage(desk),
                new BookPages(desk.rules(), desk.view().engine()),
                new SheetPage(
                        desk,
                        List.of(new SheetState(), new PlanPane(), new SidePane(), new AdvicePane()),
                        List.of(PlanPane.SET)));
        server = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.startup.showOldJavalinVersionWarning = false;
            config.startup.startupWatcherEnabled = false;
            config.jetty.host = "127.0.0.1";
            config.jetty.port = port;
            config.http.maxRequestSize = 1 << 20;
            routes.forEach(part -> part.addTo(config.routes));
        });
        server.start();
    }

    public int port() {
        return server.port();
    }

    /** The address to open, which lets in. */
    public String address() {
        return "http://127.0.0.1:" + port() + "/?key=" + guard.key();
    }

    @Override
    public void close() {
        server.stop();
    }
}
