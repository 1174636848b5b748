package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fitworthy.Books;
import fitworthy.source.WholeFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a full disk, a killed run, a second writer or a folder that cannot be written does to what is written. */
class FullDiskTest {

    private static final String PLAIN = Books.RULES.resolve("plain-sheet.yaml").toString();

    @TempDir
    private Path folder;

    private Path out;

    @BeforeEach
    void anEarlierFile() throws IOException {
        out = Files.writeString(folder.resolve("advice.ndjson"), "earlier\n");
    }

    private List<String> names(Path in) throws IOException {
        try (Stream<Path> all = Files.list(in)) {
            return all.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    /** In a container each run may have the same number, so a file with it may stand there. */
    @Test
    void whatAKilledRunLeftIsInNobodysWay() throws IOException {
        Path own = Files.writeString(
                folder.resolve(".advice.ndjson." + ProcessHandle.current().pid() + ".part"), "half a li");
        Path old = Files.writeString(folder.resolve(".advice.ndjson.1a2b.part"), "half a li");
        Path future = Files.writeString(folder.resolve(".advice.ndjson.3c4d.part"), "half a li");
        Path others = Files.writeString(folder.resolve(".other.ndjson.1a2b.part"), "half a li");
        Instant now = Instant.now();
        for (Path each : List.of(old, others)) {
            Files.setLastModifiedTime(each, FileTime.from(now.minus(Duration.ofDays(2))));
        }
        Files.setLastModifiedTime(future, FileTime.from(now.plus(Duration.ofDays(2))));
        assertEquals(0, Ran.of("batch", folder(PLAIN), "--out", out.toString()).code());
        assertTrue(Files.readString(out).startsWith("{\"sheet\":"));
        assertEquals(
                List.of(own.getFileName().toString(), others.getFileName().toString(), "advice.ndjson", "sheets"),
                names(folder),
                "of this file, what is a day old is gone; what may still be written stays");
    }

    private String folder(String... sheets) throws IOException {
        Path in = Files.createDirectory(folder.resolve("sheets"));
        for (String each : sheets) {
            Files.copy(Path.of(each), in.resolve(Path.of(each).getFileName()));
        }
        return in.toString();
    }

    @Test
    void ofTwoWritersAtOnceOneHasTheFileWhole() throws Exception {
        byte[] one = "1".repeat(300_000).getBytes(StandardCharsets.UTF_8);
        byte[] other = "2".repeat(200_000).getBytes(StandardCharsets.UTF_8);
        ExecutorService pool = Executors.newFixedThreadPool(2);
        for (int i = 0; i < 20; i++) {
            List<Future<Void>> both = pool.invokeAll(List.<Callable<Void>>of(written(one), written(other)));
            for (Future<Void> each : both) {
                each.get();
            }
            String text = Files.readString(out);
            assertTrue(text.matches("1{300000}|2{200000}"), () -> text.length() + " characters");
        }
        pool.shutdown();
        assertEquals(List.of("advice.ndjson"), names(folder));
    }

    private Callable<Void> written(byte[] content) {
        return () -> {
            WholeFile.write(out, content);
            return null;
        };
    }

    /** A disk of 32 KiB that is full, where the system lets us make one. */
    private Path fullDisk() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        Process mount = new ProcessBuilder("mount", "-t", "tmpfs", "-o", "size=32k", "tmpfs", disk.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        assumeTrue(
                mount.waitFor(10, TimeUnit.SECONDS) && mount.exitValue() == 0,
                "no disk of our own can be mounted here");
        Files.write(disk.resolve("filler"), new byte[24576]);
        Files.writeString(disk.resolve("printed"), "earlier\n");
        return disk;
    }

    @Test
    void fullDiskIsSaidAndLeavesWhatStoodThere() throws Exception {
        Path disk = fullDisk();
        try {
            String target = disk.resolve("printed").toString();
            String sheets = folder("scenarios/touring.yaml", "scenarios/overloaded.yaml");
            for (String[] each : new String[][] {
                {"batch", sheets, "--shelf", "scenarios/shelf", "--out", target},
                {"print", PLAIN, "--html", target, "--as-printed-at", "2026-11-25T10:00Z"}
            }) {
                Ran.of(each).refused(74, target + ": No space left on device");
                assertEquals("earlier\n", Files.readString(Path.of(target)));
                assertEquals(List.of("filler", "printed"), names(disk));
            }
            String journal = disk.resolve("journal").toString();
            String[] effect = {
                "effect", sheets, "--shelf", "scenarios/shelf", "--with-region", "uk", "--resume", journal
            };
            Ran.of(effect).refused(74, journal + ": No space left on device");
            Files.delete(disk.resolve("filler"));
            Files.delete(Path.of(target));
            Ran again = Ran.of(effect);
            assertEquals(
                    Ran.of("effect", sheets, "--shelf", "scenarios/shelf", "--with-region", "uk")
                            .out(),
                    again.out());
            assertEquals(1, again.code(), again.err());
        } finally {
            new ProcessBuilder("umount", disk.toString()).start().waitFor();
        }
    }

    @Test
    void outputThatCannotBeWrittenIsNotASuccess() {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int each) throws IOException {
                throw new IOException("No space left on device");
            }
        };
        for (String[] args : new String[][] {
            {"check", PLAIN},
            {"check", PLAIN, "--format", "json"},
            {"batch", "scenarios"},
            {"effect", PLAIN, "--with-region", "uk"},
            {"--help"}
        }) {
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            int code = Main.run(
                    InputStream.nullInputStream(),
                    full,
                    err,
                    Map.of("FITWORTHY_CACHE", Books.CACHE.toString(), "FITWORTHY_RULES", Books.RULES.toString()),
                    args);
            assertEquals(74, code, String.join(" ", args));
            assertTrue(err.toString(StandardCharsets.UTF_8).contains("written"), err.toString(StandardCharsets.UTF_8));
        }
    }

    @Test
    void folderThatCannotBeWrittenIsNamed() throws IOException {
        List<String> told = new ArrayList<>();
        for (Path each : List.of(out.resolve("below"), folder.resolve("none/below"), Path.of("/proc/below"))) {
            Ran.of("print", PLAIN, "--html", each.toString()).refused(74, each.toString());
            Ran.of("batch", "scenarios", "--out", each.toString()).refused(74, each.toString());
            Ran.of("effect", PLAIN, "--with-region", "uk", "--resume", each.toString())
                    .refused(74, each.toString());
            told.add(each.toString());
        }
        assertEquals(3, told.size());
        assertEquals("earlier\n", Files.readString(out));
    }

    /** Advice does without a cache. */
    @Test
    void cacheThatCannotBeWrittenCostsTimeOnly() throws Exception {
        Path rules = Books.copyOf("water", folder.resolve("rules"));
        for (Path each : List.of(out.resolve("below/cache"), Path.of("/proc/cache"))) {
            ByteArrayOutputStream printed = new ByteArrayOutputStream();
            assertEquals(
                    0,
                    Main.run(
                            InputStream.nullInputStream(),
                            printed,
                            OutputStream.nullOutputStream(),
                            Map.of("FITWORTHY_CACHE", each.toString(), "FITWORTHY_RULES", rules.toString()),
                            "check",
                            PLAIN));
            assertTrue(printed.toString(StandardCharsets.UTF_8).contains("No fault found in what was checked."));
        }
    }
}
