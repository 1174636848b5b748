package fitworthy.rules;

import fitworthy.rules.Tokens.Unreadable;
import fitworthy.source.Fault;
import fitworthy.source.Place;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

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
            ConditionParser.class,
            Fact.class,
            Facts.class,
            Guards.class,
            Known.class,
            Lexer.class,
            PracticeFact.class,
            Property.class,
            RuleParser.class,
            RuleText.class,
            Scope.class,
            Stricter.class,
            Token.class,
            Tokens.class);

    private static final int MOST_ALTERNATIVES = 50;
    private static final int MOST_JOINED = 8;
    private static final int MOST_PATTERNS = 60;
    private static final int MOST_COMPARISONS = 12;

    private final Tokens tokens;
    private final Set<String> measureNames;

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
        return read(fileName, text, measureNames, faults).rules();
    }

    /** The same, without the rules that something is wrong with. */
    public static List<RuleText> sound(String fileName, String text, Set<String> measureNames, List<Fault> faults) {
        Read read = read(fileName, text, measureNames, faults);
        return read.rules().stream()
                .filter(rule -> !read.wrong().contains(rule.place().line()))
                .toList();
    }

    /** Rules, and on which lines those begin that something is wrong with. */
    private record Read(List<RuleText> rules, Set<Integer> wrong) {}

    private static Read read(String fileName, String text, Set<String> measureNames, List<Fault> faults) {
        List<Fault> torn = new ArrayList<>();
        List<Fault> found = new ArrayList<>();
        List<Token> tokens = Lexer.read(Place.of(fileName), text, torn);
        List<RuleText> rules = new RuleParser(new Tokens(text, tokens, found), measureNames).rules();
        NavigableSet<Integer> begins = new TreeSet<>(List.of(0));
        tokens.stream()
                .filter(token -> token.is("rule"))
                .forEach(token -> begins.add(token.place().line()));
        Set<Integer> wrong = begins(begins, torn);
        // A rule with a wrong character in it cannot be read right: of that rule nothing else is said.
        found.removeIf(fault -> wrong.contains(begins.floor(fault.place().line())));
        rules.removeIf(rule -> wrong.contains(rule.place().line()));
        wrong.addAll(begins(begins, found));
        faults.addAll(torn);
        faults.addAll(found);
        return new Read(rules, wrong);
    }

    /** The lines on which the rules begin that these faults are in. */
    private static Set<Integer> begins(NavigableSet<Integer> all, List<Fault> faults) {
        return faults.stream()
                .map(fault -> all.floor(fault.place().line()))
                .collect(Collectors.toCollection(HashSet::new));
    }

    private List<RuleText> rules() {
        List<RuleText> rules = new ArrayList<>();
        while (!tokens.ended() && !tokens.toldEnough()) {
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
        Scope bound = new Scope();
        Condition condition = ConditionParser.read(tokens, measureNames, bound);
        bounds(id, place, condition);
        return new RuleText(id, place, condition, evidence(id, bound));
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

    /**
     * What the engine makes of a condition grows by multiplication, and its depth with what stands side by side; these
     * bounds are some three times what the book needs.
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
        boolean repeated = condition.patterns().stream()
                .anyMatch(match -> match.comparisons().size() > MOST_COMPARISONS);
        if (repeated || condition.patterns().size() > MOST_PATTERNS) {
            tokens.fault(
                    place,
                    "'" + id + "' has more than "
                            + (repeated ? MOST_COMPARISONS + " comparisons in a pattern" : MOST_PATTERNS + " patterns"),
                    "several rules, or a measure that says it");
        }
    }

    /** The one thing that a rule may do. */
    private List<String> evidence(String id, Scope bound) throws Unreadable {
        Token then = tokens.need("then");
        List<String> evidence = new ArrayList<>();
        boolean plain = tokens.take("advice") && tokens.take(".") && tokens.take("give") && tokens.take("(");
        String given = tokens.peek().unquoted();
        plain = plain && tokens.next().is(Token.Kind.TEXT);
        while (plain && tokens.take(",")) {
            plain = tokens.peek().is(Token.Kind.NAME);
            evidence.add(tokens.next().text());
        }
        plain = plain && !evidence.isEmpty() && tokens.take(")");
        if (plain && (tokens.at("end") || tokens.ended())) {
            throw tokens.misplaced("';'");
        }
        plain = plain && tokens.take(";");
        if (plain && (tokens.at("rule") || tokens.ended())) {
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
}
