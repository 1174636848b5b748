package fitworthy.handbook;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import fitworthy.book.Ask;
import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.book.DatedLimit;
import fitworthy.book.Practice.Lookup;
import fitworthy.book.Source;
import fitworthy.document.Json;
import fitworthy.printout.json.JsonAsk;
import fitworthy.proof.Cases.Case;
import fitworthy.proof.References;
import fitworthy.source.FaultsException;
import fitworthy.source.Words;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/** A handbook as JSON, in the shape that docs/output.md describes; its records are written as they stand here. */
public final class HandbookPrintout {

    /** Raised when a reader of the JSON would have to change. */
    static final String SHAPE = "fitworthy-handbook/1";

    private record Written(
            String shape,
            String book,
            String edition,
            String content,
            String caution,
            List<WrittenRule> rules,
            List<WrittenValue> values,
            List<WrittenRegion> regions,
            List<WrittenSource> sources) {}

    private record WrittenRule(
            String id,
            String topic,
            String title,
            String severity,
            String place,
            String card,
            String since,
            String ends,
            List<String> formerly,
            String basis,
            List<String> sources,
            List<String> about,
            String against,
            List<String> condition,
            String why,
            String met,
            String remedy,
            String ask,
            List<JsonAsk> asks,
            List<OfPractice> practice,
            List<WrittenCase> fires,
            List<WrittenCase> metIn,
            List<WrittenCase> notAssessed) {}

    private record WrittenCase(@JsonProperty("case") String name, String region, String place) {
        static List<WrittenCase> all(List<Case> cases) {
            return cases.stream()
                    .map(text -> new WrittenCase(
                            text.text().name(),
                            text.sheet().region(),
                            text.place().inBook()))
                    .toList();
        }
    }

    /** One value of a practice value, with its id. */
    private record OfPractice(String id, @JsonUnwrapped Dated dated) {}

    /** One value of a practice value. */
    private record Dated(
            String region,
            String from,
            String value,
            String basis,
            List<String> sources,
            String clause,
            String quote,
            String note,
            String checked,
            String review,
            String place) {}

    private record WrittenValue(
            String id,
            String meaning,
            String unit,
            String place,
            String ends,
            List<String> formerly,
            Collection<String> rules,
            List<Dated> values) {}

    private record WrittenRegion(
            String id, String name, String parent, List<Held> holds, List<String> none, List<String> notRecorded) {}

    /** What holds of a practice value. @param of the region that it was recorded for */
    private record Held(String id, String value, String of) {}

    private record WrittenSource(String id, String title, String kind, String edition, String link, String seen) {}

    private final References references;
    private final Book book;

    private HandbookPrintout(References references) {
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
        Json.print(out, new HandbookPrintout(References.of(folder, book)).handbook(rules));
    }

    private Written handbook(Set<String> rules) {
        boolean whole = rules.containsAll(book.cards().keySet());
        Set<String> values = whole ? book.practice().keySet() : references.values(rules);
        Set<String> sources = whole ? book.sources().keySet() : references.sources(rules);
        return new Written(
                SHAPE,
                book.cover().name(),
                book.cover().edition(),
                book.hash(),
                book.cover().caution(),
                rules.stream().map(this::rule).toList(),
                values.stream().map(this::value).toList(),
                book.regions().keySet().stream().map(id -> region(id, values)).toList(),
                sources.stream().map(this::source).toList());
    }

    private WrittenRule rule(String id) {
        Card card = book.cards().get(id);
        return new WrittenRule(
                id,
                Book.topic(id),
                card.title(),
                Words.hyphenated(card.severity().value().name()),
                book.rules().get(id).place().inBook(),
                references.place(id),
                card.since().toString(),
                book.retired(id).map(ended -> ended.day().toString()).orElse(""),
                card.formerly(),
                Words.hyphenated(card.basis().value().name()),
                card.sources(),
                card.about(),
                card.against(),
                ConditionWords.lines(book.condition(id)),
                card.why(),
                card.met(),
                card.remedy(),
                Ask.words(card.ask()),
                JsonAsk.all(card.ask(), text -> text),
                references.values(Set.of(id)).stream()
                        .flatMap(practice -> book.practice().get(practice).values().stream()
                                .map(value -> new OfPractice(practice, dated(practice, value))))
                        .toList(),
                WrittenCase.all(references.firing(id)),
                WrittenCase.all(references.met(id)),
                WrittenCase.all(references.notAssessed(id)));
    }

    private WrittenValue value(String id) {
        DatedLimit entry = book.practice().get(id);
        return new WrittenValue(
                id,
                entry.meaning(),
                entry.unit(),
                references.place(id),
                entry.ends() == null ? "" : entry.ends().toString(),
                entry.formerly(),
                book.users(id),
                entry.values().stream().map(value -> dated(id, value)).toList());
    }

    private Dated dated(String id, DatedLimit.Value value) {
        return new Dated(
                value.region(),
                value.since(),
                value.value(),
                Words.hyphenated(value.basis().value().name()),
                value.sources(),
                value.clause(),
                value.quote(),
                value.note(),
                day(value.checked()),
                day(value.review()),
                references.place(id, value));
    }

    private static String day(LocalDate day) {
        return day == null ? "" : day.toString();
    }

    private WrittenRegion region(String id, Set<String> values) {
        return new WrittenRegion(
                id,
                book.regions().get(id).name(),
                book.regions().get(id).parent(),
                values.stream()
                        .filter(value -> references.last(id, value) instanceof Lookup.Found)
                        .map(value -> held(id, value))
                        .toList(),
                references.none(id).stream().filter(values::contains).toList(),
                references.notRecorded(id).stream().filter(values::contains).toList());
    }

    private Held held(String region, String value) {
        DatedLimit.Value entry =
                ((Lookup.Found) references.last(region, value)).practice().entry();
        return new Held(value, entry.value(), entry.region());
    }

    private WrittenSource source(String id) {
        Source source = book.sources().get(id);
        return new WrittenSource(
                id,
                source.title(),
                Words.hyphenated(source.kind().value().name()),
                source.edition(),
                source.link(),
                source.seen());
    }
}
