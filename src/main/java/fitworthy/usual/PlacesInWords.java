package fitworthy.usual;

import fitworthy.book.Book;
import fitworthy.book.UsualPlace;
import fitworthy.book.UsualPlace.Spot;
import fitworthy.book.UsualPlace.Start;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.GuessSpread;
import fitworthy.quantity.Mark;
import fitworthy.quantity.QuantityText;
import fitworthy.quantity.YesNo;
import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import fitworthy.source.Words;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Puts coordinates in place of words for a place: {@code at: in the tray}, {@code at: 120 mm behind the rear axle}, or
 * such words under {@code where} beside coordinates that are given. What the book's table says of a word is a guess with
 * a spread; what was measured from a point of the vehicle is as sure as a tape.
 */
public final class PlacesInWords {

    private static final List<String> LISTS = List.of("fitments", "tanks", "occupants", "cargo");
    private static final String AT = "at";
    private static final String ASK = "ask";
    private static final String REMOVES = "removes";
    static final String WHERE = "where";
    private static final String ROOF = "roof";
    /** What is in these may say that it is carried on the roof. */
    private static final List<String> ROOFED = List.of("fitments", "tanks", "cargo");

    private static final Pattern MEASURED =
            Pattern.compile("(.{1,80}?)\\s+(behind|ahead of|in front of)\\s+(?:the\\s+)?(.{1,80})", Pattern.DOTALL);

    private final Node.Mapping tree;
    private final Book book;
    private final List<Fault> faults;
    /** Made on first use, since most sheets have no words in them. */
    private Landmarks planned;

    private Landmarks standing;
    /** What the book says of its words, where it says it. */
    private final Map<String, UsualPlace.Value> places = new LinkedHashMap<>();

    private final Set<String> usedPlaces = new HashSet<>();

    private PlacesInWords(Node.Mapping tree, Book book, List<Fault> faults) {
        this.tree = tree;
        this.book = book;
        this.faults = faults;
    }

    /** The tree with coordinates in place of words. @param faults gets words that are no place */
    static Node.Mapping filled(Node.Mapping tree, Book book, List<Fault> faults) {
        PlacesInWords places = new PlacesInWords(tree, book, faults);
        Node.Mapping filled = tree;
        for (String list : LISTS) {
            if (tree.get(list) instanceof Node.Listing items) {
                filled = filled.with(list, places.items(items, list));
            }
        }
        return filled;
    }

    /** The tree with words for a place, where any stand there, under their name, so that coordinates fit beside them. */
    public static Node.Mapping apart(Node.Mapping tree, NodePath at) {
        return at.in(tree) instanceof Node.Scalar words
                ? Trees.with(tree, at, new Node.Mapping(words.place(), Map.of()).with(WHERE, words))
                : tree;
    }

    /** The field that words for a place stand under once coordinates stand beside them. */
    public static Optional<String> wordField(NodePath path) {
        return NodePath.of(AT).last().equals(path.last()) ? Optional.of(WHERE) : Optional.empty();
    }

    /** The book's words that a tree uses. */
    public static List<String> used(Node.Mapping tree, Book book) {
        return LISTS.stream()
                .flatMap(list -> tree.get(list) instanceof Node.Listing items ? items.items().stream() : Stream.empty())
                .flatMap(item -> Stream.of(NodePath.of(AT), NodePath.of(REMOVES, AT))
                        .flatMap(path -> words(path.in(item)).stream()))
                .flatMap(words ->
                        book.usualPlaces().known(Mark.read(words.text()).text()).stream())
                .toList();
    }

    /** What is asked for as a whole is asked for where it decides: along the vehicle. */
    private static Node.Mapping asked(Node.Mapping item) {
        return item.get(AT) instanceof Node.Scalar word && word.text().strip().equals(ASK)
                ? item.with(AT, new Node.Mapping(word.place(), Map.of()).with("x", word))
                : item;
    }

    private static Optional<Node.Scalar> words(Node at) {
        Node words = at instanceof Node.Mapping group ? group.get(WHERE) : at;
        return words instanceof Node.Scalar scalar ? Optional.of(scalar) : Optional.empty();
    }

    private Node items(Node.Listing items, String list) {
        List<Node> filled = new ArrayList<>();
        for (Node item : items.items()) {
            NodePath path = NodePath.of(list).to(filled.size() + 1);
            filled.add(item instanceof Node.Mapping group ? item(asked(group), path, ROOFED.contains(list)) : item);
        }
        return new Node.Listing(items.place(), filled);
    }

    /** @param roofed whether it may say that it is carried on the roof */
    private Node.Mapping item(Node.Mapping item, NodePath path, boolean roofed) {
        String in = item.get("in") instanceof Node.Scalar carrier ? carrier.text() : "";
        Node.Mapping filled = words(item.get(AT))
                .map(words -> roofed ? roof(item, words) : item)
                .map(group -> group(group, path.to(AT), false, in))
                .orElse(item);
        return item.get(REMOVES) instanceof Node.Mapping gone
                ? filled.with(REMOVES, group(gone, path.to(REMOVES).to(AT), true, ""))
                : filled;
    }

    /** What is said to be on the roof, or elsewhere, goes before what is usual, and not before what its sheet says. */
    private Node.Mapping roof(Node.Mapping item, Node.Scalar words) {
        Node said = item.get(ROOF);
        boolean open = said == null
                || said instanceof Node.Scalar word && Mark.read(word.text()).mark() == Mark.USUAL;
        return known(words)
                .map(UsualPlace::roof)
                .filter(told -> open && told.known())
                .map(told -> item.with(
                        ROOF,
                        new Node.Scalar(
                                words.place(), Words.hyphenated(told.value().name()), false)))
                .orElse(item);
    }

    /** A group with coordinates in place of the words of its place; those that stand beside them are left. */
    private Node.Mapping group(Node.Mapping group, NodePath path, boolean asItStands, String in) {
        Node at = group.get(AT);
        Optional<Node.Scalar> words = words(at);
        if (words.isEmpty()) {
            return group;
        }
        Map<String, Node.Entry> told = new LinkedHashMap<>();
        coordinates(words.get(), path, asItStands, in)
                .forEach((name, node) -> told.put(name, new Node.Entry(node.place(), node)));
        Node.Mapping place = new Node.Mapping(at.place(), told);
        return group.with(AT, at instanceof Node.Mapping beside ? Trees.merged(place, beside.without(WHERE)) : place);
    }

    private Map<String, Node> coordinates(Node.Scalar words, NodePath path, boolean asItStands, String in) {
        Optional<UsualPlace> known = known(words);
        Matcher measured = MEASURED.matcher(Mark.read(words.text()).text());
        return known.isPresent()
                ? usual(known.get(), words, path, asItStands, in)
                : measured.matches()
                        ? Map.of("x", measured(measured, words, path, landmarks(asItStands)))
                        : refused(
                                words,
                                path,
                                words.described() + " is no place in words"
                                        + Words.suggestion(
                                                words.text(), book.usualPlaces().ways()),
                                "one of "
                                        + String.join(
                                                ", ",
                                                book.usualPlaces().places().keySet())
                                        + "; or one measured, such as 120 mm behind the rear axle; or {x: 2950 mm}");
    }

    private Map<String, Node> usual(UsualPlace place, Node.Scalar words, NodePath path, boolean asItStands, String in) {
        Optional<UsualPlace.Value> value = inForce(place);
        if (value.isEmpty()) {
            return refused(
                    words,
                    path,
                    "the rule book says nowhere what " + words.described() + " is in this region on this day",
                    "at: {x: 2950 mm}");
        }
        Landmarks landmarks = landmarks(asItStands);
        if (seatsNobody(place, path, landmarks)) {
            return refused(
                    words,
                    path,
                    words.described() + " is a second row of seats, which this vehicle does not have",
                    "another place, or how many seats it has (vehicle.seats, or seats of a change of seats)");
        }
        UsualPlace.Value there = row(place, value.get(), landmarks);
        List<Spot> spots =
                Stream.concat(Stream.of(there.at()), there.otherwise().stream()).toList();
        Map<String, Node> told = new LinkedHashMap<>();
        List<Figure> along =
                spots.stream().map(spot -> landmarks.along(spot, in)).toList();
        Figure x = along.stream().filter(Figure::known).findFirst().orElse(along.get(0));
        told.put("x", written("usual ", cab(landmarks).within(place, there, x), words));
        told.put("y", written("usual ", spots.get(0).y(), words));
        spots.stream()
                .flatMap(spot -> landmarks.up(spot, in).stream())
                .findFirst()
                .map(up -> place.roof().is(YesNo.YES) ? onRack(up, in) : up)
                .ifPresent(up -> told.put("z", written("usual ", up, words)));
        return told;
    }

    /** On the rack that it stands on, or on the only one, where the sheet says how high that is: as far above it as it may be. */
    private Figure onRack(Figure up, String in) {
        List<Node.Mapping> racks = (tree.get("fitments") instanceof Node.Listing parts
                        ? parts.items()
                        : List.<Node>of())
                .stream()
                        .filter(Node.Mapping.class::isInstance)
                        .map(Node.Mapping.class::cast)
                        .filter(part -> text(part.get("kind")).equals("roof-rack"))
                        .toList();
        return racks.stream()
                .filter(rack -> in.isEmpty()
                        ? racks.size() == 1
                        : text(rack.get("name")).equals(in))
                .filter(rack -> rack.get(AT) instanceof Node.Mapping)
                .map(rack -> text(((Node.Mapping) rack.get(AT)).get("z")))
                .filter(height -> Mark.read(height).mark() == Mark.STATED && !height.isEmpty())
                .flatMap(height -> length(height).stream())
                .map(height ->
                        Figure.of(height.value() + up.tolerance(), Math.hypot(height.tolerance(), up.tolerance())))
                .findFirst()
                .orElse(up);
    }

    /** A length as a sheet has it; nothing where it is none, which whoever reads the field says. */
    private static Optional<Figure> length(String text) {
        try {
            return Optional.of(QuantityText.parse(text, Dimension.LENGTH));
        } catch (QuantityText.Unreadable e) {
            return Optional.empty();
        }
    }

    private static String text(Node node) {
        return node instanceof Node.Scalar scalar ? scalar.text() : "";
    }

    /** What was measured from a point, along the vehicle. */
    private Node measured(Matcher text, Node.Scalar words, NodePath path, Landmarks landmarks) {
        Optional<Start> start = Stream.of(Start.values())
                .filter(point -> point.isTaped()
                        && point.words().equals(text.group(3).strip().toLowerCase(Locale.ROOT)))
                .findFirst();
        if (start.isEmpty()) {
            return refused(
                            words,
                            path,
                            "'" + Words.shortened(text.group(3), 60) + "' is nothing to measure a place from"
                                    + Words.suggestion(text.group(3), taped()),
                            "one of " + String.join(", ", taped()) + ", such as 120 mm behind the rear axle")
                    .get("x");
        }
        try {
            Figure off = QuantityText.parse(text.group(1), Dimension.LENGTH);
            if (off.value() < 0) {
                throw new QuantityText.Unreadable("'" + Words.shortened(text.group(1), 60) + "' is negative");
            }
            boolean guessed = Mark.read(words.text()).mark().isGuess();
            Figure known = guessed ? GuessSpread.of(off, Dimension.LENGTH, true) : off;
            Figure from = landmarks.point(start.get(), "");
            Figure x = text.group(2).equals("behind") ? from.plus(known) : from.minus(known);
            boolean sure = !guessed && from.guess().isEmpty();
            return written(
                    sure ? "" : "about ",
                    off.hasTolerance() || x.tolerance() > 0 || !x.known() ? x : Figure.of(x.value()),
                    words);
        } catch (QuantityText.Unreadable e) {
            return refused(words, path, e.getMessage(), "at: 120 mm behind the rear axle")
                    .get("x");
        }
    }

    private static List<String> taped() {
        return Stream.of(Start.values())
                .filter(Start::isTaped)
                .map(Start::words)
                .toList();
    }

    /** A coordinate as a sheet would write it; where it is not known, what is missing to work it out. */
    private static Node written(String mark, Figure metres, Node.Scalar words) {
        return metres.known()
                ? new Node.Scalar(
                        words.place(),
                        mark
                                + QuantityText.shown(metres.value(), "mm")
                                + (metres.hasTolerance() ? " +/- " + QuantityText.shown(metres.tolerance(), "mm") : ""),
                        false)
                : new Node.Blank(
                        words.place(),
                        false,
                        metres.missing().stream()
                                .map(lacking -> new Node.Needed(lacking.path(), lacking.meaning(), lacking.find()))
                                .toList());
    }

    private Map<String, Node> refused(Node.Scalar words, NodePath path, String problem, String mend) {
        faults.add(new Fault(words.place(), path.toString(), problem, mend));
        return Map.of("x", new Node.Blank(words.place(), true));
    }

    private Optional<UsualPlace> known(Node.Scalar words) {
        return book.usualPlaces()
                .known(Mark.read(words.text()).text())
                .map(book.usualPlaces().places()::get);
    }

    /** What holds in the sheet's region on its day. */
    private Optional<UsualPlace.Value> inForce(UsualPlace place) {
        String region = tree.get("region") instanceof Node.Scalar scalar ? scalar.text() : "";
        String day = tree.get("as-of") instanceof Node.Scalar scalar ? scalar.text() : "";
        try {
            return place.inForce(book.lineageWritten(region), LocalDate.parse(day));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private Cab cab(Landmarks landmarks) {
        if (places.isEmpty()) {
            book.usualPlaces().places().forEach((words, place) -> inForce(place)
                    .ifPresent(value -> places.put(words, value)));
            usedPlaces.addAll(used(tree, book));
        }
        Map<String, UsualPlace.Value> used = new LinkedHashMap<>(places);
        used.keySet().retainAll(usedPlaces);
        return Cab.of(landmarks, used, places);
    }

    /** Of a row that the vehicle does not have, the row ahead of it. */
    private UsualPlace.Value row(UsualPlace place, UsualPlace.Value value, Landmarks landmarks) {
        return Cab.isOneRow(landmarks) ? ahead(place).flatMap(this::inForce).orElse(value) : value;
    }

    /** The row ahead of a row of seats. */
    private Optional<UsualPlace> ahead(UsualPlace place) {
        Map<String, UsualPlace> all = book.usualPlaces().places();
        return all.values().stream()
                .filter(first -> inForce(first)
                        .flatMap(UsualPlace.Value::nextRow)
                        .filter(next -> place.equals(all.get(next.place())))
                        .isPresent())
                .findFirst();
    }

    /** Whether the sheet seats somebody in a row that the vehicle does not have, whatever of it is taken and aboard. */
    private boolean seatsNobody(UsualPlace place, NodePath path, Landmarks landmarks) {
        return path.steps().get(0).toString().equals("occupants")
                && landmarks.seatsAtMost().isAtMost(Figure.of(2, 0))
                && ahead(place).isPresent();
    }

    private Landmarks landmarks(boolean asItStands) {
        if (asItStands) {
            standing = standing == null ? Landmarks.standing(tree) : standing;
            return standing;
        }
        planned = planned == null ? Landmarks.planned(tree) : planned;
        return planned;
    }
}
