package fitworthy.counter.told;

import fitworthy.advice.Advice;
import fitworthy.advice.Question;
import fitworthy.advice.Questions;
import fitworthy.advice.Settled;
import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Desk;
import fitworthy.counter.desk.OpenSheet;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Pane;
import fitworthy.counter.page.Routes;
import fitworthy.counter.page.Sent;
import fitworthy.printout.QuestionWords;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.GuessSpread;
import fitworthy.quantity.Mark;
import fitworthy.source.Digests;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What is to be asked, by what the answer can turn, with a box for each answer. It is fetched after the page and after
 * a pause in typing, since finding out what a guess can turn takes longer than a change may.
 */
public final class QuestionsPane implements Pane, Routes {

    /** How many are shown until somebody asks for all. */
    private static final int FIRST = 5;

    private final Desk desk;
    private final Map<String, Asked> asked = new ConcurrentHashMap<>();
    private final Map<String, Given> given = new ConcurrentHashMap<>();

    /** What was found out last of a sheet. */
    private record Asked(Answer answer, Questions questions) {}

    /**
     * The answer that was given last to a question of a sheet, perhaps more than once in a row.
     *
     * @param path of its field
     * @param before what the sheet came to before it was first given
     * @param now the version since
     */
    private record Given(String path, Advice before, String now) {

        /** The same given once more, or another one. @param before what the sheet came to before it was given now */
        static Given of(Given last, String path, Answer before, Answer now) {
            boolean again =
                    last != null && last.path().equals(path) && last.now().equals(before.version());
            return new Given(path, again ? last.before() : before.advice().orElseThrow(), now.version());
        }
    }

    /**
     * One question.
     *
     * @param id of its element, the same wherever it stands in the list
     * @param words what is asked, what hangs on it and who has the answer, a line each
     * @param boxes for the fields that a single value answers
     * @param elsewhere those that take more than that
     */
    public record Item(String id, String title, List<String> words, List<AnswerBox> boxes, List<FieldLink> elsewhere) {}

    /** @param settled what the answer before came to, a line each; none where there was none */
    public record Shown(String address, List<String> settled, List<Item> items, int all) {}

    public QuestionsPane(Desk desk) {
        this.desk = desk;
    }

    @Override
    public String id() {
        return "asks";
    }

    /** What is written already settles nothing: what is told of the answer before stays. */
    @Override
    public boolean isNew(Seen seen) {
        return !seen.asked("answered").isEmpty()
                && seen.before()
                        .filter(before -> !before.version().equals(seen.now().version()))
                        .isPresent();
    }

    /** On a new page nothing yet; after an answer what it settled, with those that are left until they are found out anew. */
    @Override
    public String html(Seen seen) {
        Optional<Advice> before = seen.before().flatMap(Answer::advice);
        Optional<Advice> now = seen.now().advice();
        Asked last = asked.get(seen.sheet().name());
        if (before.isEmpty() || now.isEmpty() || last == null) {
            return Pages.html("told/waiting.jte", Map.of());
        }
        List<Question> left = last.questions().questions().stream()
                .filter(question -> !question.paths().contains(seen.asked("path")))
                .toList();
        List<String> settled = isNew(seen) ? QuestionWords.lines(Settled.of(beforeFirst(seen), now.get())) : List.of();
        return html(seen.sheet(), seen.now(), left, seen.asked("questions"), settled);
    }

    private Advice beforeFirst(Seen seen) {
        return given.compute(
                        seen.sheet().name(),
                        (name, last) ->
                                Given.of(last, seen.asked("path"), seen.before().orElseThrow(), seen.now()))
                .before();
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/sheets/{sheet}/questions", this::show);
    }

    /** Those of the sheet as its file says it now; {@code questions=all} for more than the first. */
    private void show(Context sent) {
        OpenSheet sheet = Sent.sheet(sent, desk);
        Optional<Asked> found = find(sheet);
        sent.html(found.map(now -> html(
                        sheet, now.answer(), now.questions().questions(), Sent.query(sent, "questions"), List.of()))
                .orElseGet(() -> Pages.html("told/waiting.jte", Map.of())));
    }

    /** One sheet's at a time: who waited here meanwhile finds what the sheet says by then. */
    private synchronized Optional<Asked> find(OpenSheet sheet) {
        Answer now = sheet.now();
        Optional<Asked> found = now.questions().map(questions -> new Asked(now, questions));
        found.ifPresent(questions -> asked.put(sheet.name(), questions));
        return found;
    }

    private static String html(
            OpenSheet sheet, Answer now, List<Question> questions, String which, List<String> settled) {
        AnswerBoxes boxes = AnswerBoxes.of(now);
        List<Item> items = questions.stream()
                .limit(which.equals("all") ? questions.size() : FIRST)
                .map(question -> item(now, question, boxes.of(question)))
                .toList();
        return Pages.html(
                "told/questions.jte",
                Map.of("shown", new Shown(Addresses.of(sheet), settled, items, questions.size())));
    }

    /** Whether a title has said a line already. */
    private static boolean says(String title, String line) {
        return (title + ".").toLowerCase(Locale.ROOT).endsWith(line.toLowerCase(Locale.ROOT));
    }

    /** What a trailer's plate allows is no mass of it that anybody weighed, but the guess at it that errs on the safe side. */
    private static Optional<String> plate(Answer now) {
        return now.read()
                .map(read -> NodePath.of("trailer", "rated").in(read.tree()))
                .filter(Node.Scalar.class::isInstance)
                .map(node -> Mark.read(((Node.Scalar) node).text()))
                .filter(rated -> !rated.isOpen())
                .map(rated -> "Its plate says " + rated.text()
                        + ": the most that it may weigh, not what it weighs. Where nobody has weighed it put in about "
                        + rated.text() + ", which counts as a guess and is taken to be "
                        + Math.round(100
                                * GuessSpread.of(Figure.of(1), Dimension.MASS, false)
                                        .tolerance()) + " % off either way. Who knows it closer adds how far off"
                        + " it may be, such as +/- 5 %.");
    }

    private static Item item(Answer now, Question question, List<AnswerBox> boxes) {
        List<String> elsewhere = new ArrayList<>(question.paths());
        List<String> words = new ArrayList<>(QuestionWords.lines(question));
        if (elsewhere.contains("trailer.mass")) {
            plate(now).ifPresent(words::add);
        }
        boxes.forEach(box -> elsewhere.remove(box.path()));
        String title = QuestionWords.title(question);
        return new Item(
                "asked-" + Digests.of(String.join(" ", question.paths())).substring(0, 12),
                title + QuestionWords.state(question),
                words.stream().filter(line -> !says(title, line)).toList(),
                boxes,
                elsewhere.stream().map(path -> FieldLink.of(now, path)).toList());
    }
}
