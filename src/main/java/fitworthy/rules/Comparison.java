package fitworthy.rules;

import fitworthy.rules.Property.Kind;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a pattern asks of its fact. Each prints itself as a rule file writes it. */
public sealed interface Comparison {

    /**
     * Whether it holds. The engine decides what fires; a test holds this against it over every case of the book.
     *
     * @param fact the fact whose properties it names
     * @param bound facts bound earlier in the rule, by name
     */
    boolean holds(Object fact, Map<String, Object> bound);

    /** The properties it names, in the order of writing. */
    Stream<Named> named();

    /** The comparisons of two terms in it, in the order of writing. */
    default Stream<Compared> compared() {
        return Stream.empty();
    }

    /** Parts as they are written, those that are made of parts themselves in brackets. */
    private static String joined(List<Comparison> parts, String sign) {
        return parts.stream()
                .map(part -> part instanceof Both || part instanceof Either ? "(" + part + ")" : part.toString())
                .collect(Collectors.joining(sign));
    }

    /** All of two or more hold. */
    record Both(List<Comparison> parts) implements Comparison {
        @Override
        public boolean holds(Object fact, Map<String, Object> bound) {
            return parts.stream().allMatch(part -> part.holds(fact, bound));
        }

        @Override
        public Stream<Named> named() {
            return parts.stream().flatMap(Comparison::named);
        }

        @Override
        public Stream<Compared> compared() {
            return parts.stream().flatMap(Comparison::compared);
        }

        @Override
        public String toString() {
            return joined(parts, " && ");
        }
    }

    /** At least one of two or more holds. */
    record Either(List<Comparison> parts) implements Comparison {
        @Override
        public boolean holds(Object fact, Map<String, Object> bound) {
            return parts.stream().anyMatch(part -> part.holds(fact, bound));
        }

        @Override
        public Stream<Named> named() {
            return parts.stream().flatMap(Comparison::named);
        }

        @Override
        public Stream<Compared> compared() {
            return parts.stream().flatMap(Comparison::compared);
        }

        @Override
        public String toString() {
            return joined(parts, " || ");
        }
    }

    /** It does not hold. */
    record Not(Comparison part) implements Comparison {
        @Override
        public boolean holds(Object fact, Map<String, Object> bound) {
            return !part.holds(fact, bound);
        }

        @Override
        public Stream<Named> named() {
            return part.named();
        }

        @Override
        public Stream<Compared> compared() {
            return part.compared();
        }

        @Override
        public String toString() {
            return part instanceof Holds ? "!" + part : "!(" + part + ")";
        }
    }

    /** The answer is yes. @param property a yes or no */
    record Holds(Named property) implements Comparison {
        @Override
        public boolean holds(Object fact, Map<String, Object> bound) {
            return (Boolean) property.value(fact, bound);
        }

        @Override
        public Stream<Named> named() {
            return Stream.of(property);
        }

        @Override
        public String toString() {
            return property.toString();
        }
    }

    /** What another comparison takes for granted and the rule file need not say. @param property a yes or no */
    record Asked(Named property) implements Comparison {
        @Override
        public boolean holds(Object fact, Map<String, Object> bound) {
            return (Boolean) property.value(fact, bound);
        }

        @Override
        public Stream<Named> named() {
            return Stream.of(property);
        }

        @Override
        public String toString() {
            return property.toString();
        }
    }

    /** Like compared with like: numbers by any operator, texts and answers by {@code ==} and {@code !=} alone. */
    record Compared(Term left, Operator operator, Term right) implements Comparison {
        @Override
        public boolean holds(Object fact, Map<String, Object> bound) {
            return operator.holds(left.value(fact, bound), right.value(fact, bound));
        }

        @Override
        public Stream<Named> named() {
            return Stream.of(left, right).filter(Named.class::isInstance).map(Named.class::cast);
        }

        @Override
        public Stream<Compared> compared() {
            return Stream.of(this);
        }

        @Override
        public String toString() {
            return left + " " + operator + " " + right;
        }
    }

    /** One side of a comparison. */
    sealed interface Term {
        Kind kind();

        /** A String, a Double or a Boolean. */
        Object value(Object fact, Map<String, Object> bound);
    }

    /** A property of the fact, or of one bound earlier. @param binding its name, null for the fact itself */
    record Named(String binding, Property property) implements Term {
        @Override
        public Kind kind() {
            return property.kind();
        }

        @Override
        public Object value(Object fact, Map<String, Object> bound) {
            return property.read(binding == null ? fact : bound.get(binding));
        }

        @Override
        public String toString() {
            return binding == null ? property.word() : binding + "." + property.word();
        }
    }

    /** A word in quotes. @param text without them */
    record Text(String text) implements Term {
        @Override
        public Kind kind() {
            return Kind.TEXT;
        }

        @Override
        public Object value(Object fact, Map<String, Object> bound) {
            return text;
        }

        @Override
        public String toString() {
            return "\"" + text + "\"";
        }
    }

    /** The only number that may stand in a rule. */
    record Zero() implements Term {
        @Override
        public Kind kind() {
            return Kind.NUMBER;
        }

        @Override
        public Object value(Object fact, Map<String, Object> bound) {
            return 0.0;
        }

        @Override
        public String toString() {
            return "0";
        }
    }

    /** An answer, {@code true} or {@code false}. */
    record Truth(boolean is) implements Term {
        @Override
        public Kind kind() {
            return Kind.TRUTH;
        }

        @Override
        public Object value(Object fact, Map<String, Object> bound) {
            return is;
        }

        @Override
        public String toString() {
            return String.valueOf(is);
        }
    }

    /** How two terms are compared. */
    enum Operator {
        EQUAL("=="),
        UNEQUAL("!="),
        BELOW("<"),
        AT_MOST("<="),
        ABOVE(">"),
        AT_LEAST(">=");

        private final String sign;

        Operator(String sign) {
            this.sign = sign;
        }

        /** The operator that rule files write so, or null. */
        static Operator of(String sign) {
            for (Operator each : values()) {
                if (each.sign.equals(sign)) {
                    return each;
                }
            }
            return null;
        }

        /** Whether it says which of two numbers is the larger one. */
        boolean orders() {
            return this != EQUAL && this != UNEQUAL;
        }

        private boolean holds(Object left, Object right) {
            if (left instanceof Double a && right instanceof Double b) {
                return switch (this) {
                    case EQUAL -> a.doubleValue() == b;
                    case UNEQUAL -> a.doubleValue() != b;
                    case BELOW -> a < b;
                    case AT_MOST -> a <= b;
                    case ABOVE -> a > b;
                    case AT_LEAST -> a >= b;
                };
            }
            return left.equals(right) == (this == EQUAL);
        }

        @Override
        public String toString() {
            return sign;
        }
    }
}
