package fitworthy.printout.screen;

import fitworthy.document.Page;
import fitworthy.shelf.Kind;
import fitworthy.shelf.Shelf;
import fitworthy.source.Node;
import fitworthy.source.Words;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What lies on a shelf, by kind and file, as plain text at most 80 columns wide. */
public final class ShelfPrintout {

    private static final int NAME = 28;
    private static final int FACTS = 38;
    /** What tells one thing of a kind from another at a glance. */
    private static final List<String> SHOWN = List.of("kind", "liquid", "capacity", "mass", "current", "price");

    private final Page page;

    private ShelfPrintout(PrintWriter out) {
        this.page = new Page(out);
    }

    /** Prints a shelf. */
    public static void print(PrintWriter out, Shelf shelf) {
        new ShelfPrintout(out).print(shelf);
    }

    private void print(Shelf shelf) {
        page.wrapped(0, "The shelf " + shelf.folder() + ", content " + shelf.content());
        page.rule();
        shelf.things().forEach(this::list);
        page.wrapped(0, "A sheet takes one by its name; docs/shelf.md says how.");
        page.flush();
    }

    private void list(Kind kind, Map<String, Node.Mapping> named) {
        page.line(kind.onShelf().toUpperCase(Locale.ROOT) + " (" + named.size() + ")");
        String file = "";
        for (Map.Entry<String, Node.Mapping> thing : named.entrySet()) {
            String own = thing.getValue().place().file();
            if (!own.equals(file)) {
                page.wrapped(2, Path.of(own).getFileName().toString());
                file = own;
            }
            row(thing.getKey(), thing.getValue());
        }
        page.blank();
    }

    /** A name that is longer than its column has a line of its own, since a sheet has to give it whole. */
    private void row(String name, Node.Mapping thing) {
        String seen = Words.seen(name);
        if (seen.length() >= NAME) {
            page.wrapped(4, seen);
            seen = "";
        }
        page.line(String.format(
                Locale.ROOT,
                "    %-" + NAME + "s%-" + FACTS + "s line %d",
                seen,
                Words.shortened(String.join(", ", facts(thing)), FACTS),
                thing.place().line()));
    }

    /** Without tolerances, which stand on the shelf. */
    private static List<String> facts(Node.Mapping thing) {
        List<String> facts = new ArrayList<>();
        for (String field : SHOWN) {
            if (thing.get(field) instanceof Node.Scalar scalar) {
                facts.add(scalar.text().replaceAll(" *(\\+/-|\u00B1).*", ""));
            }
        }
        return facts;
    }
}
