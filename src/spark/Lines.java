import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.mapreduce.Job;
import org.apache.parquet.example.data.Group;
import org.apache.parquet.example.data.simple.SimpleGroup;
import org.apache.parquet.hadoop.ParquetOutputFormat;
import org.apache.parquet.hadoop.example.ExampleInputFormat;
import org.apache.parquet.hadoop.example.ExampleOutputFormat;
import org.apache.parquet.hadoop.metadata.CompressionCodecName;
import org.apache.parquet.schema.MessageType;
import org.apache.parquet.schema.MessageTypeParser;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaPairRDD;
import org.apache.spark.api.java.JavaSparkContext;
import scala.Tuple2;

/**
 * Lines by their numbers from 1 on: the lines of the files of a folder, or the rows of a folder whose name ends with
 * {@code .parquet}, which carry their numbers. As a program it turns one into the other.
 */
final class Lines {

    private static final MessageType ROW =
            MessageTypeParser.parseMessageType("message row { required int64 number; required binary line (STRING); }");

    private Lines() {}

    /** @param args folder to be read, folder to be made */
    public static void main(String[] args) throws IOException {
        try (JavaSparkContext spark = spark()) {
            write(read(spark, args[0]).sortByKey(), args[1]);
        }
    }

    /** As the properties of the virtual machine say, and spoken with on this machine alone. */
    static JavaSparkContext spark() {
        return new JavaSparkContext(new SparkConf()
                .setAppName("fitworthy sheets")
                .set("spark.ui.enabled", "false")
                .set("spark.driver.host", "localhost")
                .set("spark.driver.bindAddress", "127.0.0.1"));
    }

    /** In how many parts the work is to be done, at least, where files can be split. */
    static int parts() {
        return Integer.getInteger("parts", 16);
    }

    static JavaPairRDD<Long, String> read(JavaSparkContext spark, String folder) throws IOException {
        return isParquet(folder)
                ? spark.newAPIHadoopFile(
                                folder, ExampleInputFormat.class, Void.class, Group.class, spark.hadoopConfiguration())
                        .mapToPair(row -> new Tuple2<>(
                                row._2().getLong("number", 0), row._2().getString("line", 0)))
                : spark.textFile(files(Path.of(folder)), parts())
                        .zipWithIndex()
                        .mapToPair(line -> new Tuple2<>(line._2() + 1, line._1()));
    }

    static void write(JavaPairRDD<Long, String> lines, String folder) throws IOException {
        if (!isParquet(folder)) {
            lines.values().saveAsTextFile(folder);
            return;
        }
        Job job = Job.getInstance(lines.context().hadoopConfiguration());
        // Each executor has a working folder of its own.
        String whole = FileSystem.get(job.getConfiguration())
                .makeQualified(new org.apache.hadoop.fs.Path(folder))
                .toString();
        ExampleOutputFormat.setSchema(job, ROW);
        ParquetOutputFormat.setCompression(job, CompressionCodecName.ZSTD);
        lines.mapToPair(line -> {
                    Group row = new SimpleGroup(ROW);
                    row.add("number", line._1());
                    row.add("line", line._2());
                    return new Tuple2<Void, Group>(null, row);
                })
                .saveAsNewAPIHadoopFile(
                        whole, Void.class, Group.class, ExampleOutputFormat.class, job.getConfiguration());
    }

    private static boolean isParquet(String folder) {
        return folder.endsWith(".parquet");
    }

    /** The files of a folder by name, since a folder alone is read in whatever order the disk has them. */
    private static String files(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.sorted().map(Path::toString).collect(Collectors.joining(","));
        }
    }
}
