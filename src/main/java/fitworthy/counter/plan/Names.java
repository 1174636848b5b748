package fitworthy.counter.plan;

import fitworthy.counter.edit.Labels;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Sheet;
import fitworthy.source.Words;
import java.util.Set;
import java.util.stream.Collectors;

/** What the page calls fields: as the schema does. */
final class Names {

    /** What a sheet says of itself. */
    private static final Set<FieldSchema> OWN = RecordSchema.of(Sheet.class).fields().stream()
            .filter(field ->
                    Set.of("title", "customer", "quote", "region", "as-of").contains(field.name()))
            .collect(Collectors.toUnmodifiableSet());

    private Names() {}

    /** Of a list or a group. */
    static String title(FieldSchema field) {
        return Words.capital(Labels.list(field.name()));
    }

    /** Of a value: what its description says first. */
    static String label(FieldSchema field) {
        return Words.capital(field.description().value().split(";", 2)[0]);
    }

    /** What else its description says, and where a person finds it; what a shop says itself is not found. */
    static String help(FieldSchema field) {
        String[] said = field.description().value().split("; *", 2);
        String rest = said.length < 2 ? "" : Words.capital(said[1]) + ". ";
        String found =
                OWN.contains(field) ? "" : "Found: " + field.description().find() + ". ";
        return rest + found + "On the sheet: " + field.name()
                + (field.example().isEmpty() ? "" : ", such as " + field.example()) + ".";
    }
}
