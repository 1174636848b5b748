package fitworthy.counter.sheets;

import fitworthy.counter.desk.Desk;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Routes;
import fitworthy.counter.page.Sent;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The sheets of the folder. The list comes at once; what each sheet comes to fills in as it is worked out. */
public final class SheetsPage implements Routes {

    /** For how long one answer works verdicts out, in nanoseconds: what a person takes for at once. */
    private static final long SPELL = 150_000_000;
    /** What stands in no file's name. */
    private static final String BETWEEN = "/";

    private final Listing listing;
    private final Verdicts verdicts;

    public SheetsPage(Desk desk) {
        this.listing = new Listing(desk.folder());
        this.verdicts = new Verdicts(desk);
    }

    /** A sheet with what it comes to, as far as that is known. */
    public record Line(Listed sheet, Optional<CameTo> came) {}

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/", this::list);
        routes.post("/verdicts", this::verdicts);
    }

    private void list(Context sent) {
        String words = Sent.query(sent, "q");
        // Where no script runs, nothing fills in later.
        boolean all = sent.queryParam("all") != null;
        List<Line> lines = listing.of(words).stream()
                .map(sheet -> new Line(sheet, all ? Optional.of(verdicts.of(sheet)) : verdicts.known(sheet)))
                .toList();
        boolean part = sent.header("HX-Request") != null;
        sent.html(Pages.html(
                part ? "sheets/found.jte" : "sheets/list.jte",
                Map.of(
                        "words", words,
                        "lines", lines,
                        "missing",
                                missing(lines.stream()
                                        .filter(line -> line.came().isEmpty())
                                        .map(Line::sheet)),
                        "swapped", part)));
    }

    private static String missing(Stream<Listed> sheets) {
        return sheets.map(Listed::file).collect(Collectors.joining(BETWEEN));
    }

    /** Works out some of those that are missing, at least one. */
    private void verdicts(Context sent) {
        long start = System.nanoTime();
        Map<String, CameTo> came = new LinkedHashMap<>();
        List<Listed> left = new ArrayList<>();
        Stream.of(Sent.form(sent, "missing").split(BETWEEN))
                .flatMap(name -> listing.sheet(name).stream())
                .forEach(sheet -> {
                    if (came.isEmpty() || System.nanoTime() - start < SPELL) {
                        came.put(sheet.id(), verdicts.of(sheet));
                    } else {
                        left.add(sheet);
                    }
                });
        sent.html(Pages.html("sheets/verdicts.jte", Map.of("came", came, "missing", missing(left.stream()))));
    }
}
