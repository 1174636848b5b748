package fitworthy.schema;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** In which order the fields of a record stand, given or not, by the names of what holds them. */
public final class FieldOrder {

    private final Set<String> wanted;
    private final Map<String, Integer> found = new LinkedHashMap<>();

    private FieldOrder(Set<String> wanted) {
        this.wanted = wanted;
    }

    /**
     * How many of these paths stand before each of them. One that leads to no field of the record is left out.
     *
     * @param paths as {@link fitworthy.quantity.Missing} tells them
     */
    public static Map<String, Integer> of(Record record, Set<String> paths) {
        FieldOrder order = new FieldOrder(paths);
        order.record(record, "");
        return order.found;
    }

    private void record(Record record, String path) {
        for (FieldSchema field : RecordSchema.of(record.getClass()).fields()) {
            Object held = field.in(record);
            if (field.content() == FieldSchema.Content.FIELDS_OF_KIND) {
                if (held instanceof Record ofKind) {
                    record(ofKind, path);
                }
                continue;
            }
            String inner = at(path + field.name());
            if (held instanceof Record group && field.content() == FieldSchema.Content.GROUP) {
                record(group, inner + ".");
            } else if (held instanceof Map<?, ?> figures) {
                figures.keySet().forEach(name -> at(inner + "." + name));
            } else if (held instanceof List<?> groups && field.content() == FieldSchema.Content.GROUPS) {
                for (int i = 1; i <= groups.size(); i++) {
                    Record group = (Record) groups.get(i - 1);
                    record(group, at(inner + "." + Given.name(group, i)) + ".");
                }
            }
        }
    }

    private String at(String path) {
        if (wanted.contains(path)) {
            found.putIfAbsent(path, found.size());
        }
        return path;
    }
}
