package fitworthy.counter.desk;

/**
 * What parts one text from another: all before it and behind it is the same.
 *
 * @param at where it begins, in letters
 * @param out what stands there in the one
 * @param in what stands there in the other
 */
record Splice(int at, String out, String in) {

    static Splice between(String one, String other) {
        int least = Math.min(one.length(), other.length());
        int at = 0;
        while (at < least && one.charAt(at) == other.charAt(at)) {
            at++;
        }
        int behind = 0;
        while (behind < least - at
                && one.charAt(one.length() - 1 - behind) == other.charAt(other.length() - 1 - behind)) {
            behind++;
        }
        return new Splice(at, one.substring(at, one.length() - behind), other.substring(at, other.length() - behind));
    }

    /** The one text, of the other. */
    String undone(String other) {
        return other.substring(0, at) + out + other.substring(at + in.length());
    }

    /** Whether it can be undone in a text. */
    boolean fits(String other) {
        return at >= 0 && other.startsWith(in, at);
    }
}
