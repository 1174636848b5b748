package fitworthy.proof;

import fitworthy.advice.Advice;
import fitworthy.figures.measure.Measure;
import fitworthy.printout.words.Wording;
import fitworthy.proof.Cases.ExpectedFigure;
import fitworthy.quantity.Missing;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Whether the figures of a case come out as it says. */
final class CaseFigures {

    /** What the measure that tells what governs another ends with. */
    private static final String LIMIT = "-limit";

    private CaseFigures() {}

    /** Adds a line for each that comes out otherwise. */
    static void look(List<ExpectedFigure> figures, Advice advice, List<String> problems) {
        if (figures.isEmpty()) {
            return;
        }
        Map<String, List<Measure>> measures = advice.measures();
        for (ExpectedFigure expected : figures) {
            String name = expected.measure() + " of " + expected.subject()
                    + (expected.in().isEmpty() ? "" : ", " + expected.in());
            Optional<Measure> found = measure(measures, expected, "");
            if (found.isEmpty()) {
                problems.add(name + ": expected, but no such figure is made; there is " + made(measures, expected));
                continue;
            }
            differ(name, "value", expected.value(), Wording.value(found.get()), problems);
            differ(name, "tolerance", expected.tolerance(), Wording.tolerance(found.get()), problems);
            differ(
                    name,
                    "governing limit",
                    expected.governs(),
                    measure(measures, expected, LIMIT).map(Wording::value).orElse("none"),
                    problems);
            List<String> missing =
                    found.get().missing().stream().map(Missing::path).toList();
            if (!expected.missing().isEmpty() && !missing.contains(expected.missing())) {
                problems.add(name + ": expected not known for want of " + expected.missing() + ", but it lacks "
                        + (missing.isEmpty() ? "nothing" : String.join(", ", missing)));
            }
        }
    }

    private static Optional<Measure> measure(
            Map<String, List<Measure>> measures, ExpectedFigure expected, String more) {
        return measures.entrySet().stream()
                .filter(loading -> expected.in().isEmpty() || loading.getKey().equals(expected.in()))
                .flatMap(loading -> loading.getValue().stream())
                .filter(measure -> measure.getName().equals(expected.measure() + more)
                        && measure.getSubject().equals(expected.subject()))
                .findFirst();
    }

    private static String made(Map<String, List<Measure>> measures, ExpectedFigure expected) {
        String subjects = measures.values().stream()
                .flatMap(List::stream)
                .filter(measure -> measure.getName().equals(expected.measure()))
                .map(Measure::getSubject)
                .distinct()
                .collect(Collectors.joining(", "));
        return subjects.isEmpty() ? "none of this measure" : "one of " + subjects;
    }

    private static void differ(String name, String what, String expected, String got, List<String> problems) {
        if (!expected.isEmpty() && !expected.equals(got)) {
            problems.add(name + ": " + what + " expected " + expected + ", got " + got);
        }
    }
}
