package fitworthy.counter.handbook;

import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.proof.Due;
import fitworthy.proof.References;
import fitworthy.source.Words;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds rules of a book by what one may know of them. */
public final class RuleSearch {

    /** How far ahead of its day a review is told. */
    private static final int SOON_DAYS = 90;

    private final Book book;
    private final References references;
    /** What is searched of each rule, in small letters. */
    private final Map<String, String> texts = new LinkedHashMap<>();

    RuleSearch(References references) {
        this.references = references;
        this.book = references.book();
        book.cards()
                .forEach((id, card) ->
                        texts.put(id, lower(String.join(" ", id, card.title(), card.why(), card.remedy()))));
    }

    /**
     * What one searches; what is empty is not searched by.
     *
     * @param words all of which stand in its id, title, reason or remedy, or what the trade means by them does; figures are
     *     not searched
     * @param measure part of the name of a measure that it is about
     * @param region in which a value that it uses is recorded
     * @param due whether only those are wanted of which something is past its review, or soon will be
     */
    public record Wanted(String words, String measure, String region, boolean due) {}

    /** A rule in a line. @param due what is past its review or soon will be */
    public record Found(String id, String severity, String title, List<String> due) {}

    /** The measures that rules are about. */
    Collection<String> measures() {
        return book.cards().values().stream()
                .flatMap(card -> card.about().stream())
                .distinct()
                .sorted()
                .toList();
    }

    /** The rules that are wanted, by topic. @param day on which it is asked */
    Map<String, List<Found>> find(Wanted wanted, LocalDate day) {
        Map<String, LocalDate> due = Due.of(book, day, SOON_DAYS).pressing();
        List<Set<String>> words = SearchWords.of(book, texts.values()).read(wanted.words());
        return book.cards().entrySet().stream()
                .filter(entry -> SearchWords.stand(words, texts.get(entry.getKey()))
                        && is(wanted, entry.getKey(), entry.getValue(), due))
                .collect(Collectors.groupingBy(
                        entry -> Book.topic(entry.getKey()),
                        LinkedHashMap::new,
                        Collectors.mapping(
                                entry -> found(entry.getKey(), entry.getValue(), due), Collectors.toList())));
    }

    private boolean is(Wanted wanted, String id, Card card, Map<String, LocalDate> due) {
        return (wanted.measure().isEmpty()
                        || card.about().stream().anyMatch(measure -> measure.contains(wanted.measure())))
                && (wanted.region().isEmpty() || uses(id).anyMatch(value -> isRecorded(value, wanted.region())))
                && (!wanted.due() || uses(id).anyMatch(due::containsKey));
    }

    private boolean isRecorded(String value, String region) {
        return book.practice().containsKey(value)
                && book.practice().get(value).values().stream()
                        .anyMatch(dated -> dated.region().equals(region));
    }

    /** The practice values and sources that a rule rests on. */
    private Stream<String> uses(String rule) {
        return Stream.concat(references.values(Set.of(rule)).stream(), references.sources(Set.of(rule)).stream());
    }

    private Found found(String id, Card card, Map<String, LocalDate> due) {
        return new Found(
                id,
                Words.hyphenated(card.severity().value().name()),
                ofAny(card.title()),
                uses(id).filter(due::containsKey)
                        .map(value -> value + " by " + due.get(value))
                        .toList());
    }

    /** A title as it reads of whatever it is about. */
    static String ofAny(String title) {
        return title.replaceAll("\\{[a-z-]+}", "\u2026");
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
