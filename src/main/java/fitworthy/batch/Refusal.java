package fitworthy.batch;

import fitworthy.engine.BudgetExceeded;
import fitworthy.source.Fault;
import java.util.List;

/**
 * One thing for which a sheet of many cannot be used, as it is written.
 *
 * @param place file, line and column
 * @param about the field; empty where it is not in one
 * @param problem what is wrong
 * @param right what would be right
 */
public record Refusal(String place, String about, String problem, String right) {

    /** Faults in reading order. @param where stands before each problem */
    public static List<Refusal> of(List<Fault> faults, String where) {
        return faults.stream()
                .sorted(Fault.IN_READING_ORDER)
                .map(fault ->
                        new Refusal(fault.place().toString(), fault.path(), where + fault.problem(), fault.mend()))
                .toList();
    }

    /** What a sheet meets that makes a rule run away, or brings a fault of ours to light; the others go on. */
    public static List<Refusal> of(Input input, RuntimeException thrown) {
        return thrown instanceof BudgetExceeded runaway
                ? of(List.of(runaway.fault()), "")
                : List.of(new Refusal(
                        input.place().toString(),
                        "",
                        "a fault of ours, not of the sheet: " + thrown,
                        "please report it with the sheet"));
    }
}
