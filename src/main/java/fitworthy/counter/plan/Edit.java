package fitworthy.counter.plan;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Change;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.util.List;

/**
 * A change that is known only once it is seen what the sheet says.
 *
 * @param label what it does, where the sheet is not at hand
 */
record Edit(String label, String joins, Made made) implements Change {

    /** The change to what a sheet says. */
    @FunctionalInterface
    interface Made {
        Change in(PlanSheet sheet) throws FaultsException;
    }

    @Override
    public String label(Answer before) {
        try {
            return made.in(new PlanSheet(before)).label(before);
        } catch (FaultsException | IllegalArgumentException e) {
            return label;
        }
    }

    @Override
    public Answer in(Answer now) throws FaultsException {
        FaultsException.refuse(now.tree() == null ? now.faults() : List.of());
        PlanSheet sheet = new PlanSheet(now);
        try {
            return made.in(sheet).in(now);
        } catch (IllegalArgumentException e) {
            // No form of the page asks for it.
            throw refused(sheet, "", "there is no such field or list", "one of the page");
        }
    }

    /** That it cannot be made, and what would be right. */
    static FaultsException refused(PlanSheet sheet, String path, String problem, String mend) {
        return new FaultsException(List.of(new Fault(sheet.answer().place(), path, problem, mend)));
    }
}
