package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Judged;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.printout.words.Wording;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What is left of each limit of the vehicle, a load case a column.
 *
 * @param cases names of the load cases
 * @param rows by the limit's name, what is left in each case; a case is absent where it was not assessed
 * @param least by the limit's name, what is left in the case that leaves least
 */
record MarginTable(List<String> cases, Map<String, Map<String, String>> rows, Map<String, String> least) {

    static MarginTable of(Advice advice) {
        Map<String, Map<String, Double>> margins = new TreeMap<>();
        Map<String, MeasureKind> kinds = new HashMap<>();
        advice.findings().forEach(each -> add(margins, kinds, each.judged(), each.comparison()));
        advice.met().forEach(each -> add(margins, kinds, each.judged(), each.comparison()));
        Map<String, Map<String, String>> rows = new LinkedHashMap<>();
        Map<String, String> least = new LinkedHashMap<>();
        margins.forEach((name, byCase) -> {
            Map<String, String> row = new LinkedHashMap<>();
            byCase.forEach((loadCase, margin) -> row.put(loadCase, Wording.quantity(margin, kinds.get(name))));
            rows.put(name, row);
            least.put(name, Wording.quantity(Collections.min(byCase.values()), kinds.get(name)));
        });
        return new MarginTable(
                advice.loadings().stream().map(each -> each.loadCase().name()).toList(), rows, least);
    }

    private static void add(
            Map<String, Map<String, Double>> margins,
            Map<String, MeasureKind> kinds,
            Judged judged,
            Optional<Comparison> comparison) {
        Measure measure = judged.measure();
        // Masses alone: what every loading is held against, in few enough rows to be read.
        if (measure.getName().startsWith("mass.")
                && judged.card().againstLimit()
                && comparison.isPresent()
                && !measure.getLoadCase().isEmpty()) {
            String name = judged.subject() + ": " + measure.kind().limitMeaning();
            kinds.put(name, measure.kind());
            margins.computeIfAbsent(name, key -> new LinkedHashMap<>())
                    .putIfAbsent(judged.loadCase(), comparison.get().margin());
        }
    }

    /** Its lines, heading first; none where the columns do not fit in {@code width}. */
    List<String> lines(int width) {
        int column = Math.max(9, cases.stream().mapToInt(String::length).max().orElse(0)) + 2;
        int first = width - column * cases.size();
        if (rows.isEmpty() || first < 30) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        lines.add(line("LEFT OF EACH LIMIT", first, column, cases));
        rows.forEach((name, byCase) -> lines.add(line(
                name,
                first,
                column,
                cases.stream().map(each -> byCase.getOrDefault(each, "-")).toList())));
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
