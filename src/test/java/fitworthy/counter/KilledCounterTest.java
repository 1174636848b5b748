package fitworthy.counter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A counter that is killed while somebody types: between two letters, and while one is written. It is started again. */
@Timeout(value = 300, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class KilledCounterTest {

    private static final String SHEET = "/sheets/plain.yaml";
    private static final String TITLE = "title: Plain wagon";
    private static final List<String> LETTERS = List.of("and-never-back-to-the-north-again".split(""));

    @TempDir
    private Path folder;

    private Path sheet;

    private static String letter(int place) {
        return LETTERS.get(place % LETTERS.size());
    }

    private final List<Running> all = new ArrayList<>();

    private Running started(String title) throws Exception {
        Running running = new Running(folder, title);
        all.add(running);
        running.letIn();
        return running;
    }

    @AfterEach
    void endAll() throws Exception {
        for (Running each : all) {
            each.kill();
        }
    }

    @BeforeEach
    void aSheet() throws IOException {
        sheet = Files.copy(Books.RULES.resolve("plain-sheet.yaml"), folder.resolve("plain.yaml"));
    }

    /** A counter in a process of its own, with somebody who types a title there. */
    private static final class Running {

        private final Process process;
        private Visitor visitor;
        private final String first;
        private String typed;

        /** @param title that the sheet has */
        Running(Path folder, String title) throws IOException {
            ProcessBuilder builder = new ProcessBuilder(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-XX:TieredStopAtLevel=1",
                    "-cp",
                    System.getProperty("java.class.path"),
                    "fitworthy.cli.Main",
                    "counter",
                    folder.toString());
            builder.environment()
                    .putAll(Map.of(
                            "FITWORTHY_CACHE", Books.CACHE.toAbsolutePath().toString(),
                            "FITWORTHY_RULES", Books.RULES.toAbsolutePath().toString()));
            builder.redirectError(ProcessBuilder.Redirect.DISCARD);
            process = builder.start();
            first = title;
            typed = title;
        }

        void letIn() throws Exception {
            BufferedReader printed = process.inputReader(StandardCharsets.UTF_8);
            String address = printed.readLine();
            while (!address.contains("http://")) {
                address = printed.readLine();
            }
            visitor = new Visitor(address.strip());
        }

        String page() throws Exception {
            return visitor.get(SHEET).body();
        }

        /** What a page of the sheet does. @param fields names and values in turn */
        String done(String change, String... fields) throws Exception {
            String[] sent = Stream.concat(Stream.of("version", version(page())), Stream.of(fields))
                    .toArray(String[]::new);
            return visitor.post(SHEET + "/" + change, sent).body();
        }

        /** Types the next letter; it is typed once it is answered. */
        void type() throws Exception {
            String longer = typed + letter(typed.length() - first.length());
            done("set", "path", "title", "field", "f-title", "value", longer, "hold", first);
            typed = longer;
        }

        private static String version(String page) {
            return page.replaceAll("(?s).*id=\"version\" name=\"version\" value=\"([^\"]*)\".*", "$1");
        }

        /** Types on until something is seen while a letter is on its way, and kills the counter then. */
        void killOnce(BooleanSupplier seen) throws Exception {
            boolean there = false;
            while (!there) {
                Thread typist = new Thread(() -> {
                    try {
                        type();
                    } catch (Exception e) {
                        // Killed before it was answered.
                    }
                });
                typist.start();
                while (!there && typist.isAlive()) {
                    there = seen.getAsBoolean();
                }
                if (there) {
                    kill();
                }
                typist.join();
            }
        }

        /** As {@code kill -9} does. */
        void kill() throws Exception {
            process.destroyForcibly().waitFor();
        }
    }

    private Set<String> names() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).collect(Collectors.toSet());
        } catch (IOException e) {
            return Set.of();
        }
    }

    /** Whether it is a file of which all is not there yet; one that is left is taken away after a day. */
    private static boolean isBegun(String name) {
        return name.endsWith(".part");
    }

    private long begun() {
        return names().stream().filter(KilledCounterTest::isBegun).count();
    }

    private long steps() {
        return folder.resolve(".fitworthy/plain.yaml.steps").toFile().length();
    }

    /** The title that stands in a sheet of which nothing else is another. */
    private String written(String whole) throws IOException {
        String text = Files.readString(sheet);
        String title = text.lines()
                .filter(line -> line.startsWith("title: "))
                .findFirst()
                .orElse("");
        assertEquals(whole, text.replace(title, TITLE));
        return title.substring("title: ".length());
    }

    /** Starts it again, and looks whether what was typed since the last start goes back in one step, and comes again. */
    private Running startedAgain(String whole, String before) throws Exception {
        String written = written(whole);
        Running again = started(written);
        String page = again.page();
        assertTrue(page.contains("value=\"" + written + "\""), page);
        assertFalse(page.contains("No advice while the sheet has a fault"), page);
        again.done("undo");
        assertEquals(before, written(whole));
        again.done("redo");
        assertEquals(written, written(whole));
        assertEquals(
                Set.of("plain.yaml", ".fitworthy"),
                names().stream().filter(name -> !isBegun(name)).collect(Collectors.toSet()));
        return again;
    }

    @Test
    void theSheetIsWholeAndNoMoreThanTheLetterBeingTypedIsLost() throws Exception {
        String whole = Files.readString(sheet);
        String title = TITLE.substring("title: ".length());
        Running running = started(title);
        running.type();
        running.type();
        running.kill();
        assertEquals(running.typed, written(whole), "between two letters none is lost");
        running = startedAgain(whole, title);
        title = running.first;
        running.type();
        long kept = steps();
        running.killOnce(() -> steps() > kept);
        assertLostAtMostOne(running, whole);
        running = startedAgain(whole, title);
        title = running.first;
        running.type();
        long left = begun();
        running.killOnce(() -> begun() > left);
        assertLostAtMostOne(running, whole);
        startedAgain(whole, title);
    }

    private void assertLostAtMostOne(Running killed, String whole) throws IOException {
        String written = written(whole);
        String next = killed.typed + letter(killed.typed.length() - killed.first.length());
        assertTrue(Set.of(killed.typed, next).contains(written), written + ", and " + killed.typed + " was answered");
    }
}
