package fitworthy.batch;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Counts;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.View;
import fitworthy.engine.BudgetExceeded;
import fitworthy.printout.json.JsonUntilApproved;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * What is said of one sheet of many, in short: what was found, or what is wrong with it. The shape of a line is in
 * docs/output.md.
 *
 * @param sheet its file, or the number of its line
 */
public record Answer(
        Object sheet,
        String title,
        String worst,
        JsonUntilApproved untilApproved,
        List<ShortFinding> findings,
        Long notAssessed,
        Long figuresMissing,
        Long met,
        Long inOrderIfGuessesHold,
        List<Refusal> faults,
        String caution,
        @JsonIgnore State state) {

    /** What a sheet comes to, best first. */
    public enum State {
        IN_ORDER,
        ASKS_FOR_ACTION,
        CANNOT_BE_USED,
        RULE_RUNS_AWAY,
        FAULT_OF_OURS
    }

    /** A finding in short. @param waived true or null */
    public record ShortFinding(
            String id,
            String subject,
            @JsonProperty("case") String in,
            String severity,
            Boolean waived,
            @JsonUnwrapped ComparedFigures figures) {

        static ShortFinding of(Finding finding) {
            Judged judged = finding.judged();
            return new ShortFinding(
                    judged.id(),
                    judged.subject(),
                    judged.loadCase(),
                    Words.hyphenated(judged.card().severity().value().name()),
                    finding.waiver().isPresent() ? true : null,
                    ComparedFigures.of(judged, finding.comparison()));
        }
    }

    /** Looks at a sheet; never fails, so that one sheet cannot take the others with it. */
    public static Answer of(View view, Input input) {
        Object name = input.place().line() == 0
                ? input.place().file()
                : (Object) input.place().line();
        try {
            List<Fault> faults = new ArrayList<>();
            Advice advice = view.advise(input.tree(input.text(faults), faults), faults);
            Counts counts = Arrangement.of(advice).counts();
            return new Answer(
                    name,
                    advice.sheet().title(),
                    advice.worstWord(),
                    JsonUntilApproved.of(advice),
                    advice.findings().stream().map(ShortFinding::of).toList(),
                    counts.notAssessed(),
                    counts.figuresMissing(),
                    counts.met(),
                    counts.held(),
                    null,
                    view.book().cover().caution(),
                    advice.asksForAction() ? State.ASKS_FOR_ACTION : State.IN_ORDER);
        } catch (FaultsException e) {
            return refused(name, Refusal.of(e.faults(), ""), State.CANNOT_BE_USED);
        } catch (RuntimeException e) {
            return refused(
                    name,
                    Refusal.of(input, e),
                    e instanceof BudgetExceeded ? State.RULE_RUNS_AWAY : State.FAULT_OF_OURS);
        }
    }

    private static Answer refused(Object name, List<Refusal> faults, State state) {
        return new Answer(name, null, null, null, null, null, null, null, null, faults, null, state);
    }
}
