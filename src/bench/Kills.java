import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Kills runs at random moments (SIGKILL, as a machine that loses its power does for the program) and holds the next run
 * against one that nobody disturbed. Half of the kills fall anywhere in the run, half soon after a file begins to be
 * written.
 *
 * A second argument, {@code print} say, names the one thing to kill.
 *
 * <pre>mvn -q -B -DskipTests package &amp;&amp; java -cp 'target/fitworthy/lib/*:target/fitworthy/lib/print/*'
 * src/bench/Kills.java 50</pre>
 */
public final class Kills {

    private static final Random RANDOM = new Random(50);
    private static final Path HOME = Path.of("target/kills").toAbsolutePath();
    private static final Path RULES = HOME.resolve("rules");
    private static final Path SHEETS = HOME.resolve("sheets");
    private static final String EARLIER = "what stood there before\n";

    /** What is killed. @param written what it writes @param args with FILE for it */
    private record What(String name, Path written, String... args) {}

    private record Ended(int code, String out) {}

    public static void main(String[] args) throws Exception {
        int kills = Integer.parseInt(args[0]);
        clear(HOME);
        oneRule();
        Files.createDirectories(SHEETS);
        String plain = Files.readString(Path.of("rules/plain-sheet.yaml"));
        for (int i = 0; i < 300; i++) {
            Files.writeString(
                    SHEETS.resolve("s%03d.yaml".formatted(i)),
                    plain.replace("gvm: 3000 kg", "gvm: " + (2400 + i) + " kg"));
        }
        Path house = Files.writeString(
                HOME.resolve("house.yaml"),
                "shop: Saltbush Fit-out\nseverities:\n  - {rule: mass.gvm-over,"
                        + " severity: change, reason: tried out, name: Ada Finch}\n");
        Path out = HOME.resolve("out");
        Path cache = HOME.resolve("cache");
        List<What> all = List.of(
                new What("rule cache", cache, "check", "rules/plain-sheet.yaml"),
                new What(
                        "print --html",
                        out,
                        "print",
                        "rules/plain-sheet.yaml",
                        "--as-printed-at",
                        "2026-11-25T10:00Z",
                        "--html",
                        "FILE"),
                new What("batch --out", out, "batch", SHEETS.toString(), "--out", "FILE"),
                new What(
                        "effect --resume",
                        out,
                        "effect",
                        SHEETS.toString(),
                        "--with-house",
                        house.toString(),
                        "--format",
                        "json",
                        "--resume",
                        "FILE"));
        System.out.printf(
                "%-16s %6s %14s %12s %10s %12s %10s%n",
                "killed", "kills", "while running", "while writing", "wrong next", "half written", "left over");
        for (What each : all) {
            if (args.length < 2 || each.name.startsWith(args[1])) {
                kill(each, kills, cache);
            }
        }
    }

    private static void kill(What what, int kills, Path cache) throws Exception {
        boolean caching = what.written.equals(cache);
        clear(cache);
        run(List.of("check", "rules/plain-sheet.yaml"), cache);
        fresh(what, caching, cache);
        long began = System.nanoTime();
        Ended right = run(args(what), cache);
        long took = System.nanoTime() - began;
        byte[] whole = caching || what.name.startsWith("effect") ? null : Files.readAllBytes(what.written);
        int running = 0;
        int writing = 0;
        int wrong = 0;
        int half = 0;
        int left = 0;
        for (int i = 0; i < kills; i++) {
            fresh(what, caching, cache);
            Process process = start(args(what), cache, ProcessBuilder.Redirect.DISCARD);
            if (i % 2 == 0) {
                Thread.sleep((long) (RANDOM.nextDouble() * took / 1e6));
            } else {
                while (process.isAlive()
                        && unfinished(caching ? cache : HOME) == 0
                        && !(what.name.startsWith("effect") && Files.exists(what.written))) {
                    Thread.onSpinWait();
                }
                Thread.sleep(RANDOM.nextInt(what.args[0].equals("batch") || what.args[0].equals("effect") ? 500 : 3));
            }
            running += process.isAlive() ? 1 : 0;
            process.destroyForcibly().waitFor();
            writing += unfinished(caching ? cache : HOME) > 0
                            || what.name.startsWith("effect") && Files.exists(what.written)
                    ? 1
                    : 0;
            if (whole != null) {
                byte[] now = Files.readAllBytes(what.written);
                boolean asBefore = new String(now, StandardCharsets.UTF_8).equals(EARLIER);
                half += asBefore || java.util.Arrays.equals(now, whole) ? 0 : 1;
            }
            Ended next = run(args(what), cache);
            boolean same = next.code == right.code
                    && next.out.equals(right.out)
                    && (whole == null || java.util.Arrays.equals(Files.readAllBytes(what.written), whole));
            wrong += same ? 0 : 1;
            if (!same) {
                System.out.println("  kill " + i + ": code " + next.code + " for " + right.code + "\n" + next.out);
            }
            left += unfinished(caching ? cache : HOME);
        }
        System.out.printf(
                "%-16s %6d %14d %12d %10d %12d %10d%n", what.name, kills, running, writing, wrong, half, left);
    }

    private static void fresh(What what, boolean caching, Path cache) throws IOException {
        if (caching) {
            clear(cache);
        } else {
            clear(what.written);
            if (!what.name.startsWith("effect")) {
                Files.writeString(what.written, EARLIER);
            }
            try (Stream<Path> left = Files.list(HOME)) {
                left.filter(Kills::isUnfinished).forEach(each -> each.toFile().delete());
            }
        }
    }

    private static long unfinished(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return 0;
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(Kills::isUnfinished).count();
        }
    }

    private static boolean isUnfinished(Path file) {
        return file.toString().endsWith(".part");
    }

    private static List<String> args(What what) {
        return Stream.of(what.args)
                .map(each -> each.equals("FILE") ? what.written.toString() : each)
                .toList();
    }

    private static Process start(List<String> args, Path cache, ProcessBuilder.Redirect output) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin/java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                "fitworthy.cli.Main"));
        command.addAll(args);
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .redirectOutput(output);
        builder.environment().putAll(Map.of("FITWORTHY_CACHE", cache.toString(), "FITWORTHY_RULES", RULES.toString()));
        return builder.start();
    }

    private static Ended run(List<String> args, Path cache) throws Exception {
        Path told = HOME.resolve("told");
        int code = start(args, cache, ProcessBuilder.Redirect.to(told.toFile())).waitFor();
        return new Ended(code, Files.readString(told));
    }

    /**
     * The shipped book with the first rule of its masses alone, so that a run that compiles takes seconds and no
     * minutes.
     */
    private static void oneRule() throws IOException {
        Path shipped = Path.of("rules");
        Files.createDirectories(RULES.resolve("mass"));
        Files.createDirectories(RULES.resolve("tables"));
        for (String each : List.of(
                "book.yaml",
                "sources.yaml",
                "tables/load-index.csv",
                "tables/speed-symbol.csv",
                "tables/cable.csv",
                "tables/order.csv",
                "tables/synonyms.csv")) {
            Files.copy(shipped.resolve(each), RULES.resolve(each));
        }
        for (Map.Entry<String, String> each :
                Map.of("mass/mass.drl", "\nrule ", "mass/cards.yaml", "\nmass.").entrySet()) {
            String text = Files.readString(shipped.resolve(each.getKey()));
            Files.writeString(RULES.resolve(each.getKey()), text.substring(0, text.indexOf(each.getValue())));
        }
    }

    private static void clear(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                all.sorted(Comparator.reverseOrder()).forEach(each -> {
                    try {
                        Files.delete(each);
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                });
            }
        }
    }
}
