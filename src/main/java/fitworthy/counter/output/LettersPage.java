package fitworthy.counter.output;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Desk;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Routes;
import fitworthy.counter.page.Sent;
import fitworthy.document.MarkdownLayout;
import fitworthy.document.Paper;
import fitworthy.document.PdfLayout;
import fitworthy.document.PlainLayout;
import fitworthy.document.Report;
import fitworthy.document.Report.Section;
import fitworthy.printout.Imprint;
import fitworthy.printout.letter.Letters;
import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.ConflictResponse;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The letters to those who have to be asked: to be read, copied and taken along. */
public final class LettersPage implements Routes {

    private final Desk desk;

    public LettersPage(Desk desk) {
        this.desk = desk;
    }

    /** A letter. @param to whom it is asked for by @param text the same as plain text */
    public record Letter(Section section, String to, String text) {}

    /** Makes a file of letters. */
    private interface Layout {
        byte[] of(Report letters, Context sent) throws PdfLayout.TooLarge;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/sheets/{sheet}/letters", sent -> Output.of(sent, desk, answer -> show(sent, answer)));
        add(routes, "txt", "text/plain; charset=utf-8", (letters, sent) -> bytes(plain(letters)));
        add(routes, "md", "text/markdown; charset=utf-8", (letters, sent) -> bytes(MarkdownLayout.letters(letters)));
        add(routes, "pdf", "application/pdf", (letters, sent) -> PdfLayout.letters(
                        letters, paper(sent), Imprint.thisProgram(), Instant.now())
                .bytes());
    }

    private static Paper paper(Context sent) {
        return Choice.of(Paper.class, sent.queryParam("paper"));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String plain(Report letters) {
        StringWriter text = new StringWriter();
        PlainLayout.letters(new PrintWriter(text), letters);
        return text.toString();
    }

    private void show(Context sent, Answer answer) {
        Letters letters = Letters.of(answer.advice().orElseThrow());
        Report all = letters.report("");
        List<Letter> each = new ArrayList<>();
        for (Section section : all.sections()) {
            each.add(new Letter(section, letters.words().get(each.size()), plain(all.with(List.of(section)))));
        }
        sent.html(Pages.html(
                "output/letters.jte", Map.of("name", sent.pathParam("sheet"), "of", all.title(), "letters", each)));
    }

    private void add(RoutesConfig routes, String ending, String type, Layout layout) {
        routes.get(
                "/sheets/{sheet}/letters." + ending,
                sent -> Output.of(sent, desk, answer -> send(sent, answer, ending, type, layout)));
    }

    private static void send(Context sent, Answer answer, String ending, String type, Layout layout) {
        Letters letters = Letters.of(answer.advice().orElseThrow());
        String to = Sent.query(sent, "to");
        if (!to.isEmpty() && !letters.known().contains(to)) {
            throw new BadRequestResponse("There is no party '" + to + "'.");
        }
        Report report = letters.report(to);
        if (report.sections().isEmpty()) {
            throw new NotFoundResponse("no letter");
        }
        try {
            Download.send(sent, "letters." + ending, type, layout.of(report, sent));
        } catch (PdfLayout.TooLarge e) {
            throw new ConflictResponse("There is no PDF: " + e.getMessage());
        }
    }
}
