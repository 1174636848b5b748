package fitworthy.counter.page;

import fitworthy.counter.desk.Desk;
import fitworthy.counter.desk.OpenSheet;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Optional;

/** What a request says. */
public final class Sent {

    private Sent() {}

    /** A field of its form; empty where it has none of this name. */
    public static String form(Context sent, String name) {
        return Optional.ofNullable(sent.formParam(name)).orElse("");
    }

    /** A part of its address behind the question mark; empty where it has none of this name. */
    public static String query(Context sent, String name) {
        return Optional.ofNullable(sent.queryParam(name)).orElse("");
    }

    /** The sheet that it is about. */
    public static OpenSheet sheet(Context sent, Desk desk) {
        return desk.sheet(sent.pathParam("sheet")).orElseThrow(() -> new NotFoundResponse("no such sheet"));
    }
}
