package fitworthy;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.search.Change;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.Place;
import fitworthy.source.Trees;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/**
 * A sheet that nobody wrote: a shipped one, or one of a case of the book, after some changes. A change that makes it
 * unusable is left out, so that what is left is a sheet that advice is given on.
 *
 * @param from the sheet that was changed
 * @param changes what was changed
 * @param tree what it was read from
 */
public record MadeSheet(String from, List<String> changes, Node.Mapping tree, Sheet sheet) {

    public static final Pattern QUANTITY = Pattern.compile("(-?[0-9]+(?:\\.[0-9]+)?)( .*)");
    private static final Place NOWHERE = Place.of("made");

    private record Base(String name, Node.Mapping tree) {}

    private enum How {
        SCALE,
        SHIFT,
        TAKE_OUT,
        TURN,
        ADD_PART,
        CHANGE_TRAILER,
        MOVE_REGION
    }

    /** @param pick which of all that could be changed @param by how much, in thousandths or in millimetres */
    private record Change(How how, int pick, int by) {}

    /** Loaded once, since every property makes its sheets of the same ones. */
    private static final class Made {
        static final List<Base> SHIPPED = new ArrayList<>();
        static final List<Base> CASES = new ArrayList<>();
        static final List<Node.Mapping> PARTS = new ArrayList<>();
        static final List<Node> TRAILERS = new ArrayList<>();
        static final List<String> REGIONS;

        static {
            for (String each : List.of(
                    "rules/plain-sheet.yaml",
                    "scenarios/touring.yaml",
                    "scenarios/weekender.yaml",
                    "scenarios/overloaded.yaml")) {
                SHIPPED.add(new Base(each, Sheets.file(each)));
            }
            try {
                REGIONS = List.copyOf(Books.shipped().regions().keySet());
                Books.cases().forEach(each -> CASES.add(new Base(each.toString(), each.tree())));
            } catch (FaultsException e) {
                throw new IllegalStateException(e);
            }
            for (Base each : SHIPPED) {
                parts(each.tree).forEach(part -> PARTS.add((Node.Mapping) part));
                Optional.ofNullable(each.tree.get("trailer")).ifPresent(TRAILERS::add);
            }
            for (Base each : CASES) {
                Optional.ofNullable(each.tree.get("trailer"))
                        .filter(trailer -> !TRAILERS.contains(trailer))
                        .ifPresent(TRAILERS::add);
            }
        }
    }

    /** Any such sheet. */
    public static Arbitrary<MadeSheet> any() {
        Arbitrary<Base> bases = Arbitraries.oneOf(Arbitraries.of(Made.SHIPPED), Arbitraries.of(Made.CASES));
        Arbitrary<Change> changes = Combinators.combine(
                        Arbitraries.of(How.class),
                        Arbitraries.integers().between(0, 9999),
                        Arbitraries.integers().between(100, 3000))
                .as(Change::new);
        return Combinators.combine(bases, changes.list().ofMaxSize(8)).as(MadeSheet::of);
    }

    private static MadeSheet of(Base base, List<Change> changes) {
        MadeSheet made =
                new MadeSheet(base.name, List.of(), base.tree, read(base.tree).orElseThrow());
        for (Change each : changes) {
            made = made.changed(each);
        }
        return made;
    }

    private MadeSheet changed(Change change) {
        List<String> more = new ArrayList<>(changes);
        Node.Mapping other =
                switch (change.how) {
                    case SCALE ->
                        twig(change, more, quantity -> true, number -> number.multiply(BigDecimal.valueOf(change.by, 3))
                                .setScale(3, RoundingMode.HALF_UP));
                    case SHIFT ->
                        twig(
                                change,
                                more,
                                twig -> twig.field().matches("[xyz]")
                                        && twig.value().text().endsWith(" mm"),
                                number -> number.add(BigDecimal.valueOf(change.by - 1500L)));
                    case TAKE_OUT -> {
                        Twigs.Twig taken = pick(change, Twigs.of(tree));
                        more.add("without " + taken.path());
                        yield Trees.without(tree, taken.path());
                    }
                    case TURN -> {
                        List<Twigs.Twig> answers = Twigs.of(tree).stream()
                                .filter(each -> each.value().text().matches("yes|no|true|false"))
                                .toList();
                        Twigs.Twig turned = pick(change, answers);
                        String word = turned.value().text().matches("yes|true") ? "no" : "yes";
                        more.add(turned.path() + ": " + word);
                        yield Trees.with(tree, turned.path(), new Node.Scalar(NOWHERE, word, false));
                    }
                    case ADD_PART -> {
                        Node.Mapping part = pick(change, Made.PARTS);
                        more.add("with " + part.name());
                        List<Node> parts = new ArrayList<>(parts(tree));
                        parts.add(part.with("name", new Node.Scalar(NOWHERE, part.name() + " " + parts.size(), false)));
                        yield tree.with("fitments", new Node.Listing(NOWHERE, parts));
                    }
                    case CHANGE_TRAILER -> {
                        Node trailer = pick(change, Made.TRAILERS);
                        more.add("trailer " + trailer.name());
                        yield tree.with("trailer", trailer);
                    }
                    case MOVE_REGION -> {
                        String region = pick(change, Made.REGIONS);
                        more.add("region " + region);
                        yield tree.with("region", new Node.Scalar(NOWHERE, region, false));
                    }
                };
        return read(other).map(read -> new MadeSheet(from, more, other, read)).orElse(this);
    }

    private Node.Mapping twig(
            Change change,
            List<String> told,
            java.util.function.Predicate<Twigs.Twig> which,
            java.util.function.UnaryOperator<BigDecimal> number) {
        List<Twigs.Twig> all = Twigs.of(tree).stream()
                .filter(each -> QUANTITY.matcher(each.value().text()).matches())
                .filter(which)
                .toList();
        if (all.isEmpty()) {
            return tree;
        }
        Twigs.Twig twig = pick(change, all);
        Matcher quantity = QUANTITY.matcher(twig.value().text());
        quantity.matches();
        String text = number.apply(new BigDecimal(quantity.group(1)))
                        .stripTrailingZeros()
                        .toPlainString()
                + quantity.group(2);
        told.add(twig.path() + ": " + text);
        return Trees.with(tree, twig.path(), new Node.Scalar(NOWHERE, text, false));
    }

    private static <T> T pick(Change change, List<T> all) {
        return all.get(change.pick % all.size());
    }

    static List<Node> parts(Node.Mapping tree) {
        return tree.get("fitments") instanceof Node.Listing listing ? listing.items() : List.of();
    }

    /** The same sheet after a change that must leave it usable. */
    public MadeSheet with(Node.Mapping other) {
        try {
            return new MadeSheet(from, changes, other, Sheets.read(other));
        } catch (FaultsException e) {
            throw new AssertionError("a change made it unusable: " + e.getMessage(), e);
        }
    }

    private static Optional<Sheet> read(Node.Mapping tree) {
        try {
            return Optional.of(Sheets.read(tree));
        } catch (FaultsException e) {
            return Optional.empty();
        }
    }

    public Advice advice() throws FaultsException {
        return Adviser.advise(Books.engine(), sheet);
    }

    @Override
    public String toString() {
        return from + (changes.isEmpty() ? "" : ", " + String.join(", ", changes));
    }
}
