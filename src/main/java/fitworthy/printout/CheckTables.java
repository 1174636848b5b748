package fitworthy.printout;

import static fitworthy.document.Report.Column.figure;
import static fitworthy.document.Report.Column.text;

import fitworthy.advice.Arrangement;
import fitworthy.advice.Counts;
import fitworthy.advice.Outcome.Met;
import fitworthy.book.Severity;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Column;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Table;
import fitworthy.printout.words.GuessWords;
import fitworthy.printout.words.Verdict;
import fitworthy.printout.words.Wording;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Checks by how they ended, those in order and those not assessed, as blocks of a report. */
public final class CheckTables {

    private CheckTables() {}

    /** How many checks ended in which way, by loading. */
    static Table counts(Arrangement arrangement) {
        boolean waived = !arrangement.waived().isEmpty();
        boolean guessed = arrangement.counts().held() > 0;
        boolean many = waived || guessed;
        List<Column> columns = new ArrayList<>(List.of(text("Loading", waived && guessed ? 14 : many ? 24 : 28)));
        for (Severity severity : Severity.values()) {
            columns.add(figure(FindingBlocks.word(severity), many ? 11 : 12));
        }
        if (waived) {
            columns.add(figure("Waived", 10));
        }
        columns.add(figure("Not assessed", guessed ? 12 : many ? 11 : 12));
        if (guessed) {
            columns.add(figure("If guesses hold", 11));
        }
        columns.add(figure("In order", guessed ? 9 : many ? 11 : 12));
        List<Row> rows = new ArrayList<>();
        MarginTable.loadings(arrangement.advice())
                .forEach(loading ->
                        rows.add(new Row(counts(loading, arrangement.counts(loading), waived, guessed), "", false)));
        rows.add(new Row(counts("in any loading", arrangement.counts(""), waived, guessed), "", false));
        rows.add(new Row(counts("in all, each counted once", arrangement.counts(), waived, guessed), "", true));
        return new Table("Checks by what they ask for and by loading", columns, rows);
    }

    private static List<String> counts(String name, Counts counts, boolean waived, boolean guessed) {
        List<String> cells = new ArrayList<>(List.of(name));
        Arrays.stream(Severity.values())
                .map(severity -> String.valueOf(counts.found(severity)))
                .forEach(cells::add);
        if (waived) {
            cells.add(String.valueOf(counts.waived()));
        }
        cells.add(String.valueOf(counts.notAssessed()));
        if (guessed) {
            cells.add(String.valueOf(counts.held()));
        }
        cells.add(String.valueOf(counts.met()));
        return cells;
    }

    /** What is said above what the rule book does not hold. */
    public static final String GAPS =
            "The rule book has no value for these in the region that the sheet names; another region may have one";

    /** The figures to bring and what the book does not hold, with the checks that wait for them. */
    static List<Block> notAssessed(Arrangement arrangement) {
        List<Row> figures = arrangement.figuresToBring().stream()
                .map(figure -> Row.of(
                        figure.field(),
                        figure.missing().meaning(),
                        figure.missing().find(),
                        String.join(", ", figure.rules())))
                .toList();
        List<Row> gaps = arrangement.gapsOfTheBook().stream()
                .map(gap -> Row.of(gap.field(), gap.missing().meaning(), String.join(", ", gap.rules())))
                .toList();
        if (figures.isEmpty() && gaps.isEmpty()) {
            return List.of(new Paragraph("Every check that applies to this plan had its figures."));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(Words.capital(Verdict.open(arrangement.counts()))
                + ". Nothing is said of these, and that is no pass."
                + (figures.isEmpty() ? "" : " Bring the figures and have the plan checked again.")));
        if (!figures.isEmpty()) {
            blocks.add(new Table(
                    "Figures to bring",
                    List.of(
                            text("Field of the sheet", 25),
                            text("What it is", 29),
                            text("Where to find it", 21),
                            text("Checks that wait for it", 25)),
                    figures));
        }
        if (!gaps.isEmpty()) {
            blocks.add(new Paragraph(GAPS + "."));
            blocks.add(new Table(
                    "Not in the rule book",
                    List.of(text("What", 25), text("What it is", 50), text("Checks that wait for it", 25)),
                    gaps));
        }
        return blocks;
    }

    /** What is in order if guesses hold, and which; nothing where none is. */
    public static List<Block> held(Arrangement arrangement) {
        return arrangement.held().isEmpty()
                ? List.of()
                : List.of(
                        new Paragraph(
                                Words.capital(GuessWords.count(arrangement.counts()))
                                        + ". These are no passes before the guesses are replaced by what was read or measured."),
                        new Table(
                                "In order if the guesses hold",
                                List.of(text("If the guesses hold", 46), figure("Margin", 16), text("Guessed", 38)),
                                arrangement.held().stream()
                                        .map(group -> Row.of(
                                                GuessWords.words(group.worst()),
                                                group.worst()
                                                        .comparison()
                                                        .map(comparison -> Wording.margin(
                                                                group.worst().judged(), comparison))
                                                        .orElse("-"),
                                                GuessWords.names(group)))
                                        .toList()));
    }

    /** What was met, by topic: of each check the subject and loading that leave least, and what the others leave. */
    public static List<Block> met(Arrangement arrangement) {
        List<Block> blocks = new ArrayList<>();
        arrangement
                .metByTopic()
                .forEach((topic, rules) -> blocks.add(new Table(
                        Words.capital(topic),
                        List.of(
                                text("Assessed and in order", 52),
                                figure("Figure", 16),
                                figure("Held against", 18),
                                figure("Margin", 14)),
                        rules.values().stream().map(CheckTables::met).toList())));
        return blocks;
    }

    /** @param bySubject what a rule came to on each subject, what leaves least first */
    private static Row met(List<Met> bySubject) {
        Met closest = bySubject.get(0);
        List<String> cells = new ArrayList<>(List.of(words(closest)
                + likewise(bySubject.subList(1, bySubject.size()))
                + closest.practice().stream()
                        .filter(value -> value.house().isPresent())
                        .map(value -> "; " + value.id() + " " + Wording.value(value) + ", set by the shop. "
                                + value.entry().note())
                        .collect(Collectors.joining())));
        cells.addAll(FindingBlocks.figures(closest));
        while (cells.size() < 4) {
            cells.add("");
        }
        return Row.of(cells.toArray(String[]::new));
    }

    private static String words(Met met) {
        String text = Wording.fill(met.judged().card().met(), met);
        List<String> where = new ArrayList<>();
        if (!text.contains(met.judged().subject())) {
            where.add(met.judged().subject());
        }
        if (!met.judged().loadCase().isEmpty()) {
            where.add(met.judged().loadCase());
        }
        where.add(met.judged().id());
        return text + " (" + String.join(", ", where) + ")";
    }

    private static String likewise(List<Met> others) {
        return others.isEmpty()
                ? ""
                : ". Likewise: "
                        + others.stream()
                                .map(met -> met.judged().subject()
                                        + met.comparison()
                                                .map(comparison ->
                                                        " (" + Wording.margin(met.judged(), comparison) + ")")
                                                .orElse(""))
                                .collect(Collectors.joining(", "));
    }
}
