package fitworthy.printout.words;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.HouseUse;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Waiving;
import fitworthy.book.FormerIds;
import fitworthy.book.House;
import fitworthy.book.Practice;
import fitworthy.book.Severity;
import fitworthy.sheet.Waiver;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What a house or a person answers for, in words: values and severities set over the book, and waivers. */
public final class HouseWords {

    private HouseWords() {}

    /** The house and its file, or nothing. */
    public static String house(Advice advice) {
        House house = advice.book().house();
        return house.isNone() ? "" : house.page().shop() + ", " + house.file() + ", content " + house.content();
    }

    /** The heading of what is looser or milder than the book, which the shop answers for. */
    public static String looserHeading(Advice advice) {
        return "LOOSER THAN THE BOOK, as decided by "
                + advice.book().house().page().shop();
    }

    /** The heading of the rest of what is set. */
    public static String othersHeading(Advice advice) {
        return "OTHERWISE SET by " + advice.book().house().page().shop();
    }

    /** The lines of what is looser or milder than the book. */
    public static List<String> looser(Advice advice) {
        return lines(HouseUse.of(advice), true);
    }

    /** The lines of the rest of what is set, and of what makes no difference. */
    public static List<String> others(Advice advice) {
        HouseUse use = HouseUse.of(advice);
        List<String> lines = new ArrayList<>(lines(use, false));
        use.idle().stream()
                .collect(Collectors.groupingBy(HouseUse.Idle::why, TreeMap::new, Collectors.toList()))
                .forEach((why, entries) -> lines.add((why == HouseUse.Why.NOT_ASKED
                                ? "Not asked for by this sheet: "
                                : "Changing nothing in this region on this day: ")
                        + entries.stream().map(HouseUse.Idle::entry).collect(Collectors.joining("; "))));
        use.ended()
                .forEach(entry -> lines.add(
                        entry.entry() + ": " + entry.retired() + "; what the shop sets for it is not needed"));
        advice.book()
                .house()
                .renamed()
                .forEach(
                        (former, present) -> lines.add(FormerIds.now(former, present) + "; the house file may say so"));
        return lines;
    }

    private static List<String> lines(HouseUse use, boolean looser) {
        List<String> lines = new ArrayList<>();
        for (Practice each : use.values()) {
            if (each.house().orElseThrow().looser() == looser) {
                lines.add(each.id() + " " + Wording.value(each) + ", "
                        + each.entry().region() + " from " + each.entry().from() + ". "
                        + each.entry().note());
            }
        }
        for (House.SetSeverity each : use.severities()) {
            if (each.milder() == looser) {
                lines.add(each.set().rule() + ": " + severity(each));
            }
        }
        return lines;
    }

    /** A severity that the house set over the book's. */
    public static String severity(House.SetSeverity set) {
        return word(set.set().severity().value()) + ", set by the shop in place of " + word(set.recorded()) + "."
                + (set.milder()
                        ? " Milder: "
                                + House.onWhoseWord(
                                        set.set().reason(), set.set().name())
                        : "");
    }

    /** The severity that the house set for a rule, if it did. */
    public static Optional<String> severity(Advice advice, String rule) {
        return Optional.ofNullable(advice.book().house().severities().get(rule)).map(HouseWords::severity);
    }

    /** Who stands for a finding of a rule, until when, and why; and where the waiver names the rule as it was called. */
    public static String waiver(Waiver waiver, String rule) {
        return "by " + waiver.by() + " until " + waiver.until() + ": " + waiver.reason()
                + (waiver.rule().equals(rule) ? "" : " (" + FormerIds.now(waiver.rule(), rule) + ")");
    }

    /** How many findings of each severity are waived and by whom, in a sentence; nothing where none is. */
    static String waived(Arrangement arrangement) {
        Map<Severity, Map<String, Long>> counts = new TreeMap<>();
        arrangement.waived().forEach(group -> group.waivers().keySet().forEach(waiver -> counts.computeIfAbsent(
                        group.severity(), none -> new LinkedHashMap<>())
                .merge(waiver.by() + " until " + waiver.until(), 1L, Long::sum)));
        return counts.entrySet().stream()
                .flatMap(severity -> severity.getValue().entrySet().stream()
                        .map(waiver ->
                                waiver.getValue() + " " + SeverityWords.behind(waiver.getValue(), severity.getKey())
                                        + " waived by " + waiver.getKey()))
                .collect(Collectors.joining(", "));
    }

    /** Each different waiver of a rule's findings on one subject, with the load cases it is for. */
    public static List<String> waivers(Group<Finding> group) {
        return group.waivers().entrySet().stream()
                .map(waived -> "Waived "
                        + (waived.getValue().get(0).isEmpty() ? "" : "in " + String.join(", ", waived.getValue()) + " ")
                        + waiver(waived.getKey(), group.id()))
                .toList();
    }

    /** The waivers that waive nothing, each with why. */
    public static List<String> idle(Advice advice) {
        return advice.waivers().stream()
                .filter(waiver -> waiver.state() != Waiving.State.ACTIVE)
                .map(waiver -> waiver.rule()
                        + (waiver.waiver().subject().isEmpty()
                                ? ""
                                : " [" + waiver.waiver().subject() + "]")
                        + (waiver.waiver().in().isEmpty()
                                ? ""
                                : ", " + waiver.waiver().in()) + ", waived "
                        + waiver(waiver.waiver(), waiver.rule()) + " - " + why(waiver, advice))
                .toList();
    }

    private static String why(Waiving waiver, Advice advice) {
        return switch (waiver.state()) {
            case ACTIVE -> "it counts";
            case RETIRED ->
                advice.book()
                                .retired(waiver.rule(), advice.sheet().asOf())
                                .orElseThrow()
                                .words(waiver.rule())
                        + "; the waiver is not needed";
            case EXPIRED -> "its last day is past";
            case TOO_WIDE -> "a stop is waived only with its subject and load case named ('subject:' and 'in:')";
            case NOT_ASSESSED -> "it was not checked, and what is not known cannot be waived";
            case NOTHING_FOUND -> "there is no such finding";
        };
    }

    private static String word(Severity severity) {
        return Words.hyphenated(severity.name());
    }
}
