package fitworthy.shelf;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Mark;
import fitworthy.quantity.QuantityText;
import fitworthy.schema.ChoiceWords;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.Plausible;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetDraft.Towed;
import fitworthy.sheet.SheetDraft.Wanted;
import fitworthy.sheet.ShopWords;
import fitworthy.sheet.ShopWords.Meaning;
import fitworthy.sheet.ShopWords.Thing;
import fitworthy.sheet.Tank.Liquid;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.TyreSize;
import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Understands what is typed of a sheet, as an option, in answer to a question or on a page.
 *
 * @param words what the rule book knows the trade's words to mean
 * @param shelf what may be taken from it by name
 * @param regions those of the rule book
 * @param places the place in words that a wish ends with, as the rule book knows it
 * @param dashes what stands before the name of an option, by which faults tell what was typed; nothing on a page
 * @param faults gets what is wrong with what was typed
 */
public record SheetWords(
        ShopWords words,
        Shelf shelf,
        Collection<String> regions,
        Function<String, Optional<String>> places,
        String dashes,
        List<Fault> faults) {

    /** What begins so after the equals sign is a figure, and anything else a kind. */
    private static final Pattern FIGURE = Pattern.compile("(about\\s+)?[0-9.].*");
    /** What a command line takes without quotes. */
    private static final Pattern PLAIN = Pattern.compile("[a-z0-9]+");
    /** What of a shelf is a part of a plan. */
    private static final List<Kind> KEPT = List.of(Kind.FITMENTS, Kind.TANKS, Kind.CARGO);
    /** What customers say of a part beside its mass. */
    private static final Set<String> MEASURES = Set.of("length", "lift", "capacity", "power");

    /** What may stand behind the size of a tyre, such as 121S. */
    private static final Pattern LOAD_AND_SPEED = Pattern.compile("\\s+[0-9]{2,3}[A-Z]$");

    private static final String MASS = "mass";
    private static final String AT = "at";
    private static final String CAPACITY = "capacity";
    /** What a name says of a part beside its kind, by the field that holds it: a lithium battery, an UHF radio. */
    private static final Set<String> NAMED = Set.of("chemistry", "service");
    /** Choices that a name does not tell. */
    private static final Set<String> UNTOLD = Set.of("other");
    /** The service of a UHF radio is another one elsewhere. */
    private static final String UHF_REGION = "au";
    /** A figure with more words behind it. */
    private static final Pattern MORE = Pattern.compile("((?:about\\s+)?[0-9.]+\\s*\\p{L}+),?\\s+(.+)");
    /** What words of a place begin with. */
    private static final Pattern PLACE = Pattern.compile("(?:in|on|at|under|above|over|behind|beside)\\s.*");
    /** The units that letters spell out, each as a sheet writes it. */
    private static final Map<String, String> SPELT =
            Map.of("litre", "L", "litres", "L", "l", "L", "watt", "W", "watts", "W", "metre", "m", "metres", "m");

    private static final String AMOUNT =
            "((?:about\\s+)?[0-9][0-9.]*)\\s*(mm|cm|m|kg|L|Ah|W|" + String.join("|", SPELT.keySet()) + ")";
    /** A figure in a wish as letters have it: a canopy about 1.8 m long, a lift kit, 50 mm, a water tank of 60 litres. */
    private static final Pattern AMOUNT_LAST = Pattern.compile("(.+?),?\\s+(?:of\\s+)?" + AMOUNT + "(?:\\s+long)?");
    /** The size of tyres in a wish. */
    private static final Pattern SIZED = Pattern.compile("(.*?)[\\s,]*\\b([0-9]{3}/[0-9]{2}R[0-9]{2})\\b[\\s,]*(.*)");
    /** The same before the name: a 200 watt solar panel. */
    private static final Pattern AMOUNT_FIRST = Pattern.compile(AMOUNT + "\\s+(.+)");
    /** What the engine may burn. */
    private static final List<String> FUELS = List.of("diesel", "petrol");

    /** Whether a vehicle of this name lies on the shelf. */
    public boolean isOnShelf(String vehicle) {
        return vehicle != null && kept(Kind.VEHICLES, vehicle).isPresent();
    }

    /** Its name, as the shelf writes it where it lies there. @param typed null where nothing was */
    public String vehicle(String typed) {
        String name = name("vehicle", typed, right("vehicle", "Tarrenby 3.0 wagon"));
        return kept(Kind.VEHICLES, name).orElse(name);
    }

    /** The name of what lies on the shelf, in large or small letters. */
    private Optional<String> kept(Kind kind, String typed) {
        String name = typed.strip();
        Set<String> names = shelf.of(kind).keySet();
        return names.contains(name)
                ? Optional.of(name)
                : names.stream().filter(name::equalsIgnoreCase).findFirst();
    }

    /** The fuel; null where it is none. */
    public Liquid fuel(String typed) {
        String fuel = typed == null ? "" : typed.strip();
        if (!FUELS.contains(fuel)) {
            tell(
                    "fuel",
                    fuel.isEmpty() ? "is missing" : "'" + fuel + "' is none" + Words.suggestion(fuel, FUELS),
                    right("fuel", "diesel") + ", or petrol");
            return null;
        }
        return Liquid.values()[ChoiceWords.of(Liquid.class).indexOf(fuel)];
    }

    /** How many are aboard; 0 where it is no number of people. */
    public int people(String typed) {
        String people = typed == null ? "" : typed.strip();
        boolean number = people.matches("[1-9][0-9]?") && Plausible.SEATS.canBe(Integer.parseInt(people));
        if (!number) {
            tell(
                    "people",
                    people.isEmpty() ? "is missing" : "'" + people + "' is no number of people with a driver",
                    right("people", "2") + ", the driver counted");
        }
        return number ? Integer.parseInt(people) : 0;
    }

    /** A region of the book; any where nothing was typed. */
    public String region(String typed) {
        String region = typed == null || typed.isBlank() ? "any" : typed.strip();
        if (!regions.contains(region)) {
            tell(
                    "region",
                    "the rule book has no region '" + region + "'" + Words.suggestion(region, regions),
                    "one of " + String.join(", ", regions));
        }
        return region;
    }

    /** A trailer, with its mass where that was typed; nothing where none was. */
    public Optional<Towed> trailer(String typed) {
        return typed == null || typed.isBlank() ? Optional.empty() : trailer(before(typed), after(typed), "", "");
    }

    /**
     * A trailer; nothing where it has no name.
     *
     * @param ball its ball load
     * @param rated what its plate allows
     */
    public Optional<Towed> trailer(String name, String mass, String ball, String rated) {
        if (name.isBlank()) {
            return Optional.empty();
        }
        String right = right("trailer", "Camper=1400 kg");
        figure("trailer", mass, Dimension.MASS, Plausible.TRAILER_MASS, right);
        String own = name("trailer", name, right);
        Optional<String> kept = kept(Kind.TRAILERS, own);
        return Optional.of(new Towed(
                kept.orElse(own),
                mass,
                figure(field(Trailer.class, "ball"), ball),
                figure(field(Trailer.class, "rated"), rated),
                kept.isPresent()));
    }

    /** A figure of a field with its unit, which may be left out; nothing where nothing was typed. */
    public String figure(FieldSchema field, String typed) {
        String unit = field.example().replaceFirst("^[0-9.]+\\s*(\\S+).*", "$1");
        String figure = typed.strip().matches("(about\\s+)?[0-9.]+") ? typed.strip() + " " + unit : typed.strip();
        figure(
                field.name(),
                figure,
                field.description().in(),
                field.description().within(),
                right(field.name(), field.example()));
        return figure;
    }

    /** One of the answers of a field, as a sheet writes it; nothing where nothing was typed. */
    public String choice(FieldSchema field, String typed) {
        List<String> answers = ChoiceWords.of(field.type());
        if (!typed.isEmpty() && !answers.contains(typed)) {
            tell(
                    field.name(),
                    "'" + Words.shortened(typed, 60) + "' is no answer" + Words.suggestion(typed, answers),
                    "one of " + String.join(", ", answers));
        }
        return typed;
    }

    /** A day, as a sheet writes it; nothing where nothing was typed. */
    public String day(FieldSchema field, String typed) {
        if (!typed.isEmpty() && !isDay(field, typed)) {
            tell(
                    field.name(),
                    "'" + Words.shortened(typed, 60) + "' is no day that can be meant",
                    right(field.name(), "2027-05-01"));
        }
        return typed;
    }

    private static boolean isDay(FieldSchema field, String typed) {
        try {
            return typed.matches(FieldSchema.DATE)
                    && field.description().within().canBe(LocalDate.parse(typed));
        } catch (DateTimeParseException e) {
            return false;
        }
    }

    /** A field of a record of the sheet. */
    public static FieldSchema field(Class<? extends Record> type, String name) {
        return RecordSchema.of(type).fields().stream()
                .filter(field -> field.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The masses of the people, the driver's first, a comma between two. */
    public List<String> masses(String typed, int people) {
        FieldSchema mass = field(Sheet.Person.class, MASS);
        List<String> masses = Stream.of(typed.split("[,;]|\\band\\b"))
                .map(String::strip)
                .filter(one -> !one.isEmpty())
                .map(one -> figure(mass, one))
                .toList();
        if (masses.size() > people) {
            tell("masses", "are of " + masses.size() + " people, and " + people + " are aboard", "one mass a person");
        }
        return masses;
    }

    /**
     * A part or another thing by its name, or under a name of its own ({@code Nellie=canopy}), with its mass,
     * what it holds or another measure of its kind where that was typed ({@code winch=26 kg}, {@code canopy=1.8 m}),
     * and with its place ({@code water tank=60 L under the tray}); null where it is not understood.
     *
     * @param region where the vehicle is registered
     */
    public Wanted part(String typed, String region) {
        String right =
                right("part", "bull bar") + ", " + right("part", "winch=26 kg") + ", " + right("part", "NAME=other")
                        + " for what no check knows, or " + right("part", "Dog=cargo") + " for a load";
        String wish = typed == null ? "" : typed.strip();
        Optional<String> place = place(wish);
        String bare = place.map(where ->
                        wish.substring(0, wish.length() - where.length()).replaceFirst("[\\s,=]+$", ""))
                .orElse(wish);
        Wanted wanted = unplaced(equated(bare), right);
        if (wanted == null) {
            return null;
        }
        Map<String, String> said = new LinkedHashMap<>(wanted.said());
        if (wanted.shelf().isEmpty()) {
            wanted.meaning().kinds().stream().limit(1).forEach(kind -> said.putAll(named(kind, wanted.name(), region)));
        }
        place.ifPresent(where -> said.put(AT, where));
        return new Wanted(wanted.name(), wanted.meaning(), said, wanted.shelf(), wanted.replaces());
    }

    /** A wish in the words of a letter with its figure behind an equals sign, where what is left is understood. */
    private String equated(String wish) {
        if (wish.contains("=") || onShelf(wish).isPresent() || words.all().contains(ShopWords.plain(wish))) {
            return wish;
        }
        String bare = wish.replaceFirst("^(?:an?|the)\\s+", "");
        Matcher last = AMOUNT_LAST.matcher(bare);
        if (last.matches() && isUnderstood(last.group(1))) {
            return last.group(1) + "=" + amount(last.group(2), last.group(3));
        }
        Matcher first = AMOUNT_FIRST.matcher(bare);
        if (first.matches() && isUnderstood(first.group(3))) {
            return first.group(3) + "=" + amount(first.group(1), first.group(2));
        }
        Matcher size = SIZED.matcher(bare);
        if (size.matches() && isUnderstood((size.group(1) + " " + size.group(3)).strip())) {
            return (size.group(1) + " " + size.group(3)).strip() + "=" + size.group(2);
        }
        return isUnderstood(bare) ? bare : wish;
    }

    private boolean isUnderstood(String name) {
        return onShelf(name).isPresent() || words.of(name).isPresent();
    }

    private static String amount(String number, String unit) {
        return number + " " + SPELT.getOrDefault(unit, unit);
    }

    /** The place at the end of what was typed, unless all of it is the name of something. */
    private Optional<String> place(String typed) {
        return places.apply(typed)
                .filter(where ->
                        where.length() < typed.length() && onShelf(typed).isEmpty());
    }

    /** The list of the shelf that has a part of this name. */
    private Optional<Kind> onShelf(String name) {
        return KEPT.stream()
                .filter(kind ->
                        kept(kind, name).filter(lies -> isMeant(lies, name)).isPresent())
                .findFirst();
    }

    /** What the name says of a part beside its kind. */
    private static Map<String, String> named(Fitment.Kind kind, String name, String region) {
        Set<String> own = Set.of(ShopWords.plain(name).split(" "));
        Map<String, String> named = new LinkedHashMap<>();
        RecordSchema.of(kind.details()).fields().stream()
                .filter(field -> NAMED.contains(field.name())
                        && (!field.name().equals("service") || region.startsWith(UHF_REGION)))
                .forEach(field -> ChoiceWords.of(field.type()).stream()
                        .filter(word -> !UNTOLD.contains(word) && own.contains(word.split("-")[0]))
                        .findFirst()
                        .ifPresent(word -> named.put(field.name(), word)));
        return named;
    }

    private Wanted unplaced(String typed, String right) {
        String name = name("part", before(typed), right);
        String said = after(typed);
        boolean figure = FIGURE.matcher(said).matches();
        String word = said.isEmpty() || figure ? name : said;
        Optional<Kind> kept = word.equals(name) ? onShelf(name) : Optional.empty();
        String own = kept.flatMap(kind -> kept(kind, name)).orElse(name);
        Optional<Meaning> meaning = kept.map(kind -> meaning(kind, own)).or(() -> words.of(word));
        if (meaning.isEmpty()) {
            if (!name.isEmpty()) {
                tell(
                        "part",
                        "'" + Words.shortened(word, 60)
                                + "' is no kind of part, and no word for one that the rule book knows"
                                + Words.suggestion(word, words.all()),
                        right);
            }
            return null;
        }
        Matcher more = MORE.matcher(said);
        if (more.matches()) {
            boolean place = PLACE.matcher(more.group(2)).matches();
            tell(
                    "part",
                    "'" + Words.shortened(more.group(2), 60) + "' is no place in words",
                    right("part", name + "=" + more.group(1) + (place ? " under the tray" : "")));
            return null;
        }
        String shelf = kept.map(Kind::inSheet).orElse("");
        boolean replaces = kept.filter(kind -> this.shelf.of(kind).get(own).get("removes") != null)
                .isPresent();
        if (meaning.get().kinds().equals(List.of(Fitment.Kind.TYRES))
                && TyreSize.read(LOAD_AND_SPEED.matcher(said).replaceFirst("")).isPresent()) {
            return new Wanted(own, meaning.get(), Map.of("size", said), shelf, replaces);
        }
        // No field has the size of what no check knows, so that its name keeps it.
        if (figure && kept.isEmpty() && meaning.get().kinds().contains(Fitment.Kind.OTHER) && isSize(said)) {
            return new Wanted(name + " " + Mark.read(said).text(), meaning.get(), Map.of(), "", false);
        }
        Optional<FieldSchema> measure = measure(meaning.get(), figure ? said : "");
        measure.ifPresentOrElse(
                field -> figure(
                        "part",
                        said,
                        field.description().in(),
                        field.description().within(),
                        right("part", name + "=" + field.example())),
                () -> massOrCapacity(name, meaning.get(), figure ? said : ""));
        String field = measure.map(FieldSchema::name).orElse(meaning.get().isTank() ? CAPACITY : MASS);
        return new Wanted(own, meaning.get(), figure ? Map.of(field, said) : Map.of(), shelf, replaces);
    }

    /** What the trade calls a part is any such part, where the shelf has one that is called so but for its capitals. */
    private boolean isMeant(String onShelf, String typed) {
        return onShelf.equals(typed) || !words.all().contains(ShopWords.plain(typed));
    }

    private void massOrCapacity(String name, Meaning meaning, String typed) {
        boolean tank = meaning.isTank();
        String mass = meaning.kinds().stream()
                .map(kind -> kind.examples().get("mass"))
                .findFirst()
                .orElse("20 kg");
        figure(
                "part",
                typed,
                tank ? Dimension.VOLUME : Dimension.MASS,
                tank ? Plausible.CAPACITY : Plausible.PART_MASS,
                right("part", name + "=" + (tank ? "140 L" : mass)));
    }

    /** What else than its mass a figure of a part tells by its unit, such as the length of a canopy. */
    private static Optional<FieldSchema> measure(Meaning meaning, String typed) {
        return meaning.kinds().stream()
                .limit(typed.isEmpty() ? 0 : 1)
                .flatMap(kind -> RecordSchema.of(kind.details()).fields().stream())
                .filter(field -> field.content() == FieldSchema.Content.FIGURE)
                .filter(field -> MEASURES.contains(field.name())
                        && isIn(field.description().in(), typed))
                .findFirst();
    }

    private static boolean isSize(String typed) {
        return isIn(Dimension.VOLUME, typed) || isIn(Dimension.LENGTH, typed);
    }

    private static boolean isIn(Dimension dimension, String typed) {
        try {
            QuantityText.parse(Mark.read(typed).text(), dimension);
            return true;
        } catch (QuantityText.Unreadable e) {
            return false;
        }
    }

    /** What the name of something on the shelf stands for, as far as it says what a figure of it is. */
    private Meaning meaning(Kind kept, String name) {
        if (kept == Kind.TANKS) {
            boolean own = shelf.of(kept).get(name).get("stock") instanceof Node.Scalar stock
                    && Mark.read(stock.text()).text().matches("yes|true");
            return new Meaning(List.of(), List.of(own ? Thing.MAIN_TANK : Thing.FUEL_TANK));
        }
        return shelf.of(kept).get(name).get("kind") instanceof Node.Scalar kind
                ? Meaning.of(List.of(kind.text()))
                : new Meaning(List.of(), List.of(Thing.CARGO));
    }

    private static String before(String typed) {
        return typed.contains("=") ? typed.substring(0, typed.indexOf('=')) : typed;
    }

    private static String after(String typed) {
        return typed.contains("=") ? typed.substring(typed.indexOf('=') + 1).strip() : "";
    }

    private String name(String option, String typed, String right) {
        String name = typed == null ? "" : typed.strip();
        if (name.isEmpty()) {
            tell(option, "is missing", right);
        } else if (!name.equals(Words.seen(name))) {
            tell(option, "holds a character that no person types", right);
        }
        return name;
    }

    /** Looks at a figure, where there is one. */
    private void figure(String option, String typed, Dimension in, Plausible within, String right) {
        if (typed.isEmpty()) {
            return;
        }
        try {
            if (!within.canBe(QuantityText.parse(Mark.read(typed).text(), in).value())) {
                tell(option, "'" + Words.shortened(typed, 60) + "' is not between " + within.limits(), right);
            }
        } catch (QuantityText.Unreadable e) {
            tell(option, e.getMessage(), right);
        }
    }

    /** What would be right, as it is typed. */
    private String right(String option, String typed) {
        if (dashes.isEmpty()) {
            return typed;
        }
        return dashes + option + " " + (PLAIN.matcher(typed).matches() ? typed : '"' + typed + '"');
    }

    private void tell(String option, String problem, String right) {
        faults.add(new Fault(Place.of(dashes + option), "", problem, right));
    }
}
