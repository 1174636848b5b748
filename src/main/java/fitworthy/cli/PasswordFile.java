package fitworthy.cli;

import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.InputFile;
import fitworthy.source.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A file that holds a password, and that nobody but its owner may read. */
final class PasswordFile {

    private static final String OPTION = "--password-file";
    private static final Set<PosixFilePermission> OWNERS =
            Set.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE, PosixFilePermission.OWNER_EXECUTE);
    private static final int SHORTEST = 8;
    private static final int LONGEST = 200;

    private PasswordFile() {}

    /** The password: the file's one line. */
    static String read(Path file) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        String text = InputFile.text(file, faults);
        if (!faults.isEmpty()) {
            throw fault(file, faults.get(0).problem(), faults.get(0).mend());
        }
        if (!isOwnersAlone(file)) {
            throw fault(file, "others may read this file", "chmod 600 " + file);
        }
        String password = text.stripTrailing();
        if (password.length() < SHORTEST || password.length() > LONGEST || password.contains("\n")) {
            throw fault(
                    file,
                    "this is no password that keeps anybody out",
                    "one line of " + SHORTEST + " to " + LONGEST + " characters");
        }
        return password;
    }

    private static boolean isOwnersAlone(Path file) {
        try {
            return OWNERS.containsAll(Files.getPosixFilePermissions(file));
        } catch (IOException | UnsupportedOperationException e) {
            // Where the disk does not tell, it keeps nobody out.
            return false;
        }
    }

    private static FaultsException fault(Path file, String problem, String mend) {
        return new FaultsException(List.of(new Fault(Place.of(OPTION), file.toString(), problem, mend)));
    }
}
