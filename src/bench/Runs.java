import fitworthy.advice.Adviser;
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
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Times runs of the rule book in one virtual machine, and the searches that make many of them. From the project's
 * folder:
 *
 * <pre>mvn -q -B -ntp -DskipTests package &amp;&amp; java -cp 'target/fitworthy/lib/*' src/bench/Runs.java</pre>
 */
final class Runs {

    private static final double SECONDS = 10;
    private static final int FITMENTS = 40;
    private static final int OPTIONS = 12;

    private Runs() {}

    public static void main(String[] args) throws Exception {
        Path cache = Path.of("target", "rule-cache");
        RuleEngine engine = BookLoader.load(Path.of("rules"), cache, System.err::println);
        Node.Mapping touring = Shelves.beside()
                .expanded(NodeReader.read(Path.of("scenarios/touring.yaml"), new ArrayList<>()), new ArrayList<>());
        Node.Mapping large = Trees.merged(
                NodeReader.read(Path.of("rules/plain-sheet.yaml"), new ArrayList<>()),
                NodeReader.read("large", large(), new ArrayList<>()));
        System.out.printf(
                "java %s, %d processors%n",
                System.getProperty("java.version"), Runtime.getRuntime().availableProcessors());
        // Cold first: that is how a command meets it.
        mend("first ", engine, large);
        compare("first ", engine, large);
        mend("warm  ", engine, touring);
        mend("warm  ", engine, large);
        advise("touring", engine, touring);
        advise("large", engine, large);
    }

    private static Sheet sheet(RuleEngine engine, Node.Mapping tree) throws Exception {
        return SheetReader.sheet(tree, engine.book().regions().keySet(), new ArrayList<>());
    }

    private static void advise(String name, RuleEngine engine, Node.Mapping tree) throws Exception {
        Sheet sheet = sheet(engine, tree);
        System.out.printf(
                "%-8s read %s; advise %s%n",
                name, perRun(() -> sheet(engine, tree)), perRun(() -> Adviser.advise(engine, sheet)));
    }

    private interface Work {
        Object run() throws Exception;
    }

    private static String perRun(Work work) throws Exception {
        for (long start = System.nanoTime(); since(start) < 3; ) {
            work.run();
        }
        long start = System.nanoTime();
        double busy = processor();
        int runs = 0;
        for (; since(start) < 4; runs++) {
            work.run();
        }
        return String.format(
                "%.1f/s by the clock, %.2f ms of processor each",
                runs / since(start), 1000 * (processor() - busy) / runs);
    }

    private static void mend(String name, RuleEngine engine, Node.Mapping tree) throws Exception {
        Sheet sheet = sheet(engine, tree);
        long start = System.nanoTime();
        double busy = processor();
        Mender.Mending mending = Mender.mend(engine, tree, sheet, until(start), tried -> {});
        System.out.printf(
                "%s mend %s: %.1f s (processor %.1f s), %d tried, %d offers, complete %b%n",
                name,
                sheet.title(),
                since(start),
                processor() - busy,
                mending.tried(),
                mending.offers().size(),
                mending.complete());
        mending.offers()
                .forEach(offer -> System.out.println("       "
                        + offer.changes().stream().map(change -> change.words()).toList()));
    }

    private static void compare(String name, RuleEngine engine, Node.Mapping tree) throws Exception {
        Sheet sheet = sheet(engine, tree);
        List<String> names = sheet.options().stream().map(Sheet.Option::name).toList();
        long start = System.nanoTime();
        double busy = processor();
        Alternatives<ComparedPlan> found =
                Alternatives.of(engine, tree, sheet, names, ComparedPlan::of, until(start), tried -> {});
        System.out.printf(
                "%s compare %s: %.1f s (processor %.1f s), %d of %d%n",
                name,
                sheet.title(),
                since(start),
                processor() - busy,
                found.plans().size(),
                found.all());
    }

    /** Processor time of all threads: on a busy machine it says more than the clock. */
    private static double processor() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                        .getProcessCpuTime()
                / 1e9;
    }

    private static double since(long start) {
        return (System.nanoTime() - start) / 1e9;
    }

    private static BooleanSupplier until(long start) {
        return () -> since(start) > SECONDS;
    }

    /**
     * Twelve open choices between a heavy and a light part, and other parts, which together are too much for the
     * vehicle.
     */
    private static String large() {
        StringBuilder text = new StringBuilder("title: large\nvehicle: {ratings: {gvm: 3370 kg, rear-axle: 2060 kg}}\n"
                + "trailer: {name: Van, mass: 2850 kg +/- 0 kg, ball: 240 kg +/- 0 kg, rated: 3000 kg, lightest: "
                + "2000 kg}\n"
                + "fitments:\n");
        for (int i = 0; i < FITMENTS; i++) {
            text.append(String.format(
                    "  - {name: Part %d, kind: other, mass: %d kg +/- 0 kg, at: {x: %d mm, y: 0 "
                            + "mm, z: 900 mm}, may-move: 200 mm, price: %d.00 AUD, lead-time: %d days}%n",
                    i, 10 + 7 * i % 31, 800 + 70 * i, 300 + 40 * i, i % 9));
        }
        text.append("options:\n");
        for (int i = 0; i < OPTIONS; i++) {
            text.append(String.format(
                    "  - {name: Choice %d, choices: [{name: a, parts: [Part %d]}, {name: b, parts: " + "[Part %d]}]}%n",
                    i, 2 * i, 2 * i + 1));
        }
        return text.toString();
    }
}
