package fitworthy.rules;

import fitworthy.figures.measure.Measure;
import java.util.Arrays;
import java.util.List;

/** The kinds of fact that a rule may match. */
public enum Fact {
    MEASURE("Measure", Measure.class),
    PRACTICE("Practice", PracticeFact.class),
    ADVISED("Advised", Advised.class);

    private final String word;
    private final Class<?> type;

    Fact(String word, Class<?> type) {
        this.word = word;
        this.type = type;
    }

    /** As rule files call it. */
    public String word() {
        return word;
    }

    /** Whether something is a fact of this kind. */
    public boolean isKindOf(Object fact) {
        return type.isInstance(fact);
    }

    /** The kind that rule files call so, or null. */
    static Fact of(String word) {
        for (Fact each : values()) {
            if (each.word.equals(word)) {
                return each;
            }
        }
        return null;
    }

    static List<String> words() {
        return Arrays.stream(values()).map(Fact::word).toList();
    }
}
