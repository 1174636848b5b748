package fitworthy.cli;

import fitworthy.source.ProgramFile;
import java.nio.file.Path;
import java.util.Map;

/** Where things are when the command line does not say. */
final class DefaultFolders {

    private DefaultFolders() {}

    /** FITWORTHY_RULES, else what lies beside the program. */
    static Path rules(Map<String, String> environment) {
        String named = environment.get("FITWORTHY_RULES");
        return named == null ? rules(ProgramFile.path()) : Path.of(named);
    }

    /**
     * Beside the folder that the program is in. What a build makes has none: it takes the rules of the project, so that
     * an edit shows in the next run.
     *
     * @param program absolute
     */
    static Path rules(Path program) {
        Path home = program.getParent().getParent();
        boolean built = home.endsWith(Path.of("target", "fitworthy"));
        return (built ? home.getParent().getParent() : home).resolve("rules");
    }

    /** FITWORTHY_CACHE, else a folder of ours in the user's cache folder. */
    static Path cache(Map<String, String> environment) {
        String own = environment.get("FITWORTHY_CACHE");
        if (own != null) {
            return Path.of(own);
        }
        String users = environment.get("XDG_CACHE_HOME");
        if (users != null && !users.isEmpty()) {
            return Path.of(users, "fitworthy");
        }
        // As the launcher does; Java itself knows no home of a user whom the machine has no entry for.
        String home = environment.getOrDefault("HOME", System.getProperty("user.home"));
        return Path.of(home, ".cache", "fitworthy");
    }
}
