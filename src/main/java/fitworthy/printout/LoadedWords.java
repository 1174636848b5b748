package fitworthy.printout;

import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Margin;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.book.Severity;
import fitworthy.printout.words.Wording;
import fitworthy.source.Words;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Whether the loaded vehicle keeps within its ratings, and by how much, in words. */
final class LoadedWords {

    private static final int MOST = 4;

    private LoadedWords() {}

    /** Whether anything carries more than it is rated for. */
    static String legal(Arrangement arrangement) {
        List<Group<Finding>> over = passed(arrangement);
        if (!over.isEmpty()) {
            return "No. " + over.size() + (over.size() == 1 ? " mass rating is" : " mass ratings are") + " passed.";
        }
        if (arrangement.margins().isEmpty()) {
            return "Not checked: information missing.";
        }
        boolean guessed = arrangement.margins().stream()
                .anyMatch(margin -> !margin.guessed().isEmpty());
        boolean open = !Margin.waitsFor(arrangement.advice()).isEmpty();
        return (guessed ? "If the guesses hold, within" : "Within") + " every mass rating"
                + (open ? " that could be checked; others lack information." : " checked, in every loading.");
    }

    /** By how much, or what is spare where least is. */
    static String over(Arrangement arrangement) {
        List<Group<Finding>> over = passed(arrangement);
        if (over.isEmpty()) {
            return arrangement.margins().stream()
                    .min(Comparator.comparingDouble(Margin::least))
                    .map(LoadedWords::least)
                    .orElse("Not known.");
        }
        return Words.capital(over.stream()
                        .limit(MOST)
                        .map(group -> over(arrangement, group))
                        .collect(Collectors.joining("; ")))
                + (over.size() > MOST ? "; and " + (over.size() - MOST) + " more" : "") + ".";
    }

    private static String least(Margin margin) {
        String loading = margin.left().entrySet().stream()
                .min(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
        return "Nothing is over. Least spare: " + MarginTable.least(margin) + ", " + margin.limit()
                + (loading.isEmpty() ? "" : " (" + loading + ")") + ".";
    }

    private static String over(Arrangement arrangement, Group<Finding> group) {
        Finding worst = group.worst();
        Judged judged = worst.judged();
        Comparison shown = Wording.asPrinted(judged, worst.comparison().orElseThrow());
        return judged.subject() + ", " + judged.measure().kind().limitMeaning() + ": "
                + (arrangement.guesses(group).isEmpty() ? "" : "about ")
                + Wording.quantity(
                        Math.abs(shown.margin()),
                        Wording.kind(judged, worst.comparison().orElseThrow()))
                + " over" + (judged.loadCase().isEmpty() ? "" : " (" + judged.loadCase() + ")");
    }

    /** Stops for more mass than something is rated for, waived or not. */
    private static List<Group<Finding>> passed(Arrangement arrangement) {
        return arrangement.findings().stream()
                .filter(group -> group.severity() == Severity.STOP
                        && group.card().againstLimit()
                        && !group.card().atLeast()
                        && group.worst().judged().measure().kind().unit().equals("kg")
                        && group.worst()
                                .comparison()
                                .filter(comparison -> comparison.margin() < 0)
                                .isPresent())
                .toList();
    }
}
