package fitworthy.cli;

import fitworthy.source.FaultsException;

/** A rule book that cannot be used. */
final class BadBook extends FaultsException {
    BadBook(FaultsException cause) {
        super(cause.faults());
        initCause(cause);
    }
}
