package fitworthy.counter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Folders;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Who is let in, and what is refused. */
@Timeout(300)
class GuardTest {

    private static final String UNDO = "/sheets/touring.yaml/undo";
    private static final String FORM = "application/x-www-form-urlencoded";

    @TempDir
    private static Path home;

    private static Path folder;
    private static Served served;
    private static final List<String> LOG = Collections.synchronizedList(new ArrayList<>());

    @BeforeAll
    static void serve() throws Exception {
        folder = home.resolve("sheets");
        Served.copyIn(folder).close();
        served = Served.in(folder, Serving.here(0, LOG::add));
    }

    @AfterAll
    static void close() {
        served.close();
        assertEquals(List.of(), LOG);
    }

    private static String host() {
        return "127.0.0.1:" + served.port();
    }

    /** A request with what a page of the counter sends, save what is changed: an empty value leaves a header out. */
    private static Raw asked(String method, String path, String body, String... changed) throws IOException {
        Map<String, String> headers = new LinkedHashMap<>();
        headers.put("Host", host());
        headers.put("Cookie", served.cookie());
        if (method.equals("POST")) {
            headers.put("Origin", "http://" + host());
            headers.put("Content-Type", FORM);
            headers.put("Content-Length", String.valueOf(body.length()));
        }
        for (int i = 0; i < changed.length; i += 2) {
            headers.put(changed[i], changed[i + 1]);
        }
        String lines = headers.entrySet().stream()
                .filter(header -> !header.getValue().isEmpty())
                .map(header -> "\r\n" + header.getKey() + ": " + header.getValue())
                .collect(Collectors.joining());
        return Raw.of(served.port(), method + " " + path + " HTTP/1.1" + lines, body);
    }

    private static Raw refused(int status, Raw answer) {
        assertEquals(status, answer.status(), answer.body());
        assertTrue(answer.body().contains("<h1>") && answer.body().contains("not certification"), answer.body());
        assertFalse(
                answer.body().contains(home.toString())
                        || answer.body().contains("Exception")
                        || answer.body().contains("\tat "),
                answer.body());
        return guarded(answer);
    }

    private static Raw guarded(Raw answer) {
        assertTrue(answer.headers()
                .get("content-security-policy")
                .startsWith("default-src 'none'; script-src 'self'; style-src 'self';"));
        assertTrue(answer.headers().get("content-security-policy").contains("frame-ancestors 'none'"));
        assertEquals("nosniff", answer.headers().get("x-content-type-options"));
        assertEquals("same-origin", answer.headers().get("referrer-policy"));
        assertEquals("no-store", answer.headers().get("cache-control"));
        assertFalse(answer.headers().containsKey("server"));
        return answer;
    }

    @Test
    void theAddressIsExchangedForACookie() throws Exception {
        String path = served.address().substring(("http://" + host()).length());
        Raw entered = guarded(asked("GET", path, "", "Cookie", ""));
        assertEquals(303, entered.status());
        assertEquals("/", entered.headers().get("location"));
        String cookie = entered.headers().get("set-cookie");
        assertTrue(cookie.startsWith("fitworthy-" + served.port() + "="), cookie);
        assertTrue(
                cookie.contains("; Path=/") && cookie.contains("; HttpOnly") && cookie.contains("; SameSite=Strict"),
                cookie);
        assertFalse(cookie.contains(path.substring(path.indexOf('=') + 1)), "the cookie tells the key");
        assertEquals(200, guarded(asked("GET", "/", "")).status());
    }

    @Test
    void nobodyElseIsLetIn() throws Exception {
        for (String cookie : List.of(
                "",
                "fitworthy-" + served.port() + "=" + "0".repeat(48),
                served.cookie() + "0",
                served.cookie().replace("" + served.port(), "1"))) {
            for (String path :
                    List.of("/", "/?key=" + "0".repeat(48), "/?key=", "/sheets/touring.yaml", "/book", "/nothing")) {
                Raw answer = refused(403, asked("GET", path, "", "Cookie", cookie));
                assertTrue(answer.body().contains("Open the address that was printed"), answer.body());
                assertFalse(answer.headers().containsKey("set-cookie"));
            }
            refused(403, asked("POST", UNDO, "", "Cookie", cookie));
        }
    }

    /** A page from elsewhere may have its own name lead to this machine. */
    @Test
    void onlyTheNameThatIsServedIsAnswered() throws Exception {
        int port = served.port();
        for (String host : List.of("localhost:" + port, "[::1]:" + port, host())) {
            assertEquals(200, asked("GET", "/", "", "Host", host).status(), host);
        }
        for (String host : List.of(
                "evil.example",
                "evil.example:" + port,
                "127.0.0.1",
                "127.0.0.1:" + (port + 1),
                "localhost",
                "127.0.0.1.evil.example:" + port,
                "127.0.0.2:" + port,
                "localhost.:" + port,
                "0.0.0.0:" + port,
                "127.1:" + port,
                "2130706433:" + port)) {
            Raw answer = asked("GET", "/", "", "Host", host);
            assertTrue(answer.status() == 403 || answer.status() == 400, host + " " + answer.status());
            guarded(answer);
        }
        refused(403, Raw.of(port, "GET / HTTP/1.0\r\nCookie: " + served.cookie(), ""));
        refused(400, Raw.of(port, "GET / HTTP/1.1\r\nCookie: " + served.cookie(), ""));
        refused(400, asked("GET", "http://evil.example/", ""));
        refused(400, Raw.of(port, "GET / HTTP/1.1\r\nHost: " + host() + "\r\nHost: evil.example", ""));
    }

    @Test
    void onlyAPageOfTheCounterChangesAnything() throws Exception {
        assertEquals(200, asked("POST", UNDO, "").status());
        assertEquals(
                200, asked("POST", UNDO, "", "Sec-Fetch-Site", "same-origin").status());
        for (String origin : List.of(
                "",
                "null",
                "http://evil.example",
                "https://" + host(),
                "http://127.0.0.1",
                "http://127.0.0.1:1",
                "http://" + host() + ".evil.example",
                "http://evil.example@" + host())) {
            refused(403, asked("POST", UNDO, "", "Origin", origin));
        }
        for (String site : List.of("cross-site", "same-site", "none", "x")) {
            refused(403, asked("POST", UNDO, "", "Sec-Fetch-Site", site));
        }
    }

    @Test
    void otherWaysOfAskingAreRefused() throws Exception {
        for (String method : List.of("PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "CONNECT", "FOO")) {
            Raw answer = asked(method, "/sheets/touring.yaml", "");
            assertTrue(List.of(400, 405).contains(answer.status()), method + " " + answer.status());
        }
        refused(405, asked("GET", UNDO, ""));
        refused(405, asked("POST", "/sheets/touring.yaml", ""));
        Raw head = asked("HEAD", "/", "");
        assertEquals(200, head.status());
        assertEquals("", head.body());
    }

    @Test
    void formsAreBounded() throws Exception {
        String large = "a=" + "x".repeat(70_000);
        refused(413, asked("POST", UNDO, large));
        String chunk = Integer.toHexString(large.length()) + "\r\n" + large + "\r\n0\r\n\r\n";
        refused(413, asked("POST", UNDO, chunk, "Content-Length", "", "Transfer-Encoding", "chunked"));
        refused(400, asked("POST", UNDO, "a=1&".repeat(201)));
        refused(400, asked("POST", UNDO, "x".repeat(101) + "=1"));
        for (String type : List.of(
                "text/plain",
                "application/json",
                "multipart/form-data; boundary=x",
                "x",
                FORM + "; charset=utf-16",
                FORM + "; charset=\"none such\"",
                "")) {
            refused(415, asked("POST", UNDO, "a=1", "Content-Type", type));
        }
        assertEquals(
                200,
                asked("POST", UNDO, "a=1", "Content-Type", FORM + ";charset=UTF-8")
                        .status());
        refused(431, asked("GET", "/", "", "X-Long", "x".repeat(20_000)));
        refused(414, asked("GET", "/" + "x".repeat(20_000), ""));
    }

    /** One came out as a fault of the counter. */
    @Test
    void aFormCutInWrongPiecesIsRefused() throws Exception {
        for (String pieces : List.of("5\r\nabcdefgh\r\n0\r\n\r\n", "zz\r\nabc\r\n", "3\r\nabczz\r\n")) {
            refused(400, asked("POST", UNDO, pieces, "Content-Length", "", "Transfer-Encoding", "chunked"));
        }
    }

    @Test
    void slowFormsAreGivenUp() throws Exception {
        long began = System.nanoTime();
        Raw answer = asked("POST", UNDO, "a=1", "Content-Length", "1000");
        assertEquals(408, answer.status(), answer.body());
        assertTrue(System.nanoTime() - began < 60_000_000_000L);
    }

    @Test
    void noWayLeadsOutOfTheFolder() throws Exception {
        Files.writeString(home.resolve("outside.yaml"), "title: secret-outside\n");
        Files.writeString(folder.resolve(".hidden.yaml"), "title: secret-outside\n");
        Files.createDirectories(folder.resolve("folder.yaml"));
        if (!Files.exists(folder.resolve("link.yaml"), LinkOption.NOFOLLOW_LINKS)) {
            Files.createSymbolicLink(folder.resolve("link.yaml"), home.resolve("outside.yaml"));
            Files.createSymbolicLink(folder.resolve("in.yaml"), folder.resolve("touring.yaml"));
        }
        Map<String, String> before = Folders.texts(home);
        for (String name : List.of(
                "../outside.yaml",
                "..%2foutside.yaml",
                "%2e%2e%2foutside.yaml",
                "..%5coutside.yaml",
                "..\\outside.yaml",
                "%252e%252e%252foutside.yaml",
                "%c0%ae%c0%ae/outside.yaml",
                "\u2025/outside.yaml",
                "%e2%80%a5%2foutside.yaml",
                "%ef%bc%8e%ef%bc%8e%2foutside.yaml",
                "touring.yaml%00",
                "%00",
                "touring.yaml%00.yaml",
                "touring.yaml/..%2f..%2foutside.yaml",
                "shelf",
                "shelf/",
                "shelf%2fparts.yaml",
                "folder.yaml",
                "link.yaml",
                "in.yaml",
                ".hidden.yaml",
                "%2ehidden.yaml",
                "CON.yaml",
                "nul.yaml",
                "/etc/passwd",
                "%2fetc%2fpasswd",
                "touring.yaml%20",
                "touring.yaml.",
                "touring.yaml;a=b",
                "touring.yaml%0d%0aX:%20y",
                "touring",
                "touring.YAML",
                "TOURING.yaml",
                "a".repeat(300) + ".yaml",
                "%",
                "%zz",
                "..",
                ".",
                "",
                home.resolve("outside.yaml").toString().substring(1))) {
            for (String path : List.of("/sheets/" + name, "/sheets/" + name + "/look")) {
                Raw answer = asked("GET", path, "");
                assertTrue(
                        answer.status() == 404
                                || answer.status() == 400
                                || answer.status() == 405
                                || (answer.status() == 200 && name.equals("touring.yaml;a=b")),
                        path + ": " + answer.status());
                assertFalse(
                        answer.body().contains("secret-outside")
                                || answer.body().contains("root:"),
                        path);
            }
            Raw answer = asked("POST", "/sheets/" + name + "/set", "version=&path=title&value=Changed");
            assertTrue(answer.status() >= 400 || name.equals("touring.yaml;a=b"), name + ": " + answer.status());
        }
        assertEquals(before, Folders.texts(home));
    }

    @Test
    void aPartOfAPageIsToldBesideIt() throws Exception {
        Raw answer = guarded(asked("GET", "/sheets/none.yaml/look", "", "HX-Request", "true"));
        assertEquals(404, answer.status());
        assertEquals("none", answer.headers().get("hx-reswap"));
        assertTrue(
                answer.body().contains("id=\"faults\"") && answer.body().contains("There is no such page"),
                answer.body());
    }

    @Test
    void whatIsNoRequestIsAnsweredInWords() throws Exception {
        for (String bytes : List.of(
                "GARBAGE\r\n\r\n",
                "GET\r\n\r\n",
                "\u0000\u0001\u0002\r\n\r\n",
                "GET / HTTP/9.9\r\n\r\n",
                "GET / HTTP/1.1\r\nHost " + host() + "\r\n\r\n",
                "POST / HTTP/1.1\r\nHost: " + host() + "\r\nContent-Length: -1\r\n\r\n")) {
            Raw answer = Raw.of(served.port(), bytes.getBytes(java.nio.charset.StandardCharsets.UTF_8));
            assertTrue(answer.status() >= 400 && answer.status() != 500, bytes + answer.status());
        }
    }
}
