package fitworthy.rules;

import fitworthy.rules.Comparison.Compared;
import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Comparison.Operator;
import fitworthy.rules.Comparison.Text;
import fitworthy.rules.Condition.Match;
import fitworthy.rules.Tokens.Unreadable;
import fitworthy.source.Fault;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Reads a rule file into its rules and refuses everything that a condition over measures, practice values and earlier
 * advice has no need of. A rule file is code: what passes here is compiled and run. What is read here the engine reads
 * in the same way; a test holds the two against each other.
 */
public final class RuleParser {

    /** What reads rules and what they are made of: which rules are passed hangs on these. */
    public static final List<Class<?>> CLASSES = List.of(
            Advised.class,
            Comparison.class,
            ComparisonParser.class,
            Condition.class,
            Fact.class,
            Lexer.class,
            PracticeFact.class,
            Property.class,
            RuleParser.class,
            RuleText.class,
            Scope.class,
            Stricter.class,
            Token.class,
            Tokens.class);

    private static final int MOST_FAULTS = 20;
    private static final int MOST_ALTERNATIVES = 50;
    private static final int MOST_JOINED = 8;
    private static final Set<String> JOINTS = Set.of("and", "or", "not", "exists", "when", "then", "rule", "end");

    private final Tokens tokens;
    private final Set<String> measureNames;
    private final Scope bound = new Scope();

    private RuleParser(Tokens tokens, Set<String> measureNames) {
        this.tokens = tokens;
        this.measureNames = measureNames;
    }

    /**
     * Reads one rule file.
     *
     * @param fileName as it is to be named in messages
     * @param measureNames the measures there are
     * @param faults gets what is wrong
     * @return its rules as far as they can be read, in the order of writing
     */
    public static List<RuleText> parse(String fileName, String text, Set<String> measureNames, List<Fault> faults) {
        List<Fault> found = new ArrayList<>();
        List<Token> tokens = Lexer.read(Place.of(fileName), text, found);
        List<RuleText> rules = tokens.isEmpty()
                ? List.of()
                : new RuleParser(new Tokens(text, tokens, found), measureNames).rules(found);
        faults.addAll(found);
        return rules;
    }

    private List<RuleText> rules(List<Fault> found) {
        List<RuleText> rules = new ArrayList<>();
        while (!tokens.ended() && found.size() < MOST_FAULTS) {
            try {
                if (!tokens.at("rule")) {
                    throw tokens.unreadable(
                            tokens.peek().place(),
                            tokens.peek().shown() + " has no place in a rule file",
                            "rules only: " + Tokens.EXAMPLE);
                }
                rules.add(rule());
            } catch (Unreadable told) {
                tokens.skipRule();
            }
        }
        return rules;
    }

    private RuleText rule() throws Unreadable {
        Token begin = tokens.need("rule");
        if (!tokens.peek().is(Token.Kind.TEXT) && !tokens.peek().is(Token.Kind.WORD)) {
            throw tokens.misplaced("the name of a rule");
        }
        String id = tokens.next().unquoted();
        Place place = begin.place().onLine(begin.place().line());
        if (!isName(id)) {
            tokens.fault(place, "'" + id + "' is not the name of a rule", "topic.what, such as mass.gvm-over");
        }
        if (!tokens.at("when") && !tokens.at("then") && !tokens.ended()) {
            throw tokens.unreadable(
                    place,
                    "'" + id + "' has more than a condition and its advice (an attribute, an annotation or a parent)",
                    Tokens.EXAMPLE);
        }
        tokens.need("when");
        bound.forget(0);
        List<Condition> parts = new ArrayList<>();
        while (!tokens.at("then")) {
            parts.add(either());
        }
        Condition condition = all(parts);
        bounds(id, place, condition);
        return new RuleText(id, place, condition, evidence(id));
    }

    /** {@code topic.what} in small letters, digits and hyphens, beginning with a letter. */
    private static boolean isName(String id) {
        int dot = id.indexOf('.');
        boolean name = dot > 0 && dot < id.length() - 1 && id.charAt(0) >= 'a' && id.charAt(0) <= 'z';
        for (int i = 0; i < id.length(); i++) {
            char each = id.charAt(i);
            name &= i == dot || each >= 'a' && each <= 'z' || each >= '0' && each <= '9' || each == '-';
        }
        return name;
    }

    private static Condition all(List<Condition> parts) {
        return parts.size() == 1 ? parts.get(0) : new Condition.All(List.copyOf(parts));
    }

    /**
     * What the engine makes of a condition grows by multiplication; these bounds are some five times what the book
     * needs.
     */
    private void bounds(String id, Place place, Condition condition) {
        if (condition.alternatives(MOST_ALTERNATIVES) > MOST_ALTERNATIVES) {
            tokens.fault(
                    place,
                    "'" + id + "' has more than " + MOST_ALTERNATIVES + " alternatives once 'or' is multiplied out",
                    "several rules, or a measure that says it");
        }
        if (condition.joined().size() > MOST_JOINED) {
            tokens.fault(
                    place,
                    "'" + id + "' joins more than " + MOST_JOINED + " patterns",
                    "a measure that says what several of them look at");
        }
    }

    /** The one thing that a rule may do. */
    private List<String> evidence(String id) throws Unreadable {
        Token then = tokens.need("then");
        List<String> evidence = new ArrayList<>();
        boolean plain = tokens.take("advice") && tokens.take(".") && tokens.take("give") && tokens.take("(");
        String given = tokens.peek().unquoted();
        plain = plain && tokens.next().is(Token.Kind.TEXT);
        while (plain && tokens.take(",")) {
            plain = tokens.peek().is(Token.Kind.NAME);
            evidence.add(tokens.next().text());
        }
        plain = plain && !evidence.isEmpty() && tokens.take(")") && tokens.take(";");
        if (plain && tokens.ended()) {
            throw tokens.misplaced("'end'");
        }
        if (!plain || !tokens.take("end") || tokens.commentSince(then)) {
            throw tokens.unreadable(
                    then.place(),
                    "'" + id + "' does something else than give advice once",
                    "then advice.give(\"" + id + "\", $m); end");
        }
        if (!given.equals(id)) {
            tokens.fault(then.place(), "'" + id + "' gives the advice '" + given + "'", "the same id in both places");
        }
        for (String each : evidence) {
            if (!bound.facts().containsKey(each)) {
                tokens.fault(
                        then.place(),
                        "'" + each + "' is not bound in the condition, or only in a part that need not hold",
                        each + " : Measure(...)");
            }
        }
        return List.copyOf(evidence);
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
            if (none.patterns().stream().anyMatch(each -> each.fact() == Fact.ADVISED)) {
                tokens.fault(
                        begin.place(),
                        "advice that is not given yet may still come, so its absence proves nothing",
                        "a Measure that says what the other rule looks at");
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
