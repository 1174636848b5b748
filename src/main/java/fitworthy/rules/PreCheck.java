package fitworthy.rules;

import fitworthy.source.Fault;
import fitworthy.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Looks over the characters of a rule file before the engine's parser sees it, since that parser takes time that
 * doubles with every square bracket, cast or call inside another, and a stack frame for every round one.
 */
public final class PreCheck {

    /** Some ten times the longest file of the shipped book. */
    public static final int LONGEST = 1 << 16;

    static final int DEEPEST = 8;
    private static final int MOST_FAULTS = 20;

    private static final Pattern WORD = Pattern.compile("[\\w .-]*");
    private static final Pattern PLAIN = Pattern.compile("[\\w$.:;=!<>&|(),@ \\t-]");
    /** Round brackets with only names between them and a value behind: to the parser perhaps a cast. */
    private static final Pattern CAST = Pattern.compile("\\([^()=\"]*\\)\\s*[\\w($\"!]");

    private static final Pattern TWICE = Pattern.compile("[!-]\\s*[!-]");
    private static final Set<String> JOINING = Set.of("and", "or", "not", "exists");

    private final Place file;
    private final String text;
    private final List<Fault> found = new ArrayList<>();
    private final StringBuilder bare = new StringBuilder();
    private int at;
    private int line = 1;
    private int depth;

    private PreCheck(Place file, String text) {
        this.file = file;
        this.text = text;
    }

    /** Whether the parser may be given the text; adds what is wrong with it. */
    static boolean plain(Place file, String text, List<Fault> faults) {
        PreCheck lexis = new PreCheck(file, text);
        lexis.read();
        faults.addAll(lexis.found);
        return lexis.found.isEmpty();
    }

    private void read() {
        if (text.length() > LONGEST) {
            fault("the file is longer than " + LONGEST + " characters", "fewer rules; a topic has a few dozen");
            return;
        }
        while (at < text.length() && found.size() < MOST_FAULTS) {
            if (text.startsWith("//", at)) {
                comment("\n", 0);
            } else if (text.startsWith("/*", at)) {
                comment("*/", 2);
            } else if (text.charAt(at) == '"') {
                word();
            } else {
                plain(text.charAt(at));
            }
        }
        Matcher cast = CAST.matcher(bare);
        while (found.isEmpty() && cast.find()) {
            if (!followsAName(cast.start())) {
                fault(
                        cast.start(),
                        "a value follows brackets that compare nothing",
                        "(value < limit || known), joined by && or ||");
            }
        }
        Matcher twice = TWICE.matcher(bare);
        if (found.isEmpty() && twice.find()) {
            fault(twice.start(), "'!' or '-' stands twice", "!known");
        }
    }

    /** A comment, of which only the line ends are kept. */
    private void comment(String end, int length) {
        int stop = text.indexOf(end, at + 2);
        int after = stop < 0 ? text.length() : stop + length;
        while (at < after) {
            char each = text.charAt(at);
            if (!visible(each)) {
                strange(each);
                return;
            }
            bare.append(each == '\n' ? "\n" : " ");
            step();
        }
    }

    private void word() {
        int stop = text.indexOf('"', at + 1);
        String inside = stop < 0 ? null : text.substring(at + 1, stop);
        if (inside == null || inside.indexOf('\n') >= 0) {
            fault("a quote is not closed on its line", "name == \"mass.loaded\"");
            nextLine();
        } else if (!WORD.matcher(inside).matches()) {
            fault("letters, digits, spaces, '.', '-' and '_' alone may stand in quotes", "word == \"not-asked\"");
            nextLine();
        } else {
            bare.append("\"\"");
            at = stop + 1;
        }
    }

    private void plain(char each) {
        boolean lineEnd = each == '\n' || each == '\r' && text.startsWith("\r\n", at);
        if (!lineEnd && !PLAIN.matcher(String.valueOf(each)).matches()) {
            strange(each);
            return;
        }
        depth += each == '(' ? 1 : each == ')' ? -1 : 0;
        if (depth > DEEPEST) {
            fault(
                    "brackets stand in brackets more than " + DEEPEST + " deep",
                    "several rules, or a measure that says it");
            at = text.length();
            return;
        }
        bare.append(each);
        step();
    }

    private boolean visible(char each) {
        return each >= ' ' && each <= '~' && each != '\\'
                || each == '\n'
                || each == '\t'
                || each == '\r' && text.startsWith("\r\n", at);
    }

    private void strange(char each) {
        fault(
                each > ' ' && each <= '~'
                        ? (each == '\\' ? "a backslash" : "'" + each + "'") + " has no place in a rule file"
                        : String.format(Locale.ROOT, "the character U+%04X has no place in a rule file", (int) each),
                "plain text; a condition is patterns over Measure, Practice and Advised with plain comparisons");
        nextLine();
    }

    private void step() {
        line += text.charAt(at) == '\n' ? 1 : 0;
        at++;
    }

    private void nextLine() {
        int stop = text.indexOf('\n', at);
        at = stop < 0 ? text.length() : stop;
    }

    /** Whether brackets that open here belong to a name before them: a pattern, or a call, which is refused later. */
    private boolean followsAName(int open) {
        int end = open;
        while (end > 0 && Character.isWhitespace(bare.charAt(end - 1))) {
            end--;
        }
        int begin = end;
        while (begin > 0 && Character.isJavaIdentifierPart(bare.charAt(begin - 1))) {
            begin--;
        }
        String name = bare.substring(begin, end);
        return !name.isEmpty() && !JOINING.contains(name);
    }

    private void fault(int place, String problem, String mend) {
        line = 1
                + (int) bare.substring(0, place)
                        .chars()
                        .filter(each -> each == '\n')
                        .count();
        fault(problem, mend);
    }

    private void fault(String problem, String mend) {
        found.add(new Fault(file.onLine(line), "", problem, mend));
    }
}
