package fitworthy.counter.told;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Counts;
import fitworthy.advice.Outcome.Check;
import fitworthy.book.Severity;
import fitworthy.counter.desk.Answer;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Pane;
import fitworthy.printout.EditWords;
import fitworthy.printout.screen.ShortPrintout;
import fitworthy.printout.words.FindingBrief;
import fitworthy.printout.words.GuessWords;
import fitworthy.printout.words.HouseWords;
import fitworthy.printout.words.Payload;
import fitworthy.printout.words.Verdict;
import fitworthy.source.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What the rules say of the plan: the verdict, then the findings, worst first, and how many checks are without one. */
public final class AdvicePane implements Pane {

    /** The findings of a severity. @param mark the severity in lower case */
    public record Group(String mark, String heading, List<FindingBrief> findings) {}

    /** Lines under a heading. */
    public record Lines(String heading, List<String> lines) {}

    /** Checks of which the number alone is told until somebody wants to see them. @param which how they ended */
    public record Rest(String which, String words) {}

    /**
     * What is shown.
     *
     * @param mark the worst severity in lower case; empty where nothing was found
     * @param changed what the last change came to; empty where there was none
     * @param fresh the checks that found something by that change
     */
    public record Shown(
            String address,
            String mark,
            List<String> verdict,
            String changed,
            Set<Check> fresh,
            List<Lines> house,
            List<Group> groups,
            List<Rest> rest) {

        /** Whether the last change brought it up. */
        public boolean isFresh(FindingBrief.Said said) {
            return said.subjects().stream().anyMatch(subject -> fresh.contains(new Check(said.id(), subject)));
        }

        /** Where it is explained. */
        public String why(FindingBrief.Said said) {
            return address + Addresses.why(said.id(), said.subjects());
        }

        /** What it is known again by on the page after a change. */
        public String id(FindingBrief.Said said) {
            return "why-" + said.id() + "-" + Addresses.encoded(said.subjects().get(0));
        }
    }

    @Override
    public String id() {
        return "told";
    }

    @Override
    public boolean staysAsSent() {
        return true;
    }

    @Override
    public String html(Seen seen) {
        return seen.now()
                .arrangement()
                .map(now -> Pages.html("told/told.jte", Map.of("shown", shown(seen, now))))
                .orElseGet(() -> Pages.html("told/none.jte", Map.of()));
    }

    private static Shown shown(Seen seen, Arrangement now) {
        Advice advice = now.advice();
        Optional<Arrangement> before = seen.before()
                .filter(was -> !was.version().equals(seen.now().version()))
                .flatMap(Answer::arrangement);
        return new Shown(
                Addresses.of(seen.sheet()),
                advice.worst().map(AdvicePane::mark).orElse(""),
                List.of(
                        seen.now().loaded().orElseThrow(),
                        Verdict.of(now),
                        "Payload: " + Payload.inFull(advice, seen.now().room().orElseThrow())),
                before.map(was -> EditWords.of(was, now)).orElse(""),
                before.map(was -> EditWords.fresh(was, now)).orElse(Set.of()),
                house(advice),
                groups(now),
                rest(now.counts()));
    }

    private static List<Lines> house(Advice advice) {
        return List.of(
                        new Lines(HouseWords.looserHeading(advice), HouseWords.looser(advice)),
                        new Lines("WAIVERS THAT DO NOT COUNT", HouseWords.idle(advice)),
                        new Lines(HouseWords.othersHeading(advice), HouseWords.others(advice)))
                .stream()
                .filter(told -> !told.lines().isEmpty())
                .toList();
    }

    private static List<Group> groups(Arrangement now) {
        Map<Severity, List<FindingBrief>> bySeverity = FindingBrief.all(now, Severity.NOTE, false).stream()
                .collect(Collectors.groupingBy(FindingBrief::severity, TreeMap::new, Collectors.toList()));
        return bySeverity.entrySet().stream()
                .map(entry -> new Group(
                        mark(entry.getKey()),
                        ShortPrintout.heading(entry.getKey(), entry.getValue().size()),
                        entry.getValue()))
                .toList();
    }

    private static String mark(Severity severity) {
        return Words.hyphenated(severity.name());
    }

    private static List<Rest> rest(Counts counts) {
        return List.of(
                        new Rest("open", counts.notAssessed() == 0 ? "" : Verdict.open(counts)),
                        new Rest("held", counts.held() == 0 ? "" : GuessWords.count(counts)),
                        new Rest("met", counts.met() == 0 ? "" : ShortPrintout.inOrder(counts)))
                .stream()
                .filter(rest -> !rest.words().isEmpty())
                .toList();
    }
}
