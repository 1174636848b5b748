package fitworthy.counter.plan;

import fitworthy.counter.desk.Change;
import fitworthy.counter.edit.AddItem;
import fitworthy.counter.edit.Several;
import fitworthy.counter.edit.TakeOff;
import fitworthy.quantity.Mark;
import fitworthy.schema.ChoiceWords;
import fitworthy.sheet.MeasuredPlace;
import fitworthy.sheet.SheetDraft;
import fitworthy.sheet.ShopWords.Thing;
import fitworthy.sheet.Tank.Liquid;
import fitworthy.sheet.Wanted;
import fitworthy.shelf.Kind;
import fitworthy.shelf.Lying;
import fitworthy.shelf.SheetWords;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** New things of a plan: from the shelf, in the shop's own words, and one in place of another. */
final class Adding {

    private static final Place TYPED = Place.of("");
    private static final Set<Thing> FUEL = Set.of(Thing.MAIN_TANK, Thing.FUEL_TANK, Thing.FUEL_CAN);
    private static final Node.Mapping EMPTY = new Node.Mapping(TYPED, Map.of());

    private Adding() {}

    /**
     * Something from the shelf.
     *
     * @param part to which a circuit belongs, where that is not the one of the shelf; empty else
     * @throws IllegalArgumentException where there is no such kind
     */
    static Change take(String kind, String name, String part) {
        Kind taken = Kind.valueOf(kind);
        return new Edit(
                name + " added",
                "",
                sheet -> taken == Kind.TRAILERS
                        ? new PutWhole(name + " as trailer", taken.inSheet(), word(name))
                        : sheet.words(new ArrayList<>())
                                .taken(taken, name)
                                .<Change>map(Adding::one)
                                .orElseGet(() -> new AddItem(taken.inSheet(), fromShelf(sheet, taken, name, part))));
    }

    /** The vehicle's own tank goes in place of the one of which nobody has said yet what it holds. */
    private static Change inPlaceOfUsual(PlanSheet sheet, String name, List<Change> added) {
        NodePath tanks = NodePath.of("tanks");
        List<Change> changes = new ArrayList<>();
        for (int i = 1; i <= sheet.items(tanks).size(); i++) {
            NodePath tank = tanks.to(i);
            boolean usual = sheet.text(tank.to("capacity"))
                    .map(held -> Mark.read(held).mark())
                    .filter(mark -> mark != Mark.USUAL && mark != Mark.ASKED)
                    .isEmpty();
            if (usual
                    && sheet.own(tank) != null
                    && sheet.text(tank.to("stock")).filter("yes"::equals).isPresent()) {
                changes.add(new TakeOff(sheet.key(tank)));
            }
        }
        changes.addAll(added);
        return new Several(name + " added", changes);
    }

    /** Its name alone, or beside that one of its own where another thing has it. */
    private static Node fromShelf(PlanSheet sheet, Kind kind, String name, String part) {
        Set<String> names = names(sheet, kind.inSheet());
        String own = name;
        for (int i = 2; names.contains(own); i++) {
            own = name + " " + i;
        }
        Node.Mapping taken = EMPTY.with("from", word(name));
        Node.Mapping named = own.equals(name) ? taken : taken.with("name", word(own));
        Node.Mapping placed = part.isEmpty() ? named : named.with("part", word(part));
        return placed == taken ? word(name) : placed;
    }

    private static Set<String> names(PlanSheet sheet, String list) {
        return sheet.items(NodePath.of(list)).stream()
                .map(item -> String.valueOf(item.name()))
                .collect(Collectors.toSet());
    }

    /** What is said in words, such as {@code bull bar=62 kg}. */
    static Change words(String typed) {
        String label = typed + " added";
        return new Edit(label, "", sheet -> {
            List<Fault> faults = new ArrayList<>();
            List<Wanted> wanted = wanted(sheet, typed, faults);
            wanted.forEach(one -> sheet.words(faults).ownRims(one, wheels(sheet, wanted)));
            FaultsException.refuse(faults);
            return wanted.size() == 1
                    ? one(wanted.get(0)).made().in(sheet)
                    : new Several(
                            label, wanted.stream().<Change>map(Adding::one).toList());
        });
    }

    /** What no field holds of what is said in words: for what it is wished. */
    static List<String> reasons(PlanSheet sheet, String typed) {
        return wanted(sheet, typed, new ArrayList<>()).stream()
                .map(Wanted::reason)
                .filter(reason -> !reason.isEmpty())
                .toList();
    }

    /** What lies on the shelf that may be meant by what is said in words and not taken from it. */
    static List<Lying> alike(PlanSheet sheet, String typed) {
        SheetWords words = sheet.words(new ArrayList<>());
        return wanted(sheet, typed, new ArrayList<>()).stream()
                .flatMap(wanted -> words.alike(wanted).stream())
                .toList();
    }

    /** What of it the shelf has otherwise. */
    static List<String> otherwise(PlanSheet sheet, String typed) {
        SheetWords words = sheet.words(new ArrayList<>());
        return wanted(sheet, typed, new ArrayList<>()).stream()
                .map(words::otherwiseOnShelf)
                .filter(told -> !told.isEmpty())
                .toList();
    }

    private static List<Wanted> wanted(PlanSheet sheet, String typed, List<Fault> faults) {
        return sheet.words(faults)
                .parts(typed, sheet.text(NodePath.of("region")).orElse(""));
    }

    /** What the wheels of a plan are called, among what it has and what is added. */
    private static Optional<String> wheels(PlanSheet sheet, List<Wanted> added) {
        NodePath parts = NodePath.of("fitments");
        return Wanted.wheels(added).or(() -> IntStream.rangeClosed(
                        1, sheet.items(parts).size())
                .mapToObj(parts::to)
                .filter(part ->
                        sheet.text(part.to("kind")).filter("wheels"::equals).isPresent())
                .flatMap(part -> sheet.text(part.to("name")).stream())
                .findFirst());
    }

    private static Edit one(Wanted wanted) {
        return new Edit(wanted.name() + " added", "", sheet -> {
            if (wanted.meaning().isOfTub()) {
                return Tub.of(sheet, wanted.tub());
            }
            Liquid fuel = fuel(sheet, wanted);
            Change bare = added(wanted, SheetDraft.added(wanted, fuel, sheet.whole(), path -> true));
            PlanSheet filled = new PlanSheet(bare.in(sheet.answer()));
            if (wanted.isPlaced() && isWhereItLies(sheet, wanted, fuel, filled)) {
                return one(wanted.whereItLies()).made().in(sheet);
            }
            Predicate<NodePath> usual = path -> filled.isFilled(shifted(sheet, path));
            Change made = added(wanted, SheetDraft.added(wanted, fuel, sheet.whole(), usual));
            return wanted.meaning().things().contains(Thing.MAIN_TANK)
                    ? inPlaceOfUsual(sheet, wanted.name(), List.of(made))
                    : made;
        });
    }

    private static boolean isWhereItLies(PlanSheet sheet, Wanted wanted, Liquid fuel, PlanSheet worded)
            throws FaultsException {
        Map<String, List<String>> lying = SheetDraft.added(wanted.whereItLies(), fuel, sheet.whole(), path -> true);
        PlanSheet measured = new PlanSheet(added(wanted, lying).in(sheet.answer()));
        NodePath list = NodePath.of(wanted.shelf());
        NodePath item = list.to(measured.items(list).size());
        return MeasuredPlace.isMeant(
                wanted.said().get("at"),
                field -> worded.filledText(item.to(field)).orElse(""),
                field -> measured.filledText(item.to(field)).orElse(""));
    }

    private static Change added(Wanted wanted, Map<String, List<String>> entries) {
        List<Change> changes = new ArrayList<>();
        entries.forEach((list, items) -> items.forEach(item -> changes.add(new AddItem(
                list, NodeReader.read("", "item: " + item, new ArrayList<>()).get("item")))));
        boolean wired = !wanted.feeds().isEmpty()
                && !entries.get(Kind.CIRCUITS.inSheet()).isEmpty();
        return new Several(wanted.name() + " added" + (wired ? ", with its circuit" : ""), changes);
    }

    /** What the engine burns, for a tank or can of fuel. */
    private static Liquid fuel(PlanSheet sheet, Wanted wanted) throws FaultsException {
        NodePath field = NodePath.of("vehicle", "engine", "fuel");
        int fuel = ChoiceWords.of(Liquid.class)
                .indexOf(sheet.filledText(field)
                        .map(text -> Mark.read(text).text())
                        .orElse(""));
        if (fuel < 0
                && wanted.shelf().isEmpty()
                && wanted.meaning().things().stream().anyMatch(thing -> FUEL.contains(thing))) {
            throw Edit.refused(
                    sheet,
                    field.toString(),
                    "nobody has said what the engine burns",
                    "diesel or petrol, at the vehicle");
        }
        return Liquid.values()[Math.max(0, fuel)];
    }

    /** The place of a new item behind those that the sheet has. */
    private static NodePath shifted(PlanSheet sheet, NodePath path) {
        List<NodePath.Step> steps = path.steps();
        NodePath list = NodePath.of(steps.get(0).toString());
        NodePath shifted = list.to(sheet.items(list).size() + ((NodePath.Item) steps.get(1)).position());
        for (NodePath.Step step : steps.subList(2, steps.size())) {
            shifted = shifted.to(step.toString());
        }
        return shifted;
    }

    /** A choice between a part that is planned and another, which is taken from the shelf where the sheet has it not. */
    static Change instead(String part, String other) {
        return new Edit(other + " in place of " + part, "", sheet -> {
            List<Change> changes = new ArrayList<>();
            if (!names(sheet, "fitments").contains(other)) {
                changes.add(take(Kind.FITMENTS.name(), other, ""));
            }
            changes.add(choice(sheet, part, other));
            return new Several(other + " in place of " + part, changes);
        });
    }

    /** One more of a choice that has the part already, else a new one. */
    private static Change choice(PlanSheet sheet, String part, String other) {
        NodePath options = NodePath.of("options");
        List<Node> open = sheet.items(options);
        for (int i = 1; i <= open.size(); i++) {
            if (choices(open.get(i - 1)).anyMatch(choice -> holds(choice, part))) {
                return new AddItem(sheet.key(options.to(i).to("choices")), choice(other));
            }
        }
        return new AddItem(
                "options",
                EMPTY.with("name", word(part + " or " + other))
                        .with("choices", new Node.Listing(TYPED, List.of(choice(part), choice(other)))));
    }

    private static Stream<Node> choices(Node option) {
        return option instanceof Node.Mapping group && group.get("choices") instanceof Node.Listing choices
                ? choices.items().stream()
                : Stream.empty();
    }

    private static boolean holds(Node choice, String part) {
        return choice instanceof Node.Mapping group
                && group.get("parts") instanceof Node.Listing parts
                && parts.items().stream()
                        .anyMatch(name ->
                                name instanceof Node.Scalar word && word.text().equals(part));
    }

    private static Node choice(String part) {
        return EMPTY.with("name", word(part)).with("parts", new Node.Listing(TYPED, List.of(word(part))));
    }

    private static Node word(String text) {
        return new Node.Scalar(TYPED, text, false);
    }
}
