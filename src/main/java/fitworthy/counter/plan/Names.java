package fitworthy.counter.plan;

import fitworthy.schema.FieldSchema;
import fitworthy.source.Words;
import java.util.Map;

/** What the page calls fields: as the schema does. */
final class Names {

    /** Lists and groups of a sheet that a counter has another word for. */
    private static final Map<String, String> TITLES = Map.of(
            "fitments", "Parts",
            "occupants", "People",
            "cases", "Loadings",
            "options", "Choices",
            "jobs", "Work");

    private Names() {}

    /** Of a list or a group. */
    static String title(FieldSchema field) {
        return TITLES.getOrDefault(field.name(), Words.capital(field.name().replace('-', ' ')));
    }

    /** Of a value: what its description says first. */
    static String label(FieldSchema field) {
        return Words.capital(field.description().value().split(";", 2)[0]);
    }

    /** What else its description says, and where a person finds it. */
    static String help(FieldSchema field) {
        String[] said = field.description().value().split("; *", 2);
        String rest = said.length < 2 ? "" : Words.capital(said[1]) + ". ";
        return rest + "Found: " + field.description().find() + ". On the sheet: " + field.name()
                + (field.example().isEmpty() ? "" : ", such as " + field.example()) + ".";
    }
}
