package fitworthy.source;

import java.net.URISyntaxException;
import java.nio.file.Path;

/** Where the program itself is. */
public final class ProgramFile {

    private ProgramFile() {}

    /** Its jar, or the folder of its classes; absolute. */
    public static Path path() {
        try {
            return Path.of(ProgramFile.class
                            .getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .normalize();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
