package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fitworthy.Sheets;
import fitworthy.source.FaultsException;
import org.junit.jupiter.api.Test;

class UnsprungMassTest {

    /** Else the natural frequency would be the root of nothing, and a comparison with it would pass in silence. */
    @Test
    void anUnsprungMassAsLargeAsTheAxlesKerbMassIsRefused() throws FaultsException {
        Sheets.plainWith("vehicle: {suspension: {front: {unsprung: 1249 kg}, rear: {unsprung: 1049 kg}}}");
        FaultsException refused = assertThrows(
                FaultsException.class,
                () -> Sheets.plainWith(
                        "vehicle: {suspension: {front: {unsprung: 1250 kg}, rear: {unsprung: 1050 kg}}}"));
        assertEquals(2, refused.faults().size());
        assertEquals(
                "vehicle.suspension.front.unsprung", refused.faults().get(0).path());
    }
}
