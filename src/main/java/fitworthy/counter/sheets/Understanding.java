package fitworthy.counter.sheets;

import fitworthy.advice.View;
import fitworthy.counter.edit.Labels;
import fitworthy.counter.sheets.Understood.Said;
import fitworthy.quantity.Mark;
import fitworthy.schema.FieldSchema;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetDraft;
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
import fitworthy.usual.TakenPlace;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Looks at what was typed of a new sheet, against one book and one shelf. */
final class Understanding {

    private static final String OF_SHELF =
            "The shelf has its own figure of this vehicle. Empty this line, and put another"
                    + " figure in on the page of the sheet; or give the vehicle a name of its own.";
    /** Fields of the sheet that are typed of a trailer, each with that of the page. */
    private static final Map<String, String> TRAILER_FIELDS =
            Map.of("trailer.mass", "trailer-mass", "trailer.ball", "ball", "trailer.rated", "rated");

    private static final String NAMELESS_TRAILER =
            "Figures of a trailer need its name: one from the shelf, or call it trailer.";

    private static final String OF_TRAILER =
            "The shelf has other figures of this trailer. Leave this empty to take those, or give the trailer a name of"
                    + " its own.";

    private static final List<String> TRIP = Typed.fields("longest-leg", "top-speed");

    private final View view;
    private final Place place;
    private final Shelf shelf;
    private final SaidAt said;
    private final List<String> missing = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();
    private final List<String> hints = new ArrayList<>();
    private boolean asksTub;
    private boolean asksBrochure;

    /** @param place where the sheet would stand, beside its shelf */
    Understanding(View view, Place place) {
        this.view = view;
        this.place = place;
        this.shelf = view.shelves().of(place.file());
        this.said = new SaidAt(view.book(), shelf);
        faults.addAll(shelf.faults());
    }

    Understood of(Typed typed) {
        String named = typed.line("vehicle");
        String vehicle = needed("vehicle", named, words -> words.vehicle(named));
        boolean kept = said.at("vehicle", words -> words.isOnShelf(named));
        if (kept) {
            said.fields().put("vehicle", new Said(false, SaidAt.FROM_SHELF));
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
        Optional<SheetDraft.Towed> trailer = said.at(
                "trailer",
                words -> words.trailer(
                        typed.line("trailer"), typed.line("trailer-mass"), typed.line("ball"), typed.line("rated")));
        if (typed.hasNamelessTrailer()) {
            said.fields().put("trailer", new Said(true, NAMELESS_TRAILER));
        }
        trailer.filter(SheetDraft.Towed::shelf)
                .ifPresent(towed -> said.fields().putIfAbsent("trailer", new Said(false, SaidAt.FROM_SHELF)));
        asksBrochure = !kept && !named.isEmpty();
        SheetDraft.Told told = told(typed, people, kept);
        Wishes wishes = new Wishes(said, typed.parts(), region == null ? "" : region);
        asksTub = wishes.asksTub(kept && word(vehicle, NodePath.of("tub")).equals("no"), typed.tub());
        if (!missing.isEmpty()
                || !faults.isEmpty()
                || said.fields().values().stream().anyMatch(Said::fault)) {
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
                        wishes.parts(),
                        trailer,
                        told),
                wishes);
    }

    private <T> T needed(String field, String typed, SaidAt.Reading<T> reading) {
        if (typed.isEmpty()) {
            missing.add(field);
            return null;
        }
        return said.at(field, reading);
    }

    /** Tells where more are to travel than the vehicle has seats. */
    private void seats(String vehicle, int people) {
        String seats = word(vehicle, NodePath.of("seats"));
        if (seats.matches("[0-9]{1,2}") && people > Integer.parseInt(seats)) {
            said.fields()
                    .putIfAbsent("people", new Said(false, "The vehicle has " + seats + " seats, as the shelf says."));
        }
    }

    /** Tells which vehicles of the shelf are called by the same words and more; none is taken for the one typed. */
    private void alike(String named) {
        List<String> typed = words(named);
        String lying = shelf.of(Kind.VEHICLES).keySet().stream()
                .filter(name -> words(name).containsAll(typed))
                .collect(Collectors.joining(", or "));
        if (!lying.isEmpty()) {
            said.fields().putIfAbsent("vehicle", new Said(false, "A name of your own. The shelf has " + lying + "."));
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
                : said.at("masses", words -> words.masses(masses, people));
        Map<String, String> brochure = new LinkedHashMap<>();
        Brochure.FIGURES.forEach(one -> brochure.put(one.path(), figure(one.line(), one.field(), typed)));
        brochure.values().removeIf(String::isEmpty);
        if (kept) {
            Brochure.FIGURES.stream()
                    .filter(one -> !typed.line(one.line()).isEmpty())
                    .forEach(one -> said.fields().put(one.line(), new Said(true, OF_SHELF)));
        }
        Map<String, String> trip = new LinkedHashMap<>();
        TRIP.forEach(field -> trip.put(field, figure(field, SheetWords.field(Sheet.Trip.class, field), typed)));
        trip.put(
                "dust",
                said.at("dust", words -> words.choice(SheetWords.field(Sheet.Trip.class, "dust"), typed.line("dust"))));
        trip.values().removeIf(String::isEmpty);
        String readyBy = said.at(
                "ready-by", words -> words.day(SheetWords.field(Sheet.class, "ready-by"), typed.line("ready-by")));
        return new SheetDraft.Told(typed.tub(), tank, each, brochure, trip, readyBy);
    }

    private String figure(String field, FieldSchema schema, Typed typed) {
        return typed.line(field).isEmpty() ? "" : said.at(field, words -> words.figure(schema, typed.line(field)));
    }

    /** What the shelf says that a vehicle burns; told at the field, which then need not be filled in. */
    private Optional<String> burns(String vehicle) {
        Optional<String> fuel =
                Optional.of(word(vehicle, NodePath.of("engine", "fuel"))).filter(text -> !text.isEmpty());
        fuel.ifPresent(word -> said.fields().put("fuel", new Said(false, word + ", as the shelf says")));
        return fuel;
    }

    /** What the shelf says of a vehicle that lies there; empty where it does not. */
    private String word(String vehicle, NodePath field) {
        return field.in(shelf.of(Kind.VEHICLES).get(vehicle)) instanceof Node.Scalar word
                ? Mark.read(word.text()).text()
                : "";
    }

    /** The sheet, once it has been read as any other is. */
    private Understood made(SheetDraft.Whole whole, Wishes wishes) {
        String text = view.draft(whole, place, faults);
        try {
            View.Read read = view.read(NodeReader.read(place, text, faults), faults);
            List<TakenPlace> places = TakenPlace.of(read.tree(), view.book());
            TakenPlace.shared(places).forEach(same -> hints.add(TakenPlace.told(same)));
            wishes.tellPlaces(places);
            wishes.tellKept(NodeReader.read(place, text, new ArrayList<>()));
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
            said.fields().put(field, new Said(true, OF_TRAILER));
        }
        return !field.isEmpty();
    }

    private Understood told(Optional<String> text) {
        return new Understood(
                said.fields(),
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
}
