package fitworthy.counter.edit;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Change;
import fitworthy.source.FaultsException;
import java.util.List;

/** Changes that are one step together, each made in what the one before it left. */
public record Several(String label, List<Change> changes) implements Change {

    @Override
    public Answer in(Answer now) throws FaultsException {
        Answer made = now;
        for (Change change : changes) {
            made = change.in(made);
        }
        return made;
    }
}
