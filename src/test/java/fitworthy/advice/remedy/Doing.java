package fitworthy.advice.remedy;

import fitworthy.advice.Outcome.Finding;
import fitworthy.sheet.Sheet;
import fitworthy.source.Node;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One thing that a remedy says. */
public interface Doing {

    /** The sheets that come of it, any of which will do; none where the sheet gives no such field. */
    List<Node.Mapping> ways(Node.Mapping tree, Sheet sheet, Finding finding, String remedy);

    /** This and another thing, both done. */
    default Doing and(Doing other) {
        return (tree, sheet, finding, remedy) -> ways(tree, sheet, finding, remedy).stream()
                .flatMap(way -> other.ways(way, sheet, finding, remedy).stream())
                .toList();
    }

    /** Behind a limit of the law that is printed in its own units too. */
    String AS_RECORDED = "(?: \\([0-9.]+ (?:lb|in|mph)\\))?";

    /** @param before what stands before the figure, and {@code after} what stands behind it, as patterns */
    static Doing says(String before, String after, Act act) {
        Pattern pattern = Pattern.compile(before + Amount.PATTERN + AS_RECORDED + after);
        return (tree, sheet, finding, remedy) -> {
            Matcher matcher = pattern.matcher(remedy);
            if (!matcher.find()) {
                throw new AssertionError(finding.judged().id() + " does not say '" + pattern + "': " + remedy);
            }
            return act.done(tree, sheet, finding, Amount.of(matcher.group(1)));
        };
    }
}
