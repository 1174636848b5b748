package fitworthy.printout.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import fitworthy.advice.Advice;
import fitworthy.advice.UntilApproved;
import fitworthy.advice.UntilApproved.Left;
import fitworthy.printout.words.Wording;
import java.util.List;

/** How the plan stands until a part that raises ratings is approved, as JSON has it. */
public record JsonUntilApproved(String part, List<Limit> over, List<Limit> close, List<String> notKnown) {

    /** Nothing, which JSON leaves out, where no part is to raise a rating. */
    public static JsonUntilApproved of(Advice advice) {
        return UntilApproved.of(advice)
                .map(until -> new JsonUntilApproved(
                        until.part(),
                        until.over().stream().map(Limit::of).toList(),
                        until.close().stream().map(Limit::of).toList(),
                        until.unknown()))
                .orElse(null);
    }

    /** What is left of a limit, kg; below zero what it is over. */
    public record Limit(String limit, @JsonProperty("case") String loadCase, Double margin, Double tolerance) {

        static Limit of(Left left) {
            return new Limit(
                    left.limit(),
                    left.loading(),
                    Wording.exact(left.compared().margin(), left.measure().kind()),
                    Wording.exact(left.compared().tolerance(), left.measure().kind()));
        }
    }
}
