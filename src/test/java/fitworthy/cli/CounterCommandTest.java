package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.net.HttpURLConnection;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** How the page at the counter is started and ended. */
@Timeout(value = 600, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class CounterCommandTest {

    private static final String SERVERS = "javalin|jetty|servlet|kotlin|htmx";

    @TempDir
    private Path home;

    private Path sheets;

    @BeforeEach
    void aFolder() throws IOException {
        sheets = Files.createDirectory(home.resolve("sheets"));
        Files.copy(Books.RULES.resolve("plain-sheet.yaml"), sheets.resolve("plain.yaml"));
    }

    private static void refused(String message, String... args) {
        Ran ran = Ran.of(Stream.concat(Stream.of("counter"), Stream.of(args)).toArray(String[]::new));
        ran.refused(2, message);
        assertTrue(
                ran.err().contains("The command line cannot be used:")
                        && ran.err().contains("right: "),
                ran.err());
    }

    @Test
    void aFolderThatIsNoneIsRefused() throws IOException {
        refused(
                "FOLDER: " + home.resolve("none") + ": there is no such folder",
                home.resolve("none").toString());
        refused(": this is a file", sheets.resolve("plain.yaml").toString());
        refused("a folder of sheets, such as scenarios", home.resolve("none").toString());
    }

    @Test
    void aFolderOfWhatIsReadBesidesIsRefused() throws IOException {
        String rules = Books.RULES.toString();
        refused(": this is of the rule book", rules);
        refused(": this is of the rule book", rules + "/mass");
        Path link = Files.createSymbolicLink(home.resolve("link"), Books.RULES.toAbsolutePath());
        refused(": this is of the rule book", link.toString());
        Files.delete(link);
        Path shelf = Files.createDirectory(sheets.resolve("shelf"));
        refused(": this is a shelf", shelf.toString());
        refused(": this is a shelf", sheets.toString(), "--shelf", sheets.toString());
        Path house = Files.writeString(sheets.resolve("house.yaml"), "shop: Saltbush");
        refused("is in it", sheets.toString(), "--house", house.toString());
    }

    @Test
    void aPortThatCannotBeHadIsTold() throws IOException {
        refused("--port: 70000 is not a port", sheets.toString(), "--port", "70000");
        refused("--port: -1 is not a port", sheets.toString(), "--port", "-1");
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String port = String.valueOf(taken.getLocalPort());
            refused(
                    "nothing can be served at port " + port + " of 127.0.0.1: Address already in use",
                    sheets.toString(),
                    "--port",
                    port);
        }
    }

    @Test
    void othersAreLetInByAPasswordAlone() throws IOException {
        String folder = sheets.toString();
        refused("--host: others would be let in without a password", folder, "--host", "10.0.0.1");
        Path open = Files.writeString(home.resolve("open"), "long enough\n");
        Files.setPosixFilePermissions(open, PosixFilePermissions.fromString("rw-r-----"));
        refused("others may read this file", folder, "--password-file", open.toString());
        refused("chmod 600", folder, "--password-file", open.toString());
        for (String text : List.of("short\n", "", "two lines\nof text\n", "x".repeat(300))) {
            Path weak = Files.writeString(home.resolve("weak"), text);
            Files.setPosixFilePermissions(weak, PosixFilePermissions.fromString("rw-------"));
            refused("this is no password that keeps anybody out", folder, "--password-file", weak.toString());
        }
        Files.setPosixFilePermissions(open, PosixFilePermissions.fromString("rw-------"));
        refused(
                "there is no such file",
                folder,
                "--password-file",
                home.resolve("none").toString());
        for (String every : List.of("0.0.0.0", "::")) {
            refused("stands for every address", folder, "--host", every, "--password-file", open.toString());
        }
        // An address of nobody, kept for texts such as this.
        Ran ran = Ran.of("counter", folder, "--host", "192.0.2.1", "--password-file", open.toString());
        ran.refused(2, "nothing can be served at port 0 of 192.0.2.1");
        assertTrue(ran.err().contains("Nothing is\nencrypted"), ran.err());
    }

    private Process started(String classPath, String... args) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                classPath,
                "fitworthy.cli.Main"));
        command.addAll(List.of(args));
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment()
                .putAll(Map.of(
                        "FITWORTHY_CACHE", Books.CACHE.toAbsolutePath().toString(),
                        "FITWORTHY_RULES", Books.RULES.toAbsolutePath().toString()));
        return builder.start();
    }

    private static String all(java.io.InputStream in) throws IOException {
        return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }

    @Test
    void itServesUntilItIsEnded() throws Exception {
        Process run = started(System.getProperty("java.class.path"), "counter", sheets.toString());
        try (BufferedReader out = run.inputReader(StandardCharsets.UTF_8)) {
            assertEquals(sheets + " holds 1 sheet.", out.readLine());
            assertEquals("Open this address in your browser:", out.readLine());
            String address = out.readLine().strip();
            assertTrue(address.matches("http://127\\.0\\.0\\.1:\\d+/\\?key=[0-9a-f]{48}"), address);
            assertEquals("End with Ctrl-C.", out.readLine());
            HttpURLConnection asked =
                    (HttpURLConnection) URI.create(address).toURL().openConnection();
            asked.setInstanceFollowRedirects(false);
            assertEquals(303, asked.getResponseCode());
            // What a terminal sends on Ctrl-C is passed over by what was started in the background; this is not.
            run.toHandle().destroy();
            assertTrue(run.waitFor(60, TimeUnit.SECONDS), "it does not end");
            assertEquals("", all(run.getErrorStream()));
            assertEquals(0, run.exitValue());
        } finally {
            run.destroyForcibly();
        }
    }

    @Test
    void otherCommandsDoWithoutItsLibraries() throws Exception {
        Pattern servers = Pattern.compile("/[^/]*(" + SERVERS + ")[^/]*\\.jar$");
        String without = Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(entry -> !servers.matcher(entry).find())
                .map(entry -> Path.of(entry).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
        assertFalse(without.contains("javalin"));
        for (String[] args : new String[][] {
            {"--help"},
            {"counter", "--help"},
            {"check", sheets.resolve("plain.yaml").toString()}
        }) {
            Process run = started(without, args);
            String out = all(run.getInputStream());
            assertEquals(0, run.waitFor(), out + all(run.getErrorStream()));
            assertTrue(args[0].equals("check") || out.contains("counter"), out);
        }
        Process run = started(without, "counter", sheets.toString());
        assertEquals("", all(run.getInputStream()));
        String told = all(run.getErrorStream());
        assertEquals(70, run.waitFor(), told);
        assertTrue(told.contains("A library of the program was not found: ") && told.contains("bin/fitworthy"), told);
        assertFalse(told.contains("\tat "), told);
    }
}
