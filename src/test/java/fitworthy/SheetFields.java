package fitworthy;

import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.schema.Variant;
import fitworthy.sheet.Sheet;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** The fields that hold a value, by the names that docs/sheet.md gives them. */
public final class SheetFields {

    private static final Map<String, FieldSchema> ALL = new LinkedHashMap<>();
    private static final Set<String> IDLE = new HashSet<>();
    /** The fields and every group that one stands in. */
    private static final Set<String> BEGINNINGS = new HashSet<>();

    static {
        collect(Sheet.class, "");
        for (String field : ALL.keySet()) {
            for (int end = field.length(); end > 0; end = field.lastIndexOf('.', end - 1)) {
                BEGINNINGS.add(field.substring(0, end));
            }
        }
    }

    private SheetFields() {}

    /** Every field but those that hold a group. */
    public static Map<String, FieldSchema> all() {
        return ALL;
    }

    /** Whether it decides nothing: one that is printed only, or that a group has for its other places. */
    public static boolean decidesNothing(String field) {
        return ALL.get(field).description().printed() || IDLE.contains(field);
    }

    /** The field in which a value of a sheet's tree stands. */
    public static String of(Node.Mapping sheet, NodePath path) {
        String field = "";
        NodePath walked = NodePath.TOP;
        for (NodePath.Step step : path.steps()) {
            walked = step instanceof NodePath.Item item ? walked.to(item.position()) : walked.to(step.toString());
            if (ALL.containsKey(field)) {
                return field;
            }
            String inner = field + (field.isEmpty() ? "" : ".") + (step instanceof NodePath.Item ? "N" : step);
            String ofKind = field + kind(walked.above().in(sheet)) + "." + step;
            field = startsOne(ofKind) && !ALL.containsKey(inner) ? ofKind : inner;
        }
        return field;
    }

    private static String kind(Node group) {
        return group instanceof Node.Mapping mapping && mapping.get("kind") instanceof Node.Scalar kind
                ? " of kind " + kind.text()
                : "";
    }

    private static boolean startsOne(String path) {
        return path.contains(" of kind ") && BEGINNINGS.contains(path);
    }

    private static void collect(Class<? extends Record> type, String path) {
        for (FieldSchema field : RecordSchema.of(type).fields()) {
            String inner = path.isEmpty() ? field.name() : path + "." + field.name();
            if (field.description() != null) {
                field.description().idle().forEach(name -> IDLE.add(inner + "." + name));
            }
            switch (field.content()) {
                case GROUP -> collect(field.type().asSubclass(Record.class), inner);
                case GROUPS -> collect(field.type().asSubclass(Record.class), inner + ".N");
                case FIELDS_OF_KIND -> {}
                default -> {
                    ALL.put(inner, field);
                }
            }
            if (field.tellsKind()) {
                for (Object kind : field.type().getEnumConstants()) {
                    collect(((Variant) kind).details(), path + " of kind " + Words.hyphenated(((Enum<?>) kind).name()));
                }
            }
        }
    }
}
