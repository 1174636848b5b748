package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fitworthy.Books;
import fitworthy.Pipes;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What is read and written is a file, and nothing that a command reads is written over. */
@Timeout(value = 300, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class ReadAndWrittenTest {

    private static final String NO_FILE = "this is a pipe, a device or a socket, not a file";

    @TempDir
    private Path home;

    private String sheet;

    @BeforeEach
    void aSheet() throws IOException {
        sheet = Files.copy(Books.RULES.resolve("plain-sheet.yaml"), home.resolve("sheet.yaml"))
                .toString();
    }

    private String path(String name) {
        return home.resolve(name).toString();
    }

    private String pipe(String name) throws InterruptedException {
        return Pipes.make(home.resolve(name)).toString();
    }

    @Test
    void pipesAreNeverWaitedFor() throws Exception {
        String pipe = pipe("pipe.yaml");
        String message = pipe + ": " + NO_FILE;
        Ran.of("check", pipe).refused(2, message);
        Ran.of("check", sheet, "--house", pipe).refused(2, message);
        Ran.of("batch", pipe("pipe.ndjson")).refused(2, NO_FILE);
        Ran.of("effect", sheet, "--with-house", pipe).refused(2, message);
        Ran.of("effect", sheet, "--with-region", "uk", "--resume", pipe).refused(74, message);
        for (String[] each : new String[][] {
            {"print", sheet, "--html", pipe},
            {"print", sheet, "--pdf", pipe},
            {"batch", sheet, "--out", pipe},
            {"handbook", "--html", pipe},
            {"handbook", "--markdown", pipe}
        }) {
            Ran.of(each).refused(74, message);
        }
        Ran many = Ran.of("batch", home.toString());
        assertEquals(2, many.code(), many.err());
        assertTrue(many.out().contains(NO_FILE) && many.out().contains("Plain wagon"), "the other sheet goes on");
    }

    @Test
    void devicesAndLinksToFoldersAreRefused() throws IOException {
        assumeTrue(Files.exists(Path.of("/dev/null")));
        String folder = Files.createSymbolicLink(home.resolve("link"), Files.createDirectory(home.resolve("folder")))
                .toString();
        for (Map.Entry<String, String> each : Map.of(
                        "/dev/null", NO_FILE, "/dev/zero", NO_FILE, folder, "this is a folder")
                .entrySet()) {
            String message = each.getKey() + ": " + each.getValue();
            Ran.of("check", each.getKey()).refused(2, message);
            Ran.of("check", sheet, "--house", each.getKey()).refused(2, message);
            Ran.of("print", sheet, "--html", each.getKey()).refused(74, message);
            Ran.of("batch", sheet, "--out", each.getKey()).refused(74, message);
            Ran.of("effect", sheet, "--with-region", "uk", "--resume", each.getKey())
                    .refused(74, message);
        }
        assertFalse(Files.isRegularFile(Path.of("/dev/null")), "nothing was put in its place");
        assertTrue(Files.isSymbolicLink(home.resolve("link")));
    }

    @Test
    void whatIsReadIsNotWrittenOver() throws IOException {
        String text = Files.readString(Path.of(sheet));
        String lost = "is read by this command, and would be lost";
        String house =
                Files.writeString(home.resolve("house.yaml"), "shop: Saltbush").toString();
        Files.createDirectory(home.resolve("below"));
        Files.createSymbolicLink(home.resolve("link.yaml"), Path.of(sheet));
        Files.createLink(home.resolve("same.yaml"), Path.of(sheet));
        for (String each : List.of("sheet.yaml", "below/../sheet.yaml", "link.yaml", "same.yaml")) {
            Ran.of("print", sheet, "--html", path(each)).refused(2, "--html: " + path(each) + ": " + lost);
            Ran.of("print", sheet, "--pdf", path(each)).refused(2, lost);
            Ran.of("batch", sheet, "--out", path(each)).refused(2, "--out: " + path(each) + ": " + lost);
            Ran.of("effect", sheet, "--with-region", "uk", "--resume", path(each))
                    .refused(2, lost);
        }
        Ran.of("print", path("link.yaml"), "--html", sheet).refused(2, lost);
        Ran.of("batch", home.toString(), "--out", sheet).refused(2, lost);
        Ran.of("print", sheet, "--house", house, "--html", house).refused(2, lost);
        Ran.of("effect", sheet, "--with-house", house, "--resume", house).refused(2, lost);
        assertEquals(text, Files.readString(Path.of(sheet)));
        assertEquals("shop: Saltbush", Files.readString(Path.of(house)));
    }

    @Test
    void noTwoOutputsAreOneFile() throws IOException {
        String message = "is the file of --html too";
        Files.createDirectory(home.resolve("below"));
        Files.createSymbolicLink(home.resolve("link"), home.resolve("below"));
        Ran.of("print", sheet, "--html", path("new"), "--pdf", path("below/../new"))
                .refused(2, message);
        Ran.of("print", sheet, "--html", path("below/new"), "--pdf", path("link/new"))
                .refused(2, message);
        Ran.of("handbook", "--html", path("new"), "--markdown", path("new")).refused(2, message);
        Path earlier = Files.writeString(home.resolve("earlier"), "earlier");
        Files.createLink(home.resolve("same"), earlier);
        Ran.of("print", sheet, "--html", path("earlier"), "--pdf", path("same")).refused(2, message);
        assertEquals("earlier", Files.readString(earlier));
        assertFalse(Files.exists(home.resolve("new"), LinkOption.NOFOLLOW_LINKS));
    }

    @Test
    void noOutputStandsInTheRuleBook() throws IOException {
        Path rules = Books.copyOf("water", home.resolve("rules"));
        Path cards = rules.resolve("water/cards.yaml");
        String text = Files.readString(cards);
        Files.createLink(home.resolve("same"), cards);
        Files.createSymbolicLink(home.resolve("link"), cards);
        for (String each : List.of("rules/water/cards.yaml", "rules/new.html", "same", "link")) {
            String message = path(each) + ": belongs to the rule book " + rules;
            Ran.of("print", sheet, "--rules", rules.toString(), "--html", path(each))
                    .refused(2, message);
            Ran.of("batch", sheet, "--rules", rules.toString(), "--out", path(each))
                    .refused(2, message);
            Ran.of("handbook", "--rules", rules.toString(), "--markdown", path(each))
                    .refused(2, message);
            Ran.of("effect", sheet, "--with-rules", rules.toString(), "--resume", path(each))
                    .refused(2, message);
        }
        assertEquals(text, Files.readString(cards));
        assertFalse(Files.exists(rules.resolve("new.html")));
    }

    /** What a link in somebody else's book leads to is on the reader's own disk, and his message may go anywhere. */
    @Test
    void linkOutOfTheBookIsRefusedWithoutAWordOfItsTarget() throws Exception {
        Path rules = Books.copyOf("water", home.resolve("rules"));
        Path secret = Files.writeString(home.resolve("secret"), "key: hunter2\n: [\n");
        for (String each : List.of("book.yaml", "water/cards.yaml", "water/water.drl", "tables/order.csv")) {
            swapped(rules, each, secret, "check", sheet, "--rules", rules.toString());
        }
        for (String each : List.of("plain-sheet.yaml", "water/cases.yaml")) {
            swapped(rules, each, secret, "prove", "--rules", rules.toString());
            swapped(rules, each, secret, "handbook", "water.short", "--rules", rules.toString());
            swapped(rules, each, secret, begin(rules));
        }
        assertEquals("key: hunter2\n: [\n", Files.readString(secret));
    }

    private static String[] begin(Path rules) {
        return ("begin rule water.plenty --about water.person-day --from 2027-07-01 --rules " + rules).split(" ");
    }

    private static void swapped(Path rules, String page, Path by, String... args) throws IOException {
        Path file = rules.resolve(page);
        String text = Files.readString(file);
        Files.delete(file);
        Files.createSymbolicLink(file, by);
        Ran ran = Ran.of(args);
        ran.refused(3, file + ": a link leads from here out of its folder");
        assertFalse(ran.err().contains("hunter2"), ran.err());
        Files.delete(file);
        Files.writeString(file, text);
    }

    @Test
    void pipeInTheBookIsNotWaitedFor() throws Exception {
        Path rules = Books.copyOf("water", home.resolve("rules"));
        for (String each : List.of("book.yaml", "water/water.drl", "water/practice.yaml", "tables/order.csv")) {
            Path file = rules.resolve(each);
            String text = Files.readString(file);
            Files.delete(file);
            Pipes.make(file);
            Ran.of("check", sheet, "--rules", rules.toString()).refused(3, file + ": " + NO_FILE);
            Files.delete(file);
            Files.writeString(file, text);
        }
    }

    /** Advice does without a cache, but it is said why it takes longer. */
    @Test
    void whatIsNoCacheFolderIsSaidAndNotUsed() throws Exception {
        Path rules = Books.copyOf("water", home.resolve("rules"));
        Path folder = Files.createDirectory(home.resolve("folder"));
        Path link = Files.createSymbolicLink(home.resolve("link"), folder);
        for (Map.Entry<Path, String> each : Map.of(link, "this is a link", Pipes.make(home.resolve("pipe")), NO_FILE)
                .entrySet()) {
            StringWriter out = new StringWriter();
            StringWriter err = new StringWriter();
            int code = Fitworthy.run(
                    new PrintWriter(out),
                    new PrintWriter(err),
                    Map.of("FITWORTHY_CACHE", each.getKey().toString(), "FITWORTHY_RULES", rules.toString()),
                    "check",
                    sheet);
            assertEquals(0, code, err.toString());
            assertTrue(out.toString().contains("Plain wagon"), out.toString());
            assertEquals(
                    List.of(
                            "The cache folder " + each.getKey() + " is not used, so that runs take longer: "
                                    + each.getValue() + ". Name a folder with FITWORTHY_CACHE.",
                            "Compiling the rules."),
                    err.toString().lines().toList());
        }
        try (var left = Files.list(folder)) {
            assertEquals(List.of(), left.toList());
        }
    }
}
