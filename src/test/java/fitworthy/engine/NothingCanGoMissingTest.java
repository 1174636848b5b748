package fitworthy.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.book.Book;
import fitworthy.book.BookChecks;
import fitworthy.book.BookParts;
import fitworthy.book.TableReader;
import fitworthy.book.Unread;
import fitworthy.figures.plan.PracticeId;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Located;
import fitworthy.source.Node;
import fitworthy.source.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Taking any card, rule, practice value, source or table row out of the shipped book makes it a book that cannot be
 * used. Here the pieces are taken out in memory; CheckTest takes some out of the files.
 */
class NothingCanGoMissingTest {

    @TempDir
    private Path home;

    private static final Located NOWHERE = Located.of(new Node.Blank(Place.of("a page"), false));

    /** The faults of the shipped book without one piece. */
    private static String faults(String card, String rule, String practice, String source) throws FaultsException {
        Book book = Books.shipped();
        Map<String, Located> places = new TreeMap<>();
        book.cards().keySet().forEach(id -> places.put(id, NOWHERE));
        book.practice().keySet().forEach(id -> places.put(id, NOWHERE));
        List<Fault> faults = new ArrayList<>();
        new BookChecks(
                        new BookParts(
                                Books.RULES,
                                book.regions(),
                                without(book.cards(), card),
                                without(book.rules(), rule),
                                without(book.practice(), practice),
                                without(book.sources(), source),
                                Map.of(),
                                places,
                                new Unread()),
                        faults)
                .check();
        return faults.toString();
    }

    private static <T> Map<String, T> without(Map<String, T> all, String gone) {
        Map<String, T> rest = new TreeMap<>(all);
        rest.remove(gone);
        return rest;
    }

    @Test
    void noCardRuleOrPracticeValueCanGoMissing() throws FaultsException {
        Book book = Books.shipped();
        assertEquals("[]", faults("", "", "", ""));
        Set<String> unnoticed = new TreeSet<>();
        for (String id : book.cards().keySet()) {
            if (!faults(id, "", "", "").contains(id)) {
                unnoticed.add("card " + id);
            }
            if (!faults("", id, "", "").contains(id)) {
                unnoticed.add("rule " + id);
            }
        }
        for (String id : book.practice().keySet()) {
            if (!faults("", "", id, "").contains(id)) {
                unnoticed.add("practice " + id);
            }
        }
        assertEquals(Set.of(), unnoticed);
    }

    /** Also where no rule compares with it: what the program says of enough rests on it. */
    @Test
    void aValueThatTheFiguresAskForIsMissedAtItsPlace() throws Exception {
        for (PracticeId asked : PracticeId.values()) {
            String id = asked.id();
            String place = "rules/" + Book.topic(id) + "/practice.yaml";
            String faults = faults("", "", id, "");
            assertTrue(faults.contains("the figures ask for the practice value '" + id + "'"), faults);
            assertTrue(faults.contains(place), faults);
        }
        Path rules = Books.copyOf("water", home.resolve("rules"));
        Path page = rules.resolve("water/practice.yaml");
        Files.writeString(page, Files.readString(page).replaceFirst("(?ms)^water.reserve-least:.*?(?=^\\S|\\z)", ""));
        Fault fault = assertThrows(
                        FaultsException.class, () -> BookLoader.load(rules, home.resolve("cache"), sentence -> {}))
                .faults()
                .stream()
                .filter(each -> each.problem().startsWith("the figures ask"))
                .findFirst()
                .orElseThrow();
        assertEquals(page.toString(), fault.place().toString());
        assertEquals(
                "the figures ask for the practice value 'water.reserve-least', which is not in the book",
                fault.problem());
    }

    @Test
    void noCitedSourceCanGoMissing() throws FaultsException {
        Book book = Books.shipped();
        Set<String> cited = new TreeSet<>();
        book.cards().values().forEach(card -> cited.addAll(card.sources()));
        book.practice().values().forEach(entry -> entry.values().forEach(value -> cited.addAll(value.sources())));
        assertTrue(cited.size() > 30, "cited " + cited.size());
        Set<String> unnoticed = new TreeSet<>();
        for (String id : cited) {
            if (!faults("", "", "", id).contains(id)) {
                unnoticed.add(id);
            }
        }
        assertEquals(Set.of(), unnoticed);
    }

    /** How a table is read. */
    private interface Reader {
        void read(String text, List<Fault> faults);
    }

    private static void noRowCanGoMissing(String file, Reader reader) throws IOException {
        List<String> lines = Files.readAllLines(Books.RULES.resolve("tables").resolve(file));
        Set<String> unnoticed = new TreeSet<>();
        for (int i = 0; i < lines.size(); i++) {
            List<String> rest = new ArrayList<>(lines);
            rest.remove(i);
            List<Fault> faults = new ArrayList<>();
            reader.read(String.join("\n", rest), faults);
            if (faults.isEmpty()) {
                unnoticed.add(lines.get(i));
            }
        }
        assertEquals(Set.of(), unnoticed);
    }

    @Test
    void noRowOfATableCanGoMissing() throws IOException {
        noRowCanGoMissing("load-index.csv", (text, faults) -> TableReader.loadIndex(text, "load-index.csv", faults));
        noRowCanGoMissing(
                "speed-symbol.csv", (text, faults) -> TableReader.speedSymbol(text, "speed-symbol.csv", faults));
        noRowCanGoMissing("cable.csv", (text, faults) -> TableReader.cable(text, "cable.csv", faults));
    }
}
