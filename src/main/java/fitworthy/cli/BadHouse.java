package fitworthy.cli;

import fitworthy.source.FaultsException;

/** What a shop sets over the rule book cannot be used. */
final class BadHouse extends FaultsException {
    BadHouse(FaultsException cause) {
        super(cause.faults());
        initCause(cause);
    }
}
