package fitworthy.source;

import java.util.Comparator;

/**
 * One thing wrong with an input file, told so that its author can mend it.
 *
 * @param place where it stands
 * @param path the field path, such as {@code vehicle.ratings.gvm}; empty where the fault is not in one field
 * @param problem what is wrong
 * @param mend what would be right, with an example
 */
public record Fault(Place place, String path, String problem, String mend) {

    /** Order of reading: by file, then line, then column. */
    public static final Comparator<Fault> IN_READING_ORDER = Comparator.comparing(
                    (Fault fault) -> fault.place().file())
            .thenComparing(fault -> fault.place().line())
            .thenComparing(fault -> fault.place().column());

    /** Puts each part on one line without control characters, whatever the file held. */
    public Fault {
        path = Words.shortened(path, 200);
        problem = Words.shortened(problem, 1000);
        mend = Words.shortened(mend, 1000);
    }

    @Override
    public String toString() {
        String field = path.isEmpty() ? "" : path + ": ";
        return place + ": " + field + problem + "\n    right: " + mend;
    }
}
