package fitworthy.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.source.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class UsualOrderTest {

    private final List<Fault> faults = new ArrayList<>();

    private Map<String, Set<String>> read(String... rows) {
        return TableReader.usualOrder("job,after,basis,source\n" + String.join("\n", rows), "order.csv", faults);
    }

    private void assertFault(String words) {
        assertEquals(1, faults.size(), faults.toString());
        assertTrue(faults.get(0).problem().contains(words), faults.toString());
    }

    @Test
    void rowsAreReadByKind() {
        assertEquals(
                Map.of("canopy", Set.of("tray"), "alignment", Set.of("springs", "tyres")),
                read("canopy,tray,common-practice,", "alignment,springs,common-practice,", "alignment,tyres,memory,"));
        assertEquals(List.of(), faults);
    }

    @Test
    void aWordThatIsNoKindIsNamedWithTheNearest() {
        read("canopy,trai,common-practice,");
        assertFault("did you mean 'tray'");
    }

    @Test
    void rowsThatWouldCloseACircleAreRefused() {
        read("tray,paint,memory,", "canopy,tray,memory,", "paint,canopy,memory,");
        assertFault("put this row above");
    }

    @Test
    void aRowTwiceAJobAfterItselfAndAMissingSourceAreRefused() {
        read("canopy,tray,memory,", "canopy,tray,memory,", "tyres,tyres,memory,", "snorkel,airbox,published,");
        assertEquals(3, faults.size(), faults.toString());
    }
}
