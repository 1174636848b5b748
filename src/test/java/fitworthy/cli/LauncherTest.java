package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine.Command;

/** With which libraries, and how, the launchers start a command: a stand-in for Java tells, and Windows' script is read. */
@EnabledOnOs(OS.LINUX)
class LauncherTest {

    @TempDir
    private Path home;

    private Path launcher;

    @BeforeEach
    void aLauncher() throws IOException {
        launcher = home.resolve("an app/bin/fitworthy");
        Files.createDirectories(launcher.getParent());
        program(launcher, Files.readString(Path.of("src/main/launcher/fitworthy")));
        java(home.resolve("java/bin/java"), "printf '%s\\n' \"$@\"");
    }

    private static void java(Path file, String line) throws IOException {
        Files.createDirectories(file.getParent());
        program(file, "#!/bin/sh\n" + line + "\n");
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

    @Test
    void aJavaBesideTheProgramComesFirst() throws Exception {
        java(home.resolve("an app/java/bin/java"), "echo its own");
        assertEquals(List.of("its own"), given("check"));
    }

    @Test
    void theOneForWindowsStartsEveryCommandAlike() throws Exception {
        String app = launcher.getParent().getParent().toRealPath().toString();
        List<String> commands = new ArrayList<>(List.of("counters", ""));
        for (Class<?> each : Fitworthy.class.getAnnotation(Command.class).subcommands()) {
            commands.add(each.getAnnotation(Command.class).name());
        }
        for (String command : commands) {
            List<String> there = WindowsLauncher.read().given("C:\\an app\\bin\\", command).stream()
                    .map(word -> word.replace("C:\\an app\\bin\\..", app)
                            .replace(';', ':')
                            .replace('\\', '/'))
                    .toList();
            assertEquals(given(command), there, command);
        }
    }
}
