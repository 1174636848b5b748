package fitworthy.counter;

import fitworthy.counter.page.Routes;
import io.javalin.config.RoutesConfig;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;

/** Style and script, each known by name: nothing else is served. */
final class Assets implements Routes {

    /** Where they are. They hold nothing of anybody. */
    static final String FOLDER = "/assets/";

    private static final String HTMX = "/META-INF/resources/webjars/htmx.org/2.0.7/dist/htmx.min.js";
    private static final String OWN = "/fitworthy/counter/";
    private static final Map<String, String> FILES = Map.ofEntries(
            Map.entry("htmx.js", HTMX),
            Map.entry("typed.js", OWN + "typed.js"),
            Map.entry("leaving.js", OWN + "leaving.js"),
            Map.entry("panes.js", OWN + "panes.js"),
            Map.entry("counter.js", OWN + "counter.js"),
            Map.entry("plan.js", OWN + "plan.js"),
            Map.entry("side.js", OWN + "side.js"),
            Map.entry("told.js", OWN + "told.js"),
            Map.entry("output.js", OWN + "output.js"),
            Map.entry("base.css", OWN + "base.css"),
            Map.entry("plan.css", OWN + "plan.css"),
            Map.entry("side.css", OWN + "side.css"),
            Map.entry("told.css", OWN + "told.css"),
            Map.entry("output.css", OWN + "output.css"));

    @Override
    public void addTo(RoutesConfig routes) {
        FILES.forEach((name, resource) -> {
            byte[] content = content(resource);
            String type = name.endsWith(".js") ? "text/javascript; charset=utf-8" : "text/css; charset=utf-8";
            routes.get(FOLDER + name, sent -> sent.contentType(type).result(content));
        });
    }

    private static byte[] content(String resource) {
        try (InputStream in = Assets.class.getResourceAsStream(resource)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
