package fitworthy.document;

import fitworthy.source.Words;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/** A page of plain text, 80 columns wide. */
public class Page {

    public static final int COLUMNS = 80;

    private static final Pattern SPACES = Pattern.compile(" +");

    private final PrintWriter out;

    public Page(PrintWriter out) {
        this.out = out;
    }

    public void rule() {
        out.println("-".repeat(COLUMNS));
    }

    public void blank() {
        out.println();
    }

    /** A line that is known to fit. */
    public void line(String text) {
        out.println(text);
    }

    public void flush() {
        out.flush();
    }

    /** Text in as many lines as it takes. */
    public void wrapped(int indent, String text) {
        lines(text, COLUMNS - indent).forEach(line -> out.println(" ".repeat(indent) + line));
    }

    /** Text beside a label, its further lines under its first. */
    public void hanging(String label, String text) {
        hanging(label, UnaryOperator.identity(), text);
    }

    /** The same with a label that is painted, which takes no room. */
    public void hanging(String label, UnaryOperator<String> paint, String text) {
        String before = paint.apply(label);
        for (String line : lines(text, COLUMNS - label.length())) {
            out.println(before + line);
            before = " ".repeat(label.length());
        }
    }

    /** Text beside a label with its spaces kept, as the row of a table has them, where it fits in one line. */
    public void row(String label, String text) {
        if (label.length() + text.length() <= COLUMNS) {
            out.println(label + Words.seen(text));
        } else {
            hanging(label, text);
        }
    }

    /** Words in lines of at most {@code width}; a longer word is cut. Control characters become spaces. */
    public static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : SPACES.split(Words.seen(text).strip())) {
            String rest = word;
            while (rest.length() > width) {
                if (!line.isEmpty()) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                lines.add(rest.substring(0, width));
                rest = rest.substring(width);
            }
            if (line.length() + 1 + rest.length() > width && !line.isEmpty()) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }
}
