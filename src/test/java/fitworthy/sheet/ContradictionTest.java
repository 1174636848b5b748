package fitworthy.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fitworthy.Sheets;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sheets whose fields cannot all be right. */
class ContradictionTest {

    private static List<String> faults(String changes) {
        FaultsException refused = assertThrows(FaultsException.class, () -> Sheets.plainWith(changes));
        return refused.faults().stream().map(Fault::path).toList();
    }

    private static String kerb(int tolerance) {
        return "vehicle: {mass: {kerb: 2300 kg +/- " + tolerance
                + " kg, front-axle: 1250 kg +/- 10 kg, rear-axle: 1050 kg +/- 10 kg}}";
    }

    /** Two axles known to 10 kg each are off by 20 kg together at the worst. */
    @Test
    void aWholeIsNotLessSureThanItsPartsTogether() throws FaultsException {
        Sheets.plainWith(kerb(20));
        assertEquals(List.of("vehicle.mass.kerb"), faults(kerb(21)));
    }

    private static String parts(String first, String second) {
        return "fitments:\n"
                + "  - {name: Crate, kind: other, mass: 0 kg" + first + "}\n"
                + "  - {name: Fridge, kind: other, mass: 0 kg" + second + "}\n";
    }

    @Test
    void whatAPartStandsInIsAnotherPart() throws FaultsException {
        Sheets.plainWith(parts("", ", in: Crate"));
        assertEquals(List.of("fitments.2.in"), faults(parts("", ", in: Create")));
        assertEquals(List.of("fitments.1.in", "fitments.2.in"), faults(parts(", in: Fridge", ", in: Crate")));
    }

    private static String cut(int millimetres, int behind) {
        return "fitments: [{name: Stretch, kind: chassis-extension, mass: 0 kg, wheelbase-added: 300 mm, cut: "
                + millimetres + " mm, behind-cut: " + behind + " kg}]";
    }

    @Test
    void aFrameIsCutBetweenTheAxlesWithSomethingOnBothSides() throws FaultsException {
        Sheets.plainWith(cut(2849, 2299));
        assertEquals(List.of("fitments.1.cut", "fitments.1.behind-cut"), faults(cut(2850, 2300)));
    }
}
