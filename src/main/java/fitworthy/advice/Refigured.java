package fitworthy.advice;

import fitworthy.figures.Measures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.sheet.Sheet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The figures of an advice as they would be on another sheet. No rule is run for them. */
final class Refigured {

    private Refigured() {}

    /** What a measure is known by. */
    record Key(String name, String subject, String loadCase) {
        static Key of(Measure measure) {
            return new Key(measure.getName(), measure.getSubject(), measure.getLoadCase());
        }
    }

    /** The measures of a sheet that rules ask for, in the region, on the day and in the load cases of an advice. */
    static Map<Key, Measure> of(Advice advice, Sheet sheet) {
        Plan plan = plan(advice, sheet);
        return byKey(Stream.concat(
                Measures.of(plan).stream(),
                loadings(advice, plan).flatMap(loading -> Measures.asked(loading, advice::isAsked).stream())));
    }

    /** The load cases of an advice as they would be on another sheet. */
    static Stream<Loading> loadings(Advice advice, Sheet sheet) {
        return loadings(advice, plan(advice, sheet));
    }

    static Map<Key, Measure> byKey(Stream<Measure> measures) {
        return measures.collect(Collectors.toMap(Key::of, measure -> measure, (one, other) -> one));
    }

    private static Plan plan(Advice advice, Sheet sheet) {
        return new Plan(sheet, advice.book().tables(), RecordedPractice.of(advice.book(), advice.sheet())::figure);
    }

    private static Stream<Loading> loadings(Advice advice, Plan plan) {
        Set<String> looked = advice.facts().keySet();
        return Loading.all(plan).stream()
                .filter(loading -> looked.contains(loading.loadCase().name()));
    }
}
