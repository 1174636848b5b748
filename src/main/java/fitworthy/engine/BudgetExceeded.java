package fitworthy.engine;

import fitworthy.rules.RuleReferences;
import fitworthy.source.Fault;
import fitworthy.source.Place;

/** A rule that would not come to an end, or would take all the memory there is. No advice is given. */
public final class BudgetExceeded extends RuntimeException {

    private final transient Fault fault;

    BudgetExceeded(RuleReferences rule, String problem) {
        super(rule.id() + " " + problem);
        this.fault = new Fault(
                new Place(rule.file(), rule.line(), 0),
                "",
                "the rule '" + rule.id() + "' " + problem,
                "a condition that holds or does not, once for each thing it is about");
    }

    /** Where the rule stands and what it would do. */
    public Fault fault() {
        return fault;
    }
}
