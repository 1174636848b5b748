package fitworthy.printout.explain;

import fitworthy.document.Page;
import fitworthy.shelf.Kind;
import fitworthy.shelf.Taken;
import fitworthy.source.Words;
import java.util.List;
import java.util.Set;

/** Where the figures behind an explanation come from, for those of what a sheet takes from its shelf. */
final class FromShelf {

    /** Their figures stand behind many measures that do not name them. */
    private static final Set<Kind> UNNAMED = Set.of(Kind.VEHICLES, Kind.TRAILERS);

    private final List<Taken> taken;
    private final Saying saying;
    private final StringBuilder told = new StringBuilder();

    FromShelf(List<Taken> taken, Saying saying) {
        this.taken = taken;
        this.saying = saying;
    }

    /** Notes a line that is told, which may name something of the shelf. */
    void told(String line) {
        told.append(line).append('\n');
    }

    void print(Page page) {
        List<Taken> named = taken.stream().filter(this::isNamed).toList();
        if (named.isEmpty()) {
            return;
        }
        page.wrapped(0, "From the shelf:");
        for (Taken thing : named) {
            String own = thing.own().isEmpty() ? "" : "; the sheet sets " + saying.fields(thing.own());
            String name = saying.plain() ? thing.name() : thing.kind().inSheet() + " " + thing.name();
            page.hanging("    ", name + ": " + saying.place(thing.place()) + own);
        }
        page.blank();
    }

    /** A table shortens a long name. */
    private boolean isNamed(Taken thing) {
        return UNNAMED.contains(thing.kind()) || told.indexOf(Words.shortened(thing.name(), 30)) >= 0;
    }
}
