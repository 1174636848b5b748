import fitworthy.Books;
import fitworthy.learn.Fleet;
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
import java.util.TreeMap;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;

/**
 * Kills runs at random moments (SIGKILL, as a machine that loses its power does for the program) and holds the next run
 * against one that nobody disturbed. Half of the kills fall anywhere in the run, half soon after a file begins to be
 * written; of the latter, where several files are put in their places under a note, half as soon as the note is there.
 *
 * A second argument, {@code print} say, names the things to kill by what they begin with.
 *
 * <pre>mvn -q -B -ntp -DskipTests package &amp;&amp; java -cp
 * 'target/fitworthy/lib/*:target/fitworthy/lib/print/*:target/test-classes' src/bench/Kills.java 50</pre>
 */
public final class Kills {

    private static final Random RANDOM = new Random(50);
    private static final Path HOME = Path.of("target/kills").toAbsolutePath();
    private static final Path RULES = HOME.resolve("rules");
    private static final Path SHEETS = HOME.resolve("sheets");

    /**
     * What is killed.
     *
     * @param written the file or folder that it writes
     * @param before where a copy lies of what stands there before; null for nothing
     * @param isCompared whether what stands there afterwards is either as before or as without a kill
     * @param args with FILE for what it writes
     */
    private record What(String name, Path written, Path before, boolean isCompared, String... args) {

        /** Whether it writes a line for each sheet, and so all the time. */
        boolean isSteady() {
            return args[0].equals("batch") || args[0].equals("effect");
        }

        /** Of several files of a book: what stands there while not all of them are in their places. */
        Path note() {
            return written.resolve(".adding");
        }

        /** Where its unfinished files would lie. */
        Path beside() {
            return Files.isDirectory(written) || written.endsWith("cache") ? written : written.getParent();
        }
    }

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
        Path earlier = Files.writeString(HOME.resolve("earlier"), "what stood there before\n");
        Path guessed =
                Files.writeString(HOME.resolve("guessed.yaml"), plain.replace("gvm: 3000 kg", "gvm: about 3000 kg"));
        Path fleet = fleet();
        Path book = Books.copyOf("water", HOME.resolve("book"));
        Path out = HOME.resolve("out");
        Path cache = HOME.resolve("cache");
        List<What> all = List.of(
                new What("rule cache", cache, null, false, "check", "rules/plain-sheet.yaml"),
                new What(
                        "print --html",
                        out,
                        earlier,
                        true,
                        "print",
                        "rules/plain-sheet.yaml",
                        "--as-printed-at",
                        "2026-11-25T10:00Z",
                        "--html",
                        "FILE"),
                new What(
                        "print --pdf",
                        out,
                        earlier,
                        true,
                        "print",
                        "rules/plain-sheet.yaml",
                        "--as-printed-at",
                        "2026-11-25T10:00Z",
                        "--pdf",
                        "FILE"),
                new What(
                        "letters --pdf",
                        out,
                        earlier,
                        true,
                        "letters",
                        "scenarios/overloaded.yaml",
                        "--rules",
                        "rules",
                        "--pdf",
                        "FILE"),
                new What("handbook --html", out, earlier, true, "handbook", "--html", "FILE"),
                new What(
                        "questions --answer",
                        out,
                        guessed,
                        true,
                        "questions",
                        "FILE",
                        "--answer",
                        "vehicle.ratings.gvm=3000 kg"),
                new What(
                        "begin sheet --to",
                        out,
                        null,
                        true,
                        "begin",
                        "sheet",
                        "--vehicle",
                        "Tarrenby 3.0 wagon",
                        "--fuel",
                        "diesel",
                        "--people",
                        "4",
                        "--part",
                        "bull bar",
                        "--to",
                        "FILE",
                        "--rules",
                        "rules"),
                new What(
                        "begin region",
                        out,
                        book,
                        true,
                        "begin",
                        "region",
                        "us-ut",
                        "--name",
                        "Utah",
                        "--parent",
                        "us",
                        "--rules",
                        "FILE"),
                new What(
                        "begin rule",
                        out,
                        book,
                        true,
                        "begin",
                        "rule",
                        "water.plenty",
                        "--about",
                        "water.person-day",
                        "--from",
                        "2027-07-01",
                        "--region",
                        "au-sa",
                        "--rules",
                        "FILE"),
                new What("learn --proposal", out, null, true, "learn", fleet.toString(), "--proposal", "FILE"),
                new What("batch --out", out, earlier, true, "batch", SHEETS.toString(), "--out", "FILE"),
                new What(
                        "effect --resume",
                        out,
                        null,
                        false,
                        "effect",
                        SHEETS.toString(),
                        "--with-house",
                        house.toString(),
                        "--format",
                        "json",
                        "--resume",
                        "FILE"));
        System.out.printf(
                "%-18s %6s %14s %14s %10s %12s %10s %10s%n",
                "killed",
                "kills",
                "while running",
                "while writing",
                "wrong next",
                "half written",
                "left over",
                "noted");
        for (What each : all) {
            if (args.length < 2 || each.name.startsWith(args[1])) {
                kill(each, kills, cache);
            }
        }
    }

    private static void kill(What what, int kills, Path cache) throws Exception {
        clear(cache);
        run(List.of("check", "rules/plain-sheet.yaml"), cache);
        fresh(what);
        Map<String, String> before = standing(what);
        long began = System.nanoTime();
        Ended right = run(args(what), cache);
        long took = System.nanoTime() - began;
        Map<String, String> after = standing(what);
        if (what.isCompared && after.equals(before)) {
            throw new IllegalStateException(what.name + " wrote nothing: " + right.out);
        }
        int running = 0;
        int writing = 0;
        int wrong = 0;
        int half = 0;
        int left = 0;
        int noted = 0;
        for (int i = 0; i < kills; i++) {
            fresh(what);
            Process process = start(args(what), cache, ProcessBuilder.Redirect.DISCARD);
            if (i % 2 == 0) {
                Thread.sleep((long) (RANDOM.nextDouble() * took / 1e6));
            } else {
                boolean atNote = what.name.equals("begin rule") && i % 4 == 1;
                while (process.isAlive() && !(atNote ? Files.exists(what.note()) : isWriting(what))) {
                    // Leaves the processor to what is to be killed.
                    LockSupport.parkNanos(20_000);
                }
                if (!atNote) {
                    Thread.sleep(RANDOM.nextInt(what.isSteady() ? 500 : 3));
                }
            }
            running += process.isAlive() ? 1 : 0;
            process.destroyForcibly().waitFor();
            writing += isWriting(what) ? 1 : 0;
            Map<String, String> now = standing(what);
            boolean isAsBefore = now.equals(before);
            boolean isNoted = Files.exists(what.note());
            if (isNoted) {
                noted++;
                now.remove(".adding");
                if (!now.equals(before) && !now.equals(after)) {
                    System.out.println("  kill " + i + ": between two files, under a note");
                }
                Ended read = run(List.of("check", "rules/plain-sheet.yaml", "--rules", what.written.toString()), cache);
                if (read.code != 3 || !read.out.isEmpty()) {
                    half++;
                    System.out.println("  kill " + i + ": half of it was read");
                }
            } else if (what.isCompared && !isAsBefore && !now.equals(after)) {
                half++;
                System.out.println("  kill " + i + ": half written");
            }
            left += unfinished(what);
            if (what.isCompared && !isAsBefore && !isNoted) {
                // Done once, and some things cannot be done twice.
                fresh(what);
            }
            Ended next = run(args(what), cache);
            boolean same = next.code == right.code
                    && next.out.equals(right.out)
                    && (!what.isCompared || standing(what).equals(after));
            wrong += same ? 0 : 1;
            if (!same) {
                System.out.println("  kill " + i + ": code " + next.code + " for " + right.code + "\n" + next.out);
            }
        }
        System.out.printf(
                "%-18s %6d %14d %14d %10d %12d %10d %10d%n",
                what.name, kills, running, writing, wrong, half, left, noted);
    }

    private static boolean isWriting(What what) throws IOException {
        return unfinished(what) > 0 || what.name.startsWith("effect") && Files.exists(what.written);
    }

    /** What it finds: what stood there before, and nothing unfinished. */
    private static void fresh(What what) throws IOException {
        clear(what.written);
        if (what.before != null) {
            copy(what.before, what.written);
        }
        try (Stream<Path> left = Files.list(HOME)) {
            left.filter(Kills::isUnfinished).forEach(each -> each.toFile().delete());
        }
    }

    /** What stands there, by name; of letters, which bear the moment at which they were made, only that they are whole. */
    private static Map<String, String> standing(What what) throws IOException {
        Map<String, String> standing = new TreeMap<>();
        if (what.isCompared && Files.exists(what.written)) {
            try (Stream<Path> all = Files.walk(what.written)) {
                for (Path each : all.filter(Files::isRegularFile)
                        .filter(file -> !isUnfinished(file))
                        .toList()) {
                    String text = Files.readString(each, StandardCharsets.ISO_8859_1);
                    boolean isPdf =
                            text.startsWith("%PDF-") && text.stripTrailing().endsWith("%%EOF");
                    standing.put(
                            what.written.relativize(each).toString(),
                            isPdf && what.args[0].equals("letters") ? "letters" : text);
                }
            }
        }
        return standing;
    }

    private static long unfinished(What what) throws IOException {
        if (!Files.exists(what.beside())) {
            return 0;
        }
        try (Stream<Path> all = Files.walk(what.beside())) {
            return all.filter(Kills::isUnfinished).count();
        } catch (UncheckedIOException e) {
            // One was put in its place meanwhile.
            return 0;
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
                "plain-sheet.yaml",
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

    /** Sheets of vehicles that share parts and are weighed. */
    private static Path fleet() throws IOException {
        Path folder = Files.createDirectories(HOME.resolve("fleet"));
        Random random = new Random(7);
        Fleet fleet = new Fleet(Fleet.pool(12, 0.5, -0.3, -0.2, 0.4, -0.1, 1, 0.2), 60, 0.5, random);
        List<Fleet.Shown> shown = fleet.weighed(random);
        for (int i = 0; i < shown.size(); i++) {
            Files.writeString(folder.resolve("car-%02d.yaml".formatted(i)), fleet.sheet(i, shown.get(i)));
        }
        return folder;
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : all.toList()) {
                Files.copy(each, to.resolve(from.relativize(each).toString()));
            }
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
