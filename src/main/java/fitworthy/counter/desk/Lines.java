package fitworthy.counter.desk;

import java.util.ArrayList;
import java.util.List;

/**
 * The lines in which two texts differ.
 *
 * @param here those that only the first has
 * @param there those that only the second has
 */
public record Lines(List<String> here, List<String> there) {

    /** More than this is not compared line by line: all of the one is then another than all of the other. */
    private static final long MOST_COMPARED = 4_000_000;

    static Lines between(String one, String other) {
        List<String> here = new ArrayList<>(one.lines().toList());
        List<String> there = new ArrayList<>(other.lines().toList());
        while (!here.isEmpty() && !there.isEmpty() && here.get(0).equals(there.get(0))) {
            here.remove(0);
            there.remove(0);
        }
        while (!here.isEmpty() && !there.isEmpty() && here.get(here.size() - 1).equals(there.get(there.size() - 1))) {
            here.remove(here.size() - 1);
            there.remove(there.size() - 1);
        }
        return (long) here.size() * there.size() > MOST_COMPARED ? new Lines(here, there) : parted(here, there);
    }

    /** Without the lines of the longest run of lines that both have in the same order. */
    private static Lines parted(List<String> here, List<String> there) {
        int[][] common = new int[here.size() + 1][there.size() + 1];
        for (int i = here.size() - 1; i >= 0; i--) {
            for (int j = there.size() - 1; j >= 0; j--) {
                common[i][j] = here.get(i).equals(there.get(j))
                        ? common[i + 1][j + 1] + 1
                        : Math.max(common[i + 1][j], common[i][j + 1]);
            }
        }
        List<String> gone = new ArrayList<>();
        List<String> come = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < here.size() || j < there.size()) {
            if (i < here.size() && j < there.size() && here.get(i).equals(there.get(j))) {
                i++;
                j++;
            } else if (j == there.size() || i < here.size() && common[i + 1][j] >= common[i][j + 1]) {
                gone.add(here.get(i++));
            } else {
                come.add(there.get(j++));
            }
        }
        return new Lines(gone, come);
    }
}
