package fitworthy.changes;

import fitworthy.changes.BookChange.Field;
import fitworthy.handbook.ConditionWords;
import fitworthy.rules.Condition;
import fitworthy.rules.Condition.Match;
import fitworthy.rules.RuleText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whether a rule fires otherwise. What it calls the facts that it matches, and their order, makes no difference. */
final class ConditionChange {

    private static final String FIRES = "fires where";

    private final Condition condition;
    private final List<String> evidence;
    private final Map<String, String> keys = new LinkedHashMap<>();

    private ConditionChange(RuleText rule) {
        this.condition = rule.asRun().condition();
        this.evidence = rule.evidence();
        for (Match match : condition.patterns()) {
            if (match.binding() != null) {
                String name = match.key();
                for (int i = 2; keys.containsValue(name); i++) {
                    name = match.key() + " " + i;
                }
                keys.put(match.binding(), name);
            }
        }
    }

    /** What is otherwise in when a rule fires, line by line, and in what it shows. */
    static List<Field> between(RuleText before, RuleText after) {
        ConditionChange old = new ConditionChange(before);
        ConditionChange now = new ConditionChange(after);
        return Stream.of(old.fires(now), shows(old, now))
                .flatMap(Optional::stream)
                .toList();
    }

    /** When a rule fires, in words. */
    static String words(RuleText rule) {
        return String.join("; ", ConditionWords.lines(rule.asRun().condition()));
    }

    private Optional<Field> fires(ConditionChange now) {
        if (meaning(condition).equals(now.meaning(now.condition))) {
            return Optional.empty();
        }
        String gone = linesWithout(now);
        String come = now.linesWithout(this);
        // The same lines may be joined otherwise; then the whole says how.
        return Optional.of(
                gone.isEmpty() && come.isEmpty()
                        ? new Field(FIRES, condition.toString(), now.condition.toString())
                        : new Field(FIRES, gone.isEmpty() ? null : gone, come.isEmpty() ? null : come));
    }

    /** Its lines, as written, that another condition has not. */
    private String linesWithout(ConditionChange other) {
        List<String> others =
                ConditionWords.lines(other.condition).stream().map(other::plain).toList();
        return ConditionWords.lines(condition).stream()
                .filter(line -> !others.contains(plain(line)))
                .collect(Collectors.joining("; "));
    }

    private static Optional<Field> shows(ConditionChange old, ConditionChange now) {
        String before = old.evidence.stream().map(old::plain).sorted().collect(Collectors.joining(", "));
        String after = now.evidence.stream().map(now::plain).sorted().collect(Collectors.joining(", "));
        return before.equals(after) ? Optional.empty() : Optional.of(new Field("shows", before, after));
    }

    /** A condition with nothing in it that makes no difference. */
    private String meaning(Condition part) {
        if (part instanceof Match match) {
            return plain(match.fact() + " " + match.key() + " "
                    + match.comparisons().stream()
                            .map(Object::toString)
                            .sorted()
                            .toList());
        }
        return part.getClass().getSimpleName()
                + part.parts().stream().map(this::meaning).sorted().toList();
    }

    /** A text with what was matched in place of the names that the rule gives it. */
    private String plain(String text) {
        String plain = text;
        for (Map.Entry<String, String> named : keys.entrySet()) {
            plain = Pattern.compile(Pattern.quote(named.getKey()) + "(?!\\w)")
                    .matcher(plain)
                    .replaceAll(Matcher.quoteReplacement(named.getValue()));
        }
        return plain;
    }
}
