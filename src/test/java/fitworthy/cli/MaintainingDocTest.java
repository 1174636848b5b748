package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
        return Ran.of(line.replace(COPY, folder.resolve("rules").toString())
                .substring("fitworthy ".length())
                .split("\\s+"));
    }

    private void copyBook() throws IOException {
        try (Stream<Path> all = Files.walk(Books.RULES)) {
            for (Path each : all.sorted().toList()) {
                Files.copy(
                        each,
                        folder.resolve("rules")
                                .resolve(Books.RULES.relativize(each).toString()));
            }
        }
    }

    /** Adds the block below the entry it belongs to, with its dashes straight below those there. */
    private void add(String file, String after, int indent, String block) throws IOException {
        Path page = folder.resolve("rules/water").resolve(file);
        String text = Files.readString(page);
        int from = after.isEmpty() ? text.length() : text.indexOf("\n\n", text.indexOf(after)) + 1;
        assertTrue(from > 0, after);
        Files.writeString(page, text.substring(0, from) + block.indent(indent) + text.substring(from));
    }

    @Test
    void whatIsDueComesOutAsThePageSays() throws IOException {
        copyBook();
        Path sources = folder.resolve("rules/sources.yaml");
        // As if nobody had written a day down yet.
        String text = Files.readString(sources).replaceAll("(?m)^  (checked|review): .*\n", "");
        Files.writeString(sources, text);
        assertEquals(1, run("due --within 90").says("Without a day: ").code());
        String name = "\nsa-remote-travel:\n";
        assertTrue(text.contains(name));
        Files.writeString(sources, text.replace(name, name + block("checked: ").indent(2)));
        run("due --as-of")
                .printed(1)
                .says("2027-12-01 source sa-remote-travel; last checked 2026-12-01")
                .says("To be looked at again by 2028-11-30")
                .says(
                        "2028-11-30 water.person-day-least, au-sa from 2000-01-01: 6 L; published [sa-remote-travel]; last"
                                + " checked 2026-12-01")
                .says("- water.person-day-least: any from 2011-01-01, au from 2000-01-01");
    }

    @Test
    void theWalkThroughComesOutAsThePageSays() throws IOException {
        copyBook();
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
        Ran changes = run("changes");
        assertEquals(1, changes.code(), changes.err());
        assertTrue(
                changes.out()
                        .contains(
                                "- added: South Australia (au-sa) from 2027-07-01: 4 days (until then: 3 days); review:"
                                        + " 2028-07-01; published"),
                changes.out());
        Ran begun = run("begin rule");
        assertEquals(0, begun.code(), begun.err());
        assertEquals(0, run("begin region").code());
        String after = run("prove").out();
        assertTrue(!after.contains("FAULTS") && after.contains("words of its card are still to be written"), after);
        Ran tasmania = Ran.of(
                "check",
                "scenarios/touring.yaml",
                "--region",
                "au-tas",
                "--rules",
                folder.resolve("rules").toString());
        assertTrue(tasmania.out().contains("Region   Tasmania"), tasmania.out() + tasmania.err());
    }
}
