package fitworthy.printout.screen;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Counts;
import fitworthy.advice.MissingFigure;
import fitworthy.advice.Question;
import fitworthy.advice.Questions;
import fitworthy.book.Severity;
import fitworthy.document.Page;
import fitworthy.printout.MarginTable;
import fitworthy.printout.QuestionWords;
import fitworthy.printout.screen.TextPrintout.Painter;
import fitworthy.printout.words.FindingBrief;
import fitworthy.printout.words.GuessWords;
import fitworthy.printout.words.HouseWords;
import fitworthy.printout.words.LoadedVerdict;
import fitworthy.printout.words.SeverityWords;
import fitworthy.printout.words.Verdict;
import fitworthy.source.Words;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The answer first, then each finding in few lines: advice as plain text of a page or two, at most 80 columns wide. */
public final class ShortPrintout {

    private static final String ITEM = "- ";
    private static final String PART = "  + ";
    private static final int INDENT = 2;
    /** How many questions are printed. */
    private static final int QUESTIONS = 5;

    private final Page page;
    private final Painter painter;

    public ShortPrintout(PrintWriter out, Painter painter) {
        this.page = new Page(out);
        this.painter = painter;
    }

    /**
     * Prints advice whose findings are no milder than {@code mildest}.
     *
     * @param questions those that it leaves
     */
    public void print(Advice advice, Questions questions, Severity mildest) {
        Arrangement arrangement = Arrangement.of(advice);
        title(advice);
        page.rule();
        page.wrapped(0, LoadedVerdict.loadedAsChosen(advice));
        page.wrapped(0, Verdict.of(arrangement));
        page.blank();
        MarginTable.print(page, arrangement);
        RoomBrief.print(page, advice);
        BuyBrief.print(page, arrangement);
        section(HouseWords.looserHeading(advice), HouseWords.looser(advice));
        Map<Severity, List<FindingBrief>> bySeverity = FindingBrief.all(arrangement, mildest, true).stream()
                .collect(Collectors.groupingBy(FindingBrief::severity, TreeMap::new, Collectors.toList()));
        bySeverity.forEach(this::findings);
        if (!bySeverity.isEmpty()) {
            page.blank();
        }
        section("WAIVERS THAT DO NOT COUNT", HouseWords.idle(advice));
        section(HouseWords.othersHeading(advice), HouseWords.others(advice));
        questions(questions, arrangement.counts());
        page.rule();
        more(arrangement.counts());
        page.wrapped(0, advice.book().smallPrint(advice.sheet().region()));
        page.flush();
    }

    private void title(Advice advice) {
        page.wrapped(0, advice.sheet().title());
        page.wrapped(
                0,
                joined(
                        advice.sheet().vehicle().name(),
                        advice.sheet().customer(),
                        advice.sheet().quote()));
        page.wrapped(
                0,
                joined(
                        advice.book().regions().get(advice.sheet().region()).name(),
                        advice.sheet().asOf().toString(),
                        advice.book().cover().name() + " "
                                + advice.book().cover().edition(),
                        "content " + advice.book().hash()));
        if (!HouseWords.house(advice).isEmpty()) {
            page.wrapped(0, "House: " + HouseWords.house(advice));
        }
    }

    private static String joined(String... words) {
        return Arrays.stream(words).filter(word -> !word.isEmpty()).collect(Collectors.joining(", "));
    }

    /** A heading with a line for each entry; nothing where there is none. */
    private void section(String heading, List<String> entries) {
        if (!entries.isEmpty()) {
            page.wrapped(0, heading);
            entries.forEach(entry -> page.hanging(ITEM, entry));
            page.blank();
        }
    }

    private void findings(Severity severity, List<FindingBrief> all) {
        String heading = heading(severity, all.size());
        String acts = severity == Severity.STOP ? acts(all) : "";
        if (heading.length() + acts.length() <= Page.COLUMNS) {
            page.line(painter.painted(severity, heading) + acts);
        } else {
            page.line(painter.painted(severity, heading));
            page.wrapped(0, acts.strip());
        }
        all.forEach(this::finding);
    }

    /** Whom to turn to for what stops the plan, each once. */
    private static String acts(List<FindingBrief> stops) {
        return stops.stream()
                .map(FindingBrief::actor)
                .distinct()
                .map(actor -> "  " + actor + ".")
                .collect(Collectors.joining());
    }

    /** Above the findings of a severity. */
    public static String heading(Severity severity, int count) {
        return count + " " + SeverityWords.behind(count, severity).toUpperCase(Locale.ROOT);
    }

    private void finding(FindingBrief finding) {
        String id = id(finding.said());
        boolean fits = ITEM.length() + finding.said().title().length() + id.length() <= Page.COLUMNS;
        boolean told = !finding.whatToDo().isEmpty();
        page.hanging(ITEM, finding.said().title() + (fits || !told ? id : ""));
        if (told) {
            page.wrapped(INDENT, finding.whatToDo() + (fits ? "" : id));
        }
        finding.beside().forEach(line -> page.wrapped(INDENT, line));
        finding.under().forEach(part -> {
            page.hanging(PART, part.said().title() + id(part.said()));
            part.beside().forEach(line -> page.wrapped(PART.length(), line));
        });
    }

    private static String id(FindingBrief.Said said) {
        return " [" + said.id() + "]";
    }

    /** Those of most worth, how many answers are missing by who has them, and what rests on guesses. */
    private void questions(Questions questions, Counts counts) {
        List<Question> all = questions.questions();
        if (!all.isEmpty()) {
            page.line("ASK FIRST ('fitworthy questions SHEET' lists " + (all.size() == 1 ? "it" : "all " + all.size())
                    + ")");
            all.stream().limit(QUESTIONS).forEach(question -> page.hanging(ITEM, question(question)));
        }
        String missing = missing(questions);
        if (!missing.isEmpty()) {
            page.wrapped(0, "Missing: " + missing + ".");
        }
        if (counts.held() > 0) {
            page.wrapped(0, GuessWords.count(counts) + ".");
        }
    }

    private static String question(Question question) {
        String worth = SeverityWords.list(question.turns()::count);
        return QuestionWords.title(question) + ". Ask " + question.ask().words()
                + (worth.isEmpty() ? "" : " (" + worth + ")") + ".";
    }

    /** How many answers each party has, and how many the rule book does not have. */
    private static String missing(Questions questions) {
        Map<String, Integer> byParty = new LinkedHashMap<>();
        questions.questions().stream()
                .filter(question -> question.state() != Question.State.GUESSED)
                .forEach(question -> byParty.merge(
                        question.ask().words(), question.figure().fields().size(), Integer::sum));
        int gaps = questions.gaps().stream()
                .map(MissingFigure::fields)
                .mapToInt(List::size)
                .sum();
        List<String> parts = new ArrayList<>();
        byParty.forEach((party, count) -> parts.add(count + " from " + party));
        if (gaps > 0) {
            parts.add(gaps + " not in the rule book");
        }
        return String.join(", ", parts);
    }

    /** What is left out, and how to see it. */
    private void more(Counts counts) {
        page.wrapped(
                0,
                (counts.met() == 0 ? "" : Words.capital(inOrder(counts)) + " (--all). ")
                        + "Why, whom to ask: --full, or explain SHEET ID.");
    }

    /** How many checks are in order. */
    public static String inOrder(Counts counts) {
        return counts.met() + (counts.met() == 1 ? " check" : " checks") + " in order";
    }
}
