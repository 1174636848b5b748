package fitworthy.cli;

import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.util.List;

/** A shelf cannot be used. */
final class BadShelf extends FaultsException {
    BadShelf(List<Fault> faults) {
        super(faults);
    }
}
