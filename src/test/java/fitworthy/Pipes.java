package fitworthy;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;

/** Pipes with a name, which whoever opens one waits on. */
public final class Pipes {

    private Pipes() {}

    /** Makes one, where the system can; elsewhere the test is passed over. */
    public static Path make(Path path) throws InterruptedException {
        try {
            Process made = new ProcessBuilder("mkfifo", path.toString())
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            assumeTrue(made.waitFor() == 0, "no pipe can be made here");
        } catch (IOException e) {
            assumeTrue(false, "there is no mkfifo here");
        }
        return path;
    }
}
