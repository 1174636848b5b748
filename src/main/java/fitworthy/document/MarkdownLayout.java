package fitworthy.document;

import fitworthy.document.Report.Block;
import fitworthy.document.Report.Cited;
import fitworthy.document.Report.Column;
import fitworthy.document.Report.Facts;
import fitworthy.document.Report.Link;
import fitworthy.document.Report.Links;
import fitworthy.document.Report.Notice;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Section;
import fitworthy.document.Report.Signatures;
import fitworthy.document.Report.Steps;
import fitworthy.document.Report.Subheading;
import fitworthy.document.Report.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collector;
import java.util.stream.Collectors;

/** A report of words and tables as Markdown. Every text is escaped. */
public final class MarkdownLayout {

    private static final Collector<CharSequence, ?, String> CELLS = Collectors.joining(" | ", "| ", " |\n");

    private final StringBuilder out = new StringBuilder();

    private MarkdownLayout() {}

    /** @throws IllegalArgumentException where it holds pictures or findings, which have no such form */
    public static String markdown(Report report) {
        MarkdownLayout printout = new MarkdownLayout();
        printout.paragraph(escaped(report.kind()));
        printout.paragraph("# " + escaped(report.title()));
        printout.paragraph(escaped(report.caution()));
        printout.paragraph("**" + escaped(report.verdict()) + "**");
        report.particulars().forEach(particular -> printout.out
                .append("- ")
                .append(escaped(particular.name()))
                .append(": ")
                .append(escaped(particular.value()))
                .append('\n'));
        report.sections().forEach(section -> {
            printout.out.append('\n');
            printout.anchor(section.id());
            printout.section(section);
        });
        return printout.out.toString();
    }

    /** Its sections alone, as letters with a line between them. */
    public static String letters(Report report) {
        return report.sections().stream()
                .map(section -> {
                    MarkdownLayout letter = new MarkdownLayout();
                    letter.section(section);
                    return letter.out.toString();
                })
                .collect(Collectors.joining("---\n\n"));
    }

    private void section(Section section) {
        paragraph("## " + escaped(section.heading()));
        section.blocks().forEach(this::block);
    }

    private void paragraph(String text) {
        out.append(text).append("\n\n");
    }

    private void block(Block block) {
        if (block instanceof Paragraph paragraph) {
            paragraph(escaped(paragraph.text()));
        } else if (block instanceof Notice notice) {
            paragraph("**" + escaped(notice.text()) + "**");
        } else if (block instanceof Facts facts) {
            facts.facts().forEach(fact -> out.append("- ")
                    .append(escaped(fact.name()))
                    .append(": ")
                    .append(escaped(fact.value()))
                    .append('\n'));
            out.append('\n');
        } else if (block instanceof Points points) {
            points.texts()
                    .forEach(text -> out.append("- ").append(escaped(text)).append('\n'));
            out.append('\n');
        } else if (block instanceof Steps steps) {
            for (int i = 0; i < steps.texts().size(); i++) {
                out.append(i + 1)
                        .append(". ")
                        .append(escaped(steps.texts().get(i)))
                        .append('\n');
            }
            out.append('\n');
        } else if (block instanceof Signatures signatures) {
            signatures.people().forEach(person -> paragraph(escaped(person + ": " + Signatures.LINE)));
        } else if (block instanceof Subheading heading) {
            anchor(heading.id());
            paragraph("#".repeat(heading.level()) + " " + escaped(heading.text()));
        } else if (block instanceof Links links && links.listed()) {
            links.links().forEach(link -> out.append("- ").append(link(link)).append('\n'));
            out.append('\n');
        } else if (block instanceof Links links) {
            paragraph(escaped(links.before()) + " "
                    + links.links().stream()
                            .map(link -> link(link) + links.mark(link))
                            .collect(Collectors.joining()));
        } else if (block instanceof Table table) {
            paragraph(escaped(table.caption()) + ":");
            out.append(table.columns().stream()
                    .map(Column::heading)
                    .map(MarkdownLayout::escaped)
                    .collect(CELLS));
            out.append("|").append("---|".repeat(table.columns().size())).append('\n');
            table.rows().forEach(row -> row(row, table.columns().size()));
            out.append('\n');
        } else if (block instanceof Cited cited) {
            anchor("source-" + cited.id());
            paragraph("**" + escaped("[" + cited.id() + "]") + "** " + escaped(cited.title() + ". ")
                    + (cited.link().isEmpty() ? "" : "<" + cited.link() + ">. ")
                    + escaped("Seen: " + cited.seen() + "."));
        } else {
            throw new IllegalArgumentException(
                    "no Markdown for " + block.getClass().getSimpleName());
        }
    }

    /** @param columns how many cells a row has, unless it names those after it */
    private void row(Row row, int columns) {
        if (row.isName() && columns > 1) {
            out.append("| **")
                    .append(escaped(row.cells().get(0)))
                    .append("** ")
                    .append("| ".repeat(columns))
                    .append("\n");
            return;
        }
        List<String> cells = new ArrayList<>(
                row.cells().stream().map(MarkdownLayout::escaped).toList());
        cells.set(0, link(new Link(row.cells().get(0), row.link(), "")));
        row.more().forEach(link -> cells.set(cells.size() - 1, cells.get(cells.size() - 1) + " " + link(link)));
        out.append(cells.stream().collect(CELLS));
    }

    /** What links lead to, since headings are named otherwise by each reader of Markdown. */
    private void anchor(String id) {
        if (!id.isEmpty()) {
            paragraph("<a id=\"" + id + "\"></a>");
        }
    }

    private static String link(Link link) {
        return link.to().isEmpty()
                ? escaped(link.plain())
                : "[" + escaped(link.words()) + "](#" + link.to() + ")" + escaped(link.after());
    }

    /** On one line, with a backslash before whatever Markdown or HTML would read as markup. */
    private static String escaped(String text) {
        return Signs.in(text)
                .replaceAll("\\s+", " ")
                .replaceAll("([\\\\`*_\\[<|])", "\\\\$1")
                .replace("&", "&amp;");
    }
}
