package fitworthy.printout.screen;

import fitworthy.advice.Arrangement;
import fitworthy.advice.BuyList;
import fitworthy.advice.BuyList.Decision;
import fitworthy.advice.BuyList.Part;
import fitworthy.advice.Costs;
import fitworthy.document.Page;
import fitworthy.printout.BuyTable;
import fitworthy.printout.CostTable;
import fitworthy.printout.words.BuyWords;
import fitworthy.source.Words;
import java.util.List;
import java.util.Locale;

/** What to order now, what waits and what not to buy as planned, by name alone, and what all of it costs. */
final class BuyBrief {

    /** How many parts are named in a line, and how many things to settle first. */
    private static final int NAMED = 8;

    private static final int FIRST = 2;
    /** Columns of the words before the names. */
    private static final int LABEL = 16;

    private BuyBrief() {}

    /** Prints it with a blank line after it; nothing where there is nothing to buy or to pay for. */
    static void print(Page page, Arrangement arrangement) {
        BuyList list = BuyList.of(arrangement);
        Costs costs = Costs.of(arrangement.advice());
        if (list.parts().isEmpty() && costs.isEmpty()) {
            return;
        }
        List<String> first = BuyTable.first(list);
        page.wrapped(0, "WHAT TO BUY" + (first.isEmpty() ? "" : "; settle first: " + Words.few(first, FIRST, "; ")));
        if (!list.parts().isEmpty()) {
            List<Part> now = list.parts(Decision.ORDER_NOW);
            line(page, "Order now", now.isEmpty() ? "nothing" : names(now));
            List<Part> waiting = list.parts(Decision.WAIT);
            others(page, "Wait", waiting);
            unruled(page, waiting);
            others(page, "Not as planned", list.parts(Decision.NOT_AS_PLANNED));
        }
        if (!costs.isEmpty()) {
            int priced = costs.total().priced().size();
            int unpriced = costs.total().unpriced().size();
            line(
                    page,
                    "Cost",
                    (unpriced == 0 ? "" : priced + " of " + (priced + unpriced) + " with a price: ")
                            + CostTable.sums(costs.total())
                            + (costs.worked() ? "; workshop time not counted" : ""));
        }
        page.blank();
    }

    private static void others(Page page, String label, List<Part> parts) {
        if (!parts.isEmpty()) {
            line(page, label, names(parts));
        }
    }

    /** What the book lacks is no finding below, so that nobody would see why a part waits and who can say. */
    private static void unruled(Page page, List<Part> waiting) {
        List<Part> parts = waiting.stream().filter(BuyWords::waitsForBook).toList();
        if (!parts.isEmpty()) {
            line(
                    page,
                    "Ask first",
                    BuyWords.unruled(parts) + (parts.size() == waiting.size() ? "" : " (for " + names(parts) + ")"));
        }
    }

    private static String names(List<Part> parts) {
        return Words.few(parts.stream().map(Part::name).toList(), NAMED);
    }

    private static void line(Page page, String label, String text) {
        page.hanging(String.format(Locale.ROOT, "%-" + LABEL + "s", label), text);
    }
}
