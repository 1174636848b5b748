package fitworthy.counter.page;

import io.javalin.http.Context;
import java.util.Map;

/** What a browser may do with an answer. */
public final class Policy {

    private static final String CONTENT = "Content-Security-Policy";

    /** Sent with everything: a page has style and script of the counter's own files alone, and stands in no other page. */
    public static final Map<String, String> OF_A_PAGE = Map.of(
            CONTENT,
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self';"
                    + " form-action 'self'; frame-src 'self'; frame-ancestors 'none'; base-uri 'none'",
            "X-Content-Type-Options",
            "nosniff",
            // Told to no other place; where it is never told, forms come without their origin.
            "Referrer-Policy",
            "same-origin",
            "Cross-Origin-Resource-Policy",
            "same-origin",
            "Cache-Control",
            "no-store");

    private static final String OF_A_PRINT =
            "sandbox allow-popups allow-popups-to-escape-sandbox; default-src 'none'; style-src 'unsafe-inline';"
                    + " img-src data:; font-src data:; frame-ancestors 'self'; base-uri 'none'; form-action 'none'";

    private Policy() {}

    /** For a printed document, which brings its style along: no script, nothing of the counter, perhaps in a frame of it. */
    public static void ofAPrint(Context sent) {
        sent.header(CONTENT, OF_A_PRINT);
    }
}
