package fitworthy.counter;

import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import java.time.Duration;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.SizeLimitHandler;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** How the server listens, and how much it takes from whoever sends. */
final class Listening {

    /** More than any form of the counter has, bytes. */
    static final int LARGEST_BODY = 1 << 16;

    /** How long a connection may stay open with nothing sent on it, and how long a request may. */
    private static final Duration OPEN = Duration.ofSeconds(30);

    private static final Duration PATIENCE = Duration.ofSeconds(5);

    /** The same once the counter is closed, so that a browser that keeps its connection does not hold it up. */
    private static final Duration CLOSING = Duration.ofMillis(100);

    private static final int MOST_THREADS = 32;

    private Listening() {}

    static void at(Serving serving, JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.prefer405over404 = true;
        config.http.maxRequestSize = LARGEST_BODY;
        config.http.compressionStrategy = CompressionStrategy.NONE;
        config.jetty.threadPool = new QueuedThreadPool(MOST_THREADS, 4);
        config.jetty.modifyHttpConfiguration(Listening::bound);
        config.jetty.addConnector((server, http) -> {
            ServerConnector connector = new ServerConnector(server, 1, 1, new HttpConnectionFactory(http));
            connector.setHost(serving.address().getHostAddress());
            connector.setPort(serving.port());
            connector.setIdleTimeout(OPEN.toMillis());
            connector.setShutdownIdleTimeout(CLOSING.toMillis());
            return connector;
        });
        config.jetty.modifyServer(server -> {
            server.setStopTimeout(PATIENCE.toMillis());
            server.setErrorHandler(new BelowPages());
            server.insertHandler(new SizeLimitHandler(LARGEST_BODY, -1));
        });
    }

    private static void bound(HttpConfiguration http) {
        http.setSendServerVersion(false);
        http.setSendXPoweredBy(false);
        http.setIdleTimeout(PATIENCE.toMillis());
        // A body that comes in drop by drop would never be idle.
        http.setMinRequestDataRate(10);
    }
}
