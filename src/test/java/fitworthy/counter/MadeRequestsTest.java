package fitworthy.counter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Made requests, most of them broken in some way: each is answered or closed, none by a fault of the counter, and no
 * file is touched but sheets of the folder. {@code -Drequests=20000} makes more of them.
 */
class MadeRequestsTest {

    private static final int COUNT = Integer.getInteger("requests", 2000);
    private static final long MOST_MEMORY = 60L << 20;
    private static final List<String> HOSTILE = List.of(
            "..",
            "%2e%2e",
            "%2f",
            "%5c",
            "%00",
            "%c0%ae",
            "%e2%80%ae",
            "\u202E",
            "%",
            "%zz",
            "//",
            ";a=b",
            "?",
            "&&=",
            "'\"><script>",
            "../../outside.yaml",
            "con",
            "shelf",
            ".git",
            "~",
            "\\",
            "a".repeat(3000),
            "\u0000",
            "\r\nX: y",
            "+",
            "%F0%9F%9A%9C",
            "-1",
            "99999999999999999999",
            "NaN",
            "${x}",
            "[",
            "]",
            "{}",
            "#",
            "*",
            "!!java.lang.Runtime",
            "- a\n- b",
            "ask",
            "67 kg");

    private final Random random = new Random(20261128);
    private final List<String> log = Collections.synchronizedList(new ArrayList<>());

    @TempDir
    private Path home;

    private Served served;
    private List<String> addresses;

    @Test
    @Timeout(3600)
    void eachIsAnsweredAndNothingElseIsTouched() throws Exception {
        Path folder = home.resolve("sheets");
        Served.copyIn(folder).close();
        Files.writeString(home.resolve("outside.yaml"), "title: outside\n");
        try (Served counter = Served.in(folder, Serving.here(0, log::add))) {
            served = counter;
            TreeSet<String> known = new TreeSet<>(List.of("/", "/sheets/touring.yaml/set", "/assets/base.css"));
            for (String page : List.of("/", "/sheets/touring.yaml", "/book")) {
                known.addAll(Addresses.in(counter.get(page).body()));
            }
            addresses = List.copyOf(known);
            Map<String, String> before = besides(folder);
            run(COUNT / 2);
            long memory = memory();
            run(COUNT / 2);
            assertTrue(memory() - memory < MOST_MEMORY, "memory grew by " + (memory() - memory));
            Map<String, String> after = besides(folder);
            assertEquals(before.keySet(), after.keySet());
            before.forEach((file, text) -> assertEquals(text, after.get(file), file));
            assertEquals(List.of(), log);
            assertEquals(200, counter.get("/sheets/touring.yaml").statusCode());
        }
    }

    private void run(int count) throws IOException {
        for (int i = 0; i < count; i++) {
            String request = made();
            if (random.nextInt(20) == 0) {
                cut(request);
            } else {
                int status = Raw.of(served.port(), request.getBytes(StandardCharsets.UTF_8))
                        .status();
                assertTrue(status != 500, () -> log + "\n" + request);
            }
        }
    }

    /** Everything but sheets of the folder itself, and the steps that are kept of them, with what it holds. */
    private Map<String, String> besides(Path folder) throws IOException {
        Map<String, String> besides = new TreeMap<>();
        try (Stream<Path> all = Files.walk(home)) {
            for (Path file : all.filter(path -> !Files.isDirectory(path)).toList()) {
                boolean sheet = file.getParent().equals(folder)
                        && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                        && file.toString().matches(".*/[\\p{L}\\p{N}][^/]*\\.(yaml|yml|json)");
                boolean steps = file.getParent().equals(folder.resolve(".fitworthy"))
                        && file.toString().endsWith(".steps");
                if (!sheet && !steps) {
                    besides.put(home.relativize(file).toString(), Files.readString(file));
                }
            }
        }
        return besides;
    }

    private static long memory() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private <T> T any(List<T> things) {
        return things.get(random.nextInt(things.size()));
    }

    private boolean seldom() {
        return random.nextInt(6) == 0;
    }

    private String made() {
        String body = form();
        boolean post = random.nextBoolean();
        StringBuilder request = new StringBuilder(
                        seldom()
                                ? any(List.of("PUT", "TRACE", "get", "", "OPTIONS", "X\u0000"))
                                : post ? "POST" : "GET")
                .append(' ')
                .append(path())
                .append(seldom() ? any(List.of(" HTTP/1.0", " HTTP/2", "", " HTTP/1.1 x")) : " HTTP/1.1")
                .append("\r\nConnection: close\r\nHost: ")
                .append(seldom() ? any(HOSTILE) : "127.0.0.1:" + served.port())
                .append("\r\nCookie: ")
                .append(seldom() ? any(HOSTILE) : served.cookie());
        if (post) {
            request.append("\r\nOrigin: ")
                    .append(seldom() ? any(HOSTILE) : served.at(""))
                    .append("\r\nContent-Type: ")
                    .append(
                            seldom()
                                    ? any(List.of(
                                            "text/plain",
                                            "x; charset=\"\"",
                                            "application/x-www-form-urlencoded; charset=x",
                                            ""))
                                    : "application/x-www-form-urlencoded");
        }
        if (seldom()) {
            request.append("\r\n")
                    .append(any(List.of(
                            "HX-Request",
                            "Accept",
                            "Range",
                            "Expect",
                            "Upgrade",
                            "If-None-Match",
                            "X\u0000",
                            "Content-Encoding")))
                    .append(": ")
                    .append(any(HOSTILE));
        }
        if (post && seldom()) {
            request.append("\r\nTransfer-Encoding: chunked\r\n\r\n")
                    .append(Integer.toHexString(body.length()))
                    .append("\r\n")
                    .append(body)
                    .append(seldom() ? "zz\r\n" : "\r\n0\r\n\r\n");
        } else {
            int length = body.getBytes(StandardCharsets.UTF_8).length;
            request.append("\r\nContent-Length: ")
                    .append(post ? length : 0)
                    .append("\r\n\r\n")
                    .append(post ? body : "");
        }
        return request.toString();
    }

    private String path() {
        String address = any(addresses).replace(' ', '+');
        if (random.nextBoolean()) {
            return address;
        }
        int at = random.nextInt(address.length() + 1);
        String part = any(HOSTILE).replace(' ', '+');
        return seldom() ? address + "?" + part + "=" + part : address.substring(0, at) + part + address.substring(at);
    }

    private String form() {
        StringBuilder form = new StringBuilder("version=");
        for (String name : List.of("path", "value", "field", "loading", any(HOSTILE))) {
            String value = seldom()
                    ? any(HOSTILE)
                    : any(List.of("title", "vehicle.name", "occupants.Ines.mass", "fitments.1.name", "a"));
            form.append('&')
                    .append(name)
                    .append('=')
                    .append(seldom() ? value : URLEncoder.encode(value, StandardCharsets.UTF_8));
        }
        return seldom() ? form + "&x=" + "y".repeat(random.nextInt(90_000)) : form.toString();
    }

    /** Sends a part of it and is gone. */
    private void cut(String request) throws IOException {
        byte[] bytes = request.getBytes(StandardCharsets.UTF_8);
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), served.port())) {
            socket.getOutputStream().write(bytes, 0, random.nextInt(bytes.length));
        }
    }
}
