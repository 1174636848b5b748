package fitworthy.sheet;

import fitworthy.schema.ChoiceWords;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.ShopWords.Meaning;
import fitworthy.sheet.ShopWords.Thing;
import fitworthy.source.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The text of a new build sheet: what was named, and {@code ask} for each figure that nobody has said yet, so that
 * nothing in it is made up.
 */
public final class SheetDraft {

    private static final Pattern BARE = Pattern.compile("\\p{L}[\\p{L}\\p{N}./]*([ -][\\p{L}\\p{N}./]+)*");
    /** What YAML or a sheet would take for something else than a name. */
    private static final Set<String> TAKEN = Set.of("yes", "no", "true", "false", "on", "off", "null", "y", "n");

    private final Whole whole;
    private final List<String> fitments = new ArrayList<>();
    private final List<String> tanks = new ArrayList<>();
    private final List<String> circuits = new ArrayList<>();
    private final List<String> cargo = new ArrayList<>();
    private final Set<String> names = new HashSet<>();

    /** A part, or what else is planned. @param figure a mass, or what a tank holds; empty where it was not said */
    public record Wanted(String name, Meaning meaning, String figure) {}

    /** A trailer. @param mass empty where it was not said */
    public record Towed(String name, String mass) {}

    /**
     * What the sheet is to hold.
     *
     * @param fuel what the engine burns, diesel or petrol
     * @param people how many are aboard, the driver counted
     * @param regions among which its region is to be chosen
     */
    public record Whole(
            String vehicle,
            Tank.Liquid fuel,
            int people,
            String region,
            List<String> regions,
            LocalDate day,
            List<Wanted> parts,
            Optional<Towed> trailer) {}

    private SheetDraft(Whole whole) {
        this.whole = whole;
    }

    /** The text of a sheet, which a reader accepts. */
    public static String text(Whole whole) {
        return new SheetDraft(whole).text();
    }

    private String text() {
        tanks.add(tank("Main tank", fuel(), "", "stock: yes"));
        names.add("Main tank");
        whole.parts().forEach(this::add);
        List<String> lines = new ArrayList<>(List.of(
                "# Put a figure in place of each 'ask', or a guess such as 'about 26 kg'.",
                "title: " + quoted(whole.vehicle()),
                "region: " + whole.region() + "  # where it is registered: " + String.join(", ", whole.regions()),
                "as-of: " + whole.day(),
                "vehicle:",
                "  name: " + quoted(whole.vehicle()),
                "  size: {wheelbase: ask}  # the handbook",
                "  mass: {kerb: ask, front-axle: ask, rear-axle: ask, kerb-fuel: ask, kerb-driver: ask}"
                        + "  # a weighbridge, an axle at a time",
                "  ratings: {gvm: ask, front-axle: ask, rear-axle: ask, gcm: ask, towing: ask, ball: ask, roof: ask}"
                        + "  # the plate; the handbook",
                "  engine: {fuel: " + fuel() + "}"));
        list("fitments:  # mass: its maker or a scale; x: a tape, backwards from the front axle", fitments, lines);
        list("circuits:", circuits, lines);
        list("tanks:", tanks, lines);
        list("occupants:", people(), lines);
        list("cargo:", cargo, lines);
        whole.trailer().ifPresent(towed -> {
            lines.add("trailer: {name: " + quoted(towed.name()) + ", mass: " + orAsk(towed.mass())
                    + ", ball: ask, rated: ask}  # a weighbridge, a ball scale; its plate");
            lines.add("cases: [{name: without the trailer}, {name: towing, towing: yes}]");
        });
        lines.add("trip: {people: " + whole.people() + "}");
        return String.join("\n", lines) + "\n";
    }

    private static void list(String heading, List<String> entries, List<String> lines) {
        if (!entries.isEmpty()) {
            lines.add(heading);
            entries.forEach(entry -> lines.add("  - {" + entry + "}"));
        }
    }

    private String fuel() {
        return Words.hyphenated(whole.fuel().name());
    }

    private List<String> people() {
        List<String> people = new ArrayList<>();
        for (int i = 1; i <= whole.people(); i++) {
            people.add("name: " + (i == 1 ? "Driver" : "Person " + i) + unknown(""));
        }
        return people;
    }

    /** What a word stands for: its first part has its name, and what else it is belongs to that. */
    private void add(Wanted wanted) {
        List<Kind> kinds = wanted.meaning().kinds();
        String first = "";
        for (Kind kind : kinds) {
            String name = first.isEmpty()
                    ? part(Words.capital(wanted.name()), kind, wanted.figure())
                    : part(Words.capital(Words.hyphenated(kind.name()).replace('-', ' ')), kind, "");
            first = first.isEmpty() ? name : first;
        }
        for (Thing thing : wanted.meaning().things()) {
            String name = first.isEmpty() ? free(Words.capital(wanted.name())) : first;
            String belongs = first.isEmpty() ? "" : ", part: " + quoted(first);
            switch (thing) {
                case CIRCUIT -> circuits.add("name: " + quoted(name) + belongs);
                case CARGO -> cargo.add("name: " + quoted(name) + unknown(wanted.figure()));
                case FUEL_TANK -> tanks.add(tank(name, fuel(), wanted.figure(), "stock: no"));
                case WATER_TANK -> tanks.add(tank(name, "water", wanted.figure(), "stock: no"));
                case FUEL_CAN -> tanks.add(tank(name, fuel(), wanted.figure(), "stock: no, portable: yes"));
                case WATER_CAN -> tanks.add(tank(name, "water", wanted.figure(), "stock: no, portable: yes"));
            }
        }
    }

    /** Lists a part, at each end where its kind has to say at which. @return the name that it has */
    private String part(String name, Kind kind, String figure) {
        String word = Words.hyphenated(kind.name());
        String needed = RecordSchema.of(kind.details()).fields().stream()
                .filter(field -> field.description().needed() && field.content() == FieldSchema.Content.FIGURE)
                .map(field -> ", " + field.name() + ": ask")
                .collect(Collectors.joining());
        String first = "";
        for (String end : ends(name, kind)) {
            boolean told = end.isEmpty() || name.toLowerCase(Locale.ROOT).contains(end);
            String own = free(told ? name : name + " " + end);
            fitments.add("name: " + quoted(own) + ", kind: " + word + (end.isEmpty() ? "" : ", end: " + end) + needed
                    + unknown(figure));
            first = first.isEmpty() ? own : first;
        }
        return first;
    }

    /** The end that the name of a part says, else both; one without a name where the kind has none. */
    private static List<String> ends(String name, Kind kind) {
        boolean asked = RecordSchema.of(kind.details()).fields().stream()
                .anyMatch(field -> field.description().needed() && field.type() == VehicleEnd.class);
        if (!asked) {
            return List.of("");
        }
        List<String> ends = ChoiceWords.of(VehicleEnd.class);
        List<String> said = ends.stream()
                .filter(end -> name.toLowerCase(Locale.ROOT).contains(end))
                .toList();
        return said.isEmpty() ? ends : said;
    }

    private static String tank(String name, String liquid, String capacity, String more) {
        return "name: " + quoted(name) + ", liquid: " + liquid + ", capacity: " + orAsk(capacity)
                + ", fill: 100 %, at: {x: ask}, " + more;
    }

    /** What has to be known of all that weighs something. */
    private static String unknown(String mass) {
        return ", mass: " + orAsk(mass) + ", at: {x: ask}";
    }

    private static String orAsk(String figure) {
        return figure.isEmpty() ? "ask" : figure;
    }

    /** The name, with a number where another thing has it. */
    private String free(String name) {
        String free = name;
        for (int i = 2; !names.add(free); i++) {
            free = name + " " + i;
        }
        return free;
    }

    private static String quoted(String name) {
        return BARE.matcher(name).matches() && !TAKEN.contains(name.toLowerCase(Locale.ROOT))
                ? name
                : '"' + name.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
