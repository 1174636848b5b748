package fitworthy.printout;

import fitworthy.advice.MissingFigure;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Question;
import fitworthy.advice.Question.State;
import fitworthy.advice.Questions;
import fitworthy.advice.Settled;
import fitworthy.advice.Stakes;
import fitworthy.document.Page;
import fitworthy.printout.words.SeverityWords;
import fitworthy.printout.words.Wording;
import fitworthy.source.FieldAnswer;
import fitworthy.source.Words;
import java.io.PrintWriter;
import java.util.ArrayList;
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
            page.wrapped(0, "None: every check that applies had its information, and none rests on a guess.");
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
        MissingFigure figure = question.figure();
        page.hanging(number, figure.field() + state(question.state()));
        page.wrapped(INDENT, Words.capital(figure.missing().meaning()) + ".");
        if (question.state() != State.GUESSED) {
            page.wrapped(INDENT, "Decides " + stakes(question.turns()) + ".");
        } else {
            page.wrapped(INDENT, turns(question.turns()) + " " + resting(figure.stakes()) + ".");
        }
        page.wrapped(
                INDENT,
                "Find it: " + figure.missing().find() + ". Ask: "
                        + question.ask().words() + ".");
        page.blank();
    }

    private static String state(State state) {
        return switch (state) {
            case MISSING -> "";
            case ASKED -> " (already asked)";
            case GUESSED -> " (a guess)";
        };
    }

    private static String turns(Stakes turns) {
        return turns.isNothing() ? "Changes nothing within its spread." : "Can change " + stakes(turns) + ".";
    }

    private static String resting(Stakes rests) {
        int checks = rests.checks().size();
        return checks + (checks == 1 ? " check rests" : " checks rest") + " on it";
    }

    /** How many of which severity, and which is the worst. */
    private static String stakes(Stakes stakes) {
        String counts = SeverityWords.list(stakes::count);
        return stakes.worst()
                .map(worst -> counts + (stakes.checks().size() == 1 ? ": " : "; first ") + "whether \""
                        + Wording.title(worst) + "\" (" + worst.id() + ")")
                .orElse(counts);
    }

    private static String named(Judged judged) {
        return Wording.title(judged) + " (" + judged.id() + ")";
    }

    /** Prints what was written and what it settles. */
    public void settled(List<FieldAnswer> answers, Settled settled) {
        answers.forEach(answer -> page.wrapped(0, "Written: " + answer.field() + ": " + answer.value()));
        int count = settled.count();
        List<String> parts = new ArrayList<>();
        add(parts, settled.inOrder(), "in order");
        add(parts, settled.off(), "with nothing to check");
        add(parts, settled.found(), "found: " + SeverityWords.list(settled.found()::count));
        page.wrapped(
                0,
                count == 0
                        ? "It settles no check by itself."
                        : "It settles " + count + (count == 1 ? " check: " : " checks: ") + String.join(", ", parts)
                                + ".");
        settled.found()
                .checks()
                .forEach(judged -> page.hanging("  " + judged.card().severity().value() + " ", named(judged)));
        settled.cleared().checks().forEach(judged -> page.hanging("  no more: ", named(judged)));
        if (!settled.raised().isNothing()) {
            int raised = settled.raised().checks().size();
            page.wrapped(
                    0,
                    raised + (raised == 1 ? " more check waits" : " more checks wait")
                            + " for information or rests on a guess.");
        }
        page.blank();
        page.flush();
    }

    private static void add(List<String> parts, Stakes stakes, String words) {
        if (!stakes.isNothing()) {
            parts.add(stakes.checks().size() + " " + words);
        }
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
