package fitworthy.printout.explain;

import fitworthy.document.Page;
import fitworthy.quantity.Missing;
import fitworthy.source.Place;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * How an explanation names what it tells of: as the files do, for those who keep them, or as one says it to a customer.
 *
 * @param plain whether to a customer
 * @param field what a field is called, by its path
 */
record Saying(boolean plain, UnaryOperator<String> field) {

    static final Saying AS_FILES = new Saying(false, UnaryOperator.identity());

    static Saying plainly(UnaryOperator<String> field) {
        return new Saying(true, field);
    }

    /** What is missing, each with where it is found. */
    void missing(Page page, Iterable<Missing> all) {
        for (Missing missing : all) {
            // What the book does not hold has no field on the sheet.
            String named = plain && missing.isInBook() ? "" : field.apply(missing.path()) + ": ";
            page.hanging(
                    "      missing ",
                    named + missing.meaning() + (missing.isInBook() ? "" : ". Find it: " + missing.find()));
        }
    }

    String place(Place place) {
        return plain ? line(place) : place.file() + ":" + place.line();
    }

    /** A place in a file that whoever keeps it knows by its name. */
    static String line(Place place) {
        return Path.of(place.file()).getFileName() + ", line " + place.line();
    }

    String fields(List<String> fields) {
        return fields.stream()
                .map(plain ? name -> name.replace('-', ' ') : field)
                .collect(Collectors.joining(", "));
    }
}
