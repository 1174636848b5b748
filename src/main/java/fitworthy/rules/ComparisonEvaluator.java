package fitworthy.rules;

import fitworthy.book.Practice;
import fitworthy.figures.measure.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whether a comparison of a rule file holds for a fact, for explanations. The engine decides what fires; a test holds
 * this reading of the same text against it over every case of the book.
 */
public final class ComparisonEvaluator {

    private static final Pattern TOKEN = Pattern.compile(
            "\\s*(\"[^\"]*\"|\\$\\w+\\.\\w+|\\$\\w+|[A-Za-z_]\\w*|\\d+|==|!=|<=|>=|<|>|&&|\\|\\||!|[()])");

    private final List<String> tokens = new ArrayList<>();
    private final Object fact;
    private final Map<String, Object> bound;
    private int next;

    private ComparisonEvaluator(String comparison, Object fact, Map<String, Object> bound) {
        Matcher matcher = TOKEN.matcher(comparison);
        while (matcher.find()) {
            tokens.add(matcher.group(1));
        }
        this.fact = fact;
        this.bound = bound;
    }

    /**
     * Whether a comparison holds.
     *
     * @param fact the fact whose properties it names
     * @param bound facts bound earlier in the rule, by name
     */
    public static boolean of(String comparison, Object fact, Map<String, Object> bound) {
        return new ComparisonEvaluator(comparison, fact, bound).either();
    }

    private boolean either() {
        boolean holds = both();
        while (taken("||")) {
            holds |= both();
        }
        return holds;
    }

    private boolean both() {
        boolean holds = one();
        while (taken("&&")) {
            holds &= one();
        }
        return holds;
    }

    private boolean one() {
        if (taken("!")) {
            return !one();
        }
        if (taken("(")) {
            boolean holds = either();
            taken(")");
            return holds;
        }
        Object left = value(tokens.get(next++));
        if (next == tokens.size() || !Set.of("==", "!=", "<", "<=", ">", ">=").contains(tokens.get(next))) {
            return Boolean.TRUE.equals(left);
        }
        String operator = tokens.get(next++);
        return compared(left, operator, value(tokens.get(next++)));
    }

    private boolean taken(String token) {
        boolean taken = next < tokens.size() && tokens.get(next).equals(token);
        next += taken ? 1 : 0;
        return taken;
    }

    private static boolean compared(Object left, String operator, Object right) {
        if (left instanceof Double a && right instanceof Double b) {
            return switch (operator) {
                case "==" -> a.doubleValue() == b;
                case "!=" -> a.doubleValue() != b;
                case "<" -> a < b;
                case "<=" -> a <= b;
                case ">" -> a > b;
                default -> a >= b;
            };
        }
        return left.equals(right) == operator.equals("==");
    }

    private Object value(String token) {
        if (token.startsWith("\"")) {
            return token.substring(1, token.length() - 1);
        }
        if (Character.isDigit(token.charAt(0))) {
            return Double.valueOf(token);
        }
        if (token.equals("true") || token.equals("false")) {
            return Boolean.valueOf(token);
        }
        int dot = token.indexOf('.');
        return dot < 0 ? property(fact, token) : property(bound.get(token.substring(0, dot)), token.substring(dot + 1));
    }

    /** A property by the name rule files use. */
    public static Object property(Object fact, String name) {
        if (fact instanceof Measure measure) {
            return switch (name) {
                case "name" -> measure.getName();
                case "subject" -> measure.getSubject();
                case "known" -> measure.isKnown();
                case "word" -> measure.getWord();
                case "value" -> measure.getValue();
                case "limit" -> measure.getLimit();
                case "headroom" -> measure.getHeadroom();
                case "excess" -> measure.getExcess();
                case "spare" -> measure.getSpare();
                case "tolerance" -> measure.getTolerance();
                default -> throw new IllegalArgumentException("a measure has no property " + name);
            };
        }
        if (fact instanceof Practice practice) {
            return name.equals("id") ? practice.id() : practice.value();
        }
        Advised advised = (Advised) fact;
        return name.equals("id") ? advised.id() : advised.subject();
    }
}
