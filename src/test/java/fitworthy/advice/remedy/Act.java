package fitworthy.advice.remedy;

import static fitworthy.advice.remedy.Fields.changed;
import static fitworthy.advice.remedy.Where.path;

import fitworthy.advice.Outcome.Finding;
import fitworthy.sheet.Sheet;
import fitworthy.source.Node;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** What is done with a figure of a remedy. */
interface Act {

    List<Node.Mapping> done(Node.Mapping tree, Sheet sheet, Finding finding, Amount amount);

    static Act set(Where where) {
        return (tree, sheet, finding, amount) -> each(where, tree, sheet, finding, now -> amount.value(), amount, true);
    }

    static Act more(Where where) {
        return (tree, sheet, finding, amount) ->
                each(where, tree, sheet, finding, now -> now + amount.value(), amount, false);
    }

    static Act less(Where where) {
        return (tree, sheet, finding, amount) ->
                each(where, tree, sheet, finding, now -> now - amount.value(), amount, false);
    }

    private static List<Node.Mapping> each(
            Where where,
            Node.Mapping tree,
            Sheet sheet,
            Finding finding,
            DoubleUnaryOperator change,
            Amount amount,
            boolean exact) {
        List<String> paths = where.paths(tree, sheet, finding);
        Node.Mapping changed = tree;
        for (String path : paths) {
            changed = changed(changed, path(path, finding), change, amount.unit(), exact);
        }
        return paths.isEmpty() ? List.of() : List.of(changed);
    }
}
