package fitworthy.rules;

import fitworthy.rules.Comparison.Compared;
import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Comparison.Operator;
import fitworthy.rules.Comparison.Text;
import fitworthy.rules.Condition.Match;
import fitworthy.rules.Tokens.Unreadable;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Reads the condition of a rule: patterns joined by {@code and}, {@code or}, {@code not}, {@code exists} and brackets,
 * or one below the other, which is looser than {@code or}.
 */
final class ConditionParser {

    private static final Set<String> JOINTS = Set.of("and", "or", "not", "exists", "when", "then", "rule", "end");

    private final Tokens tokens;
    private final Set<String> measureNames;
    private final Scope bound;

    private ConditionParser(Tokens tokens, Set<String> measureNames, Scope bound) {
        this.tokens = tokens;
        this.measureNames = measureNames;
        this.bound = bound;
    }

    /**
     * Reads up to 'then'.
     *
     * @param bound gets the names that mean something behind the condition
     */
    static Condition read(Tokens tokens, Set<String> measureNames, Scope bound) throws Unreadable {
        ConditionParser parser = new ConditionParser(tokens, measureNames, bound);
        List<Condition> parts = new ArrayList<>();
        while (!tokens.at("then")) {
            parts.add(parser.either());
        }
        return all(parts);
    }

    private static Condition all(List<Condition> parts) {
        return parts.size() == 1 ? parts.get(0) : new Condition.All(List.copyOf(parts));
    }

    private Condition either() throws Unreadable {
        int before = bound.mark();
        Condition first = both();
        if (!tokens.at("or")) {
            return first;
        }
        List<Condition> parts = new ArrayList<>(List.of(first));
        // What only one part of an 'or' gives a name means nothing outside.
        Map<String, Fact> inEvery = bound.forget(before);
        while (tokens.take("or")) {
            parts.add(both());
            inEvery.entrySet().retainAll(bound.forget(before).entrySet());
        }
        inEvery.forEach(bound::add);
        return new Condition.Any(List.copyOf(parts));
    }

    private Condition both() throws Unreadable {
        List<Condition> parts = new ArrayList<>();
        do {
            parts.add(one());
        } while (tokens.take("and"));
        return all(parts);
    }

    private Condition one() throws Unreadable {
        Token begin = tokens.peek();
        if (tokens.take("not")) {
            Condition none = inside();
            if (none.patterns().stream().anyMatch(pattern -> pattern.fact() == Fact.ADVISED)) {
                tokens.fault(
                        begin.place(),
                        "advice that is not given yet may still come, so its absence proves nothing",
                        "a Measure that says what the other rule looks at");
            }
            if (none.patterns().stream().anyMatch(Known::compares)) {
                tokens.fault(
                        begin.place(),
                        "a figure that is not known would count as one that is not there",
                        "a Measure of its own that says what is asked, compared outside 'not'");
            }
            return new Condition.None(none);
        }
        if (tokens.take("exists")) {
            return new Condition.Some(inside());
        }
        return tokens.at("(") ? brackets() : pattern();
    }

    /** What stands behind 'not' or 'exists'; what it gives a name means nothing outside. */
    private Condition inside() throws Unreadable {
        int before = bound.mark();
        Condition inside = tokens.at("(") ? brackets() : pattern();
        bound.forget(before);
        return inside;
    }

    private Condition brackets() throws Unreadable {
        tokens.need("(");
        Condition inside = either();
        if (!tokens.take(")")) {
            throw tokens.misplaced("')', 'and' or 'or'");
        }
        return inside;
    }

    private Condition pattern() throws Unreadable {
        Token begin = tokens.peek();
        String binding = tokens.second().is(":") ? binding(tokens.next()) : null;
        Token word = tokens.peek();
        if (!word.is(Token.Kind.WORD) || JOINTS.contains(word.text())) {
            throw tokens.misplaced("a pattern");
        }
        tokens.next();
        while (tokens.take(".")) {
            tokens.next();
        }
        String named = tokens.writtenFrom(word);
        Token open = tokens.need("(");
        Fact fact = Fact.of(named);
        Condition pattern = new Condition.All(List.of());
        if (fact == null) {
            tokens.fault(
                    word.place(),
                    "there is no fact '" + named + "'" + Words.suggestion(named, Fact.words()),
                    "patterns over Measure, Practice and Advised, joined by and, or, not, exists");
            tokens.skipPattern();
        } else {
            pattern = match(begin, binding, fact);
        }
        if (!tokens.take(")")) {
            throw tokens.unreadable(
                    open.place(),
                    "not readable: this bracket is not closed before "
                            + tokens.peek().shown(),
                    Tokens.EXAMPLE);
        }
        if (tokens.at("from") || tokens.at("over") || tokens.at("@")) {
            throw tokens.unreadable(
                    tokens.peek().place(), "'from', windows, annotations and the like are not allowed", Tokens.EXAMPLE);
        }
        return pattern;
    }

    private String binding(Token name) {
        tokens.next();
        if (!name.is(Token.Kind.NAME)) {
            tokens.fault(name.place(), "the name " + name.shown() + " does not begin with $", Tokens.EXAMPLE);
        }
        return name.text();
    }

    /** The comparisons of a pattern, the one that says which fact is meant first among them. */
    private Condition match(Token begin, String binding, Fact fact) {
        if (binding != null && !bound.add(binding, fact)) {
            tokens.fault(begin.place(), "'" + binding + "' is bound twice", "a name for each pattern");
        }
        String key = null;
        boolean readable = true;
        List<Comparison> comparisons = new ArrayList<>();
        if (!tokens.at(")")) {
            do {
                Token first = tokens.peek();
                Comparison comparison = ComparisonParser.read(tokens, fact, bound.facts());
                readable &= comparison != null;
                if (key == null
                        && comparison instanceof Compared compared
                        && compared.operator() == Operator.EQUAL
                        && compared.left().equals(new Named(null, Property.key(fact)))
                        && compared.right() instanceof Text text) {
                    key = text.text();
                    key(fact, key, first);
                } else if (comparison != null) {
                    comparisons.add(comparison);
                }
            } while (tokens.take(","));
        }
        if (key == null && readable) {
            tokens.fault(
                    begin.place(),
                    "this pattern does not say which " + fact.word() + " it means",
                    fact.word() + "(" + Property.key(fact).word() + " == \"...\")");
        }
        return new Match(binding, fact, key == null ? "" : key, List.copyOf(comparisons));
    }

    private void key(Fact fact, String name, Token at) {
        if (fact == Fact.MEASURE && !measureNames.contains(name)) {
            tokens.fault(
                    at.place(),
                    "there is no measure '" + name + "'" + Words.suggestion(name, measureNames),
                    "a name listed in docs/measures.md");
        }
    }
}
