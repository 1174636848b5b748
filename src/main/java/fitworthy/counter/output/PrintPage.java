package fitworthy.counter.output;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Desk;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Policy;
import fitworthy.counter.page.Routes;
import fitworthy.counter.page.Sent;
import fitworthy.counter.search.Search;
import fitworthy.counter.search.Searches;
import fitworthy.document.HtmlLayout;
import fitworthy.document.Paper;
import fitworthy.document.PdfLayout;
import fitworthy.document.Report;
import fitworthy.printout.Imprint;
import fitworthy.printout.LookedFor;
import fitworthy.printout.Readers;
import fitworthy.printout.ReportWriter;
import fitworthy.source.InputFile;
import fitworthy.source.Place;
import io.javalin.config.RoutesConfig;
import io.javalin.http.ConflictResponse;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Map;

/** The printed document, as a page and as a PDF, for those whom it is chosen for. */
public final class PrintPage implements Routes {

    /** What a person waits for at the most. */
    private static final double SECONDS = 20;

    private final Desk desk;
    private final Searches searches;

    public PrintPage(Desk desk, Searches searches) {
        this.desk = desk;
        this.searches = searches;
    }

    /** What was chosen. */
    private record Chosen(Readers readers, Paper paper) {

        static Chosen of(Context sent) {
            return new Chosen(
                    Choice.of(Readers.class, sent.queryParam("for")), Choice.of(Paper.class, sent.queryParam("paper")));
        }

        /** The same as the end of an address. */
        String query() {
            return "for=" + Choice.word(readers) + "&paper=" + Choice.word(paper);
        }
    }

    /**
     * What is made, or how far that is.
     *
     * @param name of the sheet
     * @param of its title
     * @param query what was chosen, as the end of an address
     * @param tried how many plans were tried
     * @param elapsed for how many seconds
     * @param most for how many at the most
     */
    public record Made(
            String name, String of, String readers, String query, boolean done, int tried, long elapsed, long most) {}

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/sheets/{sheet}/print", sent -> Output.of(sent, desk, answer -> show(sent, answer)));
        routes.get(
                "/sheets/{sheet}/print/made",
                sent -> Output.of(
                        sent,
                        desk,
                        answer -> sent.html(
                                Pages.html("output/made.jte", Map.of("made", made(sent, answer), "after", true)))));
        routes.get("/sheets/{sheet}/print.html", sent -> Output.of(sent, desk, answer -> html(sent, answer)));
        routes.get("/sheets/{sheet}/print.pdf", sent -> Output.of(sent, desk, answer -> pdf(sent, answer)));
    }

    /** The choice, and below it what is made for them; nothing is made before somebody has chosen. */
    private void show(Context sent, Answer answer) {
        Map<String, Object> values = new HashMap<>(Map.of(
                "name", sent.pathParam("sheet"),
                "of", title(answer),
                "readers", Sent.query(sent, "for"),
                "paper", Choice.word(Choice.of(Paper.class, sent.queryParam("paper")))));
        values.put("made", sent.queryParam("for") == null ? null : made(sent, answer));
        sent.html(Pages.html("output/print.jte", values));
    }

    private Search search(Answer answer) {
        return searches.of(answer, SECONDS).kept();
    }

    private Made made(Context sent, Answer answer) {
        Chosen chosen = Chosen.of(sent);
        Search search = search(answer);
        return new Made(
                sent.pathParam("sheet"),
                title(answer),
                Choice.word(chosen.readers()),
                chosen.query(),
                search.isDone(),
                search.tried(),
                Math.round(search.elapsed()),
                Math.round(SECONDS));
    }

    private static String title(Answer answer) {
        return answer.read().orElseThrow().sheet().title();
    }

    private Report report(Answer answer, Chosen chosen, Imprint imprint) {
        LookedFor found = search(answer).awaited();
        return ReportWriter.report(
                answer.advice().orElseThrow(),
                found.mending(),
                found.alternatives(),
                imprint,
                chosen.readers(),
                chosen.paper());
    }

    private static Imprint imprint(Answer answer) {
        Path file = Path.of(answer.place().file());
        return Imprint.of(
                file.getFileName().toString(),
                content(file, answer.text()),
                answer.read().orElseThrow(),
                answer.view().shelves().of(file.toString()),
                Instant.now());
    }

    /** The bytes of the file; those of the text where another hand has changed it since. */
    private static byte[] content(Path file, String text) {
        byte[] bytes = InputFile.bytes(file, new ArrayList<>());
        boolean same = text.equals(InputFile.text(bytes, Place.of(file.toString()), new ArrayList<>()));
        return same ? bytes : text.getBytes(StandardCharsets.UTF_8);
    }

    private void html(Context sent, Answer answer) {
        Chosen chosen = Chosen.of(sent);
        String html = HtmlLayout.html(report(answer, chosen, imprint(answer)));
        if (sent.queryParam("keep") == null) {
            Policy.ofAPrint(sent);
            sent.html(html);
        } else {
            Download.send(
                    sent,
                    Choice.word(chosen.readers()) + ".html",
                    "text/html; charset=utf-8",
                    html.getBytes(StandardCharsets.UTF_8));
        }
    }

    private void pdf(Context sent, Answer answer) {
        Chosen chosen = Chosen.of(sent);
        Imprint imprint = imprint(answer);
        Report report = report(answer, chosen, imprint);
        Download.send(
                sent,
                Choice.word(chosen.readers()) + ".pdf",
                "application/pdf",
                drawn(report, chosen.paper(), imprint));
    }

    /** One at a time, since drawing takes much memory. */
    private synchronized byte[] drawn(Report report, Paper paper, Imprint imprint) {
        try {
            return PdfLayout.of(report, paper, imprint.software(), imprint.printedAt())
                    .bytes();
        } catch (PdfLayout.TooLarge e) {
            throw new ConflictResponse("There is no PDF: " + e.getMessage());
        }
    }
}
