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
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
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

    /** What was found out last of a sheet. */
    private record Asked(Answer answer, Questions questions) {}

    /**
     * One question.
     *
     * @param words what is asked, what hangs on it and who has the answer, a line each
     * @param boxes for the fields that a single value answers
     * @param elsewhere those that take more than that
     */
    public record Item(String title, List<String> words, List<AnswerBox> boxes, List<FieldLink> elsewhere) {}

    /** @param settled what the answer before came to, a line each; none where there was none */
    public record Shown(String address, List<String> settled, List<Item> items, int all) {}

    public QuestionsPane(Desk desk) {
        this.desk = desk;
    }

    @Override
    public String id() {
        return "asks";
    }

    @Override
    public boolean isNew(Seen seen) {
        return !seen.asked("answered").isEmpty() && seen.before().isPresent();
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
        List<String> settled = QuestionWords.lines(Settled.of(before.get(), now.get()));
        return html(seen.sheet(), seen.now(), left, seen.asked("questions"), settled);
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

    private static Item item(Answer now, Question question, List<AnswerBox> boxes) {
        List<String> elsewhere = new ArrayList<>(question.paths());
        boxes.forEach(box -> elsewhere.remove(box.path()));
        return new Item(
                QuestionWords.title(question) + QuestionWords.state(question),
                QuestionWords.lines(question),
                boxes,
                elsewhere.stream().map(path -> FieldLink.of(now, path)).toList());
    }
}
