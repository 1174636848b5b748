package fitworthy.rules;

import fitworthy.source.Fault;
import fitworthy.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Takes a rule file apart into words, signs and texts in quotes, without blanks and comments, and refuses every
 * character that a rule has no need of.
 */
final class Lexer {

    /** Some ten times the longest file of the shipped book. */
    static final int LONGEST = 1 << 16;

    /** Some three times what the shipped book needs; what reads brackets goes as deep as they do. */
    static final int DEEPEST = 8;

    private static final int MOST_FAULTS = 20;
    private static final String SIGNS = "$.:;=!<>&|(),@-";

    private final Place file;
    private final String text;
    private final List<Fault> found = new ArrayList<>();
    private final List<Token> tokens = new ArrayList<>();
    private int at;
    private int line = 1;
    private int lineBegin;
    private int depth;

    private Lexer(Place file, String text) {
        this.file = file;
        this.text = text;
    }

    /** What a file is made of, as far as nothing is wrong with it, with an END behind it. */
    static List<Token> read(Place file, String text, List<Fault> faults) {
        Lexer lexer = new Lexer(file, text);
        lexer.read();
        faults.addAll(lexer.found);
        return lexer.tokens;
    }

    private void read() {
        if (text.length() > LONGEST) {
            fault("the file is longer than " + LONGEST + " characters", "fewer rules; a topic has a few dozen");
            at = text.length();
        }
        while (at < text.length() && found.size() < MOST_FAULTS) {
            char next = text.charAt(at);
            if (next == '\n') {
                lineEnd();
            } else if (next == ' ' || next == '\t' || next == '\r' && text.startsWith("\r\n", at)) {
                at++;
            } else if (next == '/' && text.startsWith("//", at)) {
                comment("\n");
            } else if (next == '/' && text.startsWith("/*", at)) {
                comment("*/");
            } else if (next == '"') {
                quoted();
            } else if (inWord(next)) {
                word(next);
            } else if (SIGNS.indexOf(next) >= 0) {
                sign(next);
            } else {
                strange(next);
                skipLine();
            }
        }
        token(Token.Kind.END, at);
    }

    private void token(Token.Kind kind, int end) {
        tokens.add(new Token(kind, text.substring(at, end), at, place()));
        at = end;
    }

    private void lineEnd() {
        at++;
        line++;
        lineBegin = at;
    }

    private void skipLine() {
        int stop = text.indexOf('\n', at);
        at = stop < 0 ? text.length() : stop;
    }

    private void comment(String end) {
        int begun = line;
        int stop = text.indexOf(end, at + 2);
        boolean closed = stop >= 0 || end.equals("\n");
        // The end of its line does not belong to a comment.
        int after = stop < 0 ? text.length() : end.equals("\n") ? stop : stop + end.length();
        boolean plain = true;
        while (at < after) {
            char next = text.charAt(at);
            if (plain && !visible(next)) {
                plain = false;
                strange(next);
            }
            if (next == '\n') {
                lineEnd();
            } else {
                at++;
            }
        }
        if (!closed) {
            fault(
                    "the comment that begins on line " + begun + " is not closed",
                    "/* a note */, or // before each line");
        }
    }

    /** Plain text; no backslash, since the engine makes Java of the file, in which it begins an escape. */
    private boolean visible(char next) {
        return next >= ' ' && next <= '~' && next != '\\'
                || next == '\n'
                || next == '\t'
                || next == '\r' && text.startsWith("\r\n", at);
    }

    private void quoted() {
        int stop = at + 1;
        while (stop < text.length() && (inWord(text.charAt(stop)) || " .-".indexOf(text.charAt(stop)) >= 0)) {
            stop++;
        }
        if (stop < text.length() && text.charAt(stop) == '"') {
            token(Token.Kind.TEXT, stop + 1);
            return;
        }
        int lineStop = text.indexOf('\n', at);
        int close = text.indexOf('"', at + 1);
        if (close < 0 || lineStop >= 0 && lineStop < close) {
            fault("a quote is not closed on its line", "name == \"mass.loaded\"");
        } else {
            fault("letters, digits, spaces, '.', '-' and '_' alone may stand in quotes", "word == \"not-asked\"");
        }
        skipLine();
    }

    private static boolean inWord(char next) {
        return next >= 'a' && next <= 'z' || next >= 'A' && next <= 'Z' || next >= '0' && next <= '9' || next == '_';
    }

    private static boolean isDigit(char next) {
        return next >= '0' && next <= '9';
    }

    /** A word, or what begins with a digit as far as it may belong to a number. */
    private void word(char first) {
        int end = at + 1;
        while (end < text.length() && (inWord(text.charAt(end)) || isDigit(first) && text.charAt(end) == '.')) {
            end++;
        }
        if (end < text.length() && text.charAt(end) == '$') {
            // To the engine it would belong to the word.
            at = end;
            strange('$');
            skipLine();
            return;
        }
        if (end - at == 4 && text.startsWith("rule", at)) {
            depth = 0;
        }
        token(isDigit(first) ? Token.Kind.NUMBER : Token.Kind.WORD, end);
    }

    private void sign(char first) {
        if (first == '$') {
            int end = at + 1;
            while (end < text.length() && inWord(text.charAt(end))) {
                end++;
            }
            if (end == at + 1 || end < text.length() && text.charAt(end) == '$') {
                at = end == at + 1 ? at : end;
                strange('$');
                skipLine();
                return;
            }
            token(Token.Kind.NAME, end);
            return;
        }
        depth = Math.max(0, depth + (first == '(' ? 1 : first == ')' ? -1 : 0));
        if (depth > DEEPEST) {
            fault(
                    "brackets stand in brackets more than " + DEEPEST + " deep",
                    "several rules, or a measure that says it");
            at = text.length();
            return;
        }
        char second = at + 1 < text.length() ? text.charAt(at + 1) : ' ';
        boolean two = second == '=' && "=!<>".indexOf(first) >= 0 || second == first && "&|".indexOf(first) >= 0;
        token(Token.Kind.SIGN, at + (two ? 2 : 1));
    }

    private void strange(char next) {
        fault(
                next > ' ' && next <= '~'
                        ? (next == '\\' ? "a backslash" : "'" + next + "'") + " has no place in a rule file"
                        : String.format(Locale.ROOT, "the character U+%04X has no place in a rule file", (int) next),
                "plain text; a condition is patterns over Measure, Practice and Advised with plain comparisons");
    }

    private Place place() {
        return new Place(file.file(), line, at - lineBegin + 1);
    }

    private void fault(String problem, String mend) {
        found.add(new Fault(place(), "", problem, mend));
    }
}
