package fitworthy.counter.plan;

import java.util.List;

/**
 * A thing in a line.
 *
 * @param facts kind, mass, place, price
 * @param marks what is to be known of how sure it is
 */
public record Line(String name, List<String> facts, List<String> marks) {

    static final String SHELF = "shelf";

    /** What is meant by a mark, for whoever points at it. */
    public static String meaning(String mark) {
        return mark.equals(SHELF)
                ? "Taken from your shelf: what your shop fits again and again, kept ready with its figures"
                : mark.contains("missing")
                        ? "Nobody has said this yet, and a check waits for it"
                        : mark.contains("guess")
                                ? "What is usual, or said with 'about': a check that rests on it is in order only if it holds"
                                : "Not part of the plan, by a choice that was taken";
    }
}
