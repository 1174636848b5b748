package fitworthy.source;

import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * What was typed wrong where a parser of YAML gave up, which is often a line or more before that place.
 *
 * @param line counted from zero
 * @param column counted from zero
 * @param problem in words that somebody understands who has never heard of YAML
 * @param mend the line as it should be, where that can be told
 */
record YamlSlip(int line, int column, String problem, String mend) {

    private static final String NAME = "[\\p{L}\\d][\\p{L}\\d._-]*";
    private static final Pattern NAMED = Pattern.compile("(\\s*(?:- +)?" + NAME + ":\\s+)(\\S.*)");
    /** Spaces that look like the plain one, as a regular expression. */
    static final String ODD = "[\\u00A0\\u2000-\\u200B\\u202F\\u3000]";

    private static final Pattern ODD_BLANK = Pattern.compile("\\s*(?:- *)?(?:" + NAME + ":)? *(?<odd>" + ODD + ")");
    private static final Pattern NO_BLANK = Pattern.compile("(\\s*(?:- +)?" + NAME + ":)(?!//)(\\S.*)");
    private static final Pattern DASHED = Pattern.compile("(\\s*-)([^\\s-].*)");
    private static final Pattern EQUALS = Pattern.compile("\\s*(?:- +)?(" + NAME + ")\\s*=\\s*(.*)");
    private static final Pattern NO_COLON = Pattern.compile("\\s*(?:- +)?(" + NAME + ")(?:\\s+(.*))?");
    private static final Pattern ITEM = Pattern.compile("( *)(- +)?\\S.*");

    /** Where the parser begins a line. */
    private static final Pattern LINE_END = Pattern.compile("\\r\\n|[\\n\\r\\x{85}\\x{2028}\\x{2029}]");

    private static final int LONGEST_SHOWN = 70;
    private static final int LONGEST_TAIL = 30;

    /** The slip behind what a parser says; empty where it is none of those that people make. */
    static Optional<YamlSlip> behind(String text, MarkedYAMLException e) {
        return e.getProblem() == null || e.getProblemMark() == null
                ? Optional.empty()
                : new Search(LINE_END.split(text, -1), e).slip();
    }

    /** The lines of a text, and where the parser stands in it. */
    private static final class Search {
        private final String[] lines;
        private final String problem;
        private final String context;
        private final int at;
        private final int column;
        /** Where what was being read began. */
        private final int began;

        private final int beganColumn;

        Search(String[] lines, MarkedYAMLException e) {
            this.lines = lines;
            this.problem = e.getProblem();
            this.context = String.valueOf(e.getContext());
            this.at = Math.min(e.getProblemMark().getLine(), lines.length - 1);
            this.column = Math.min(e.getProblemMark().getColumn(), lines[at].length());
            boolean hasBegun = e.getContextMark() != null;
            this.began = hasBegun ? Math.min(e.getContextMark().getLine(), lines.length - 1) : at;
            this.beganColumn = hasBegun ? Math.min(e.getContextMark().getColumn(), lines[began].length()) : column;
        }

        Optional<YamlSlip> slip() {
            if (problem.contains("(TAB)")) {
                return Optional.of(tab());
            }
            if (problem.contains("cannot start any token")
                    || context.contains("block scalar")
                    || context.contains("an alias")
                    || context.contains("an anchor")) {
                return beginning(at);
            }
            if (problem.contains("could not find expected ':'")) {
                return typed(began).or(() -> noColon(began));
            }
            if (problem.contains("mapping values are not allowed")) {
                return secondColon()
                        .or(() -> typed(at))
                        .or(() -> typed(above()))
                        .or(this::indent);
            }
            if (problem.contains("escape")) {
                return Optional.of(new YamlSlip(
                        at,
                        column,
                        "a backslash \\ within double quotes",
                        "single quotes around the text, or no \\ in it"));
            }
            if (context.contains("quoted scalar")) {
                return Optional.of(unclosed(began, beganColumn));
            }
            if (context.contains("flow")) {
                return Optional.of(bracket());
            }
            if (problem.contains("expected <block end>")) {
                return problem.contains("block mapping start") || problem.contains("block sequence start")
                        ? typed(at).or(this::firstDash).or(this::indent)
                        : typed(at).or(this::quotes).or(() -> beginning(at)).or(this::indent);
            }
            return Optional.empty();
        }

        private YamlSlip tab() {
            return lines[at].substring(0, column).isBlank()
                    ? new YamlSlip(
                            at,
                            column,
                            "a tab stands before this line",
                            "spaces in its place, as many as stand before the lines that it belongs with")
                    : new YamlSlip(
                            at,
                            column,
                            "a tab stands here where a space belongs",
                            shown(lines[at].replaceAll("\\t+", " ")));
        }

        /** A slip that shows in a line by itself. */
        private Optional<YamlSlip> typed(int line) {
            String text = lines[line];
            Matcher odd = ODD_BLANK.matcher(text);
            if (odd.lookingAt()) {
                return Optional.of(new YamlSlip(
                        line,
                        odd.start("odd"),
                        "the space here is none that a keyboard types, as in text copied from a page",
                        "the spaces of this line typed anew"));
            }
            Matcher dashed = DASHED.matcher(text);
            if (dashed.matches()) {
                return Optional.of(new YamlSlip(
                        line,
                        dashed.end(1),
                        "no space stands behind the dash",
                        shown(dashed.group(1) + " " + dashed.group(2))));
            }
            Matcher glued = NO_BLANK.matcher(text);
            if (glued.matches()) {
                return Optional.of(new YamlSlip(
                        line,
                        glued.end(1),
                        "no space stands behind the colon",
                        shown(glued.group(1) + " " + glued.group(2))));
            }
            Matcher equals = EQUALS.matcher(text);
            return equals.matches()
                    ? Optional.of(new YamlSlip(
                            line,
                            equals.end(1),
                            "an = stands where a colon belongs",
                            shown(equals.group(1) + ": " + equals.group(2))))
                    : Optional.empty();
        }

        /** A list whose first item has no dash while a later one has. */
        private Optional<YamlSlip> firstDash() {
            int first = at;
            while (first > 0 && (lines[first - 1].isBlank() || blanks(lines[first - 1]) > column)) {
                first--;
            }
            boolean isItem = first < at
                    && first > 0
                    && lines[at].startsWith("- ", column)
                    && !lines[first].stripLeading().startsWith("- ");
            return isItem && lines[first - 1].stripTrailing().endsWith(":")
                    ? Optional.of(new YamlSlip(
                            first,
                            blanks(lines[first]),
                            "no dash stands before the first line of a list",
                            shown("- " + lines[first].strip())))
                    : Optional.empty();
        }

        private Optional<YamlSlip> noColon(int line) {
            Matcher words = NO_COLON.matcher(lines[line]);
            return words.matches()
                    ? Optional.of(new YamlSlip(
                            line,
                            words.end(1),
                            "no colon stands in this line",
                            shown(words.group(1) + ":" + (words.group(2) == null ? "" : " " + words.group(2)))))
                    : Optional.empty();
        }

        private Optional<YamlSlip> secondColon() {
            Matcher named = NAMED.matcher(lines[at]);
            if (!named.matches() || named.start(2) >= column) {
                return Optional.empty();
            }
            return closing(at, named)
                    .or(() -> Optional.of(new YamlSlip(
                            at, column, "a second colon with a space behind it stands in this line", quoted(named))));
        }

        /** More brackets that close than open. */
        private Optional<YamlSlip> closing(int line, Matcher named) {
            String value = named.group(2).strip();
            int more = (int) (value.chars().filter(letter -> letter == '}').count()
                    - value.chars().filter(letter -> letter == '{').count());
            return more <= 0
                    ? Optional.empty()
                    : Optional.of(new YamlSlip(
                            line,
                            named.start(2),
                            "a } closes what no { has opened",
                            shown(named.group(1)
                                    + (value.startsWith("{")
                                            ? value.substring(0, value.length() - more)
                                            : "{".repeat(more) + value))));
        }

        /** A value that begins as none may. */
        private Optional<YamlSlip> beginning(int line) {
            Matcher named = NAMED.matcher(lines[line]);
            if (!named.matches()) {
                return Optional.empty();
            }
            char first = named.group(2).charAt(0);
            Optional<YamlSlip> closing = closing(line, named);
            if (closing.isPresent() || "%@`&*>|{[!".indexOf(first) < 0) {
                return closing;
            }
            return Optional.of(new YamlSlip(
                    line,
                    named.start(2),
                    "a value cannot begin with " + first,
                    first == '%' && named.group(2).matches("%\\s*[\\d.,]+")
                            ? shown(named.group(1) + named.group(2).substring(1).strip() + " %")
                            : quoted(named)));
        }

        /** A quotation that ends before its line does, or that an earlier line has opened and not closed. */
        private Optional<YamlSlip> quotes() {
            Matcher named = NAMED.matcher(lines[at]);
            if (named.matches() && isQuote(named.group(2).charAt(0)) && column > named.start(2) + 1) {
                return Optional.of(
                        new YamlSlip(at, column, "the quotes around this text end before it does", quoted(named)));
            }
            for (int line = at - 1; line >= 0; line--) {
                Matcher opened = NAMED.matcher(lines[line]);
                if (opened.matches()
                        && isQuote(opened.group(2).charAt(0))
                        && opened.group(2).indexOf(opened.group(2).charAt(0), 1) < 0) {
                    return Optional.of(unclosed(line, opened.start(2)));
                }
            }
            return Optional.empty();
        }

        private YamlSlip unclosed(int line, int start) {
            String text = lines[line].stripTrailing();
            // The parser counts no halves of letters, so that it may stand behind the end.
            String right = start < text.length()
                    ? "the same at the end: ..." + text.substring(Math.max(start + 1, text.length() - LONGEST_TAIL))
                            + text.charAt(start)
                    : "the same quotes at the end of the text";
            return new YamlSlip(line, start, "the quotes that open here are not closed", right);
        }

        private YamlSlip bracket() {
            char open = lines[began].isEmpty()
                    ? '['
                    : lines[began].charAt(Math.min(beganColumn, lines[began].length() - 1));
            String close = open == '{' ? "}" : "]";
            boolean isClosed = lines[began].indexOf(close, beganColumn) >= 0;
            return isClosed
                    ? new YamlSlip(
                            at,
                            column,
                            "between brackets a comma is missing, or a text holds one of , : [ ] { }",
                            "a comma between two fields; a text that holds such a sign in quotes")
                    : new YamlSlip(
                            began,
                            beganColumn,
                            "the " + open + " that opens here is not closed",
                            "a " + close + " behind what belongs to it; in quotes a text that only begins with "
                                    + open);
        }

        /** A line that stands straight below none of those it could belong with. */
        private Optional<YamlSlip> indent() {
            Matcher own = ITEM.matcher(lines[at]);
            if (!own.matches()) {
                return Optional.empty();
            }
            int blanks = own.end(1);
            TreeSet<Integer> open = open(own.group(2) != null);
            Integer right = open.ceiling(blanks);
            Integer left = open.floor(blanks);
            if (open.contains(blanks)) {
                return lines[above()].strip().endsWith("}")
                        ? Optional.of(new YamlSlip(
                                at,
                                blanks,
                                "the entry above stands within { } and so has no lines below it",
                                "within those brackets, a comma before it"))
                        : Optional.empty();
            }
            if (right == null && left == null) {
                return Optional.empty();
            }
            String before =
                    left == null ? counted(right) : right == null ? counted(left) : left + " or " + counted(right);
            return Optional.of(new YamlSlip(
                    at,
                    blanks,
                    counted(blanks) + " before this line put it straight below none that it may belong with",
                    before + " before it"));
        }

        /** How far in the names above begin that are not yet behind the parser, or the dashes. */
        private TreeSet<Integer> open(boolean dashes) {
            TreeSet<Integer> open = new TreeSet<>();
            int least = Integer.MAX_VALUE;
            for (int line = at - 1; line >= 0 && least > 0; line--) {
                Matcher item = ITEM.matcher(lines[line]);
                if (!item.matches() || lines[line].stripLeading().startsWith("#")) {
                    continue;
                }
                boolean dashed = item.group(2) != null;
                int name = dashed ? item.end(2) : item.end(1);
                if (name < least && !dashes) {
                    open.add(name);
                }
                if (dashed && item.end(1) < least && dashes) {
                    open.add(item.end(1));
                }
                least = Math.min(least, item.end(1));
            }
            return open;
        }

        private int above() {
            int line = at;
            while (line > 0 && (line == at || lines[line].isBlank())) {
                line--;
            }
            return line;
        }
    }

    private static int blanks(String line) {
        return line.length() - line.stripLeading().length();
    }

    private static String counted(int blanks) {
        return blanks == 1 ? "1 space" : blanks + " spaces";
    }

    private static boolean isQuote(char letter) {
        return letter == '"' || letter == '\'';
    }

    /** A line with its value in quotes that do not stand in it. */
    private static String quoted(Matcher named) {
        String value = named.group(2).strip().replaceAll("^[\\u201C-\\u201E]|[\\u201C-\\u201E]$", "");
        String bare = isQuote(value.charAt(0)) ? value.replaceAll("^.|[\"'].?$", "") : value;
        String inner = bare.indexOf('"') >= 0 && bare.indexOf('\'') >= 0 ? bare.replace('"', '\'') : bare;
        String quote = inner.indexOf('"') >= 0 ? "'" : "\"";
        return shown(named.group(1)) + " " + quote + Words.shortened(inner, LONGEST_SHOWN) + quote;
    }

    private static String shown(String line) {
        return Words.shortened(line.strip(), LONGEST_SHOWN);
    }
}
