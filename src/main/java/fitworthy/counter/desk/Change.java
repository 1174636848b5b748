package fitworthy.counter.desk;

import fitworthy.source.FaultsException;

/** One change to the text of a sheet. */
public interface Change {

    /** What it does, in a few words for the person, such as {@code mass of Front bar}. */
    String label();

    /** The same with what else it takes along in this text. */
    default String label(Answer before) {
        return label();
    }

    /** Changes of one such key that follow each other are undone in one step; empty where each is one of its own. */
    default String joins() {
        return "";
    }

    /**
     * The same as whoever saw a sheet meant it: what it calls by its position there is called by its name, since others may
     * have put something else there meanwhile.
     *
     * @throws FaultsException where it cannot be made in what was seen
     */
    default Change meant(Answer seen) throws FaultsException {
        return this;
    }

    /**
     * The sheet after it; no letter of its text is changed that is not part of it. Whether what it makes is a sheet is
     * for others to see.
     *
     * @throws FaultsException where it cannot be made
     */
    Answer in(Answer now) throws FaultsException;
}
