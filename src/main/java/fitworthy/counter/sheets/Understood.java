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
import fitworthy.shelf.Lying;
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
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What was understood of a new sheet, and what was not.
 *
 * @param said what is said to each field, by its id, such as {@code vehicle} or {@code part-3}
 * @param missing fields that have to be filled in
 * @param faults what is wrong beside the fields
 * @param hints what should be said before the sheet is made, though it can be made without
 * @param tub whether it is to be asked what becomes of the vehicle's tub
 * @param brochure whether the figures of the vehicle are asked, since it does not lie on the shelf
 * @param text the sheet that would be made; absent while anything is wrong or missing
 */
public record Understood(
        Map<String, Said> said,
        List<String> missing,
        List<String> faults,
        List<String> hints,
        boolean tub,
        boolean brochure,
        Optional<String> text) {

    /** The fields before the parts at which something may be told, in the order of the page. */
    public static final List<String> FIELDS = Typed.fields("vehicle", "rated");
    /** Those of a trailer. */
    private static final List<String> TRAILER = Typed.fields("trailer", "rated");

    private static final String FROM_SHELF = "from the shelf";
    private static final String OF_SHELF =
            "The shelf has its own figure of this vehicle. Empty this line, and put another"
                    + " figure in on the page of the sheet; or give the vehicle a name of its own.";
    /** What is said to fields in which nothing was filled, where more is to be said than that. */
    private static final Map<String, String> ASKED =
            Map.of("region", "Choose where it is registered: its laws are looked at. 'Anywhere' looks at none.");

    /** Fields of the sheet that are typed of a trailer, each with that of the page. */
    private static final Map<String, String> TRAILER_FIELDS =
            Map.of("trailer.mass", "trailer-mass", "trailer.ball", "ball", "trailer.rated", "rated");

    private static final String OF_TRAILER =
            "The shelf has other figures of this trailer. Leave this empty to take those, or give the trailer a name of"
                    + " its own.";

    private static final List<String> TRIP = Typed.fields("longest-leg", "top-speed");

    /**
     * What is said to a field.
     *
     * @param fault whether it was not understood
     * @param offers what lies on the shelf that may be meant
     */
    public record Said(boolean fault, String words, List<Offer> offers) {

        Said(boolean fault, String words) {
            this(fault, words, List.of());
        }

        /** The same in other words. */
        Said in(String others) {
            return new Said(fault, others, offers);
        }
    }

    /**
     * A thing of the shelf that may be meant.
     *
     * @param words its name with its mass
     * @param line as the line would read once it is taken
     */
    public record Offer(String words, String line) {}

    /** A thing that was understood of a line. */
    private record Wish(String line, Wanted part) {}

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
        private boolean asksBrochure;

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
            // Of a trailer several fields are read together.
            found.forEach(fault -> said.merge(
                    TRAILER.contains(fault.place().file()) ? fault.place().file() : field,
                    new Said(true, words(fault)),
                    (told, more) -> told.fault() ? told : more));
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
            } else if (!named.isEmpty()) {
                alike(named);
            }
            String burns = kept ? burns(vehicle).orElse(typed.line("fuel")) : typed.line("fuel");
            Tank.Liquid fuel = needed("fuel", burns, words -> words.fuel(burns));
            Integer people = needed("people", typed.line("people"), words -> words.people(typed.line("people")));
            if (kept && people != null) {
                seats(vehicle, people);
            }
            String region = needed("region", typed.line("region"), words -> words.region(typed.line("region")));
            Optional<SheetDraft.Towed> trailer = at(
                    "trailer",
                    words -> words.trailer(
                            typed.line("trailer"),
                            typed.line("trailer-mass"),
                            typed.line("ball"),
                            typed.line("rated")));
            trailer.filter(SheetDraft.Towed::shelf)
                    .ifPresent(towed -> said.putIfAbsent("trailer", new Said(false, FROM_SHELF)));
            asksBrochure = !kept && !named.isEmpty();
            SheetDraft.Told told = told(typed, people, kept);
            List<Wish> parts = new ArrayList<>();
            for (int i = 0; i < typed.parts().size(); i++) {
                part("part-" + (i + 1), typed.parts().get(i), region == null ? "" : region, parts);
            }
            parts.forEach(wish -> wish.part().meaning().kinds().stream().skip(1).forEach(kind -> parts.stream()
                    .filter(other -> other.part().isFirst(kind))
                    .findFirst()
                    .ifPresent(other -> brings(wish.line(), kind, other))));
            parts.forEach(wish -> at(wish.line(), words -> {
                words.ownRims(wish.part(), Wanted.wheels(wanted(parts)));
                return null;
            }));
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
                            wanted(parts),
                            trailer,
                            told),
                    parts);
        }

        /** Tells where more are to travel than the vehicle has seats. */
        private void seats(String vehicle, int people) {
            String seats = word(vehicle, NodePath.of("seats"));
            if (seats.matches("[0-9]{1,2}") && people > Integer.parseInt(seats)) {
                said.putIfAbsent("people", new Said(false, "The vehicle has " + seats + " seats, as the shelf says."));
            }
        }

        /** Tells which vehicles of the shelf are called by the same words and more; none is taken for the one typed. */
        private void alike(String named) {
            List<String> typed = words(named);
            String lying = shelf.of(Kind.VEHICLES).keySet().stream()
                    .filter(name -> words(name).containsAll(typed))
                    .collect(Collectors.joining(", or "));
            if (!lying.isEmpty()) {
                said.putIfAbsent("vehicle", new Said(false, "A name of your own. The shelf has " + lying + "."));
            }
        }

        private static List<String> words(String name) {
            return List.of(name.toLowerCase(Locale.ROOT).strip().split("\\s+"));
        }

        /**
         * What is told beside the wishes.
         *
         * @param people null where that was not understood
         * @param kept whether the vehicle lies on the shelf, which then has its figures
         */
        private SheetDraft.Told told(Typed typed, Integer people, boolean kept) {
            String tank = figure("main-tank", SheetWords.field(Tank.class, "capacity"), typed);
            String masses = typed.line("masses");
            List<String> each = people == null || masses.isEmpty()
                    ? List.of()
                    : at("masses", words -> words.masses(masses, people));
            Map<String, String> brochure = new LinkedHashMap<>();
            Brochure.FIGURES.forEach(one -> brochure.put(one.path(), figure(one.line(), one.field(), typed)));
            brochure.values().removeIf(String::isEmpty);
            if (kept) {
                Brochure.FIGURES.stream()
                        .filter(one -> !typed.line(one.line()).isEmpty())
                        .forEach(one -> said.put(one.line(), new Said(true, OF_SHELF)));
            }
            Map<String, String> trip = new LinkedHashMap<>();
            TRIP.forEach(field -> trip.put(field, figure(field, SheetWords.field(Sheet.Trip.class, field), typed)));
            trip.put(
                    "dust",
                    at("dust", words -> words.choice(SheetWords.field(Sheet.Trip.class, "dust"), typed.line("dust"))));
            trip.values().removeIf(String::isEmpty);
            String readyBy = at(
                    "ready-by", words -> words.day(SheetWords.field(Sheet.class, "ready-by"), typed.line("ready-by")));
            return new SheetDraft.Told(typed.tub(), tank, each, brochure, trip, readyBy);
        }

        private String figure(String field, FieldSchema schema, Typed typed) {
            return typed.line(field).isEmpty() ? "" : at(field, words -> words.figure(schema, typed.line(field)));
        }

        /** That what a part commonly comes with is the one of another line. */
        private void brings(String field, Fitment.Kind kind, Wish other) {
            String word = Words.hyphenated(kind.name());
            String is = other.line().equals(field)
                    ? ""
                    : ". Its " + word.replace('-', ' ') + " is " + other.part().name();
            said.computeIfPresent(field, (same, told) -> told.in(told.words().replace(", and kind: " + word, "") + is));
        }

        /**
         * What becomes of the tub is asked where a tray or canopy is wished, unless the shelf or a wish says it.
         *
         * @param never whether the vehicle came without one
         */
        private void tub(boolean never, TubFate told, List<Wish> parts) {
            List<Wanted> bodies = wanted(parts).stream().filter(Wanted::isBody).toList();
            parts.forEach(wish -> {
                String field = wish.line();
                Wanted part = wish.part();
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
                    && wanted(parts).stream().noneMatch(part -> part.meaning().isOfTub());
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
        private static String again(Wanted part, List<Wish> others) {
            return wanted(others).stream()
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

        /** @param others those of the lines above; gets what this one names */
        private void part(String field, String typed, String region, List<Wish> others) {
            List<Wanted> parts = typed.isEmpty() ? List.of() : at(field, words -> words.parts(typed, region));
            List<String> told = new ArrayList<>();
            for (Wanted part : parts) {
                String otherwise = at(field, words -> words.otherwiseOnShelf(part));
                told.add((parts.size() == 1 ? "" : part.name() + ": ")
                        + words(part, typed, others)
                        + (otherwise.isEmpty() ? "" : ". On the shelf " + otherwise));
                others.add(new Wish(field, part));
            }
            if (!told.isEmpty()) {
                said.putIfAbsent(field, new Said(false, String.join("; ", told), offers(field, typed, parts)));
            }
        }

        /** What lies on the shelf that may be meant by parts of a line. */
        private List<Offer> offers(String field, String typed, List<Wanted> parts) {
            List<Offer> offers = new ArrayList<>();
            for (Wanted part : parts) {
                for (Lying lies : at(field, words -> words.alike(part))) {
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

        /** How a part was understood. @param typed the line that names it @param others those above it */
        private static String words(Wanted part, String typed, List<Wish> others) {
            String figures = part.said().entrySet().stream()
                    .filter(told -> !told.getKey().equals(Wanted.ROOM))
                    .map(Map.Entry::getValue)
                    .collect(Collectors.joining(", "));
            return (part.shelf().isEmpty() ? part.meaning().onSheet() : FROM_SHELF)
                    + (figures.isEmpty() ? "" : ", " + figures)
                    + (part.ownRims() ? ", on the rims that the vehicle has" : "")
                    + (typed.toLowerCase(Locale.ROOT).contains(part.name().toLowerCase(Locale.ROOT))
                            ? ""
                            : ", named " + part.name())
                    + (part.reason().isEmpty()
                            ? ""
                            : ". '" + part.reason() + "' is kept as a comment; no check reads it")
                    + again(part, others);
        }

        private static List<Wanted> wanted(List<Wish> parts) {
            return parts.stream().map(Wish::part).toList();
        }

        /** The sheet, once it has been read as any other is. */
        private Understood made(SheetDraft.Whole whole, List<Wish> parts) {
            String text = view.draft(whole, place, faults);
            try {
                View.Read read = view.read(NodeReader.read(place, text, faults), faults);
                places(TakenPlace.of(read.tree(), view.book()), parts);
                kept(NodeReader.read(place, text, new ArrayList<>()), parts);
                return told(Optional.of(text));
            } catch (FaultsException e) {
                faults.addAll(e.faults());
                if (whole.trailer().filter(SheetDraft.Towed::shelf).isPresent()) {
                    faults.removeIf(this::isOfTrailer);
                }
                return told(Optional.empty());
            }
        }

        /** Tells what does not go with the figures of the shelf where it was typed. @return whether it was typed there */
        private boolean isOfTrailer(Fault fault) {
            String field = TRAILER_FIELDS.getOrDefault(fault.path(), "");
            if (!field.isEmpty()) {
                said.put(field, new Said(true, OF_TRAILER));
            }
            return !field.isEmpty();
        }

        /** Where a thing is taken to be is told at its line; two in one place are told of beside the sheet. */
        private void places(List<TakenPlace> places, List<Wish> parts) {
            TakenPlace.shared(places).forEach(same -> hints.add(TakenPlace.told(same)));
            places.stream()
                    .filter(TakenPlace::taken)
                    .forEach(place -> parts.forEach(wish -> {
                        Wanted part = wish.part();
                        if (!part.said().containsKey("at") && part.name().equalsIgnoreCase(place.name())) {
                            said.computeIfPresent(
                                    wish.line(),
                                    (same, told) -> told.in(told.words() + ". Taken to be " + place.words()
                                            + ": say where behind it if it is not"));
                        }
                    }));
        }

        /** Tells where a place stays as the shelf has measured it, since what was said does not contradict that. */
        private void kept(Node.Mapping sheet, List<Wish> parts) {
            parts.stream()
                    .filter(wish -> wish.part().isPlaced())
                    .filter(wish -> sheet.get(wish.part().shelf()) instanceof Node.Listing list
                            && list.items().stream()
                                    .noneMatch(item -> item instanceof Node.Mapping fields
                                            && fields.get("at") != null
                                            && fields.get("from") instanceof Node.Scalar name
                                            && name.text().equals(wish.part().name())))
                    .forEach(wish -> said.computeIfPresent(
                            wish.line(),
                            (same, told) -> told.in(told.words() + ", where the shelf has measured "
                                    + wish.part().name())));
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
                    asksBrochure,
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
        missing.forEach(
                field -> all.put(field, new Said(true, ASKED.getOrDefault(field, "This has to be filled in."))));
        return new Understood(all, missing, faults, hints, tub, brochure, text);
    }

    /** The field that is first to be put right, in the order of the page; empty where none is. */
    String first() {
        return Stream.concat(FIELDS.stream(), said.keySet().stream().filter(field -> !FIELDS.contains(field)))
                .filter(field -> said.containsKey(field) && said.get(field).fault())
                .findFirst()
                .orElse("");
    }

    /** What has to be filled in, in words. */
    public String stillMissing() {
        return missing.stream()
                .map(field -> field.equals("region") ? "where it is registered" : field)
                .collect(Collectors.joining(", "));
    }

    public boolean isWhole() {
        return text.isPresent();
    }
}
