package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DefaultFoldersTest {

    @Test
    void theRulesLieBesideTheProgramWhereverItWasUnpacked() {
        assertEquals(
                Path.of("/home/me/my tools/fitworthy-0.1.0/rules"),
                DefaultFolders.rules(Path.of("/home/me/my tools/fitworthy-0.1.0/lib/fitworthy-0.1.0.jar")));
        assertEquals(
                Path.of("/target/fitworthy-0.1.0/rules"),
                DefaultFolders.rules(Path.of("/target/fitworthy-0.1.0/lib/fitworthy-0.1.0.jar")));
    }

    @Test
    void whatABuildMakesTakesTheRulesOfTheProject() {
        assertEquals(
                Path.of("/work/fitworthy/rules"),
                DefaultFolders.rules(Path.of("/work/fitworthy/target/fitworthy/lib/fitworthy-0.1.0.jar")));
        assertEquals(Path.of("/work/fitworthy/rules"), DefaultFolders.rules(Path.of("/work/fitworthy/target/classes")));
        assertEquals(Path.of("rules").toAbsolutePath(), DefaultFolders.rules(Map.of()));
    }

    @Test
    void aFolderThatIsNamedComesFirst() {
        assertEquals(Path.of("mine"), DefaultFolders.rules(Map.of("FITWORTHY_RULES", "mine")));
    }

    @Test
    void whatIsKeptLiesWhereTheLauncherKeepsItsOwn() {
        Map<String, String> home = Map.of("HOME", "/home/me");
        assertEquals(Path.of("/home/me/.cache/fitworthy"), DefaultFolders.cache(home));
        assertEquals(Path.of(System.getProperty("user.home"), ".cache", "fitworthy"), DefaultFolders.cache(Map.of()));
        assertEquals(
                Path.of("/var/mine/fitworthy"),
                DefaultFolders.cache(Map.of("HOME", "/home/me", "XDG_CACHE_HOME", "/var/mine")));
        assertEquals(
                Path.of("/home/me/.cache/fitworthy"),
                DefaultFolders.cache(Map.of("HOME", "/home/me", "XDG_CACHE_HOME", "")));
        assertEquals(Path.of("here"), DefaultFolders.cache(Map.of("HOME", "/home/me", "FITWORTHY_CACHE", "here")));
    }
}
