import fitworthy.advice.View;
import fitworthy.batch.Answer;
import fitworthy.batch.Input;
import fitworthy.batch.Json;
import fitworthy.engine.BookLoader;
import fitworthy.engine.RuleEngine;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import java.io.IOException;
import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import scala.Tuple2;

/**
 * Checks sheets, one in JSON on each line of the files of a folder, as a job on Apache Spark. What comes out is line
 * for line what {@code fitworthy batch -} prints of the same lines. The answer to a sheet hangs on the sheet and the
 * book alone, so the lines can be spread over any number of machines; each loads the book from the same folder once,
 * and refuses one that is not the driver's.
 */
public final class Sheets {

    /** Which book; small enough to be sent to each machine once. */
    private record Rules(String folder, String cache, String hash) implements Serializable {}

    /** The book of this machine. */
    private static final class Here {
        private static RuleEngine engine;

        static synchronized RuleEngine engine(Rules rules) throws FaultsException {
            if (engine == null) {
                RuleEngine loaded = load(rules.folder, rules.cache);
                if (!loaded.book().hash().equals(rules.hash)) {
                    throw new IllegalStateException("the book in " + rules.folder + " is "
                            + loaded.book().hash()
                            + " here and "
                            + rules.hash + " at the driver");
                }
                engine = loaded;
            }
            return engine;
        }
    }

    private static RuleEngine load(String folder, String cache) throws FaultsException {
        return BookLoader.load(Path.of(folder), Path.of(cache), System.err::println);
    }

    /** @param args folder of sheets, folder to be made for the answers, rules folder, cache folder */
    public static void main(String[] args) throws Exception {
        Rules rules = new Rules(args[2], args[3], load(args[2], args[3]).book().hash());
        SparkConf conf = new SparkConf()
                .setAppName("fitworthy sheets")
                .setIfMissing("spark.master", "local[*]")
                .set("spark.ui.enabled", "false")
                .set("spark.driver.host", "localhost")
                .set("spark.driver.bindAddress", "127.0.0.1");
        try (JavaSparkContext spark = new JavaSparkContext(conf)) {
            Broadcast<Rules> book = spark.broadcast(rules);
            long began = System.nanoTime();
            spark.textFile(files(Path.of(args[0])), Integer.parseInt(System.getProperty("partitions", "16")))
                    .zipWithIndex()
                    .mapPartitions(lines -> answers(lines, new View(Here.engine(book.value()), null, null)))
                    .saveAsTextFile(args[1]);
            double seconds = (System.nanoTime() - began) / 1e9;
            long sheets = spark.textFile(args[1]).count();
            System.out.printf(
                    Locale.ROOT,
                    "%d sheets in %.1f s, %.0f a second; book %s%n",
                    sheets,
                    seconds,
                    sheets / seconds,
                    rules.hash);
        }
    }

    /** The files of a folder by name, since a folder alone is read in whatever order the disk has them. */
    private static String files(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.sorted().map(Path::toString).collect(Collectors.joining(","));
        }
    }

    /** One answer after the other, so that no partition has to fit into memory. */
    private static Iterator<String> answers(Iterator<Tuple2<String, Long>> lines, View view) {
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return lines.hasNext();
            }

            @Override
            public String next() {
                Tuple2<String, Long> line = lines.next();
                return Json.line(Answer.of(
                        view,
                        new Input(
                                Place.of("-").onLine((int) (line._2() + 1)),
                                line._1().getBytes(StandardCharsets.UTF_8))));
            }
        };
    }
}
