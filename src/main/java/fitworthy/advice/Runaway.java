package fitworthy.advice;

import fitworthy.book.RuleText;
import fitworthy.source.Fault;
import fitworthy.source.Place;

/** A rule that would not come to an end, or would take all the memory there is. No advice is given. */
public final class Runaway extends RuntimeException {

    private final transient Fault fault;

    Runaway(RuleText rule, String problem) {
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
