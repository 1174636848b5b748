package fitworthy.counter;

import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import io.javalin.http.TooManyRequestsResponse;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;

/**
 * Lets in who has the address that was printed or, where there is a password, who knows it. Either is asked for once and
 * exchanged for a cookie.
 */
final class Door implements Routes {

    private static final String ENTRY = "/enter";

    private final String cookie = random();
    private final String key = random();
    private final Optional<String> password;
    private final Tries tries = new Tries(System::nanoTime);

    Door(Optional<String> password) {
        this.password = password;
    }

    private static String random() {
        byte[] bytes = new byte[24];
        new SecureRandom().nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    /** What an address that lets in ends with. */
    String entry() {
        return password.isPresent() ? "/" : "/?key=" + key;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.before(this::look);
        if (password.isPresent()) {
            routes.get(ENTRY, sent -> ask(sent, ""));
            routes.post(ENTRY, this::enter);
        }
    }

    private void look(Context sent) {
        String given = sent.queryParam("key");
        if (given != null && password.isEmpty() && isSame(key, given)) {
            letIn(sent, sent.path());
            sent.skipRemainingHandlers();
        } else if (!isForAnybody(sent) && !isSame(cookie, sent.cookie(cookieName(sent)))) {
            if (password.isEmpty() || sent.header("HX-Request") != null) {
                throw new ForbiddenResponse(
                        password.isEmpty()
                                ? "Open the address that was printed when the counter was started."
                                : "Load this page anew and enter the password.");
            }
            sent.redirect(ENTRY, HttpStatus.SEE_OTHER);
            sent.skipRemainingHandlers();
        }
    }

    /** The form for the password, and what it is drawn with. */
    private boolean isForAnybody(Context sent) {
        return sent.path().startsWith(Assets.FOLDER)
                || (password.isPresent() && sent.path().equals(ENTRY));
    }

    private static void ask(Context sent, String fault) {
        sent.html(Pages.html("enter.jte", Map.of("address", ENTRY, "fault", fault)));
    }

    private void enter(Context sent) {
        if (tries.areOver()) {
            throw new TooManyRequestsResponse("There were too many wrong passwords. Wait for half a minute.");
        }
        if (isSame(password.orElseThrow(), sent.formParam("password"))) {
            tries.right();
            letIn(sent, "/");
        } else {
            tries.wrong();
            sent.status(HttpStatus.FORBIDDEN);
            ask(sent, "This is not the password. It stands in the file that the counter was started with.");
        }
    }

    private void letIn(Context sent, String path) {
        Cookie let = new Cookie(cookieName(sent), cookie);
        let.setHttpOnly(true);
        let.setSameSite(SameSite.STRICT);
        let.setPath("/");
        sent.cookie(let);
        sent.redirect(path, HttpStatus.SEE_OTHER);
    }

    /** By its port, since a browser keeps cookies by machine alone. */
    private static String cookieName(Context sent) {
        return "fitworthy-" + sent.req().getLocalPort();
    }

    /** Takes as long whatever is given. */
    private static boolean isSame(String right, String given) {
        return MessageDigest.isEqual(
                bytes(right), bytes(Optional.ofNullable(given).orElse("")));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
