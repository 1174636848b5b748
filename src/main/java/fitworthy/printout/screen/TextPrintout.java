package fitworthy.printout.screen;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Arrangement.Told;
import fitworthy.advice.MissingFigure;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Held;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.Met;
import fitworthy.book.Ask;
import fitworthy.book.DatedLimit;
import fitworthy.book.Practice;
import fitworthy.book.Severity;
import fitworthy.document.Page;
import fitworthy.printout.BuyTable;
import fitworthy.printout.CheckTables;
import fitworthy.printout.CostTable;
import fitworthy.printout.MarginTable;
import fitworthy.printout.RoomTable;
import fitworthy.printout.words.FindingBrief;
import fitworthy.printout.words.GuessWords;
import fitworthy.printout.words.HouseWords;
import fitworthy.printout.words.LoadedVerdict;
import fitworthy.printout.words.TooClose;
import fitworthy.printout.words.Verdict;
import fitworthy.printout.words.Wording;
import fitworthy.source.Words;
import java.io.PrintWriter;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Advice as plain text, at most 80 columns wide. Colour only repeats what the words say. */
public final class TextPrintout {

    private static final int INDENT = 9;
    /** How many guesses are listed of those on which something is in order. */
    private static final int GUESSES = 5;

    private final Page page;
    private final Painter painter;
    private final boolean everything;

    /** Makes a word stand out as its severity asks, without taking more room on the screen. */
    @FunctionalInterface
    public interface Painter {
        /** Leaves every word as it is. */
        Painter NONE = (severity, word) -> word;

        String painted(Severity severity, String word);
    }

    /** @param everything whether to list each thing that was met, rather than count them */
    public TextPrintout(PrintWriter out, Painter painter, boolean everything) {
        this.page = new Page(out);
        this.painter = painter;
        this.everything = everything;
    }

    /** Prints advice whose findings are no milder than {@code mildest}. */
    public void print(Advice advice, Severity mildest) {
        Arrangement arrangement = Arrangement.of(advice);
        title(arrangement);
        BuyTable.print(page, arrangement);
        CostTable.print(page, advice);
        section(HouseWords.looserHeading(advice) + ":", HouseWords.looser(advice));
        arrangement.told(mildest).forEach(told -> findings(arrangement, told));
        notAssessed(arrangement);
        section("WAIVERS THAT DO NOT COUNT:", HouseWords.idle(advice));
        held(arrangement);
        met(arrangement);
        if (!HouseWords.house(advice).isEmpty()) {
            page.blank();
            section(HouseWords.othersHeading(advice) + ":", HouseWords.others(advice));
        }
        page.rule();
        page.wrapped(0, advice.book().smallPrint(advice.sheet().region()));
        page.flush();
    }

    /** A heading with a line for each entry; nothing where there is none. */
    private void section(String heading, List<String> entries) {
        if (!entries.isEmpty()) {
            page.wrapped(0, heading);
            entries.forEach(entry -> page.hanging("  - ", entry));
            page.blank();
        }
    }

    private void title(Arrangement arrangement) {
        Advice advice = arrangement.advice();
        page.wrapped(0, "Fitworthy: advice, not certification");
        page.rule();
        page.wrapped(0, advice.sheet().title());
        field("Vehicle", advice.sheet().vehicle().name());
        field(
                "For",
                String.join(
                        ", ",
                        List.of(advice.sheet().customer(), advice.sheet().quote()).stream()
                                .filter(line -> !line.isEmpty())
                                .toList()));
        field(
                "Region",
                advice.book().regions().get(advice.sheet().region()).name() + ", practice as of "
                        + advice.sheet().asOf());
        field(
                "Book",
                advice.book().cover().name() + ", edition "
                        + advice.book().cover().edition() + ", content "
                        + advice.book().hash());
        field("House", HouseWords.house(advice));
        field(
                "Loadings",
                advice.loadings().stream()
                        .map(loading -> loading.loadCase().name())
                        .collect(Collectors.joining(", ")));
        page.blank();
        page.wrapped(0, LoadedVerdict.loadedAsChosen(advice));
        page.wrapped(0, Verdict.of(arrangement));
        page.blank();
        MarginTable.print(page, arrangement);
        RoomTable.of(advice).print(page);
    }

    private void field(String name, String value) {
        if (!value.isEmpty()) {
            page.hanging(String.format(Locale.ROOT, "%-9s", name), value);
        }
    }

    private void findings(Arrangement arrangement, Told told) {
        Group<Finding> group = told.head();
        Finding worst = group.worst();
        Judged judged = worst.judged();
        Function<String, String> filled = text -> Wording.fill(text, worst);
        Severity severity = group.severity();
        page.hanging(
                String.format(Locale.ROOT, "%-9s", severity.name()),
                label -> painter.painted(severity, label),
                (group.isWaived() ? "Waived: " : "")
                        + FindingBrief.before(arrangement, group)
                        + filled.apply(judged.card().title()));
        page.wrapped(INDENT, judged.id() + " (" + judged.rule().place().inBook() + ")");
        figures(group, INDENT);
        TooClose.sentence(group, arrangement.isGuessed(group)).ifPresent(close -> page.wrapped(INDENT, close));
        GuessWords.sure(arrangement, group).ifPresent(sure -> page.wrapped(INDENT, sure + "."));
        GuessWords.of(arrangement, group).forEach(guesses -> page.wrapped(INDENT, guesses));
        HouseWords.severity(arrangement.advice(), judged.id())
                .ifPresent(set -> page.wrapped(INDENT, "Severity: " + set));
        page.wrapped(INDENT, "Do: " + Wording.remedy(worst));
        page.wrapped(INDENT, "Why: " + filled.apply(judged.card().why()));
        page.wrapped(INDENT, "Ask: " + filled.apply(Ask.words(judged.card().ask())));
        evidence(judged, worst.practice());
        Set<String> said = new HashSet<>(Set.of(Wording.remedy(worst)));
        told.parts().forEach(part -> part(arrangement, part, said));
        page.blank();
    }

    /** What is told under a finding. @param said the remedies said there, none of which is said twice */
    private void part(Arrangement arrangement, Group<Finding> group, Set<String> said) {
        Finding worst = group.worst();
        page.hanging(
                " ".repeat(INDENT) + "- ",
                FindingBrief.before(arrangement, group)
                        + Wording.fill(group.card().title(), worst) + " (" + group.id() + ")");
        figures(group, INDENT + 2);
        TooClose.sentence(group, arrangement.isGuessed(group)).ifPresent(close -> page.wrapped(INDENT + 2, close));
        GuessWords.sure(arrangement, group).ifPresent(sure -> page.wrapped(INDENT + 2, sure + "."));
        GuessWords.of(arrangement, group).forEach(guesses -> page.wrapped(INDENT + 2, guesses));
        if (said.add(Wording.remedy(worst))) {
            page.wrapped(INDENT + 2, "Do: " + Wording.remedy(worst));
        }
    }

    private void figures(Group<Finding> group, int indent) {
        group.loadings(TextPrintout::figures)
                .forEach((figures, loadings) -> page.wrapped(
                        indent,
                        loadings.get(0).isEmpty()
                                ? Words.capital(figures)
                                : String.join(", ", loadings) + ": " + figures));
        HouseWords.waivers(group).forEach(waiver -> page.wrapped(indent, waiver));
    }

    private static String figures(Finding finding) {
        return finding.comparison()
                .map(comparison -> Wording.comparison(finding.judged(), comparison))
                .orElseGet(() -> finding.judged().measure().kind().meaning() + ": "
                        + Wording.value(finding.judged().measure()));
    }

    private void evidence(Judged judged, List<Practice> practice) {
        StringBuilder text = new StringBuilder("Rests on: ")
                .append(judged.card().basis().value().words());
        if (!judged.card().sources().isEmpty()) {
            text.append(" [").append(String.join(", ", judged.card().sources())).append("]");
        }
        for (Practice each : practice) {
            DatedLimit.Value entry = each.entry();
            text.append("; ")
                    .append(each.id())
                    .append(" ")
                    .append(Wording.value(each))
                    .append(" (")
                    .append(entry.region())
                    .append(" from ")
                    .append(entry.since())
                    .append(", ")
                    .append(entry.basis().value().words());
            if (!entry.sources().isEmpty()) {
                text.append(" [").append(String.join(", ", entry.sources())).append("]");
            }
            text.append(entry.note().isEmpty() ? ")" : "; " + entry.note() + ")");
        }
        page.wrapped(INDENT, text.toString());
    }

    private void notAssessed(Arrangement arrangement) {
        List<MissingFigure> figures = arrangement.figuresToBring();
        List<MissingFigure> gaps = arrangement.gapsOfTheBook();
        if (figures.isEmpty() && gaps.isEmpty()) {
            return;
        }
        page.wrapped(
                0, "NOT CHECKED: " + Verdict.open(arrangement.counts()) + (figures.isEmpty() ? "." : ". Find out:"));
        figures.forEach(figure -> missing(
                figure,
                (figure.missing().asked() ? " (already asked)" : "") + ". Find it: "
                        + figure.missing().find() + "."));
        if (!gaps.isEmpty()) {
            page.wrapped(0, CheckTables.GAPS + ":");
            gaps.forEach(gap -> missing(gap, "."));
        }
        page.blank();
    }

    private void missing(MissingFigure figure, String end) {
        page.hanging("  - ", figure.field() + ": " + figure.missing().meaning() + end);
        page.wrapped(4, "Needed for: " + String.join(", ", figure.rules()));
    }

    private void held(Arrangement arrangement) {
        if (arrangement.held().isEmpty()) {
            return;
        }
        page.wrapped(0, "IF THE GUESSES HOLD: " + GuessWords.count(arrangement.counts()) + ". Find out:");
        List<MissingFigure> guesses = arrangement.guessesToReplace();
        int told = everything ? guesses.size() : Math.min(GUESSES, guesses.size());
        guesses.subList(0, told).forEach(guess -> {
            int checks = guess.stakes().checks().size();
            page.hanging(
                    "  - ",
                    guess.field() + ": " + GuessWords.meaning(guess.missing()) + ", for " + checks
                            + (checks == 1 ? " check" : " checks") + ". Find it: "
                            + guess.missing().find() + ".");
        });
        if (told < guesses.size()) {
            int others = guesses.size() - told;
            page.hanging(
                    "  - ", "and " + others + (others == 1 ? " other" : " others") + "; see 'questions' or '--all'.");
        }
        if (everything) {
            arrangement.held().forEach(this::held);
        }
        page.blank();
    }

    private void held(Group<Held> group) {
        Held closest = group.worst();
        page.hanging("  - ", GuessWords.words(closest));
        closest.comparison().ifPresent(comparison -> page.wrapped(4, Wording.comparison(closest.judged(), comparison)));
        page.wrapped(4, "Guessed: " + GuessWords.names(group));
    }

    private void met(Arrangement arrangement) {
        long met = arrangement.counts().met();
        if (met == 0) {
            return;
        }
        String checks = "IN ORDER: " + met + (met == 1 ? " check" : " checks");
        page.wrapped(0, checks + (everything ? ":" : " (--all lists them)."));
        if (everything) {
            arrangement.met().forEach(this::met);
        }
    }

    private void met(Group<Met> group) {
        Met closest = group.worst();
        Judged judged = closest.judged();
        page.hanging("  - ", Wording.fill(judged.card().met(), closest) + " (" + judged.id() + ")");
        String loading = judged.loadCase().isEmpty()
                ? ""
                : (group.outcomes().size() > 1 ? "closest in " : "") + judged.loadCase() + ": ";
        closest.comparison().ifPresent(comparison -> page.wrapped(4, loading + Wording.comparison(judged, comparison)));
        closest.practice().stream()
                .filter(value -> value.house().isPresent())
                .forEach(value -> page.wrapped(
                        4,
                        value.id() + " " + Wording.value(value) + ", set by the shop. "
                                + value.entry().note()));
    }
}
