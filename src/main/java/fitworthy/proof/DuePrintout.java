package fitworthy.proof;

import static fitworthy.document.Report.Column.text;

import fitworthy.book.Book;
import fitworthy.document.Json;
import fitworthy.document.Report;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Column;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Particular;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Section;
import fitworthy.document.Report.Table;
import fitworthy.proof.Due.Item;
import fitworthy.proof.Due.When;
import fitworthy.source.Words;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What of a book is to be looked at again, as a report or as JSON. */
public final class DuePrintout {

    /** Raised when a reader of the JSON would have to change. */
    static final String SHAPE = "fitworthy-due/1";

    private record Written(
            String shape,
            String book,
            String edition,
            String content,
            String day,
            int within,
            Map<String, Integer> counts,
            List<WrittenItem> overdue,
            List<WrittenItem> soon,
            List<WrittenItem> undated) {}

    /** A value, or a source, which has no region, day, value or basis. */
    private record WrittenItem(
            String kind,
            String id,
            String region,
            String from,
            String value,
            String basis,
            List<String> sources,
            String checked,
            String review,
            String place) {

        static WrittenItem of(Item item) {
            String checked = day(item.checked());
            String review = day(item.review());
            return item.isSource()
                    ? new WrittenItem(
                            "source", item.id(), null, null, null, null, null, checked, review, standing(item))
                    : new WrittenItem(
                            "value",
                            item.id(),
                            item.value().region(),
                            day(item.value().from()),
                            item.value().value(),
                            Words.hyphenated(item.value().basis().value().name()),
                            item.value().sources(),
                            checked,
                            review,
                            standing(item));
        }

        private static String day(LocalDate day) {
            return day == null ? null : day.toString();
        }
    }

    private final Due due;

    private DuePrintout(Due due) {
        this.due = due;
    }

    public static void json(PrintWriter out, Due due) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (When when : When.values()) {
            counts.put(Words.hyphenated(when.name()), due.items(when).size());
        }
        Json.print(
                out,
                new Written(
                        SHAPE,
                        due.book().cover().name(),
                        due.book().cover().edition(),
                        due.book().hash(),
                        due.day().toString(),
                        due.within(),
                        counts,
                        due.items(When.OVERDUE).stream().map(WrittenItem::of).toList(),
                        due.items(When.SOON).stream().map(WrittenItem::of).toList(),
                        due.items(When.UNDATED).stream().map(WrittenItem::of).toList()));
    }

    /** For people: what is overdue, what comes soon, and what has no day, each under its own heading. */
    public static Report report(Due due) {
        return new DuePrintout(due).report();
    }

    private Report report() {
        Book book = due.book();
        List<Section> sections = new ArrayList<>();
        dated("overdue", "Overdue", "To have been looked at again by", When.OVERDUE, sections);
        dated("soon", "Soon", "To be looked at again by " + due.until(), When.SOON, sections);
        undated(sections);
        return new Report(
                "Review of a rule book",
                "What is to be looked at again",
                book.cover().name() + ", edition " + book.cover().edition(),
                book.cover().caution(),
                count(When.OVERDUE) + " overdue, " + count(When.SOON) + " soon, " + count(When.LATER) + " later, "
                        + count(When.UNDATED) + " without a day.",
                List.of(
                        new Particular(
                                "Book",
                                book.cover().name() + ", edition "
                                        + book.cover().edition() + ", content " + book.hash()),
                        new Particular(
                                "Day", due.day() + "; soon is within " + due.within() + " days, by " + due.until())),
                sections);
    }

    private int count(When when) {
        return due.items(when).size();
    }

    private void dated(String id, String heading, String caption, When when, List<Section> sections) {
        if (count(when) > 0) {
            List<Row> rows = due.items(when).stream()
                    .map(item -> Row.of(item.review().toString(), words(item)))
                    .toList();
            sections.add(new Section(
                    id,
                    heading + ": " + count(when),
                    List.of(new Table(caption, List.of(Column.whole("By", 16), text("What", 84)), rows))));
        }
    }

    private static String words(Item item) {
        String checked = item.checked() == null ? "" : "; last checked " + item.checked();
        if (item.isSource()) {
            return "source " + item.id() + checked + " (" + standing(item) + ")";
        }
        return item.id() + ", " + item.value().region() + " from "
                + item.value().from() + ": "
                + item.value().value() + "; "
                + Words.hyphenated(item.value().basis().value().name())
                + (item.value().sources().isEmpty()
                        ? ""
                        : " [" + String.join(", ", item.value().sources()) + "]")
                + checked + " (" + standing(item) + ")";
    }

    private static String standing(Item item) {
        return item.isSource()
                ? "sources.yaml:" + item.place().line()
                : item.place().inBook();
    }

    private void undated(List<Section> sections) {
        List<Item> items = due.items(When.UNDATED);
        if (items.isEmpty()) {
            return;
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Paragraph(
                        "Nothing says when these were last checked, or how long that stands: 'checked' beside the"
                                + " value or under its sources, and the times under 'review' in book.yaml. No day is made up."));
        Map<String, List<Item>> values = items.stream()
                .filter(item -> !item.isSource())
                .collect(Collectors.groupingBy(Item::id, LinkedHashMap::new, Collectors.toList()));
        if (!values.isEmpty()) {
            blocks.add(new Points(values.entrySet().stream()
                    .map(entry -> entry.getKey() + ": "
                            + entry.getValue().stream()
                                    .map(item -> item.value().region() + " from "
                                            + item.value().from())
                                    .collect(Collectors.joining(", "))
                            + " (" + entry.getValue().get(0).place().inBook() + ")")
                    .toList()));
        }
        String sources = items.stream().filter(Item::isSource).map(Item::id).collect(Collectors.joining(", "));
        if (!sources.isEmpty()) {
            blocks.add(new Paragraph("Sources: " + sources + "."));
        }
        sections.add(new Section("undated", "Without a day: " + items.size(), blocks));
    }
}
