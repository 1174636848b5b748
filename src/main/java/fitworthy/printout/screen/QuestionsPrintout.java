package fitworthy.printout.screen;

import fitworthy.advice.MissingFigure;
import fitworthy.advice.Question;
import fitworthy.advice.Questions;
import fitworthy.advice.Settled;
import fitworthy.document.Page;
import fitworthy.printout.CheckTables;
import fitworthy.printout.QuestionWords;
import fitworthy.source.FieldAnswer;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;

/** Questions as plain text, at most 80 columns wide. */
public final class QuestionsPrintout {

    private static final int FIRST = 10;
    private static final int INDENT = 4;

    private final Page page;

    public QuestionsPrintout(PrintWriter out) {
        this.page = new Page(out);
    }

    /**
     * Prints what is to be asked about a sheet.
     *
     * @param everything whether to print more than the first ten
     */
    public void print(String title, Questions questions, boolean everything) {
        List<Question> all = questions.questions();
        page.wrapped(0, "Questions on " + title + ", the most important first");
        page.rule();
        if (all.isEmpty()) {
            page.wrapped(0, QuestionWords.NONE);
        }
        long shown = everything ? all.size() : Math.min(FIRST, all.size());
        for (int i = 0; i < shown; i++) {
            question(String.format(Locale.ROOT, "%2d. ", i + 1), all.get(i));
        }
        if (shown < all.size()) {
            page.wrapped(0, (all.size() - shown) + " more (--all lists them).");
        }
        gaps(questions.gaps(), everything);
        page.flush();
    }

    private void gaps(List<MissingFigure> gaps, boolean everything) {
        if (gaps.isEmpty()) {
            return;
        }
        page.wrapped(
                0,
                CheckTables.GAPS + ": " + gaps.size() + (gaps.size() == 1 ? " value" : " values")
                        + (everything ? ":" : " (--all lists them)."));
        if (everything) {
            gaps.forEach(gap -> page.hanging("  - ", gap.missing().meaning() + "."));
        }
    }

    /** One question without a number. */
    public void question(Question question) {
        question("", question);
    }

    private void question(String number, Question question) {
        page.hanging(number, QuestionWords.field(question));
        QuestionWords.lines(question).forEach(line -> page.wrapped(INDENT, line));
        page.blank();
    }

    /** Prints what was written and what it settles. */
    public void settled(List<FieldAnswer> answers, Settled settled) {
        answers.forEach(answer -> page.wrapped(0, "Written: " + answer.field() + ": " + answer.value()));
        page.wrapped(0, QuestionWords.settled(settled));
        settled.found()
                .checks()
                .forEach(judged ->
                        page.hanging("  " + judged.card().severity().value() + " ", QuestionWords.named(judged)));
        settled.foundOnGuess()
                .checks()
                .forEach(judged -> page.hanging(
                        "  " + judged.card().severity().value() + " on a guess ", QuestionWords.named(judged)));
        settled.cleared().checks().forEach(judged -> page.hanging("  no more: ", QuestionWords.named(judged)));
        if (!settled.raised().isNothing()) {
            page.wrapped(0, QuestionWords.raised(settled) + ".");
        }
        page.blank();
        page.flush();
    }

    /** Prints the question that is left with most worth, and how many there are. */
    public void next(Questions questions) {
        if (questions.questions().isEmpty()) {
            page.wrapped(0, "No question is left.");
        } else {
            page.wrapped(0, "Next of " + questions.questions().size() + ":");
            question(questions.questions().get(0));
        }
        page.flush();
    }

    /** Prints how one answers. */
    public void howToAnswer() {
        page.wrapped(0, "Type the answer; an empty line passes on, q ends. Each answer is written at once.");
        page.blank();
        page.flush();
    }

    /** Prints that all were asked. @param passed how many were passed over */
    public void nothingMore(int passed) {
        page.wrapped(
                0, passed == 0 ? "No question is left." : "No other question is left; " + passed + " passed over.");
        page.flush();
    }
}
