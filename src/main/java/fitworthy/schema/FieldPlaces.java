package fitworthy.schema;

import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Where in a page fields of a name stand, for whoever wrote one in another group. */
final class FieldPlaces {

    private static final Examples NO_OTHERS = new Examples(group -> Map.of());

    private final String wanted;
    private final Set<String> wantedWords;
    private final List<String> found = new ArrayList<>();
    private final List<String> written = new ArrayList<>();
    private final List<String> ofKinds = new ArrayList<>();

    private FieldPlaces(String wanted) {
        this.wanted = wanted;
        this.wantedWords = words(wanted);
    }

    /**
     * The groups that have a field of this name, and the fields whose path has the same words in it, as
     * {@code mass.kerb} has those of {@code kerb-mass}; in words that may follow "it stands". Where there is none,
     * the kinds of part that have it, and of {@code water-alarm} those that have an {@code alarm}.
     */
    static List<String> of(Class<? extends Record> page, String name) {
        FieldPlaces places = looked(page, name);
        String last = name.substring(name.lastIndexOf('-') + 1);
        if (!places.found.isEmpty() || !places.ofKinds.isEmpty() || last.equals(name)) {
            return places.found.isEmpty() ? places.ofKinds : places.found;
        }
        return looked(page, last).ofKinds.stream()
                .map(where -> "as " + last + " " + where)
                .toList();
    }

    /** The field as a page writes it, from the top; nothing where it stands in several places, or in one of a list. */
    static Optional<String> written(Class<? extends Record> page, String name) {
        FieldPlaces places = looked(page, name);
        return places.found.size() == 1 ? places.written.stream().findFirst() : Optional.empty();
    }

    private static FieldPlaces looked(Class<? extends Record> page, String name) {
        FieldPlaces places = new FieldPlaces(name);
        places.look(page, "", "");
        return places;
    }

    /** @param group the name of the record's own field */
    private void look(Class<? extends Record> record, String path, String group) {
        RecordSchema schema = RecordSchema.of(record);
        String kinds = schema.kinds()
                .filter(kind -> RecordSchema.of(kind.details()).names().contains(wanted))
                .map(kind -> Words.hyphenated(((Enum<?>) kind).name()))
                .collect(Collectors.joining(" or "));
        if (!kinds.isEmpty()) {
            ofKinds.add("under " + path + " of kind " + kinds);
        }
        for (FieldSchema field : schema.fields()) {
            String inner = path.isEmpty() ? field.name() : path + "." + field.name();
            boolean isNamed = field.name().equals(wanted);
            if (isNamed || words(group + "-" + field.name()).equals(wantedWords)) {
                found.add(!isNamed ? "as " + inner : path.isEmpty() ? "at the top of the page" : "under " + path);
                if (!inner.contains(".N")) {
                    written.add(within(path, NO_OTHERS.of(field)));
                }
            }
            if (field.content() == FieldSchema.Content.GROUP || field.content() == FieldSchema.Content.GROUPS) {
                look(
                        field.type().asSubclass(Record.class),
                        field.content() == FieldSchema.Content.GROUPS ? inner + ".N" : inner,
                        field.name());
            }
        }
    }

    private static String within(String path, String field) {
        String written = field;
        for (String above = path; !above.isEmpty(); above = above.substring(0, Math.max(0, above.lastIndexOf('.')))) {
            written = above.substring(above.lastIndexOf('.') + 1) + ": {" + written + "}";
        }
        return written;
    }

    private static Set<String> words(String name) {
        return new TreeSet<>(List.of(name.split("[-_ ]+")));
    }
}
