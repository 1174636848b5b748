package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.Met;
import fitworthy.book.DatedLimit;
import fitworthy.book.Practice;
import fitworthy.book.Severity;
import fitworthy.document.Page;
import fitworthy.printout.words.Wording;
import fitworthy.source.Words;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Advice as plain text, at most 80 columns wide. Colour only repeats what the words say. */
public final class TextPrintout {

    private static final int INDENT = 9;

    private final Page page;
    private final boolean colour;
    private final boolean everything;

    /** @param everything whether to list each thing that was met, rather than count them */
    public TextPrintout(PrintWriter out, boolean colour, boolean everything) {
        this.page = new Page(out);
        this.colour = colour;
        this.everything = everything;
    }

    /** Prints advice whose findings are no milder than {@code mildest}. */
    public void print(Advice advice, Severity mildest) {
        title(advice);
        section(
                "LOOSER THAN THE BOOK, on the word of "
                        + advice.book().house().page().shop() + ":",
                HouseWords.looser(advice));
        groups(advice.findings().stream()
                        .filter(finding ->
                                finding.judged().card().severity().value().compareTo(mildest) <= 0)
                        .toList())
                .forEach(group -> findings(advice, group));
        notAssessed(advice);
        section("WAIVERS THAT DO NOT COUNT:", HouseWords.idle(advice));
        met(advice);
        if (!HouseWords.house(advice).isEmpty()) {
            page.blank();
            section("OTHERWISE SET by " + advice.book().house().page().shop() + ":", HouseWords.others(advice));
        }
        page.rule();
        page.wrapped(0, advice.book().cover().caution());
        page.flush();
    }

    /** A heading with a line for each entry; nothing where there is none. */
    private void section(String heading, List<String> entries) {
        if (!entries.isEmpty()) {
            page.wrapped(0, heading);
            entries.forEach(each -> page.hanging("  - ", each));
            page.blank();
        }
    }

    private void title(Advice advice) {
        page.wrapped(0, "Fitworthy: advice, not certification");
        page.rule();
        page.wrapped(0, advice.sheet().title());
        field("Vehicle", advice.sheet().vehicle().name());
        field(
                "For",
                String.join(
                        ", ",
                        List.of(advice.sheet().customer(), advice.sheet().quote()).stream()
                                .filter(each -> !each.isEmpty())
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
                advice.loadings().stream().map(each -> each.loadCase().name()).collect(Collectors.joining(", ")));
        page.blank();
        page.wrapped(0, verdict(advice));
        page.blank();
        List<String> margins = MarginTable.of(advice).lines(Page.COLUMNS);
        margins.forEach(page::line);
        if (!margins.isEmpty()) {
            page.blank();
        }
    }

    private void field(String name, String value) {
        if (!value.isEmpty()) {
            page.hanging(String.format(Locale.ROOT, "%-9s", name), value);
        }
    }

    /** The outcome in a sentence. */
    static String verdict(Advice advice) {
        Map<Severity, Long> counts = new TreeMap<>();
        groups(advice.findings().stream()
                        .filter(each -> each.waiver().isEmpty())
                        .toList())
                .forEach(group ->
                        counts.merge(group.get(0).judged().card().severity().value(), 1L, Long::sum));
        List<String> parts = new ArrayList<>();
        counts.forEach((severity, count) -> parts.add(count + " " + Words.hyphenated(severity.name())));
        int open = Wanted.rules(advice.notAssessed()).size();
        if (open > 0) {
            parts.add(open + " not assessed for want of a figure");
        }
        String waived = HouseWords.waived(advice);
        String first = advice.worst()
                .map(worst -> switch (worst) {
                    case STOP -> "Do not buy, fit or drive it so.";
                    case CHANGE -> "Something in the plan has to change.";
                    case CONFIRM -> "Somebody has to agree before it goes ahead.";
                    case NOTE -> "Nothing in the way, with something worth knowing.";
                })
                .orElse(waived.isEmpty() ? "Nothing found in what was assessed." : "Nothing found but what is waived.");
        return first
                + (parts.isEmpty() ? "" : " Found: " + String.join(", ", parts) + ".")
                + (waived.isEmpty() ? "" : " Not counted: " + waived + ".");
    }

    /** Findings of the same rule on the same subject, over the load cases. */
    static List<List<Finding>> groups(List<Finding> findings) {
        return List.copyOf(grouped(findings).values());
    }

    private static <O extends Outcome> Map<String, List<O>> grouped(Collection<O> outcomes) {
        return outcomes.stream()
                .collect(Collectors.groupingBy(
                        each -> each.judged().id() + "|" + each.judged().subject(),
                        LinkedHashMap::new,
                        Collectors.toList()));
    }

    private void findings(Advice advice, List<Finding> group) {
        Finding worst = group.stream()
                .min(Comparator.comparingDouble(
                        each -> each.comparison().map(Comparison::margin).orElse(0.0)))
                .orElseThrow();
        Judged judged = worst.judged();
        Function<String, String> filled =
                text -> Wording.fill(text, judged, worst.comparison(), worst.evidence(), worst.practice());
        Severity severity = judged.card().severity().value();
        page.hanging(
                painted(severity, String.format(Locale.ROOT, "%-9s", severity.name())),
                (group.stream().allMatch(each -> each.waiver().isPresent()) ? "Waived: " : "")
                        + filled.apply(judged.card().title()));
        page.wrapped(INDENT, judged.id() + " (" + judged.rule().place().inBook() + ")");
        cases(group, finding -> finding.comparison()
                .map(each -> Wording.comparison(finding.judged(), each))
                .orElse(finding.judged().measure().kind().meaning() + ": "
                        + Wording.value(finding.judged().measure())));
        HouseWords.waivers(group).forEach(each -> page.wrapped(INDENT, each));
        HouseWords.severity(advice, judged.id()).ifPresent(each -> page.wrapped(INDENT, "Severity: " + each));
        page.wrapped(INDENT, "Do: " + Wording.remedy(worst));
        page.wrapped(INDENT, "Why: " + filled.apply(judged.card().why()));
        page.wrapped(INDENT, "Ask: " + filled.apply(judged.card().ask()));
        evidence(judged, worst.practice());
        page.blank();
    }

    private void cases(List<Finding> group, Function<Finding, String> figures) {
        Map<String, List<String>> byFigures = new LinkedHashMap<>();
        group.forEach(finding -> byFigures
                .computeIfAbsent(figures.apply(finding), key -> new ArrayList<>())
                .add(finding.judged().loadCase()));
        byFigures.forEach((text, cases) -> page.wrapped(
                INDENT, cases.get(0).isEmpty() ? Words.capital(text) : String.join(", ", cases) + ": " + text));
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
                    .append(entry.from())
                    .append(", ")
                    .append(entry.basis().value().words());
            if (!entry.sources().isEmpty()) {
                text.append(" [").append(String.join(", ", entry.sources())).append("]");
            }
            text.append(entry.note().isEmpty() ? ")" : "; " + entry.note() + ")");
        }
        page.wrapped(INDENT, text.toString());
    }

    private void notAssessed(Advice advice) {
        List<Wanted> wanted = Wanted.of(advice.notAssessed());
        if (wanted.isEmpty()) {
            return;
        }
        page.wrapped(0, "NOT ASSESSED for want of a figure; bring:");
        wanted.forEach(each -> {
            page.hanging(
                    "  - ",
                    each.what() + ": " + each.missing().meaning() + ". Find it: "
                            + each.missing().find() + ".");
            page.wrapped(4, "Waiting for it: " + String.join(", ", each.rules()));
        });
        page.blank();
    }

    private void met(Advice advice) {
        Map<String, List<Met>> groups = grouped(advice.met());
        if (groups.isEmpty()) {
            return;
        }
        if (!everything) {
            page.wrapped(0, "MET: " + groups.size() + " checks assessed and in order (--all lists them).");
            return;
        }
        page.wrapped(0, "MET, assessed and in order:");
        groups.values().forEach(group -> {
            Met closest = group.stream()
                    .min(Comparator.comparingDouble(
                            each -> each.comparison().map(Comparison::margin).orElse(Double.MAX_VALUE)))
                    .orElseThrow();
            Judged judged = closest.judged();
            Set<String> cases = new LinkedHashSet<>();
            group.forEach(each -> cases.add(each.judged().loadCase()));
            Optional<String> figures = closest.comparison().map(each -> Wording.comparison(judged, each));
            page.hanging(
                    "  - ",
                    Wording.fill(
                                    judged.card().met(),
                                    judged,
                                    closest.comparison(),
                                    closest.evidence(),
                                    closest.practice())
                            + " (" + judged.id() + ")");
            figures.ifPresent(text -> page.wrapped(
                    4,
                    (judged.loadCase().isEmpty()
                                    ? ""
                                    : cases.size() > 1
                                            ? "closest in " + judged.loadCase() + ": "
                                            : judged.loadCase() + ": ")
                            + text));
            closest.practice().stream()
                    .filter(each -> each.house().isPresent())
                    .forEach(each -> page.wrapped(
                            4,
                            each.id() + " " + Wording.value(each) + ", set by the shop. "
                                    + each.entry().note()));
        });
    }

    private String painted(Severity severity, String text) {
        if (!colour) {
            return text;
        }
        String code =
                switch (severity) {
                    case STOP -> "\u001B[1;31m";
                    case CHANGE -> "\u001B[1;35m";
                    case CONFIRM -> "\u001B[1;36m";
                    case NOTE -> "\u001B[1m";
                };
        return code + text + "\u001B[0m";
    }
}
