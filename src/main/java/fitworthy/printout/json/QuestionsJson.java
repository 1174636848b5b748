package fitworthy.printout.json;

import fitworthy.advice.Arrangement;
import fitworthy.advice.MissingFigure;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Question;
import fitworthy.advice.Questions;
import fitworthy.advice.Settled;
import fitworthy.advice.Stakes;
import fitworthy.book.Severity;
import fitworthy.document.Json;
import fitworthy.printout.words.Wording;
import fitworthy.source.FieldAnswer;
import fitworthy.source.Words;
import java.io.PrintWriter;
import java.util.List;
import java.util.Set;

/** Questions as JSON, in the shape that docs/output.md describes; its records are written as they stand here. */
public final class QuestionsJson {

    /** Raised when a reader of the JSON would have to change. */
    private static final String SHAPE = "fitworthy-questions/1";

    private QuestionsJson() {}

    /** Prints all questions. @param settled null where nothing was answered */
    public static void print(
            PrintWriter out, String title, List<FieldAnswer> answers, Settled settled, Questions questions) {
        Json.print(
                out,
                new Written(
                        SHAPE,
                        title,
                        settled == null ? null : WrittenAnswers.of(answers, settled),
                        questions.questions().stream().map(WrittenQuestion::of).toList(),
                        questions.gaps().stream().map(Gap::of).toList()));
    }

    private record Written(
            String shape,
            String title,
            WrittenAnswers answered,
            List<WrittenQuestion> questions,
            List<Gap> gapsOfTheBook) {}

    /** What checks wait for: what somebody can bring, and what the rule book does not hold. */
    record Waiting(List<WrittenQuestion> figuresToBring, List<Gap> gapsOfTheBook) {
        static Waiting of(Arrangement arrangement) {
            return new Waiting(
                    arrangement.figuresToBring().stream()
                            .map(figure -> WrittenQuestion.of(Question.missing(figure)))
                            .toList(),
                    arrangement.gapsOfTheBook().stream().map(Gap::of).toList());
        }
    }

    /** @param worst null where it turns nothing */
    private record WrittenQuestion(
            List<String> fields,
            String state,
            String meaning,
            String find,
            String ask,
            BySeverity turns,
            Check worst,
            Set<String> rules) {

        static WrittenQuestion of(Question question) {
            return new WrittenQuestion(
                    question.paths(),
                    Words.hyphenated(question.state().name()),
                    question.figure().missing().meaning(),
                    question.figure().missing().find(),
                    Words.hyphenated(question.ask().name()),
                    BySeverity.of(question.turns()),
                    question.turns().worst().map(Check::of).orElse(null),
                    question.figure().rules());
        }
    }

    /** What the rule book does not hold. */
    private record Gap(String what, String meaning, BySeverity waiting, Set<String> rules) {
        static Gap of(MissingFigure gap) {
            return new Gap(gap.field(), gap.missing().meaning(), BySeverity.of(gap.stakes()), gap.rules());
        }
    }

    /** How many checks of each severity. */
    private record BySeverity(long stop, long change, long confirm, long note) {
        static BySeverity of(Stakes stakes) {
            return new BySeverity(
                    stakes.count(Severity.STOP),
                    stakes.count(Severity.CHANGE),
                    stakes.count(Severity.CONFIRM),
                    stakes.count(Severity.NOTE));
        }
    }

    private record Check(String severity, String id, String subject, String title) {
        static Check of(Judged judged) {
            return new Check(
                    Words.hyphenated(judged.card().severity().value().name()),
                    judged.id(),
                    judged.subject(),
                    Wording.title(judged));
        }
    }

    private record WrittenAnswers(
            List<Answer> written,
            List<Check> found,
            List<Check> noMore,
            List<Check> inOrder,
            List<Check> doesNotApply,
            List<Check> raised) {

        static WrittenAnswers of(List<FieldAnswer> answers, Settled settled) {
            return new WrittenAnswers(
                    answers.stream()
                            .map(answer -> new Answer(answer.field(), answer.value()))
                            .toList(),
                    checks(settled.found()),
                    checks(settled.cleared()),
                    checks(settled.inOrder()),
                    checks(settled.off()),
                    checks(settled.raised()));
        }

        private static List<Check> checks(Stakes stakes) {
            return stakes.checks().stream().map(Check::of).toList();
        }
    }

    private record Answer(String field, String value) {}
}
