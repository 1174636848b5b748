import com.sun.management.OperatingSystemMXBean;
import fitworthy.advice.Adviser;
import fitworthy.advice.View;
import fitworthy.cli.Fitworthy;
import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Desk;
import fitworthy.counter.desk.SheetFolder;
import fitworthy.counter.edit.SetValue;
import fitworthy.engine.BookLoader;
import fitworthy.engine.RuleEngine;
import fitworthy.printout.ComparedPlan;
import fitworthy.search.Alternatives;
import fitworthy.search.Mender;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetReader;
import fitworthy.shelf.Shelves;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Trees;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Tells where the program got slower. What it times is given in pieces of plain work, which is timed in turn with it, so
 * that a slower or a busier machine changes neither; all is processor time, of every thread. Each figure is held against
 * the one recorded in guard.properties, and the exit code is 1 where one is more than {@value #WORSE} times as much.
 * {@code --record} writes them anew. From the project's folder, in some minutes, of which two are processor time:
 *
 * <pre>mvn -q -B -ntp -DskipTests package &amp;&amp; java -XX:+UseSerialGC \
 *     -cp 'target/fitworthy/lib/*:target/fitworthy/lib/counter/*' src/bench/Guard.java [--record]</pre>
 */
final class Guard {

    private static final double WORSE = 2;
    private static final int ROUNDS = 7;
    /** Of processor time, for each figure, after which the compiler is done with most of it. */
    private static final double WARM_UP = 6;

    private static final int FITMENTS = 40;
    private static final int OPTIONS = 12;
    private static final Path RECORDED = Path.of("src", "bench", "guard.properties");
    private static final Path FOLDER = Path.of("target", "guard").toAbsolutePath();
    private static final Path CACHE = FOLDER.resolve("cache");

    private Guard() {}

    private interface Work {
        void done() throws Exception;
    }

    /** @return seconds of processor time */
    private interface Timed {
        double run() throws Exception;
    }

    public static void main(String[] args) throws Exception {
        Files.createDirectories(CACHE);
        RuleEngine engine = BookLoader.load(Path.of("rules"), CACHE, System.err::println);
        Map<String, Timed> figures = new LinkedHashMap<>();
        figures.put("cold", cold());
        figures.put("advice", warm(advice(engine)));
        figures.put("batch", warm(batch()));
        figures.put("compare", warm(compare(engine)));
        figures.put("mend", warm(mend(engine)));
        figures.put("edit", warm(edit(engine)));
        Map<String, Double> measured = new LinkedHashMap<>();
        for (Map.Entry<String, Timed> figure : figures.entrySet()) {
            measured.put(figure.getKey(), measured(figure.getKey(), figure.getValue()));
        }
        if (List.of(args).contains("--record")) {
            StringBuilder text = new StringBuilder("# Pieces of plain work, written by Guard.java --record.\n");
            measured.forEach((name, ratio) -> text.append(String.format(Locale.ROOT, "%s=%.2f%n", name, ratio)));
            Files.writeString(RECORDED, text);
        } else {
            System.exit(worse(measured) ? 1 : 0);
        }
    }

    private static boolean worse(Map<String, Double> measured) throws IOException {
        Properties recorded = new Properties();
        try (var in = Files.newBufferedReader(RECORDED)) {
            recorded.load(in);
        }
        boolean worse = false;
        for (Map.Entry<String, Double> each : measured.entrySet()) {
            double before = Double.parseDouble(recorded.getProperty(each.getKey(), "0"));
            double times = each.getValue() / before;
            // Worse too where nothing is recorded, and times is without end.
            boolean slower = !(times <= WORSE);
            System.out.printf(
                    Locale.ROOT,
                    "%-8s %7.2f, recorded %7.2f: %.2f times%s%n",
                    each.getKey(),
                    each.getValue(),
                    before,
                    times,
                    slower ? ", WORSE than " + WORSE : "");
            worse |= slower;
        }
        return worse;
    }

    /** In pieces of plain work: the least of each, since what other programs take can only add. */
    private static double measured(String name, Timed figure) throws Exception {
        Timed plain = warm(Guard::plain);
        for (double busy = 0; busy < WARM_UP; ) {
            busy += plain.run() + figure.run();
        }
        double leastPlain = plain.run();
        double least = figure.run();
        for (int i = 1; i < ROUNDS; i++) {
            leastPlain = Math.min(leastPlain, plain.run());
            least = Math.min(least, figure.run());
        }
        System.out.printf(
                Locale.ROOT,
                "%-8s %5.0f ms of processor time; the plain work %.0f ms%n",
                name,
                1000 * least,
                1000 * leastPlain);
        return least / leastPlain;
    }

    private static Timed warm(Work work) {
        return () -> {
            double begun = processor();
            work.done();
            return processor() - begun;
        };
    }

    private static double processor() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime() / 1e9;
    }

    /** Of the kind that the program does, and none of its own: texts made, kept by name, and figures added up. */
    private static void plain() {
        Map<String, Double> kept = new TreeMap<>();
        double sum = 0;
        for (int i = 0; i < 300_000; i++) {
            kept.merge("part " + i * 31 % 4001, i / 3.0, Double::sum);
            sum += kept.get("part " + i * 31 % 4001);
        }
        if (sum == 0) {
            throw new IllegalStateException();
        }
    }

    /** The touring scenario by the launcher, with a full cache. */
    private static Timed cold() throws Exception {
        Timed check = () -> {
            ProcessBuilder builder = new ProcessBuilder(
                    "sh", "-c", "target/fitworthy/bin/fitworthy check scenarios/touring.yaml >/dev/null; times");
            builder.environment().put("FITWORTHY_CACHE", CACHE.toString());
            Process run = builder.redirectError(ProcessBuilder.Redirect.INHERIT).start();
            // The second line is of what the shell started: minutes and seconds of the program, and of the system for
            // it.
            String[] times = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList()
                    .get(1)
                    .split("[ms ]+");
            return 60 * (Double.parseDouble(times[0]) + Double.parseDouble(times[2]))
                    + Double.parseDouble(times[1])
                    + Double.parseDouble(times[3]);
        };
        // The first fills the cache, and the second makes the archive of classes.
        check.run();
        check.run();
        return check;
    }

    private static Work advice(RuleEngine engine) throws Exception {
        Sheet touring = sheet(
                engine,
                Shelves.beside()
                        .expanded(
                                NodeReader.read(Path.of("scenarios/touring.yaml"), new ArrayList<>()),
                                new ArrayList<>()));
        return () -> {
            for (int i = 0; i < 50; i++) {
                Adviser.advise(engine, touring);
            }
        };
    }

    /** Hundred copies of each shipped sheet, the start included. */
    private static Work batch() throws IOException {
        Path sheets = FOLDER.resolve("batch");
        copy(Path.of("scenarios", "shelf"), sheets.resolve("shelf"));
        for (String name : List.of("touring", "weekender", "overloaded")) {
            for (int i = 0; i < 100; i++) {
                Files.writeString(
                        sheets.resolve(name + i + ".yaml"), Files.readString(Path.of("scenarios", name + ".yaml")));
            }
        }
        Map<String, String> environment = Map.of("FITWORTHY_CACHE", CACHE.toString(), "FITWORTHY_RULES", "rules");
        PrintWriter errors = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        return () -> {
            int code = Fitworthy.run(
                    new PrintWriter(Writer.nullWriter()), errors, environment, "batch", sheets.toString());
            if (code > 1) {
                throw new IllegalStateException("batch ended with " + code);
            }
        };
    }

    /** Eight of the choices of the made sheet: 256 plans. */
    private static Work compare(RuleEngine engine) throws Exception {
        Node.Mapping made = made();
        Sheet sheet = sheet(engine, made);
        List<String> names =
                sheet.options().stream().limit(8).map(Sheet.Option::name).toList();
        return () -> {
            int plans = Alternatives.of(engine, made, sheet, names, ComparedPlan::of, () -> false, tried -> {})
                    .plans()
                    .size();
            if (plans != 256) {
                throw new IllegalStateException(plans + " plans");
            }
        };
    }

    private static Work mend(RuleEngine engine) throws Exception {
        Node.Mapping made = made();
        Sheet sheet = sheet(engine, made);
        return () -> {
            if (!Mender.mend(engine, made, sheet, () -> false, tried -> {}).complete()) {
                throw new IllegalStateException("not all was tried");
            }
        };
    }

    /** Twenty edits of one mass of the touring sheet at the counter, each read and advised on. */
    private static Work edit(RuleEngine engine) throws IOException {
        Path sheets = FOLDER.resolve("counter");
        copy(Path.of("scenarios"), sheets);
        View view = new View(engine, null, null, Shelves.beside());
        Desk desk = new Desk(new SheetFolder(sheets), view, Path.of("rules"));
        Answer opened = desk.sheet("touring.yaml").orElseThrow().now();
        return () -> {
            Answer now = opened;
            for (int i = 0; i < 20; i++) {
                now = new SetValue("fitments.Drawers and pantry.mass", 20 + i + " kg").in(now);
                now.advice();
                now.room();
            }
        };
    }

    private static Sheet sheet(RuleEngine engine, Node.Mapping tree) throws Exception {
        return SheetReader.sheet(tree, engine.book().regions().keySet(), new ArrayList<>());
    }

    /** Open choices between a heavy and a light part, and other parts, which together are too much for the vehicle. */
    private static Node.Mapping made() throws Exception {
        StringBuilder text = new StringBuilder("title: large\nvehicle: {ratings: {gvm: 3370 kg, rear-axle: 2060 kg}}\n"
                + "trailer: {name: Van, mass: 2850 kg +/- 0 kg, ball: 240 kg +/- 0 kg, rated: 3000 kg, lightest: "
                + "2000 kg}\nfitments:\n");
        for (int i = 0; i < FITMENTS; i++) {
            text.append(String.format(
                    "  - {name: Part %d, kind: other, mass: %d kg +/- 0 kg, at: {x: %d mm, y: 0 "
                            + "mm, z: 900 mm}, may-move: 200 mm, price: %d.00 AUD, lead-time: %d days}%n",
                    i, 10 + 7 * i % 31, 800 + 70 * i, 300 + 40 * i, i % 9));
        }
        text.append("options:\n");
        for (int i = 0; i < OPTIONS; i++) {
            text.append(String.format(
                    "  - {name: Choice %d, choices: [{name: a, parts: [Part %d]}, {name: b, parts: [Part %d]}]}%n",
                    i, 2 * i, 2 * i + 1));
        }
        return Trees.merged(
                NodeReader.read(Path.of("rules/plain-sheet.yaml"), new ArrayList<>()),
                NodeReader.read("large", text.toString(), new ArrayList<>()));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.write(target, Files.readAllBytes(file));
                }
            }
        }
    }
}
