package fitworthy.rules;

import fitworthy.source.Fault;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drools.drl.ast.descr.AndDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.ConditionalElementDescr;
import org.drools.drl.ast.descr.ExistsDescr;
import org.drools.drl.ast.descr.ExprConstraintDescr;
import org.drools.drl.ast.descr.NotDescr;
import org.drools.drl.ast.descr.OrDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsError;
import org.drools.drl.parser.DroolsParserException;

/**
 * Reads a rule file into its syntax tree and refuses everything that a condition over measures, practice values and
 * earlier advice has no need of. A rule file is code: what passes here is compiled and run.
 */
public final class RuleParser {

    /** The facts a rule may match, and their properties. */
    private static final Map<String, Set<String>> FACTS = Map.of(
            "Measure",
                    Set.of(
                            "name",
                            "subject",
                            "known",
                            "word",
                            "value",
                            "limit",
                            "headroom",
                            "excess",
                            "spare",
                            "tolerance"),
            "Practice", Set.of("id", "value"),
            "Advised", Set.of("id", "subject"));
    /** Properties whose text value is checked against what the book knows. */
    private static final Map<String, String> KEY = Map.of("Measure", "name", "Practice", "id", "Advised", "id");

    /** No arithmetic: it belongs in the figures, and the engine's code generator fails on some of it. */
    private static final Pattern TOKEN = Pattern.compile(
            "\\s*(\"[^\"]*\"|\\$\\w+\\.\\w+|\\$\\w+|[A-Za-z_]\\w*|\\d+(?:\\.\\d+)?|==|!=|<=|>=|<|>|&&|\\|\\||!|[()])");

    private static final Pattern COMPARED = Pattern.compile("[=!]=|[<>]=?");
    private static final Pattern VALUE = Pattern.compile("[\\w$\"].*");
    private static final Set<String> TEXTS = Set.of("name", "subject", "word", "id");
    private static final Set<String> TRUTHS = Set.of("known", "true", "false");
    private static final String TRUTH = "a yes or no";
    private static final String NUMBER = "a number";
    private static final Pattern KEYED = Pattern.compile("^(\\w+)\\s*==\\s*\"([^\"]*)\"$");
    private static final Pattern CONSEQUENCE =
            Pattern.compile("advice\\s*\\.\\s*give\\s*\\(\\s*\"([^\"]*)\"((?:\\s*,\\s*\\$\\w+)+)\\s*\\)\\s*;");

    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]*\\.[a-z0-9-]+");
    private static final int MOST_ALTERNATIVES = 50;
    private static final int MOST_JOINED = 8;
    private static final int LONGEST_COMPARISON = 300;

    private final Place file;
    private final Set<String> measureNames;
    private final List<Fault> faults;
    private final Map<String, Condition> conditions = new HashMap<>();

    private RuleParser(Place file, Set<String> measureNames, List<Fault> faults) {
        this.file = file;
        this.measureNames = measureNames;
        this.faults = faults;
    }

    /**
     * Reads one rule file.
     *
     * @param fileName as it is to be named in messages
     * @param measureNames the measures there are
     * @param faults gets what is wrong
     * @return what each of its rules mentions
     */
    public static List<RuleReferences> parse(
            String fileName, String text, Set<String> measureNames, List<Fault> faults) {
        return new RuleParser(Place.of(fileName), measureNames, faults).rules(text);
    }

    /** The condition of one rule of a file that is already known to be right. */
    public static Condition condition(String text, String id) {
        RuleParser parser = new RuleParser(Place.of(id), Set.of(), new ArrayList<>());
        parser.rules(text);
        return parser.conditions.get(id);
    }

    private List<RuleReferences> rules(String text) {
        if (!PreCheck.plain(file, text, faults)) {
            return List.of();
        }
        PackageDescr parsed;
        DrlParser parser = new DrlParser();
        try {
            parsed = parser.parse(false, text);
        } catch (DroolsParserException e) {
            fault(0, "not readable: " + Words.shortened(String.valueOf(e.getMessage()), 200), EXAMPLE);
            return List.of();
        } catch (StackOverflowError e) {
            fault(1, "not readable: something in it is nested far too deep", EXAMPLE);
            return List.of();
        }
        for (DroolsError error : parser.getErrors()) {
            int line = error.getLines().length > 0 ? Math.max(0, error.getLines()[0]) : 0;
            fault(line, "not readable: " + Words.shortened(error.getMessage(), 200), EXAMPLE);
        }
        if (!faults.isEmpty() && parser.hasErrors() || parsed == null) {
            return List.of();
        }
        onlyRules(parsed);
        List<RuleReferences> rules = new ArrayList<>();
        for (RuleDescr rule : parsed.getRules()) {
            rules.add(rule(rule));
        }
        return rules;
    }

    private static final String EXAMPLE =
            "rule \"mass.gvm-over\" when $m : Measure(name == \"mass.loaded\", headroom < 0)"
                    + " then advice.give(\"mass.gvm-over\", $m); end";

    private void onlyRules(PackageDescr parsed) {
        refuse("a package line", parsed.getName().isEmpty() ? List.of() : List.of(parsed));
        refuse("an import", parsed.getImports());
        refuse("an import", parsed.getFunctionImports());
        refuse("an import", parsed.getAccumulateImports());
        refuse("a global", parsed.getGlobals());
        refuse("a function", parsed.getFunctions());
        refuse("a type declaration", parsed.getClassAndEnumDeclarationDescrs());
        refuse("an entry point", parsed.getEntryPointDeclarations());
        refuse("a window", parsed.getWindowDeclarations());
        refuse("an attribute outside a rule", parsed.getAttributes());
        refuse("a unit", parsed.getUnit() == null ? List.of() : List.of(parsed.getUnit()));
    }

    private void refuse(String what, Collection<? extends BaseDescr> found) {
        found.forEach(each -> fault(each.getLine(), what + " has no place in a rule file", "rules only: " + EXAMPLE));
    }

    private RuleReferences rule(RuleDescr rule) {
        RuleReferences text = new RuleReferences(
                rule.getName(),
                file.file(),
                rule.getLine(),
                new TreeSet<>(),
                new TreeSet<>(),
                new TreeSet<>(),
                new ArrayList<>());
        if (!rule.isRule()
                || rule.hasParent()
                || !rule.getAttributes().isEmpty()
                || !rule.getAnnotationNames().isEmpty()
                || !rule.getNamedConsequences().isEmpty()) {
            fault(
                    rule.getLine(),
                    "'" + rule.getName() + "' has more than a condition and its advice (a query, an"
                            + " attribute, an annotation, a parent or a second consequence)",
                    EXAMPLE);
        }
        if (!NAME.matcher(rule.getName()).matches()) {
            fault(
                    rule.getLine(),
                    "'" + rule.getName() + "' is not the name of a rule",
                    "topic.what, such as mass.gvm-over");
        }
        Set<String> bound = new TreeSet<>();
        Condition condition = element(rule.getLhs(), text, bound);
        conditions.put(rule.getName(), condition);
        bounds(rule, condition);
        condition.joined().stream()
                .filter(each -> each.fact().equals("Measure"))
                .forEach(each -> text.joined().add(each.key()));
        int then = Math.max(rule.getLine(), rule.getConsequenceLine());
        Matcher consequence =
                CONSEQUENCE.matcher(String.valueOf(rule.getConsequence()).strip());
        if (!consequence.matches()) {
            fault(
                    then,
                    "'" + rule.getName() + "' does something else than give advice once",
                    "then advice.give(\"" + rule.getName() + "\", $m); end");
        } else {
            if (!consequence.group(1).equals(rule.getName())) {
                fault(
                        then,
                        "'" + rule.getName() + "' gives the advice '" + consequence.group(1) + "'",
                        "the same id in both places");
            }
            for (String evidence :
                    consequence.group(2).replace(",", " ").strip().split("\\s+")) {
                if (!bound.contains(evidence)) {
                    fault(
                            then,
                            "'" + evidence + "' is not bound in the condition, or only in a part that need not hold",
                            evidence + " : Measure(...)");
                }
            }
        }
        return text;
    }

    /**
     * What the engine makes of a condition grows by multiplication; these bounds are some five times what the book
     * needs.
     */
    private void bounds(RuleDescr rule, Condition condition) {
        if (condition.alternatives(MOST_ALTERNATIVES) > MOST_ALTERNATIVES) {
            fault(
                    rule.getLine(),
                    "'" + rule.getName() + "' has more than " + MOST_ALTERNATIVES
                            + " alternatives once 'or' is multiplied out",
                    "several rules, or a measure that says it");
        }
        if (condition.joined().size() > MOST_JOINED) {
            fault(
                    rule.getLine(),
                    "'" + rule.getName() + "' joins more than " + MOST_JOINED + " patterns",
                    "a measure that says what several of them look at");
        }
    }

    private Condition element(BaseDescr element, RuleReferences rule, Set<String> bound) {
        if (element instanceof PatternDescr pattern) {
            return pattern(pattern, rule, bound);
        }
        List<Condition> parts = new ArrayList<>();
        if (element instanceof AndDescr
                || element instanceof OrDescr
                || element instanceof NotDescr
                || element instanceof ExistsDescr) {
            Set<String> before = Set.copyOf(bound);
            Set<String> inEvery = null;
            for (Object inner : ((ConditionalElementDescr) element).getDescrs()) {
                if (element instanceof NotDescr && advised((BaseDescr) inner)) {
                    fault(
                            element.getLine(),
                            "advice that is not given yet may still come, so its absence proves nothing",
                            "a Measure that says what the other rule looks at");
                }
                Set<String> own = element instanceof AndDescr ? bound : new TreeSet<>(before);
                parts.add(element((BaseDescr) inner, rule, own));
                inEvery = inEvery == null ? new TreeSet<>(own) : inEvery;
                inEvery.retainAll(own);
            }
            // What is named below 'not' and 'exists', or in one part of an 'or' alone, means nothing outside.
            if (element instanceof OrDescr && inEvery != null) {
                bound.addAll(inEvery);
            }
        } else {
            fault(
                    element.getLine(),
                    "this form of condition is not allowed",
                    "patterns over Measure, Practice and Advised, joined by and, or, not, exists");
        }
        if (element instanceof OrDescr) {
            return new Condition.Any(parts);
        }
        Condition all = new Condition.All(parts);
        return element instanceof NotDescr
                ? new Condition.None(all)
                : element instanceof ExistsDescr ? new Condition.Some(all) : all;
    }

    private static boolean advised(BaseDescr element) {
        return element instanceof PatternDescr pattern
                ? "Advised".equals(pattern.getObjectType())
                : element instanceof ConditionalElementDescr parts
                        && parts.getDescrs().stream().anyMatch(each -> advised((BaseDescr) each));
    }

    private Condition pattern(PatternDescr pattern, RuleReferences rule, Set<String> bound) {
        Set<String> properties = FACTS.get(String.valueOf(pattern.getObjectType()));
        if (properties == null) {
            String named = String.valueOf(pattern.getObjectType());
            fault(
                    pattern.getLine(),
                    "there is no fact '" + named + "'" + Words.suggestion(named, FACTS.keySet()),
                    "Measure, Practice or Advised");
            return new Condition.All(List.of());
        }
        if (pattern.getSource() != null
                || !pattern.getBehaviors().isEmpty()
                || pattern.isUnification()
                || pattern.isQuery()
                || !pattern.getAnnotationNames().isEmpty()) {
            fault(pattern.getLine(), "'from', windows, annotations and the like are not allowed", EXAMPLE);
        }
        if (pattern.getIdentifier() != null) {
            if (!pattern.getIdentifier().startsWith("$")) {
                fault(pattern.getLine(), "the name '" + pattern.getIdentifier() + "' does not begin with $", EXAMPLE);
            }
            if (!bound.add(pattern.getIdentifier())) {
                fault(pattern.getLine(), "'" + pattern.getIdentifier() + "' is bound twice", "a name for each pattern");
            }
        }
        String fact = null;
        List<String> comparisons = new ArrayList<>();
        for (BaseDescr constraint : pattern.getDescrs()) {
            if (!(constraint instanceof ExprConstraintDescr expression)
                    || expression.getType() != ExprConstraintDescr.Type.NAMED) {
                fault(constraint.getLine(), "'" + constraint + "' is not a comparison", "headroom < 0");
                continue;
            }
            Matcher key = KEYED.matcher(expression.getExpression().strip());
            if (key.matches() && key.group(1).equals(KEY.get(pattern.getObjectType()))) {
                fact = key.group(2);
                key(pattern, fact, rule);
            } else {
                comparisons.add(expression.getExpression().strip());
                comparison(pattern.getLine(), expression.getExpression(), properties, bound);
            }
        }
        if (fact == null) {
            fault(
                    pattern.getLine(),
                    "this pattern does not say which " + pattern.getObjectType() + " it means",
                    pattern.getObjectType() + "(" + KEY.get(pattern.getObjectType()) + " == \"...\")");
        }
        return new Condition.Match(pattern.getIdentifier(), pattern.getObjectType(), fact, comparisons);
    }

    private void key(PatternDescr pattern, String name, RuleReferences rule) {
        switch (pattern.getObjectType()) {
            case "Measure" -> {
                rule.measures().add(name);
                if (!measureNames.contains(name)) {
                    fault(
                            pattern.getLine(),
                            "there is no measure '" + name + "'" + Words.suggestion(name, measureNames),
                            "a name listed in docs/measures.md");
                }
            }
            case "Practice" -> rule.practice().add(name);
            default -> rule.earlier().add(name);
        }
    }

    private void comparison(int line, String expression, Set<String> properties, Set<String> bound) {
        List<String> tokens = new ArrayList<>();
        Matcher token = TOKEN.matcher(expression);
        int end = 0;
        while (end < expression.length() && token.find(end) && token.start() == end) {
            String fault = token(token.group(1), tokens, properties, bound);
            if (fault != null) {
                fault(
                        line,
                        fault,
                        "one of " + String.join(", ", new TreeSet<>(properties))
                                + ", compared with a property, a word in quotes or 0");
                return;
            }
            tokens.add(token.group(1));
            end = token.end();
        }
        int[] next = {0};
        if (!expression.substring(end).isBlank()
                || expression.length() > LONGEST_COMPARISON
                || !either(tokens, next)
                || next[0] < tokens.size()) {
            fault(line, "'" + Words.shortened(expression.strip(), 80) + "' is not a plain comparison", "headroom < 0");
            return;
        }
        for (int i = 0; i < tokens.size(); i++) {
            String unlike = unlike(tokens, i);
            if (!unlike.isEmpty()) {
                fault(
                        line,
                        "here like is not compared with like: " + unlike,
                        "headroom < 0, word == \"no\", known or !known");
                return;
            }
        }
    }

    /** What cannot be compared at one place of a plain comparison; empty where nothing is wrong there. */
    private static String unlike(List<String> tokens, int at) {
        String token = tokens.get(at);
        if (COMPARED.matcher(token).matches()) {
            String left = tokens.get(at - 1);
            String right = tokens.get(at + 1);
            return kind(left).equals(kind(right))
                            && (kind(left).equals(NUMBER) || token.equals("==") || token.equals("!="))
                    ? ""
                    : "'" + left + "', " + kind(left) + ", cannot be compared with '" + right + "', " + kind(right)
                            + ", by " + token;
        }
        boolean alone = (at == 0 || !COMPARED.matcher(tokens.get(at - 1)).matches())
                && (at == tokens.size() - 1
                        || !COMPARED.matcher(tokens.get(at + 1)).matches());
        return VALUE.matcher(token).matches() && alone && !kind(token).equals(TRUTH)
                ? "'" + token + "' is " + kind(token) + " that is compared with nothing"
                : "";
    }

    private static String kind(String token) {
        String name = token.substring(token.indexOf('.') + 1);
        return token.startsWith("\"") || TEXTS.contains(name) ? "a text" : TRUTHS.contains(name) ? TRUTH : NUMBER;
    }

    /** What is wrong with one word of a comparison, or null. */
    private static String token(String word, List<String> before, Set<String> properties, Set<String> bound) {
        if (word.startsWith("$")) {
            int dot = word.indexOf('.');
            return dot < 0 || FACTS.values().stream().noneMatch(all -> all.contains(word.substring(dot + 1)))
                    ? "'" + word + "' is not a property"
                    : bound.contains(word.substring(0, dot))
                            ? null
                            : "'" + word + "' is not bound before it is compared";
        }
        if (Character.isDigit(word.charAt(0)) && !word.equals("0")) {
            return "the number " + word + " stands in a rule; numbers belong in practice.yaml";
        }
        if (Character.isLetter(word.charAt(0))
                && !properties.contains(word)
                && !word.equals("true")
                && !word.equals("false")) {
            return "'" + word + "' is not a property here" + Words.suggestion(word, properties);
        }
        String last = before.isEmpty() ? "" : before.get(before.size() - 1);
        return word.equals("(") && last.matches("[\\w$.]+") ? "a call is not allowed" : null;
    }

    /** Comparisons joined by {@code &&} and {@code ||}, from the next token on. */
    private static boolean either(List<String> tokens, int[] next) {
        boolean plain = one(tokens, next);
        while (plain && (taken("&&", tokens, next) || taken("||", tokens, next))) {
            plain = one(tokens, next);
        }
        return plain;
    }

    /** A property, two values compared, or either in brackets; perhaps after one {@code !}. */
    private static boolean one(List<String> tokens, int[] next) {
        taken("!", tokens, next);
        if (taken("(", tokens, next)) {
            return either(tokens, next) && taken(")", tokens, next);
        }
        if (!value(tokens, next)) {
            return false;
        }
        boolean compared =
                next[0] < tokens.size() && COMPARED.matcher(tokens.get(next[0])).matches();
        next[0] += compared ? 1 : 0;
        return !compared || value(tokens, next);
    }

    private static boolean value(List<String> tokens, int[] next) {
        boolean value =
                next[0] < tokens.size() && VALUE.matcher(tokens.get(next[0])).matches();
        next[0] += value ? 1 : 0;
        return value;
    }

    private static boolean taken(String token, List<String> tokens, int[] next) {
        boolean taken = next[0] < tokens.size() && tokens.get(next[0]).equals(token);
        next[0] += taken ? 1 : 0;
        return taken;
    }

    private void fault(int line, String problem, String mend) {
        faults.add(new Fault(line > 0 ? file.onLine(line) : file, "", problem, mend));
    }
}
