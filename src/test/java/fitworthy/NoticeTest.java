package fitworthy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The notice beside the program names what is shipped with it, no less and no more. */
class NoticeTest {

    private static final Path NOTICES = Path.of("src/main/notice");
    private static final Path SHIPPED = Path.of("target/fitworthy/lib");

    /** A name, perhaps of several files, a licence and where its text is, with two spaces or more between. */
    private static final Pattern LINE = Pattern.compile("([a-z][\\w.*-]+) {2,}(\\S.*?) {2,}(\\S+)");

    private static final Pattern FOLDER = Pattern.compile("FILE IN LIB/(\\w+)");

    private record Entry(String folder, String name, String text) {

        boolean names(Path jar) {
            Path inLib =
                    FileSystems.getDefault().getPath(folder.isEmpty() ? name + ".jar" : folder + "/" + name + ".jar");
            return FileSystems.getDefault().getPathMatcher("glob:" + inLib).matches(jar);
        }
    }

    @Test
    void namesEveryJarOnceAndNoOther() throws IOException {
        List<Entry> entries = entries();
        List<Path> jars = jars();
        List<String> wrong = new ArrayList<>();
        for (Path jar : jars) {
            long times = entries.stream().filter(entry -> entry.names(jar)).count();
            if (times != 1) {
                wrong.add(jar + " is named " + times + " times; is it left of an earlier build?");
            }
        }
        for (Entry entry : entries) {
            if (jars.stream().noneMatch(entry::names)) {
                wrong.add(entry.name() + " is named, and not shipped");
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void everyTextOfALicenceIsWhereItSays() throws IOException {
        for (Entry entry : entries()) {
            if (entry.text().equals("inside")) {
                for (Path jar : jars()) {
                    assertTrue(!entry.names(jar) || holdsALicence(jar), jar + " holds no licence");
                }
            } else if (!entry.text().equals("../LICENSE")) {
                assertTrue(Files.exists(NOTICES.resolve("licences").resolve(entry.text())), entry.text());
            }
        }
    }

    private static List<Entry> entries() throws IOException {
        List<Entry> entries = new ArrayList<>();
        String folder = "";
        for (String line : Files.readAllLines(NOTICES.resolve("NOTICE"))) {
            Matcher heading = FOLDER.matcher(line);
            if (heading.lookingAt()) {
                folder = heading.group(1).toLowerCase(Locale.ROOT);
            }
            Matcher matcher = LINE.matcher(line);
            if (matcher.matches()) {
                entries.add(new Entry(folder, matcher.group(1), matcher.group(3)));
            }
        }
        return entries;
    }

    /** What stands in lib but the program's own jar. */
    private static List<Path> jars() throws IOException {
        try (Stream<Path> all = Files.walk(SHIPPED)) {
            return all.filter(path -> path.toString().endsWith(".jar"))
                    .map(SHIPPED::relativize)
                    .filter(jar -> !jar.toString().startsWith("fitworthy-"))
                    .sorted()
                    .toList();
        }
    }

    private static boolean holdsALicence(Path jar) throws IOException {
        try (JarFile file = new JarFile(SHIPPED.resolve(jar).toFile())) {
            return file.stream().anyMatch(inside -> inside.getName().matches("(.*/)?LICENSE(\\.txt)?"));
        }
    }
}
