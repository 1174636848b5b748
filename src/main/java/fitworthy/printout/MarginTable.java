package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Margin;
import fitworthy.document.Page;
import fitworthy.printout.words.FieldWords;
import fitworthy.printout.words.LevelledWords;
import fitworthy.printout.words.Payload;
import fitworthy.printout.words.Wording;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The margin to each limit of the vehicle, a load case a column. */
public final class MarginTable {

    private static final String HEADING = "MARGIN TO EACH LIMIT";
    private static final int GAP = 2;
    /** How many of the fields that are missing are named. */
    private static final int FIELDS = 5;
    /** The least room that a loading's name is given before it is broken into lines. */
    private static final int NAME = 14;

    private MarginTable() {}

    /** The loadings that have a column. */
    public static List<String> loadings(Advice advice) {
        return advice.loadings().stream()
                .map(loading -> loading.loadCase().name())
                .toList();
    }

    /** The margin to a limit in each of some loadings, marked where it is too close to call or rests on guesses. */
    public static List<String> cells(Margin margin, List<String> loadings) {
        return loadings.stream()
                .map(loading -> margin.outcomes().containsKey(loading)
                        ? (margin.atLeast().contains(loading) ? "at least " : "")
                                + Wording.spareOrOver(margin.outcomes().get(loading))
                                + mark(margin, loading)
                        : "-")
                .toList();
    }

    /** Behind a margin: that it is too close to call, else that it rests on guesses. */
    private static String mark(Margin margin, String loading) {
        return margin.close().contains(loading) ? " (close)" : margin.guessed().contains(loading) ? " (about)" : "";
    }

    /** The margin to a limit in the loading that leaves least. */
    static String least(Margin margin) {
        return Wording.margin(margin.worst());
    }

    /** What has to be known before all of the limits are in the table; empty where they are. */
    public static String waiting(Advice advice) {
        List<String> fields =
                Margin.waitsFor(advice).stream().map(FieldWords::of).distinct().toList();
        int others = fields.size() - FIELDS;
        return fields.isEmpty()
                ? ""
                : "Not every margin is known. Missing: "
                        + fields.stream().limit(FIELDS).collect(Collectors.joining(", "))
                        + (others > 0 ? ", and " + others + (others == 1 ? " other" : " others") : "") + ".";
    }

    /** Prints the table and what is missing of it, then the payload. What a loading leaves for more stands right below. */
    public static void print(Page page, Arrangement arrangement) {
        List<String> margins = lines(arrangement, Page.COLUMNS);
        String waiting = waiting(arrangement.advice());
        margins.forEach(page::line);
        if (!waiting.isEmpty()) {
            page.wrapped(0, waiting);
        }
        String levelled = LevelledWords.sum(arrangement.advice().loadings());
        if (!levelled.isEmpty()) {
            page.wrapped(0, levelled);
        }
        page.wrapped(0, "Payload " + Payload.inShort(arrangement.advice()));
    }

    /** The table as lines, each heading first; blocks below each other where the loadings need more than {@code width}. */
    static List<String> lines(Arrangement arrangement, int width) {
        List<String> loadings = loadings(arrangement.advice());
        List<Margin> margins = arrangement.margins();
        if (margins.isEmpty()) {
            return List.of();
        }
        int first = Math.min(
                width / 2, Math.max(HEADING.length(), widest(margins.stream().map(Margin::limit))) + 1);
        int column = GAP
                + Math.max(
                        widest(margins.stream().flatMap(margin -> cells(margin, loadings).stream())),
                        Math.min(widest(loadings.stream()), Math.max(NAME, (width - first) / loadings.size() - GAP)));
        int beside = Math.max(1, (width - first) / column);
        List<String> lines = new ArrayList<>();
        for (int from = 0; from < loadings.size(); from += beside) {
            if (from > 0) {
                lines.add("");
            }
            List<String> some = loadings.subList(from, Math.min(from + beside, loadings.size()));
            int names = width - column * some.size();
            heading(lines, some, names, column);
            margins.forEach(margin -> lines.add(line(margin.limit(), names, column, cells(margin, some))));
        }
        return lines;
    }

    private static int widest(Stream<String> cells) {
        return cells.mapToInt(String::length).max().orElse(0);
    }

    /** The names of the loadings, in as many lines as they take, each ending just above its figures. */
    private static void heading(List<String> lines, List<String> loadings, int first, int column) {
        List<List<String>> names =
                loadings.stream().map(name -> Page.lines(name, column - GAP)).toList();
        int tall = names.stream().mapToInt(List::size).max().orElse(0);
        for (int i = 0; i < tall; i++) {
            int down = i;
            lines.add(line(
                            i == 0 ? HEADING : "",
                            first,
                            column,
                            names.stream()
                                    .map(parts -> down < parts.size() ? parts.get(down) : "")
                                    .toList())
                    .stripTrailing());
        }
    }

    private static String line(String name, int first, int column, List<String> cells) {
        StringBuilder line = new StringBuilder(Words.shortened(name, first));
        line.append(" ".repeat(first - line.length()));
        cells.forEach(cell ->
                line.append(" ".repeat(Math.max(0, column - cell.length()))).append(cell));
        return line.toString();
    }
}
