package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** One run of the program, in process. */
public record Ran(int code, String out, String err) {

    /** A search may take as long as it needs, so that no test depends on how busy the machine is. */
    public static Ran of(String... given) {
        boolean hurried = List.of(given).contains("--seconds") || given.length < 2 || given[1].startsWith("-");
        String[] args = hurried || !Set.of("mend", "compare", "print").contains(given[0])
                ? given
                : Stream.concat(Stream.of(given), Stream.of("--seconds", "900")).toArray(String[]::new);
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Fitworthy.run(
                new PrintWriter(out),
                new PrintWriter(err),
                Map.of("FITWORTHY_CACHE", Books.CACHE.toString(), "FITWORTHY_RULES", Books.RULES.toString()),
                args);
        return new Ran(code, out.toString(), err.toString());
    }

    /** Ends with this code and a message, and with neither output nor a stack trace. */
    void refused(int expected, String message) {
        assertEquals(expected, code, err);
        assertEquals("", out);
        assertTrue(err.contains(message), err);
        assertFalse(err.contains("\tat ") || err.contains("Exception"), err);
    }

    /** Ends with this code and a text of at most eighty columns without colour, and says nothing beside it. */
    public Ran printed(int expected) {
        assertEquals(expected, code, out + err);
        assertEquals("", err);
        assertFalse(out.isEmpty());
        List<String> wide = out.lines().filter(line -> line.length() > 80).toList();
        assertEquals(List.of(), wide);
        assertFalse(out.contains("\u001b"), "an escape sequence");
        return this;
    }

    public Ran says(String text) {
        assertTrue(out.replaceAll("\\s+", " ").contains(text), () -> "'" + text + "' is not in\n" + out);
        return this;
    }

    public Ran saysNot(String text) {
        assertFalse(out.replaceAll("\\s+", " ").contains(text), () -> "'" + text + "' is in\n" + out);
        return this;
    }
}
