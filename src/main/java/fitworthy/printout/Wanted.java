package fitworthy.printout;

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
 * @param what the field, with the parts that lack it
 * @param missing what it means and where one finds it
 * @param rules ids of the rules that wait for it
 */
record Wanted(String what, Missing missing, Set<String> rules) {

    private record Question(String list, String field, String meaning, String find, Set<String> rules) {}

    static List<Wanted> of(List<NotAssessed> notAssessed) {
        Map<Question, List<Missing>> questions = new LinkedHashMap<>();
        rules(notAssessed).forEach((missing, rules) -> questions
                .computeIfAbsent(question(missing, rules), key -> new ArrayList<>())
                .add(missing));
        List<Wanted> wanted = new ArrayList<>();
        questions.forEach((question, several) -> wanted.add(new Wanted(
                several.size() == 1
                        ? several.get(0).path()
                        : question.list() + ": " + question.field() + " of "
                                + String.join(
                                        ", ", several.stream().map(Wanted::name).toList()),
                several.get(0),
                question.rules())));
        return wanted;
    }

    /** Every missing figure with the ids of the rules that wait for it. */
    static Map<Missing, Set<String>> rules(List<NotAssessed> notAssessed) {
        Map<Missing, Set<String>> rules = new LinkedHashMap<>();
        notAssessed.forEach(
                each -> each.missing().forEach(missing -> rules.computeIfAbsent(missing, key -> new TreeSet<>())
                        .add(each.judged().id())));
        return rules;
    }

    private static Question question(Missing missing, Set<String> rules) {
        String path = missing.path();
        boolean named = path.indexOf('.') < path.lastIndexOf('.');
        return new Question(
                named ? path.substring(0, path.indexOf('.')) : path,
                named ? path.substring(path.lastIndexOf('.') + 1) : "",
                missing.meaning(),
                missing.find(),
                rules);
    }

    private static String name(Missing missing) {
        String path = missing.path();
        return path.substring(path.indexOf('.') + 1, path.lastIndexOf('.'));
    }
}
