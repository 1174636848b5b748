package fitworthy.printout;

import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Ranked;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Worked;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.Working;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.Wording;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** How figures were worked out, as blocks of a report. */
final class Workings {

    /** Lines of one working that are worth showing once only. */
    private static final int MANY = 6;

    /** What a measure is known by. */
    private record Key(String name, String subject, String loadCase) {}

    private Workings() {}

    /** How the figures of the findings were worked out, each measure once. */
    static List<Block> blocks(List<Ranked> ranked) {
        Map<Key, Measure> measures = new LinkedHashMap<>();
        Map<Key, Set<String>> numbers = new LinkedHashMap<>();
        Map<Key, String> values = new LinkedHashMap<>();
        for (Ranked one : ranked) {
            for (Finding finding : one.group().outcomes()) {
                for (Measure measure : finding.evidence()) {
                    if (!measure.workings().isEmpty()) {
                        Key key = new Key(measure.getName(), measure.getSubject(), measure.getLoadCase());
                        measures.putIfAbsent(key, measure);
                        values.putIfAbsent(key, value(finding, measure));
                        numbers.computeIfAbsent(key, none -> new LinkedHashSet<>())
                                .add(one.number());
                    }
                }
            }
        }
        List<Block> blocks = new ArrayList<>();
        Set<List<String>> shown = new HashSet<>();
        measures.forEach((key, measure) -> blocks.add(new Worked(
                Words.capital(measure.kind().meaning()) + " ["
                        + measure.getSubject() + (measure.getLoadCase().isEmpty() ? "" : ", " + measure.getLoadCase())
                        + "] = "
                        + values.get(key) + "; finding "
                        + String.join(", ", numbers.get(key)),
                lines(measure, shown))));
        return blocks;
    }

    /** As the finding tells it where it judges that. */
    private static String value(Finding finding, Measure measure) {
        return finding.comparison()
                .filter(compared -> measure == finding.judged().measure())
                .map(compared -> Digits.quantity(
                        Digits.asPrinted(finding.judged(), compared).value(), Digits.kind(finding.judged(), compared)))
                .orElseGet(() -> Wording.value(measure));
    }

    private static List<String> lines(Measure measure, Set<List<String>> shown) {
        List<String> lines = new ArrayList<>();
        for (Working working : measure.workings()) {
            List<String> own = working.lines();
            if (working.listsMasses()) {
                lines.add(own.get(0) + "; the masses stand in the mass sheet"
                        + (measure.getLoadCase().isEmpty() ? "" : ", loading '" + measure.getLoadCase() + "'"));
            } else if (own.size() > MANY && !shown.add(own)) {
                lines.add("as above: " + own.get(0));
            } else {
                lines.addAll(own);
            }
        }
        return lines;
    }
}
