package fitworthy.counter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands on the views of a sheet, word by word: no way to a field as the sheet's file has it, and no figure too fine. */
class WordsOfViewsTest {

    /** What is no word of the page: scripts, what the rule book calls a rule, and what may be typed. */
    private static final Pattern NO_WORDS = Pattern.compile(
            "(?s)<(script|style|datalist|textarea|template)\\b.*?</\\1>|<span class=\"rule\">.*?</span>|<!--.*?-->"
                    + "|<a href=\"/book/rules/[^>]*>.*?</a>");

    private static final Pattern RAW = Pattern.compile(
            "\\b(?:fitments|tanks|occupants|cargo|circuits|cases|load-cases|options|jobs|waivers|vehicle|trailer|trip|papers)"
                    + "\\.(?!yaml, |htm)[A-Za-z0-9][^<>\\n]{0,60}");
    private static final Pattern TOO_FINE = Pattern.compile("[^\\n ]{0,20}\\b[0-9]+\\.[0-9]{4,}\\b[^\\n]{0,20}");
    /** A place in a file, as a compiler tells it. */
    private static final Pattern LINE_OF_FILE = Pattern.compile("[^\\s]*\\.(?:ya?ml|drl|json):[0-9]+");
    /** What a rule calls what it looks at. */
    private static final Pattern OF_RULES =
            Pattern.compile("\\b(?:headroom [<>=]|[a-z]+\\.value\\b|FALSE\\b)[^\\n]{0,40}");
    /** Sums to be done again, whose figures have as many digits as it takes for them to come out. */
    private static final Pattern SUMS = Pattern.compile("(?s)<details class=\"workings\".*?</details>");

    private static final Pattern LINK = Pattern.compile("hx-get=\"(/sheets/[^\"]+)\"");

    @TempDir
    static Path folder;

    private static Served served;

    @BeforeAll
    static void open() throws Exception {
        served = Served.copyIn(folder);
        served.post(
                "/new",
                "vehicle",
                "Kea 2.7 utility",
                "fuel",
                "diesel",
                "people",
                "2",
                "region",
                "any",
                "trailer",
                "Van",
                "part",
                "tray",
                "part",
                "canopy",
                "part",
                "winch=26 kg",
                "part",
                "lift kit",
                "do",
                "make",
                "file",
                "guessed");
    }

    @AfterAll
    static void close() {
        served.close();
    }

    private static String words(String html) {
        return NO_WORDS.matcher(html)
                .replaceAll(" ")
                .replaceAll("<[^>]*>", "\n")
                .replace("&quot;", "\"");
    }

    /** Each view of a sheet, and what is fetched once something of it is opened. */
    private static List<String> pages(String sheet) throws Exception {
        List<String> open = new ArrayList<>(Stream.of(
                        "",
                        "/buy",
                        "/letters",
                        "/work",
                        "/copy",
                        "/questions?questions=all",
                        "/print",
                        "/print?for=customer",
                        "/print.html?for=quote&paper=a4",
                        "/offers")
                .map(view -> "/sheets/" + sheet + view)
                .toList());
        Set<String> seen = new TreeSet<>(open);
        for (int i = 0; i < open.size(); i++) {
            Matcher links = LINK.matcher(served.get(open.get(i)).body());
            while (links.find()) {
                String link = links.group(1).replace("&amp;", "&");
                boolean shows = link.matches(".*/(plan/(fields|more|finder)|explain|checks|questions|try)\\b.*");
                if (shows && seen.add(link)) {
                    open.add(link);
                }
            }
        }
        return open;
    }

    @ParameterizedTest
    @ValueSource(strings = {"touring.yaml", "overloaded.yaml", "weekender.yaml", "guessed.yaml"})
    void areWordsOfAPerson(String sheet) throws Exception {
        Set<String> found = new TreeSet<>();
        List<String> pages = pages(sheet);
        for (String page : pages) {
            raw(served.get(page).body()).forEach(raw -> found.add(page.replaceAll("\\?.*", "") + ": " + raw));
        }
        assertEquals(List.of(), List.copyOf(found), "of " + pages.size() + " pages");
        // Nothing is found on the one in order.
        assertEquals(
                !sheet.equals("weekender.yaml"),
                pages.stream().anyMatch(page -> page.contains("/explain?rule=")),
                sheet);
    }

    /** What a page says that is no word of a person. */
    private static List<String> raw(String html) {
        String words = words(html);
        return Stream.concat(
                        Stream.of(RAW, LINE_OF_FILE, OF_RULES)
                                .flatMap(pattern -> pattern.matcher(words).results()),
                        TOO_FINE.matcher(words(SUMS.matcher(html).replaceAll(" ")))
                                .results())
                .map(MatchResult::group)
                .toList();
    }

    @Test
    void soAreTheListANewSheetAndWhatIsWrongWithOne() throws Exception {
        assertEquals(List.of(), raw(served.get("/").body()));
        assertEquals(List.of(), raw(served.get("/new").body()));
        Files.writeString(
                folder.resolve("wrong.yaml"),
                Files.readString(folder.resolve("guessed.yaml"))
                        .replace("mass: 26 kg", "mass: 9 L")
                        .replace("kind: tray", "kind: tray, length: 99 m"));
        for (String view : List.of("", "/buy", "/print", "/print?for=customer", "/letters", "/work")) {
            String page = served.get("/sheets/wrong.yaml" + view).body();
            assertEquals(List.of(), raw(page), view);
            assertTrue(page.contains("mass of Winch: "), view);
        }
        String added = served.post(
                        "/sheets/guessed.yaml/words", "version", version("guessed.yaml"), "filter", "snorkel")
                .body();
        assertTrue(added.contains("Snorkel added"));
        assertEquals(List.of(), raw(served.get("/sheets/guessed.yaml").body()));
        served.post(
                "/sheets/guessed.yaml/add", "version", version("guessed.yaml"), "path", "cargo", "new-name", "Parrot");
        String page = served.get("/sheets/guessed.yaml").body();
        assertTrue(page.contains("Parrot added to cargo"), "what can be undone");
        served.post(
                "/sheets/guessed.yaml/add",
                "version",
                version("guessed.yaml"),
                "path",
                "occupants",
                "new-name",
                "Aunt");
        page = served.get("/sheets/guessed.yaml").body();
        assertTrue(page.contains("Aunt added to people"), "what can be undone");
        assertEquals(List.of(), raw(page));
    }

    private static String version(String sheet) throws Exception {
        return served.get("/sheets/" + sheet)
                .body()
                .replaceAll("(?s).*id=\"version\" name=\"version\" value=\"([^\"]*)\".*", "$1");
    }
}
