package fitworthy.counter.handbook;

import fitworthy.book.Book;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Routes;
import fitworthy.counter.page.Sent;
import fitworthy.document.HtmlLayout;
import fitworthy.document.Report;
import fitworthy.engine.RuleEngine;
import fitworthy.handbook.Handbook;
import fitworthy.proof.References;
import fitworthy.source.FaultsException;
import io.javalin.config.RoutesConfig;
import io.javalin.http.ConflictResponse;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** The rule book, to be read: its rules by what one searches, a page of each, and its chapters. Nothing is written. */
public final class BookPages implements Routes {

    private final Path folder;
    private final RuleEngine engine;
    private Read read;

    /** What the pages show of. @param chapters those that are not the pages of rules */
    private record Read(References references, RuleSearch rules, List<Report.Section> chapters) {}

    /** @param folder of the rule book that the engine holds */
    public BookPages(Path folder, RuleEngine engine) {
        this.folder = folder;
        this.engine = engine;
    }

    /** Read when somebody first asks, since that takes longer than all else that a counter begins with. */
    private synchronized Read read() {
        if (read == null) {
            try {
                References references = References.of(folder, engine.book());
                read = new Read(references, new RuleSearch(references), Handbook.chapters(engine, references));
            } catch (FaultsException e) {
                throw new ConflictResponse("The cases of the rule book cannot be read. Run 'fitworthy prove'.");
            }
        }
        return read;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/book", this::search);
        routes.get("/book/rules/{id}", this::rule);
        routes.get("/book/chapters/{id}", this::chapter);
    }

    private void search(Context sent) {
        RuleSearch.Wanted wanted = new RuleSearch.Wanted(
                Sent.query(sent, "words").strip(),
                Sent.query(sent, "measure").strip(),
                Sent.query(sent, "region").strip(),
                !Sent.query(sent, "due").strip().isEmpty());
        Map<String, List<RuleSearch.Found>> found = read().rules().find(wanted, LocalDate.now());
        boolean partly = sent.header("HX-Request") != null;
        sent.html(Pages.html(
                partly ? "handbook/found.jte" : "handbook/search.jte",
                partly
                        ? Map.of("found", found)
                        : Map.of(
                                "found", found,
                                "wanted", wanted,
                                "measures", read().rules().measures(),
                                "regions", engine.book().regions(),
                                "chapters", read().chapters())));
    }

    private void rule(Context sent) {
        Book book = engine.book();
        String id = book.formerIds().present(sent.pathParam("id"));
        if (!book.cards().containsKey(id)) {
            throw new NotFoundResponse("The rule book has no rule of this name.");
        }
        show(
                sent,
                Handbook.page(engine, read().references(), id).sections(),
                RuleSearch.ofAny(book.cards().get(id).title()));
    }

    private void chapter(Context sent) {
        Report.Section chapter = read().chapters().stream()
                .filter(section -> section.id().equals(sent.pathParam("id")))
                .findFirst()
                .orElseThrow(() -> new NotFoundResponse("The rule book has no chapter of this name."));
        show(sent, List.of(chapter), chapter.heading());
    }

    /** A section as markup. */
    public record Shown(String heading, String html) {}

    private void show(Context sent, List<Report.Section> sections, String title) {
        sent.html(Pages.html(
                "handbook/page.jte",
                Map.of(
                        "title",
                        title,
                        "cover",
                        engine.book().cover(),
                        "chapters",
                        read().chapters(),
                        "sections",
                        shown(sections))));
    }

    /** Sections as markup, whose links lead from page to page. */
    private List<Shown> shown(List<Report.Section> sections) {
        List<String> markup = sections.stream()
                .map(section -> HtmlLayout.blocks(section.blocks()))
                .toList();
        Set<String> here = BookLinks.ids(String.join("", markup));
        return IntStream.range(0, sections.size())
                .mapToObj(i -> new Shown(sections.get(i).heading(), BookLinks.to(markup.get(i), here, engine.book())))
                .toList();
    }
}
