package fitworthy.counter.desk;

import fitworthy.source.Digests;

/**
 * One text of a sheet that came after another.
 *
 * @param was what the text before it is known again by
 * @param is the same of the text after it
 * @param label what it does, in a few words
 * @param joins steps of one such key that follow each other are undone together; empty where it is one of its own
 */
record Step(Kind kind, String was, String is, Splice splice, String label, String joins) {

    enum Kind {
        DONE,
        UNDONE,
        REDONE
    }

    static Step between(Kind kind, String before, String after, String label, String joins) {
        return new Step(kind, Digests.of(before), Digests.of(after), Splice.between(before, after), label, joins);
    }
}
