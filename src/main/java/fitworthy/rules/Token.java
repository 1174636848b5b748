package fitworthy.rules;

import fitworthy.source.Place;

/**
 * A word, a sign or a text in quotes of a rule file.
 *
 * @param text as written, with its quotes; empty at the end of the file
 * @param begin where it begins in the file, in characters
 * @param place the same by line and column
 */
record Token(Kind kind, String text, int begin, Place place) {

    /** A NAME begins with a dollar. */
    enum Kind {
        WORD,
        NAME,
        TEXT,
        NUMBER,
        SIGN,
        END
    }

    boolean is(Kind other) {
        return kind == other;
    }

    boolean is(String other) {
        return text.equals(other);
    }

    int end() {
        return begin + text.length();
    }

    /** What stands in its quotes, if it has any. */
    String unquoted() {
        return kind == Kind.TEXT ? text.substring(1, text.length() - 1) : text;
    }

    /** As messages name it. */
    String shown() {
        return kind == Kind.END ? "the end of the file" : "'" + text + "'";
    }
}
