package fitworthy.sheet;

import fitworthy.schema.ChoiceWords;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What shops and customers call the kinds of part, and what else of a sheet a word of theirs stands for.
 *
 * @param meanings what each word means, by the word as {@link #plain} has it
 */
public record ShopWords(Map<String, Meaning> meanings) {

    private static final List<String> KINDS = ChoiceWords.of(Kind.class);
    private static final List<String> THINGS = ChoiceWords.of(Thing.class);
    private static final Pattern PLAIN = Pattern.compile("[a-z][a-z0-9]*([ -][a-z0-9]+)*");
    private static final Pattern BETWEEN = Pattern.compile("[\\s_-]+");
    /** What stands between the names of two parts, or of a part and what it is for; a slide-on is one thing. */
    private static final Pattern JOINED =
            Pattern.compile(".*([,;&+/]| (and|with|plus|for|under|behind|without|no) |(?<!\\bslide) (in|on) ).*");

    /** What else of a sheet a word may stand for. */
    public enum Thing {
        CIRCUIT("a circuit, listed under circuits"),
        MAIN_TANK("the vehicle's own tank, listed under tanks with stock: yes"),
        FUEL_TANK("a tank, listed under tanks"),
        WATER_TANK("a tank, listed under tanks with liquid: water"),
        FUEL_CAN("a can, listed under tanks with portable: yes"),
        WATER_CAN("a can, listed under tanks with liquid: water and portable: yes"),
        CARGO("a load, listed under cargo"),
        TUB_OFF("what comes off for the tray or canopy, under its removes"),
        TUB_STAYS("the tub stays on under the canopy, its tub-stays: yes");

        private static final Set<Thing> TANKS = EnumSet.of(MAIN_TANK, FUEL_TANK, WATER_TANK, FUEL_CAN, WATER_CAN);

        private final String words;

        Thing(String words) {
            this.words = words;
        }
    }

    /** The parts that a word stands for, and what else. */
    public record Meaning(List<Kind> kinds, List<Thing> things) {

        /** @param terms some of {@link #terms()} */
        public static Meaning of(List<String> terms) {
            return new Meaning(
                    terms.stream()
                            .filter(KINDS::contains)
                            .map(term -> Kind.values()[KINDS.indexOf(term)])
                            .toList(),
                    terms.stream()
                            .filter(THINGS::contains)
                            .map(term -> Thing.values()[THINGS.indexOf(term)])
                            .toList());
        }

        /** The terms that it was made of. */
        public List<String> terms() {
            List<String> terms = new ArrayList<>();
            kinds.forEach(kind -> terms.add(KINDS.get(kind.ordinal())));
            things.forEach(thing -> terms.add(THINGS.get(thing.ordinal())));
            return terms;
        }

        /** Whether it is a tank and no part. */
        public boolean isTank() {
            return kinds.isEmpty() && Thing.TANKS.containsAll(things);
        }

        /** Whether it says of the vehicle's own tub whether that comes off or stays, and is nothing that is fitted. */
        public boolean isOfTub() {
            return things.contains(Thing.TUB_OFF) || things.contains(Thing.TUB_STAYS);
        }

        /** How it is written on a sheet. */
        public String onSheet() {
            List<String> entries = new ArrayList<>();
            kinds.forEach(kind -> entries.add("kind: " + KINDS.get(kind.ordinal())));
            things.forEach(thing -> entries.add(thing.words));
            return String.join(", and ", entries);
        }
    }

    /** What a word may be said to be. */
    public static Set<String> terms() {
        Set<String> terms = new LinkedHashSet<>(KINDS);
        terms.addAll(THINGS);
        return terms;
    }

    /** Whether it is made of small letters and numerals, with a space or hyphen between two words. */
    public static boolean isPlain(String word) {
        return PLAIN.matcher(word).matches();
    }

    /** Whether the word is a kind's own, a space where the kind has a hyphen. */
    public static boolean isKind(String word) {
        return term(word).filter(KINDS::contains).isPresent();
    }

    /** That of {@link #terms()} which the word is by itself, a space where that has a hyphen. */
    public static Optional<String> term(String word) {
        return terms().stream().filter(term -> plain(term).equals(plain(word))).findFirst();
    }

    /** The same word however it is written: in small letters, with a space where it had a hyphen. */
    public static String plain(String word) {
        return BETWEEN.matcher(word.strip()).replaceAll(" ").toLowerCase(Locale.ROOT);
    }

    /**
     * What is meant: the word itself, one of it where there are several, or what its last words say ("steel bull bar").
     * Nothing where more than one thing is named.
     */
    public Optional<Meaning> of(String said) {
        String words = plain(said);
        Optional<Meaning> whole = word(words);
        if (whole.isPresent() || JOINED.matcher(words).matches()) {
            return whole;
        }
        int space = words.indexOf(' ');
        return space < 0 ? Optional.empty() : of(words.substring(space + 1));
    }

    private Optional<Meaning> word(String plain) {
        return exact(plain)
                .or(() -> plain.endsWith("s") ? exact(plain.substring(0, plain.length() - 1)) : exact(plain + "s"));
    }

    private Optional<Meaning> exact(String plain) {
        return Optional.ofNullable(meanings.get(plain)).or(() -> term(plain).map(term -> Meaning.of(List.of(term))));
    }

    /** Every word that means something. */
    public Set<String> all() {
        Set<String> all = KINDS.stream().map(ShopWords::plain).collect(Collectors.toCollection(LinkedHashSet::new));
        all.addAll(meanings.keySet());
        return all;
    }

    /**
     * Tells of each part whose kind is written in a word of the shop's which kind that is.
     *
     * @param sheet the tree of a sheet
     * @param faults gets a fault for each such word
     * @return the tree in which nothing more is to be said of them
     */
    public Node.Mapping told(Node.Mapping sheet, List<Fault> faults) {
        if (!(sheet.get("fitments") instanceof Node.Listing parts)) {
            return sheet;
        }
        List<Node> items = new ArrayList<>();
        boolean same = true;
        for (Node part : parts.items()) {
            Node told = told(part, NodePath.of("fitments").to(items.size() + 1), faults);
            same &= told == part;
            items.add(told);
        }
        return same ? sheet : sheet.with("fitments", new Node.Listing(parts.place(), items));
    }

    private Node told(Node part, NodePath path, List<Fault> faults) {
        if (!(part instanceof Node.Mapping fields)
                || !(fields.get("kind") instanceof Node.Scalar kind)
                || KINDS.contains(kind.text())) {
            return part;
        }
        Optional<Meaning> meaning = of(kind.text());
        if (meaning.isEmpty()) {
            return part;
        }
        faults.add(new Fault(
                kind.place(),
                path.to("kind").toString(),
                "is " + kind.described() + ", which is not one of the answers; the trade's word for "
                        + String.join(" and ", meaning.get().terms()),
                meaning.get().onSheet()));
        return fields.with("kind", new Node.Blank(kind.place(), true));
    }
}
