package fitworthy;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The Chromium of this machine, which not every machine has. */
public final class Chromium {

    /** So that it starts anywhere, and asks nothing of the network. */
    public static final List<String> OPTIONS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--disable-dev-shm-usage");

    private Chromium() {}

    /**
     * The first program of these names on the path. Without one the test is told as not run; where a browser has to be there,
     * that is a failure.
     *
     * @param packages what to install for it
     */
    public static Path program(String packages, String... names) {
        Optional<Path> found = Stream.of(
                        System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator))
                .flatMap(folder -> Stream.of(names).map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
        assumeTrue(
                found.isPresent() || "browser".equals(System.getenv("CI")),
                "no " + names[0] + " on this machine, so no page is tried in a browser: apt-get install " + packages);
        return found.orElseThrow();
    }
}
