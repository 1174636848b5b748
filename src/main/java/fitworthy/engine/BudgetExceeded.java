package fitworthy.engine;

import fitworthy.rules.RuleText;
import fitworthy.source.Fault;

/** A rule that would not come to an end, or would take all the memory there is. No advice is given. */
public final class BudgetExceeded extends RuntimeException {

    private final transient Fault fault;

    BudgetExceeded(RuleText rule, String problem) {
        super(rule.id() + " " + problem);
        this.fault = new Fault(
                rule.place(),
                "",
                "the rule '" + rule.id() + "' " + problem,
                "a condition that holds or does not, once for each thing it is about");
    }

    /** Where the rule stands and what it would do. */
    public Fault fault() {
        return fault;
    }
}
