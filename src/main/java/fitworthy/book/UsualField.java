package fitworthy.book;

import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Vehicle;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A field that a usual figure may be of: what it is a field of, and the way to it from there.
 *
 * @param thing the word for what it is a field of: a kind of part, or one of those below
 * @param path the way from there
 */
public record UsualField(String thing, NodePath path) {

    private record Group(String name, Class<? extends Record> type) {}

    /** What a sheet has one of. */
    private static final Map<String, Group> SINGLE = Map.of(
            "vehicle", new Group("vehicle", Vehicle.class),
            "trailer", new Group("trailer", Trailer.class),
            "trip", new Group("trip", Sheet.Trip.class));
    /** What it lists. */
    private static final Map<String, Group> LISTED = Map.of(
            "tank", new Group("tanks", Tank.class),
            "person", new Group("occupants", Sheet.Person.class),
            "cargo", new Group("cargo", Sheet.Load.class),
            "circuit", new Group("circuits", Circuit.class));

    private static final String PARTS = "fitments";
    private static final Map<String, Fitment.Kind> KINDS = new LinkedHashMap<>();

    static {
        Arrays.stream(Fitment.Kind.values()).forEach(kind -> KINDS.put(Words.hyphenated(kind.name()), kind));
    }

    /** The field that an id names, of a thing that there is or not. */
    public static UsualField of(String id) {
        NodePath path = NodePath.TOP;
        String[] steps = id.split("\\.", -1);
        for (int i = 1; i < steps.length; i++) {
            path = path.to(steps[i]);
        }
        return new UsualField(steps[0], path);
    }

    /** The words for things. */
    public static Set<String> things() {
        Set<String> things = new TreeSet<>(KINDS.keySet());
        things.addAll(SINGLE.keySet());
        things.addAll(LISTED.keySet());
        return things;
    }

    /** The name of the group or the list of the sheet that holds it. */
    public String holder() {
        return SINGLE.getOrDefault(thing, LISTED.getOrDefault(thing, new Group(PARTS, Fitment.class)))
                .name();
    }

    /** Whether a sheet lists such things. */
    public boolean listed() {
        return !SINGLE.containsKey(thing);
    }

    /** The kind of part that it is a field of; nothing where it is of no part. */
    public Optional<Fitment.Kind> kind() {
        return Optional.ofNullable(KINDS.get(thing));
    }

    /** The field at the end of its way. */
    public Optional<FieldSchema> schema() {
        return to(path);
    }

    /** The field that another way leads to, from the same thing, or from the top of the sheet where it begins there. */
    public Optional<FieldSchema> to(NodePath other) {
        if (other.isTop() || !things().contains(thing)) {
            return Optional.empty();
        }
        if (fromTop(other)) {
            return RecordSchema.at(Sheet.class, other).stream().findFirst();
        }
        return types().stream()
                .flatMap(type -> RecordSchema.of(type).names().contains(first(other))
                        ? RecordSchema.at(type, other).stream()
                        : Stream.empty())
                .findFirst();
    }

    /** Whether a way begins at the top of the sheet. */
    public static boolean fromTop(NodePath path) {
        return RecordSchema.of(Sheet.class).names().contains(first(path));
    }

    /** The names of the fields of its thing that its way could go by at its first step that leads nowhere. */
    Set<String> names() {
        Set<String> names = new TreeSet<>();
        if (path.isTop() || path.above().isTop()) {
            types().forEach(type -> names.addAll(RecordSchema.of(type).names()));
        } else {
            new UsualField(thing, path.above())
                    .schema()
                    .filter(field -> field.content() == FieldSchema.Content.GROUP)
                    .ifPresent(
                            field -> names.addAll(RecordSchema.of(field.type().asSubclass(Record.class))
                                    .names()));
        }
        return names;
    }

    /** Whether it is a place, which is given in words. */
    static boolean isPlace(FieldSchema field) {
        return field.type() == Point.class && field.description().inWords();
    }

    /** The records that hold the fields of its thing. */
    List<Class<? extends Record>> types() {
        if (KINDS.containsKey(thing)) {
            return List.of(Fitment.class, KINDS.get(thing).details());
        }
        Group group = SINGLE.getOrDefault(thing, LISTED.get(thing));
        return group == null ? List.of() : List.of(group.type());
    }

    private static String first(NodePath path) {
        return path.steps().get(0).toString();
    }

    /** Its id. */
    @Override
    public String toString() {
        return thing + "." + path;
    }
}
