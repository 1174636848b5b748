package fitworthy.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fitworthy.Sheets;
import fitworthy.source.FaultsException;
import org.junit.jupiter.api.Test;

class JointNamesTest {

    private static final String SNORKEL =
            """
            fitments:
              - name: Raised intake
                kind: snorkel
                mass: 0 kg
                joints:
                  - {name: at the guard, sealed: yes}
                  - {name: %s, sealed: no}
            """;

    /** Advice names a joint, so two of one name could not be told apart. */
    @Test
    void twoJointsOfOneNameAreRefused() {
        FaultsException refused =
                assertThrows(FaultsException.class, () -> Sheets.plainWith(SNORKEL.formatted("at the guard")));
        assertEquals(1, refused.faults().size());
        assertEquals(
                "two of them are called 'at the guard'", refused.faults().get(0).problem());
    }

    @Test
    void jointsOfDifferentNamesAreRead() throws FaultsException {
        IntakeDetails.Snorkel snorkel = (IntakeDetails.Snorkel) Sheets.plainWith(SNORKEL.formatted("at the airbox"))
                .fitments()
                .get(0)
                .details();
        assertEquals(2, snorkel.joints().size());
    }
}
