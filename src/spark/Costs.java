import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.spark.executor.TaskMetrics;
import org.apache.spark.scheduler.SparkListener;
import org.apache.spark.scheduler.SparkListenerBlockUpdated;
import org.apache.spark.scheduler.SparkListenerTaskEnd;
import org.apache.spark.storage.BlockUpdatedInfo;

/** What a job costs, as Spark's own accounts have it. */
final class Costs extends SparkListener {

    private final String book;
    private int tasks;
    private int lost;
    private final Map<String, Long> nanosByExecutor = new TreeMap<>();
    private long longestNanos;
    private long readBytes;
    private long writtenBytes;
    private long movedBytes;
    private long bookBytes;

    /** @param book the number of the broadcast that holds it */
    Costs(long book) {
        this.book = "broadcast_" + book + "_piece";
    }

    @Override
    public synchronized void onTaskEnd(SparkListenerTaskEnd ended) {
        if (!ended.taskInfo().successful()) {
            lost++;
            return;
        }
        TaskMetrics metrics = ended.taskMetrics();
        tasks++;
        long nanos = metrics.executorCpuTime() + metrics.executorDeserializeCpuTime();
        nanosByExecutor.merge(ended.taskInfo().executorId(), nanos, Long::sum);
        longestNanos = Math.max(longestNanos, nanos);
        readBytes += metrics.inputMetrics().bytesRead();
        writtenBytes += metrics.outputMetrics().bytesWritten();
        movedBytes += metrics.shuffleReadMetrics().totalBytesRead();
    }

    @Override
    public synchronized void onBlockUpdated(SparkListenerBlockUpdated updated) {
        BlockUpdatedInfo block = updated.blockUpdatedInfo();
        if (block.blockManagerId().isDriver() && block.blockId().name().startsWith(book)) {
            bookBytes += block.memSize();
        }
    }

    @Override
    public synchronized String toString() {
        return String.format(
                Locale.ROOT,
                "%d tasks, %d lost; processor time in them by executor %s, in the longest %.1f s%n"
                        + "  %.1f MB read, %.1f MB written, %.1f MB moved between tasks, the book %.2f MB",
                tasks,
                lost,
                nanosByExecutor.values().stream()
                        .map(nanos -> String.format(Locale.ROOT, "%.1f s", nanos / 1e9))
                        .collect(Collectors.joining(" + ")),
                longestNanos / 1e9,
                readBytes / 1e6,
                writtenBytes / 1e6,
                movedBytes / 1e6,
                bookBytes / 1e6);
    }
}
