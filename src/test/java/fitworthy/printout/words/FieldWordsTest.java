package fitworthy.printout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Missing;
import org.junit.jupiter.api.Test;

class FieldWordsTest {

    private static final Missing MASS =
            new Missing("fitments.Roof rack.mass", "its mass; everything bolted on included", "a scale");

    @Test
    void aFieldIsToldWithWhatItBelongsTo() {
        assertEquals("Roof rack: its mass", FieldWords.of(MASS));
        assertEquals("its mass", FieldWords.of(MASS, "Roof rack"));
        assertEquals("Roof rack: its mass", FieldWords.of(MASS, "Tray"));
        assertEquals("Trailer: its brakes", words("trailer.brakes", "its brakes"));
        assertEquals("Tow bar plate: its D value", words("vehicle.tow-bar.plate.d", "its D value; asked where ..."));
    }

    @Test
    void whatNobodyWouldTakeForAnythingElseStandsAlone() {
        assertEquals("gross vehicle mass", words("vehicle.ratings.gvm", "gross vehicle mass"));
        assertEquals("how many seats", words("vehicle.seats", "how many seats"));
        assertEquals("where it will be registered", words("region", "where it will be registered"));
    }

    /** Whichever of the three lengths it is. */
    @Test
    void aPlaceIsWhereAThingSits() {
        assertEquals("Tray 1.8 m: where it sits", words("fitments.Tray 1.8 m.at.x", "backwards from the front axle"));
        assertEquals("Tray 1.8 m: where it sits", words("fitments.Tray 1.8 m.at.z", "up from the ground"));
        assertEquals("Driver's eye: up from the ground", words("vehicle.view.eye.z", "up from the ground"));
    }

    @Test
    void theWorkOnAPartIsThePartsOwn() {
        assertEquals(
                "Tray 1.8 m: the day its beginning is booked for",
                words("fitments.Tray 1.8 m.work.booked", "the day its beginning is booked for"));
    }

    @Test
    void theFusesOfACableAreTold() {
        assertEquals("Fridge, far fuse: its rating", words("circuits.Fridge.far-fuse.rating", "its rating"));
        assertEquals("Fridge, fuse: its rating", words("circuits.Fridge.fuse.rating", "its rating"));
        assertEquals("Fridge: its length", words("circuits.Fridge.length", "its length"));
    }

    @Test
    void whatAPartTakesOutIsNotThePart() {
        assertEquals("What Tray v1.2 replaces: its mass", words("fitments.Tray v1.2.removes.mass", "its mass"));
        assertEquals(
                "Canopy: whether the plate stays in view",
                words("fitments.Canopy.rear.plate", "whether the plate stays in view"));
    }

    private static String words(String path, String meaning) {
        return FieldWords.of(new Missing(path, meaning, "the plan"));
    }
}
