import fitworthy.advice.View;
import fitworthy.batch.Answer;
import fitworthy.batch.Input;
import fitworthy.document.Json;
import fitworthy.engine.BookLoader;
import fitworthy.engine.RuleEngine;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import java.io.IOException;
import java.io.Serializable;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.spark.Partitioner;
import org.apache.spark.SparkFiles;
import org.apache.spark.api.java.JavaPairRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.util.LongAccumulator;
import scala.Tuple2;

/**
 * Checks sheets, one in JSON on each of the {@link Lines}, as a job on Apache Spark. What comes out is line for line
 * what {@code fitworthy batch -} prints of the same lines. The answer to a sheet hangs on the sheet and the book alone,
 * so the lines can be spread over any number of machines, to each of which the book is sent once.
 */
public final class Sheets {

    /** The files of a book and what is kept of its rules, so that no machine but the driver's compiles them. */
    private record Book(Map<String, byte[]> rules, Map<String, byte[]> cache) implements Serializable {

        static Book read(Path rules, Path cache) throws IOException {
            return new Book(files(rules), files(cache));
        }

        private static Map<String, byte[]> files(Path folder) throws IOException {
            Map<String, byte[]> files = new HashMap<>();
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path each : all.filter(Files::isRegularFile).toList()) {
                    files.put(folder.relativize(each).toString(), Files.readAllBytes(each));
                }
            }
            return files;
        }

        RuleEngine loaded() throws IOException, FaultsException {
            // A folder that goes with the executor.
            Path here = Files.createTempDirectory(Path.of(SparkFiles.getRootDirectory()), "book");
            return load(written(rules, here.resolve("rules")), written(cache, here.resolve("cache")));
        }

        private static Path written(Map<String, byte[]> files, Path folder) throws IOException {
            Files.createDirectories(folder);
            for (Map.Entry<String, byte[]> each : files.entrySet()) {
                Path file = folder.resolve(each.getKey());
                Files.createDirectories(file.getParent());
                Files.write(file, each.getValue());
            }
            return folder;
        }
    }

    /** The book in this virtual machine, for all of its tasks. */
    private static final class Here {
        private static RuleEngine engine;

        static synchronized RuleEngine engine(
                Broadcast<Book> book, LongAccumulator fetchMillis, LongAccumulator loadMillis) {
            if (engine == null) {
                try {
                    long began = System.currentTimeMillis();
                    Book sent = book.value();
                    long fetched = System.currentTimeMillis();
                    engine = sent.loaded();
                    fetchMillis.add(fetched - began);
                    loadMillis.add(System.currentTimeMillis() - fetched);
                } catch (IOException | FaultsException e) {
                    throw new IllegalStateException("the book that was sent cannot be loaded", e);
                }
            }
            return engine;
        }
    }

    private Sheets() {}

    /** @param args folder of sheets, folder to be made for the answers, rules folder, cache folder */
    public static void main(String[] args) throws Exception {
        Path rules = Path.of(args[2]);
        Path cache = Path.of(args[3]);
        String hash = load(rules, cache).book().hash();
        try (JavaSparkContext spark = Lines.spark()) {
            LongAccumulator fetchMillis = spark.sc().longAccumulator();
            LongAccumulator loadMillis = spark.sc().longAccumulator();
            LongAccumulator sheets = spark.sc().longAccumulator();
            // The book is the first thing that is sent.
            Costs costs = new Costs(0);
            spark.sc().addSparkListener(costs);
            Broadcast<Book> book = spark.broadcast(Book.read(rules, cache));
            long began = System.nanoTime();
            JavaPairRDD<Long, String> lines = Lines.read(spark, args[0]);
            lines = Boolean.getBoolean("spread") ? spread(lines) : lines;
            Lines.write(
                    lines.mapPartitionsToPair(part -> {
                        View view = new View(Here.engine(book, fetchMillis, loadMillis), null, null);
                        return answers(part, view, sheets);
                    }),
                    args[1]);
            double seconds = (System.nanoTime() - began) / 1e9;
            System.out.printf(
                    Locale.ROOT,
                    "  %d sheets in %.1f s, %.0f a second; book %s fetched %d times in %d ms, loaded in %d ms%n  %s%n"
                            + "  the driver took %.1f s of processor time%n",
                    sheets.value(),
                    seconds,
                    sheets.value() / seconds,
                    hash,
                    fetchMillis.count(),
                    fetchMillis.value(),
                    loadMillis.value(),
                    costs,
                    driverSeconds());
        }
    }

    private static RuleEngine load(Path folder, Path cache) throws FaultsException {
        return BookLoader.load(folder, cache, System.err::println);
    }

    private static double driverSeconds() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                        .getProcessCpuTime()
                / 1e9;
    }

    /** The same lines in as many equal parts as asked for, in their order, whatever files they come from. */
    private static JavaPairRDD<Long, String> spread(JavaPairRDD<Long, String> lines) {
        return lines.repartitionAndSortWithinPartitions(new Spans(lines.count(), Lines.parts()));
    }

    /** Numbers that follow each other, in so many parts. */
    private static final class Spans extends Partitioner {

        private final long count;
        private final int parts;

        Spans(long count, int parts) {
            this.count = count;
            this.parts = parts;
        }

        @Override
        public int numPartitions() {
            return parts;
        }

        @Override
        public int getPartition(Object number) {
            return (int) (((Long) number - 1) * parts / count);
        }
    }

    /** One answer after the other, so that no partition has to fit into memory. */
    private static Iterator<Tuple2<Long, String>> answers(
            Iterator<Tuple2<Long, String>> lines, View view, LongAccumulator sheets) {
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return lines.hasNext();
            }

            @Override
            public Tuple2<Long, String> next() {
                Tuple2<Long, String> line = lines.next();
                sheets.add(1);
                Place place = Place.of("-").onLine(Math.toIntExact(line._1()));
                Input input = new Input(place, line._2().getBytes(StandardCharsets.UTF_8));
                return new Tuple2<>(line._1(), Json.line(Answer.of(view, input)));
            }
        };
    }
}
