package fitworthy.shelf;

import fitworthy.sheet.Circuit;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Vehicle;
import java.util.Locale;

/** The kinds of thing that a shop uses again and again, and so keeps on its shelf. */
public enum Kind {
    VEHICLES("vehicle", Vehicle.class),
    TRAILERS("trailer", Trailer.class),
    FITMENTS("fitments", Fitment.class),
    TANKS("tanks", Tank.class),
    CIRCUITS("circuits", Circuit.class),
    OCCUPANTS("occupants", Sheet.Person.class),
    CARGO("cargo", Sheet.Load.class);

    private final String inSheet;
    private final Class<? extends Record> record;

    Kind(String inSheet, Class<? extends Record> record) {
        this.inSheet = inSheet;
        this.record = record;
    }

    /** The field of a sheet that takes one, or a list of them. */
    public String inSheet() {
        return inSheet;
    }

    /** The list of a file of the shelf that holds them. */
    public String onShelf() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What each of them is on a sheet. */
    public Class<? extends Record> record() {
        return record;
    }
}
