package fitworthy.advice.remedy;

import static fitworthy.advice.remedy.Act.more;
import static fitworthy.advice.remedy.Doing.says;
import static fitworthy.advice.remedy.Where.at;

import fitworthy.quantity.Dimension;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.stream.Stream;

/** Dates of the work and of the papers. */
final class OrderRemedies {

    private OrderRemedies() {}

    static void into(RemedyTable table) {
        table.rule("order.late order.late-already order.late-in-turn", says("a day ", " later", later("ready-by")));
        table.rule("order.booked-early", says("at least ", " later", (tree, sheet, finding, amount) -> Stream.of(
                        "fitments.", "jobs.", "tanks.")
                .map(list -> list + finding.judged().subject() + ".work.booked")
                .filter(path -> NodePath.parse(path).in(tree) != null)
                .flatMap(path -> later(path).done(tree, sheet, finding, amount).stream())
                .toList()));
        table.rule("paperwork.delivered-late", says("held ", " longer", more(at("papers.offer"))));
        table.told(RemedyTable.LEFT_OR_USUAL, "order.order-now order.broken-up");
    }

    private static Act later(String field) {
        return (tree, sheet, finding, amount) -> Arrays.asList(Trees.with(
                tree,
                NodePath.parse(field),
                LocalDate.parse(((Node.Scalar) NodePath.parse(field).in(tree)).text())
                        .plusDays(Math.round(amount.value() / Dimension.size("days")))
                        .toString()));
    }
}
