package fitworthy.book;

import fitworthy.rules.Comparison.Operator;

/** What a comparison says of a property of a fact. */
sealed interface Claim {

    /** The comparison as its rule file writes it, or the reason why it holds anyway. */
    String written();

    /** Whether no fact can be as both of them say. */
    boolean excludes(Claim other);

    /** A yes or no. @param of the property */
    record Is(String written, String of, boolean is) implements Claim {
        @Override
        public boolean excludes(Claim other) {
            return other instanceof Is that && of.equals(that.of) && is != that.is;
        }
    }

    /** A text, or any but that. @param of the property */
    record Says(String written, String of, String text, boolean is) implements Claim {
        @Override
        public boolean excludes(Claim other) {
            return other instanceof Says that
                    && of.equals(that.of)
                    && (text.equals(that.text) ? is != that.is : is && that.is);
        }
    }

    /**
     * How two numbers stand to each other.
     *
     * @param left the one, first by name
     * @param relation the sum of what may hold: 1 where left is less, 2 where they are the same, 4 where it is more
     */
    record Order(String written, String left, String right, int relation) implements Claim {

        private static final int ANY = 7;

        static Order of(String written, String left, Operator operator, String right, boolean is) {
            int holds =
                    switch (operator) {
                        case BELOW -> 1;
                        case EQUAL -> 2;
                        case AT_MOST -> 3;
                        case ABOVE -> 4;
                        case UNEQUAL -> 5;
                        case AT_LEAST -> 6;
                    };
            int relation = is ? holds : ANY - holds;
            return left.compareTo(right) <= 0
                    ? new Order(written, left, right, relation)
                    : new Order(written, right, left, turned(relation));
        }

        private static int turned(int relation) {
            return (relation & 2) + (relation & 1) * 4 + (relation & 4) / 4;
        }

        @Override
        public boolean excludes(Claim other) {
            return other instanceof Order that
                    && left.equals(that.left)
                    && right.equals(that.right)
                    && (relation & that.relation) == 0;
        }
    }
}
