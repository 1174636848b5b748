package fitworthy.rules;

import fitworthy.source.Fault;
import fitworthy.source.Place;
import java.util.List;

/** A rule file taken apart, read from its beginning to its end. */
final class Tokens {

    private static final int MOST_FAULTS = 100;

    static final String EXAMPLE = "rule \"mass.gvm-over\" when $m : Measure(name == \"mass.loaded\", headroom < 0)"
            + " then advice.give(\"mass.gvm-over\", $m); end";

    /** What follows cannot be made sense of; the fault is told already. */
    static final class Unreadable extends Exception {
        private Unreadable(String problem) {
            super(problem, null, false, false);
        }
    }

    private final String text;
    private final List<Token> tokens;
    private final List<Fault> faults;
    private int at;

    /** @param tokens the last of them an END */
    Tokens(String text, List<Token> tokens, List<Fault> faults) {
        this.text = text;
        this.tokens = tokens;
        this.faults = faults;
    }

    Token peek() {
        return tokens.get(at);
    }

    Token second() {
        return tokens.get(Math.min(at + 1, tokens.size() - 1));
    }

    Token next() {
        Token next = peek();
        at = Math.min(at + 1, tokens.size() - 1);
        return next;
    }

    boolean at(String word) {
        return peek().is(word);
    }

    boolean ended() {
        return peek().is(Token.Kind.END);
    }

    /** Reads a word or sign if it is the next. */
    boolean take(String word) {
        boolean taken = at(word);
        if (taken) {
            next();
        }
        return taken;
    }

    Token need(String word) throws Unreadable {
        if (!at(word)) {
            throw misplaced("'" + word + "'");
        }
        return next();
    }

    /** To the next rule, or to the end. */
    void skipRule() {
        while (!ended() && !at("rule")) {
            next();
        }
    }

    /** Whether here the condition of a rule has to be behind. */
    boolean pastCondition() {
        return ended() || at("then") || at("rule");
    }

    /** To the bracket that closes what is open, if there is one in this condition. */
    void skipPattern() {
        skip(false);
    }

    /** To the comma or bracket behind a comparison, if there is one in this condition. */
    void skipComparison() {
        skip(true);
    }

    private void skip(boolean toComma) {
        int depth = 0;
        while (!pastCondition() && (depth > 0 || !at(")") && !(toComma && at(",")))) {
            depth += at("(") ? 1 : at(")") ? -1 : 0;
            next();
        }
    }

    /** Back to a token read before. */
    void back(Token first) {
        while (peek().begin() > first.begin()) {
            at--;
        }
    }

    /** What is written from a token up to the one before the next. */
    String writtenFrom(Token first) {
        return at == 0 || tokens.get(at - 1).begin() < first.begin()
                ? ""
                : text.substring(first.begin(), tokens.get(at - 1).end());
    }

    /** Whether a comment stands between the beginning of a token and the next. */
    boolean commentSince(Token first) {
        // A stroke stands nowhere but in comments.
        return writtenFrom(first).indexOf('/') >= 0;
    }

    /** Whether so much is wrong that what else there is would only hide it. */
    boolean toldEnough() {
        return faults.size() >= MOST_FAULTS;
    }

    void fault(Place place, String problem, String mend) {
        if (!toldEnough()) {
            faults.add(new Fault(place, "", problem, mend));
        }
    }

    /** Tells what is wrong at a place from which reading cannot go on. */
    Unreadable unreadable(Place place, String problem, String mend) {
        fault(place, problem, mend);
        return new Unreadable(problem);
    }

    /** Tells that the next token is not what belongs there. */
    Unreadable misplaced(String wanted) {
        return unreadable(
                peek().place(), "not readable: " + peek().shown() + " stands where " + wanted + " belongs", EXAMPLE);
    }
}
