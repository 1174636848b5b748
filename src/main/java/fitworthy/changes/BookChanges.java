package fitworthy.changes;

import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.book.FormerIds;
import fitworthy.book.UsualFigures;
import fitworthy.book.UsualPlaces;
import fitworthy.changes.BookChange.Field;
import fitworthy.changes.BookChange.Kind;
import fitworthy.changes.BookChange.What;
import fitworthy.figures.plan.Tables;
import fitworthy.quantity.QuantityText;
import fitworthy.rules.RuleText;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What differs between two books as they are read. How they are written makes no difference: lines that moved, comments,
 * folded text, the order of a condition or the names in it.
 *
 * @param changes by kind, and by id within each
 */
public record BookChanges(Book before, Book after, List<BookChange> changes) {

    private static final String SOURCES = "sources.yaml";
    private static final String BOOK = "book.yaml";

    /** Every difference. */
    public static BookChanges between(Book before, Book after) {
        BookChanges all = new BookChanges(before, after, new ArrayList<>());
        all.changes.addAll(ValueChanges.between(before, after));
        all.rules();
        all.cards();
        all.records(Kind.SOURCE, SOURCES, before.sources(), after.sources(), source -> source.title());
        all.records(Kind.REGION, BOOK, before.regions(), after.regions(), region -> region.name());
        all.tables();
        all.places();
        all.records(
                Kind.USUAL,
                UsualFigures.FOLDER,
                before.usual().values(),
                after.usual().values(),
                value -> value.value());
        all.records(
                Kind.COVER, BOOK, Map.of("book", before.cover()), Map.of("book", after.cover()), cover -> cover.name());
        return all;
    }

    /** How many there are of each kind. */
    public Map<Kind, Integer> counts() {
        Map<Kind, Integer> counts = new EnumMap<>(Kind.class);
        changes.forEach(change -> counts.merge(change.kind(), 1, Integer::sum));
        return counts;
    }

    /** A new rule is told with its card, and so is one that is gone. */
    private void rules() {
        Map<String, RuleText> old = underPresentIds(before.rules());
        for (String id : ids(old, after.rules())) {
            RuleText was = old.get(id);
            RuleText is = after.rules().get(id);
            List<Field> fields = was == null
                    ? Said.differing(Map.of(), whole(after, id))
                    : is == null ? Said.differing(whole(before, id), Map.of()) : ConditionChange.between(was, is);
            if (!fields.isEmpty()) {
                Book in = is == null ? before : after;
                changes.add(BookChange.of(
                        Kind.RULE,
                        what(was, is),
                        id,
                        in.cards().get(id).title(),
                        fields,
                        in.rules().get(id).place().inBook()));
            }
        }
    }

    private static Map<String, String> whole(Book book, String id) {
        Map<String, String> said = said(book.cards().get(id));
        said.remove("title");
        said.put("fires where", ConditionChange.words(book.rules().get(id)));
        return said;
    }

    /** A rule under another name is the same one: its card says what it was called. */
    private <T> Map<String, T> underPresentIds(Map<String, T> old) {
        FormerIds former = after.formerIds();
        Map<String, T> present = new TreeMap<>();
        old.forEach((id, value) -> present.put(former.present(id), value));
        return present;
    }

    private void cards() {
        Map<String, Card> old = underPresentIds(before.cards());
        for (String id : after.cards().keySet()) {
            if (old.containsKey(id)) {
                changed(
                        Kind.CARD,
                        id,
                        after.cards().get(id).title(),
                        said(old.get(id)),
                        said(after.cards().get(id)),
                        after.place(id).inBook());
            }
        }
    }

    /** What a card says, with what is taken for that which it leaves out. */
    private static Map<String, String> said(Card card) {
        Map<String, String> said = Said.by(card);
        said.put("consequence", Words.hyphenated(card.follows().name()));
        if (!card.against().isEmpty()) {
            said.put("allowed", card.atLeast() ? "at-least" : "at-most");
        }
        return said;
    }

    private <R extends Record> void records(
            Kind kind, String file, Map<String, R> was, Map<String, R> is, Function<R, String> about) {
        for (String id : ids(was, is)) {
            R old = was.get(id);
            R now = is.get(id);
            changed(
                    kind,
                    id,
                    about.apply(now == null ? old : now),
                    old == null ? null : Said.by(old),
                    now == null ? null : Said.by(now),
                    file);
        }
    }

    private void tables() {
        Map<String, Map<String, String>> was = rows(before.tables());
        rows(after.tables())
                .forEach((name, rows) ->
                        changed(Kind.TABLE, name, "Table " + name, was.get(name), rows, "tables/" + name + ".csv"));
    }

    private void places() {
        changed(
                Kind.TABLE,
                "places",
                "Places in words",
                said(before.usualPlaces()),
                said(after.usualPlaces()),
                "usual/places.yaml");
    }

    private static Map<String, String> said(UsualPlaces usual) {
        Map<String, String> said = new TreeMap<>();
        usual.places().forEach((words, place) -> place.values()
                .forEach(value -> said.put(words + ", " + value.region() + " from " + value.from(), value.words())));
        return said;
    }

    private static Map<String, Map<String, String>> rows(Tables tables) {
        Map<String, Map<String, String>> rows = new TreeMap<>();
        for (String name : List.of("load-index", "speed-symbol", "cable", "order", "synonyms")) {
            rows.put(name, new TreeMap<>());
        }
        tables.loadIndexKg()
                .forEach((index, load) -> rows.get("load-index").put(index.toString(), QuantityText.shown(load, "kg")));
        tables.speedSymbolMetresPerSecond()
                .forEach((symbol, speed) -> rows.get("speed-symbol").put(symbol, QuantityText.shown(speed, "km/h")));
        tables.cableAmperes()
                .forEach((insulation, sections) -> sections.forEach((section, current) -> rows.get("cable")
                        .put(
                                QuantityText.shown(section, "mm2") + " at " + QuantityText.shown(insulation, "degC"),
                                QuantityText.shown(current, "A"))));
        tables.usualOrder().forEach((job, earlier) -> rows.get("order")
                .put(job + " after", String.join(", ", new TreeSet<>(earlier))));
        tables.shopWords().meanings().forEach((word, meaning) -> rows.get("synonyms")
                .put(word + " is", String.join(" + ", meaning.terms())));
        return rows;
    }

    /** @param was null where there was none @param is null where there is none */
    private void changed(
            Kind kind, String id, String about, Map<String, String> was, Map<String, String> is, String place) {
        List<Field> fields = Said.differing(was == null ? Map.of() : was, is == null ? Map.of() : is);
        if (!fields.isEmpty()) {
            changes.add(BookChange.of(kind, what(was, is), id, about, fields, place));
        }
    }

    private static What what(Object was, Object is) {
        return was == null ? What.ADDED : is == null ? What.GONE : What.CHANGED;
    }

    private static TreeSet<String> ids(Map<String, ?> was, Map<String, ?> is) {
        TreeSet<String> ids = new TreeSet<>(was.keySet());
        ids.addAll(is.keySet());
        return ids;
    }
}
