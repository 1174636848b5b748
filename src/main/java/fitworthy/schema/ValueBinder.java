package fitworthy.schema;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.GuessSpread;
import fitworthy.quantity.Mark;
import fitworthy.quantity.Missing;
import fitworthy.quantity.Money;
import fitworthy.quantity.QuantityText;
import fitworthy.quantity.YesNo;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** Makes single values of nodes: words, figures, answers, days and prices. */
final class ValueBinder {

    private static final Pattern NEGATIVE = Pattern.compile(QuantityText.SPACE + "*" + QuantityText.MINUS);
    private static final Pattern DAY = Pattern.compile(FieldSchema.DATE);
    private static final Pattern PRICE = Pattern.compile(FieldSchema.MONEY);

    /** Other words for an answer, in small letters. */
    private static final Map<String, String> MEANT = Map.ofEntries(
            Map.entry("y", "yes"),
            Map.entry("true", "yes"),
            Map.entry("on", "yes"),
            Map.entry("n", "no"),
            Map.entry("false", "no"),
            Map.entry("off", "no"),
            Map.entry("lifepo4", "lithium"),
            Map.entry("lfp", "lithium"),
            Map.entry("gasoline", "petrol"),
            Map.entry("unleaded", "petrol"),
            Map.entry("surge", "over-run"),
            Map.entry("mains", "shore"),
            Map.entry("hookup", "shore"),
            Map.entry("hook-up", "shore"),
            Map.entry("shore-power", "shore"),
            Map.entry("shore power", "shore"),
            Map.entry("campsite", "shore"),
            Map.entry("genset", "generator"),
            Map.entry("shore", "mains"),
            Map.entry("generator", "mains"),
            Map.entry("gooseneck", "fifth-wheel"));

    private final BoundTree tree;
    private final Examples examples;

    ValueBinder(BoundTree tree, Examples examples) {
        this.tree = tree;
        this.examples = examples;
    }

    String text(FieldSchema field, Node node, NodePath path) {
        boolean blank = node instanceof Node.Scalar scalar && scalar.text().isBlank();
        if (node instanceof Node.Scalar scalar
                && !(field.description().needed() && blank)
                && !(field.decides() && Mark.isAsked(scalar.text()))) {
            return scalar.text();
        }
        tree.tell(
                node,
                path,
                blank ? "is blank: " + field.description().value() : "is " + node.described() + " where words belong",
                examples.of(field, node));
        return "";
    }

    Figure figure(FieldSchema field, Node node, NodePath path) {
        try {
            if (!(node instanceof Node.Scalar scalar)) {
                throw new QuantityText.Unreadable("is " + node.described() + " where a figure belongs");
            }
            Mark.Marked marked = Mark.read(scalar.text());
            if (marked.isOpen()) {
                return Figure.missing(open(field, path, marked));
            }
            boolean signed = field.description().signed();
            Figure figure =
                    QuantityText.parse(marked.text(), field.description().in());
            if (!signed && NEGATIVE.matcher(marked.text()).lookingAt()) {
                throw new QuantityText.Unreadable(scalar.described() + " is negative");
            }
            if (!plausible(field, field.description().within().canBe(figure.value()), node, path)) {
                return Figure.missing(tree.missing(field, path));
            }
            return marked.mark() == Mark.STATED
                    ? figure
                    : GuessSpread.of(figure, field.description().in(), signed)
                            .guessedFor(tree.missing(field, path).marked(marked.mark()));
        } catch (QuantityText.Unreadable e) {
            tree.tell(node, path, e.getMessage(), examples.withUnits(field));
            return Figure.missing(tree.missing(field, path));
        }
    }

    /** The answer; the bare constant where it tells a kind. */
    Object choice(FieldSchema field, Node node, NodePath path) {
        List<String> words = ChoiceWords.of(field.type());
        Mark.Marked marked = field.tellsKind() ? new Mark.Marked(Mark.STATED, word(node)) : Mark.read(word(node));
        if (marked.isOpen()) {
            needed(field, node, path, "is asked for, but no sheet can do without it", examples.of(field));
            return Choice.missing(open(field, path, marked));
        }
        String word = marked.text();
        if (field.type() == YesNo.class) {
            word = word.equals("true") ? "yes" : word.equals("false") ? "no" : word;
        }
        int index = words.indexOf(word);
        if (index < 0) {
            String meant = MEANT.getOrDefault(word.toLowerCase(Locale.ROOT), word);
            tree.tell(
                    node,
                    path,
                    "is " + node.described() + ", which is not one of the answers"
                            + Words.suggestion(words.contains(meant) ? meant : word, words),
                    field.name() + ": one of " + String.join(", ", ChoiceWords.offered(field.type())));
            return noChoice(field, path);
        }
        Object constant = field.type().getEnumConstants()[index];
        if (field.tellsKind()) {
            return constant;
        }
        if (!marked.mark().isGuess()) {
            return choiceOf(constant);
        }
        needed(field, node, path, "is a guess, which does not do here", examples.of(field));
        return choiceOf(constant).guessedFor(tree.missing(field, path).marked(marked.mark()));
    }

    /**
     * What is missing and was asked for, or left to a book that has nothing usual of it. A figure that is needed may be:
     * a sheet has to say that nobody knows it yet.
     */
    private Missing open(FieldSchema field, NodePath path, Mark.Marked marked) {
        return tree.missing(field, path).marked(marked.mark() == Mark.ASKED ? Mark.ASKED : Mark.STATED);
    }

    /** Adds a fault where a sheet cannot do without the field. */
    private void needed(FieldSchema field, Node node, NodePath path, String problem, String right) {
        if (field.description().needed()) {
            tree.tell(node, path, problem, right);
        }
    }

    /** What a choice is that is not given. */
    Object noChoice(FieldSchema field, NodePath path) {
        return field.tellsKind() ? null : new Choice<>(null, tree.missing(field, path));
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Choice<?> choiceOf(Object constant) {
        return Choice.of((Enum) constant);
    }

    LocalDate date(FieldSchema field, Node node, NodePath path) {
        try {
            String text = word(node);
            if (!DAY.matcher(text).matches()) {
                throw new DateTimeException("a year has four digits here");
            }
            LocalDate day = LocalDate.of(
                    Integer.parseInt(text, 0, 4, 10),
                    Integer.parseInt(text, 5, 7, 10),
                    Integer.parseInt(text, 8, 10, 10));
            return plausible(field, field.description().within().canBe(day), node, path) ? day : null;
        } catch (DateTimeException e) {
            tree.tell(
                    node,
                    path,
                    "is " + node.described() + ", which is not a date",
                    examples.of(field, node) + " (year-month-day)");
            return null;
        }
    }

    Money money(FieldSchema field, Node node, NodePath path) {
        String text = word(node);
        if (!PRICE.matcher(text).matches()) {
            tree.tell(
                    node,
                    path,
                    "is " + node.described() + ", which is not a price",
                    examples.of(field, node) + " (amount and currency code)");
            return null;
        }
        return new Money(new BigDecimal(text.substring(0, text.length() - 4)), text.substring(text.length() - 3));
    }

    /** Whether a value can be; a fault where it cannot. */
    private boolean plausible(FieldSchema field, boolean canBe, Node node, NodePath path) {
        if (!canBe) {
            tree.tell(
                    node,
                    path,
                    "is " + node.described() + ", which is not between "
                            + field.description().within().limits(),
                    examples.of(field));
        }
        return canBe;
    }

    private static String word(Node node) {
        return node instanceof Node.Scalar scalar ? scalar.text() : "";
    }
}
