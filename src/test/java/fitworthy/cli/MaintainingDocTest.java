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

    private static final String RAISE = "Ten minutes: raise one limit in one region from a day on";
    private static final String DUE = "What to look at again";
    private static final String RETIRE = "Retire a check";
    private static final String RENAME = "Give a rule another name";

    /** The indented blocks below a heading, each without its indentation. */
    private static List<String> blocks(String heading) throws IOException {
        String page = Files.readString(PAGE);
        int from = page.indexOf("## " + heading + "\n");
        assertTrue(from >= 0, heading);
        int to = page.indexOf("\n## ", from);
        List<String> blocks = new ArrayList<>();
        StringBuilder block = new StringBuilder();
        for (String line : (page.substring(from, to) + "\nend").lines().toList()) {
            if (line.matches(" {4,}\\S.*")) {
                block.append(line).append('\n');
            } else if (!block.isEmpty()) {
                blocks.add(block.toString().stripTrailing().stripIndent() + "\n");
                block.setLength(0);
            }
        }
        return blocks;
    }

    private static String block(String heading, String begin) throws IOException {
        return blocks(heading).stream()
                .filter(block -> block.startsWith(begin))
                .findFirst()
                .orElseThrow();
    }

    private Ran run(String heading, String command) throws IOException {
        String line = blocks(heading).stream()
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
        List<String> lines = block(RAISE, "diff -rq").lines().toList();
        assertEquals(3, shell(lines.get(0)).lines().count(), "practice, cases and the cover");
        shell(lines.get(1));
        assertEquals("", shell(lines.get(0)), "all of them are copied");
        Ran proof = ran(lines.get(2));
        assertEquals(0, proof.code(), proof.out() + proof.err());
        assertTrue(proof.out().contains("edition 2027.07"), proof.out());
        List<String> undo = block(RAISE, "git checkout").lines().toList();
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
        int blank = after.isEmpty() ? -1 : text.indexOf("\n\n", text.indexOf(after));
        int from = blank < 0 ? text.length() : blank + 1;
        assertTrue(text.contains(after), after);
        Files.writeString(page, text.substring(0, from) + block.indent(indent) + text.substring(from));
    }

    @Test
    void whatIsDueComesOutAsThePageSays() throws IOException {
        Books.copyOf("water", folder.resolve("next"));
        Path sources = folder.resolve("next/sources.yaml");
        // As if nobody had written a day down yet.
        String text = Files.readString(sources).replaceAll("(?m)^  (checked|review): .*\n", "");
        Files.writeString(sources, text);
        assertEquals(1, run(DUE, "due --within 90").says("Without a day: ").code());
        String name = "\nsa-remote-travel:\n";
        assertTrue(text.contains(name));
        Files.writeString(
                sources, text.replace(name, name + block(DUE, "checked: ").indent(2)));
        run(DUE, "due --as-of")
                .printed(1)
                .says("2027-12-01 source sa-remote-travel; last checked 2026-12-01")
                .says("To be looked at again by 2028-11-30")
                .says(
                        "2028-11-30 water.person-day-least, au-sa from 2000-01-01: 6 L; published [sa-remote-travel]; last"
                                + " checked 2026-12-01")
                .says("- water.person-day-least: any from 2011-01-01, au from 2000-01-01");
    }

    @Test
    void theWalkThroughComesOutAsThePageSays() throws IOException, InterruptedException {
        // One topic stands for the whole book, which takes minutes to prove so often.
        Books.copyOf("water", folder.resolve("next"));
        Books.copyOf("water", folder.resolve("rules"));
        String page = run(RAISE, "handbook water.no-reserve").out();
        assertTrue(page.contains("water.reserve-least") && page.contains("South Australia"), page);
        add("practice.yaml", "water.reserve-least:", 4, block(RAISE, "- region: au-sa"));
        add("cases.yaml", "", 2, block(RAISE, "- name: The day before South Australia"));
        assertEquals(0, run(RAISE, "cases").code());
        Ran proof = run(RAISE, "prove");
        assertEquals(0, proof.code(), proof.out() + proof.err());
        Ran effect = run(RAISE, "effect");
        assertEquals(1, effect.code(), effect.err());
        assertTrue(effect.out().contains("1 changed"), effect.out());
        Ran changes = run(RAISE, "changes");
        assertEquals(1, changes.code(), changes.err());
        assertTrue(
                changes.out()
                        .contains(
                                "- added: South Australia (au-sa) from 2027-07-01: 4 days (until then: 3 days); clause:"
                                        + " on water; quote: plus a 4 day reserve supply; review: 2028-07-01; published"),
                changes.out());
        putInPlaceAndUndone();
        for (String rule : List.of("begin rule water.uneven", "begin rule water.plenty")) {
            Ran begun = run("A new rule", rule);
            assertEquals(0, begun.code(), begun.err());
        }
        assertEquals(0, run("A new region", "begin region").code());
        String after = run(RAISE, "prove").out();
        assertTrue(!after.contains("FAULTS") && after.contains("words of its card are still to be written"), after);
        Ran utah = Ran.of(
                "check",
                "scenarios/touring.yaml",
                "--region",
                "us-ut",
                "--rules",
                folder.resolve("next").toString());
        assertTrue(utah.out().contains("Utah, 2026"), utah.out() + utah.err());
    }

    private String touring(String more) throws IOException {
        return Files.writeString(
                        folder.resolve("touring.yaml"),
                        Files.readString(Path.of("scenarios", "touring.yaml")) + "\n" + more)
                .toString();
    }

    private static String waiver(String rule) {
        return "waivers:\n  - {rule: " + rule + ", reason: Seen, by: foreman, until: 2027-12-31}\n";
    }

    @Test
    void aCheckIsRetiredAsThePageSays() throws IOException, InterruptedException {
        Books.copyOf("water", folder.resolve("rules"));
        shell(block(RETIRE, "rm -rf"));
        add("cards.yaml", "water.one-tank:", 2, block(RETIRE, "ends: "));
        add("cases.yaml", "", 2, block(RETIRE, "- name: On the last day"));
        assertEquals(0, run(RETIRE, "cases").code());
        Ran proof = run(RETIRE, "prove");
        assertEquals(0, proof.code(), proof.out() + proof.err());
        assertTrue(proof.out().contains("0 faults, 0 reminders"), proof.out());
        run(RETIRE, "effect")
                .printed(1)
                .says("water.one-tank sheets 1: 2 lost, 2 no longer checked; it ends on 2027-03-01");
        run(RETIRE, "explain")
                .printed(0)
                .says("The rule water.one-tank was retired on 2027-03-01, so it is not checked on 2027-03-01.");
        String rules = folder.resolve("next").toString();
        Ran.of(
                        "check",
                        touring(waiver("water.one-tank")),
                        "--shelf",
                        "scenarios/shelf",
                        "--rules",
                        rules,
                        "--as-of",
                        "2027-03-01")
                .says("the rule water.one-tank was retired on 2027-03-01; the waiver is not needed");
    }

    @Test
    void aRuleIsGivenAnotherNameAsThePageSays() throws IOException, InterruptedException {
        Books.copyOf("water", folder.resolve("rules"));
        shell(block(RENAME, "rm -rf"));
        shell(block(RENAME, "grep -rlF"));
        add("cards.yaml", "water.near-heat:", 2, block(RENAME, "formerly: "));
        Ran proof = run(RENAME, "prove");
        assertEquals(0, proof.code(), proof.out() + proof.err());
        run(RENAME, "effect").printed(0).says("Renamed water.too-near is now water.near-heat");
        run(RENAME, "explain").printed(0).says("water.too-near is now water.near-heat. water.near-heat: ");
        String rules = folder.resolve("next").toString();
        Ran.of("check", touring(waiver("water.too-near")), "--shelf", "scenarios/shelf", "--rules", rules)
                .says("water.near-heat, waived by foreman until 2027-12-31: Seen "
                        + "(water.too-near is now water.near-heat) - there is no such finding");
    }
}
