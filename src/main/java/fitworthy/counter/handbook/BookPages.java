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

    private final RuleEngine engine;
    private final References references;
    private final RuleSearch rules;
    private final List<Report.Section> chapters;

    /**
     * @param folder of the rule book that the engine holds
     * @throws FaultsException where a file of its cases cannot be read
     */
    public BookPages(Path folder, RuleEngine engine) throws FaultsException {
        this.engine = engine;
        this.references = References.of(folder, engine.book());
        this.rules = new RuleSearch(references);
        this.chapters = Handbook.chapters(engine, references);
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
        Map<String, List<RuleSearch.Found>> found = rules.find(wanted, LocalDate.now());
        boolean partly = sent.header("HX-Request") != null;
        sent.html(Pages.html(
                partly ? "handbook/found.jte" : "handbook/search.jte",
                partly
                        ? Map.of("found", found)
                        : Map.of(
                                "found", found,
                                "wanted", wanted,
                                "measures", rules.measures(),
                                "regions", engine.book().regions(),
                                "chapters", chapters)));
    }

    private void rule(Context sent) {
        Book book = engine.book();
        String id = book.formerIds().present(sent.pathParam("id"));
        if (!book.cards().containsKey(id)) {
            throw new NotFoundResponse("The rule book has no rule of this name.");
        }
        show(
                sent,
                Handbook.page(engine, references, id).sections(),
                book.cards().get(id).title());
    }

    private void chapter(Context sent) {
        Report.Section chapter = chapters.stream()
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
                        chapters,
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
