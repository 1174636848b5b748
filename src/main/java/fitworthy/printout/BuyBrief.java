package fitworthy.printout;

import fitworthy.advice.Arrangement;
import fitworthy.advice.BuyList;
import fitworthy.advice.BuyList.Decision;
import fitworthy.advice.BuyList.Part;
import fitworthy.advice.Costs;
import fitworthy.document.Page;
import java.util.List;
import java.util.Locale;

/** What to order now, what waits and what not to buy as planned, by name alone, and what all of it costs. */
final class BuyBrief {

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
        page.wrapped(0, "WHAT TO BUY" + (first.isEmpty() ? "" : "; settle first: " + String.join("; ", first)));
        if (!list.parts().isEmpty()) {
            line(page, "Order now", list.parts(Decision.ORDER_NOW));
            line(page, "Wait", list.parts(Decision.WAIT));
            line(page, "Not as planned", list.parts(Decision.NOT_AS_PLANNED));
        }
        if (!costs.isEmpty()) {
            int unpriced = costs.total().unpriced().size();
            line(
                    page,
                    "Cost",
                    CostTable.sums(costs.total()) + (unpriced == 0 ? "" : "; " + unpriced + " without a price")
                            + (costs.worked() ? "; workshop time not counted" : ""));
        }
        page.blank();
    }

    private static void line(Page page, String label, List<Part> parts) {
        line(page, label, parts.isEmpty() ? "nothing" : BuyTable.names(parts));
    }

    private static void line(Page page, String label, String text) {
        page.hanging(String.format(Locale.ROOT, "%-" + LABEL + "s", label), text);
    }
}
