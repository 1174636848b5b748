package fitworthy.counter.output;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** An answer that a browser keeps as a file. */
final class Download {

    private Download() {}

    /**
     * Sends a file that is called by its sheet, such as {@code touring-letters.pdf}.
     *
     * @param what the end of its name
     */
    static void send(Context sent, String what, String type, byte[] content) {
        String sheet = sent.pathParam("sheet");
        String name = sheet.substring(0, sheet.lastIndexOf('.')) + "-" + what;
        // Browsers read the second name; the first, in letters that any program takes, is for others.
        sent.header(
                        "Content-Disposition",
                        "attachment; filename=\"" + name.replaceAll("[^A-Za-z0-9 ._-]", "_") + "\"; filename*=UTF-8''"
                                + URLEncoder.encode(name, StandardCharsets.UTF_8)
                                        .replace("+", "%20")
                                        .replace("*", "%2A"))
                .contentType(type)
                .result(content);
    }
}
