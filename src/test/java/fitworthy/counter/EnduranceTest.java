package fitworthy.counter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** An hour's work at one counter, and many pages at once. {@code -Dedits=2000} is a day's. */
@Timeout(1800)
class EnduranceTest {

    private static final int PAGES = 10;
    private static final int EDITS = Integer.getInteger("edits", 600);
    private static final int FIRST = 200;
    /** What an edit may leave behind, bytes, as far as memory can be told so finely. */
    private static final long NOISE = 14L << 10;

    private static final Pattern VERSION = Pattern.compile("id=\"version\" name=\"version\" value=\"([^\"]*)\"");

    @TempDir
    private Path folder;

    private static String version(String html) {
        Matcher version = VERSION.matcher(html);
        assertTrue(version.find(), html);
        return version.group(1);
    }

    private static long memory() throws InterruptedException {
        for (int i = 0; i < 4; i++) {
            System.gc();
            Thread.sleep(50);
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    /** Each edit of another mass. @return the version after them */
    private static String edited(Served served, String version, int from, int to) throws Exception {
        String now = version;
        for (int i = from; i < to; i++) {
            HttpResponse<String> answer = served.post(
                    "/sheets/touring.yaml/set",
                    "version",
                    now,
                    "path",
                    "occupants.Ines.mass",
                    "value",
                    50 + i % 40 + " kg",
                    "field",
                    "f");
            assertEquals(200, answer.statusCode());
            now = version(answer.body());
        }
        return now;
    }

    @Test
    void editsLeaveNothingBehind() throws Exception {
        try (Served served = Served.copyIn(folder)) {
            String version =
                    edited(served, version(served.get("/sheets/touring.yaml").body()), 0, FIRST);
            long memory = memory();
            int threads = Thread.activeCount();
            edited(served, version, FIRST, EDITS);
            long grown = memory() - memory;

            assertTrue(grown < NOISE * (EDITS - FIRST), "grown by " + grown);
            assertTrue(Thread.activeCount() <= threads + 4, threads + " to " + Thread.activeCount());
            assertTrue(Files.readString(folder.resolve("touring.yaml"))
                    .contains("mass: " + (50 + (EDITS - 1) % 40) + " kg"));
        }
    }

    @Test
    void manyPagesAtOnceSeeWholeStates() throws Exception {
        try (Served served = Served.copyIn(folder)) {
            ExecutorService pages = Executors.newFixedThreadPool(PAGES);
            List<Future<Integer>> all = new ArrayList<>();
            for (int page = 0; page < PAGES; page++) {
                int mine = page;
                all.add(pages.submit(() -> work(served, mine)));
            }
            int written = 0;
            for (Future<Integer> page : all) {
                written += page.get();
            }
            pages.shutdown();
            assertTrue(written > 0, "nobody got a change through");
            String text = Files.readString(folder.resolve("touring.yaml"));
            assertTrue(text.matches("(?s).*name: Ines, mass: 5\\d kg.*"), text);
            assertEquals(
                    version(served.get("/sheets/touring.yaml").body()),
                    version(served.get("/sheets/touring.yaml/look").body()));
        }
    }

    /** Looks and changes in turn. @return how many of the changes this page saw written */
    private static int work(Served served, int page) throws Exception {
        int written = 0;
        for (int i = 0; i < 15; i++) {
            HttpResponse<String> seen = served.get("/sheets/touring.yaml");
            assertEquals(200, seen.statusCode());
            assertTrue(seen.body().contains("</html>"));
            HttpResponse<String> answer = served.post(
                    "/sheets/touring.yaml/set",
                    "version",
                    version(seen.body()),
                    "path",
                    "occupants.Ines.mass",
                    "value",
                    "5" + page + " kg",
                    "field",
                    "f");
            assertTrue(answer.statusCode() == 200 || answer.statusCode() == 409, "" + answer.statusCode());
            written += version(answer.body()).equals(version(seen.body())) ? 0 : 1;
        }
        return written;
    }
}
