package fitworthy.printout.words;

import fitworthy.quantity.Missing;
import fitworthy.source.Words;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A field of a sheet in words, for readers who never see the sheet: of what it is, and what it is. */
public final class FieldWords {

    /** Lists of a sheet, whose entries are known by their names alone. */
    private static final Set<String> LISTS =
            Set.of("cargo", "cases", "circuits", "fitments", "jobs", "occupants", "options", "tanks");
    /** Where the words for a field begin to say more than what it is. */
    private static final Pattern ASIDE = Pattern.compile("[;:] ");
    /** One of the three lengths that say where a thing sits. */
    private static final Pattern PLACE = Pattern.compile("(.*)\\.at\\.[xyz]");

    /** What of a part or job is about the work on it. */
    private static final Pattern WORK = Pattern.compile("\\.work$");

    /** Behind the name of an entry, what of it has the field. */
    private static final Pattern NESTED = Pattern.compile("(.*?)\\.([a-z-]+(?:\\.[a-z-]+)*)");

    /** What a driver sees by, called as one calls it. */
    private static final Pattern EYE = Pattern.compile("(?:vehicle\\.)?view\\.eye");

    private static final Pattern MIRROR =
            Pattern.compile("(?:vehicle\\.view|fitments\\.(.*))\\.mirrors\\.(left|right)");

    /** A cable may have a fuse at each end. */
    private static final Pattern FUSE = Pattern.compile("circuits\\.(.*)\\.(far-)?fuse");

    /** What the vehicle has of its own, and what the papers say, named by its field alone. */
    private static final Pattern OWN = Pattern.compile("vehicle(\\.(size|mass|ratings|engine|intake))?|papers");

    /** What the vehicle has at each end. */
    private static final Pattern END = Pattern.compile("vehicle\\.(recovery|suspension)\\.(front|rear)");

    private static final Map<String, String> OF_AN_END =
            Map.of("recovery", " recovery point", "suspension", " suspension as made");

    private FieldWords() {}

    /** Such as "Roof rack: its mass". */
    public static String of(Missing field) {
        return of(field, "");
    }

    /** The same, without the name where it is a field of a part that is named already. */
    public static String of(Missing field, String part) {
        String owner = thing(field.path());
        String what = place(field.path()).isPresent() ? "where it sits" : what(field);
        return owner.isEmpty() || owner.equals(part) ? what : Words.capital(owner) + ": " + what;
    }

    /** The way to the place of which a field is one of the three lengths; empty for any other field. */
    public static Optional<String> place(String path) {
        Matcher place = PLACE.matcher(path);
        return place.matches() ? Optional.of(place.group(1)) : Optional.empty();
    }

    /** What a field belongs to; where it is a length of a place, the thing that sits there. */
    public static String thing(String path) {
        return owner(place(path).map(place -> place + ".at").orElse(path));
    }

    /** The entry of a list whose field it is; of what a part takes out, that. */
    private static String nested(String owner) {
        Matcher nested = NESTED.matcher(owner);
        if (!nested.matches()) {
            return owner;
        }
        return nested.group(2).equals("removes") ? "what " + nested.group(1) + " replaces" : nested.group(1);
    }

    /** What a field is, without what its words say besides. */
    public static String what(Missing field) {
        return ASIDE.split(field.meaning(), 2)[0];
    }

    /**
     * What a field belongs to: the part where it is one of a list, else the way to it. Empty for what is the sheet's or the
     * vehicle's own, which nobody would take for anything else's.
     */
    public static String owner(String path) {
        String owner = path.substring(0, Math.max(0, path.lastIndexOf('.')));
        if (EYE.matcher(owner).matches()) {
            return "driver's eye";
        }
        Matcher mirror = MIRROR.matcher(owner);
        if (mirror.matches()) {
            return (mirror.group(1) == null ? "" : mirror.group(1) + ", ") + mirror.group(2) + " mirror";
        }
        Matcher end = END.matcher(owner);
        if (end.matches()) {
            return end.group(2) + OF_AN_END.get(end.group(1));
        }
        Matcher fuse = FUSE.matcher(owner);
        if (fuse.matches()) {
            return fuse.group(1) + (fuse.group(2) == null ? ", fuse" : ", far fuse");
        }
        int first = owner.indexOf('.');
        if (first > 0 && LISTS.contains(owner.substring(0, first))) {
            return nested(WORK.matcher(owner.substring(first + 1)).replaceFirst(""));
        }
        return (OWN.matcher(owner).matches() ? "" : owner.replaceFirst("^vehicle\\.(intake\\.)?", ""))
                .replace('.', ' ')
                .replace('-', ' ');
    }
}
