import com.sun.management.OperatingSystemMXBean;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Book;
import fitworthy.book.Practice;
import fitworthy.engine.BookLoader;
import fitworthy.engine.RuleAction;
import fitworthy.engine.RuleEngine;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.plan.PracticeId;
import fitworthy.proof.Cases;
import fitworthy.rules.Advised;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetReader;
import fitworthy.shelf.Shelves;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import fitworthy.source.Trees;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.kie.api.runtime.KieSession;

/**
 * Times warm advice as rules, parts and threads grow, and holds the engine against forty of its rules written out in
 * Java. Processor time of the whole process, the rows of a table in turn, the least of the rounds. From the project's
 * folder:
 *
 * <pre>mvn -q -B -ntp -DskipTests package &amp;&amp; java -cp 'target/fitworthy/lib/*' src/bench/Growth.java [seconds a
 * row]</pre>
 */
final class Growth {

    private static final int ROUNDS = 5;
    private static final Pattern ENTRY = Pattern.compile("(?m)^(?=[a-z-]+\\.[a-z0-9-]+:)");

    private static double seconds = 2;

    private Growth() {}

    private interface Work {
        void run() throws Exception;
    }

    public static void main(String[] args) throws Exception {
        if (args.length > 0) {
            seconds = Double.parseDouble(args[0]);
        }
        System.out.printf(
                "java %s, %d processors, load %s%n",
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors(),
                Files.readString(Path.of("/proc/loadavg")).strip());
        Path home = Files.createTempDirectory("growth");
        RuleEngine engine = BookLoader.load(Path.of("rules"), home.resolve("cache"), System.err::println);
        Book book = engine.book();
        Node.Mapping plain = NodeReader.read(Path.of("rules/plain-sheet.yaml"), new ArrayList<>());
        Sheet touring = scenario("touring", book);

        Map<String, Work> threads = new LinkedHashMap<>();
        threads.put("touring, 1 thread", () -> Adviser.advise(engine, touring));
        threads.put(
                "touring, 2 threads, a pair",
                () -> IntStream.range(0, 2).parallel().forEach(each -> Adviser.advise(engine, touring)));
        table("threads", threads);

        Map<String, Work> parts = new LinkedHashMap<>();
        for (int count : List.of(10, 40, 160, 640)) {
            Node.Mapping tree = Trees.merged(plain, NodeReader.read("parts", parts(count), new ArrayList<>()));
            Sheet sheet = SheetReader.sheet(tree, book.regions().keySet(), new ArrayList<>());
            parts.put(
                    count + " parts, read",
                    () -> SheetReader.sheet(tree, book.regions().keySet(), new ArrayList<>()));
            parts.put(count + " parts, advise", () -> Adviser.advise(engine, sheet));
        }
        table("parts", parts);

        Map<String, Work> more = new LinkedHashMap<>();
        for (int count : List.of(1, 4, 16)) {
            Sheet loaded = scenario("touring", book, loadings(count));
            more.put(count + " loadings", () -> Adviser.advise(engine, loaded));
        }
        for (int count : List.of(0, 4, 16)) {
            Sheet open = scenario("touring", book, choices(count));
            more.put(count + " more choices of two", () -> Adviser.advise(engine, open));
        }
        table("loadings and choices", more);

        Map<String, Work> rules = new LinkedHashMap<>();
        for (int count : List.of(50, 100, 200, 400)) {
            RuleEngine other = written(home.resolve("rules-" + count), book, ids(book, count));
            rules.put(other.book().rules().size() + " rules", () -> Adviser.advise(other, touring));
        }
        table("rules", rules);
        byHand(book, written(home.resolve("forty"), book, new ArrayList<>(FORTY)), touring);
    }

    private static void table(String name, Map<String, Work> rows) throws Exception {
        Map<String, double[]> least = new LinkedHashMap<>();
        rows.keySet().forEach(row -> least.put(row, new double[] {Double.MAX_VALUE, Double.MAX_VALUE}));
        for (int round = -1; round < ROUNDS; round++) {
            for (Map.Entry<String, Work> row : rows.entrySet()) {
                long start = System.nanoTime();
                long busy = busy();
                int runs = 0;
                for (; System.nanoTime() - start < seconds * 1e9; runs++) {
                    row.getValue().run();
                }
                double[] times = least.get(row.getKey());
                if (round >= 0) {
                    times[0] = Math.min(times[0], (busy() - busy) / 1e6 / runs);
                    times[1] = Math.min(times[1], (System.nanoTime() - start) / 1e6 / runs);
                }
            }
        }
        System.out.println(name);
        least.forEach((row, times) ->
                System.out.printf("  %-28s %8.3f ms of processor, %8.3f ms by the clock%n", row, times[0], times[1]));
    }

    private static long busy() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    private static String parts(int count) {
        return "fitments:\n"
                + IntStream.range(0, count)
                        .mapToObj(i -> String.format(
                                "  - {name: Part %1$d, kind: other, mass: %2$d kg, at: {x: %3$d mm, y: %4$d mm, z: 930 mm},"
                                        + " space: {from: {x: %3$d mm, y: %4$d mm, z: 900 mm}, to: {x: %5$d mm, y: %6$d mm, z: 960 mm}},"
                                        + " price: %7$d.00 AUD, lead-time: %8$d days, work: {days: 0.1}}%n",
                                i,
                                1 + i % 3,
                                800 + 70 * (i % 40),
                                70 * (i / 40 % 16) - 560,
                                860 + 70 * (i % 40),
                                70 * (i / 40 % 16) - 500,
                                300 + i,
                                i % 9))
                        .collect(Collectors.joining());
    }

    /** So many in place of the sheet's own, all of them towing, with less and less water. */
    private static UnaryOperator<Node.Mapping> loadings(int count) {
        Node.Mapping cases = yaml(
                "cases:\n",
                count,
                i -> "  - {name: towing " + i + ", towing: yes, filled: {Water tank: " + (100 - 5 * i) + " %}}\n");
        return tree -> Trees.with(tree, NodePath.of("cases"), cases.get("cases"));
    }

    /** Each between a light part and a heavier one. */
    private static UnaryOperator<Node.Mapping> choices(int count) {
        String part = "  - {name: %s %d, kind: other, mass: %d kg, at: {x: 1500 mm, y: 0 mm, z: 900 mm}}\n";
        Node.Mapping parts =
                yaml("fitments:\n", count, i -> part.formatted("Light", i, 1) + part.formatted("Heavy", i, 2));
        Node.Mapping options = yaml("options:\n", count, i -> ("  - {name: Choice %1$d, choices:"
                        + " [{name: light, parts: [Light %1$d]}, {name: heavy, parts: [Heavy %1$d]}]}\n")
                .formatted(i));
        return tree -> count == 0 ? tree : Trees.merged(Trees.merged(tree, parts), options);
    }

    private static Node.Mapping yaml(String heading, int count, IntFunction<String> item) {
        return NodeReader.read(
                "growth",
                heading + IntStream.range(0, count).mapToObj(item).collect(Collectors.joining()),
                new ArrayList<>());
    }

    /** So many rules: the book's own by topic, then the same again under other ids. */
    private static List<String> ids(Book book, int count) {
        List<String> all = new ArrayList<>(book.rules().keySet());
        // Rules that build on others after those they build on.
        all.sort(Comparator.comparing(id -> !book.rules().get(id).earlier().isEmpty()));
        List<String> ids = new ArrayList<>(all.subList(0, Math.min(count, all.size())));
        for (String id : all) {
            if (ids.size() < count) {
                ids.add(id.replaceFirst("\\.", "-b."));
            }
        }
        return ids;
    }

    /** A book of some rules; one whose topic ends with -b is a copy of the rule without. */
    private static RuleEngine written(Path folder, Book book, List<String> ids) throws Exception {
        Path from = Path.of("rules");
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                if (file.getNameCount() == 2 || file.getParent().endsWith("tables")) {
                    Files.createDirectories(
                            folder.resolve(from.relativize(file)).getParent());
                    Files.copy(file, folder.resolve(from.relativize(file)));
                }
            }
        }
        Set<String> practice = new HashSet<>();
        Map<String, Set<String>> topics = new HashMap<>();
        for (String id : withTopics(book, ids)) {
            practice.addAll(book.rules().get(id.replace("-b.", ".")).practice());
            topics.computeIfAbsent(id.substring(0, id.indexOf('.')), each -> new TreeSet<>())
                    .add(id.substring(id.indexOf('.')));
        }
        for (PracticeId asked : PracticeId.values()) {
            if (topics.containsKey(Book.topic(asked.id()))) {
                practice.add(asked.id());
            }
        }
        for (Map.Entry<String, Set<String>> topic : topics.entrySet()) {
            String copied = topic.getKey().replaceFirst("-b$", "");
            Path source = from.resolve(copied);
            Path target = Files.createDirectories(folder.resolve(topic.getKey()));
            write(
                    target.resolve(topic.getKey() + ".drl"),
                    source.resolve(copied + ".drl"),
                    Pattern.compile("(?m)^(?=rule )"),
                    "rule \"([^\"]*)\"",
                    copied,
                    topic.getKey(),
                    topic.getValue());
            write(
                    target.resolve("cards.yaml"),
                    source.resolve("cards.yaml"),
                    ENTRY,
                    "([^:]*):",
                    copied,
                    topic.getKey(),
                    topic.getValue());
            if (copied.equals(topic.getKey()) && Files.exists(source.resolve("practice.yaml"))) {
                write(
                        target.resolve("practice.yaml"),
                        source.resolve("practice.yaml"),
                        ENTRY,
                        "([^:]*):",
                        copied,
                        copied,
                        practice.stream()
                                .filter(id -> id.startsWith(copied + "."))
                                .map(id -> id.substring(id.indexOf('.')))
                                .collect(Collectors.toSet()));
            }
        }
        return BookLoader.load(folder, folder.resolveSibling("cache"), sentence -> {});
    }

    /** These, and one more of each topic that has none of them but a practice that they compare with. */
    private static Set<String> withTopics(Book book, List<String> ids) {
        Set<String> all = new LinkedHashSet<>(ids);
        for (List<String> more = ids; !more.isEmpty(); ) {
            Set<String> topics = all.stream().map(Book::topic).collect(Collectors.toSet());
            more = more.stream()
                    .flatMap(id -> book.rules().get(id.replace("-b.", ".")).practice().stream())
                    .map(Book::topic)
                    .filter(topics::add)
                    .map(topic -> book.rules().keySet().stream()
                            .filter(id -> Book.topic(id).equals(topic))
                            .findFirst()
                            .orElseThrow())
                    .toList();
            all.addAll(more);
        }
        return all;
    }

    /** The entries of a file whose id is wanted, under the id of another topic. */
    private static void write(
            Path target, Path source, Pattern entry, String name, String topic, String other, Set<String> wanted)
            throws IOException {
        StringBuilder text = new StringBuilder();
        for (String each : entry.split(Files.readString(source))) {
            Matcher id = Pattern.compile(name).matcher(each);
            if (id.lookingAt()
                    && wanted.contains(id.group(1).substring(id.group(1).indexOf('.')))) {
                // Under which rules it is told does not matter here, and not all of them are in the book.
                text.append(each.replaceFirst("(?m)^  with: .*\\n", "")
                        .replace("rule \"" + topic + ".", "rule \"" + other + ".")
                        .replace("give(\"" + topic + ".", "give(\"" + other + ".")
                        .replaceFirst("^" + topic + "\\.", other + "."));
            }
        }
        if (!text.isEmpty()) {
            Files.writeString(target, text);
        }
    }

    // Forty rules written out.

    private static final Set<String> FORTY = new TreeSet<>(List.of(
            "mass.gvm-over",
            "mass.gvm-unsure",
            "mass.gvm-tight",
            "mass.axle-over",
            "mass.axle-unsure",
            "mass.gcm-over",
            "mass.gcm-unsure",
            "mass.behind-axle",
            "mass.ball-lever",
            "mass.roof-over",
            "mass.cog-high",
            "mass.raised-gvm-gcm-left",
            "mass.raised-gvm-trailer",
            "mass.raised-gvm-axles",
            "mass.heavy-class",
            "mass.wheelbase-weigh",
            "tyres.wheel-weaker-than-tyre",
            "tyres.diameter-grown",
            "tyres.diameter-share",
            "tyres.speedometer-low",
            "tyres.gearing-long",
            "tyres.rim-narrow",
            "tyres.rim-wide",
            "tyres.rim-differs",
            "tyres.pressure-low",
            "tyres.spare-weak",
            "tyres.clearance-small",
            "towing.trailer-over",
            "towing.plate-over",
            "towing.coupling-over",
            "towing.ball-over",
            "towing.ball-heavy",
            "towing.brake-control-missing",
            "towing.ratio-high",
            "electrical.charge-short",
            "electrical.cable-thin",
            "electrical.no-fuse",
            "electrical.fuse-below-load",
            "electrical.fuse-far",
            "electrical.earth-poor"));

    private static Set<String> checked(List<Object> facts) {
        Map<String, Double> practice = new HashMap<>();
        Set<String> found = new HashSet<>();
        for (Object fact : facts) {
            if (fact instanceof Practice value) {
                practice.put(value.id(), value.value());
            } else if (fact instanceof Measure m) {
                check(m, practice, found);
            }
        }
        return found;
    }

    private static void check(Measure m, Map<String, Double> practice, Set<String> found) {
        switch (m.getName()) {
            case "mass.loaded" -> {
                over("mass.gvm-over", m, found);
                unsure("mass.gvm-unsure", m, found);
                give(
                        "mass.gvm-tight",
                        m,
                        m.isKnown()
                                && m.getHeadroom() >= m.getTolerance()
                                && m.getSpare() < limit("mass.gvm-reserve", practice),
                        found);
            }
            case "mass.axle" -> {
                over("mass.axle-over", m, found);
                unsure("mass.axle-unsure", m, found);
            }
            case "mass.combined" -> {
                over("mass.gcm-over", m, found);
                unsure("mass.gcm-unsure", m, found);
            }
            case "mass.behind-axle" -> above("mass.behind-axle", m, "mass.behind-axle-most", practice, found);
            case "mass.ball-lift" -> above("mass.ball-lever", m, "mass.ball-lift-most", practice, found);
            case "mass.roof" -> over("mass.roof-over", m, found);
            case "mass.cog-rise" -> above("mass.cog-high", m, "mass.cog-rise-most", practice, found);
            case "mass.rated-trailer" -> over("mass.raised-gvm-gcm-left", m, found);
            case "mass.full-combined" -> over("mass.raised-gvm-trailer", m, found);
            case "mass.gvm-axles" -> over("mass.raised-gvm-axles", m, found);
            case "mass.gvm" -> above("mass.heavy-class", m, "mass.light-gvm-most", practice, found);
            case "mass.wheelbase-added" -> give("mass.wheelbase-weigh", m, m.isKnown(), found);
            case "tyres.wheel-below-tyre" -> over("tyres.wheel-weaker-than-tyre", m, found);
            case "tyres.diameter-growth" ->
                above("tyres.diameter-grown", m, "tyres.diameter-growth-most", practice, found);
            case "tyres.diameter-change" ->
                above("tyres.diameter-share", m, "tyres.diameter-share-most", practice, found);
            case "tyres.speedometer" -> below("tyres.speedometer-low", m, "tyres.speed-shown-least", practice, found);
            case "tyres.gearing" -> above("tyres.gearing-long", m, "tyres.gearing-most", practice, found);
            case "tyres.rim-narrow" -> give("tyres.rim-narrow", m, m.isKnown() && m.getHeadroom() > 0, found);
            case "tyres.rim-wide" -> over("tyres.rim-wide", m, found);
            case "tyres.rim-same" -> give("tyres.rim-differs", m, m.getWord().equals("no"), found);
            case "tyres.pressure" -> give("tyres.pressure-low", m, m.isKnown() && m.getHeadroom() > 0, found);
            case "tyres.spare-load" -> over("tyres.spare-weak", m, found);
            case "tyres.clearance" -> below("tyres.clearance-small", m, "tyres.clearance-least", practice, found);
            case "towing.trailer" -> over("towing.trailer-over", m, found);
            case "towing.plate" -> over("towing.plate-over", m, found);
            case "towing.coupling" -> over("towing.coupling-over", m, found);
            case "towing.ball" -> over("towing.ball-over", m, found);
            case "towing.ball-share" -> above("towing.ball-heavy", m, "towing.ball-share-most", practice, found);
            case "towing.brake-control" ->
                give("towing.brake-control-missing", m, m.getWord().equals("no"), found);
            case "towing.ratio" -> above("towing.ratio-high", m, "towing.ratio-most", practice, found);
            case "electrical.daily" -> over("electrical.charge-short", m, found);
            case "electrical.cable" -> give("electrical.cable-thin", m, m.isKnown() && m.getExcess() < 0, found);
            case "electrical.fused" -> give("electrical.no-fuse", m, m.getWord().equals("no"), found);
            case "electrical.fuse-load" -> over("electrical.fuse-below-load", m, found);
            case "electrical.fuse-way" -> above("electrical.fuse-far", m, "electrical.fuse-way-most", practice, found);
            case "electrical.earth" ->
                give("electrical.earth-poor", m, m.getWord().equals("no"), found);
            default -> {}
        }
    }

    private static void over(String id, Measure m, Set<String> found) {
        give(id, m, m.isKnown() && m.getHeadroom() < 0, found);
    }

    private static void unsure(String id, Measure m, Set<String> found) {
        give(id, m, m.isKnown() && m.getHeadroom() >= 0 && m.getHeadroom() < m.getTolerance(), found);
    }

    private static void above(String id, Measure m, String most, Map<String, Double> practice, Set<String> found) {
        give(id, m, m.isKnown() && m.getValue() > limit(most, practice), found);
    }

    private static void below(String id, Measure m, String least, Map<String, Double> practice, Set<String> found) {
        give(id, m, m.isKnown() && m.getValue() < limit(least, practice), found);
    }

    /** Not a number where none applies, so that nothing is found. */
    private static double limit(String id, Map<String, Double> practice) {
        return practice.getOrDefault(id, Double.NaN);
    }

    private static void give(String id, Measure m, boolean holds, Set<String> found) {
        if (holds) {
            found.add(id + "|" + m.getSubject());
        }
    }

    /** What the engine finds among the same facts, of which it gets those that its rules look at, as in the program. */
    private static Set<String> fired(RuleEngine forty, Set<String> looksAt, List<Object> facts) {
        Set<String> found = new HashSet<>();
        KieSession session = forty.sessions().newKieSession();
        try {
            session.setGlobal("advice", (RuleAction) (id, evidence) -> found.add(id + "|"
                    + Arrays.stream(evidence)
                            .map(Measure.class::cast)
                            .findFirst()
                            .orElseThrow()
                            .getSubject()));
            for (Object fact : facts) {
                if (looksAt.contains(fact instanceof Measure measure ? measure.getName() : ((Practice) fact).id())) {
                    session.insert(fact);
                }
            }
            session.fireAllRules();
        } finally {
            session.dispose();
        }
        return found;
    }

    /** What the rules see in each load case of a sheet, where those by hand find the same in it as the engine. */
    private static List<List<Object>> agreed(RuleEngine forty, Set<String> looksAt, Sheet sheet) {
        Advice advice = Adviser.advise(forty, sheet);
        List<List<Object>> cases = advice.facts().values().stream()
                .map(facts -> facts.stream()
                        .filter(fact -> !(fact instanceof Advised))
                        .toList())
                .toList();
        Set<String> all = new HashSet<>();
        for (List<Object> facts : cases) {
            same(sheet, checked(facts), fired(forty, looksAt, facts));
            all.addAll(checked(facts));
        }
        same(
                sheet,
                all,
                advice.findings().stream()
                        .map(Finding::judged)
                        .map(each -> each.id() + "|" + each.subject())
                        .collect(Collectors.toSet()));
        return cases;
    }

    private static void same(Sheet sheet, Set<String> byHand, Set<String> engine) {
        if (!byHand.equals(engine)) {
            throw new IllegalStateException(sheet.title() + ": by hand " + byHand + ", by the engine " + engine);
        }
    }

    private static Sheet scenario(String name, Book book) throws Exception {
        return scenario(name, book, tree -> tree);
    }

    private static Sheet scenario(String name, Book book, UnaryOperator<Node.Mapping> change) throws Exception {
        Node.Mapping tree = NodeReader.read(Path.of("scenarios", name + ".yaml"), new ArrayList<>());
        return SheetReader.sheet(
                Shelves.beside().expanded(change.apply(tree), new ArrayList<>()),
                book.regions().keySet(),
                new ArrayList<>());
    }

    private static void byHand(Book book, RuleEngine forty, Sheet touring) throws Exception {
        Set<String> looksAt = new HashSet<>();
        forty.book().rules().values().forEach(rule -> {
            looksAt.addAll(rule.measures());
            looksAt.addAll(rule.practice());
        });
        Set<String> found = new HashSet<>();
        int sheets = 0;
        for (String name : List.of("touring", "weekender", "overloaded")) {
            agreed(forty, looksAt, scenario(name, book)).forEach(facts -> found.addAll(checked(facts)));
            sheets++;
        }
        for (Cases.Case each : Cases.read(Path.of("rules"), book)) {
            agreed(forty, looksAt, each.sheet()).forEach(facts -> found.addAll(checked(facts)));
            sheets++;
        }
        long ids = found.stream()
                .map(each -> each.substring(0, each.indexOf('|')))
                .distinct()
                .count();
        System.out.printf(
                "%d rules by hand agree with the engine on %d sheets; %d of them find something there%n",
                forty.book().rules().size(), sheets, ids);
        List<List<Object>> cases = agreed(forty, looksAt, touring);
        Map<String, Work> rows = new LinkedHashMap<>();
        rows.put("by hand, rules alone", () -> cases.forEach(Growth::checked));
        rows.put("engine, rules alone", () -> cases.forEach(facts -> fired(forty, looksAt, facts)));
        rows.put("engine, whole advice", () -> Adviser.advise(forty, touring));
        table("three load cases of touring, forty rules", rows);
    }
}
