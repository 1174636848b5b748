package fitworthy.counter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
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
                    + "\\.[A-Za-z0-9][^<>\\n]{0,60}");
    private static final Pattern TOO_FINE = Pattern.compile("[^\\n ]{0,20}\\b[0-9]+\\.[0-9]{4,}\\b[^\\n]{0,20}");
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
                "trailer",
                "Van",
                "part",
                "tray",
                "part",
                "canopy",
                "part",
                "winch",
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
        List<String> open =
                new ArrayList<>(Stream.of("", "/buy", "/letters", "/work", "/copy", "/questions?questions=all")
                        .map(view -> "/sheets/" + sheet + view)
                        .toList());
        Set<String> seen = new TreeSet<>(open);
        for (int i = 0; i < open.size(); i++) {
            Matcher links = LINK.matcher(served.get(open.get(i)).body());
            while (links.find()) {
                String link = links.group(1).replace("&amp;", "&");
                boolean shows = link.matches(".*/(plan/(fields|more|finder)|why|checks|questions)\\b.*");
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
            String words = words(served.get(page).body());
            for (Pattern pattern : List.of(RAW, TOO_FINE)) {
                pattern.matcher(words)
                        .results()
                        .forEach(raw -> found.add(page.replaceAll("\\?.*", "") + ": " + raw.group()));
            }
        }
        assertEquals(List.of(), List.copyOf(found), "of " + pages.size() + " pages");
    }
}
