package fitworthy.counter.sheets;

import fitworthy.counter.sheets.Understood.Offer;
import fitworthy.counter.sheets.Understood.Said;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.TubFate;
import fitworthy.sheet.Wanted;
import fitworthy.shelf.Lying;
import fitworthy.source.Node;
import fitworthy.source.Words;
import fitworthy.usual.TakenPlace;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The parts that are wished, as they were understood of their lines, and what is said to these. */
final class Wishes {

    private static final String LIFT = "lift";

    /** A thing that was understood of a line. */
    private record Wish(String line, Wanted part) {}

    private final SaidAt said;
    private final List<Wish> all = new ArrayList<>();

    /** @param lines as they were typed @param region empty where none was understood */
    Wishes(SaidAt said, List<String> lines, String region) {
        this.said = said;
        for (int i = 0; i < lines.size(); i++) {
            add("part-" + (i + 1), lines.get(i), region);
        }
        all.forEach(wish -> wish.part().meaning().kinds().stream().skip(1).forEach(kind -> all.stream()
                .filter(other -> other.part().isFirst(kind))
                .findFirst()
                .ifPresent(other -> brings(wish.line(), kind, other))));
        all.forEach(end -> all.stream()
                .map(Wish::part)
                .filter(set -> isEndOf(end.part(), set))
                .forEach(set -> tellLift(end, set)));
        all.forEach(wish -> said.at(wish.line(), words -> {
            words.ownRims(wish.part(), Wanted.wheels(parts()));
            return null;
        }));
    }

    /** That an end of a set is of the shelf, and lifts otherwise than the set was said to. */
    private void tellLift(Wish end, Wanted set) {
        Wanted part = end.part();
        String lift = set.said().getOrDefault(LIFT, "");
        if (lift.isEmpty() || part.said().containsKey(LIFT)) {
            return;
        }
        String otherwise = said.at(end.line(), words -> words.otherLiftOnShelf(part.name(), lift, set.name()));
        if (!part.shelf().isEmpty() && !otherwise.isEmpty()) {
            said.fields().computeIfPresent(end.line(), (same, told) -> told.in(told.words() + ". " + otherwise));
        }
    }

    List<Wanted> parts() {
        return all.stream().map(Wish::part).toList();
    }

    private void add(String field, String typed, String region) {
        List<Wanted> parts = typed.isEmpty() ? List.of() : said.at(field, words -> words.parts(typed, region));
        List<String> told = new ArrayList<>();
        for (Wanted part : parts) {
            String otherwise = said.at(field, words -> words.otherwiseOnShelf(part));
            told.add((parts.size() == 1 ? "" : part.name() + ": ")
                    + words(part, typed)
                    + (otherwise.isEmpty() ? "" : ". " + otherwise));
            all.add(new Wish(field, part));
        }
        if (!told.isEmpty()) {
            said.fields().putIfAbsent(field, new Said(false, String.join("; ", told), offers(field, typed, parts)));
        }
    }

    /** What lies on the shelf that may be meant by parts of a line. */
    private List<Offer> offers(String field, String typed, List<Wanted> parts) {
        List<Offer> offers = new ArrayList<>();
        for (Wanted part : parts) {
            for (Lying lies : said.at(field, words -> words.alike(part))) {
                offers.add(new Offer(lies.words(), parts.size() == 1 ? line(lies, part) : line(lies, part, typed)));
            }
        }
        return offers;
    }

    /** A line that takes it, with its place and what it is wished for. */
    private static String line(Lying lies, Wanted part) {
        return lies.name()
                + (part.said().containsKey("at") ? " " + part.said().get("at") : "")
                + (part.reason().isEmpty() ? "" : " " + part.reason());
    }

    /** A line of several that takes it for one of them. */
    private static String line(Lying lies, Wanted part, String typed) {
        return typed.replace(part.name(), lies.name());
    }

    /** How a part was understood. @param typed the line that names it */
    private String words(Wanted part, String typed) {
        String figures = part.said().entrySet().stream()
                .filter(told -> !told.getKey().equals(Wanted.ROOM))
                .map(Map.Entry::getValue)
                .collect(Collectors.joining(", "));
        return (part.shelf().isEmpty() ? part.meaning().onSheet() : SaidAt.FROM_SHELF)
                + (part.feeds().isEmpty() ? "" : ", with its circuit")
                + (figures.isEmpty() ? "" : ", " + figures)
                + (part.ownRims() ? ", on the rims that the vehicle has" : "")
                + (typed.toLowerCase(Locale.ROOT).contains(part.name().toLowerCase(Locale.ROOT))
                        ? ""
                        : ", named " + part.name())
                + (part.reason().isEmpty() ? "" : ". '" + part.reason() + "' is kept as a comment; no check reads it")
                + again(part);
    }

    /** That another line has a part of the kind already, where a vehicle has but one. */
    private String again(Wanted part) {
        return parts().stream()
                .filter(other -> other.meaning().kinds().stream()
                        .anyMatch(kind ->
                                kind.isSingle() && part.meaning().kinds().contains(kind)))
                .findFirst()
                .map(other -> isOneSet(part, other)
                        ? ". Taken as one set with " + other.name() + ", this end of it"
                        : ". Of the same kind as " + other.name() + ": empty one line if they are the same")
                .orElse("");
    }

    private static boolean isOneSet(Wanted part, Wanted other) {
        return isEndOf(part, other) || isEndOf(other, part);
    }

    private static boolean isEndOf(Wanted part, Wanted set) {
        return part.meaning().kinds().stream().anyMatch(kind -> part.takesEndOf(set, kind));
    }

    /** That what a part commonly comes with is the one of another line. */
    private void brings(String field, Fitment.Kind kind, Wish other) {
        String word = Words.hyphenated(kind.name());
        String is = other.line().equals(field)
                ? ""
                : ". Its " + word.replace('-', ' ') + " is " + other.part().name();
        said.fields()
                .computeIfPresent(field, (same, told) -> told.in(told.words().replace(", and kind: " + word, "") + is));
    }

    /**
     * What becomes of the tub is asked where a tray or canopy is wished, unless the shelf or a wish says it.
     *
     * @param never whether the vehicle came without one
     */
    boolean asksTub(boolean never, TubFate told) {
        List<Wanted> bodies = parts().stream().filter(Wanted::isBody).toList();
        all.forEach(wish -> {
            String field = wish.line();
            Wanted part = wish.part();
            if (!part.meaning().isOfTub()) {
                return;
            }
            if (bodies.isEmpty()) {
                said.fields().put(field, new Said(true, "There is no tray or canopy here that it could be said of."));
            } else if (told != TubFate.NOT_SAID && told != part.tub()) {
                said.fields().put(field, new Said(true, "The answer about the tub says otherwise."));
            }
        });
        return !never
                && !bodies.isEmpty()
                && bodies.stream().noneMatch(Wanted::replaces)
                && parts().stream().noneMatch(part -> part.meaning().isOfTub());
    }

    /** Where a thing is taken to be is told at its line. */
    void tellPlaces(List<TakenPlace> places) {
        places.stream()
                .filter(TakenPlace::taken)
                .forEach(place -> all.forEach(wish -> {
                    Wanted part = wish.part();
                    if (!part.said().containsKey("at") && part.name().equalsIgnoreCase(place.name())) {
                        said.fields()
                                .computeIfPresent(
                                        wish.line(),
                                        (same, told) -> told.in(told.words() + ". Taken to be " + place.words()
                                                + ": say where behind it if it is not"));
                    }
                }));
    }

    /** Tells where a place stays as the shelf has measured it, since what was said does not contradict that. */
    void tellKept(Node.Mapping sheet) {
        all.stream()
                .filter(wish -> wish.part().isPlaced())
                .filter(wish -> sheet.get(wish.part().shelf()) instanceof Node.Listing list
                        && list.items().stream()
                                .noneMatch(item -> item instanceof Node.Mapping fields
                                        && fields.get("at") != null
                                        && fields.get("from") instanceof Node.Scalar name
                                        && name.text().equals(wish.part().name())))
                .forEach(wish -> said.fields()
                        .computeIfPresent(
                                wish.line(),
                                (same, told) -> told.in(told.words() + ", where the shelf has measured "
                                        + wish.part().name())));
    }
}
