package fitworthy.shelf;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Mark;
import fitworthy.quantity.QuantityText;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.Plausible;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.ShopWords;
import fitworthy.sheet.ShopWords.Meaning;
import fitworthy.sheet.TyreSize;
import fitworthy.sheet.Wanted;
import fitworthy.source.Fault;
import fitworthy.source.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Understands what is typed of one part or other thing of a plan by its name, with a figure or a kind behind an equals sign.
 *
 * @param words what the rule book knows the trade's words to mean
 * @param shelf what may be taken from it by name
 */
record NamedPart(ShopWords words, Shelf shelf, TypedFaults faults) {

    static final String PART = "part";
    /** The field of a tyre's size. */
    private static final String SIZE = "size";
    /** What joins two things, or a thing with what it is for. */
    private static final Pattern SEVERAL = Pattern.compile(",|\\b(?:and|for|with)\\b");
    /** What begins so after the equals sign is a figure, and anything else a kind. */
    private static final Pattern FIGURE = Pattern.compile("(about\\s+)?[0-9.].*");
    /** A figure with more words behind it. */
    private static final Pattern MORE = Pattern.compile("((?:about\\s+)?[0-9.]+\\s*\\p{L}+),?\\s+(.+)");
    /** What words of a place begin with. */
    private static final Pattern PLACE = Pattern.compile("(?:in|on|at|under|above|over|behind|beside)\\s.*");
    /** What may stand behind the size of a tyre, such as 121S. */
    private static final Pattern LOAD_AND_SPEED = Pattern.compile("\\s+[0-9]{2,3}[A-Z]$");
    /** What customers say of a part beside its mass. */
    private static final Set<String> MEASURES = Set.of("length", "lift", "capacity", "power");
    /**
     * What the number in a part's name mostly is, and may not be: the power of an inverter, which by some makers it gives for a
     * moment, and the current of a charger, which by some it takes. It goes in as a guess.
     */
    private static final Set<String> MOSTLY = Set.of("continuous", "output");

    /** The same with faults told to another. */
    NamedPart telling(List<Fault> others) {
        return new NamedPart(words, shelf, new TypedFaults(faults.dashes(), others));
    }

    /** Whether it is to be read as it stands, whatever else it could be in a letter. */
    boolean isName(String wish) {
        return wish.contains("=") || onShelf(wish).isPresent() || words.all().contains(ShopWords.plain(wish));
    }

    boolean isUnderstood(String name) {
        return onShelf(name).isPresent() || words.of(name).isPresent();
    }

    ShelfParts lying() {
        return new ShelfParts(shelf);
    }

    Optional<Kind> onShelf(String name) {
        return lying().named(name);
    }

    /** What it is; null where it is not understood, which the faults tell. */
    Wanted of(String typed) {
        NamedFigure read = NamedFigure.of(typed);
        String name = faults.name(PART, read.name(), right());
        String said = read.said();
        boolean figure = FIGURE.matcher(said).matches();
        String word = said.isEmpty() || figure ? name : said;
        String sized = name + " " + Mark.read(said).text();
        if (figure && isSize(said) && onShelf(sized).isPresent()) {
            return of(sized);
        }
        Optional<Meaning> any = words.of(word);
        // What the trade calls any such part is another one where its figure is another than the shelf's, unless it is
        // written as the shelf writes it.
        Optional<Kind> kept = (word.equals(name) ? onShelf(name) : Optional.<Kind>empty())
                .filter(kind -> !figure
                        || !words.all().contains(ShopWords.plain(name))
                        || shelf.of(kind).containsKey(name)
                        || any.filter(meant -> lying().contradicts(kind, name, field(meant, said), said))
                                .isEmpty());
        String own = kept.flatMap(kind -> shelf.named(kind, name)).orElse(name);
        Optional<Meaning> meaning = kept.map(kind -> lying().meaning(kind, own)).or(() -> any);
        if (meaning.isEmpty()) {
            if (!name.isEmpty()) {
                faults.tellWords(
                        PART,
                        word,
                        "is no kind of part, and no word for one that the rule book knows"
                                + Words.suggestions(word, words.all()),
                        (SEVERAL.matcher(word).find() ? "one thing a line, in few words: " : "") + right());
            }
            return null;
        }
        Matcher more = MORE.matcher(said);
        if (more.matches() && !isQuantity(said)) {
            boolean place = PLACE.matcher(more.group(2)).matches();
            faults.tellWords(
                    PART,
                    more.group(2),
                    "is no place in words",
                    right(name + "=" + more.group(1) + (place ? " under the tray" : "")));
            return null;
        }
        Wanted bare =
                kept.map(kind -> lying().wanted(kind, own)).orElseGet(() -> new Wanted(own, meaning.get(), Map.of()));
        String field = field(meaning.get(), said);
        if (kept.filter(kind -> figure && lying().agrees(kind, own, field, said))
                .isPresent()) {
            return bare;
        }
        if (field.equals(SIZE)) {
            return bare.with(Map.of(field, said));
        }
        // No field has the size of what no check knows, so that its name keeps it.
        if (figure && kept.isEmpty() && meaning.get().kinds().contains(Fitment.Kind.OTHER) && isSize(said)) {
            return new Wanted(name + " " + Mark.read(said).text(), meaning.get(), Map.of());
        }
        if (figure) {
            lookAt(name, meaning.get(), said);
        }
        return figure ? bare.with(Map.of(field, marked(field, said))) : bare;
    }

    private String right() {
        return right("bull bar") + ", " + right("winch=26 kg") + ", " + right("NAME=other")
                + " for what no check knows, or " + right("Dog=cargo") + " for a load";
    }

    /** What would be right, as it is typed. */
    String right(String typed) {
        return faults.right(PART, typed);
    }

    /** The field that a figure belongs into. */
    private static String field(Meaning meaning, String typed) {
        boolean tyres = meaning.kinds().equals(List.of(Fitment.Kind.TYRES))
                && TyreSize.read(LOAD_AND_SPEED.matcher(typed).replaceFirst("")).isPresent();
        return tyres
                ? SIZE
                : measure(meaning, typed).map(FieldSchema::name).orElse(meaning.isTank() ? "capacity" : "mass");
    }

    private static String marked(String field, String typed) {
        return MOSTLY.contains(field) && !Mark.read(typed).mark().isGuess() ? Mark.ABOUT.before(typed) : typed;
    }

    /** Tells of a figure that cannot be in its field. */
    private void lookAt(String name, Meaning meaning, String typed) {
        measure(meaning, typed)
                .ifPresentOrElse(
                        field -> faults.figure(PART, typed, field, right(name + "=" + field.example())),
                        () -> massOrCapacity(name, meaning, typed));
    }

    private void massOrCapacity(String name, Meaning meaning, String typed) {
        boolean tank = meaning.isTank();
        String mass = meaning.kinds().stream()
                .map(kind -> kind.examples().get("mass"))
                .findFirst()
                .orElse("20 kg");
        faults.figure(
                PART,
                typed,
                tank ? Dimension.VOLUME : Dimension.MASS,
                tank ? Plausible.CAPACITY : Plausible.PART_MASS,
                right(name + "=" + (tank ? "140 L" : mass))
                        + measures(meaning)
                                .map(field -> " or " + right(name + "=" + field.example()))
                                .collect(Collectors.joining())
                        + (isIn(Dimension.POWER, typed) || isIn(Dimension.CURRENT, typed)
                                ? ", and what it draws as a circuit of the sheet"
                                : ""));
    }

    /** What else than its mass a figure of a part tells by its unit, such as the length of a canopy. */
    private static Optional<FieldSchema> measure(Meaning meaning, String typed) {
        return measures(meaning)
                .filter(field -> isIn(field.description().in(), typed))
                .findFirst();
    }

    private static Stream<FieldSchema> measures(Meaning meaning) {
        return meaning.kinds().stream()
                .limit(1)
                .flatMap(kind -> RecordSchema.of(kind.details()).fields().stream())
                .filter(field -> field.content() == FieldSchema.Content.FIGURE)
                .filter(field -> MEASURES.contains(field.name()) || MOSTLY.contains(field.name()));
    }

    private static boolean isSize(String typed) {
        return isIn(Dimension.VOLUME, typed) || isIn(Dimension.LENGTH, typed);
    }

    private static boolean isQuantity(String typed) {
        return Stream.of(Dimension.values()).anyMatch(dimension -> isIn(dimension, typed));
    }

    private static boolean isIn(Dimension dimension, String typed) {
        try {
            QuantityText.parse(Mark.read(typed).text(), dimension);
            return true;
        } catch (QuantityText.Unreadable e) {
            return false;
        }
    }
}
