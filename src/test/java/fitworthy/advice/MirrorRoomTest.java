package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Outcome.Finding;
import fitworthy.printout.words.Wording;
import fitworthy.source.FaultsException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Between what a mirror has to show and how far it may stick out there is room for one, however wide the load is. */
class MirrorRoomTest {

    private static final int HOUSING = 30;
    private static final Pattern REACH = Pattern.compile("(?:reaches|stand) (\\d+) mm");

    private record Plan(String region, int canopy, boolean comesOff, int trailer) {

        Advice with(int reach) throws FaultsException {
            String mirror =
                    "{x: 800 mm, reach: %d mm, glass: 250 mm, curve: convex, radius: 1200 mm, edge: %d mm, edge-stowed: %d mm}"
                            .formatted(reach, reach + HOUSING, reach + HOUSING);
            return Adviser.advise(
                    Books.engine(),
                    Sheets.plainWith(
                            """
                    region: %s
                    vehicle: {view: {eye: {x: 1400 mm, y: -370 mm, z: 1300 mm}}}
                    fitments:
                      - {name: Towing mirrors, kind: mirrors, mass: 0 kg, stow: fixed, left: %s, right: %s}
                      - {name: Canopy, kind: canopy, mass: 0 kg, removable: %s, width: %d mm, front: 1800 mm, length: 1900 mm}
                    trailer: {name: Van, mass: 1400 kg, ball: 130 kg +/- 0 kg, width: %d mm, length: 5510 mm, seen-over: no}
                    cases: [{name: as planned, towing: %s}]
                    """
                                    .formatted(
                                            region,
                                            mirror,
                                            mirror,
                                            comesOff ? "yes" : "no",
                                            canopy,
                                            trailer > 0 ? trailer : 2000,
                                            trailer > 0 ? "yes" : "no")));
        }
    }

    /** What is to be changed about the mirrors; what an authority has to say is no change. */
    private static List<Finding> faults(Advice advice) {
        return advice.findings().stream()
                .filter(each -> each.judged().id().startsWith("mirrors."))
                .filter(each -> !each.judged().id().matches("mirrors\\.(fixed-out|out-past-what-stays)"))
                .toList();
    }

    private static OptionalInt told(List<Finding> faults) {
        return faults.stream()
                .map(fault -> REACH.matcher(Wording.remedy(fault)))
                .filter(Matcher::find)
                .mapToInt(found -> Integer.parseInt(found.group(1)))
                .max();
    }

    @Test
    void mirrorsThatDoAsTheyAreToldAreInOrder() throws FaultsException {
        List<String> corners = new ArrayList<>();
        int moved = 0;
        for (String region : List.of("uk", "au-nsw")) {
            for (int canopy = 1700; canopy <= 2500; canopy += 100) {
                for (int trailer : new int[] {0, 1700, 2100, 2500}) {
                    for (boolean comesOff : new boolean[] {false, true}) {
                        Plan plan = new Plan(region, canopy, comesOff, trailer);
                        List<Finding> faults = faults(plan.with(1050));
                        OptionalInt reach = told(faults);
                        if (reach.isPresent()) {
                            moved++;
                            faults = faults(plan.with(reach.getAsInt()));
                        }
                        if (!faults.isEmpty()) {
                            corners.add(plan + ": "
                                    + faults.stream()
                                            .map(fault -> fault.judged().id() + " " + Wording.remedy(fault))
                                            .toList());
                        }
                    }
                }
            }
        }
        assertEquals("", String.join("\n", corners));
        assertTrue(moved > 100, "only " + moved + " had to be moved");
    }
}
