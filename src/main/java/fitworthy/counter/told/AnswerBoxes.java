package fitworthy.counter.told;

import fitworthy.advice.Question;
import fitworthy.counter.desk.Answer;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Mark;
import fitworthy.schema.ChoiceWords;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.FieldSchema.Content;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Sheet;
import fitworthy.source.Digests;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.usual.Filling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The boxes for the answers to questions on one sheet. */
final class AnswerBoxes {

    private final Node.Mapping filled;

    private AnswerBoxes(Node.Mapping filled) {
        this.filled = filled;
    }

    /** @param answer to a sheet without faults */
    static AnswerBoxes of(Answer answer) {
        Node.Mapping tree = answer.read().orElseThrow().tree();
        return new AnswerBoxes(
                Filling.filled(Filling.withItems(tree), answer.view().book(), new ArrayList<>()));
    }

    /** One for each field that a single value can answer; a part or a group is planned, not answered. */
    List<AnswerBox> of(Question question) {
        return question.paths().stream()
                .flatMap(path -> box(path, question.state() == Question.State.GUESSED).stream())
                .toList();
    }

    private Optional<AnswerBox> box(String path, boolean guessed) {
        NodePath at = NodePath.find(path, filled);
        return Optional.ofNullable(at)
                .flatMap(found -> RecordSchema.at(Sheet.class, found).stream()
                        .filter(field -> !field.example().isEmpty())
                        .findFirst())
                .map(field -> new AnswerBox(
                        id(path),
                        path,
                        guessed && at.in(filled) instanceof Node.Scalar word
                                ? Mark.read(word.text()).text()
                                : "",
                        field.content() == Content.CHOICE ? ChoiceWords.of(field.type()) : List.of(),
                        unit(field),
                        field.example()));
    }

    /** The same on every page, so that what is typed there can be found again. */
    private static String id(String path) {
        return "answer-" + Digests.of(path).substring(0, 12);
    }

    private static String unit(FieldSchema field) {
        return field.content() == Content.FIGURE && field.description().in() != Dimension.COUNT
                ? field.example().replaceFirst("^.*\\d\\s*", "")
                : "";
    }
}
