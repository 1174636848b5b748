package fitworthy.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the launcher for Windows, which no test can run: follows the few kinds of lines that it has, and refuses others.
 */
record WindowsLauncher(List<String> lines) {

    private static final Pattern SET = Pattern.compile("set \"(\\w+)=(.*)\"");
    private static final Pattern FOR = Pattern.compile("for %%c in \\(([a-z ]+)\\) do if \"%~1\"==\"%%c\" (set .*)");
    /** Finds a Java, each way only where those before found none. */
    private static final List<String> JAVA = List.of(
            "if not exist \"%java%\" if defined JAVA_HOME set \"java=%JAVA_HOME%\\bin\\java.exe\"",
            "if not exist \"%java%\" for %%j in (java.exe) do set \"java=%%~$PATH:j\"",
            "if not exist \"%java%\" (",
            "    echo fitworthy: no java found; install Java 17 or later, or set JAVA_HOME>&2",
            "    exit /b 70",
            ")");
    /** The last, so that nothing comes between Java's exit code and the script's. */
    private static final String END = "exit /b %errorlevel%";

    static WindowsLauncher read() throws IOException {
        return new WindowsLauncher(Files.readAllLines(Path.of("src/main/launcher/fitworthy.cmd")).stream()
                .filter(line -> !line.isEmpty() && !line.startsWith("rem "))
                .toList());
    }

    /**
     * What Java is given.
     *
     * @param folder of the script, ending with a backslash
     * @param command the one word that it is started with
     */
    List<String> given(String folder, String command) {
        Map<String, String> set = new HashMap<>(Map.of("~dp0", folder, "*", command.isEmpty() ? "\"\"" : command));
        List<String> left = new ArrayList<>(lines);
        expect("@echo off", left.remove(0));
        expect("setlocal", left.remove(0));
        expect(END, left.remove(left.size() - 1));
        String last = left.remove(left.size() - 1);
        for (String line : left) {
            Matcher some = FOR.matcher(line);
            if (!some.matches()) {
                set(line, set);
            } else if (List.of(some.group(1).split(" ")).contains(command)) {
                set(some.group(2), set);
            }
        }
        expect("\"%java%\"", last.substring(0, 8));
        expect(folder + "..\\java\\bin\\java.exe", set.get("java"));
        return words(expanded(last.substring(8), set));
    }

    private static void set(String line, Map<String, String> set) {
        Matcher one = SET.matcher(line);
        if (one.matches()) {
            set.put(one.group(1), expanded(one.group(2), set));
        } else if (!JAVA.contains(line)) {
            throw new AssertionError("no test follows this line: " + line);
        }
    }

    private static String expanded(String text, Map<String, String> set) {
        return Pattern.compile("%(~dp0|\\*|(\\w+)%)")
                .matcher(text)
                .replaceAll(name ->
                        Matcher.quoteReplacement(set.get(name.group(2) == null ? name.group(1) : name.group(2))));
    }

    /** Apart where there is a space outside of quotes. */
    private static List<String> words(String line) {
        return Pattern.compile("(?:[^ \"]|\"[^\"]*\")+")
                .matcher(line)
                .results()
                .map(word -> word.group().replace("\"", ""))
                .toList();
    }

    private static void expect(String right, String there) {
        if (!there.equals(right)) {
            throw new AssertionError("not '" + right + "' but: " + there);
        }
    }
}
