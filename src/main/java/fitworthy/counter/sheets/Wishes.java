package fitworthy.counter.sheets;

import fitworthy.counter.sheets.Understood.Said;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.TubFate;
import fitworthy.sheet.Wanted;
import fitworthy.source.Words;
import fitworthy.usual.TakenPlace;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The parts that are wished, as they were understood of their lines, and what is said to these. */
final class Wishes {

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
        all.forEach(wish -> said.at(wish.line(), words -> {
            words.ownRims(wish.part(), Wanted.wheels(parts()));
            return null;
        }));
    }

    List<Wanted> parts() {
        return all.stream().map(Wish::part).toList();
    }

    private void add(String field, String typed, String region) {
        List<Wanted> parts = typed.isEmpty() ? List.of() : said.at(field, words -> words.parts(typed, region));
        List<String> told = new ArrayList<>();
        for (Wanted part : parts) {
            told.add((parts.size() == 1 ? "" : part.name() + ": ") + words(part, typed));
            all.add(new Wish(field, part));
        }
        if (!told.isEmpty()) {
            said.fields().putIfAbsent(field, new Said(false, String.join("; ", told)));
        }
    }

    /** How a part was understood. @param typed the line that names it */
    private String words(Wanted part, String typed) {
        String figures = part.said().entrySet().stream()
                .filter(told -> !told.getKey().equals(Wanted.ROOM))
                .map(Map.Entry::getValue)
                .collect(Collectors.joining(", "));
        return (part.shelf().isEmpty() ? part.meaning().onSheet() : SaidAt.FROM_SHELF)
                + (figures.isEmpty() ? "" : ", " + figures)
                + (part.ownRims() ? ", on the rims that the vehicle has" : "")
                + (typed.contains(part.name()) ? "" : ", named " + part.name())
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
        return part.meaning().kinds().stream()
                .anyMatch(kind -> part.takesEndOf(other, kind) || other.takesEndOf(part, kind));
    }

    /** That what a part commonly comes with is the one of another line. */
    private void brings(String field, Fitment.Kind kind, Wish other) {
        String word = Words.hyphenated(kind.name());
        String is = other.line().equals(field)
                ? ""
                : ". Its " + word.replace('-', ' ') + " is " + other.part().name();
        said.fields()
                .computeIfPresent(
                        field,
                        (same, told) -> new Said(told.fault(), told.words().replace(", and kind: " + word, "") + is));
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
                                        (same, told) -> new Said(
                                                false,
                                                told.words() + ". Taken to be " + place.words()
                                                        + ": say where behind it if it is not"));
                    }
                }));
    }
}
