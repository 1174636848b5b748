package fitworthy.printout;

import fitworthy.advice.MissingFigure;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Question;
import fitworthy.advice.Question.State;
import fitworthy.advice.Settled;
import fitworthy.advice.Stakes;
import fitworthy.printout.words.FieldWords;
import fitworthy.printout.words.SeverityWords;
import fitworthy.printout.words.Wording;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A question in words: what it is about, what the answer can turn, and who has it; and what an answer settled. */
public final class QuestionWords {

    /** That nothing is to be asked. */
    public static final String NONE = "None: every check that applies had its information, and none rests on a guess.";

    /** Characters of the parts that lack the same answer. */
    private static final int MOST_NAMED = 100;

    private QuestionWords() {}

    /** The field of the sheet, of every part that lacks it as an answer is given to it, and what the sheet has of it. */
    public static String field(Question question) {
        return String.join(", ", question.paths()) + state(question);
    }

    /** The same in words: the parts that lack it, and what it is. */
    public static String title(Question question) {
        MissingFigure figure = question.figure();
        String of = Words.shortened(
                figure.fields().stream()
                        .map(field -> FieldWords.owner(field.path()))
                        .collect(Collectors.joining(", ")),
                MOST_NAMED);
        String what = FieldWords.what(figure.missing());
        return Words.capital(of.isEmpty() ? what : of + ": " + what);
    }

    /** What is asked, what hangs on it, and where it is found by whom; a line each. */
    public static List<String> lines(Question question) {
        MissingFigure figure = question.figure();
        return List.of(
                Words.capital(figure.missing().meaning()) + ".",
                question.state() != State.GUESSED
                        ? "Decides " + stakes(question.turns()) + "."
                        : turns(question.turns()) + " " + resting(figure.stakes()) + ".",
                (figure.missing().find().equals(question.ask().words())
                                ? ""
                                : "Find it: " + figure.missing().find() + ". ")
                        + "Ask: " + question.ask().words() + ".");
    }

    /** Behind what is asked, in brackets, that somebody asked already or guessed; empty for what is just missing. */
    public static String state(Question question) {
        return switch (question.state()) {
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

    /** A check by its title and rule. */
    public static String named(Judged judged) {
        return Wording.title(judged) + " (" + judged.id() + ")";
    }

    /** What became of checks: how many were settled and how, and what else changed with the answer. */
    public static String settled(Settled settled) {
        List<String> told = new ArrayList<>();
        if (settled.count() > 0) {
            told.add(forGood(settled));
        }
        int made = settled.made().checks().size();
        if (made > 0) {
            told.add(made
                    + (made == 1
                            ? " check that waited for information is made now, but rests on guesses."
                            : " checks that waited for information are made now, but rest on guesses."));
        }
        return told.isEmpty() ? without(settled) : String.join(" ", told);
    }

    /** What is said where no check was settled, and none made. */
    private static String without(Settled settled) {
        int turned = settled.cleared().checks().size()
                + settled.foundOnGuess().checks().size();
        if (turned > 0) {
            return "It changes what " + turned + (turned == 1 ? " check comes to." : " checks come to.");
        }
        long fewer = settled.fewerMissing();
        return "It settles no check by itself"
                + (fewer > 0
                        ? "; " + fewer + (fewer == 1 ? " answer fewer is" : " answers fewer are") + " missing."
                        : ".");
    }

    private static String forGood(Settled settled) {
        int count = settled.count();
        List<String> parts = new ArrayList<>();
        add(parts, settled.inOrder(), "in order");
        add(parts, settled.off(), "with nothing to check");
        add(parts, settled.found(), "found: " + SeverityWords.list(settled.found()::count));
        return "It settles " + count + (count == 1 ? " check: " : " checks: ") + String.join(", ", parts) + ".";
    }

    /** What was settled, each finding that is there now or no more, and what waits instead; a line each. */
    public static List<String> lines(Settled settled) {
        List<String> lines = new ArrayList<>(List.of(settled(settled)));
        settled.found().checks().forEach(judged -> lines.add(severity(judged) + ": " + named(judged)));
        settled.foundOnGuess()
                .checks()
                .forEach(judged -> lines.add(severity(judged) + ", on a guess: " + named(judged)));
        settled.cleared().checks().forEach(judged -> lines.add("No more: " + named(judged)));
        if (!settled.raised().isNothing()) {
            lines.add(raised(settled) + ".");
        }
        return lines;
    }

    private static String severity(Judged judged) {
        return Words.capital(Words.hyphenated(judged.card().severity().value().name()));
    }

    private static void add(List<String> parts, Stakes stakes, String words) {
        if (!stakes.isNothing()) {
            parts.add(stakes.checks().size() + " " + words);
        }
    }

    /** How many checks wait or rest on a guess now, and did not. */
    public static String raised(Settled settled) {
        int raised = settled.raised().checks().size();
        return raised
                + (raised == 1
                        ? " more check waits for information or rests on a guess"
                        : " more checks wait for information or rest on a guess");
    }
}
