package fitworthy.printout;

import static fitworthy.document.Report.Column.figure;
import static fitworthy.document.Report.Column.text;

import fitworthy.advice.Advice;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.Met;
import fitworthy.book.Basis;
import fitworthy.book.Book;
import fitworthy.book.DatedLimit;
import fitworthy.book.Practice;
import fitworthy.book.Severity;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Detail;
import fitworthy.document.Report.Found;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Subheading;
import fitworthy.document.Report.Table;
import fitworthy.document.Report.Worked;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.Working;
import fitworthy.printout.words.Wording;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Findings, checks in order and checks not assessed, as blocks of a report. */
final class Findings {

    /** Lines of one working that are worth telling once only. */
    private static final int MANY = 6;

    private final Advice advice;
    /** Findings of one rule on one subject over the load cases; worst first, and by topic among equals. */
    private final List<List<Finding>> groups;

    Findings(Advice advice) {
        this.advice = advice;
        this.groups = TextPrintout.groups(advice.findings());
    }

    /** A severity as a report writes it. */
    static String word(Severity severity) {
        return Words.capital(Words.hyphenated(severity.name()));
    }

    private static String topic(Judged judged) {
        return Words.capital(Book.topic(judged.id()));
    }

    private static Severity severity(List<Finding> group) {
        return group.get(0).judged().card().severity().value();
    }

    /** The one that leaves least. */
    private static Finding worst(List<Finding> group) {
        return group.stream()
                .min(Comparator.comparingDouble(
                        each -> each.comparison().map(Comparison::margin).orElse(0.0)))
                .orElseThrow();
    }

    /** Every finding in a line. */
    Table glance() {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            Finding worst = worst(groups.get(i));
            rows.add(new Row(
                    List.of(
                            String.valueOf(i + 1),
                            word(severity(groups.get(i))),
                            title(groups.get(i), worst),
                            worst.judged().subject(),
                            worst.comparison()
                                    .map(each -> Wording.margin(worst.judged(), each))
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
        String topic = "";
        for (int i = 0; i < groups.size(); i++) {
            Finding worst = worst(groups.get(i));
            Severity severity = severity(groups.get(i));
            if (!word(severity).equals(heading)) {
                heading = word(severity);
                topic = "";
                blocks.add(new Subheading(3, heading + ": " + meaning(severity), mark(severity)));
            }
            if (!topic(worst.judged()).equals(topic)) {
                topic = topic(worst.judged());
                blocks.add(new Subheading(4, topic, ""));
            }
            blocks.add(found(i + 1, groups.get(i), worst));
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

    private static Function<String, String> filled(Finding finding) {
        return text ->
                Wording.fill(text, finding.judged(), finding.comparison(), finding.evidence(), finding.practice());
    }

    private static String title(List<Finding> group, Finding worst) {
        return (group.stream().allMatch(each -> each.waiver().isPresent()) ? "Waived: " : "")
                + filled(worst).apply(worst.judged().card().title());
    }

    private Found found(int number, List<Finding> group, Finding worst) {
        Judged judged = worst.judged();
        Function<String, String> filled = filled(worst);
        List<Detail> details = new ArrayList<>();
        if (!HouseWords.waivers(group).isEmpty()) {
            details.add(new Detail("Waived", HouseWords.waivers(group)));
        }
        HouseWords.severity(advice, judged.id()).ifPresent(each -> details.add(Detail.of("Severity", each)));
        details.addAll(List.of(
                Detail.of("Do", Wording.remedy(worst)),
                Detail.of("Why", filled.apply(judged.card().why())),
                Detail.of("Ask", filled.apply(judged.card().ask()))));
        details.add(new Detail(
                "Rests on",
                Stream.concat(
                                Stream.of("The rule: "
                                        + judged.card().basis().value().words()
                                        + cited(judged.card().sources())),
                                worst.practice().stream().map(this::practice))
                        .toList()));
        details.add(Detail.of("Caution", caution(group)));
        return new Found(
                number,
                mark(severity(group)),
                judged.id(),
                judged.rule().place().inBook(),
                title(group, worst),
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
    private static String caution(List<Finding> group) {
        List<String> cautions = new ArrayList<>();
        if (group.stream()
                .anyMatch(
                        each -> each.comparison().filter(Comparison::uncertain).isPresent())) {
            cautions.add("The tolerance of the figures is larger than the margin and could turn this.");
        }
        Finding worst = worst(group);
        Set<Basis> grades = worst.practice().stream()
                .map(each -> each.entry().basis().value())
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
    private static Table figures(List<Finding> group) {
        Map<List<String>, List<String>> byFigures = new LinkedHashMap<>();
        group.forEach(each -> byFigures
                .computeIfAbsent(figures(each.judged(), each.comparison()), key -> new ArrayList<>())
                .add(each.judged().loadCase()));
        boolean compared = group.get(0).comparison().isPresent();
        Judged judged = group.get(0).judged();
        List<Row> rows = new ArrayList<>();
        byFigures.forEach((figures, cases) -> rows.add(Row.of(
                Stream.concat(Stream.of(cases.get(0).isEmpty() ? "any" : String.join(", ", cases)), figures.stream())
                        .toArray(String[]::new))));
        String meaning = Words.capital(judged.measure().kind().meaning());
        return new Table(
                "About: " + judged.subject(),
                compared
                        ? List.of(
                                text("Loading", 26),
                                figure(meaning, 32),
                                figure("Held against", 22),
                                figure("Margin", 20))
                        : List.of(text("Loading", 26), text(meaning, 74)),
                rows);
    }

    private static List<String> figures(Judged judged, Optional<Comparison> comparison) {
        return comparison
                .map(each ->
                        List.of(Wording.value(judged, each), Wording.limit(judged, each), Wording.margin(judged, each)))
                .orElseGet(() -> List.of(Wording.value(judged.measure())));
    }

    List<Block> notAssessed() {
        List<Row> rows = new ArrayList<>();
        Wanted.of(advice.notAssessed())
                .forEach(each -> rows.add(Row.of(
                        each.what(),
                        each.missing().meaning(),
                        each.missing().find(),
                        String.join(", ", each.rules()))));
        if (rows.isEmpty()) {
            return List.of(new Paragraph("Every check that applies to this plan had its figures."));
        }
        return List.of(
                new Paragraph("For want of these figures " + checks()
                        + " checks say nothing, and that is no pass. Bring them and have the plan checked again."),
                new Table(
                        "Figures to bring",
                        List.of(
                                text("Field of the sheet", 25),
                                text("What it is", 29),
                                text("Where to find it", 21),
                                text("Checks that wait for it", 25)),
                        rows));
    }

    private long checks() {
        return advice.notAssessed().stream()
                .map(each -> each.judged().id() + "|" + each.judged().subject())
                .distinct()
                .count();
    }

    /** What was met, by topic: of each check the subject and loading that leave least, and what the others leave. */
    List<Block> met() {
        Map<String, Map<String, List<Met>>> byTopic = new TreeMap<>();
        advice.met().forEach(each -> byTopic.computeIfAbsent(topic(each.judged()), key -> new LinkedHashMap<>())
                .computeIfAbsent(each.judged().id(), key -> new ArrayList<>())
                .add(each));
        List<Block> blocks = new ArrayList<>();
        byTopic.forEach((topic, rules) -> blocks.add(new Table(
                topic,
                List.of(
                        text("Assessed and in order", 52),
                        figure("Figure", 16),
                        figure("Held against", 18),
                        figure("Margin", 14)),
                rules.values().stream().map(Findings::met).toList())));
        return blocks;
    }

    private static Row met(List<Met> rule) {
        List<Met> bySubject = new ArrayList<>(rule.stream()
                .sorted(Comparator.comparingDouble(Findings::margin))
                .collect(Collectors.toMap(
                        each -> each.judged().subject(), each -> each, (least, more) -> least, LinkedHashMap::new))
                .values());
        Met closest = bySubject.remove(0);
        Judged judged = closest.judged();
        String text =
                Wording.fill(judged.card().met(), judged, closest.comparison(), closest.evidence(), closest.practice());
        List<String> where = new ArrayList<>();
        if (!text.contains(judged.subject())) {
            where.add(judged.subject());
        }
        if (!judged.loadCase().isEmpty()) {
            where.add(judged.loadCase());
        }
        where.add(judged.id());
        String likewise = bySubject.isEmpty()
                ? ""
                : ". Likewise: "
                        + bySubject.stream()
                                .map(each -> each.judged().subject()
                                        + each.comparison()
                                                .map(comparison ->
                                                        " (" + Wording.margin(each.judged(), comparison) + ")")
                                                .orElse(""))
                                .collect(Collectors.joining(", "));
        List<String> cells = new ArrayList<>(List.of(text + " (" + String.join(", ", where) + ")" + likewise
                + closest.practice().stream()
                        .filter(each -> each.house().isPresent())
                        .map(each -> "; " + each.id() + " " + Wording.value(each) + ", set by the shop. "
                                + each.entry().note())
                        .collect(Collectors.joining())));
        cells.addAll(figures(judged, closest.comparison()));
        while (cells.size() < 4) {
            cells.add("");
        }
        return Row.of(cells.toArray(String[]::new));
    }

    private static double margin(Met met) {
        return met.comparison().map(Comparison::margin).orElse(Double.MAX_VALUE);
    }

    /** How the figures of the findings were worked out, each measure once. */
    List<Block> workings() {
        Map<String, Measure> measures = new LinkedHashMap<>();
        Map<String, Set<Integer>> numbers = new LinkedHashMap<>();
        for (int i = 0; i < groups.size(); i++) {
            for (Finding finding : groups.get(i)) {
                for (Measure each : finding.evidence()) {
                    if (!each.workings().isEmpty()) {
                        String key = each.getName() + "|" + each.getSubject() + "|" + each.getLoadCase();
                        measures.putIfAbsent(key, each);
                        numbers.computeIfAbsent(key, none -> new LinkedHashSet<>())
                                .add(i + 1);
                    }
                }
            }
        }
        List<Block> blocks = new ArrayList<>();
        Set<List<String>> told = new HashSet<>();
        measures.forEach((key, measure) -> blocks.add(new Worked(
                Words.capital(measure.kind().meaning()) + " ["
                        + measure.getSubject() + (measure.getLoadCase().isEmpty() ? "" : ", " + measure.getLoadCase())
                        + "] = "
                        + Wording.value(measure) + "; finding "
                        + numbers.get(key).stream().map(String::valueOf).collect(Collectors.joining(", ")),
                lines(measure, told))));
        return blocks;
    }

    private static List<String> lines(Measure measure, Set<List<String>> told) {
        List<String> lines = new ArrayList<>();
        for (Working each : measure.workings()) {
            List<String> own = each.lines();
            if (each.listsMasses()) {
                lines.add(own.get(0) + "; the masses stand in the mass sheet"
                        + (measure.getLoadCase().isEmpty() ? "" : ", loading '" + measure.getLoadCase() + "'"));
            } else if (own.size() > MANY && !told.add(own)) {
                lines.add("as above: " + own.get(0));
            } else {
                lines.addAll(own);
            }
        }
        return lines;
    }
}
