package fitworthy.counter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The password. */
class DoorTest {

    private static final String PASSWORD = "saltbush & dust";

    @TempDir
    private Path folder;

    private Served served() throws Exception {
        Served.copyIn(folder).close();
        return Served.in(folder, serving("127.0.0.1", Optional.of(PASSWORD)));
    }

    private static Serving serving(String host, Optional<String> password) throws UnknownHostException {
        return new Serving(host, InetAddress.getByName(host), 0, password, System.err::println);
    }

    @Test
    void thePasswordLetsIn() throws Exception {
        try (Served served = served()) {
            assertFalse(served.address().contains("key"), served.address());
            HttpResponse<String> asked = served.get("/sheets/touring.yaml");
            assertEquals("/enter", asked.uri().getPath());
            assertTrue(asked.body().contains("type=\"password\""), asked.body());
            assertEquals("", served.cookie());
            HttpResponse<String> wrong = served.post("/enter", "password", PASSWORD + "x");
            assertEquals(403, wrong.statusCode());
            assertTrue(wrong.body().contains("This is not the password"), wrong.body());
            assertEquals("", served.cookie());
            assertTrue(served.post("/enter", "password", PASSWORD).body().contains("touring.yaml"));
            assertEquals(200, served.get("/sheets/touring.yaml").statusCode());
            assertEquals(
                    "/sheets/touring.yaml",
                    served.get("/sheets/touring.yaml").uri().getPath());
        }
    }

    @Test
    void aFewTriesThenWaiting() throws Exception {
        try (Served served = served()) {
            for (int i = 0; i < 5; i++) {
                assertEquals(403, served.post("/enter", "password", "guess" + i).statusCode());
            }
            HttpResponse<String> right = served.post("/enter", "password", PASSWORD);
            assertEquals(429, right.statusCode());
            assertTrue(right.body().contains("Wait for half a minute"), right.body());
            assertEquals("", served.cookie());
        }
    }

    @Test
    void waitingEnds() {
        long[] now = {0};
        Tries tries = new Tries(() -> now[0]);
        for (int i = 0; i < 5; i++) {
            assertFalse(tries.areOver());
            tries.wrong();
        }
        assertTrue(tries.areOver());
        now[0] += TimeUnit.SECONDS.toNanos(29);
        assertTrue(tries.areOver());
        now[0] += TimeUnit.SECONDS.toNanos(2);
        assertFalse(tries.areOver());
        tries.wrong();
        assertTrue(tries.areOver(), "one wrong try, and one waits again");
        now[0] += TimeUnit.SECONDS.toNanos(31);
        tries.right();
        tries.wrong();
        assertFalse(tries.areOver());
    }

    @Test
    void othersAreNeverLetInWithoutAPassword() throws Exception {
        assertThrows(IllegalArgumentException.class, () -> serving("10.0.0.1", Optional.empty()));
        assertThrows(IllegalArgumentException.class, () -> serving("0.0.0.0", Optional.of(PASSWORD)));
    }

    @Test
    void anotherAddressIsServedByItsNameAlone() throws Exception {
        Names names = new Names(serving("10.0.0.1", Optional.of(PASSWORD)));
        assertEquals("10.0.0.1:81", names.first(81));
        assertTrue(names.hold("10.0.0.1:81", 81));
        assertFalse(names.hold("localhost:81", 81) || names.hold("127.0.0.1:81", 81) || names.hold("10.0.0.1", 81));
        assertTrue(names.hold("10.0.0.1", 80), "browsers leave this port out");
        Names six = new Names(serving("FD00::1", Optional.of(PASSWORD)));
        assertEquals("[fd00::1]:81", six.first(81));
        assertTrue(six.holdOrigin("http://[fd00::1]:81", 81));
    }
}
