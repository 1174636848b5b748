package fitworthy.counter.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.advice.View;
import fitworthy.counter.edit.SetValue;
import fitworthy.shelf.Shelves;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run that is killed while it writes steps. {@code -Dfitworthy.kills=50} kills as many. */
class KilledStepsTest {

    private static final int KILLS = Integer.getInteger("fitworthy.kills", 3);
    private static final String FIRST = "mass: 66 kg +/- 3 kg";

    @TempDir
    Path folder;

    /** Writes steps without end, and says of each when it is done. */
    static final class Writer {

        public static void main(String[] args) throws Exception {
            OpenSheet sheet = open(Path.of(args[0]));
            for (int i = 0; ; i++) {
                sheet.change(
                        sheet.now().version(),
                        new OpenSheetTest.InOneBox(new SetValue("occupants.Ines.mass", mass(i) + " kg"), "1"));
                System.out.println(i);
                System.out.flush();
            }
        }
    }

    private static int mass(int step) {
        return 50 + step % 50;
    }

    private static OpenSheet open(Path file) throws Exception {
        return new OpenSheet(file, new View(Books.engine(), null, null, Shelves.beside()));
    }

    @Test
    void theSheetIsWholeAndNoMoreThanTheLastStepIsLost() throws Exception {
        Random random = new Random(50);
        Path file = folder.resolve("touring.yaml");
        Files.createDirectory(folder.resolve("shelf"));
        try (Stream<Path> shelf = Files.list(Path.of("scenarios/shelf"))) {
            for (Path page : shelf.toList()) {
                Files.copy(page, folder.resolve("shelf").resolve(page.getFileName()));
            }
        }
        String first = Files.readString(Path.of("scenarios/touring.yaml"));
        for (int kill = 0; kill < KILLS; kill++) {
            Files.writeString(file, first);
            Files.deleteIfExists(folder.resolve(".fitworthy/touring.yaml.steps"));
            int said = killed(file, random.nextInt(300));
            String text = Files.readString(file);
            boolean last = text.equals(first.replace(FIRST, "mass: " + mass(said) + " kg"));
            boolean next = text.equals(first.replace(FIRST, "mass: " + mass(said + 1) + " kg"));
            assertTrue(last || next, text);
            try (OpenSheet again = open(file)) {
                again.now();
                again.undo(again.now().version());
                assertEquals(first, Files.readString(file), "what was typed in one field is one step");
            }
        }
    }

    /** The last step that was said to be done. */
    private int killed(Path file, int millis) throws Exception {
        Path said = folder.resolve("said");
        Process writer = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Writer.class.getName(),
                        file.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .redirectOutput(said.toFile())
                .start();
        try {
            while (writer.isAlive() && Files.size(said) == 0) {
                Thread.sleep(5);
            }
            Thread.sleep(millis);
        } finally {
            writer.destroyForcibly().waitFor();
        }
        String all = Files.readString(said);
        List<String> lines = all.substring(0, all.lastIndexOf('\n')).lines().toList();
        return Integer.parseInt(lines.get(lines.size() - 1));
    }
}
