package fitworthy.printout;

import static fitworthy.document.Report.Column.figure;
import static fitworthy.document.Report.Column.text;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Arrangement.Told;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.book.Ask;
import fitworthy.book.Basis;
import fitworthy.book.Consequence;
import fitworthy.book.DatedLimit;
import fitworthy.book.Practice;
import fitworthy.book.Severity;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Detail;
import fitworthy.document.Report.FindingBlock;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Subheading;
import fitworthy.document.Report.Table;
import fitworthy.printout.words.Wording;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Findings as blocks of a report. */
final class FindingBlocks {

    private final Advice advice;
    private final Arrangement arrangement;
    /** Worst first, by what comes of it among equals, and what is told under another right behind it. */
    private final List<Placed> placed;

    /** A finding and what it is sorted by: what comes of the one that it is told under, where that is as severe. */
    private record Placed(Group<Finding> group, Consequence under) {

        static Stream<Placed> of(Told told) {
            return told.all()
                    .map(group -> new Placed(
                            group,
                            (group.severity() == told.head().severity() ? told.head() : group)
                                    .card()
                                    .follows()));
        }
    }

    FindingBlocks(Arrangement arrangement) {
        this.advice = arrangement.advice();
        this.arrangement = arrangement;
        this.placed = arrangement.told().stream()
                .flatMap(Placed::of)
                .sorted(Comparator.comparing((Placed one) -> one.group().severity())
                        .thenComparing(Placed::under))
                .toList();
    }

    /** A severity as a report writes it. */
    static String word(Severity severity) {
        return Words.capital(Words.hyphenated(severity.name()));
    }

    /** Every finding in a line. */
    Table glance() {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < placed.size(); i++) {
            Group<Finding> group = placed.get(i).group();
            Finding worst = group.worst();
            rows.add(new Row(
                    List.of(
                            String.valueOf(i + 1),
                            word(group.severity()),
                            title(group),
                            worst.judged().subject(),
                            worst.comparison()
                                    .map(comparison -> Wording.margin(worst.judged(), comparison))
                                    .orElse("-")),
                    "finding-" + (i + 1),
                    false));
        }
        return new Table(
                "Findings at a glance",
                List.of(
                        text("No.", 6),
                        text("Asks for", 10),
                        text("Finding", 44),
                        text("About", 21),
                        figure("By how much", 19)),
                rows);
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        String heading = "";
        Consequence under = null;
        for (int i = 0; i < placed.size(); i++) {
            Group<Finding> group = placed.get(i).group();
            Severity severity = group.severity();
            if (!word(severity).equals(heading)) {
                heading = word(severity);
                under = null;
                blocks.add(new Subheading(3, heading + ": " + meaning(severity), mark(severity)));
            }
            if (placed.get(i).under() != under) {
                under = placed.get(i).under();
                blocks.add(new Subheading(4, meaning(under), ""));
            }
            blocks.add(finding(i + 1, group));
        }
        return blocks;
    }

    private static String mark(Severity severity) {
        return Words.hyphenated(severity.name());
    }

    private static String meaning(Severity severity) {
        return switch (severity) {
            case STOP -> "as planned it breaks a rating or can hurt someone";
            case CHANGE -> "it will not do its job until something in the plan changes";
            case CONFIRM -> "an engineer, authority, insurer or maker has to agree";
            case NOTE -> "worth knowing";
        };
    }

    private static String meaning(Consequence consequence) {
        return switch (consequence) {
            case IRREVERSIBLE -> "Cannot be undone, or only by doing it again";
            case INJURY -> "Somebody can be hurt";
            case BREAKS_DOWN -> "Something fails on the way";
            case SPOILS -> "It costs money, time or comfort";
            case FORMAL -> "Rules and papers";
        };
    }

    private String title(Group<Finding> group) {
        Finding worst = group.worst();
        return (group.isWaived() ? "Waived: " : "")
                + GuessWords.before(arrangement, group)
                + Wording.fill(worst.judged().card().title(), worst);
    }

    private FindingBlock finding(int number, Group<Finding> group) {
        Finding worst = group.worst();
        Judged judged = worst.judged();
        List<Detail> details = new ArrayList<>();
        if (!HouseWords.waivers(group).isEmpty()) {
            details.add(new Detail("Waived", HouseWords.waivers(group)));
        }
        if (!arrangement.guesses(group).isEmpty()) {
            details.add(new Detail("Guessed", GuessWords.of(arrangement, group)));
        }
        HouseWords.severity(advice, judged.id()).ifPresent(set -> details.add(Detail.of("Severity", set)));
        details.addAll(List.of(
                Detail.of("Do", Wording.remedy(worst)),
                Detail.of("Why", Wording.fill(judged.card().why(), worst)),
                Detail.of("Ask", Wording.fill(Ask.words(judged.card().ask()), worst))));
        details.add(new Detail(
                "Rests on",
                Stream.concat(
                                Stream.of("The rule: "
                                        + judged.card().basis().value().words()
                                        + cited(judged.card().sources())),
                                worst.practice().stream().map(this::practice))
                        .toList()));
        details.add(Detail.of("Caution", caution(group)));
        return new FindingBlock(
                number,
                mark(group.severity()),
                judged.id(),
                judged.rule().place().inBook(),
                title(group),
                figures(group),
                details);
    }

    private static String cited(List<String> sources) {
        return sources.isEmpty() ? "" : " [" + String.join(", ", sources) + "]";
    }

    /** A practice value with where it holds, since when, and how it is known. */
    private String practice(Practice practice) {
        DatedLimit.Value entry = practice.entry();
        return practice.meaning() + ": " + Wording.value(practice) + " (" + practice.id() + ", "
                + advice.book().regions().get(entry.region()).name() + " from " + entry.from() + "), "
                + entry.basis().value().words() + cited(entry.sources())
                + (entry.note().isEmpty() ? "" : ". " + entry.note());
    }

    /** What makes this finding less sure than it looks, by its figures and by its evidence. */
    private static String caution(Group<Finding> group) {
        List<String> cautions = new ArrayList<>();
        if (group.outcomes().stream()
                .anyMatch(finding ->
                        finding.comparison().filter(Comparison::uncertain).isPresent())) {
            cautions.add("The tolerance of the figures is larger than the margin and could turn this.");
        }
        Finding worst = group.worst();
        Set<Basis> grades = worst.practice().stream()
                .map(value -> value.entry().basis().value())
                .collect(Collectors.toSet());
        grades.add(worst.judged().card().basis().value());
        if (grades.contains(Basis.HOUSE)) {
            cautions.add("It was held against a value that the shop set for itself.");
        }
        if (grades.contains(Basis.MEMORY)) {
            cautions.add("Part of it was written from memory: look it up before you rely on it.");
        } else if (grades.contains(Basis.COMMON_PRACTICE)) {
            cautions.add("Common practice is no rule of law or of a maker: ask before you rely on it.");
        } else if (grades.contains(Basis.PUBLISHED_SECONDHAND)) {
            cautions.add("The published text itself was not read: look it up before you rely on it.");
        }
        return cautions.isEmpty()
                ? "It is as good as the figures of the sheet: have them confirmed on the vehicle."
                : String.join(" ", cautions);
    }

    /** Value, limit and margin; loadings with the same figures share a row. */
    private static Table figures(Group<Finding> group) {
        Finding first = group.outcomes().get(0);
        List<Row> rows = new ArrayList<>();
        group.loadings(FindingBlocks::figures)
                .forEach((figures, loadings) -> rows.add(Row.of(Stream.concat(
                                Stream.of(loadings.get(0).isEmpty() ? "any" : String.join(", ", loadings)),
                                figures.stream())
                        .toArray(String[]::new))));
        String meaning = Words.capital(first.judged().measure().kind().meaning());
        return new Table(
                "About: " + first.judged().subject(),
                first.comparison().isPresent()
                        ? List.of(
                                text("Loading", 26),
                                figure(meaning, 32),
                                figure("Held against", 22),
                                figure("Margin", 20))
                        : List.of(text("Loading", 26), text(meaning, 74)),
                rows);
    }

    /** Value, limit and margin, or the value alone where it was held against nothing. */
    static List<String> figures(Assessed outcome) {
        Judged judged = outcome.judged();
        return outcome.comparison()
                .map(comparison -> List.of(
                        Wording.value(judged, comparison),
                        Wording.limit(judged, comparison),
                        Wording.margin(judged, comparison)))
                .orElseGet(() -> List.of(Wording.value(judged.measure())));
    }
}
