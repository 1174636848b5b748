package fitworthy.document;

import fitworthy.source.Words;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** The lines of a page as they are told, for what breaks them itself where there is no more room. */
public final class Lines extends Page {

    private static final String BESIDE_EACH_OTHER = "   ";

    private final List<Line> lines = new ArrayList<>();

    /**
     * A line.
     *
     * @param depth how far it stands in, in characters
     * @param label what stands before its text; empty where nothing does
     * @param table whether its text is the rows of a table, whose spaces count
     */
    public record Line(int depth, String label, String text, boolean table) {}

    public Lines() {
        super(new PrintWriter(Writer.nullWriter()));
    }

    /** All that was told, without what is between. */
    public List<Line> told() {
        return List.copyOf(lines);
    }

    @Override
    public void rule() {
        // A line across a page of paper is none of words.
    }

    @Override
    public void blank() {
        // Nor is a gap.
    }

    @Override
    public void line(String text) {
        wrapped(0, text);
    }

    @Override
    public void wrapped(int indent, String text) {
        lines.add(new Line(indent, "", Words.seen(text.strip()), false));
    }

    @Override
    public void hanging(String label, UnaryOperator<String> paint, String text) {
        add(label, text.strip(), false);
    }

    @Override
    public void row(String label, String text) {
        add(label, text, text.contains(BESIDE_EACH_OTHER));
    }

    private void add(String label, String text, boolean table) {
        int depth = label.length() - label.stripLeading().length();
        Line line = new Line(depth, label.strip(), Words.seen(text), table);
        Line last = lines.isEmpty() ? null : lines.get(lines.size() - 1);
        if (table && last != null && last.table() && last.depth() == depth) {
            lines.set(lines.size() - 1, new Line(depth, last.label(), last.text() + "\n" + line.text(), true));
        } else {
            lines.add(line);
        }
    }
}
