package fitworthy.document;

import fitworthy.document.Report.Block;
import fitworthy.document.Report.Cited;
import fitworthy.document.Report.Facts;
import fitworthy.document.Report.Link;
import fitworthy.document.Report.Links;
import fitworthy.document.Report.Notice;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Signatures;
import fitworthy.document.Report.Steps;
import fitworthy.document.Report.Subheading;
import fitworthy.document.Report.Table;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A report of words and tables as plain text, 80 columns wide. What links lead to is left out. */
public final class PlainLayout {

    /** The widest that the columns before a table's last may be to stand beside it. */
    private static final int BESIDE = Page.COLUMNS / 2;

    private final Page page;

    private PlainLayout(PrintWriter out) {
        this.page = new Page(out);
    }

    /** @throws IllegalArgumentException where it holds pictures or findings, which have no such form */
    public static void print(PrintWriter out, Report report) {
        PlainLayout printout = new PlainLayout(out);
        printout.page.wrapped(0, report.title());
        report.particulars().forEach(particular -> printout.page.hanging(particular.name() + ": ", particular.value()));
        printout.page.wrapped(0, report.verdict());
        printout.page.wrapped(0, report.caution());
        printout.sections(report);
    }

    /** Its sections alone, as letters. @throws IllegalArgumentException where one holds pictures or findings */
    public static void letters(PrintWriter out, Report report) {
        new PlainLayout(out).sections(report);
    }

    private void sections(Report report) {
        report.sections().forEach(section -> {
            page.rule();
            page.wrapped(0, section.heading());
            section.blocks().forEach(this::block);
        });
        page.flush();
    }

    private void block(Block block) {
        page.blank();
        if (block instanceof Paragraph paragraph) {
            page.wrapped(0, paragraph.text());
        } else if (block instanceof Notice notice) {
            page.wrapped(0, notice.text());
        } else if (block instanceof Facts facts) {
            facts.facts().forEach(fact -> page.hanging(fact.name() + ": ", fact.value()));
        } else if (block instanceof Points points) {
            points.texts().forEach(text -> page.hanging("- ", text));
        } else if (block instanceof Steps steps) {
            for (int i = 0; i < steps.texts().size(); i++) {
                page.hanging(
                        String.format(Locale.ROOT, "%2d. ", i + 1),
                        steps.texts().get(i));
            }
        } else if (block instanceof Signatures signatures) {
            signatures.people().forEach(person -> page.wrapped(0, person + ": " + Signatures.LINE));
        } else if (block instanceof Links links && links.listed()) {
            links.links().forEach(link -> page.hanging("- ", link.plain()));
        } else if (block instanceof Links links) {
            page.wrapped(
                    0,
                    links.before() + " "
                            + links.links().stream()
                                    .map(link -> link.plain() + links.mark(link))
                                    .collect(Collectors.joining()));
        } else if (block instanceof Subheading heading) {
            page.wrapped(0, heading.text());
        } else if (block instanceof Table table) {
            page.wrapped(0, table.caption());
            table(table);
        } else if (block instanceof Cited cited) {
            page.hanging("[" + cited.id() + "] ", cited.title() + ". Seen: " + cited.seen() + ".");
            if (!cited.link().isEmpty()) {
                page.wrapped(2, cited.link());
            }
        } else {
            throw new IllegalArgumentException(
                    "no plain text for " + block.getClass().getSimpleName());
        }
    }

    /** Each row with its last cell beside the others, or below them where they leave it too little room. */
    private void table(Table table) {
        int last = table.columns().size() - 1;
        List<Integer> widths = new ArrayList<>();
        for (int i = 0; i < last; i++) {
            int column = i;
            widths.add(table.rows().stream()
                    .filter(row -> !row.isName())
                    .mapToInt(row -> row.cells().get(column).length())
                    .max()
                    .orElse(0));
        }
        boolean beside = widths.stream().mapToInt(width -> width + 2).sum() <= BESIDE;
        for (Row row : table.rows()) {
            if (row.isName() && last > 0) {
                page.wrapped(0, row.cells().get(0));
                continue;
            }
            StringBuilder first = new StringBuilder();
            for (int i = 0; i < last; i++) {
                String cell = row.cells().get(i);
                first.append(beside ? "  " : i == 0 ? "" : ", ")
                        .append(cell)
                        .append(beside ? " ".repeat(widths.get(i) - cell.length()) : "");
            }
            String more = row.cells().get(last)
                    + row.more().stream()
                            .map(Link::plain)
                            .map(cell -> " " + cell)
                            .collect(Collectors.joining());
            if (beside) {
                page.hanging(first + "  ", more);
            } else {
                page.wrapped(2, first.toString());
                page.wrapped(4, more);
            }
        }
    }
}
