package fitworthy.counter;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a server answers to bytes as no client would send them.
 *
 * @param status 0 where it closed without an answer
 * @param headers with names in small letters
 */
record Raw(int status, Map<String, String> headers, String body) {

    private static final int PATIENCE_MS = 60_000;

    /** Sends what is given and waits until the server closes the connection. */
    static Raw of(int port, byte[] request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(PATIENCE_MS);
            socket.getOutputStream().write(request);
            socket.getOutputStream().flush();
            return read(socket.getInputStream());
        }
    }

    /** A request of lines, whose connection is closed after it. @param head without the empty line after it */
    static Raw of(int port, String head, String body) throws IOException {
        return of(port, (head + "\r\nConnection: close\r\n\r\n" + body).getBytes(StandardCharsets.UTF_8));
    }

    private static Raw read(InputStream in) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        try {
            in.transferTo(all);
        } catch (java.net.SocketTimeoutException e) {
            throw e;
        } catch (IOException e) {
            // It would not listen to the end; what it answered before stands.
            all.flush();
        }
        String text = all.toString(StandardCharsets.UTF_8);
        if (!text.startsWith("HTTP/1.1 ")) {
            return new Raw(0, Map.of(), text);
        }
        String[] parts = text.split("\r\n\r\n", 2);
        Map<String, String> headers = new TreeMap<>();
        parts[0].lines()
                .skip(1)
                .forEach(line -> headers.put(
                        line.substring(0, line.indexOf(':')).toLowerCase(java.util.Locale.ROOT),
                        line.substring(line.indexOf(':') + 1).strip()));
        return new Raw(Integer.parseInt(text.substring(9, 12)), headers, parts.length < 2 ? "" : parts[1]);
    }
}
