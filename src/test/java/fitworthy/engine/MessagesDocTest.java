package fitworthy.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The list of messages in the docs and the messages in the code are the same. */
class MessagesDocTest {

    private static final Path MAIN = Path.of("src/main/java/fitworthy");
    /** How a fault is made in the rooms that read a book; the first text after place and path is what is wrong. */
    private static final Pattern MADE =
            Pattern.compile("(?:new Fault\\(|\\bfault\\(|unreadable\\(|problem\\()([^;]*);", Pattern.DOTALL);

    private static final Pattern TEXT = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

    private static List<String> documented() throws IOException {
        return Files.readAllLines(Path.of("docs/messages.md")).stream()
                .filter(line -> line.startsWith("### `"))
                .map(line -> line.substring(5, line.length() - 1))
                .toList();
    }

    private static String sources() throws IOException {
        List<Path> files = new ArrayList<>();
        for (String room : List.of(
                "source", "schema", "quantity", "sheet", "shelf", "rules", "book", "engine", "usual", "proof")) {
            try (Stream<Path> all = Files.list(MAIN.resolve(room))) {
                all.forEach(files::add);
            }
        }
        StringBuilder text = new StringBuilder();
        for (Path file : files) {
            text.append(Files.readString(file).replaceAll("\"\\s*\\+ \"", ""));
        }
        return text.toString();
    }

    /** The fixed parts of an entry, which the code has to hold. */
    private static List<String> parts(String entry) {
        return Stream.of(entry.split("\\.\\.\\."))
                .map(part -> part.replaceAll("^[' ,;:]+|[' ,;:]+$", ""))
                .filter(part -> part.length() > 3)
                .toList();
    }

    @Test
    void everyEntryIsSaidByTheCode() throws IOException {
        String code = sources().replace("\\\"", "\"");
        Set<String> stale = documented().stream()
                .filter(entry -> !parts(entry).stream().allMatch(code::contains))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), stale);
    }

    @Test
    void everyMessageOfTheContractAndTheRuleFilesHasAnEntry() throws IOException {
        String all = String.join("\n", documented());
        Set<String> missing = new TreeSet<>();
        int found = 0;
        for (String name : List.of(
                "book/BookChecks",
                "book/RuleAnswers",
                "rules/Lexer",
                "rules/Tokens",
                "rules/RuleParser",
                "rules/ComparisonParser",
                "engine/BookLoader",
                "engine/Adding")) {
            String code = Files.readString(MAIN.resolve(name + ".java")).replaceAll("\"\\s*\\+ \"", "");
            for (String made :
                    MADE.matcher(code).results().map(each -> each.group(1)).toList()) {
                String problem = TEXT.matcher(made)
                        .results()
                        .map(each -> each.group(1))
                        .filter(text -> text.length() > 8)
                        .findFirst()
                        .orElse("");
                List<String> parts = parts(problem.replaceAll("^'|'$", ""));
                // What begins with an article is what a fuller message is about, or an example of what is right.
                if (!parts.isEmpty() && !parts.get(0).matches("an? .*|compared with .*")) {
                    found++;
                    if (!all.contains(
                            parts.get(0).substring(0, Math.min(parts.get(0).length(), 22)))) {
                        missing.add(name + ": " + problem);
                    }
                }
            }
        }
        assertEquals(Set.of(), missing);
        assertTrue(found > 25, "only " + found + " messages found");
    }
}
