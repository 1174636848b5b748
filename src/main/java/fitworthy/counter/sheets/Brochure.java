package fitworthy.counter.sheets;

import fitworthy.schema.FieldSchema;
import fitworthy.sheet.Vehicle;
import fitworthy.shelf.SheetWords;
import fitworthy.source.Words;
import java.util.List;
import java.util.Locale;

/**
 * A figure that a brochure gives of a vehicle, asked where that does not lie on the shelf.
 *
 * @param line the field of the page
 * @param path the field of the sheet, within the vehicle
 */
public record Brochure(String line, String path, FieldSchema field) {

    /** In the order of the page. */
    public static final List<Brochure> FIGURES = List.of(
            of("kerb", "mass.kerb", Vehicle.Masses.class),
            of("gvm", "ratings.gvm", Vehicle.Ratings.class),
            of("gcm", "ratings.gcm", Vehicle.Ratings.class),
            of("front-axle", "ratings.front-axle", Vehicle.Ratings.class),
            of("rear-axle", "ratings.rear-axle", Vehicle.Ratings.class),
            of("towing", "ratings.towing", Vehicle.Ratings.class),
            of("on-ball", "ratings.ball", Vehicle.Ratings.class));

    /** Letters of a name that is one word for several, such as gvm. */
    private static final int SHORTENED = 3;

    private static Brochure of(String line, String path, Class<? extends Record> group) {
        return new Brochure(line, path, SheetWords.field(group, path.substring(path.indexOf('.') + 1)));
    }

    /** What it is, with its unit; and in brackets what the trade shortens it to. */
    public String label() {
        String name = field.name();
        return Words.capital(field.description().value())
                + (name.length() == SHORTENED ? " (" + name.toUpperCase(Locale.ROOT) + ")" : "") + ", "
                + SheetWords.unit(field);
    }
}
