package fitworthy.shelf;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Mark;
import fitworthy.quantity.QuantityText;
import fitworthy.schema.ChoiceWords;
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
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Understands what is typed of one part or other thing of a plan.
 *
 * @param words what the rule book knows the trade's words to mean
 * @param shelf what may be taken from it by name
 * @param places in words
 */
record PartWords(ShopWords words, Shelf shelf, WishPlaces places, TypedFaults faults) {

    private static final String PART = "part";
    /** The field of a tyre's size. */
    private static final String SIZE = "size";
    /** What stands before a line of a list: 3., 3) or a dash. */
    private static final Pattern NUMBER = Pattern.compile("^(?:[0-9]{1,2}[.)]|[-*\u2022])\\s+");
    /** What joins two things. */
    private static final Pattern JOINED = Pattern.compile(",?\\s+(?:and|with)\\s+");
    /** What may stand between two things. */
    private static final Pattern BETWEEN = Pattern.compile("[,;]\\s*|\\s+(?:and|with)\\s+");
    /** The first of the things that are joined. */
    private static final Pattern IT = Pattern.compile("\\bit$");
    /** A thing, with what it is wished for. */
    private static final Pattern REASON =
            Pattern.compile("(.+?),?\\s+((?:for|to|because|since|so)\\s.+|beside\\s.+\\bit has)");
    /** What joins two things, or a thing with what it is for. */
    private static final Pattern SEVERAL = Pattern.compile(",|\\b(?:and|for|with)\\b");
    /** What begins so after the equals sign is a figure, and anything else a kind. */
    private static final Pattern FIGURE = Pattern.compile("(about\\s+)?[0-9.].*");
    /** A figure with more words behind it. */
    private static final Pattern MORE = Pattern.compile("((?:about\\s+)?[0-9.]+\\s*\\p{L}+),?\\s+(.+)");
    /** What words of a place begin with. */
    private static final Pattern PLACE = Pattern.compile("(?:in|on|at|under|above|over|behind|beside)\\s.*");
    /** A place whose words were written in short: on bar. */
    private static final Pattern SHORT_PLACE =
            Pattern.compile("\\b(in|on|at|under|above|over|behind|beside) (?!the )(\\p{L}+(?: \\p{L}+)?)$");
    /** At which end of the vehicle, or at both, with what may stand behind: springs at the back, 50 mm. */
    private static final Pattern END = Pattern.compile("(.+?),?\\s+(?:(?:at|in|on)\\s+(?:the\\s+)?)?(front|rear|back)"
            + "(\\s+and\\s+(?:at\\s+the\\s+)?(?:front|rear|back))?(?:\\s+axle)?(|[\\s,=]+[0-9].*)");
    /** That tyres go on the rims that a vehicle has, which a sheet says by naming no others. */
    private static final Pattern STAYING_RIMS = Pattern.compile(
            "(.*\\b(?:[0-9]{3}/[0-9]{2}R[0-9]{2}|[Tt]yres?|[Tt]ires?)\\b.*?)[\\s,]+on (?:the (?:rims|wheels) (?:that )?it (?:has|came"
                    + " with)|(?:its|the) (?:own|same|present|standard|original|factory) (?:rims|wheels)|its (?:rims|wheels))");
    /** That tyres are larger, which their size says already. */
    private static final Pattern SIZE_UP = Pattern.compile(
            "(.*\\b[Tt](?:yres|ires)) (?:an?|one|two) sizes? (?:up|larger)\\b(.*[0-9]{3}/[0-9]{2}R[0-9]{2}.*)");
    /** What may stand behind the size of a tyre, such as 121S. */
    private static final Pattern LOAD_AND_SPEED = Pattern.compile("\\s+[0-9]{2,3}[A-Z]$");
    /** What customers say of a part beside its mass. */
    private static final Set<String> MEASURES = Set.of("length", "lift", "capacity", "power");
    /** What a name says of a part beside its kind, by the field that holds it: a lithium battery, an UHF radio. */
    private static final Set<String> NAMED = Set.of("chemistry", "service");
    /** Choices that a name does not tell. */
    private static final Set<String> UNTOLD = Set.of("other");
    /** The service of a UHF radio is another one elsewhere. */
    private static final String UHF_REGION = "au";

    /**
     * What it is, or each of several things that are joined; nothing where it is not understood. What begins as a reason
     * is kept as one.
     *
     * @param region where the vehicle is registered
     */
    List<Wanted> wanted(String typed, String region) {
        String line = NUMBER.matcher(typed == null ? "" : typed.strip()).replaceFirst("");
        List<Fault> found = new ArrayList<>();
        Wanted whole = telling(found).one(line, region);
        if (found.isEmpty()) {
            return List.of(whole);
        }
        List<String> joined = joined(line, region);
        List<Wanted> read = several(line, joined, region);
        List<String> listed = List.of(BETWEEN.split(line));
        if (read.isEmpty()
                && listed.stream().allMatch(part -> understood(part, region).isPresent())) {
            read = several(line, listed, region);
        }
        if (read.isEmpty()) {
            List<String> letter = new LetterList(places, thing -> it(thing, region)).things(line);
            read = letter.isEmpty() ? read : several(line, letter, region);
        }
        if (!read.isEmpty()) {
            return inOne(read);
        }
        if (joined.size() > 1 && !line.contains("=")) {
            tellJoined(
                    line,
                    joined.stream()
                            .filter(part -> reasoned(part, region).isEmpty())
                            .findFirst()
                            .orElse(""));
            return List.of();
        }
        faults.faults().addAll(found);
        return whole == null ? List.of() : List.of(whole);
    }

    /** What a line joins, each by itself: a winch in it is one in the bar that is named before it. */
    private List<String> joined(String line, String region) {
        List<String> parts = List.of(JOINED.split(line));
        return understood(parts.get(0), region)
                .map(this::it)
                .map(first -> parts.stream()
                        .map(part -> IT.matcher(part).replaceFirst(Matcher.quoteReplacement(first)))
                        .toList())
                .orElse(parts);
    }

    private String it(String thing, String region) {
        return understood(thing, region).map(this::it).orElse(thing);
    }

    /** Things that are joined, all in what the last is said to be in, unless they are that themselves. */
    private List<Wanted> inOne(List<Wanted> read) {
        String where = read.get(read.size() - 1).said().getOrDefault("at", "");
        return where.startsWith("in the ")
                ? read.stream()
                        .map(part -> part.said().containsKey("at") || isIn(part, where) ? part : placed(part, where))
                        .toList()
                : read;
    }

    /** Whether words for a place name the part. */
    private static boolean isIn(Wanted part, String where) {
        return part.meaning().isOfTub()
                || part.meaning().kinds().stream()
                        .map(kind -> Words.hyphenated(kind.name()).replace('-', ' '))
                        .anyMatch(where::contains);
    }

    /** A thing as a place in it has it: by its name, or by what it is where its name is one of the shelf's. */
    private String it(Wanted first) {
        String name = "the " + first.name().toLowerCase(Locale.ROOT);
        return first.meaning().kinds().stream()
                .limit(1)
                .map(kind -> "the " + Words.hyphenated(kind.name()).replace('-', ' '))
                .filter(kind -> places.ending("it in " + name).isEmpty())
                .findFirst()
                .orElse(name);
    }

    /** @param unknown the first of what is joined that is not understood; empty where they may be one thing */
    private void tellJoined(String line, String unknown) {
        String problem = unknown.isEmpty()
                ? "may be one thing or two of a kind"
                : "is no kind of part that the rule book knows" + Words.suggestion(unknown, words.all());
        faults.tellWords(
                PART,
                unknown.isEmpty() ? line : unknown,
                problem,
                "one thing a line, in few words: " + right("bull bar") + ", " + right("winch=26 kg"));
    }

    private PartWords telling(List<Fault> others) {
        return new PartWords(words, shelf, places, new TypedFaults(faults.dashes(), others));
    }

    /** The things of a line that joins some, or the one of which it tells a reason; nothing where any is not understood. */
    private List<Wanted> several(String line, List<String> joined, String region) {
        List<Wanted> read = new ArrayList<>();
        for (String part : joined) {
            Optional<Wanted> next = reasoned(part, region);
            if (next.isEmpty() || read.stream().anyMatch(other -> isSame(other, next.get()))) {
                return reasoned(line, region).stream().toList();
            }
            read.add(next.get());
        }
        return read;
    }

    /** Whether two wishes may mean one thing: a lift kit with heavier springs. */
    private static boolean isSame(Wanted one, Wanted other) {
        return one.meaning().kinds().stream()
                .limit(1)
                .anyMatch(kind -> kind.isSingle()
                        && other.isFirst(kind)
                        && !one.takesEndOf(other, kind)
                        && !other.takesEndOf(one, kind));
    }

    /** One thing, with its reason where it tells one; nothing where something more is named behind the reason. */
    private Optional<Wanted> reasoned(String typed, String region) {
        Optional<Wanted> bare = understood(typed, region);
        Matcher reason = REASON.matcher(typed);
        if (bare.isPresent() || !reason.matches()) {
            return bare;
        }
        return BETWEEN.splitAsStream(reason.group(2)).skip(1).anyMatch(this::isThing)
                ? Optional.empty()
                : understood(reason.group(1), region).map(wanted -> wanted.because(Words.seen(reason.group(2))));
    }

    private boolean isThing(String typed) {
        return understood(typed, "").isPresent();
    }

    private Optional<Wanted> understood(String typed, String region) {
        List<Fault> found = new ArrayList<>();
        Wanted one = telling(found).one(typed, region);
        return found.isEmpty() ? Optional.ofNullable(one) : Optional.empty();
    }

    private Wanted one(String line, String region) {
        Optional<Wanted> atEnd = atEnd(line, region);
        return atEnd.isPresent() ? atEnd.get() : anywhere(line, region);
    }

    /** A part that is said to be at one end of the vehicle, or at both, where its kind has to say so. */
    private Optional<Wanted> atEnd(String line, String region) {
        Matcher end = END.matcher(line);
        if (!end.matches()) {
            return Optional.empty();
        }
        PartWords quietly = telling(new ArrayList<>());
        return Optional.ofNullable(quietly.anywhere(end.group(1) + end.group(4), region))
                .filter(part -> quietly.faults().faults().isEmpty())
                .flatMap(part -> end.group(3) == null
                        ? part.atEnd(end.group(2).replace("back", "rear"))
                        : Optional.of(part).filter(Wanted::hasEnds));
    }

    private Wanted anywhere(String line, String region) {
        String rims =
                STAYING_RIMS.matcher(SIZE_UP.matcher(line).replaceFirst("$1$2")).replaceFirst("$1");
        String written = SHORT_PLACE.matcher(rims).replaceFirst("$1 the $2");
        String wish = places.ending(rims).isEmpty() && places.ending(written).isPresent() ? written : rims;
        Optional<String> place = place(wish);
        String bare = place.map(where ->
                        wish.substring(0, wish.length() - where.length()).replaceFirst("[\\s,=]+$", ""))
                .orElse(wish);
        Wanted wanted = unplaced(isName(bare) ? bare : new LetterWish(this::isUnderstood).typed(bare));
        if (wanted == null) {
            return null;
        }
        Map<String, String> said = new LinkedHashMap<>(wanted.said());
        if (wanted.shelf().isEmpty()) {
            wanted.meaning().kinds().stream().limit(1).forEach(kind -> said.putAll(named(kind, wanted.name(), region)));
        }
        Wanted told = wanted.with(said);
        Wanted rimmed = STAYING_RIMS.matcher(line).matches() ? told.onOwnRims() : told;
        return place.map(where -> placed(rimmed, where)).orElse(rimmed);
    }

    /** The same at a place in words, with what those tell of it that the shelf does not say already. */
    private Wanted placed(Wanted wanted, String where) {
        Map<String, String> said = new LinkedHashMap<>(wanted.said());
        Map<String, String> room = new LinkedHashMap<>();
        wanted.meaning().kinds().stream().limit(1).forEach(kind -> room.putAll(room(kind, where)));
        onShelf(wanted.name()).filter(kind -> !wanted.shelf().isEmpty()).ifPresent(kind -> room.entrySet()
                .removeIf(told -> lying().agrees(kind, wanted.name(), told.getKey(), told.getValue())));
        said.putAll(room);
        said.put("at", where);
        return wanted.with(said);
    }

    /** The place at the end of what was typed, unless all of it is the name of something. */
    private Optional<String> place(String typed) {
        return places.ending(typed)
                .filter(where ->
                        where.length() < typed.length() && onShelf(typed).isEmpty());
    }

    /** The answer of a kind that asks in what it stands, where the place says so: a battery in the canopy. */
    private Map<String, String> room(Fitment.Kind kind, String where) {
        List<String> ways = places.ways(where);
        Map<String, String> room = new LinkedHashMap<>();
        RecordSchema.of(kind.details()).fields().stream()
                .filter(field -> field.name().equals(Wanted.ROOM))
                .flatMap(field -> ChoiceWords.of(field.type()).stream())
                .filter(word -> ways.contains("in the " + word.replace('-', ' ')))
                .forEach(word -> room.put(Wanted.ROOM, word));
        return room;
    }

    /** Whether it is to be read as it stands, whatever else it could be in a letter. */
    private boolean isName(String wish) {
        return wish.contains("=") || onShelf(wish).isPresent() || words.all().contains(ShopWords.plain(wish));
    }

    private boolean isUnderstood(String name) {
        return onShelf(name).isPresent() || words.of(name).isPresent();
    }

    private ShelfParts lying() {
        return new ShelfParts(shelf);
    }

    private Optional<Kind> onShelf(String name) {
        return lying().named(name);
    }

    /** What the name says of a part beside its kind. */
    private static Map<String, String> named(Fitment.Kind kind, String name, String region) {
        List<String> own = List.of(ShopWords.plain(name).split(" "));
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

    private Wanted unplaced(String typed) {
        NamedFigure read = NamedFigure.of(typed);
        String name = faults.name(PART, read.name(), right());
        String said = read.said();
        boolean figure = FIGURE.matcher(said).matches();
        String word = said.isEmpty() || figure ? name : said;
        String sized = name + " " + Mark.read(said).text();
        if (figure && isSize(said) && onShelf(sized).isPresent()) {
            return unplaced(sized);
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
        return figure ? bare.with(Map.of(field, said)) : bare;
    }

    private String right() {
        return right("bull bar") + ", " + right("winch=26 kg") + ", " + right("NAME=other")
                + " for what no check knows, or " + right("Dog=cargo") + " for a load";
    }

    private String right(String typed) {
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
                right(name + "=" + (tank ? "140 L" : mass)));
    }

    /** What else than its mass a figure of a part tells by its unit, such as the length of a canopy. */
    private static Optional<FieldSchema> measure(Meaning meaning, String typed) {
        return meaning.kinds().stream()
                .limit(1)
                .flatMap(kind -> RecordSchema.of(kind.details()).fields().stream())
                .filter(field -> field.content() == FieldSchema.Content.FIGURE)
                .filter(field -> MEASURES.contains(field.name())
                        && isIn(field.description().in(), typed))
                .findFirst();
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
