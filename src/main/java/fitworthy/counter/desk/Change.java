package fitworthy.counter.desk;

import fitworthy.source.FaultsException;

/** One change to the text of a sheet. */
public interface Change {

    /** What it does, in a few words for the person, such as {@code mass of Front bar}. */
    String label();

    /** Changes of one such key that follow each other are undone in one step; empty where each is one of its own. */
    default String joins() {
        return "";
    }

    /**
     * The text after it; no letter of the text is changed that is not part of it.
     *
     * @throws FaultsException where it cannot be made, or what is wrong with the value
     */
    String in(Answer now) throws FaultsException;
}
