package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Margin;
import fitworthy.printout.words.Wording;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;

/** What is left of each limit of the vehicle, a load case a column. */
final class MarginTable {

    private MarginTable() {}

    /** The loadings that have a column. */
    static List<String> loadings(Advice advice) {
        return advice.loadings().stream()
                .map(loading -> loading.loadCase().name())
                .toList();
    }

    /** What is left of a limit in each of some loadings. */
    static List<String> cells(Margin margin, List<String> loadings) {
        return loadings.stream()
                .map(loading -> margin.left().containsKey(loading)
                        ? Wording.margin(margin.left().get(loading), margin.kind())
                        : "-")
                .toList();
    }

    /** What is left of a limit, by its name, in the loading that leaves least; a dash where nothing is known of it. */
    static String least(Arrangement arrangement, String limit) {
        return arrangement.margins().stream()
                .filter(margin -> margin.limit().equals(limit))
                .map(margin -> Wording.margin(margin.least(), margin.kind()))
                .findFirst()
                .orElse("-");
    }

    /** The table as lines, heading first; none where the columns do not fit in {@code width}. */
    static List<String> lines(Arrangement arrangement, int width) {
        List<String> loadings = loadings(arrangement.advice());
        List<Margin> margins = arrangement.margins();
        int column =
                Math.max(9, loadings.stream().mapToInt(String::length).max().orElse(0)) + 2;
        int first = width - column * loadings.size();
        if (margins.isEmpty() || first < 30) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        lines.add(line("LEFT OF EACH LIMIT", first, column, loadings));
        margins.forEach(margin -> lines.add(line(margin.limit(), first, column, cells(margin, loadings))));
        return lines;
    }

    private static String line(String name, int first, int column, List<String> cells) {
        StringBuilder line = new StringBuilder(Words.shortened(name, first));
        line.append(" ".repeat(first - line.length()));
        cells.forEach(cell ->
                line.append(" ".repeat(Math.max(0, column - cell.length()))).append(cell));
        return line.toString();
    }
}
