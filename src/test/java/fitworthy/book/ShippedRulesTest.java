package fitworthy.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.advice.Adviser;
import fitworthy.sheet.SheetReader;
import java.io.File;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rules compiled among the program's classes serve as long as the rule files have their text, and never after. */
class ShippedRulesTest {

    @TempDir
    Path home;

    @Test
    void anEditedRuleIsNeverReplacedByTheShippedOne() throws Exception {
        Path rules = home.resolve("rules");
        BooksOfOneRule.write(rules);
        Path classes = Files.createDirectory(home.resolve("classes"));
        ShippedRules.main(new String[] {rules.toString(), classes.toString()});
        assertEquals("0 compiled, 0 found", run(classes, rules));
        Path drl = rules.resolve("mass/mass.drl");
        Files.writeString(drl, Files.readString(drl).replace("headroom < 0", "headroom > 0"));
        assertEquals("1 compiled, 1 found", run(classes, rules), "compiled anew under the same class names");
        assertEquals("0 compiled, 1 found", run(classes, rules), "and kept");
    }

    /** Runs {@link #check} in a program that has these classes among its own. */
    private String run(Path classes, Path rules) throws Exception {
        List<URL> path = new ArrayList<>(List.of(classes.toUri().toURL()));
        for (String each : System.getProperty("java.class.path").split(File.pathSeparator)) {
            path.add(Path.of(each).toUri().toURL());
        }
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        try (URLClassLoader program = new URLClassLoader(path.toArray(URL[]::new),
                ClassLoader.getPlatformClassLoader())) {
            thread.setContextClassLoader(program);
            Method check = program.loadClass(ShippedRulesTest.class.getName())
                    .getDeclaredMethod("check", Path.class, Path.class);
            check.setAccessible(true);
            return (String) check.invoke(null, rules, home.resolve("cache"));
        } finally {
            thread.setContextClassLoader(before);
        }
    }

    /** What a run does over the plain sheet, whose mass is within its limit. */
    static String check(Path rules, Path cache) throws Exception {
        List<String> told = new ArrayList<>();
        Book book = BookLoader.load(rules, cache, told::add);
        int found = Adviser.advise(book, SheetReader.read(Path.of("rules/plain-sheet.yaml"), book.regions().keySet()))
                .findings().size();
        return told.size() + " compiled, " + found + " found";
    }
}
