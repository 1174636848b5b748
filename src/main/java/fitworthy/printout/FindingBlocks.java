package fitworthy.printout;

import static fitworthy.document.Report.Column.figure;
import static fitworthy.document.Report.Column.text;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Ranked;
import fitworthy.book.Ask;
import fitworthy.book.Basis;
import fitworthy.book.Consequence;
import fitworthy.book.DatedLimit;
import fitworthy.book.Practice;
import fitworthy.book.Severity;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Detail;
import fitworthy.document.Report.FindingBlock;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Subheading;
import fitworthy.document.Report.Table;
import fitworthy.printout.words.FindingBrief;
import fitworthy.printout.words.GuessWords;
import fitworthy.printout.words.HouseWords;
import fitworthy.printout.words.TooClose;
import fitworthy.printout.words.Wording;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Findings as blocks of a report. */
public final class FindingBlocks {

    /** Above what guesses decide. */
    private static final String OPEN = "Too close to call on guesses: measure, then have the plan checked again";

    /** The loading of what does not depend on it. */
    private static final String ANY = "any";

    private final Advice advice;
    private final Arrangement arrangement;
    private final List<Ranked> ranked;

    public FindingBlocks(Arrangement arrangement, List<Ranked> ranked) {
        this.advice = arrangement.advice();
        this.arrangement = arrangement;
        this.ranked = ranked;
    }

    /** A severity as a report writes it. */
    static String word(Severity severity) {
        return Words.capital(Words.hyphenated(severity.name()));
    }

    /** How a finding is led to. */
    static String link(Ranked finding) {
        return "finding-" + finding.number();
    }

    /**
     * By how much, or a dash where nothing is compared; of a bare number or a share it and its limit tell more. Where
     * guesses decide, no figure is that sure.
     */
    static String margin(Ranked finding) {
        if (finding.open()) {
            return TooClose.WORDS;
        }
        Finding worst = finding.group().worst();
        String unit = worst.judged().measure().kind().unit();
        return worst.comparison()
                .map(comparison -> unit.isEmpty() || unit.equals("%")
                        ? Wording.figureAndLimit(worst.judged(), comparison)
                        : Wording.margin(worst.judged(), comparison))
                .map(margin -> margin + (finding.group().isTooClose() ? ", " + TooClose.WORDS : ""))
                .orElse("-");
    }

    /** All of them in full, with what is the same of many said once before. */
    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        if (!ranked.isEmpty()) {
            blocks.add(new Points(cautions()));
        }
        String heading = "";
        String under = "";
        Map<Group<Finding>, Ranked> heads = heads();
        for (Ranked one : ranked) {
            Severity severity = one.group().severity();
            if (!word(severity).equals(heading)) {
                heading = word(severity);
                under = "";
                blocks.add(new Subheading(3, heading + ": " + meaning(severity), mark(severity)));
            }
            String above = one.open() ? OPEN : meaning(one.follows());
            if (!above.equals(under)) {
                under = above;
                blocks.add(new Subheading(4, under, ""));
            }
            blocks.add(finding(one, heads));
        }
        return blocks;
    }

    /** What makes findings less sure than they look, each once. */
    private List<String> cautions() {
        Set<Basis> grades = ranked.stream()
                .map(one -> one.group().worst())
                .flatMap(finding -> Stream.concat(
                        Stream.of(finding.judged().card().basis().value()),
                        finding.practice().stream()
                                .map(value -> value.entry().basis().value())))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Basis.class)));
        List<String> cautions = new ArrayList<>(
                List.of("Every finding is as good as the figures of the sheet: have them confirmed on the vehicle."));
        grades.forEach(grade -> {
            String caution =
                    switch (grade) {
                        case HOUSE -> "the shop set this value for itself";
                        case MEMORY -> "look it up before you rely on it";
                        case COMMON_PRACTICE -> "it is no rule of law or of a maker: ask before you rely on it";
                        case PUBLISHED_SECONDHAND ->
                            "the published text itself was not read: look it up before you rely" + " on it";
                        default -> "";
                    };
            if (!caution.isEmpty()) {
                cautions.add("Where a finding rests on '" + grade.words() + "', " + caution + ".");
            }
        });
        return cautions;
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

    /** What was found. */
    String title(Group<Finding> group) {
        return FindingBrief.title(arrangement, group);
    }

    /** What each finding that is told under another is told under. */
    private Map<Group<Finding>, Ranked> heads() {
        Map<Group<Finding>, Ranked> heads = new HashMap<>();
        ranked.forEach(head -> head.told().forEach(group -> heads.put(group, head)));
        return heads;
    }

    private FindingBlock finding(Ranked one, Map<Group<Finding>, Ranked> heads) {
        List<Detail> details = details(one.group());
        Ranked head = heads.get(one.group());
        if (head != one && details.removeAll(details(head.group()))) {
            details.add(Detail.of("Else", "As told of finding " + head.number() + "."));
        }
        return finding(one.number(), one.group(), details);
    }

    /** One by itself, with all that is said of it. */
    public FindingBlock alone(Group<Finding> group) {
        return finding("", group, details(group));
    }

    private FindingBlock finding(String number, Group<Finding> group, List<Detail> details) {
        Judged judged = group.worst().judged();
        Table figures = figures(group);
        boolean plain = figures.rows().size() == 1 && figures.columns().size() == 2;
        if (plain) {
            List<String> cells = figures.rows().get(0).cells();
            details.add(
                    0,
                    Detail.of(
                            "Found",
                            figures.columns().get(1).heading() + ": " + cells.get(1)
                                    + (cells.get(0).equals(ANY) ? "" : " (" + cells.get(0) + ")")));
        }
        return new FindingBlock(
                number,
                mark(group.severity()),
                judged.id(),
                judged.rule().place().inBook(),
                title(group),
                plain ? new Table(figures.caption(), figures.columns(), List.of()) : figures,
                details);
    }

    /** What is said of a finding, its figures aside. */
    private List<Detail> details(Group<Finding> group) {
        Finding worst = group.worst();
        Judged judged = worst.judged();
        List<Detail> details = new ArrayList<>();
        if (!HouseWords.waivers(group).isEmpty()) {
            details.add(new Detail("Waived", HouseWords.waivers(group)));
        }
        GuessWords.sure(arrangement, group).ifPresent(sure -> details.add(Detail.of("Sure", sure + ".")));
        List<String> guesses = GuessWords.of(arrangement, group);
        if (!guesses.isEmpty()) {
            details.add(new Detail("Guessed", guesses));
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
        TooClose.sentence(group, arrangement.isGuessed(group))
                .or(() -> group.outcomes().stream()
                        .flatMap(finding -> finding.comparison().stream())
                        .filter(Comparison::uncertain)
                        .map(unsure -> "The tolerance of the figures is larger than the margin and could turn this.")
                        .findFirst())
                .ifPresent(caution -> details.add(0, Detail.of("Caution", caution)));
        return details;
    }

    private static String cited(List<String> sources) {
        return sources.isEmpty() ? "" : " [" + String.join(", ", sources) + "]";
    }

    /** A practice value with where it holds, since when, and how it is known. */
    private String practice(Practice practice) {
        DatedLimit.Value entry = practice.entry();
        return practice.meaning() + ": " + Wording.recorded(practice) + " (" + practice.id() + ", "
                + advice.book().regions().get(entry.region()).name() + " from " + entry.since() + "), "
                + entry.basis().value().words() + cited(entry.sources())
                + (entry.note().isEmpty() ? "" : ". " + entry.note());
    }

    /** Value, limit and margin; loadings with the same figures share a row. */
    private static Table figures(Group<Finding> group) {
        Finding first = group.outcomes().get(0);
        List<Row> rows = new ArrayList<>();
        group.loadings(FindingBlocks::figures)
                .forEach((figures, loadings) -> rows.add(Row.of(Stream.concat(
                                Stream.of(loadings.get(0).isEmpty() ? ANY : String.join(", ", loadings)),
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
