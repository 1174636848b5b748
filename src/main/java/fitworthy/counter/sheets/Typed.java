package fitworthy.counter.sheets;

import fitworthy.counter.page.Sent;
import fitworthy.sheet.SheetDraft.Heading;
import io.javalin.http.Context;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What was typed of a new sheet.
 *
 * @param trailerMass its loaded mass; empty where it is not known
 * @param parts in the order of their fields, empty where nothing was typed
 * @param file what the sheet's file is to be called; empty for a name made of the others
 */
public record Typed(
        String notes,
        String customer,
        String quote,
        String vehicle,
        String fuel,
        String people,
        String region,
        String trailer,
        String trailerMass,
        List<String> parts,
        String file) {

    private static final Pattern LINES = Pattern.compile("\\R");
    /** Fields for parts at first, and how many are free below those that were typed. */
    private static final int ROWS = 8;

    private static final int FREE = 3;

    /** Nothing. @param region the one that is chosen at first */
    static Typed nothing(String region) {
        return new Typed("", "", "", "", "", "", region, "", "", List.of(), "");
    }

    static Typed of(Context sent) {
        return new Typed(
                Sent.form(sent, "notes").strip(),
                line(sent, "customer"),
                line(sent, "quote"),
                line(sent, "vehicle"),
                line(sent, "fuel"),
                line(sent, "people"),
                line(sent, "region"),
                line(sent, "trailer"),
                line(sent, "trailer-mass"),
                sent.formParams("part").stream().map(String::strip).toList(),
                line(sent, "file"));
    }

    private static String line(Context sent, String field) {
        return LINES.matcher(Sent.form(sent, field)).replaceAll(" ").strip();
    }

    Heading heading() {
        return new Heading(notes.isEmpty() ? List.of() : List.of(LINES.split(notes)), customer, quote);
    }

    /** The trailer as one types it elsewhere, with its mass behind it. */
    String towed() {
        return trailerMass.isEmpty() ? trailer : trailer + "=" + trailerMass;
    }

    /** What its file is called where no name was typed. */
    String words() {
        return customer.isEmpty() ? vehicle : customer;
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
