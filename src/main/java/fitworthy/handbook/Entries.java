package fitworthy.handbook;

import static fitworthy.document.Report.Column.text;

import fitworthy.book.Book;
import fitworthy.book.DatedLimit;
import fitworthy.document.Report.Column;
import fitworthy.document.Report.Link;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Table;
import fitworthy.proof.References;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The rules, practice values and sources of a book as a handbook names them, each a link to where it stands. */
final class Entries {

    private final Book book;
    private final References references;
    private final boolean whole;

    /** @param whole whether everything stands in this handbook, or one rule alone */
    Entries(References references, boolean whole) {
        this.book = references.book();
        this.references = references;
        this.whole = whole;
    }

    /** Sources, each leading to where it is listed. */
    static List<Link> sources(List<String> ids) {
        return ids.stream()
                .map(id -> new Link("[" + id + "]", "source-" + id, ""))
                .toList();
    }

    /** A rule or a practice value. */
    Link link(String id, String after) {
        return new Link(id, target(id), after);
    }

    /** What a link leads to; nothing where this is the page of one rule. */
    String target(String id) {
        return whole ? id : "";
    }

    /** How one value of a practice value is known, and what is to be known of it. */
    String known(String id, DatedLimit.Value value) {
        return value.basis().value().words() + "; " + references.place(id, value) + value.passage()
                + (value.checked() == null ? "" : "; last checked " + value.checked())
                + (value.review() == null ? "" : "; to be looked at again by " + value.review())
                + (value.note().isEmpty() ? "" : ". " + value.note());
    }

    /** Every value of a practice value. */
    Table values(String caption, String id) {
        return new Table(
                caption,
                List.of(text("Region", 12), Column.whole("From", 14), text("Is", 16), text("How it is known", 58)),
                book.practice().get(id).values().stream()
                        .map(value -> new Row(
                                List.of(value.region(), value.since(), value.value(), known(id, value)),
                                target("region-" + value.region()),
                                false,
                                sources(value.sources())))
                        .toList());
    }

    /** The trade's words, by what they are on a sheet. */
    Table shopWords() {
        Map<String, List<String>> called = new TreeMap<>();
        book.tables().shopWords().meanings().forEach((word, meaning) -> called.computeIfAbsent(
                        String.join(" and ", meaning.terms()), none -> new ArrayList<>())
                .add(word));
        return new Table(
                "The words of the trade, by the kind of part or what else they are on a sheet",
                List.of(text("On a sheet", 25), text("Also called", 75)),
                called.entrySet().stream()
                        .map(entry -> new Row(
                                List.of(entry.getKey(), String.join(", ", entry.getValue())), "", false, List.of()))
                        .toList());
    }

    /** From when on a rule is checked no more, to be said after something else; nothing where no end is set. */
    String ends(String id) {
        return book.retired(id)
                .map(ended -> "; checked no more from " + ended.day() + " on"
                        + (ended.what().equals(id) ? "" : ", when " + ended.what() + " ends"))
                .orElse("");
    }

    /** The severity of a rule. */
    String severity(String id) {
        return Words.hyphenated(book.cards().get(id).severity().value().name());
    }
}
