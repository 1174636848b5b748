package fitworthy.counter.plan;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Change;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.util.List;

/** A change that is made of what was sent, once it is known what the sheet says. */
record Edit(String label, String joins, Making making) implements Change {

    /** How the text after it comes about. */
    @FunctionalInterface
    interface Making {
        String in(PlanSheet sheet) throws FaultsException;
    }

    /** One that is undone by itself. */
    Edit(String label, Making making) {
        this(label, "", making);
    }

    @Override
    public String in(Answer now) throws FaultsException {
        return making.in(new PlanSheet(now));
    }

    /** Nothing is changed. */
    static FaultsException refused(PlanSheet sheet, String path, String problem, String mend) {
        return new FaultsException(List.of(new Fault(sheet.answer().place(), path, problem, mend)));
    }
}
