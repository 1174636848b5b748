package fitworthy.rules;

import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Comparison.Operator;
import fitworthy.rules.Comparison.Term;
import fitworthy.rules.Property.Kind;
import fitworthy.rules.Tokens.Unreadable;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Reads a comparison: properties, words in quotes, 0 and answers, compared and joined by {@code &&}, {@code ||},
 * {@code !} and brackets. No arithmetic: it belongs in the figures, and the engine's code generator fails on some of
 * it. Whatever else the engine would understand is refused.
 */
final class ComparisonParser {

    private static final int LONGEST = 300;

    private final Tokens tokens;
    private final Fact fact;
    private final Map<String, Fact> bound;
    private final Token first;

    private ComparisonParser(Tokens tokens, Fact fact, Map<String, Fact> bound) {
        this.tokens = tokens;
        this.fact = fact;
        this.bound = bound;
        this.first = tokens.peek();
    }

    /**
     * Reads up to the comma or bracket behind a comparison.
     *
     * @param fact what its properties belong to
     * @param bound the facts that have a name, which it may compare with
     * @return null, with the fault told, where it is none
     */
    static Comparison read(Tokens tokens, Fact fact, Map<String, Fact> bound) {
        return new ComparisonParser(tokens, fact, bound).read();
    }

    private Comparison read() {
        try {
            Comparison comparison = either();
            // A bracket that is not closed is told of the pattern.
            if (!tokens.at(",") && !tokens.at(")") && !tokens.pastCondition()) {
                throw notPlain();
            }
            if (tokens.writtenFrom(first).length() > LONGEST) {
                tokens.fault(
                        first.place(),
                        "this comparison is longer than " + LONGEST + " characters",
                        "several comparisons with commas between them, or a measure that says it");
            }
            if (tokens.commentSince(first)) {
                tokens.fault(first.place(), "a comment stands inside a comparison", "the comment above the rule");
            }
            return comparison;
        } catch (Unreadable told) {
            tokens.back(first);
            tokens.skipComparison();
            return null;
        }
    }

    private Comparison either() throws Unreadable {
        List<Comparison> parts = new ArrayList<>();
        do {
            parts.add(both());
        } while (tokens.take("||"));
        return parts.size() == 1 ? parts.get(0) : new Comparison.Either(List.copyOf(parts));
    }

    private Comparison both() throws Unreadable {
        List<Comparison> parts = new ArrayList<>();
        do {
            parts.add(one());
        } while (tokens.take("&&"));
        return parts.size() == 1 ? parts.get(0) : new Comparison.Both(List.copyOf(parts));
    }

    private Comparison one() throws Unreadable {
        boolean not = tokens.take("!");
        Comparison one;
        if (tokens.take("(")) {
            one = either();
            if (!tokens.take(")")) {
                throw notPlain();
            }
        } else {
            Token begin = tokens.peek();
            Term left = term();
            Operator operator = Operator.of(tokens.peek().text());
            if (operator == null) {
                one = alone(left, begin);
            } else if (not) {
                // To the engine '!' belongs to the value alone.
                throw notPlain();
            } else {
                tokens.next();
                one = compared(left, operator, term(), begin);
            }
        }
        return not ? new Comparison.Not(one) : one;
    }

    private Comparison alone(Term term, Token begin) throws Unreadable {
        String behind = tokens.peek().text();
        if (!List.of(",", ")", "&&", "||").contains(behind) || term instanceof Comparison.Truth) {
            throw notPlain();
        }
        if (term instanceof Named named && named.kind() == Kind.TRUTH) {
            return new Comparison.Holds(named);
        }
        throw unlike(begin, "'" + term + "' is " + term.kind().described() + " that is compared with nothing");
    }

    private Comparison compared(Term left, Operator operator, Term right, Token begin) throws Unreadable {
        if (!(left instanceof Named) && !(right instanceof Named)) {
            throw notPlain();
        }
        if (left.kind() != right.kind() || operator.orders() && left.kind() != Kind.NUMBER) {
            throw unlike(
                    begin,
                    "'" + left + "', " + left.kind().described() + ", cannot be compared with '" + right + "', "
                            + right.kind().described() + ", by " + operator);
        }
        return new Comparison.Compared(left, operator, right);
    }

    private Unreadable unlike(Token begin, String what) {
        return tokens.unreadable(
                begin.place(),
                "here like is not compared with like: " + what,
                "headroom < 0, word == \"no\", known or !known");
    }

    private Term term() throws Unreadable {
        Token token = tokens.peek();
        switch (token.kind()) {
            case TEXT -> {
                return new Comparison.Text(tokens.next().unquoted());
            }
            case NUMBER -> {
                if (!token.is("0")) {
                    throw tokens.unreadable(
                            token.place(),
                            "the number " + token.text() + " stands in a rule; numbers belong in practice.yaml",
                            "a practice value, such as value > $most.value");
                }
                tokens.next();
                return new Comparison.Zero();
            }
            case NAME -> {
                return ofAnother(tokens.next());
            }
            case WORD -> {
                return word(tokens.next());
            }
            default -> throw notPlain();
        }
    }

    /** A property of the fact, or an answer. */
    private Term word(Token word) throws Unreadable {
        if (word.is("true") || word.is("false")) {
            return new Comparison.Truth(word.is("true"));
        }
        Property property = Property.of(fact, word.text());
        if (property == null) {
            throw tokens.unreadable(
                    word.place(),
                    word.shown() + " is not a property here" + Words.suggestion(word.text(), Property.words(fact)),
                    properties(fact));
        }
        return new Named(null, property);
    }

    /** A property of a fact that has a name. */
    private Term ofAnother(Token name) throws Unreadable {
        Token dot = tokens.peek();
        Token word = tokens.second();
        boolean whole =
                dot.is(".") && word.is(Token.Kind.WORD) && name.end() == dot.begin() && dot.end() == word.begin();
        String written = whole ? name.text() + "." + word.text() : name.text();
        Fact other = bound.get(name.text());
        if (whole && other == null) {
            throw tokens.unreadable(
                    name.place(),
                    "'" + written + "' is not bound before it is compared",
                    name.text() + " : Measure(...) above this pattern");
        }
        Property property = whole ? Property.of(other, word.text()) : null;
        if (property == null) {
            throw tokens.unreadable(
                    name.place(), "'" + written + "' is not a property", properties(whole ? other : fact));
        }
        tokens.next();
        tokens.next();
        return new Named(name.text(), property);
    }

    private static String properties(Fact fact) {
        return "one of " + String.join(", ", Property.words(fact))
                + ", compared with a property, a word in quotes or 0";
    }

    /** Tells that the comparison, shown as far as the next comma or bracket, cannot be one. */
    private Unreadable notPlain() {
        Token wrong = tokens.peek();
        tokens.back(first);
        tokens.skipComparison();
        String written = Words.shortened(tokens.writtenFrom(first), 80);
        String turned = written.replace("=>", ">=").replace("=<", "<=").replaceAll("(?<![=<>!])=(?!=)", "==");
        return written.isEmpty()
                ? tokens.misplaced("a comparison")
                : tokens.unreadable(
                        wrong.place(),
                        "'" + written + "' is not a plain comparison",
                        turned.equals(written) ? "headroom < 0" : turned);
    }
}
