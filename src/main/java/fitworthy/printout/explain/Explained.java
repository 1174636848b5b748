package fitworthy.printout.explain;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Explanation;
import fitworthy.advice.Outcome.Finding;
import fitworthy.document.Lines;
import fitworthy.document.Lines.Line;
import fitworthy.document.Report.Cited;
import fitworthy.document.Report.FindingBlock;
import fitworthy.printout.AnnexPages;
import fitworthy.printout.FindingBlocks;
import fitworthy.shelf.Taken;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * Why a check came out as it did, for a screen: what it found, and how that was worked out.
 *
 * @param findings what was found; none where nothing was, of which the lines then tell all
 * @param lines what was looked at, with every figure and comparison
 * @param sources the texts that the findings rest on
 * @param rules where it stands in the book; none where no rule is explained
 */
public record Explained(List<FindingBlock> findings, List<Line> lines, List<Cited> sources, List<InBook> rules) {

    /** Where a rule stands. @param place the rule's file and line */
    public record InBook(String id, String place) {}

    /**
     * A rule on some subjects.
     *
     * @param taken what the sheet has from its shelf
     * @param rule its present id
     * @param subjects what it was about; none for whatever it was about
     * @param loading one alone; empty for all
     * @param field what a field is called, by its path
     */
    public static Explained of(
            Arrangement arrangement,
            List<Taken> taken,
            String rule,
            List<String> subjects,
            String loading,
            UnaryOperator<String> field) {
        Advice advice = arrangement.advice();
        FindingBlocks blocks = new FindingBlocks(arrangement, List.of());
        List<Group<Finding>> found = arrangement.findings().stream()
                .filter(group -> group.id().equals(rule)
                        && isAbout(subjects, group.worst().judged().subject()))
                .toList();
        Predicate<Explanation> wanted =
                explained -> isAbout(subjects, explained.judged().getSubject())
                        && List.of("", explained.loadCase()).contains(loading);
        Lines lines = new Lines();
        if (found.isEmpty()) {
            ExplanationPrintout.printPlainly(lines, advice, taken, Saying.plainly(field), rule, wanted);
        } else {
            ExplanationPrintout.printSteps(lines, advice, taken, Saying.plainly(field), rule, wanted);
        }
        return new Explained(
                found.stream().map(blocks::alone).toList(),
                lines.told(),
                AnnexPages.sources(
                        advice,
                        found.stream()
                                .flatMap(group -> group.outcomes().stream())
                                .toList()),
                List.of(new InBook(
                        rule, Saying.line(advice.book().rules().get(rule).place()))));
    }

    private static boolean isAbout(List<String> subjects, String subject) {
        return subjects.isEmpty() || subjects.contains(subject);
    }

    /**
     * What each loading leaves for more.
     *
     * @param id one of its figures, or the name of all of them
     * @param field what a field is called, by its path
     */
    public static Explained room(Advice advice, String id, UnaryOperator<String> field) {
        Lines lines = new Lines();
        RoomPrintout.print(lines, advice, Saying.plainly(field), id);
        return new Explained(List.of(), lines.told(), List.of(), List.of());
    }
}
