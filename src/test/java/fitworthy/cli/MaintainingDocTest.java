package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What docs/maintaining.md tells its reader to do is done here as it stands there, on a copy of the book in another
 * folder.
 */
class MaintainingDocTest {

    private static final Path PAGE = Path.of("docs", "maintaining.md");
    private static final String COPY = "/tmp/rules-next";
    /** A word of a command, or several in quotes. */
    private static final Pattern WORD = Pattern.compile("(?:\"[^\"]*\"|\\S)+");

    @TempDir
    private Path folder;

    /** The indented blocks of the page, each without its indentation. */
    private static List<String> blocks() throws IOException {
        List<String> blocks = new ArrayList<>();
        StringBuilder block = new StringBuilder();
        for (String line : (Files.readString(PAGE) + "\nend").lines().toList()) {
            if (line.matches(" {4,}\\S.*")) {
                block.append(line).append('\n');
            } else if (!block.isEmpty()) {
                blocks.add(block.toString().stripTrailing().stripIndent() + "\n");
                block.setLength(0);
            }
        }
        return blocks;
    }

    private static String block(String begin) throws IOException {
        return blocks().stream()
                .filter(each -> each.startsWith(begin))
                .findFirst()
                .orElseThrow();
    }

    private Ran run(String command) throws IOException {
        String line = blocks().stream()
                .flatMap(String::lines)
                .filter(each -> each.startsWith("fitworthy " + command))
                .findFirst()
                .orElseThrow();
        return ran(line);
    }

    /** A line of the page, on the copy and on a live book of its own. */
    private Ran ran(String line) {
        return Ran.of(WORD.matcher(line.replace(COPY, folder.resolve("next").toString())
                        .replace("--rules rules", "--rules " + folder.resolve("rules"))
                        .substring("fitworthy ".length()))
                .results()
                .map(word -> word.group().replace("\"", ""))
                .toArray(String[]::new));
    }

    /** A line that is not of this program, in the folder that holds the live book. */
    private String shell(String line) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        "sh", "-c", line.replace(COPY, folder.resolve("next").toString()))
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return said;
    }

    private void copyBook(String name) throws IOException {
        try (Stream<Path> all = Files.walk(Books.RULES)) {
            for (Path each : all.sorted().toList()) {
                Files.copy(
                        each,
                        folder.resolve(name)
                                .resolve(Books.RULES.relativize(each).toString()));
            }
        }
    }

    private String live(String file) throws IOException {
        return Files.readString(folder.resolve("rules").resolve(file));
    }

    /** Every file that was changed goes into the live book, which is proved then and can be had back. */
    private void putInPlaceAndUndone() throws IOException, InterruptedException {
        Path cover = folder.resolve("next/book.yaml");
        Files.writeString(cover, Files.readString(cover).replaceFirst("edition: \".*?\"", "edition: \"2027.07\""));
        shell("git init -q; git config user.name Keeper; git config user.email keeper@example.org");
        shell("git add rules; git commit -qm Before");
        String before = live("water/practice.yaml");
        List<String> lines = block("diff -rq").lines().toList();
        assertEquals(3, shell(lines.get(0)).lines().count(), "practice, cases and the cover");
        shell(lines.get(1));
        assertEquals("", shell(lines.get(0)), "all of them are copied");
        Ran proof = ran(lines.get(2));
        assertEquals(0, proof.code(), proof.out() + proof.err());
        assertTrue(proof.out().contains("edition 2027.07"), proof.out());
        List<String> undo = block("git checkout").lines().toList();
        String after = live("water/practice.yaml");
        shell(undo.get(0));
        assertEquals(before, live("water/practice.yaml"));
        shell(lines.get(1));
        shell(lines.get(3));
        shell(lines.get(4));
        assertEquals(after, live("water/practice.yaml"));
        shell(undo.get(1));
        assertEquals(before, live("water/practice.yaml"));
    }

    /** Adds the block below the entry it belongs to, with its dashes straight below those there. */
    private void add(String file, String after, int indent, String block) throws IOException {
        Path page = folder.resolve("next/water").resolve(file);
        String text = Files.readString(page);
        int from = after.isEmpty() ? text.length() : text.indexOf("\n\n", text.indexOf(after)) + 1;
        assertTrue(from > 0, after);
        Files.writeString(page, text.substring(0, from) + block.indent(indent) + text.substring(from));
    }

    @Test
    void theWalkThroughComesOutAsThePageSays() throws IOException, InterruptedException {
        copyBook("next");
        copyBook("rules");
        String page = run("handbook water.no-reserve").out();
        assertTrue(page.contains("water.reserve-least") && page.contains("South Australia"), page);
        add("practice.yaml", "water.reserve-least:", 4, block("- region: au-sa"));
        add("cases.yaml", "", 2, block("- name: The day before South Australia"));
        assertEquals(0, run("cases").code());
        Ran proof = run("prove");
        assertEquals(0, proof.code(), proof.out() + proof.err());
        Ran effect = run("effect");
        assertEquals(1, effect.code(), effect.err());
        assertTrue(effect.out().contains("1 changed"), effect.out());
        putInPlaceAndUndone();
        for (String rule : List.of("begin rule mass.", "begin rule water.")) {
            Ran begun = run(rule);
            assertEquals(0, begun.code(), begun.err());
        }
        assertEquals(0, run("begin region").code());
        String after = run("prove").out();
        assertTrue(!after.contains("FAULTS") && after.contains("words of its card are still to be written"), after);
        Ran tasmania = Ran.of(
                "check",
                "scenarios/touring.yaml",
                "--region",
                "au-tas",
                "--rules",
                folder.resolve("next").toString());
        assertTrue(tasmania.out().contains("Region   Tasmania"), tasmania.out() + tasmania.err());
    }
}
