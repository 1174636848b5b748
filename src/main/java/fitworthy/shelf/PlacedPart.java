package fitworthy.shelf;

import fitworthy.schema.ChoiceWords;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.ShopWords;
import fitworthy.sheet.Wanted;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Understands what is typed of one part or other thing of a plan, with where it goes.
 *
 * @param named without its place
 * @param places in words
 */
record PlacedPart(NamedPart named, WishPlaces places) {

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
    /** What a name says of a part beside its kind, by the field that holds it: a lithium battery, an UHF radio. */
    private static final Set<String> NAMED = Set.of("chemistry", "service");
    /** Choices that a name does not tell. */
    private static final Set<String> UNTOLD = Set.of("other");
    /** The service of a UHF radio is another one elsewhere. */
    private static final String UHF_REGION = "au";

    /** What it is; null where it is not understood, which the faults tell. @param region where the vehicle is registered */
    Wanted of(String line, String region) {
        Optional<Wanted> atEnd = atEnd(line, region);
        return atEnd.isPresent() ? atEnd.get() : anywhere(line, region);
    }

    /** A part that is said to be at one end of the vehicle, or at both, where its kind has to say so. */
    private Optional<Wanted> atEnd(String line, String region) {
        Matcher end = END.matcher(line);
        if (!end.matches()) {
            return Optional.empty();
        }
        PlacedPart quietly = new PlacedPart(named.telling(new ArrayList<>()), places);
        return Optional.ofNullable(quietly.anywhere(end.group(1) + end.group(4), region))
                .filter(part -> quietly.named.faults().faults().isEmpty())
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
        Wanted wanted = named.of(named.isName(bare) ? bare : new LetterWish(named::isUnderstood).typed(bare));
        if (wanted == null) {
            return null;
        }
        Map<String, String> said = new LinkedHashMap<>(wanted.said());
        if (wanted.shelf().isEmpty()) {
            wanted.meaning().kinds().stream().limit(1).forEach(kind -> said.putAll(told(kind, wanted.name(), region)));
        }
        Wanted told = wanted.with(said);
        Wanted rimmed = STAYING_RIMS.matcher(line).matches() ? told.onOwnRims() : told;
        return place.map(where -> at(rimmed, where)).orElse(rimmed);
    }

    /** The same at a place in words, with what those tell of it that the shelf does not say already. */
    Wanted at(Wanted wanted, String where) {
        Map<String, String> said = new LinkedHashMap<>(wanted.said());
        Map<String, String> room = new LinkedHashMap<>();
        wanted.meaning().kinds().stream().limit(1).forEach(kind -> room.putAll(room(kind, where)));
        named.onShelf(wanted.name()).filter(kind -> !wanted.shelf().isEmpty()).ifPresent(kind -> room.entrySet()
                .removeIf(told -> named.lying().agrees(kind, wanted.name(), told.getKey(), told.getValue())));
        said.putAll(room);
        said.put("at", where);
        return wanted.with(said);
    }

    /** The place at the end of what was typed, unless all of it is the name of something. */
    private Optional<String> place(String typed) {
        return places.ending(typed)
                .filter(where ->
                        where.length() < typed.length() && named.onShelf(typed).isEmpty());
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

    /** What the name says of a part beside its kind. */
    private static Map<String, String> told(Fitment.Kind kind, String name, String region) {
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
}
