package fitworthy.counter;

import fitworthy.Books;
import fitworthy.advice.View;
import fitworthy.counter.desk.Desk;
import fitworthy.counter.desk.OpenSheet;
import fitworthy.counter.desk.SheetFolder;
import fitworthy.shelf.Shelves;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A counter on a copy of the shipped sheets, and a client that has opened its address. */
public final class Served implements AutoCloseable {

    private final Desk desk;
    private final Counter counter;
    private final CookieManager cookies = new CookieManager();
    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(cookies)
            .followRedirects(HttpClient.Redirect.NORMAL)
            .build();

    private Served(Desk desk, Counter counter) {
        this.desk = desk;
        this.counter = counter;
    }

    /** @param folder gets the shipped sheets and their shelf */
    public static Served copyIn(Path folder) throws Exception {
        copy(Path.of("scenarios"), folder);
        return in(folder);
    }

    /** @param folder whose sheets are served as they are */
    public static Served in(Path folder) throws Exception {
        return in(folder, Serving.here(0, System.err::println));
    }

    static Served in(Path folder, Serving serving) throws Exception {
        View view = new View(Books.engine(), null, null, Shelves.beside());
        Desk desk = new Desk(new SheetFolder(folder), view, Books.RULES);
        Served served = new Served(desk, new Counter(desk, serving));
        served.get(URI.create(served.counter.address()));
        return served;
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
    }

    OpenSheet sheet(String name) {
        return desk.sheet(name).orElseThrow();
    }

    /** The address that lets in. */
    public String address() {
        return counter.address();
    }

    int port() {
        return counter.port();
    }

    /** The cookie that the client was let in with, as it is sent; empty where it was not. */
    String cookie() {
        return cookies.getCookieStore().getCookies().stream()
                .map(cookie -> cookie.getName() + "=" + cookie.getValue())
                .collect(Collectors.joining("; "));
    }

    public String at(String path) {
        return "http://127.0.0.1:" + counter.port() + path;
    }

    public HttpResponse<String> get(String path) throws Exception {
        return get(URI.create(at(path)));
    }

    /** What is no text. */
    public HttpResponse<byte[]> bytes(String path) throws Exception {
        return client.send(
                HttpRequest.newBuilder(URI.create(at(path))).build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    private HttpResponse<String> get(URI address) throws Exception {
        return client.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** A form as a page of the counter sends it. @param fields names and values in turn */
    public HttpResponse<String> post(String path, String... fields) throws Exception {
        String body = IntStream.range(0, fields.length / 2)
                .mapToObj(i -> encoded(fields[2 * i]) + "=" + encoded(fields[2 * i + 1]))
                .collect(Collectors.joining("&"));
        HttpRequest request = HttpRequest.newBuilder(URI.create(at(path)))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", at(""))
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    @Override
    public void close() {
        counter.close();
    }
}
