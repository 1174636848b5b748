package fitworthy.document;

import java.util.ArrayList;
import java.util.List;

/**
 * Advice arranged for paper: every word and figure as it is printed, in the order in which it is printed. How it looks
 * is the template's.
 *
 * @param kind what kind of paper it is
 * @param title the sheet's title
 * @param reference the customer's quote, or the vehicle where no quote is named; stands on every page
 * @param caution the caution in a sentence; stands on every page
 * @param verdict the outcome in a sentence
 * @param particulars whom and what it is for, and what it was made from
 * @param sections the sections, in order
 */
public record Report(
        String kind,
        String title,
        String reference,
        String caution,
        String verdict,
        List<Particular> particulars,
        List<Section> sections) {

    /** The same paper with other sections. */
    public Report with(List<Section> others) {
        return new Report(kind, title, reference, caution, verdict, particulars, others);
    }

    /** A line of the title block. */
    public record Particular(String name, String value) {}

    /** A section. @param id names it in links @param apart whether it begins on a page of its own */
    public record Section(String id, String heading, List<Block> blocks, boolean apart) {

        public Section(String id, String heading, List<Block> blocks) {
            this(id, heading, blocks, false);
        }
    }

    /** A part of a section. */
    public sealed interface Block {}

    /** A paragraph. */
    public record Paragraph(String text) implements Block {}

    /** A sentence that must not be overlooked. */
    public record Notice(String text) implements Block {}

    /** A list. */
    public record Points(List<String> texts) implements Block {}

    /** A numbered list. */
    public record Steps(List<String> texts) implements Block {}
    /** Names with what is said of each. */
    public record Facts(List<Particular> facts) implements Block {}

    /** Words that lead elsewhere in the report. @param to the id they lead to; empty where it is not in the report
     * @param after what follows them */
    public record Link(String words, String to, String after) {

        /** All of it as plain words. */
        public String plain() {
            return words + after;
        }
    }

    /** Links after some words: in one paragraph, or a list. */
    public record Links(String before, List<Link> links, boolean listed) implements Block {

        /** What stands between one link in a paragraph and the next, or after the last. */
        public String mark(Link link) {
            return link == links.get(links.size() - 1) ? "." : ", ";
        }
    }

    /**
     * A heading inside a section.
     *
     * @param mark the severity below it in lower case, else empty
     * @param id names it in links
     */
    public record Subheading(int level, String text, String mark, String id) implements Block {

        public Subheading(int level, String text, String mark) {
            this(level, text, mark, "");
        }
    }

    /** A table. */
    public record Table(String caption, List<Column> columns, List<Row> rows) implements Block {

        /**
         * How it is laid out where there is little room: as it is, scrolled sideways, or its cells one below the other.
         */
        public String layout() {
            return columns.stream().anyMatch(Column::whole)
                    ? "list"
                    : columns.size() <= 4
                            ? "narrow"
                            : columns.stream().filter(Column::figure).count() > 1 ? "wide" : "list";
        }

        /** Whether it is wider than a telephone, so that it is scrolled sideways there. */
        public boolean wide() {
            return layout().equals("wide");
        }

        /** Its rows in groups, each of which begins with a row that names it; the first need not. */
        public List<List<Row>> groups() {
            List<List<Row>> groups = new ArrayList<>();
            for (Row row : rows) {
                if (groups.isEmpty() || row.isName()) {
                    groups.add(new ArrayList<>());
                }
                groups.get(groups.size() - 1).add(row);
            }
            return groups;
        }

        /** The table, or nothing where it has no rows. */
        public List<Block> unlessEmpty() {
            return rows.isEmpty() ? List.of() : List.of(this);
        }
    }

    /** A column. @param share its share of the width, in percent @param sort text, figure or whole */
    public record Column(String heading, int share, String sort) {

        public static Column text(String heading, int share) {
            return new Column(heading, share, "text");
        }

        /** Figures, set to the right. */
        public static Column figure(String heading, int share) {
            return new Column(heading, share, "figure");
        }

        /** What is never broken, as dates are; the share has to have room for it. */
        public static Column whole(String heading, int share) {
            return new Column(heading, share, "whole");
        }

        boolean figure() {
            return sort.equals("figure");
        }

        boolean whole() {
            return sort.equals("whole");
        }
    }

    /** A row. @param link what its first cell leads to, else empty @param sum whether it adds up those above
     * @param more what its last cell ends with */
    public record Row(List<String> cells, String link, boolean sum, List<Link> more) {

        public Row(List<String> cells, String link, boolean sum) {
            this(cells, link, sum, List.of());
        }

        public static Row of(String... cells) {
            return new Row(List.of(cells), "", false);
        }

        static Row sum(String... cells) {
            return new Row(List.of(cells), "", true);
        }

        /** What the rows after it are of. */
        public static Row named(String group) {
            return new Row(List.of(group), "", false);
        }

        /** Whether it names the rows after it: a single cell over the whole width. */
        public boolean isName() {
            return cells.size() == 1;
        }
    }

    /**
     * Something found.
     *
     * @param number its number in this report; empty where it stands alone
     * @param mark its severity in lower case
     * @param id the rule
     * @param place the rule's file and line
     * @param figures value, limit and margin in each loading it holds in
     * @param details what to do, why, whom to ask, what it rests on and what to beware of
     */
    public record FindingBlock(
            String number, String mark, String id, String place, String title, Table figures, List<Detail> details)
            implements Block {}

    /** What is said of a finding under one heading. @param texts one of them, or a list */
    public record Detail(String name, List<String> texts) {

        public static Detail of(String name, String text) {
            return new Detail(name, List.of(text));
        }
    }

    /** How a figure was worked out. */
    public record Worked(String heading, List<String> lines) implements Block {

        /** Whether the lines are those of a table, to be set in one width. */
        public boolean table() {
            return lines.stream().anyMatch(line -> line.contains("   "));
        }
    }

    /** A picture. @param svg a whole {@code svg} element that carries its own title and description */
    public record Drawing(String title, String description, String svg) implements Block {}

    /** A text that was cited. @param link where it can be read, else empty */
    public record Cited(String id, String title, String link, String seen) implements Block {}

    /** Room for signatures. */
    public record Signatures(List<String> people) implements Block {

        /** What stands behind each where it is no more than a line of text. */
        static final String LINE = "name ............... signature ............... date ..........";
    }
}
