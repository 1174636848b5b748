package fitworthy.counter.sheet;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Change;
import fitworthy.counter.desk.Desk;
import fitworthy.counter.desk.LastUsed;
import fitworthy.counter.desk.Lines;
import fitworthy.counter.desk.OpenSheet;
import fitworthy.counter.desk.Outcome;
import fitworthy.counter.page.Markup;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Pane;
import fitworthy.counter.page.Routes;
import fitworthy.counter.page.Sent;
import fitworthy.source.FaultsException;
import io.javalin.config.RoutesConfig;
import io.javalin.http.ConflictResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The page of one sheet: its panes, and what becomes of them after a change. */
public final class SheetPage implements Routes {

    /** What a change is made of, by the last part of its address. */
    public interface Changes {

        /** Such as {@code set}. */
        String name();

        /** @throws io.javalin.http.BadRequestResponse where what was sent cannot be one */
        Change change(Context sent);
    }

    /**
     * What two hands wanted of the same.
     *
     * @param sheet its address
     * @param address to which mine was sent
     * @param lines what stands now, and what was wanted in its place
     * @param shown the version that the page showed
     * @param version of what stands now
     * @param fields what was sent
     */
    public record Parted(
            String sheet,
            String address,
            Lines lines,
            String shown,
            String version,
            List<Map.Entry<String, String>> fields) {}

    private static final String VERSION = "version";
    private static final String OVER = "over";
    private static final String SHOWN = "shown";
    private static final String SHOWS = "shows";
    private static final Set<String> OWN = Set.of(VERSION, OVER, SHOWN, SHOWS, "copy");
    private static final int MOST_COPIES = 99;
    /** More pages than are worked on at once. What another one shows is sent whole. */
    private static final int MOST_PAGES = 32;

    private final Desk desk;
    private final List<Pane> panes;
    private final List<Changes> changes;
    private final LastUsed<Map<String, Markup>> shows = new LastUsed<>(MOST_PAGES);

    public SheetPage(Desk desk, List<Pane> panes, List<Changes> changes) {
        this.desk = desk;
        this.panes = panes;
        this.changes = changes;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/sheets/{sheet}", this::show);
        changes.forEach(made -> routes.post("/sheets/{sheet}/" + made.name(), sent -> {
            if (sent.formParam("copy") == null) {
                answer(sent, sheet -> sheet.change(base(sent), made.change(sent)));
            } else {
                copy(sent, made.change(sent));
            }
        }));
        routes.get("/sheets/{sheet}/look", this::look);
        routes.post("/sheets/{sheet}/undo", sent -> answer(sent, sheet -> sheet.undo(base(sent))));
        routes.post("/sheets/{sheet}/redo", sent -> answer(sent, sheet -> sheet.redo(base(sent))));
    }

    /**
     * The sheet as it is; nothing where the page only follows what others do, and nothing was done, unless it does not know any
     * more what it shows.
     */
    private void look(Context sent) {
        boolean follows = sent.queryParam("follow") != null && !"".equals(sent.queryParam(SHOWS));
        if (follows && sheet(sent).now().version().equals(sent.queryParam("version"))) {
            sent.status(HttpStatus.NO_CONTENT);
        } else {
            answer(sent, sheet -> new Outcome.Done(sheet.now(), sheet.now()));
        }
    }

    /** Keeps what a page wanted in a sheet of its own, where another hand has changed the same. */
    private void copy(Context sent, Change change) {
        OpenSheet sheet = sheet(sent);
        try {
            byte[] mine = sheet.made(Sent.form(sent, SHOWN), change).getBytes(StandardCharsets.UTF_8);
            String kept = IntStream.rangeClosed(1, MOST_COPIES)
                    .mapToObj(number -> sheet.name()
                            .replaceFirst("(?=\\.[a-z]+$)", " (mine" + (number == 1 ? "" : " " + number) + ")"))
                    .filter(name -> desk.folder()
                            .place(name)
                            .filter(file -> desk.folder().add(file, mine))
                            .isPresent())
                    .findFirst()
                    .orElseThrow(() -> new ConflictResponse("there are too many copies already"));
            sent.html(Pages.html("sheet/kept.jte", Map.of("name", kept)));
        } catch (FaultsException e) {
            throw new ConflictResponse(e.getMessage());
        }
    }

    private OpenSheet sheet(Context sent) {
        return Sent.sheet(sent, desk);
    }

    /** The version that the page shows; or, where both hands have been looked at, that on top of which mine is put. */
    private static String base(Context sent) {
        return Optional.ofNullable(sent.formParam(OVER))
                .or(() -> Optional.ofNullable(sent.formParam(VERSION)))
                .orElse("");
    }

    private void show(Context sent) {
        OpenSheet sheet = sheet(sent);
        Pane.Seen seen = new Pane.Seen(sheet, sheet.now(), Optional.empty(), asked(sent.queryParamMap()));
        Answered answered = new Answered(Map.of());
        panes.forEach(pane -> answered.show(pane, seen));
        sent.html(Pages.html(
                "sheet/page.jte",
                Map.of(
                        "name", sheet.name(),
                        "title", seen.title(),
                        "version", seen.now().version(),
                        "shows", kept(answered),
                        "panes", answered.sent)));
    }

    private void answer(Context sent, Function<OpenSheet, Outcome> made) {
        OpenSheet sheet = sheet(sent);
        Outcome outcome = made.apply(sheet);
        Optional<Answer> before = outcome instanceof Outcome.Done done ? Optional.of(done.before()) : Optional.empty();
        Map<String, String> asked = asked(sent.queryParamMap());
        asked.putAll(asked(sent.formParamMap()));
        Pane.Seen seen = new Pane.Seen(sheet, outcome.now(), before, asked);
        // Where others have changed the sheet meanwhile the page has to show that too.
        boolean alone = before.orElse(outcome.now()).version().equals(base(sent));
        Answered answered = new Answered(shows.find(seen.asked(SHOWS)).orElse(Map.of()));
        panes.stream().filter(pane -> !alone || pane.isNew(seen)).forEach(pane -> answered.show(pane, seen));
        sent.html(Pages.html(
                "sheet/changed.jte",
                Map.of(
                        "version",
                        outcome.now().version(),
                        "shows",
                        kept(answered),
                        "field",
                        seen.asked("field"),
                        "faults",
                        outcome instanceof Outcome.Refused refused ? refused.faults() : List.of(),
                        "beside",
                        panes.stream().map(pane -> pane.beside(seen)).collect(Collectors.joining()),
                        "parted",
                        parted(sent, outcome),
                        "panes",
                        answered.sent)));
    }

    /** What an answer brings onto a page. */
    private static final class Answered {
        /** What the page shows, of the panes that stay as they were sent. */
        private final Map<String, Markup> shown;

        /** What is sent of each pane, by its id and in order. */
        private final Map<String, String> sent = new LinkedHashMap<>();

        /** @param before what the page showed, as far as that is known */
        Answered(Map<String, Markup> before) {
            shown = new HashMap<>(before);
        }

        void show(Pane pane, Pane.Seen seen) {
            String html = pane.html(seen);
            if (pane.staysAsSent()) {
                Markup now = Markup.of(html);
                Markup before = shown.put(pane.id(), now);
                sent.put(pane.id(), before == null ? html : now.since(before));
            } else {
                sent.put(pane.id(), html);
            }
        }
    }

    /** By what a page says what it shows. */
    private String kept(Answered answered) {
        String key = UUID.randomUUID().toString();
        shows.put(key, answered.shown);
        return key;
    }

    /** What both hands wanted, where they parted. */
    private static Optional<Parted> parted(Context sent, Outcome outcome) {
        return outcome instanceof Outcome.Parted parted
                ? Optional.of(new Parted(
                        "/sheets/" + sent.pathParam("sheet"),
                        sent.path(),
                        parted.lines(),
                        base(sent),
                        parted.now().version(),
                        asked(sent.formParamMap()).entrySet().stream()
                                .filter(field -> !OWN.contains(field.getKey()))
                                .toList()))
                : Optional.empty();
    }

    private static Map<String, String> asked(Map<String, List<String>> sent) {
        Map<String, String> asked = new HashMap<>();
        sent.forEach((name, values) -> values.stream().findFirst().ifPresent(value -> asked.put(name, value)));
        return asked;
    }
}
