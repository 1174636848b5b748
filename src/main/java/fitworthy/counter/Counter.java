package fitworthy.counter;

import fitworthy.counter.desk.Desk;
import fitworthy.counter.handbook.BookPages;
import fitworthy.counter.page.Routes;
import fitworthy.counter.plan.PlanChanges;
import fitworthy.counter.plan.PlanPane;
import fitworthy.counter.plan.PlanRoutes;
import fitworthy.counter.sheet.SheetPage;
import fitworthy.counter.sheet.SheetState;
import fitworthy.counter.sheets.SheetsPage;
import fitworthy.counter.side.LoadsPane;
import fitworthy.counter.side.Moves;
import fitworthy.counter.side.RoomPane;
import fitworthy.counter.side.SidePane;
import fitworthy.counter.told.AdvicePane;
import fitworthy.counter.told.AnswerGiven;
import fitworthy.counter.told.ExplainPage;
import fitworthy.counter.told.OffersPane;
import fitworthy.counter.told.QuestionsPane;
import fitworthy.source.FaultsException;
import io.javalin.Javalin;
import java.util.List;
import java.util.stream.Stream;

/** The page at the counter, served on this machine until it is closed. */
public final class Counter implements AutoCloseable {

    private final Javalin server;
    private final Guard guard = new Guard();

    /**
     * @param port 0 for any that is free
     * @throws FaultsException where a file of the rule book cannot be read
     */
    public Counter(Desk desk, int port) throws FaultsException {
        OffersPane offers = new OffersPane(desk);
        QuestionsPane questions = new QuestionsPane(desk);
        List<Routes> routes = List.of(
                guard,
                new Assets(),
                new SheetsPage(desk),
                new PlanRoutes(desk),
                new BookPages(desk.rules(), desk.view().engine()),
                new SheetPage(
                        desk,
                        List.of(
                                new SheetState(),
                                new PlanPane(),
                                new SidePane(),
                                new LoadsPane(),
                                new RoomPane(),
                                new AdvicePane(),
                                questions,
                                offers),
                        Stream.concat(
                                        PlanChanges.all().stream(),
                                        Stream.of(new Moves(), new AnswerGiven(), offers))
                                .toList()),
                new ExplainPage(desk),
                offers,
                questions);
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
