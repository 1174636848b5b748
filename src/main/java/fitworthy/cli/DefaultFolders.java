package fitworthy.cli;

import java.nio.file.Path;
import java.util.Map;

/** Where things are when the command line does not say. */
final class DefaultFolders {

    private DefaultFolders() {}

    /** FITWORTHY_RULES, else the folder the launcher names, else ./rules. */
    static Path rules(Map<String, String> environment) {
        String named = environment.getOrDefault("FITWORTHY_RULES", System.getProperty("fitworthy.rules", "rules"));
        return Path.of(named);
    }

    /** FITWORTHY_CACHE, else a folder of ours in the user's cache folder. */
    static Path cache(Map<String, String> environment) {
        String own = environment.get("FITWORTHY_CACHE");
        if (own != null) {
            return Path.of(own);
        }
        String users = environment.get("XDG_CACHE_HOME");
        return (users == null || users.isEmpty() ? Path.of(System.getProperty("user.home"), ".cache") : Path.of(users))
                .resolve("fitworthy");
    }
}
