package fitworthy.sheet;

import fitworthy.schema.RecordSchema;
import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands together on a sidewall, put into the fields that a sheet has for it: load index and speed symbol as in
 * {@code 116S} or {@code 121/118S}, by themselves or after the size.
 */
final class Sidewalls {

    /** A load index with what may stand after it: the one for dual fitting, the speed symbol or both. */
    static final String INDEX_AND_SYMBOL = "([0-9]{2,3})(?:/([0-9]{2,3}) ?([A-Za-z])?| ?([A-Za-z]))";

    private static final Pattern WRITTEN = Pattern.compile(INDEX_AND_SYMBOL);
    private static final Pattern AFTER_SIZE = Pattern.compile("(.*\\S)\\s+(\\S+)");

    private final List<Fault> faults;
    private Node.Mapping sheet;

    private Sidewalls(Node.Mapping sheet, List<Fault> faults) {
        this.sheet = sheet;
        this.faults = faults;
    }

    /** The tree of a sheet with each in its own field; one that its field contradicts is a fault. */
    static Node.Mapping split(Node.Mapping sheet, List<Fault> faults) {
        Sidewalls sidewalls = new Sidewalls(sheet, faults);
        NodePath vehicle = NodePath.of("vehicle");
        sidewalls.tyres(vehicle.to("tyres"), TyreDetails.Tyres.class);
        sidewalls.tyres(vehicle.to("spare"), Vehicle.Spare.class);
        sidewalls.tyres(NodePath.of("trailer", "tyres"), Trailer.AxleTyres.class);
        if (sheet.get("fitments") instanceof Node.Listing fitments) {
            for (int i = 1; i <= fitments.items().size(); i++) {
                NodePath part = NodePath.of("fitments").to(i);
                if (part.to("kind").in(sheet) instanceof Node.Scalar kind
                        && kind.text().equals("tyres")) {
                    sidewalls.tyres(part, TyreDetails.Tyres.class);
                }
            }
        }
        return sidewalls.sheet;
    }

    private void tyres(NodePath path, Class<? extends Record> type) {
        Set<String> fields = RecordSchema.of(type).names();
        if (path.to("load-index").in(sheet) instanceof Node.Scalar index) {
            Matcher written = WRITTEN.matcher(index.text().strip());
            if (written.matches()) {
                put(path.to("load-index"), written.group(1), index);
                further(path, fields, written, index);
            }
        }
        if (fields.contains("size") && path.to("size").in(sheet) instanceof Node.Scalar size) {
            Matcher after = AFTER_SIZE.matcher(size.text().strip());
            Matcher written = after.matches() ? WRITTEN.matcher(after.group(2)) : null;
            if (written != null
                    && written.matches()
                    && TyreSize.read(after.group(1)).isPresent()) {
                put(path.to("size"), after.group(1), size);
                given(path.to("load-index"), written.group(1), size);
                further(path, fields, written, size);
            }
        }
    }

    private void further(NodePath path, Set<String> fields, Matcher written, Node.Scalar from) {
        String symbol = written.group(3) == null ? written.group(4) : written.group(3);
        if (fields.contains("dual-load-index") && written.group(2) != null) {
            given(path.to("dual-load-index"), written.group(2), from);
        }
        if (fields.contains("speed-symbol") && symbol != null) {
            given(path.to("speed-symbol"), symbol.toUpperCase(Locale.ROOT), from);
        }
    }

    /** Fills a field that is left out; one that says something else than the sidewall is a fault. */
    private void given(NodePath field, String text, Node.Scalar from) {
        Node present = field.in(sheet);
        if (present == null || present instanceof Node.Blank) {
            put(field, text, from);
        } else if (!(present instanceof Node.Scalar scalar)
                || !scalar.text().strip().equalsIgnoreCase(text)) {
            faults.add(new Fault(
                    present.place(),
                    field.toString(),
                    "is " + present.described() + ", but " + from.described() + " gives " + text,
                    "one of the two, as the sidewall says"));
        }
    }

    private void put(NodePath field, String text, Node.Scalar from) {
        sheet = Trees.with(sheet, field, new Node.Scalar(from.place(), text, false));
    }
}
