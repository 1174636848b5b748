package fitworthy.counter.sheets;

import fitworthy.advice.View;
import fitworthy.book.Book;
import fitworthy.book.House;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Makes a new sheet of a vehicle and a list of parts in the shop's own words. */
public final class NewPage implements Routes {

    private static final List<Kind> PARTS = List.of(Kind.FITMENTS, Kind.TANKS, Kind.CARGO);

    private static final String FILE = "file";

    /** In which no law is looked at. */
    private static final String ANY = "any";
    /** Sheets whose regions are offered before others. */
    private static final int LATEST = 3;

    private final Desk desk;
    private final Listing listing;

    public NewPage(Desk desk) {
        this.desk = desk;
        this.listing = new Listing(desk.folder());
    }

    /** What may be typed, for a browser to offer. */
    public record Offered(Collection<String> vehicles, Collection<String> trailers, Collection<String> parts) {}

    /** Regions to choose from under a heading, each id with its name. */
    public record Regions(String heading, Map<String, String> names) {}

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/new", sent -> {
            Typed typed =
                    Typed.nothing(Optional.ofNullable(desk.view().region()).orElse(""));
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
        return new Understanding(desk.view(), place(FileName.of(typed.words(), folder()))).of(typed);
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
        values.put("regions", regions(view.book()));
        values.put(
                "offered",
                new Offered(
                        shelf.of(Kind.VEHICLES).keySet(),
                        shelf.of(Kind.TRAILERS).keySet(),
                        parts));
        sent.status(status).html(Pages.html("sheets/new.jte", values));
    }

    /** Those of the latest sheets and of the house's values before the others, and last the one that is none. */
    private List<Regions> regions(Book book) {
        Map<String, String> here = new LinkedHashMap<>();
        Stream.concat(
                        listing.latest(LATEST).stream().map(Listed::region),
                        book.house().page().values().stream().map(House.Value::region))
                .filter(region -> book.regions().containsKey(region) && !region.equals(ANY))
                .forEach(region -> here.put(region, book.regions().get(region).name()));
        Map<String, String> others = new LinkedHashMap<>();
        book.regions().forEach((region, of) -> others.put(region, of.name()));
        others.keySet().removeAll(here.keySet());
        others.put(ANY, others.remove(ANY) + ": no law is looked at");
        return here.isEmpty()
                ? List.of(new Regions("Regions", others))
                : List.of(new Regions("Used here lately", here), new Regions("Others", others));
    }

    private Map<String, Object> values(Typed typed, Understood understood, String fileFault) {
        return new HashMap<>(Map.of(
                "typed", typed,
                "understood", understood,
                "file", FileName.of(typed.words(), folder()),
                "fileFault", fileFault));
    }
}
