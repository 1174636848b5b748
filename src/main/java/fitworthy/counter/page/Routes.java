package fitworthy.counter.page;

import io.javalin.config.RoutesConfig;

/** Something that answers at addresses of its own. */
@FunctionalInterface
public interface Routes {

    void addTo(RoutesConfig routes);
}
