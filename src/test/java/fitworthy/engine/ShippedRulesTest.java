package fitworthy.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.advice.Adviser;
import fitworthy.book.BookChecks;
import fitworthy.sheet.SheetReader;
import fitworthy.source.FaultsException;
import java.io.File;
import java.io.IOException;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the build found of its rule book serves as long as the book has the text that it had then, and never after. */
class ShippedRulesTest {

    @TempDir
    Path home;

    private Path rules;
    private Path classes;

    @BeforeEach
    void built() throws Exception {
        rules = home.resolve("rules");
        BooksOfOneRule.write(rules);
        classes = Files.createDirectory(home.resolve("classes"));
        build();
    }

    @Test
    void anEditedRuleIsNeverReplacedByTheShippedOne() throws Exception {
        assertEquals("0 compiled, 0 found, contract checked", run(classes));
        Path drl = rules.resolve("mass/mass.drl");
        Files.writeString(drl, Files.readString(drl).replace("headroom < 0", "headroom > 0"));
        assertEquals("1 compiled, 1 found, contract checked", run(classes), "compiled anew under the same class names");
        assertEquals("0 compiled, 1 found, contract checked", run(classes), "and kept");
    }

    @Test
    void aBookThatPassedItsContractIsCheckedAgainOnceAnythingInItChanges() throws Exception {
        Path program = packaged();
        assertEquals("0 compiled, 0 found", run(program));
        for (String file : List.of("book.yaml", "sources.yaml", "mass/cards.yaml", "mass/mass.drl")) {
            String right = Files.readString(rules.resolve(file));
            Files.writeString(rules.resolve(file), right + "\n");
            assertTrue(run(program).endsWith("contract checked"), file);
            Files.writeString(rules.resolve(file), right);
        }
        assertEquals("0 compiled, 0 found", run(program), "the text is the first again");
        assertEquals(
                "0 compiled, 0 found, contract checked", run(classes), "classes in a folder may have changed since");
    }

    @Test
    void aBookThatBreaksItsContractIsNeitherUsedNorPackaged() throws Exception {
        Path program = packaged();
        Path cards = rules.resolve("mass/cards.yaml");
        Files.writeString(cards, Files.readString(cards).replace("[mass.loaded]", "[mass.loaded, mass.roof]"));
        assertTrue(run(program).contains("the rule matches the measures"), run(program));
        assertThrows(FaultsException.class, this::build);
    }

    private void build() throws Exception {
        ShippedRulesBuild.main(new String[] {
            rules.toString(), classes.toString(), home.resolve("built").toString()
        });
    }

    /** The program with these classes among its own, in a jar as the build makes it, and this test with it. */
    private Path packaged() throws IOException {
        Path jar = home.resolve("program.jar");
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.IMPLEMENTATION_VERSION, "1");
        // Where the program was packaged before, its folder of classes holds rules too; those of this test replace
        // them.
        Map<String, Path> files = new TreeMap<>();
        Path shipped = Path.of("fitworthy", "compiled");
        for (Path folder : List.of(Path.of("target", "classes"), Path.of("target", "test-classes"), classes)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path each : all.filter(Files::isRegularFile).toList()) {
                    Path name = folder.relativize(each);
                    if (folder == classes || !name.startsWith(shipped)) {
                        files.put(name.toString().replace(File.separatorChar, '/'), each);
                    }
                }
            }
        }
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar), manifest)) {
            for (Map.Entry<String, Path> file : files.entrySet()) {
                out.putNextEntry(new JarEntry(file.getKey()));
                Files.copy(file.getValue(), out);
            }
        }
        return jar;
    }

    /** What {@link #check} says in a program with these classes before all others, and whether the contract was checked. */
    private String run(Path program) throws Exception {
        List<URL> path = new ArrayList<>(List.of(program.toUri().toURL()));
        for (String each : System.getProperty("java.class.path").split(File.pathSeparator)) {
            path.add(Path.of(each).toUri().toURL());
        }
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        try (Program loader = new Program(path)) {
            thread.setContextClassLoader(loader);
            Method check = loader.loadClass(ShippedRulesTest.class.getName())
                    .getDeclaredMethod("check", Path.class, Path.class);
            check.setAccessible(true);
            return check.invoke(null, rules, home.resolve("cache"))
                    + (loader.has(BookChecks.class.getName()) ? ", contract checked" : "");
        } finally {
            thread.setContextClassLoader(before);
        }
    }

    private static final class Program extends URLClassLoader {
        Program(List<URL> path) {
            super(path.toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
        }

        boolean has(String loaded) {
            return findLoadedClass(loaded) != null;
        }
    }

    /** What a run does over the plain sheet, whose mass is within its limit; or what is wrong with the book. */
    static String check(Path rules, Path cache) throws Exception {
        List<String> told = new ArrayList<>();
        try {
            RuleEngine engine = BookLoader.load(rules, cache, told::add);
            int found = Adviser.advise(
                            engine,
                            SheetReader.read(
                                    Path.of("rules/plain-sheet.yaml"),
                                    engine.book().regions().keySet()))
                    .findings()
                    .size();
            return told.size() + " compiled, " + found + " found";
        } catch (FaultsException e) {
            return e.getMessage();
        }
    }
}
