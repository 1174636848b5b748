package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.IntSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where stack or memory end, the program ends with its own code and a sentence. */
class BeyondTheMachineTest {

    private static int endless(int depth) {
        return depth < 0 ? 0 : endless(depth + 1) + 1;
    }

    private static int hungry() {
        long[][] all = new long[100_000][];
        for (int i = 0; i < all.length; i++) {
            all[i] = new long[Integer.MAX_VALUE - 8];
        }
        return all.length;
    }

    private static void ends(String sentence, IntSupplier command) {
        StringWriter err = new StringWriter();
        assertEquals(ExitCodes.OUR_FAULT, Fitworthy.ended(new PrintWriter(err), command));
        assertFalse(err.toString().contains("\tat "), err.toString());
        assertEquals(sentence, err.toString().lines().findFirst().orElse(""));
    }

    @Test
    void aStackAndAHeapThatDoNotSufficeAreTold() {
        ends("What was read is nested more deeply than the program can follow. No advice was given.", () -> endless(0));
        ends(
                "The memory did not suffice, and no advice was given. Give the program more, such as by",
                BeyondTheMachineTest::hungry);
        assertEquals(3, Fitworthy.ended(null, () -> 3));
    }

    /** The compiler of rules would wait for ever for a thread of its own that died. */
    @Test
    void littleMemoryForRulesThatAreToBeCompiledIsTold(@TempDir Path folder) throws Exception {
        Path rules = Books.copyOf("water", folder.resolve("rules"));
        Path edited = rules.resolve("water/water.drl");
        Files.writeString(edited, Files.readString(edited).replaceFirst("value < ", "value <= "));
        ProcessBuilder builder = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx32m",
                "-cp",
                System.getProperty("java.class.path"),
                "fitworthy.cli.Main",
                "check",
                "rules/plain-sheet.yaml",
                "--rules",
                rules.toString());
        builder.redirectErrorStream(true)
                .environment()
                .put("FITWORTHY_CACHE", folder.resolve("cache").toString());
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(ExitCodes.OUR_FAULT, process.waitFor(), said);
        assertTrue(said.contains("The memory did not suffice, and no advice was given."), said);
    }
}
