package fitworthy.counter.sheets;

import fitworthy.advice.View;
import fitworthy.book.Book;
import fitworthy.counter.edit.Labels;
import fitworthy.quantity.Mark;
import fitworthy.schema.FieldSchema;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetDraft;
import fitworthy.sheet.Tank;
import fitworthy.sheet.TubFate;
import fitworthy.sheet.Wanted;
import fitworthy.shelf.Kind;
import fitworthy.shelf.SheetWords;
import fitworthy.shelf.Shelf;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import fitworthy.source.Words;
import fitworthy.usual.TakenPlace;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What was understood of a new sheet, and what was not.
 *
 * @param said what is said to each field, by its id, such as {@code vehicle} or {@code part-3}
 * @param missing fields that have to be filled in, in words
 * @param faults what is wrong beside the fields
 * @param hints what should be said before the sheet is made, though it can be made without
 * @param tub whether it is to be asked what becomes of the vehicle's tub
 * @param text the sheet that would be made; absent while anything is wrong or missing
 */
public record Understood(
        Map<String, Said> said,
        List<String> missing,
        List<String> faults,
        List<String> hints,
        boolean tub,
        Optional<String> text) {

    /** The fields before the parts at which something may be told, in the order of the page. */
    public static final List<String> FIELDS = Typed.fields("vehicle", "trailer");

    private static final String FROM_SHELF = "from the shelf";
    private static final List<String> TRIP = Typed.fields("longest-leg", "top-speed");

    /** What is said to a field. @param fault whether it was not understood */
    public record Said(boolean fault, String words) {}

    /** Looks at what was typed, against one book and one shelf. */
    private static final class Look {
        private final View view;
        private final Place place;
        private final Shelf shelf;
        private final Map<String, Said> said = new LinkedHashMap<>();
        private final List<String> missing = new ArrayList<>();
        private final List<Fault> faults = new ArrayList<>();
        private final List<String> hints = new ArrayList<>();
        private boolean asksTub;

        Look(View view, Place place) {
            this.view = view;
            this.place = place;
            this.shelf = view.shelves().of(place.file());
            faults.addAll(shelf.faults());
        }

        /** Reads words, and tells their faults at the field. */
        private interface Reading<T> {
            T by(SheetWords words);
        }

        private <T> T at(String field, Reading<T> reading) {
            List<Fault> found = new ArrayList<>();
            Book book = view.book();
            T read = reading.by(new SheetWords(
                    book.tables().shopWords(), shelf, book.regions().keySet(), book.usualPlaces(), "", found));
            if (!found.isEmpty()) {
                said.put(field, new Said(true, words(found.get(0))));
            }
            return read;
        }

        private <T> T needed(String field, String typed, Reading<T> reading) {
            if (typed.isEmpty()) {
                missing.add(field);
                return null;
            }
            return at(field, reading);
        }

        Understood of(Typed typed) {
            String named = typed.line("vehicle");
            String vehicle = needed("vehicle", named, words -> words.vehicle(named));
            boolean kept = at("vehicle", words -> words.isOnShelf(named));
            if (kept) {
                said.put("vehicle", new Said(false, FROM_SHELF));
            }
            String burns = kept ? burns(vehicle).orElse(typed.line("fuel")) : typed.line("fuel");
            Tank.Liquid fuel = needed("fuel", burns, words -> words.fuel(burns));
            Integer people = needed("people", typed.line("people"), words -> words.people(typed.line("people")));
            String region = at("region", words -> words.region(typed.line("region")));
            Optional<SheetDraft.Towed> trailer = at(
                    "trailer",
                    words -> words.trailer(
                            typed.line("trailer"),
                            typed.line("trailer-mass"),
                            typed.line("ball"),
                            typed.line("rated")));
            trailer.filter(SheetDraft.Towed::shelf)
                    .ifPresent(towed -> said.putIfAbsent("trailer", new Said(false, FROM_SHELF)));
            SheetDraft.Told told = told(typed, people);
            Map<String, Wanted> parts = new LinkedHashMap<>();
            for (int i = 0; i < typed.parts().size(); i++) {
                part("part-" + (i + 1), typed.parts().get(i), region, parts);
            }
            parts.forEach(
                    (field, part) -> part.meaning().kinds().stream().skip(1).forEach(kind -> parts.values().stream()
                            .filter(other -> other.isFirst(kind))
                            .findFirst()
                            .ifPresent(other -> brings(field, kind, other))));
            tub(kept && word(vehicle, NodePath.of("tub")).equals("no"), typed.tub(), parts);
            if (!missing.isEmpty()
                    || !faults.isEmpty()
                    || said.values().stream().anyMatch(Said::fault)) {
                return told(Optional.empty());
            }
            return made(
                    new SheetDraft.Whole(
                            typed.heading(),
                            vehicle,
                            kept,
                            fuel,
                            people,
                            region,
                            List.copyOf(view.book().regions().keySet()),
                            LocalDate.now(),
                            List.copyOf(parts.values()),
                            trailer,
                            told),
                    parts);
        }

        /** What is told beside the wishes. @param people null where that was not understood */
        private SheetDraft.Told told(Typed typed, Integer people) {
            String tank = figure("main-tank", SheetWords.field(Tank.class, "capacity"), typed);
            String masses = typed.line("masses");
            List<String> each = people == null || masses.isEmpty()
                    ? List.of()
                    : at("masses", words -> words.masses(masses, people));
            Map<String, String> trip = new LinkedHashMap<>();
            TRIP.forEach(field -> trip.put(field, figure(field, SheetWords.field(Sheet.Trip.class, field), typed)));
            trip.put(
                    "dust",
                    at("dust", words -> words.choice(SheetWords.field(Sheet.Trip.class, "dust"), typed.line("dust"))));
            trip.values().removeIf(String::isEmpty);
            String readyBy = at(
                    "ready-by", words -> words.day(SheetWords.field(Sheet.class, "ready-by"), typed.line("ready-by")));
            return new SheetDraft.Told(typed.tub(), tank, each, trip, readyBy);
        }

        private String figure(String field, FieldSchema schema, Typed typed) {
            return typed.line(field).isEmpty() ? "" : at(field, words -> words.figure(schema, typed.line(field)));
        }

        /** That what a part commonly comes with is the one of another line. */
        private void brings(String field, Fitment.Kind kind, Wanted other) {
            String word = Words.hyphenated(kind.name());
            said.computeIfPresent(
                    field,
                    (same, told) -> new Said(
                            told.fault(),
                            told.words().replace(", and kind: " + word, "") + ". Its " + word.replace('-', ' ') + " is "
                                    + other.name()));
        }

        /**
         * What becomes of the tub is asked where a tray or canopy is wished, unless the shelf or a wish says it.
         *
         * @param never whether the vehicle came without one
         */
        private void tub(boolean never, TubFate told, Map<String, Wanted> parts) {
            List<Wanted> bodies = parts.values().stream().filter(Wanted::isBody).toList();
            parts.forEach((field, part) -> {
                if (!part.meaning().isOfTub()) {
                    return;
                }
                if (bodies.isEmpty()) {
                    said.put(field, new Said(true, "There is no tray or canopy here that it could be said of."));
                } else if (told != TubFate.NOT_SAID && told != part.tub()) {
                    said.put(field, new Said(true, "The answer about the tub says otherwise."));
                }
            });
            asksTub = !never
                    && !bodies.isEmpty()
                    && bodies.stream().noneMatch(Wanted::replaces)
                    && parts.values().stream().noneMatch(part -> part.meaning().isOfTub());
        }

        /** What the shelf says that a vehicle burns; told at the field, which then need not be filled in. */
        private Optional<String> burns(String vehicle) {
            Optional<String> fuel =
                    Optional.of(word(vehicle, NodePath.of("engine", "fuel"))).filter(text -> !text.isEmpty());
            fuel.ifPresent(word -> said.put("fuel", new Said(false, word + ", as the shelf says")));
            return fuel;
        }

        /** What the shelf says of a vehicle that lies there; empty where it does not. */
        private String word(String vehicle, NodePath field) {
            return field.in(shelf.of(Kind.VEHICLES).get(vehicle)) instanceof Node.Scalar word
                    ? Mark.read(word.text()).text()
                    : "";
        }

        /** That another line has a part of the kind already, where a vehicle has but one. */
        private static String again(Wanted part, Map<String, Wanted> others) {
            return others.values().stream()
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

        /** @param others those of the lines above; gets this one */
        private void part(String field, String typed, String region, Map<String, Wanted> others) {
            if (typed.isEmpty()) {
                return;
            }
            Wanted part = at(field, words -> words.part(typed, region));
            if (part == null) {
                return;
            }
            String figures = part.said().entrySet().stream()
                    .filter(told -> !told.getKey().equals(Wanted.ROOM))
                    .map(Map.Entry::getValue)
                    .collect(Collectors.joining(", "));
            said.putIfAbsent(
                    field,
                    new Said(
                            false,
                            (part.shelf().isEmpty() ? part.meaning().onSheet() : FROM_SHELF)
                                    + (figures.isEmpty() ? "" : ", " + figures)
                                    + (typed.startsWith(part.name()) ? "" : ", named " + part.name())
                                    + again(part, others)));
            others.put(field, part);
        }

        /** The sheet, once it has been read as any other is. */
        private Understood made(SheetDraft.Whole whole, Map<String, Wanted> parts) {
            String text = view.draft(whole, place, faults);
            try {
                View.Read read = view.read(NodeReader.read(place, text, faults), faults);
                places(TakenPlace.of(read.tree(), view.book()), parts);
                return told(Optional.of(text));
            } catch (FaultsException e) {
                faults.addAll(e.faults());
                return told(Optional.empty());
            }
        }

        /** Where a thing is taken to be is told at its line; two in one place are told of beside the sheet. */
        private void places(List<TakenPlace> places, Map<String, Wanted> parts) {
            TakenPlace.shared(places).forEach(same -> hints.add(TakenPlace.told(same)));
            places.stream()
                    .filter(TakenPlace::taken)
                    .forEach(place -> parts.forEach((field, part) -> {
                        if (!part.said().containsKey("at") && part.name().equalsIgnoreCase(place.name())) {
                            said.computeIfPresent(
                                    field,
                                    (same, told) -> new Said(
                                            false,
                                            told.words() + ". Taken to be " + place.words()
                                                    + ": say where behind it if it is not"));
                        }
                    }));
        }

        private Understood told(Optional<String> text) {
            return new Understood(
                    said,
                    missing,
                    faults.stream()
                            .distinct()
                            .map(fault -> Labels.fault(fault, null))
                            .toList(),
                    hints,
                    asksTub,
                    text);
        }

        private static String words(Fault fault) {
            return Words.capital(fault.problem()) + ". Right: " + fault.mend();
        }
    }

    /** @param place where the sheet would stand, beside its shelf */
    static Understood of(Typed typed, View view, Place place) {
        return new Look(view, place).of(typed);
    }

    /** The same that says at each field that is missing so, once a person takes it to be whole. */
    Understood asked() {
        Map<String, Said> all = new LinkedHashMap<>(said);
        missing.forEach(field -> all.put(field, new Said(true, "This has to be filled in.")));
        return new Understood(all, missing, faults, hints, tub, text);
    }

    /** The field that is first to be put right, in the order of the page; empty where none is. */
    String first() {
        return Stream.concat(FIELDS.stream(), said.keySet().stream().filter(field -> !FIELDS.contains(field)))
                .filter(field -> said.containsKey(field) && said.get(field).fault())
                .findFirst()
                .orElse("");
    }

    public boolean isWhole() {
        return text.isPresent();
    }
}
