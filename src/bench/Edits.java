import com.sun.management.OperatingSystemMXBean;
import fitworthy.advice.Adviser;
import fitworthy.advice.View;
import fitworthy.counter.Counter;
import fitworthy.counter.Serving;
import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Desk;
import fitworthy.counter.desk.OpenSheet;
import fitworthy.counter.desk.SheetFolder;
import fitworthy.counter.edit.SetValue;
import fitworthy.engine.BookLoader;
import fitworthy.engine.RuleEngine;
import fitworthy.shelf.Shelves;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Times small edits of the touring sheet at the counter, without a browser: what each step costs the thread that does
 * it, then whole requests. Processor time, and the clock beside it. Arguments: edits of warm-up, and edits timed. From the
 * project's folder:
 *
 * <pre>mvn -q -B -ntp -DskipTests package &amp;&amp; java -cp 'target/fitworthy/lib/*:target/fitworthy/lib/counter/*' \
 *     src/bench/Edits.java 500 200</pre>
 */
final class Edits {

    private static final String SHEET = "touring.yaml";
    private static final String FIELD = "fitments.Drawers and pantry.mass";

    private final int warmUp;
    private final int timed;
    private final Map<String, List<long[]>> steps = new LinkedHashMap<>();

    private Edits(int warmUp, int timed) {
        this.warmUp = warmUp;
        this.timed = timed;
    }

    public static void main(String[] args) throws Exception {
        Edits edits = new Edits(Integer.parseInt(args[0]), Integer.parseInt(args[1]));
        Path folder = copied(Path.of("scenarios"), Path.of("target", "edits"));
        RuleEngine engine = BookLoader.load(Path.of("rules"), Path.of("target", "rule-cache"), System.err::println);
        View view = new View(engine, null, null, Shelves.beside());
        Desk desk = new Desk(new SheetFolder(folder), view, Path.of("rules"));
        edits.inSteps(desk, engine);
        edits.print();
        if (args.length > 2) {
            System.exit(0);
        }
        try (Counter counter = new Counter(desk, Serving.here(0, System.err::println))) {
            edits.requests(counter, desk);
        }
        edits.print();
        System.exit(0);
    }

    /** Another mass each time. */
    private static String mass(int i) {
        return (20 + i % 37) + " kg";
    }

    private void inSteps(Desk desk, RuleEngine engine) {
        Answer now = desk.sheet(SHEET).orElseThrow().now();
        for (int i = 0; i < warmUp + timed; i++) {
            if (i == warmUp) {
                steps.clear();
            }
            Answer before = now;
            SetValue set = new SetValue(FIELD, mass(i));
            Answer then = timed("text changed", () -> set.in(before));
            timed("read", then::faults);
            timed("advice", then::advice);
            timed(
                    "advice from nothing",
                    () -> Adviser.advise(engine, then.read().orElseThrow().sheet()));
            timed("arranged", then::arrangement);
            timed("room", then::room);
            now = then;
        }
    }

    private void requests(Counter counter, Desk desk) throws Exception {
        HttpClient client = HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .cookieHandler(new CookieManager())
                .followRedirects(HttpClient.Redirect.NORMAL)
                .build();
        client.send(
                HttpRequest.newBuilder(URI.create(counter.address())).build(), HttpResponse.BodyHandlers.ofString());
        String at = "http://127.0.0.1:" + counter.port();
        OpenSheet sheet = desk.sheet(SHEET).orElseThrow();
        int bytes = 0;
        for (int i = 0; i < warmUp + timed; i++) {
            if (i == warmUp) {
                steps.clear();
            }
            String body = "path=fitments.Drawers%20and%20pantry.mass&field=f-fitments_20_mass&unit=&value="
                    + mass(i).replace(" ", "%20") + "&version=" + sheet.now().version();
            HttpRequest request = HttpRequest.newBuilder(URI.create(at + "/sheets/" + SHEET + "/set"))
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .header("Origin", at)
                    .POST(HttpRequest.BodyPublishers.ofString(body))
                    .build();
            HttpResponse<String> answer =
                    timed("request", () -> client.send(request, HttpResponse.BodyHandlers.ofString()));
            if (answer.statusCode() != 200 || answer.body().contains("class=\"fault\">")) {
                throw new IllegalStateException(answer.body());
            }
            bytes = answer.body().length();
            Thread.sleep(20);
        }
        System.out.println("last answer: " + bytes + " characters");
    }

    private interface Work<T> {
        T done() throws Exception;
    }

    private <T> T timed(String name, Work<T> work) {
        long clock = System.nanoTime();
        long thread = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        long process = ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
        try {
            return work.done();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        } finally {
            steps.computeIfAbsent(name, none -> new ArrayList<>()).add(new long[] {
                System.nanoTime() - clock,
                ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - thread,
                ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime() - process
            });
        }
    }

    private void print() {
        System.out.println("medians, ms           clock  its thread  process");
        steps.forEach((name, times) -> System.out.printf(
                "%-20s %6.2f %11.2f %8.2f%n", name, median(times, 0), median(times, 1), median(times, 2)));
        steps.clear();
    }

    private static double median(List<long[]> times, int which) {
        long[] sorted = times.stream().mapToLong(time -> time[which]).sorted().toArray();
        return sorted[sorted.length / 2] / 1e6;
    }

    private static Path copied(Path from, Path to) throws IOException {
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
        return to;
    }
}
