package fitworthy.counter.sheets;

import fitworthy.counter.page.Sent;
import fitworthy.schema.ChoiceWords;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetDraft.Heading;
import fitworthy.sheet.TubFate;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What was typed of a new sheet.
 *
 * @param lines what stands in the fields of one line, by their names; empty where nothing was typed
 * @param parts in the order of their fields, empty where nothing was typed
 */
public record Typed(String notes, Map<String, String> lines, List<String> parts) {

    private static final Pattern LINES = Pattern.compile("\\R");
    /** Fields of one line, in the order of the page; of the trip by what the sheet calls them. */
    static final List<String> FIELDS = List.of(
            "customer",
            "quote",
            "vehicle",
            "fuel",
            "main-tank",
            "kerb",
            "gvm",
            "gcm",
            "front-axle",
            "rear-axle",
            "towing",
            "on-ball",
            "region",
            "people",
            "masses",
            "longest-leg",
            "parked",
            "top-speed",
            "dust",
            "ready-by",
            "trailer",
            "trailer-mass",
            "ball",
            "rated",
            "tub",
            "file");

    /** What may be answered of the dust. */
    public static final List<String> DUST = ChoiceWords.of(Sheet.Dust.class);

    /** What may be answered of the tub, in words. */
    public static final Map<String, String> TUB = tubs();

    /** Fields for parts at first, and how many are free below those that were typed. */
    private static final int ROWS = 8;

    private static final int FREE = 3;

    /** Nothing. @param region in which all sheets are looked at; empty where each says its own */
    static Typed nothing(String region) {
        return new Typed("", Map.of("region", region), List.of());
    }

    /** The fields of one line from one to another, in the order of the page. */
    static List<String> fields(String first, String last) {
        return FIELDS.subList(FIELDS.indexOf(first), FIELDS.indexOf(last) + 1);
    }

    private static Map<String, String> tubs() {
        Map<String, String> tubs = new LinkedHashMap<>();
        tubs.put("off", "comes off");
        tubs.put("stays", "stays on");
        tubs.put("none", "it came without one");
        return tubs;
    }

    static Typed of(Context sent) {
        return new Typed(
                Sent.form(sent, "notes").strip(),
                FIELDS.stream().collect(Collectors.toMap(field -> field, field -> LINES.matcher(Sent.form(sent, field))
                        .replaceAll(" ")
                        .strip())),
                sent.formParams("part").stream().map(String::strip).toList());
    }

    /** What stands in a field of one line. */
    public String line(String field) {
        return lines.getOrDefault(field, "");
    }

    /** Whether any figure of the vehicle was typed. */
    public boolean hasBrochure() {
        return Brochure.FIGURES.stream().anyMatch(one -> !line(one.line()).isEmpty());
    }

    /** Whether any figure of a trailer was typed, but no name. */
    boolean hasNamelessTrailer() {
        return line("trailer").isEmpty()
                && fields("trailer-mass", "rated").stream()
                        .anyMatch(figure -> !line(figure).isEmpty());
    }

    Heading heading() {
        return new Heading(notes.isEmpty() ? List.of() : List.of(LINES.split(notes)), line("customer"), line("quote"));
    }

    /** What becomes of the tub, as far as that was answered. */
    TubFate tub() {
        return switch (line("tub")) {
            case "off" -> TubFate.COMES_OFF;
            case "stays" -> TubFate.STAYS_ON;
            case "none" -> TubFate.NEVER_HAD;
            default -> TubFate.NOT_SAID;
        };
    }

    /** What its file is called where no name was typed. */
    String words() {
        return line("customer").isEmpty() ? line("vehicle") : line("customer");
    }

    /** The parts, with fields that are still free. */
    public List<String> rows() {
        int filled = (int) parts.stream().filter(part -> !part.isEmpty()).count();
        List<String> typed = filled == parts.size() ? parts : parts.subList(0, parts.size() - trailing());
        return Stream.concat(typed.stream(), Stream.generate(() -> "").limit(Math.max(FREE, ROWS - typed.size())))
                .toList();
    }

    private int trailing() {
        int trailing = 0;
        while (trailing < parts.size() && parts.get(parts.size() - 1 - trailing).isEmpty()) {
            trailing++;
        }
        return trailing;
    }
}
