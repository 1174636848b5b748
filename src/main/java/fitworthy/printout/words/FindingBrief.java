package fitworthy.printout.words;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Arrangement.Told;
import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Severity;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is said of a finding in few lines, wherever that is.
 *
 * @param number its number in every list of them, from 1, worst first
 * @param said the finding
 * @param whatToDo the figures of the worst loading and the order to the workshop; empty for a note, of which the title
 *     tells enough
 * @param beside what it rests on where that is guessed, who stands for it, and what a shop sets
 * @param actor who acts on it, as a sentence without its end
 * @param under what is listed under it, each rule once
 */
public record FindingBrief(
        int number,
        Said said,
        Severity severity,
        String whatToDo,
        List<String> beside,
        String actor,
        List<Part> under) {

    /** What was found by one rule. @param subjects what it was found on, the worst first */
    public record Said(String id, List<String> subjects, String title, boolean waived) {}

    /** What is listed under a finding. @param beside who stands for it */
    public record Part(Said said, List<String> beside) {}

    /**
     * Those of some advice that are no milder than {@code mildest}, worst first.
     *
     * @param naming whether to name the guesses that each rests on, which takes longer than all else
     */
    public static List<FindingBrief> all(Arrangement arrangement, Severity mildest, boolean naming) {
        Advice advice = arrangement.advice();
        Addressees addressees =
                new Addressees(advice.sheet().planned(), advice.book().tables().shopWords());
        List<FindingBrief> all = new ArrayList<>();
        arrangement.told(mildest).forEach(told -> all.add(of(arrangement, addressees, all.size() + 1, told, naming)));
        return List.copyOf(all);
    }

    private static FindingBrief of(
            Arrangement arrangement, Addressees addressees, int number, Told told, boolean naming) {
        Group<Finding> head = told.head();
        Map<String, List<Group<Finding>>> byRule =
                told.all().collect(Collectors.groupingBy(Group::id, LinkedHashMap::new, Collectors.toList()));
        List<Group<Finding>> alike = byRule.remove(head.id());
        return new FindingBrief(
                number,
                said(arrangement, alike),
                head.severity(),
                head.severity() == Severity.NOTE ? "" : whatToDo(arrangement, head),
                Stream.of(
                                GuessWords.brief(arrangement, head, naming).stream(),
                                waivers(alike),
                                HouseWords.severity(arrangement.advice(), head.id()).stream()
                                        .map(set -> "Severity: " + set))
                        .flatMap(lines -> lines)
                        .toList(),
                Asked.acts(addressees, head),
                byRule.values().stream()
                        .map(same ->
                                new Part(said(arrangement, same), waivers(same).toList()))
                        .toList());
    }

    private static Said said(Arrangement arrangement, List<Group<Finding>> same) {
        List<String> subjects = new ArrayList<>();
        same.forEach(group -> subjects.add(group.worst().judged().subject()));
        String others = String.join(", ", subjects.subList(1, subjects.size()));
        return new Said(
                same.get(0).id(),
                List.copyOf(subjects),
                title(arrangement, same.get(0)) + (others.isEmpty() ? "" : "; also " + others),
                same.get(0).isWaived());
    }

    /** What was found, and whether somebody stands for it or it rests on guesses. */
    public static String title(Arrangement arrangement, Group<Finding> group) {
        return (group.isWaived() ? "Waived: " : "")
                + before(arrangement, group)
                + Wording.fill(group.card().title(), group.worst());
    }

    /** Before what was found, how sure that is. */
    public static String before(Arrangement arrangement, Group<Finding> group) {
        List<String> sure = Stream.of(
                        arrangement.isGuessed(group) ? "on guesses" : "", group.isTooClose() ? TooClose.WHETHER : "")
                .filter(words -> !words.isEmpty())
                .toList();
        return sure.isEmpty() ? "" : Words.capital(String.join(", ", sure)) + ": ";
    }

    private static Stream<String> waivers(List<Group<Finding>> groups) {
        return groups.stream().flatMap(group -> HouseWords.waivers(group).stream());
    }

    private static String whatToDo(Arrangement arrangement, Group<Finding> group) {
        Finding worst = group.worst();
        if (arrangement.isDecidedByGuesses(group)) {
            return Words.capital(Wording.figureAndLimit(
                            worst.judged(), worst.comparison().orElseThrow()))
                    + loading(group) + "; " + TooClose.WORDS + ": measure what is guessed.";
        }
        Optional<String> figures = worst.comparison()
                .map(comparison -> Wording.brief(worst.judged(), comparison)
                        + loading(group)
                        + (comparison.uncertain()
                                ? "; " + TooClose.WORDS + " (" + Wording.spread(worst.judged(), comparison) + ")"
                                : "")
                        + ". ");
        return Words.capital(figures.orElseGet(() -> in(arrangement, group))
                + TooClose.first(group, arrangement.isGuessed(group), Wording.order(worst)));
    }

    /** Of what no figure decides, the loadings in which it is so; empty where it is so in all. */
    private static String in(Arrangement arrangement, Group<Finding> group) {
        String loading = Wording.loadings(group.worst(), group.outcomes(), FindingBrief::passed);
        return loading.isEmpty()
                        || group.outcomes().size()
                                == arrangement.advice().loadings().size()
                ? ""
                : "In " + loading + ": ";
    }

    /** In brackets, the loading in which it is worst, and what it comes to in others; empty where none matters. */
    public static String loading(Group<Finding> group) {
        return group.worst().judged().loadCase().isEmpty()
                ? ""
                : " (" + Wording.loadings(group.worst(), group.outcomes(), FindingBrief::passed) + ")";
    }

    private static String passed(Finding finding) {
        return finding.comparison()
                .map(comparison -> Wording.margin(finding.judged(), comparison))
                .orElse("");
    }
}
