package fitworthy.printout;

import fitworthy.printout.Report.Block;
import fitworthy.printout.Report.Cited;
import fitworthy.printout.Report.Column;
import fitworthy.printout.Report.Notice;
import fitworthy.printout.Report.Paragraph;
import fitworthy.printout.Report.Points;
import fitworthy.printout.Report.Row;
import fitworthy.printout.Report.Subheading;
import fitworthy.printout.Report.Table;
import java.util.List;
import java.util.stream.Collectors;

/** A report of words and tables as Markdown. Every text is escaped. */
public final class MarkdownPrintout {

    private final StringBuilder out = new StringBuilder();

    private MarkdownPrintout() {}

    /** @throws IllegalArgumentException where it holds pictures, findings or signatures, which have no such form */
    public static String markdown(Report report) {
        MarkdownPrintout printout = new MarkdownPrintout();
        printout.paragraph(escaped(report.kind()));
        printout.paragraph("# " + escaped(report.title()));
        printout.paragraph(escaped(report.caution()));
        printout.paragraph("**" + escaped(report.verdict()) + "**");
        report.particulars().forEach(each -> printout.out.append("- ").append(escaped(each.name())).append(": ")
                .append(escaped(each.value())).append('\n'));
        report.sections().forEach(section -> {
            printout.paragraph("\n## " + escaped(section.heading()));
            section.blocks().forEach(printout::block);
        });
        return printout.out.toString();
    }

    private void paragraph(String text) {
        out.append(text).append("\n\n");
    }

    private void block(Block block) {
        if (block instanceof Paragraph paragraph) {
            paragraph(escaped(paragraph.text()));
        } else if (block instanceof Notice notice) {
            paragraph("**" + escaped(notice.text()) + "**");
        } else if (block instanceof Points points) {
            points.texts().forEach(each -> out.append("- ").append(escaped(each)).append('\n'));
            out.append('\n');
        } else if (block instanceof Subheading heading) {
            paragraph("#".repeat(heading.level()) + " " + escaped(heading.text()));
        } else if (block instanceof Table table) {
            paragraph(escaped(table.caption()) + ":");
            row(table.columns().stream().map(Column::heading).toList());
            out.append("|").append("---|".repeat(table.columns().size())).append('\n');
            table.rows().stream().map(Row::cells).forEach(this::row);
            out.append('\n');
        } else if (block instanceof Cited cited) {
            paragraph("**" + escaped("[" + cited.id() + "]") + "** " + escaped(cited.title() + ". ")
                    + (cited.link().isEmpty() ? "" : "<" + cited.link() + ">. ") + escaped("Seen: " + cited.seen() + "."));
        } else {
            throw new IllegalArgumentException("no Markdown for " + block.getClass().getSimpleName());
        }
    }

    private void row(List<String> cells) {
        out.append(cells.stream().map(MarkdownPrintout::escaped).collect(Collectors.joining(" | ", "| ", " |\n")));
    }

    /** On one line, with a backslash before whatever Markdown or HTML would read as markup. */
    private static String escaped(String text) {
        return text.replaceAll("\\s+", " ").replaceAll("([\\\\`*_\\[<|])", "\\\\$1").replace("&", "&amp;");
    }
}
