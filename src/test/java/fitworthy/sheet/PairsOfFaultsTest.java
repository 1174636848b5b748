package fitworthy.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.sheet.SheetReaderTest.Spoilt;
import fitworthy.source.FaultsException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A sheet with two things wrong is told both at once, so that nobody mends one and is then refused for the other. */
class PairsOfFaultsTest {

    private static final List<Spoilt> ALL = Stream.concat(
                    SheetReaderTest.SHAPE.stream(), SheetReaderTest.BEYOND_SHAPE.stream())
            .toList();

    private static final String READY_EARLY = "ready-by: 2026-11-24\nvehicle:\n";

    /** What cannot be told beside another fault, and why. */
    private static final List<Hidden> HIDDEN = List.of(
            new Hidden("rear-axle: 1000", "kerb: unknown", "there is no kerb mass to hold the axles against"),
            new Hidden(READY_EARLY, "unknown", "there is no day to be before"),
            new Hidden(READY_EARLY, "25/11/2026", "the same"),
            new Hidden(READY_EARLY, "2026-02-30", "the same"),
            new Hidden(READY_EARLY, "+12026-11-25", "the same"),
            new Hidden("rear-axle: 1000", "", "the same where it is left out"),
            new Hidden("rear-axle: 1000", "front-axle: 0 kg", "the other axle mass cannot be"),
            new Hidden("[Diver]", "{mass", "the person without a name may be this one"),
            new Hidden("mass: 60 kg, price: $5,", "kind: bar, price: ask", "one field given twice is read once"),
            new Hidden("[Bar]", "name: Whip, kind: aerial, mass: 60, at: {x: -700 mm}", "there is no bar any more"),
            new Hidden("[Bar]", "name: Canopy", "there is no bar any more"));

    private record Hidden(String fault, String by, String because) {
        boolean is(Spoilt one, Spoilt other) {
            return fault.equals(one.now()) && by.equals(other.now());
        }
    }

    @Test
    void everyTwoAreToldTogether() throws FaultsException {
        List<String> lost = new ArrayList<>();
        int pairs = 0;
        for (Spoilt one : ALL) {
            for (Spoilt other : ALL) {
                String text = both(one, other);
                if (one == other || text == null) {
                    continue;
                }
                pairs++;
                Set<String> told = problems(BadSheet.faults(text));
                for (String fault : problems(List.of(one.fault()))) {
                    if (!told.contains(fault) && HIDDEN.stream().noneMatch(hidden -> hidden.is(one, other))) {
                        lost.add(one.now() + " | " + other.now() + " : " + fault);
                    }
                }
            }
        }
        assertEquals(List.of(), lost, () -> String.join("\n", lost));
        assertTrue(pairs > 5000, "only " + pairs + " pairs can stand in one sheet");
    }

    /** The sheet with both, or null where they spoil the same words. */
    private static String both(Spoilt one, Spoilt other) {
        int at = BadSheet.GOOD.indexOf(one.old());
        int otherAt = BadSheet.GOOD.indexOf(other.old());
        boolean first = at < otherAt;
        Spoilt before = first ? one : other;
        Spoilt after = first ? other : one;
        int end = Math.min(at, otherAt) + before.old().length();
        int from = Math.max(at, otherAt);
        return end > from
                ? null
                : BadSheet.GOOD.substring(0, Math.min(at, otherAt))
                        + before.now()
                        + BadSheet.GOOD.substring(end, from)
                        + after.now()
                        + BadSheet.GOOD.substring(from + after.old().length());
    }

    /** Path and problem of each, without the place, which the other moves. */
    private static Set<String> problems(List<String> faults) {
        Set<String> problems = new TreeSet<>();
        faults.forEach(fault -> problems.add(fault.replaceFirst(" -> .*", "")
                .replaceFirst("^[0-9:]+ ", "")
                .replaceFirst("first on line [0-9]+", "")));
        return problems;
    }
}
