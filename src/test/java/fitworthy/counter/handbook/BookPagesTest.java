package fitworthy.counter.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.book.Book;
import fitworthy.counter.Served;
import fitworthy.proof.References;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rule book at the counter: found by what one knows of a rule, and every link leads to something. */
class BookPagesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final Pattern LINK = Pattern.compile("<a href=\"(/book[^\"]*)\"");

    @TempDir
    static Path folder;

    private static Served served;
    private static RuleSearch search;
    private static Book book;

    @BeforeAll
    static void open() throws Exception {
        served = Served.in(folder);
        book = Books.shipped();
        search = new RuleSearch(References.of(Books.RULES, book));
    }

    @AfterAll
    static void close() {
        served.close();
    }

    @Test
    void nothingSearchedFindsEveryRule() {
        assertEquals(book.cards().keySet(), Set.copyOf(ids(new RuleSearch.Wanted("", "", "", false), DAY)));
    }

    private static List<String> found(String words) {
        return ids(new RuleSearch.Wanted(words, "", "", false), DAY);
    }

    /** In the trade's words, in any order, with a figure among them, or with a slip of the finger. */
    @Test
    void wordsAreUnderstoodAsTheTradeMeansThem() {
        for (String words : List.of("bull bar airbag", "airbag bull bar", "airbag roo bar")) {
            assertTrue(found(words).contains("front.airbag-unstated"), words + ": " + found(words));
        }
        assertEquals(found("snorkel"), found("snorkle"));
        assertEquals(found("snorkel"), found("snorkell"));
        assertFalse(found("snorkel").isEmpty());
        assertTrue(found("swag").size() > 1, "what is carried");
        assertEquals(found("ball"), found("250 kg ball"));
        assertFalse(found("ball").isEmpty());
        assertEquals(List.of(), found("snarkyl"), "two slips are another word");
    }

    @Test
    void aTitleIsReadOfWhateverItIsAbout() throws Exception {
        String all = served.get("/book").body();
        assertFalse(all.contains("{subject}") || all.contains("{value}"));
        assertTrue(all.contains("The \u2026 exceeds its limit once the tanks beyond the other axle are used up"), all);
    }

    @Test
    void wordsHaveAllToBeThere() {
        assertEquals(
                List.of("mass.gvm-over"),
                ids(new RuleSearch.Wanted("Loaded mass above the GVM ball", "", "", false), DAY));
        assertEquals(List.of(), ids(new RuleSearch.Wanted("GVM periscope", "", "", false), DAY));
    }

    @Test
    void aMeasureIsFoundByPartOfItsName() {
        List<String> found = ids(new RuleSearch.Wanted("", "mirrors.", "", false), DAY);
        assertTrue(found.contains("mirrors.field-narrow"), found.toString());
        found.forEach(id -> assertTrue(
                book.cards().get(id).about().stream().anyMatch(measure -> measure.contains("mirrors.")), id));
    }

    @Test
    void aRegionFindsTheRulesOfItsOwnValues() {
        Set<String> values = book.practice().entrySet().stream()
                .filter(entry -> entry.getValue().values().stream()
                        .anyMatch(value -> value.region().equals("us-ca")))
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
        Set<String> users = new TreeSet<>();
        values.forEach(value -> users.addAll(book.users(value)));
        Set<String> found = new TreeSet<>(ids(new RuleSearch.Wanted("", "", "us-ca", false), DAY));
        assertTrue(found.containsAll(users) && !users.isEmpty(), users + " of " + found);
    }

    /** Of the charger's least gain nothing says when it was last checked; of the speed while towing its sources do. */
    @Test
    void whatSaysNoDayIsNeverDue() {
        assertFalse(ids(new RuleSearch.Wanted("", "", "", true), DAY).contains("towing.too-fast"));
        List<String> late = ids(new RuleSearch.Wanted("", "", "", true), DAY.plusYears(30));
        assertTrue(late.contains("towing.too-fast"), late.toString());
        assertFalse(late.contains("electrical.charger-gains"), late.toString());
    }

    @Test
    void everyLinkOfAPageLeadsToAPage() throws Exception {
        Set<String> seen = new TreeSet<>();
        for (String page : List.of(
                "/book",
                "/book/rules/mass.gvm-over",
                "/book/rules/mirrors.field-narrow",
                "/book/chapters/practice",
                "/book/chapters/confirm",
                "/book/chapters/usual")) {
            String body = served.get(page).body();
            seen.addAll(LINK.matcher(body)
                    .results()
                    .map(MatchResult::group)
                    .map(link -> link.substring(9, link.length() - 1).split("#")[0])
                    .toList());
        }
        assertTrue(seen.size() > 250, seen.size() + " links");
        // A page of a rule takes the engine through its cases, so not each of them is opened.
        for (String link : seen.stream()
                .filter(link -> !link.contains("/rules/") || link.hashCode() % 20 == 0)
                .toList()) {
            assertEquals(200, served.get(link).statusCode(), link);
        }
    }

    @Test
    void whatIsNoRuleIsNotFound() throws Exception {
        assertEquals(404, served.get("/book/rules/mass.nonsense").statusCode());
        assertEquals(404, served.get("/book/chapters/nonsense").statusCode());
    }

    private static List<String> ids(RuleSearch.Wanted wanted, LocalDate day) {
        return found(wanted, day).stream().map(RuleSearch.Found::id).toList();
    }

    private static List<RuleSearch.Found> found(RuleSearch.Wanted wanted, LocalDate day) {
        return search.find(wanted, day).values().stream().flatMap(List::stream).toList();
    }
}
