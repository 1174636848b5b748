package fitworthy.counter;

import fitworthy.counter.page.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;

/** Lets nobody in but who has the address that was printed. */
final class Guard implements Routes {

    private static final String COOKIE = "fitworthy-counter";
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                    + " connect-src 'self'; font-src 'self'; form-action 'self'; frame-src 'self'; frame-ancestors 'self';"
                    + " base-uri 'none'";

    private final String secret = HexFormat.of().formatHex(random());

    private static byte[] random() {
        byte[] bytes = new byte[24];
        new SecureRandom().nextBytes(bytes);
        return bytes;
    }

    /** What the address has to end with. */
    String key() {
        return secret;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.before(this::look);
    }

    private void look(Context sent) {
        sent.header("Content-Security-Policy", POLICY);
        sent.header("X-Content-Type-Options", "nosniff");
        sent.header("Referrer-Policy", "no-referrer");
        sent.header("Cache-Control", "no-store");
        if (isSecret(sent.queryParam("key"))) {
            Cookie cookie = new Cookie(COOKIE, secret);
            cookie.setHttpOnly(true);
            cookie.setSameSite(SameSite.STRICT);
            cookie.setPath("/");
            sent.cookie(cookie);
            sent.redirect(sent.path());
            sent.skipRemainingHandlers();
        } else if (!isSecret(sent.cookie(COOKIE))) {
            throw new ForbiddenResponse("Open the address that was printed when the counter was started.");
        }
    }

    private boolean isSecret(String given) {
        return MessageDigest.isEqual(
                secret.getBytes(StandardCharsets.UTF_8),
                Optional.ofNullable(given).orElse("").getBytes(StandardCharsets.UTF_8));
    }
}
