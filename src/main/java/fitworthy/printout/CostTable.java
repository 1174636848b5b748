package fitworthy.printout;

import static fitworthy.document.Report.Column.figure;
import static fitworthy.document.Report.Column.text;

import fitworthy.advice.Advice;
import fitworthy.advice.Costs;
import fitworthy.advice.Costs.Sum;
import fitworthy.document.Page;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Table;
import fitworthy.printout.words.Digits;
import fitworthy.source.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What the plan costs, and what of it has no price. */
public final class CostTable {

    /** Things without a price that are named in short. */
    private static final int MOST = 5;

    private CostTable() {}

    /** The sum, what has no price, and the work, in a few lines; nothing where there is nothing to pay for. */
    public static void print(Page page, Advice advice) {
        Costs costs = Costs.of(advice);
        if (costs.isEmpty()) {
            return;
        }
        page.hanging("Cost     ", priced(costs.total()) + ".");
        notCounted(costs).forEach(line -> page.wrapped(9, line));
        page.blank();
    }

    /** The sum and what it does not hold, in sentences. */
    static String inShort(Advice advice) {
        Costs costs = Costs.of(advice);
        return costs.isEmpty()
                ? "Nothing is to be paid for."
                : "Price: " + priced(costs.total()) + ". " + String.join(" ", notCounted(costs, MOST));
    }

    /** The sums by group, then each certificate, then all of it. */
    public static List<Block> blocks(Advice advice) {
        Costs costs = Costs.of(advice);
        if (costs.isEmpty()) {
            return List.of();
        }
        boolean unpriced =
                costs.groups().values().stream().anyMatch(sum -> !sum.unpriced().isEmpty());
        List<Row> rows = new ArrayList<>();
        costs.groups()
                .forEach((group, sum) ->
                        rows.add(row(unpriced, false, group.words(), sums(sum), String.join(", ", sum.unpriced()))));
        costs.certificates()
                .forEach(paper -> rows.add(row(
                        unpriced,
                        false,
                        paper.name(),
                        paper.price() == null ? "no price" : paper.price().toString(),
                        "")));
        rows.add(row(unpriced, true, "All that has a price", sums(costs.total()), ""));
        List<Block> blocks = new ArrayList<>(List.of(new Table(
                "Price by group, as the sheet gives it; what is done is paid for",
                unpriced
                        ? List.of(text("Group or certificate", 38), figure("Price", 24), text("Without a price", 38))
                        : List.of(text("Group or certificate", 76), figure("Price", 24)),
                rows)));
        notCounted(costs).forEach(line -> blocks.add(new Paragraph(line)));
        return blocks;
    }

    /** @param unpriced whether there is a column for what has no price @param all whether it is the sum */
    private static Row row(boolean unpriced, boolean all, String... cells) {
        return new Row(List.of(cells).subList(0, unpriced ? 3 : 2), "", all);
    }

    /** What all of it costs; where not all has a price, first of how many that is. */
    static String priced(Sum sum) {
        int priced = sum.priced().size();
        if (sum.unpriced().isEmpty()) {
            return sums(sum) + " for all parts and certificates";
        }
        String of = " of " + (priced + sum.unpriced().size()) + " parts and certificates ";
        return priced == 0
                ? "not known; none" + of + "has a price"
                : priced + of + (priced == 1 ? "has a price, " : "have a price, together ") + sums(sum);
    }

    public static String sums(Sum sum) {
        return sum.sums().isEmpty()
                ? "no price"
                : sum.sums().entrySet().stream().map(CostTable::amount).collect(Collectors.joining(" + "));
    }

    private static String amount(Map.Entry<String, BigDecimal> sum) {
        return sum.getValue().toPlainString() + " " + sum.getKey();
    }

    /** What the sum does not hold, in a sentence each. */
    private static List<String> notCounted(Costs costs) {
        return notCounted(costs, Integer.MAX_VALUE);
    }

    /** @param most how many things without a price are named */
    private static List<String> notCounted(Costs costs, int most) {
        List<String> lines = new ArrayList<>();
        List<String> unpriced = costs.total().unpriced();
        if (!unpriced.isEmpty()) {
            lines.add("Without a price on the sheet: " + Words.few(unpriced, most) + ".");
        }
        if (costs.worked()) {
            lines.add("Not counted: the workshop's time"
                    + (costs.work().known()
                            ? ", " + Digits.number(costs.work().value(), "", 1) + " working days."
                            : "."));
        }
        return lines;
    }
}
