package fitworthy.handbook;

import com.fasterxml.jackson.core.JsonGenerator;
import fitworthy.book.Book;
import fitworthy.book.Book.Lookup;
import fitworthy.book.Card;
import fitworthy.book.DatedLimit;
import fitworthy.book.Source;
import fitworthy.proof.Cases.Case;
import fitworthy.proof.ProofPrintout;
import fitworthy.proof.References;
import fitworthy.source.FaultsException;
import fitworthy.source.Words;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/** A handbook as JSON, in the shape that docs/output.md describes. */
public final class HandbookPrintout {

    /** Raised when a reader of the JSON would have to change. */
    static final String SHAPE = "fitworthy-handbook/1";

    private final JsonGenerator json;
    private final References references;
    private final Book book;

    private HandbookPrintout(JsonGenerator json, References references) {
        this.json = json;
        this.references = references;
        this.book = references.book();
    }

    /**
     * Prints rules with the values and sources that belong to them.
     *
     * @param rules their ids; with all of them everything of the book is printed, used or not
     * @throws FaultsException where a file of cases cannot be read
     */
    public static void json(PrintWriter out, Path folder, Book book, Set<String> rules) throws FaultsException {
        References references = References.of(folder, book);
        ProofPrintout.write(out, SHAPE, json -> new HandbookPrintout(json, references).handbook(rules));
    }

    private void handbook(Set<String> rules) throws IOException {
        boolean whole = rules.containsAll(book.cards().keySet());
        json.writeStringField("book", book.cover().name());
        json.writeStringField("edition", book.cover().edition());
        json.writeStringField("content", book.hash());
        json.writeStringField("caution", book.cover().caution());
        json.writeArrayFieldStart("rules");
        for (String id : rules) {
            rule(id);
        }
        json.writeEndArray();
        Set<String> values = whole ? book.practice().keySet() : references.values(rules);
        json.writeArrayFieldStart("values");
        for (String id : values) {
            value(id);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("regions");
        for (String id : book.regions().keySet()) {
            region(id, values);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("sources");
        for (String id : whole ? book.sources().keySet() : references.sources(rules)) {
            Source source = book.sources().get(id);
            json.writeStartObject();
            json.writeStringField("id", id);
            json.writeStringField("title", source.title());
            json.writeStringField("link", source.link());
            json.writeStringField("seen", source.seen());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void rule(String id) throws IOException {
        Card card = book.cards().get(id);
        json.writeStartObject();
        json.writeStringField("id", id);
        json.writeStringField("topic", Book.topic(id));
        json.writeStringField("title", card.title());
        json.writeStringField(
                "severity", Words.hyphenated(card.severity().value().name()));
        json.writeStringField("place", book.rules().get(id).place().inBook());
        json.writeStringField("card", references.place(id));
        json.writeStringField("since", card.since().toString());
        json.writeStringField("basis", Words.hyphenated(card.basis().value().name()));
        texts("sources", card.sources());
        texts("about", card.about());
        json.writeStringField("against", card.against());
        texts("condition", Handbook.lines(book.condition(id)));
        json.writeStringField("why", card.why());
        json.writeStringField("met", card.met());
        json.writeStringField("remedy", card.remedy());
        json.writeStringField("ask", card.ask());
        json.writeArrayFieldStart("practice");
        for (String practice : references.values(Set.of(id))) {
            for (DatedLimit.Value each : book.practice().get(practice).values()) {
                json.writeStartObject();
                json.writeStringField("id", practice);
                dated(practice, each);
                json.writeEndObject();
            }
        }
        json.writeEndArray();
        cases("fires", references.firing(id));
        cases("met-in", references.met(id));
        cases("not-assessed", references.notAssessed(id));
        json.writeEndObject();
    }

    private void cases(String name, List<Case> cases) throws IOException {
        json.writeArrayFieldStart(name);
        for (Case each : cases) {
            json.writeStartObject();
            json.writeStringField("case", each.text().name());
            json.writeStringField("region", each.sheet().region());
            json.writeStringField("place", each.place().inBook());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void value(String id) throws IOException {
        DatedLimit entry = book.practice().get(id);
        json.writeStartObject();
        json.writeStringField("id", id);
        json.writeStringField("meaning", entry.meaning());
        json.writeStringField("unit", entry.unit());
        json.writeStringField("place", references.place(id));
        texts("rules", book.users(id));
        json.writeArrayFieldStart("values");
        for (DatedLimit.Value each : entry.values()) {
            json.writeStartObject();
            dated(id, each);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void dated(String id, DatedLimit.Value value) throws IOException {
        json.writeStringField("region", value.region());
        json.writeStringField("from", value.from().toString());
        json.writeStringField("value", value.value());
        json.writeStringField("basis", Words.hyphenated(value.basis().value().name()));
        texts("sources", value.sources());
        json.writeStringField("note", value.note());
        json.writeStringField(
                "review", value.review() == null ? "" : value.review().toString());
        json.writeStringField("place", references.place(id, value));
    }

    private void region(String id, Set<String> values) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", id);
        json.writeStringField("name", book.regions().get(id).name());
        json.writeStringField("parent", book.regions().get(id).parent());
        json.writeArrayFieldStart("holds");
        for (String each : values) {
            if (references.last(id, each) instanceof Lookup.Found found) {
                json.writeStartObject();
                json.writeStringField("id", each);
                json.writeStringField("value", found.practice().entry().value());
                json.writeStringField("of", found.practice().entry().region());
                json.writeEndObject();
            }
        }
        json.writeEndArray();
        texts("none", references.none(id).stream().filter(values::contains).toList());
        texts(
                "not-recorded",
                references.notRecorded(id).stream().filter(values::contains).toList());
        json.writeEndObject();
    }

    private void texts(String name, Collection<String> values) throws IOException {
        json.writeArrayFieldStart(name);
        for (String value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }
}
