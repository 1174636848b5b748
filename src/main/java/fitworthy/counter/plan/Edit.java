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
 * @param joins another each time that a box is gone into, so that what is said in it is undone in one step; empty where a
 *     press says all
 */
record Edit(String label, String joins, Made<Change> made) implements Change {

    /** What comes of what a sheet says. */
    @FunctionalInterface
    interface Made<T> {
        T in(PlanSheet sheet) throws FaultsException;
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
    public Change meant(Answer seen) throws FaultsException {
        Change there = of(seen, made);
        return new Edit(label, joins, sheet -> there);
    }

    @Override
    public Answer in(Answer now) throws FaultsException {
        return of(now, sheet -> made.in(sheet).in(now));
    }

    private static <T> T of(Answer answer, Made<T> made) throws FaultsException {
        FaultsException.refuse(answer.tree() == null ? answer.faults() : List.of());
        PlanSheet sheet = new PlanSheet(answer);
        try {
            return made.in(sheet);
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
