package fitworthy.advice;

import fitworthy.engine.RuleEngine;
import fitworthy.schema.FieldOrder;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is to be asked about a sheet, by what the answer can turn.
 *
 * @param questions what is missing or guessed, what turns most first; of as much what most waits for or rests on, then
 *     in the order of the sheet
 * @param gaps what the rule book does not hold, which is no question to anybody
 */
public record Questions(List<Question> questions, List<MissingFigure> gaps) {

    /**
     * The questions that advice leaves.
     *
     * @param engine what the advice was given by
     */
    public static Questions of(RuleEngine engine, Advice advice) {
        Arrangement arrangement = Arrangement.of(advice);
        Turning turning = new Turning(engine, advice);
        List<Question> questions = Stream.concat(
                        arrangement.figuresToBring().stream().map(Question::missing),
                        MissingFigure.guessed(advice, true).stream()
                                .map(guess -> Question.guessed(guess, turning.by(guess.missing(), guess.stakes()))))
                .toList();
        return new Questions(
                questions.stream()
                        .sorted(Comparator.comparing(Question::turns, Stakes.MOST_FIRST)
                                .thenComparing(question -> question.figure().stakes(), Stakes.MOST_FIRST)
                                .thenComparing(inOrderOf(advice, questions)))
                        .toList(),
                arrangement.gapsOfTheBook());
    }

    private static Comparator<Question> inOrderOf(Advice advice, List<Question> questions) {
        Set<String> paths = questions.stream()
                .flatMap(question -> question.paths().stream())
                .collect(Collectors.toSet());
        Map<String, Integer> order = FieldOrder.of(advice.sheet(), paths);
        return Comparator.comparingInt(
                question -> order.getOrDefault(question.paths().get(0), Integer.MAX_VALUE));
    }
}
