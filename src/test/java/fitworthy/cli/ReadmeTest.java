package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the README and the sample show is what is printed today. */
class ReadmeTest {

    private static final String LEFT_OUT = "[...]";

    /** The book's digest changes with every word of it, and the README leaves it out. */
    private static final Pattern CONTENT = Pattern.compile("content [0-9a-f]{12}");

    private static String checked(String scenario) {
        return CONTENT.matcher(
                        Ran.of("check", "scenarios/" + scenario + ".yaml").out())
                .replaceAll(Matcher.quoteReplacement("content " + LEFT_OUT));
    }

    @Test
    void theReadmeShowsWhatIsPrinted() throws IOException {
        String[] blocks = Files.readString(Path.of("README.md")).split("```\n");
        assertEquals(3, blocks.length);
        String printed = checked("overloaded").strip();
        String shown = blocks[1].strip();
        List<String> pieces = Arrays.asList(shown.split(Pattern.quote("\n\n" + LEFT_OUT + "\n\n")));
        assertEquals(2, pieces.size());
        assertTrue(printed.startsWith(pieces.get(0)), printed);
        assertTrue(printed.endsWith(pieces.get(1)), printed);
    }

    /** The texts whole; of the page what it says first, since the rest follows the book in other tests. */
    @Test
    void theSampleIsOfToday() throws IOException {
        for (String sheet : List.of("touring", "overloaded", "weekender")) {
            assertEquals(
                    checked(sheet).strip(),
                    Files.readString(Path.of("docs/sample", sheet + ".txt")).strip(),
                    "print it anew by docs/sample/make");
        }
        String page = text(Files.readString(Path.of("docs/sample/touring.html")));
        String printed = text(checked("touring"));
        Matcher sentences = Pattern.compile("Loaded as planned .*?\\)\\.|Do not .*? missing\\.")
                .matcher(printed);
        int found = 0;
        while (sentences.find()) {
            assertTrue(page.contains(sentences.group()), "print it anew by docs/sample/make: " + sentences.group());
            found++;
        }
        assertEquals(2, found);
    }

    private static String text(String page) {
        return page.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    }
}
