package fitworthy.counter;

import fitworthy.counter.page.Pages;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.io.EofException;

/** What went wrong, in words that say what to do. More of it is for the line that is logged. */
final class Failed {

    /** What a status means to a person, and what to do about it. */
    private record Told(String title, String mend) {}

    private static final String GO_BACK = "Go back to the sheets, and use the links and buttons of the pages.";
    private static final Map<Integer, Told> TOLD = Map.of(
            400, new Told("What your browser sent cannot be used", GO_BACK),
            403, new Told("You are not let in", "If you are told so again, start the counter anew."),
            404, new Told("There is no such page", "Perhaps a sheet was renamed or deleted. Choose one of the sheets."),
            405, new Told("This address is not asked in this way", GO_BACK),
            408, new Told("What your browser sent did not come to its end", "Try again."),
            409, new Told("This cannot be done now", "Go back and try again."),
            413, new Told("This is more than the counter takes at once", "A form may hold 64 kB. Put less into it."),
            415, new Told("This is of a kind that the counter does not take", GO_BACK),
            429, new Told("Not now", "Then try again."),
            500,
                    new Told(
                            "Something went wrong in the counter",
                            "What was answered before stands in the sheet. Go back and try again. If you are told so again,"
                                    + " report it with the line that stands where the counter was started."));

    /** Those whose cause is put into words by whoever throws it. */
    private static final Set<Integer> SAID = Set.of(400, 403, 409, 422, 429);

    private final Consumer<String> log;

    Failed(Consumer<String> log) {
        this.log = log;
    }

    void addTo(JavalinConfig config) {
        config.routes.exception(HttpResponseException.class, Failed::answer);
        // From below, while a form is read: too much of it, and one without an end.
        config.routes.exception(
                HttpException.RuntimeException.class, (cause, sent) -> answer(sent, cause.getCode(), ""));
        config.routes.exception(EofException.class, (cause, sent) -> answer(sent, 400, ""));
        // Letters of a kind that is not known, or has no name that could be one.
        config.routes.exception(UnsupportedCharsetException.class, (cause, sent) -> answer(sent, 415, ""));
        config.routes.exception(IllegalCharsetNameException.class, (cause, sent) -> answer(sent, 415, ""));
        config.routes.exception(Exception.class, (cause, sent) -> {
            log(sent.method() + " " + sent.path(), cause);
            answer(sent, 500, "");
        });
        config.router.javaLangErrorHandler((response, cause) -> {
            log("a request", cause);
            response.setStatus(500);
        });
    }

    /** In a line, whatever was asked. */
    private void log(String asked, Throwable cause) {
        StackTraceElement[] at = cause.getStackTrace();
        log.accept(("A fault of the counter, at " + asked + ": " + cause + (at.length == 0 ? "" : ", " + at[0]))
                .replaceAll("\\p{Cc}", " "));
    }

    private static void answer(HttpResponseException cause, Context sent) {
        answer(sent, cause.getStatus(), SAID.contains(cause.getStatus()) ? cause.getMessage() : "");
        cause.getDetails().forEach(sent::header);
    }

    private static void answer(Context sent, int status, String said) {
        sent.status(status);
        // A part of a page that was asked for stays as it is, and the person is told beside it.
        boolean isPart = sent.header("HX-Request") != null;
        if (isPart) {
            sent.header("HX-Reswap", "none");
        }
        sent.html(html(isPart ? "failed/beside.jte" : "failed/page.jte", status, said));
    }

    /** A page that tells of a status. */
    static String page(int status) {
        return html("failed/page.jte", status, "");
    }

    private static String html(String template, int status, String said) {
        Told told = told(status);
        return Pages.html(template, Map.of("title", told.title(), "said", said, "mend", told.mend()));
    }

    private static Told told(int status) {
        return TOLD.getOrDefault(status, TOLD.get(status < 500 ? 400 : 500));
    }
}
