package fitworthy.counter.plan;

import fitworthy.counter.edit.Labels;
import fitworthy.schema.FieldSchema;
import fitworthy.source.Words;

/** What the page calls fields: as the schema does. */
final class Names {

    private Names() {}

    /** Of a list or a group. */
    static String title(FieldSchema field) {
        return Words.capital(Labels.list(field.name()));
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
