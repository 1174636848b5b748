package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** With which libraries, and how, the launcher starts a command: a stand-in for Java tells. */
@EnabledOnOs(OS.LINUX)
class LauncherTest {

    @TempDir
    private Path home;

    private Path launcher;

    @BeforeEach
    void aLauncher() throws IOException {
        launcher = home.resolve("app/bin/fitworthy");
        Files.createDirectories(launcher.getParent());
        program(launcher, Files.readString(Path.of("src/main/launcher/fitworthy")));
        Path java = home.resolve("java/bin/java");
        Files.createDirectories(java.getParent());
        program(java, "#!/bin/sh\nprintf '%s\\n' \"$@\"\n");
    }

    private static void program(Path file, String text) throws IOException {
        Files.writeString(file, text);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwx------"));
    }

    private List<String> given(String command) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(launcher.toString(), command);
        builder.environment()
                .putAll(Map.of(
                        "JAVA_HOME", home.resolve("java").toString(),
                        "FITWORTHY_CACHE", home.resolve("no-cache").toString()));
        Process run = builder.redirectErrorStream(true).start();
        List<String> lines = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        assertEquals(0, run.waitFor(), lines.toString());
        return lines;
    }

    private List<String> path(String command) throws Exception {
        List<String> given = given(command);
        String lib = launcher.getParent().getParent().toRealPath().resolve("lib") + "/";
        return List.of(given.get(given.indexOf("-cp") + 1).replace(lib, "").split(":"));
    }

    @Test
    void eachCommandFindsItsOwnLibrariesAlone() throws Exception {
        for (String command :
                List.of("check", "mend", "batch", "effect", "learn", "prove", "questions", "counters", "")) {
            assertEquals(1, path(command).size(), command);
        }
        for (String command : List.of("print", "letters", "handbook")) {
            assertEquals(List.of("print/*"), path(command).subList(1, 2), command);
            assertEquals(2, path(command).size(), command);
        }
        assertEquals(List.of("print/*", "counter/*"), path("counter").subList(1, 3));
    }

    @Test
    void whatLivesLongHasBothCompilers() throws Exception {
        for (String command : List.of("batch", "effect", "counter")) {
            assertTrue(!given(command).contains("-XX:TieredStopAtLevel=1"), command);
        }
        assertTrue(given("check").contains("-XX:TieredStopAtLevel=1"));
    }
}
