package fitworthy.shelf;

import fitworthy.quantity.Dimension;
import fitworthy.schema.ChoiceWords;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.Plausible;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetDraft.Towed;
import fitworthy.sheet.ShopWords;
import fitworthy.sheet.Tank.Liquid;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Wanted;
import fitworthy.source.Fault;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Understands what is typed of a sheet, as an option, in answer to a question or on a page.
 *
 * @param words what the rule book knows the trade's words to mean
 * @param shelf what may be taken from it by name
 * @param regions those of the rule book
 * @param places the places in words that the rule book knows
 * @param dashes what stands before the name of an option, by which faults tell what was typed; nothing on a page
 * @param faults gets what is wrong with what was typed
 */
public record SheetWords(
        ShopWords words,
        Shelf shelf,
        Collection<String> regions,
        WishPlaces places,
        String dashes,
        List<Fault> faults) {

    /** What the engine may burn. */
    private static final List<String> FUELS = List.of("diesel", "petrol");

    /** Whether a vehicle of this name lies on the shelf. */
    public boolean isOnShelf(String vehicle) {
        return vehicle != null && shelf.named(Kind.VEHICLES, vehicle).isPresent();
    }

    /** Its name, as the shelf writes it where it lies there. @param typed null where nothing was */
    public String vehicle(String typed) {
        String name = typed().name("vehicle", typed, typed().right("vehicle", "Tarrenby 3.0 wagon"));
        return shelf.named(Kind.VEHICLES, name).orElse(name);
    }

    /** The fuel; null where it is none. */
    public Liquid fuel(String typed) {
        String fuel = typed == null ? "" : typed.strip();
        if (!FUELS.contains(fuel)) {
            typed().tell(
                            "fuel",
                            fuel.isEmpty() ? "is missing" : "'" + fuel + "' is none" + Words.suggestion(fuel, FUELS),
                            typed().right("fuel", "diesel") + ", or petrol");
            return null;
        }
        return Liquid.values()[ChoiceWords.of(Liquid.class).indexOf(fuel)];
    }

    /** How many are aboard; 0 where it is no number of people. */
    public int people(String typed) {
        String people = typed == null ? "" : typed.strip();
        boolean number = people.matches("[1-9][0-9]?") && Plausible.SEATS.canBe(Integer.parseInt(people));
        if (!number) {
            typed().tell(
                            "people",
                            people.isEmpty() ? "is missing" : "'" + people + "' is no number of people with a driver",
                            typed().right("people", "2") + ", the driver counted");
        }
        return number ? Integer.parseInt(people) : 0;
    }

    /** A region of the book; any where nothing was typed. */
    public String region(String typed) {
        String region = typed == null || typed.isBlank() ? "any" : typed.strip();
        if (!regions.contains(region)) {
            typed().tell(
                            "region",
                            "the rule book has no region '" + region + "'" + Words.suggestion(region, regions),
                            "one of " + String.join(", ", regions));
        }
        return region;
    }

    /** A trailer, with its mass where that was typed; nothing where none was. */
    public Optional<Towed> trailer(String typed) {
        NamedFigure read = NamedFigure.of(typed == null ? "" : typed);
        return trailer(read.name(), read.said(), "", "");
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
        String right = typed().right("trailer", "Camper=1400 kg");
        typed().figure(
                        dashes.isEmpty() ? "trailer-mass" : "trailer",
                        mass,
                        Dimension.MASS,
                        Plausible.TRAILER_MASS,
                        dashes.isEmpty() ? "1400 kg" : right);
        String own = typed().name("trailer", name, right);
        Optional<String> kept = shelf.named(Kind.TRAILERS, own);
        return Optional.of(new Towed(
                kept.orElse(own),
                mass,
                figure(field(Trailer.class, "ball"), ball),
                figure(field(Trailer.class, "rated"), rated),
                kept.isPresent()));
    }

    /** A figure of a field with its unit, which may be left out; nothing where nothing was typed. */
    public String figure(FieldSchema field, String typed) {
        String bare = typed.strip();
        String figure = bare.matches("(about\\s+)?[0-9.,]+") ? bare + " " + unit(field) : bare;
        typed().figure(field.name(), figure, field, typed().right(field.name(), field.example()));
        // A comma would end it where the sheet has several fields on one line.
        return figure.replaceFirst("(?<=[0-9]),(?=[0-9])", ".");
    }

    /** The unit of a field that holds a figure. */
    public static String unit(FieldSchema field) {
        return field.example().replaceFirst("^[0-9.]+\\s*(\\S+).*", "$1");
    }

    /** One of the answers of a field, as a sheet writes it; nothing where nothing was typed. */
    public String choice(FieldSchema field, String typed) {
        List<String> answers = ChoiceWords.of(field.type());
        if (!typed.isEmpty() && !answers.contains(typed)) {
            typed().tellWords(
                            field.name(),
                            typed,
                            "is no answer" + Words.suggestion(typed, answers),
                            "one of " + String.join(", ", answers));
        }
        return typed;
    }

    /** A day, as a sheet writes it; nothing where nothing was typed. */
    public String day(FieldSchema field, String typed) {
        if (!typed.isEmpty() && !isDay(field, typed)) {
            typed().tellWords(
                            field.name(),
                            typed,
                            "is no day that can be meant",
                            typed().right(field.name(), "2027-05-01"));
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
        FieldSchema mass = field(Sheet.Person.class, "mass");
        List<String> masses = Stream.of(typed.split("[,;]|\\band\\b"))
                .map(String::strip)
                .filter(one -> !one.isEmpty())
                .map(one -> figure(mass, one))
                .toList();
        if (masses.size() > people) {
            typed().tell(
                            "masses",
                            "are of " + masses.size() + " people, and " + people + " are aboard",
                            "one mass a person");
        }
        return masses;
    }

    /**
     * A part or another thing by its name, or under a name of its own ({@code Nellie=canopy}), with its mass,
     * what it holds or another measure of its kind where that was typed ({@code winch=26 kg}, {@code canopy=1.8 m}),
     * and with its place ({@code water tank=60 L under the tray}); or several that are joined ({@code bar and winch}).
     * Nothing where it is not understood.
     *
     * @param region where the vehicle is registered
     */
    public List<Wanted> parts(String typed, String region) {
        return new PartWords(words, shelf, places, typed()).wanted(typed, region);
    }

    /** A part, tank or load of the shelf by its name there; nothing where none is called so. */
    public Optional<Wanted> taken(Kind kind, String name) {
        return new ShelfParts(shelf).taken(kind, name);
    }

    /** What lies on the shelf that may be meant by a part that is not taken from it. */
    public List<Lying> alike(Wanted wanted) {
        return new ShelfParts(shelf).alike(wanted);
    }

    /** What of the shelf is called so and has another figure than was said, in words; empty where nothing has. */
    public String otherwiseOnShelf(Wanted wanted) {
        return new ShelfParts(shelf).otherwise(wanted);
    }

    /** The same of one field of a thing of the shelf. */
    public String otherwiseOnShelf(Kind kind, String name, NodePath field, String said) {
        return new ShelfParts(shelf).otherwise(kind, name, field, said);
    }

    /** The same of the lift of springs of the shelf, beside that of the others that they go with. */
    public String otherLiftOnShelf(String springs, String lift, String others) {
        return new ShelfParts(shelf).otherLift(springs, lift, others);
    }

    /** Tells of tyres for the wheels that the vehicle has where others are planned. @param wheels what those are called */
    public void ownRims(Wanted tyres, Optional<String> wheels) {
        if (tyres.ownRims() && wheels.isPresent()) {
            typed().tell(
                            "part",
                            "the tyres are to go on the rims that the vehicle has, but " + wheels.get()
                                    + " is planned too",
                            "one of the two left out");
        }
    }

    private TypedFaults typed() {
        return new TypedFaults(dashes, faults);
    }
}
