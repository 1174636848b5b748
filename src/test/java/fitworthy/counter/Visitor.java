package fitworthy.counter;

import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A client of a counter, in whichever process that runs. */
public final class Visitor {

    private final String counter;
    private final CookieManager cookies = new CookieManager();
    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(cookies)
            .followRedirects(HttpClient.Redirect.NORMAL)
            .build();

    /** @param address that the counter printed, which lets in */
    public Visitor(String address) throws Exception {
        URI in = URI.create(address);
        this.counter = "http://127.0.0.1:" + in.getPort();
        get(in);
    }

    /** The cookie that it was let in with, as it is sent; empty where it was not. */
    String cookie() {
        return cookies.getCookieStore().getCookies().stream()
                .map(cookie -> cookie.getName() + "=" + cookie.getValue())
                .collect(Collectors.joining("; "));
    }

    String at(String path) {
        return counter + path;
    }

    public HttpResponse<String> get(String path) throws Exception {
        return get(URI.create(at(path)));
    }

    /** What is no text. */
    HttpResponse<byte[]> bytes(String path) throws Exception {
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
}
