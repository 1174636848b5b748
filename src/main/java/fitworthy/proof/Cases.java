package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.book.House;
import fitworthy.book.HouseReader;
import fitworthy.book.Severity;
import fitworthy.book.UsualFigures;
import fitworthy.figures.room.RoomMeasures;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Missing;
import fitworthy.schema.Binder;
import fitworthy.schema.Field;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.KnownGroups;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Guesses;
import fitworthy.sheet.Sheet;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.InputFile;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import fitworthy.source.Trees;
import fitworthy.source.Words;
import fitworthy.usual.Filling;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The tests of a rule book that its maintainers write. A case is the plain sheet, changed: fields given in the topic's
 * {@code sheet} and in the case's own replace those of the plain sheet, lists of named things are merged by name, and
 * what {@code without} names is taken out. A case may set values over the book's under {@code house}, as a shop does.
 */
public final class Cases {

    /**
     * One case.
     *
     * @param topic the topic folder it stands in
     * @param text what it says
     * @param place where it stands
     * @param tree what its sheet was read from
     * @param sheet the sheet it makes
     * @param house what it sets over the book, as a shop may
     */
    public record Case(String topic, Text text, Place place, Node.Mapping tree, Sheet sheet, House house) {
        @Override
        public String toString() {
            return topic + ": " + text.name();
        }
    }

    /** On a field in which a case says what has to come of it; one of them at least is there. */
    @Retention(RetentionPolicy.RUNTIME)
    @Target(ElementType.METHOD)
    private @interface Says {}

    /** What a case says, without its sheet. */
    public record Text(
            @Field(value = "the situation in a sentence", needed = true, example = "One kilogram over the GVM")
                    String name,
            @Field(value = "paths taken out of the sheet", example = "[trailer]") List<String> without,
            @Says @Field("every finding of this topic that must come up") List<Expected> expect,
            @Says @Field("checks that must not be assessed") List<Unassessed> notAssessed,
            @Says @Field("figures that must come out so") List<ExpectedFigure> figures,
            @Says @Field("usual figures of the book that fill its sheet in") List<ExpectedUsual> usual,
            @Says @Field(value = "ids that must be met", example = "[mass.gvm-over]") List<String> met,
            @Says @Field(value = "ids that are in order only if guesses hold", example = "[mass.gvm-over]")
                    List<String> held,
            @Says @Field(value = "ids whose question must not arise", example = "[mass.gvm-tight]")
                    List<String> doesNotApply,
            @Says @Field(value = "ids that are checked no more on this day", example = "[mass.gvm-tight]")
                    List<String> retired,
            @Says @Field(value = "ids of what the tolerance could turn", example = "[radio.in-sight]")
                    List<String> unsure,
            @Says @Field(value = "ids of what the tolerance could not turn", example = "[radio.in-sight]")
                    List<String> sure,
            @Field(
                            value = "why the same is said on the day before, where a value begins on this day",
                            example = "Until then the State went by Australia's 75 mm.")
                    String sameBefore) {

        /** Whether it says what has to become of a rule. */
        public boolean names(String id) {
            return met.contains(id)
                    || held.contains(id)
                    || doesNotApply.contains(id)
                    || retired.contains(id)
                    || unsure.contains(id)
                    || sure.contains(id)
                    || expect.stream().anyMatch(finding -> finding.id().equals(id))
                    || notAssessed.stream().anyMatch(check -> check.id().equals(id));
        }
    }

    /** A finding that must come up. Figures are as printed. */
    public record Expected(
            @Field(value = "the rule", needed = true, example = "mass.gvm-over") String id,
            @Field("how much it asks for; not looked at where left out") Choice<Severity> severity,
            @Field(value = "what it is about; not looked at where left out", example = "front axle") String subject,
            @Field(value = "the load case; not looked at where left out", example = "towing") String in,
            @Field(value = "the value as printed", example = "3001 kg") String value,
            @Field(value = "the limit as printed", example = "3000 kg") String limit,
            @Field(value = "the margin as printed, negative where exceeded", example = "-1 kg") String margin,
            @Field(value = "words that the remedy holds as printed", example = "at least 1 kg off") String remedy,
            @Field(
                            value = "the guesses that it rests on, each by its field; not looked at where left out",
                            example = "[vehicle.ratings.gvm]")
                    List<String> guesses) {}

    /** A figure that must come out so, whether a rule judges it or not. */
    public record ExpectedFigure(
            @Field(value = "the measure", needed = true, example = "room.trailer") String measure,
            @Field(value = "what it is of", needed = true, example = "trailer") String subject,
            @Field(value = "the load case; of the plan where left out", example = "towing") String in,
            @Field(value = "what it is as printed, number or word", example = "2410 kg") String value,
            @Field(value = "its tolerance as printed; not looked at where left out", example = "96 kg")
                    String tolerance,
            @Field(
                            value = "the limit that governs it, by its measure '-limit'; not looked at where left out",
                            example = "rear axle")
                    String governs,
            @Field(value = "the field for want of which it is not known", example = "vehicle.ratings.gcm")
                    String missing) {}

    /** A usual figure that must stand where the sheet leaves a field to the book. */
    public record ExpectedUsual(
            @Field(value = "the usual figure", needed = true, example = "bar.mass") String id,
            @Field(value = "what it is, as its page has it", needed = true, example = "62 kg +/- 25 kg")
                    String value) {}

    /** A check that must lack a figure. */
    public record Unassessed(
            @Field(value = "the rule", needed = true, example = "mass.gvm-over") String id,
            @Field(value = "the field that is missing", needed = true, example = "vehicle.ratings.gvm") String field) {}

    private static final List<String> SAYING = RecordSchema.of(Text.class).fields().stream()
            .filter(field -> field.accessor().isAnnotationPresent(Says.class))
            .map(FieldSchema::name)
            .toList();

    private final Book book;
    private final Node.Mapping plain;
    private final List<Fault> faults;

    private Cases(Book book, Node.Mapping plain, List<Fault> faults) {
        this.book = book;
        this.plain = plain;
        this.faults = faults;
    }

    /** What there may be cases of: the topics of a book, its usual figures, and figures that no rule judges. */
    public static Set<String> topics(Book book) {
        Set<String> topics = new TreeSet<>(book.topics());
        topics.add(UsualFigures.FOLDER);
        topics.add(RoomMeasures.TOPIC);
        return topics;
    }

    /**
     * Reads the cases of every topic.
     *
     * @param folder the rules folder
     * @throws FaultsException with every fault in them
     */
    public static List<Case> read(Path folder, Book book) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        Node.Mapping plain = page(folder, folder.resolve("plain-sheet.yaml"), faults);
        List<Case> cases = new ArrayList<>();
        if (plain != null) {
            for (String topic : topics(book)) {
                Path file = folder.resolve(topic).resolve("cases.yaml");
                if (Files.exists(file)) {
                    cases.addAll(new Cases(book, plain, faults).topic(topic, page(folder, file, faults)));
                }
            }
        }
        if (!faults.isEmpty()) {
            throw new FaultsException(faults);
        }
        return cases;
    }

    /** A page of cases, or the plain sheet; null with a fault where it cannot be read. */
    static Node.Mapping page(Path folder, Path page, List<Fault> faults) {
        return NodeReader.read(page.toString(), InputFile.page(folder, page, faults), faults);
    }

    private List<Case> topic(String topic, Node.Mapping root) {
        List<Case> cases = new ArrayList<>();
        if (root == null) {
            return cases;
        }
        Node.Mapping base = root.get("sheet") instanceof Node.Mapping changes ? Trees.merged(plain, changes) : plain;
        if (!(root.get("cases") instanceof Node.Listing listing)) {
            faults.add(new Fault(root.place(), "cases", "is missing", "cases: with a line '- name: ...' for each"));
            return cases;
        }
        KnownGroups before = groups(base);
        for (Node item : listing.items()) {
            if (item instanceof Node.Mapping mapping) {
                oneCase(topic, base, before, mapping, cases);
            } else {
                faults.add(new Fault(item.place(), "cases", "is " + item.described(), "- name: ..."));
            }
        }
        return cases;
    }

    /** What the sheets of a topic's cases can be made of, since each changes little; its faults are told of them. */
    private KnownGroups groups(Node.Mapping base) {
        try {
            return Filling.bound(base, book, new ArrayList<>(), KnownGroups.NONE)
                    .groups();
        } catch (FaultsException e) {
            return KnownGroups.NONE;
        }
    }

    private void oneCase(String topic, Node.Mapping base, KnownGroups before, Node.Mapping mapping, List<Case> cases) {
        Text text = Binder.bind(Text.class, mapping.without("sheet").without("house"), faults)
                .record();
        Node.Mapping changed =
                mapping.get("sheet") instanceof Node.Mapping changes ? Trees.merged(base, changes) : base;
        for (String path : text.without()) {
            changed = Trees.without(changed, NodePath.parse(path));
        }
        if (book.topics().contains(topic) && SAYING.stream().noneMatch(field -> mapping.get(field) != null)) {
            faults.add(new Fault(
                    mapping.place(),
                    text.name(),
                    "expects nothing in particular, so that it shows nothing",
                    "one of " + String.join(", ", SAYING)
                            + "; 'expect: []' where no rule of the topic may find anything"));
        }
        House house = house(mapping, text);
        try {
            Sheet sheet =
                    Filling.bound(changed, book, new ArrayList<>(), before).record();
            guesses(text, mapping, sheet);
            cases.add(new Case(topic, text, mapping.place(), changed, sheet, house));
        } catch (FaultsException e) {
            faults.addAll(e.faults());
        }
    }

    /** A fault for each guess that it names and its sheet does not have. */
    private void guesses(Text text, Node.Mapping mapping, Sheet sheet) {
        List<String> guessed = Guesses.of(sheet).stream().map(Missing::path).toList();
        text.expect().stream()
                .flatMap(finding -> finding.guesses().stream())
                .filter(field -> !guessed.contains(field))
                .distinct()
                .forEach(field -> faults.add(new Fault(
                        mapping.place(),
                        text.name(),
                        "names a guess of '" + field + "', but its sheet guesses no such figure"
                                + Words.suggestion(field, guessed),
                        "a field of the case's sheet whose value is written with 'about' or 'usual'")));
    }

    private House house(Node.Mapping mapping, Text text) {
        try {
            return mapping.get("house") instanceof Node.Mapping set
                    ? HouseReader.read(set, set.place().file(), text.name(), book, new ArrayList<>())
                    : House.NONE;
        } catch (FaultsException e) {
            faults.addAll(e.faults());
            return House.NONE;
        }
    }
}
