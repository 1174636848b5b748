package fitworthy.shelf;

import fitworthy.sheet.ShopWords;
import fitworthy.sheet.Wanted;
import fitworthy.source.Fault;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Understands what is typed of a part or other thing of a plan, or of several in one line.
 *
 * @param words what the rule book knows the trade's words to mean
 * @param shelf what may be taken from it by name
 * @param places in words
 */
record PartWords(ShopWords words, Shelf shelf, WishPlaces places, TypedFaults faults) {

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
                        .map(part ->
                                part.said().containsKey("at") || isIn(part, where) ? part : placed().at(part, where))
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
                NamedPart.PART,
                unknown.isEmpty() ? line : unknown,
                problem,
                "one thing a line, in few words: " + named().right("bull bar") + ", " + named().right("winch=26 kg"));
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
        return placed().of(line, region);
    }

    private PlacedPart placed() {
        return new PlacedPart(named(), places);
    }

    private NamedPart named() {
        return new NamedPart(words, shelf, faults);
    }
}
