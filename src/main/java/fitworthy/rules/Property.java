package fitworthy.rules;

import fitworthy.figures.measure.Measure;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** What a rule may ask of a fact. */
public enum Property {
    NAME(Fact.MEASURE, "name", Kind.TEXT, Measure::getName),
    SUBJECT(Fact.MEASURE, "subject", Kind.TEXT, Measure::getSubject),
    KNOWN(Fact.MEASURE, "known", Kind.TRUTH, Measure::isKnown),
    WORD(Fact.MEASURE, "word", Kind.TEXT, Measure::getWord),
    VALUE(Fact.MEASURE, "value", Kind.NUMBER, Measure::getValue),
    LIMIT(Fact.MEASURE, "limit", Kind.NUMBER, Measure::getLimit),
    HEADROOM(Fact.MEASURE, "headroom", Kind.NUMBER, Measure::getHeadroom),
    EXCESS(Fact.MEASURE, "excess", Kind.NUMBER, Measure::getExcess),
    SPARE(Fact.MEASURE, "spare", Kind.NUMBER, Measure::getSpare),
    TOLERANCE(Fact.MEASURE, "tolerance", Kind.NUMBER, Measure::getTolerance),
    PRACTICE_ID(Fact.PRACTICE, "id", Kind.TEXT, PracticeFact::id),
    PRACTICE_VALUE(Fact.PRACTICE, "value", Kind.NUMBER, PracticeFact::value),
    ADVISED_ID(Fact.ADVISED, "id", Kind.TEXT, Advised::id),
    ADVISED_SUBJECT(Fact.ADVISED, "subject", Kind.TEXT, Advised::subject);

    /** What may be compared with what: only like with like. */
    public enum Kind {
        TEXT("a text"),
        NUMBER("a number"),
        TRUTH("a yes or no");

        private final String described;

        Kind(String described) {
            this.described = described;
        }

        String described() {
            return described;
        }
    }

    private final Fact fact;
    private final String word;
    private final Kind kind;
    private final Function<Object, Object> read;

    @SuppressWarnings("unchecked")
    <F> Property(Fact fact, String word, Kind kind, Function<F, Object> read) {
        this.fact = fact;
        this.word = word;
        this.kind = kind;
        this.read = (Function<Object, Object>) read;
    }

    /** The kind of fact that has it. */
    public Fact fact() {
        return fact;
    }

    /** As rule files call it. */
    public String word() {
        return word;
    }

    public Kind kind() {
        return kind;
    }

    /** A String, a Double or a Boolean. @param of a fact that has it */
    public Object read(Object of) {
        return read.apply(of);
    }

    /** The one that says which fact of its kind is meant. */
    public static Property key(Fact fact) {
        return switch (fact) {
            case MEASURE -> NAME;
            case PRACTICE -> PRACTICE_ID;
            case ADVISED -> ADVISED_ID;
        };
    }

    /** The one that rule files call so, or null where the fact has none of this name. */
    static Property of(Fact fact, String word) {
        for (Property each : values()) {
            if (each.fact == fact && each.word.equals(word)) {
                return each;
            }
        }
        return null;
    }

    /** What may be asked of a fact, in the order of the alphabet. */
    static List<String> words(Fact fact) {
        return Arrays.stream(values())
                .filter(value -> value.fact == fact)
                .map(Property::word)
                .sorted()
                .toList();
    }
}
