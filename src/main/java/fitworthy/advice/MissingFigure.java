package fitworthy.advice;

import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.quantity.Missing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A figure to bring before a check can be made. The same one of several parts is asked for once, so that a long list of
 * parts does not hide the figure that matters.
 *
 * @param field the field of the sheet, with the parts that lack it
 * @param missing what it means and where one finds it
 * @param rules ids of the rules that wait for it
 */
public record MissingFigure(String field, Missing missing, Set<String> rules) {

    /** What is the same of several parts that lack the same figure. @param list the list that the parts stand in */
    private record Shared(String list, String field, String meaning, String find, Set<String> rules) {}

    static List<MissingFigure> of(List<NotAssessed> notAssessed) {
        Map<Shared, List<Missing>> byShared = new LinkedHashMap<>();
        rules(notAssessed)
                .forEach((missing, rules) -> byShared.computeIfAbsent(shared(missing, rules), none -> new ArrayList<>())
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
                missing.get(0),
                shared.rules())));
        return figures;
    }

    /** Every missing figure with the ids of the rules that wait for it. */
    static Map<Missing, Set<String>> rules(List<NotAssessed> notAssessed) {
        Map<Missing, Set<String>> rules = new LinkedHashMap<>();
        notAssessed.forEach(
                outcome -> outcome.waitsFor().forEach(missing -> rules.computeIfAbsent(missing, none -> new TreeSet<>())
                        .add(outcome.judged().id())));
        return rules;
    }

    private static Shared shared(Missing missing, Set<String> rules) {
        String path = missing.path();
        boolean named = path.indexOf('.') < path.lastIndexOf('.');
        return new Shared(
                named ? path.substring(0, path.indexOf('.')) : path,
                named ? path.substring(path.lastIndexOf('.') + 1) : "",
                missing.meaning(),
                missing.find(),
                rules);
    }

    private static String part(Missing missing) {
        String path = missing.path();
        return path.substring(path.indexOf('.') + 1, path.lastIndexOf('.'));
    }
}
