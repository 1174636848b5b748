package fitworthy.counter.output;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Ranked;
import fitworthy.counter.desk.Desk;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Routes;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Section;
import fitworthy.document.Report.Table;
import fitworthy.printout.BuyTable;
import fitworthy.printout.CertificateTables;
import fitworthy.printout.CostTable;
import fitworthy.printout.WorkTable;
import fitworthy.printout.words.Verdict;
import io.javalin.config.RoutesConfig;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What to buy, what it costs and what has to be certified; and the order of work: as they are printed. */
public final class TablesPage implements Routes {

    private final Desk desk;

    public TablesPage(Desk desk) {
        this.desk = desk;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        add(routes, "buy", "What to buy", TablesPage::buy);
        add(routes, "work", "Order of work", TablesPage::work);
    }

    private void add(RoutesConfig routes, String tab, String title, Function<Arrangement, List<Section>> sections) {
        routes.get(
                "/sheets/{sheet}/" + tab,
                sent -> Output.of(sent, desk, answer -> {
                    Arrangement arrangement = answer.arrangement().orElseThrow();
                    sent.html(Pages.html(
                            "output/tables.jte",
                            Map.of(
                                    "name", sent.pathParam("sheet"),
                                    "tab", tab,
                                    "title", title,
                                    "of", arrangement.advice().sheet().title(),
                                    "verdict", Verdict.of(arrangement),
                                    "sections", sections.apply(arrangement))));
                }));
    }

    private static List<Section> buy(Arrangement arrangement) {
        Advice advice = arrangement.advice();
        return List.of(
                section("buy", "What to buy", BuyTable.blocks(arrangement), "Nothing is to be bought."),
                section("cost", "What it costs", CostTable.blocks(advice), "Nothing is to be paid for."),
                section(
                        "certificates",
                        "Alterations and certificates",
                        CertificateTables.blocks(advice, Ranked.of(arrangement)),
                        ""));
    }

    private static List<Section> work(Arrangement arrangement) {
        return List.of(section(
                "work",
                "Order of work",
                WorkTable.blocks(arrangement.advice().loadings().get(0).plan()),
                "No work is planned."));
    }

    private static Section section(String id, String heading, List<Block> blocks, String none) {
        return new Section(
                id,
                heading,
                blocks.isEmpty()
                        ? List.of(new Paragraph(none))
                        : blocks.stream().map(TablesPage::alone).toList());
    }

    /** A block without links into the rest of the printed document, which is not on this page. */
    private static Block alone(Block block) {
        return block instanceof Table table
                ? new Table(
                        table.caption(),
                        table.columns(),
                        table.rows().stream()
                                .map(row -> new Row(row.cells(), "", row.sum()))
                                .toList())
                : block;
    }
}
