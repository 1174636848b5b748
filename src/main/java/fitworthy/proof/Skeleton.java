package fitworthy.proof;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.book.Book;
import fitworthy.engine.RuleEngine;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.printout.words.Wording;
import fitworthy.proof.Cases.Case;
import fitworthy.quantity.Dimension;
import fitworthy.sheet.SheetReader;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * The beginnings of a new rule or region: what to add at the end of which files, so that the book still proves. A new
 * rule holds from a day after every case of its topic, so that it changes nobody's advice before its words have been
 * written, and its limit stands between two cases that the topic has.
 */
public final class Skeleton {

    /** How near to the limit the two cases have to come, as a share of it. */
    private static final double NEAR = 0.05;

    private final RuleEngine engine;
    private final Book book;
    private final Path folder;
    private final String region;
    private final LocalDate from;
    private final SkeletonText text;

    private Skeleton(Path folder, RuleEngine engine, String region, LocalDate from) {
        this.folder = folder;
        this.engine = engine;
        this.book = engine.book();
        this.region = region;
        this.from = from;
        this.text = new SkeletonText(folder, region, from);
    }

    /** A case of the topic as it comes out on the day. @param highest the largest number among {@code measures} */
    private record Seen(Case original, Advice advice, List<Measure> measures, double highest) {}

    /**
     * A rule with its card, practice value and two cases.
     *
     * @param id {@code topic.what}; the topic has to be there
     * @param about the measure it judges
     * @param region the region it begins in
     * @param from the day from which it holds, after the day of every case of the topic
     * @return what to add, by file
     * @throws FaultsException where the names do not fit the book, or no two cases are near enough to put a limit
     *     between
     */
    public static Map<Path, String> rule(
            Path folder, RuleEngine engine, String id, String about, String region, LocalDate from)
            throws FaultsException {
        Book book = engine.book();
        MeasureKind kind = Measures.kinds().get(about);
        String topic = id.contains(".") ? id.substring(0, id.indexOf('.')) : id;
        if (!book.topics().contains(topic) || !id.matches("[a-z]+\\.[a-z][a-z0-9-]*")) {
            throw refused(
                    "ID", "'" + id + "' does not begin with a topic of the book", String.join(", ", book.topics()));
        }
        if (book.cards().containsKey(id)) {
            throw refused("ID", "the book has a rule '" + id + "' already, at " + book.place(id), "a new name");
        }
        if (book.formerIds().all().containsKey(id)) {
            throw refused(
                    "ID",
                    "a rule was called '" + id + "' before: " + book.formerIds().said(id),
                    "a new name");
        }
        if (kind == null) {
            throw refused(
                    "--about",
                    "there is no measure '" + about + "'"
                            + Words.suggestion(about, Measures.kinds().keySet()),
                    "a name listed in docs/measures.md");
        }
        if (kind.answer() instanceof MeasureKind.Answer.LookedUp) {
            throw refused(
                    "--about",
                    about + " is a word out of a table, which no rule can name",
                    "a measure that is a number or one of the words listed in docs/measures.md");
        }
        if (!book.regions().containsKey(region)) {
            throw refused(
                    "--region",
                    "the book has no region '" + region + "'"
                            + Words.suggestion(region, book.regions().keySet()),
                    String.join(", ", book.regions().keySet()));
        }
        return new Skeleton(folder, engine, region, from).rule(topic, id, kind);
    }

    /**
     * A region that goes by its parent's values until it has its own.
     *
     * @return what to add to the book's cover
     * @throws FaultsException where it is there already or its parent is not
     */
    public static Map<Path, String> region(Path folder, Book book, String id, String name, String parent)
            throws FaultsException {
        if (book.regions().containsKey(id)) {
            throw refused(
                    "ID", "the book has a region '" + id + "' already", "a new id, or its values in practice.yaml");
        }
        if (!id.matches("[a-z]+(-[a-z]+)*")) {
            throw refused(
                    "ID", "'" + id + "' is not written as regions are", "small letters and hyphens, such as au-tas");
        }
        if (!book.regions().containsKey(parent)) {
            throw refused(
                    "--parent",
                    "the book has no region '" + parent + "'"
                            + Words.suggestion(parent, book.regions().keySet()),
                    String.join(", ", book.regions().keySet()));
        }
        return Map.of(
                folder.resolve("book.yaml"),
                "  " + id + ": {name: " + SkeletonText.quoted(name) + ", parent: " + parent + "}\n");
    }

    private static FaultsException refused(String where, String problem, String right) {
        return new FaultsException(List.of(new Fault(Place.of(where), "", problem, right)));
    }

    private Map<Path, String> rule(String topic, String id, MeasureKind kind) throws FaultsException {
        List<Seen> seen = seen(topic, kind);
        Path own = folder.resolve(topic);
        return kind.words().isEmpty() ? numbers(own, id, kind, seen) : words(own, id, kind, seen);
    }

    /** Every case of the topic in which the measure is known, in the region and on the day. */
    private List<Seen> seen(String topic, MeasureKind kind) throws FaultsException {
        List<Seen> seen = new ArrayList<>();
        for (Case each : Cases.read(folder, book)) {
            if (!each.topic().equals(topic)) {
                continue;
            }
            if (!each.sheet().asOf().isBefore(from)) {
                throw refused(
                        "--from",
                        "the case at " + each.place() + " is about "
                                + each.sheet().asOf() + ", so a rule from " + from + " on would change it",
                        "--from " + each.sheet().asOf().plusYears(1).withDayOfYear(1));
            }
            Advice advice = advice(text, each);
            List<Measure> known = advice.facts().values().stream()
                    .flatMap(List::stream)
                    .filter(Measure.class::isInstance)
                    .map(Measure.class::cast)
                    .filter(fact -> fact.getName().equals(kind.name()) && fact.isKnown())
                    .distinct()
                    .toList();
            if (!known.isEmpty()) {
                seen.add(new Seen(
                        each,
                        advice,
                        known,
                        known.stream().mapToDouble(Measure::getValue).max().orElseThrow()));
            }
        }
        if (seen.isEmpty()) {
            throw refused(
                    "--about",
                    "no case of " + topic + " has the measure " + kind.name(),
                    "write a case in which it is known first");
        }
        return seen;
    }

    private Map<Path, String> numbers(Path own, String id, MeasureKind kind, List<Seen> seen) throws FaultsException {
        List<Seen> rising =
                seen.stream().sorted(Comparator.comparingDouble(Seen::highest)).toList();
        double unit = Dimension.size(kind.unit());
        for (int i = 1; i < rising.size(); i++) {
            BigDecimal limit =
                    new BigDecimal(rising.get(i - 1).highest() / unit).setScale(kind.decimals(), RoundingMode.CEILING);
            double most = limit.doubleValue() * unit;
            double over = rising.get(i).highest();
            if (most > 0
                    && over > most
                    && over - most <= NEAR * most
                    && most - rising.get(i - 1).highest() <= NEAR * most) {
                String practice = id + "-most";
                Map<Path, String> added = text.rule(
                        own,
                        id,
                        kind,
                        practice,
                        limit.toPlainString() + " " + kind.unit(),
                        ", known, value > $own.value");
                added.put(
                        own.resolve("cases.yaml"),
                        aCase(rising.get(i), "Beyond the limit of " + id, id, over(rising.get(i), most))
                                + aCase(rising.get(i - 1), "Within the limit of " + id, id, List.of())
                                + theDayBefore(rising.get(i), id));
                return added;
            }
        }
        throw refused(
                "--about",
                "no two cases of the topic come near enough to each other in " + kind.name()
                        + " to put a limit between them",
                "write two cases in which it differs by less than 5 % first");
    }

    private Map<Path, String> words(Path own, String id, MeasureKind kind, List<Seen> seen) throws FaultsException {
        Seen first = seen.stream()
                .filter(shown -> shown.measures().stream()
                        .anyMatch(fact -> fact.getWord().equals("no")))
                .findFirst()
                .orElse(seen.get(0));
        String word = first.measures().stream()
                .map(Measure::getWord)
                .filter("no"::equals)
                .findFirst()
                .orElse(first.measures().get(0).getWord());
        Map<Path, String> added = text.rule(own, id, kind, id + "-asked", "1", ", word == \"" + word + "\"");
        List<String> expected = first.measures().stream()
                .filter(measure -> measure.getWord().equals(word))
                .map(SkeletonText::expected)
                .toList();
        added.put(
                own.resolve("cases.yaml"),
                aCase(first, "Answered '" + word + "' to " + kind.name(), id, expected) + theDayBefore(first, id));
        return added;
    }

    private String aCase(Seen seen, String name, String id, List<String> added) {
        return text.aCase(seen.original(), seen.advice(), name, id, added, "met");
    }

    /** The case in which the rule fires once more, on the day before, when it does not apply. */
    private String theDayBefore(Seen seen, String id) throws FaultsException {
        SkeletonText before = new SkeletonText(folder, region, from.minusDays(1));
        Advice advice = advice(before, seen.original());
        return before.aCase(
                seen.original(), advice, "The day before " + id + " begins", id, List.of(), "does-not-apply");
    }

    private Advice advice(SkeletonText on, Case each) throws FaultsException {
        Node.Mapping tree = on.onTheDay(each.tree(), each.place());
        return Adviser.advise(engine, SheetReader.sheet(tree, book.regions().keySet(), new ArrayList<>()));
    }

    private static List<String> over(Seen seen, double most) {
        return seen.measures().stream()
                .filter(measure -> measure.getValue() > most)
                .map(measure -> SkeletonText.expected(measure) + ", value: "
                        + Wording.quantity(measure.getValue(), measure.kind()))
                .toList();
    }
}
