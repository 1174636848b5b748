package fitworthy.document;

import fitworthy.document.Report.Block;
import fitworthy.document.Report.Column;
import fitworthy.document.Report.Drawing;
import fitworthy.document.Report.Facts;
import fitworthy.document.Report.Link;
import fitworthy.document.Report.Notice;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Particular;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Signatures;
import fitworthy.document.Report.Subheading;
import fitworthy.document.Report.Table;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How deep the blocks of the first pages stand on paper, in points, so that what belongs on them can be chosen before
 * they are drawn. The sizes are those of pdf.css; a test holds the pages to them.
 */
public final class Depth {

    /** Width between the margins of A4, the narrower paper. */
    private static final double WIDTH = 177 / 25.4 * 72;

    private static final double TEXT = 8.4;
    private static final double TEXT_LINE = TEXT * 1.27;
    private static final double CELL = 7.9;
    private static final double CELL_LINE = CELL * 1.22;
    /** Padding above and below a cell, and its rule. */
    private static final double CELL_AROUND = 1.9;
    /** Padding beside a cell. */
    private static final double CELL_BESIDE = CELL * 0.6;

    /** What has to be left of the first page for the second section to begin on it; 3 cm. */
    public static final double BEGUN = 3 / 2.54 * 72;

    private static final double HEADING = 27;
    private static final double SUBHEADING = 20;
    private static final double CAPTION_AROUND = TEXT + 1;
    private static final double AROUND_PARAGRAPH = TEXT * 0.6;
    private static final double BEHIND_TABLE = 3;
    private static final double NAMES = 0.205;
    private static final double SIGNATURES = 66;
    private static final double NOTICE_AROUND = 24;

    private static final Pattern VIEW = Pattern.compile("viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\"");

    private Depth() {}

    /** Of a section with its heading. */
    public static double of(String heading, List<? extends Block> blocks) {
        return HEADING * Typeface.bold().lines(heading, 11, WIDTH)
                + blocks.stream().mapToDouble(Depth::of).sum();
    }

    /** Of what stands above the first section. */
    public static double ofHead(Report report) {
        return 34
                + 18 * Typeface.bold().lines(report.title(), 15, WIDTH)
                + TEXT_LINE * Typeface.regular().lines(report.caution(), TEXT, WIDTH)
                + TEXT_LINE * Typeface.bold().lines(report.verdict(), TEXT, WIDTH - 20)
                + NOTICE_AROUND
                + facts(report.particulars());
    }

    /** Of a block. */
    public static double of(Block block) {
        if (block instanceof Paragraph paragraph) {
            return BEHIND_TABLE
                    + AROUND_PARAGRAPH
                    + TEXT_LINE * Typeface.regular().lines(paragraph.text(), TEXT, WIDTH);
        }
        if (block instanceof Notice notice) {
            return NOTICE_AROUND + TEXT_LINE * Typeface.bold().lines(notice.text(), TEXT, WIDTH - 20);
        }
        if (block instanceof Points points) {
            return TEXT
                    + points.texts().stream()
                            .mapToDouble(text ->
                                    TEXT * 0.25 + TEXT_LINE * Typeface.regular().lines(text, TEXT, WIDTH - 12))
                            .sum();
        }
        if (block instanceof Subheading heading) {
            return SUBHEADING * Typeface.bold().lines(heading.text(), 9.2, WIDTH);
        }
        if (block instanceof Facts facts) {
            return TEXT * 0.8 + facts(facts.facts());
        }
        if (block instanceof Table table) {
            return table(table)
                    + table.rows().stream().mapToDouble(row -> of(table, row)).sum();
        }
        if (block instanceof Drawing drawing) {
            return drawing(drawing);
        }
        if (block instanceof Signatures) {
            return SIGNATURES;
        }
        throw new IllegalArgumentException(
                "not on the first pages: " + block.getClass().getSimpleName());
    }

    private static double facts(List<Particular> facts) {
        return facts.stream()
                .mapToDouble(fact -> TEXT * 0.2
                        + TEXT_LINE
                                * Math.max(
                                        Typeface.bold().lines(fact.name(), TEXT, WIDTH * NAMES - TEXT),
                                        Typeface.regular().lines(fact.value(), TEXT, WIDTH * (1 - NAMES) - 2)))
                .sum();
    }

    /** A table's caption and head. */
    private static double table(Table table) {
        double head = table.columns().stream()
                .mapToInt(column -> Typeface.bold().lines(column.heading(), CELL, room(table, column)))
                .max()
                .orElse(0);
        return CAPTION_AROUND
                + TEXT_LINE * Typeface.bold().lines(table.caption(), TEXT, WIDTH)
                + CELL_LINE * head
                + CELL_AROUND
                + 2;
    }

    /** A row of a table. */
    public static double of(Table table, Row row) {
        int lines = 0;
        if (row.isName()) {
            lines = Typeface.bold().lines(row.cells().get(0), CELL, WIDTH);
        } else {
            for (int i = 0; i < row.cells().size(); i++) {
                String more = i < row.cells().size() - 1
                        ? ""
                        : row.more().stream().map(Link::plain).reduce("", (some, link) -> some + " " + link);
                lines = Math.max(
                        lines,
                        (row.sum() ? Typeface.bold() : Typeface.regular())
                                .lines(
                                        row.cells().get(i) + more,
                                        CELL,
                                        room(table, table.columns().get(i))));
            }
        }
        return CELL_LINE * lines + CELL_AROUND;
    }

    private static double room(Table table, Column column) {
        double shares = table.columns().stream().mapToDouble(Column::share).sum();
        return WIDTH * column.share() / shares - CELL_BESIDE - 1;
    }

    private static double drawing(Drawing drawing) {
        Matcher view = VIEW.matcher(drawing.svg());
        if (!view.find()) {
            throw new IllegalArgumentException("a picture without its size");
        }
        return 25 + WIDTH * Double.parseDouble(view.group(2)) / Double.parseDouble(view.group(1));
    }
}
