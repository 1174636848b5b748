package fitworthy.counter.sheets;

import fitworthy.advice.View;
import fitworthy.book.Book;
import fitworthy.quantity.Mark;
import fitworthy.sheet.SheetDraft;
import fitworthy.sheet.SheetDraft.Wanted;
import fitworthy.sheet.Tank;
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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What was understood of a new sheet, and what was not.
 *
 * @param said what is said to each field, by its id, such as {@code vehicle} or {@code part-3}
 * @param missing fields that have to be filled in, in words
 * @param faults what is wrong beside the fields
 * @param text the sheet that would be made; absent while anything is wrong or missing
 */
public record Understood(Map<String, Said> said, List<String> missing, List<String> faults, Optional<String> text) {

    /** The fields before the parts, in the order of the page. */
    private static final List<String> FIELDS = List.of("vehicle", "fuel", "people", "region", "trailer");

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
                    book.tables().shopWords(), shelf, book.regions().keySet(), "", found));
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
            String vehicle = needed("vehicle", typed.vehicle(), words -> words.vehicle(typed.vehicle()));
            boolean kept = at("vehicle", words -> words.isOnShelf(typed.vehicle()));
            if (kept) {
                said.put("vehicle", new Said(false, "from the shelf"));
            }
            String burns = kept ? burns(vehicle).orElse(typed.fuel()) : typed.fuel();
            Tank.Liquid fuel = needed("fuel", burns, words -> words.fuel(burns));
            Integer people = needed("people", typed.people(), words -> words.people(typed.people()));
            String region = at("region", words -> words.region(typed.region()));
            Optional<SheetDraft.Towed> trailer = at("trailer", words -> words.trailer(typed.towed()));
            trailer.filter(SheetDraft.Towed::shelf)
                    .ifPresent(towed -> said.putIfAbsent("trailer", new Said(false, "from the shelf")));
            List<Wanted> parts = new ArrayList<>();
            for (int i = 0; i < typed.parts().size(); i++) {
                part("part-" + (i + 1), typed.parts().get(i), parts).ifPresent(parts::add);
            }
            if (!missing.isEmpty()
                    || !faults.isEmpty()
                    || said.values().stream().anyMatch(Said::fault)) {
                return told(Optional.empty());
            }
            return made(new SheetDraft.Whole(
                    typed.heading(),
                    vehicle,
                    kept,
                    fuel,
                    people,
                    region,
                    List.copyOf(view.book().regions().keySet()),
                    LocalDate.now(),
                    parts,
                    trailer));
        }

        /** What the shelf says that a vehicle burns; told at the field, which then need not be filled in. */
        private Optional<String> burns(String vehicle) {
            Optional<String> fuel =
                    NodePath.of("engine", "fuel").in(shelf.of(Kind.VEHICLES).get(vehicle)) instanceof Node.Scalar word
                            ? Optional.of(Mark.read(word.text()).text()).filter(text -> !text.isEmpty())
                            : Optional.empty();
            fuel.ifPresent(word -> said.put("fuel", new Said(false, word + ", as the shelf says")));
            return fuel;
        }

        /** That another line has a part of the kind already, where a vehicle has but one. */
        private static String again(Wanted part, List<Wanted> others) {
            return others.stream()
                    .filter(other -> other.meaning().kinds().stream()
                            .anyMatch(kind ->
                                    kind.isSingle() && part.meaning().kinds().contains(kind)))
                    .findFirst()
                    .map(other -> ". Of the same kind as " + other.name() + ": empty one line if they are the same")
                    .orElse("");
        }

        /** @param others those of the lines above */
        private Optional<Wanted> part(String field, String typed, List<Wanted> others) {
            if (typed.isEmpty()) {
                return Optional.empty();
            }
            Wanted part = at(field, words -> words.part(typed));
            if (part != null) {
                said.putIfAbsent(
                        field,
                        new Said(
                                false,
                                (part.shelf().isEmpty() ? part.meaning().onSheet() : "from the shelf")
                                        + (part.figure().isEmpty() ? "" : ", " + part.figure())
                                        + (typed.startsWith(part.name()) ? "" : ", named " + part.name())
                                        + again(part, others)));
            }
            return Optional.ofNullable(part);
        }

        /** The sheet, once it has been read as any other is. */
        private Understood made(SheetDraft.Whole whole) {
            String text = view.draft(whole, place, faults);
            try {
                view.read(NodeReader.read(place, text, faults), faults);
                return told(Optional.of(text));
            } catch (FaultsException e) {
                faults.addAll(e.faults());
                return told(Optional.empty());
            }
        }

        private Understood told(Optional<String> text) {
            return new Understood(
                    said,
                    missing,
                    faults.stream().distinct().map(Fault::toString).toList(),
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
        return new Understood(all, missing, faults, text);
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
