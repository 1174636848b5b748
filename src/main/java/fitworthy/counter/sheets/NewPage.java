package fitworthy.counter.sheets;

import fitworthy.advice.View;
import fitworthy.counter.desk.Desk;
import fitworthy.counter.desk.SheetFolder;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Routes;
import fitworthy.shelf.Kind;
import fitworthy.shelf.Shelf;
import fitworthy.source.Place;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Makes a new sheet of a vehicle and a list of parts in the shop's own words. */
public final class NewPage implements Routes {

    private static final List<Kind> PARTS = List.of(Kind.FITMENTS, Kind.TANKS, Kind.CARGO);

    private static final String FILE = "file";

    private final Desk desk;

    public NewPage(Desk desk) {
        this.desk = desk;
    }

    /** What may be typed, for a browser to offer. */
    public record Offered(Collection<String> vehicles, Collection<String> trailers, Collection<String> parts) {}

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/new", sent -> {
            Typed typed =
                    Typed.nothing(Optional.ofNullable(desk.view().region()).orElse("any"));
            show(sent, typed, understood(typed), "", "customer", HttpStatus.OK);
        });
        routes.post("/new", this::make);
        routes.post("/new/look", sent -> {
            Typed typed = Typed.of(sent);
            sent.html(Pages.html("sheets/understood.jte", values(typed, understood(typed), "")));
        });
    }

    private SheetFolder folder() {
        return desk.folder();
    }

    private Understood understood(Typed typed) {
        return Understood.of(typed, desk.view(), place(FileName.of(typed.words(), folder())));
    }

    private Place place(String name) {
        return Place.of(folder().path().resolve(name).toString());
    }

    private void make(Context sent) {
        Typed typed = Typed.of(sent);
        Understood understood = understood(typed).asked();
        String name = typed.line(FILE).isEmpty() ? FileName.of(typed.words(), folder()) : typed.line(FILE);
        Optional<Path> file = FileName.place(name, folder());
        if ("look".equals(sent.formParam("do")) || !understood.isWhole()) {
            show(
                    sent,
                    typed,
                    understood,
                    "",
                    understood.first(),
                    understood.isWhole() ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT);
        } else if (file.isEmpty()) {
            show(sent, typed, understood, FileName.refused(name), FILE, HttpStatus.UNPROCESSABLE_CONTENT);
        } else if (!folder().add(file.get(), understood.text().orElseThrow().getBytes(StandardCharsets.UTF_8))) {
            show(sent, typed, understood, FileName.taken(file.get()), FILE, HttpStatus.UNPROCESSABLE_CONTENT);
        } else {
            Sheets.open(sent, file.get());
        }
    }

    /** @param focus the id of the field in which one goes on typing; empty for none */
    private void show(
            Context sent, Typed typed, Understood understood, String fileFault, String focus, HttpStatus status) {
        Map<String, Object> values = values(typed, understood, fileFault);
        View view = desk.view();
        Shelf shelf = view.shelves().of(place("new.yaml").file());
        Collection<String> parts =
                new TreeSet<>(view.book().tables().shopWords().all());
        PARTS.forEach(kind -> parts.addAll(shelf.of(kind).keySet()));
        values.put("focus", focus);
        values.put("regions", view.book().regions());
        values.put(
                "offered",
                new Offered(
                        shelf.of(Kind.VEHICLES).keySet(),
                        shelf.of(Kind.TRAILERS).keySet(),
                        parts));
        sent.status(status).html(Pages.html("sheets/new.jte", values));
    }

    private Map<String, Object> values(Typed typed, Understood understood, String fileFault) {
        return new HashMap<>(Map.of(
                "typed", typed,
                "understood", understood,
                "file", FileName.of(typed.words(), folder()),
                "fileFault", fileFault));
    }
}
