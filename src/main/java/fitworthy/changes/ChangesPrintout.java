package fitworthy.changes;

import fitworthy.book.Book;
import fitworthy.book.Region;
import fitworthy.changes.BookChange.Field;
import fitworthy.changes.BookChange.Kind;
import fitworthy.changes.BookChange.What;
import fitworthy.document.Json;
import fitworthy.document.Report;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Particular;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Section;
import fitworthy.document.Report.Subheading;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What differs between two books, as a report for a change log or as JSON. */
public final class ChangesPrintout {

    /** Raised when a reader of the JSON would have to change. */
    static final String SHAPE = "fitworthy-changes/1";

    private record Written(
            String shape,
            Side before,
            Side after,
            String caution,
            Map<String, Integer> counts,
            List<BookChange> changes) {}

    /** One of the two books. */
    private record Side(String book, String edition, String content) {
        static Side of(Book book) {
            return new Side(book.cover().name(), book.cover().edition(), book.hash());
        }

        String words() {
            return book + ", edition " + edition + ", content " + content;
        }
    }

    private final BookChanges changes;

    private ChangesPrintout(BookChanges changes) {
        this.changes = changes;
    }

    public static void json(PrintWriter out, BookChanges changes) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        changes.counts().forEach((kind, count) -> counts.put(kind.word(), count));
        Json.print(
                out,
                new Written(
                        SHAPE,
                        Side.of(changes.before()),
                        Side.of(changes.after()),
                        changes.after().cover().caution(),
                        counts,
                        changes.changes()));
    }

    /** For people: a section a kind, and in it what changed of each thing. */
    public static Report report(BookChanges changes) {
        return new ChangesPrintout(changes).report();
    }

    private Report report() {
        Book after = changes.after();
        return new Report(
                "Changes of a rule book",
                "What changed in the rule book",
                after.cover().name() + ", edition " + after.cover().edition(),
                after.cover().caution(),
                verdict(),
                List.of(
                        new Particular("Before", Side.of(changes.before()).words()),
                        new Particular("After", Side.of(after).words())),
                changes.counts().keySet().stream().map(this::section).toList());
    }

    private String verdict() {
        return changes.changes().isEmpty()
                ? "Nothing differs in what the two say."
                : "Differences: "
                        + changes.counts().entrySet().stream()
                                .map(entry ->
                                        entry.getKey().heading().toLowerCase(Locale.ROOT) + " " + entry.getValue())
                                .collect(Collectors.joining(", "))
                        + ".";
    }

    private Section section(Kind kind) {
        Map<String, List<BookChange>> byId = changes.changes().stream()
                .filter(change -> change.kind() == kind)
                .collect(Collectors.groupingBy(BookChange::id, LinkedHashMap::new, Collectors.toList()));
        List<Block> blocks = new ArrayList<>();
        byId.forEach((id, own) -> {
            blocks.add(new Subheading(3, id + ": " + own.get(0).about(), ""));
            blocks.add(new Points(own.stream().flatMap(this::points).toList()));
        });
        return new Section(kind.word(), kind.heading(), blocks);
    }

    private Stream<String> points(BookChange change) {
        String where = " (" + change.place() + ")";
        if (change.region() != null) {
            return Stream.of(change.what().words() + ": " + named(change.region()) + " from " + change.from() + ": "
                    + change.fields().stream()
                            .map(field -> value(change.what(), field))
                            .collect(Collectors.joining("; "))
                    + "; " + change.basis()
                    + (change.sources().isEmpty() ? "" : " [" + String.join(", ", change.sources()) + "]")
                    + where);
        }
        return Stream.concat(
                Stream.of(change.what().words() + where),
                change.what() == What.GONE
                        ? Stream.of()
                        : change.fields().stream().map(Field::words));
    }

    /** A field of a value, which comes in place of what held without it. */
    private static String value(What what, Field field) {
        if (!field.name().equals(ValueChanges.FIGURE) || what == What.CHANGED) {
            return field.words();
        }
        return what == What.GONE
                ? figure(field.before()) + "; in its place: " + figure(field.after())
                : figure(field.after()) + " (until then: " + figure(field.before()) + ")";
    }

    private static String figure(String value) {
        return value == null ? "nothing recorded" : value.equals("none") ? "no such limit" : value;
    }

    private String named(String id) {
        Region region = changes.after().regions().get(id);
        return (region == null ? changes.before().regions().get(id) : region).name() + " (" + id + ")";
    }
}
