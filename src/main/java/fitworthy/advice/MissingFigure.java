package fitworthy.advice;

import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.quantity.Missing;
import fitworthy.schema.FieldOrder;
import fitworthy.sheet.Guesses;
import fitworthy.sheet.Sheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A figure that checks wait for, or one whose guess they rest on. The same one that several parts lack is asked for once,
 * so that a long list of parts does not hide the figure that matters.
 *
 * @param field the field of the sheet, with the parts that lack it
 * @param fields what it means and where one finds it, for each part
 * @param stakes the checks that wait for it or rest on it
 */
public record MissingFigure(String field, List<Missing> fields, Stakes stakes) {

    /** What is the same of several parts that lack the same figure. @param list the list that the parts stand in */
    private record Shared(String list, String field, String meaning, String find, boolean asked, Set<String> rules) {}

    /** What outcomes lack, what most hangs on first; of as much in the order of the sheet. */
    static List<MissingFigure> of(List<NotAssessed> notAssessed, Sheet sheet) {
        Map<Missing, List<NotAssessed>> waiting = waiting(notAssessed);
        Map<Shared, List<Missing>> byShared = new LinkedHashMap<>();
        waiting.forEach((missing, outcomes) -> byShared.computeIfAbsent(
                        shared(missing, Stakes.of(outcomes.stream()).rules()), none -> new ArrayList<>())
                .add(missing));
        List<MissingFigure> figures = new ArrayList<>();
        byShared.forEach((shared, missing) -> figures.add(new MissingFigure(
                missing.size() == 1
                        ? missing.get(0).path()
                        : shared.list() + ": " + shared.field() + " of "
                                + String.join(
                                        ", ",
                                        missing.stream()
                                                .map(MissingFigure::part)
                                                .toList()),
                missing,
                Stakes.of(missing.stream().flatMap(one -> waiting.get(one).stream())))));
        figures.sort(Comparator.comparing(MissingFigure::stakes, Stakes.MOST_FIRST)
                .thenComparing(inOrderOf(sheet, waiting.keySet())));
        return figures;
    }

    /**
     * The guesses on which something rests, what most rests on first; of as much in the order of the sheet.
     *
     * @param found whether what is found on them counts, beside what is in order if they hold
     */
    static List<MissingFigure> guessed(Advice advice, boolean found) {
        Map<Missing, List<Outcome>> resting = new LinkedHashMap<>();
        Guesses.of(advice.sheet()).forEach(guess -> resting.put(guess, new ArrayList<>()));
        if (found) {
            advice.findings().forEach(finding -> advice.guesses()
                    .getOrDefault(finding.key(), List.of())
                    .forEach(guess -> resting.get(guess).add(finding)));
        }
        advice.held().forEach(held -> held.guesses()
                .forEach(guess -> resting.get(guess).add(held)));
        return resting.entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .map(entry -> new MissingFigure(
                        entry.getKey().path(), List.of(entry.getKey()), Stakes.of(entry.getValue().stream())))
                .sorted(Comparator.comparing(MissingFigure::stakes, Stakes.MOST_FIRST))
                .toList();
    }

    private static Comparator<MissingFigure> inOrderOf(Sheet sheet, Set<Missing> missing) {
        Map<String, Integer> order =
                FieldOrder.of(sheet, missing.stream().map(Missing::path).collect(Collectors.toSet()));
        return Comparator.comparingInt(
                figure -> order.getOrDefault(figure.missing().path(), Integer.MAX_VALUE));
    }

    /** It for the first part; what it means and where one finds it is the same for all. */
    public Missing missing() {
        return fields.get(0);
    }

    /** Ids of the rules that wait for it or rest on it. */
    public Set<String> rules() {
        return stakes.rules();
    }

    /** Every missing figure with what waits for it. */
    private static Map<Missing, List<NotAssessed>> waiting(List<NotAssessed> notAssessed) {
        Map<Missing, List<NotAssessed>> waiting = new LinkedHashMap<>();
        notAssessed.forEach(outcome -> outcome.waitsFor()
                .forEach(missing -> waiting.computeIfAbsent(missing, none -> new ArrayList<>())
                        .add(outcome)));
        return waiting;
    }

    private static Shared shared(Missing missing, Set<String> rules) {
        String path = missing.path();
        boolean named = path.indexOf('.') < path.lastIndexOf('.');
        return new Shared(
                named ? path.substring(0, path.indexOf('.')) : path,
                named ? path.substring(path.lastIndexOf('.') + 1) : "",
                missing.meaning(),
                missing.find(),
                missing.asked(),
                rules);
    }

    private static String part(Missing missing) {
        String path = missing.path();
        return path.substring(path.indexOf('.') + 1, path.lastIndexOf('.'));
    }
}
