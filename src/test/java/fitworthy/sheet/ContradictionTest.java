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

    @Test
    void whatIsDoneStandsInWhatIsThereAndIsNoOpenChoice() throws FaultsException {
        Sheets.plainWith(parts(", done: yes", ", done: yes, in: Crate"));
        Sheets.plainWith(parts(", done: yes", ", in: Crate"));
        assertEquals(List.of("fitments.2.in"), faults(parts("", ", done: yes, in: Crate")));
        String option = "options: [{name: Box, choices: [{name: crate, parts: [Crate]}, {name: none, parts: []}]}]";
        Sheets.plainWith(parts("", "") + option);
        assertEquals(List.of("options.1.choices.1.parts.1"), faults(parts(", done: yes", "") + option));
    }

    @Test
    void aCertificateIsHeldForWhatIsDone() throws FaultsException {
        Sheets.plainWith(parts(", done: yes, certificate: held", ""));
        assertEquals(List.of("fitments.1.certificate"), faults(parts(", certificate: held", "")));
        assertEquals(List.of("fitments.1.certificate"), faults(parts(", done: no, certificate: held", "")));
    }

    @Test
    void whatIsDoneAndStaysOnNeedsNoPlace() throws FaultsException {
        String bar = "fitments: [{name: Bar, kind: bar, mass: 60 kg%s}]";
        Sheets.plainWith(bar.formatted(", done: yes"));
        assertEquals(List.of("fitments.1.at"), faults(bar.formatted("")));
        assertEquals(List.of("fitments.1.at"), faults(bar.formatted(", done: yes, removable: yes")));
    }

    @Test
    void cargoIsNotTakenAlongInWhatIsOff() throws FaultsException {
        String sheet = "fitments: [{name: Canopy, kind: canopy, removable: yes, mass: 0 kg}]\n"
                + "cargo: [{name: Luggage, in: %s}]\ncases: [{name: bare, off: [Canopy]%s}]";
        Sheets.plainWith(sheet.formatted("Canopy", ""));
        assertEquals(List.of("cases.1.carrying.1"), faults(sheet.formatted("Canopy", ", carrying: [Luggage]")));
        assertEquals(List.of("cargo.1.in"), faults(sheet.formatted("Canpoy", "")));
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
