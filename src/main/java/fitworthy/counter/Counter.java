package fitworthy.counter;

import fitworthy.counter.desk.Desk;
import fitworthy.counter.handbook.BookPages;
import fitworthy.counter.output.LettersPage;
import fitworthy.counter.output.PrintPage;
import fitworthy.counter.output.TablesPage;
import fitworthy.counter.page.Routes;
import fitworthy.counter.plan.PlanChanges;
import fitworthy.counter.plan.PlanPane;
import fitworthy.counter.plan.PlanRoutes;
import fitworthy.counter.search.Searches;
import fitworthy.counter.sheet.SheetPage;
import fitworthy.counter.sheet.SheetState;
import fitworthy.counter.sheets.CopyPage;
import fitworthy.counter.sheets.NewPage;
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
import io.javalin.Javalin;
import io.javalin.util.JavalinBindException;
import io.javalin.util.JavalinException;
import java.util.List;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;

/** The page at the counter, served on this machine until it is closed. */
public final class Counter implements AutoCloseable {

    private final Javalin server;
    private final Names names;
    private final Door door;

    /** Nothing can be served at this port of this address. */
    public static final class NotOpened extends Exception {

        private NotOpened(Throwable cause) {
            super(
                    cause.getCause() == null
                            ? cause.getMessage()
                            : cause.getCause().getMessage(),
                    cause);
        }
    }

    public Counter(Desk desk, Serving serving) throws NotOpened {
        desk.folder().clearUnfinished();
        names = new Names(serving);
        door = new Door(serving.password());
        Searches searches = new Searches();
        OffersPane offers = new OffersPane(desk, searches);
        QuestionsPane questions = new QuestionsPane(desk);
        List<Routes> routes = List.of(
                new Guard(names),
                door,
                new Assets(),
                new SheetsPage(desk),
                new PlanRoutes(desk),
                new CopyPage(desk.folder()),
                new NewPage(desk),
                new TablesPage(desk),
                new LettersPage(desk),
                new PrintPage(desk, searches),
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
                        Stream.concat(PlanChanges.all().stream(), Stream.of(new Moves(), new AnswerGiven(), offers))
                                .toList()),
                new ExplainPage(desk),
                offers,
                questions);
        server = Javalin.create(config -> {
            Listening.at(serving, config);
            new Failed(serving.log()).addTo(config);
            routes.forEach(part -> part.addTo(config.routes));
        });
        try {
            server.start();
        } catch (JavalinBindException e) {
            throw new NotOpened(e.getCause());
        }
    }

    public int port() {
        return server.port();
    }

    /** The address to open, which lets in where no password does. */
    public String address() {
        return "http://" + names.first(port()) + door.entry();
    }

    /** Requests that are answered just now are waited for, but no longer than a few seconds. */
    @Override
    public void close() {
        try {
            server.stop();
        } catch (JavalinException e) {
            if (!(e.getCause() instanceof TimeoutException)) {
                throw e;
            }
        }
    }
}
