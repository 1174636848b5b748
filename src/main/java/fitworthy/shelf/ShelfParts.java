package fitworthy.shelf;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Mark;
import fitworthy.quantity.QuantityText;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.ShopWords;
import fitworthy.sheet.ShopWords.Meaning;
import fitworthy.sheet.ShopWords.Thing;
import fitworthy.sheet.Wanted;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The parts, tanks and loads of a shelf, as far as somebody may mean them who names one. */
record ShelfParts(Shelf shelf) {

    /** What of a shelf is a part of a plan. */
    private static final List<Kind> KEPT = List.of(Kind.FITMENTS, Kind.TANKS, Kind.CARGO);

    private static final String LIFT = "lift";
    private static final Pattern NUMBER = Pattern.compile("[0-9]+");
    /** Shorter words of a name tell nothing: a, of, set. */
    private static final int TELLING = 4;

    /** The kind of those among which one is called so, in large or small letters. */
    Optional<Kind> named(String name) {
        return KEPT.stream().filter(kind -> shelf.named(kind, name).isPresent()).findFirst();
    }

    /** What a field of one says; empty where it says nothing. */
    private Optional<String> text(Kind kind, String name, NodePath field) {
        return shelf.named(kind, name)
                .map(own -> field.in(shelf.of(kind).get(own)))
                .filter(Node.Scalar.class::isInstance)
                .map(node -> Mark.read(((Node.Scalar) node).text()).text());
    }

    private Optional<String> text(Kind kind, String name, String field) {
        return text(kind, name, NodePath.of(field));
    }

    /** Whether it says the same of a field, within the tolerance of either. */
    boolean agrees(Kind kind, String name, String field, String said) {
        return text(kind, name, field).filter(own -> isSame(own, said)).isPresent();
    }

    /** Whether it says otherwise. */
    boolean contradicts(Kind kind, String name, String field, String said) {
        return text(kind, name, field).filter(own -> !isSame(own, said)).isPresent();
    }

    /**
     * What one that is called so has otherwise than was said, such as {@code On the shelf Winch has 39 kg}; empty where
     * nothing is.
     */
    String otherwise(Wanted wanted) {
        return named(wanted.name())
                .flatMap(kind -> wanted.said().entrySet().stream()
                        .filter(said -> contradicts(kind, wanted.name(), said.getKey(), said.getValue()))
                        .flatMap(said -> text(kind, wanted.name(), said.getKey()).stream())
                        .reduce((one, other) -> one + ", " + other)
                        .flatMap(figures -> shelf.named(kind, wanted.name()).map(name -> has(name, figures))))
                .orElse("");
    }

    /** The same of one field of a thing of the shelf. */
    String otherwise(Kind kind, String name, NodePath field, String said) {
        return text(kind, name, field)
                .filter(own -> !isSame(own, said))
                .map(own -> has(name, own))
                .orElse("");
    }

    /** The same of the lift of springs of the shelf, beside that of the others that they go with. */
    String otherLift(String springs, String lift, String others) {
        String otherwise = otherwise(Kind.FITMENTS, springs, NodePath.of(LIFT), lift);
        return otherwise.isEmpty() ? "" : otherwise + " of lift, not " + lift + " as " + others;
    }

    private static String has(String name, String figures) {
        return "On the shelf " + name + " has " + figures;
    }

    private static boolean isSame(String own, String said) {
        String typed = Mark.read(said).text();
        return own.equalsIgnoreCase(typed)
                || Stream.of(Dimension.values()).anyMatch(dimension -> isSame(own, typed, dimension));
    }

    private static boolean isSame(String own, String typed, Dimension dimension) {
        try {
            Figure one = QuantityText.parse(own, dimension);
            Figure other = QuantityText.parse(typed, dimension);
            double apart = Math.abs(one.value() - other.value());
            double rounding = 1e-9 * Math.abs(one.value());
            return apart <= tolerance(one) + tolerance(other) + rounding;
        } catch (QuantityText.Unreadable e) {
            return false;
        }
    }

    private static double tolerance(Figure figure) {
        return figure.hasTolerance() ? figure.tolerance() : 0;
    }

    /** One of a kind by its name; nothing where none is called so. */
    Optional<Wanted> taken(Kind kind, String name) {
        return KEPT.contains(kind) && shelf.of(kind).containsKey(name)
                ? Optional.of(wanted(kind, name))
                : Optional.empty();
    }

    /** One of them, as it is taken from the shelf. */
    Wanted wanted(Kind kind, String name) {
        boolean replaces = shelf.of(kind).get(name).get("removes") != null;
        List<Wanted.Feed> feeds = kind == Kind.FITMENTS ? shelf.feeds(name) : List.of();
        return new Wanted(name, meaning(kind, name), Map.of(), kind.inSheet(), replaces, feeds);
    }

    /** What the name of one stands for, as far as it says what a figure of it is. */
    Meaning meaning(Kind kind, String name) {
        if (kind == Kind.TANKS) {
            boolean own = text(kind, name, "stock")
                    .filter(stock -> stock.matches("yes|true"))
                    .isPresent();
            boolean water = text(kind, name, "liquid").filter("water"::equals).isPresent();
            return new Meaning(List.of(), List.of(own ? Thing.MAIN_TANK : water ? Thing.WATER_TANK : Thing.FUEL_TANK));
        }
        return text(kind, name, "kind")
                .map(word -> Meaning.of(List.of(word)))
                .orElse(new Meaning(List.of(), List.of(Thing.CARGO)));
    }

    /** Those that may be meant by what was not taken from the shelf: of its kind, and nothing said that they are not. */
    List<Lying> alike(Wanted wanted) {
        return wanted.shelf().isEmpty()
                ? KEPT.stream()
                        .flatMap(kind -> shelf.of(kind).keySet().stream()
                                .filter(name -> isAlike(wanted, kind, name))
                                .map(name ->
                                        new Lying(name, text(kind, name, "mass").orElse(""))))
                        .toList()
                : List.of();
    }

    private boolean isAlike(Wanted wanted, Kind kind, String name) {
        Meaning lies = meaning(kind, name);
        List<Fitment.Kind> kinds = lies.kinds();
        boolean same = kinds.isEmpty()
                ? wanted.meaning().kinds().isEmpty()
                        && wanted.meaning().things().equals(lies.things())
                : wanted.isFirst(kinds.get(0));
        // What no check knows, and a load, may be anything.
        boolean any = kinds.contains(Fitment.Kind.OTHER) || lies.things().contains(Thing.CARGO);
        return same
                && (!any || shareWords(wanted.name(), name))
                && haveSameNumbers(wanted.name(), name)
                && wanted.said().entrySet().stream()
                        .noneMatch(said -> contradicts(kind, name, said.getKey(), said.getValue()));
    }

    private static boolean shareWords(String one, String other) {
        List<String> words = words(one).toList();
        return words(other).anyMatch(words::contains);
    }

    private static Stream<String> words(String name) {
        return Stream.of(ShopWords.plain(name).split(" "))
                .filter(word -> word.length() >= TELLING)
                .map(word -> word.replaceFirst("s$", ""));
    }

    /** Whether the numbers of a wish, such as its size, stand in a name; a wish without any may be of every size. */
    private static boolean haveSameNumbers(String wish, String name) {
        List<String> own =
                NUMBER.matcher(name).results().map(found -> found.group()).toList();
        return own.isEmpty() || NUMBER.matcher(wish).results().allMatch(found -> own.contains(found.group()));
    }
}
