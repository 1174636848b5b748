package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.book.Ask;
import fitworthy.book.Card;
import fitworthy.book.DatedLimit;
import fitworthy.book.Party;
import fitworthy.book.Source;
import fitworthy.proof.Cases;
import fitworthy.schema.ChoiceWords;
import fitworthy.schema.RecordSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What docs/writing-rules.md says of the book's files: every field that they have, and examples that may stand there. */
class WritingRulesDocTest {

    private static final Path PAGE = Path.of("docs", "writing-rules.md");
    private static final Pattern NAMED = Pattern.compile("`([a-z-]+)`");

    @TempDir
    private Path folder;

    /** The text of the chapter that begins so. */
    private static String chapter(String begin) throws IOException {
        String page = Files.readString(PAGE);
        String rest = page.substring(page.indexOf("## `" + begin + "`"));
        int next = rest.indexOf("\n## ");
        return next < 0 ? rest : rest.substring(0, next);
    }

    private static Set<String> rows(String begin) throws IOException {
        return chapter(begin)
                .lines()
                .filter(line -> line.startsWith("| `"))
                .flatMap(line -> NAMED.matcher(line.split("\\|")[1]).results().map(found -> found.group(1)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @SafeVarargs
    private static Set<String> fields(Class<? extends Record>... types) {
        Set<String> names = new TreeSet<>();
        for (Class<? extends Record> type : types) {
            names.addAll(RecordSchema.of(type).names());
        }
        return names;
    }

    private static String example(String begin, int which) throws IOException {
        return chapter(begin)
                        .split("\n\n(?= {4}\\S)")[which]
                        .split("\n\n")[0]
                        .stripTrailing()
                        .stripIndent() + "\n";
    }

    private static void append(Path file, String text) throws IOException {
        Files.writeString(file, Files.readString(file) + text);
    }

    @Test
    void everyFieldIsExplained() throws IOException {
        assertEquals(fields(Card.class), rows("cards.yaml"));
        Set<String> ofAsk = fields(Ask.class);
        ofAsk.addAll(ChoiceWords.of(Party.class));
        assertEquals(ofAsk, rows("ask"));
        assertEquals(fields(DatedLimit.class, DatedLimit.Value.class), rows("practice.yaml"));
        assertEquals(fields(Source.class), rows("sources.yaml"));
        Set<String> ofCase = fields(Cases.Text.class);
        ofCase.addAll(Set.of("sheet", "house"));
        assertEquals(ofCase, rows("cases.yaml"));
        for (String field : fields(Cases.Expected.class, Cases.Unassessed.class)) {
            assertTrue(chapter("cases.yaml").contains("`" + field + "`"), field);
        }
    }

    @Test
    void theExamplesMayStandInABook() throws IOException {
        Path rules = Books.copyOf("water", folder.resolve("rules"));
        append(rules.resolve("sources.yaml"), example("sources.yaml", 1));
        append(rules.resolve("water/cases.yaml"), example("cases.yaml", 1).indent(2));
        append(rules.resolve("water/cases.yaml"), example("cases.yaml", 2).indent(2));
        Ran ran = Ran.of("prove", "--rules", rules.toString());
        assertEquals(1, ran.code(), ran.out() + ran.err());
        ran.says("0 faults, 1 reminders");
        ran.says("nt-water-leaflet: no card and no value cites this source");
    }
}
