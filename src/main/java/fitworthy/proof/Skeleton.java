package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.engine.RuleEngine;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.proof.Cases.Case;
import fitworthy.proof.SkeletonCases.Begun;
import fitworthy.proof.SkeletonText.Limit;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Words;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The beginnings of a new rule or region: what to add at the end of which files, so that the book still proves. A new
 * rule holds from a day after every case of its topic, so that it changes nobody's advice before its words have been
 * written, and its limit stands between two cases that the topic has.
 */
public final class Skeleton {

    private static final String NOT_READ = "the value, which was put between two cases, and where it is from";
    private static final String NAMED = "where the value is from";

    private final Path folder;
    private final RuleEngine engine;
    private final Book book;
    private final Wanted wanted;

    private Skeleton(Path folder, RuleEngine engine, Wanted wanted) {
        this.folder = folder;
        this.engine = engine;
        this.book = engine.book();
        this.wanted = wanted;
    }

    /**
     * A rule to begin.
     *
     * @param id {@code topic.what}; the topic has to be there
     * @param about the measure it judges
     * @param atLeast whether its figure has to be at least the value and not at most
     * @param values by region in which it begins, the value there; an empty one stands for one between two cases
     * @param from the day from which it holds, after the day of every case of the topic
     */
    public record Wanted(String id, String about, boolean atLeast, Map<String, String> values, LocalDate from) {}

    /**
     * A rule with its card, practice value and cases.
     *
     * @return what to add, by file
     * @throws FaultsException where the names do not fit the book, or no two cases are near enough to a limit
     */
    public static Map<Path, String> rule(Path folder, RuleEngine engine, Wanted wanted) throws FaultsException {
        Book book = engine.book();
        List<Fault> faults = new ArrayList<>();
        String id = wanted.id();
        String topic = Book.topic(id);
        if (!book.topics().contains(topic) || !id.matches("[a-z]+\\.[a-z][a-z0-9-]*")) {
            faults.add(Refusal.fault(
                    "ID", "'" + id + "' does not begin with a topic of the book", String.join(", ", book.topics())));
        } else if (book.cards().containsKey(id)) {
            faults.add(Refusal.fault(
                    "ID", "the book has a rule '" + id + "' already, at " + book.place(id), "a new name"));
        }
        if (book.formerIds().all().containsKey(id)) {
            faults.add(Refusal.fault(
                    "ID",
                    "a rule was called '" + id + "' before: " + book.formerIds().said(id),
                    "a new name"));
        }
        MeasureKind kind = Measures.kinds().get(wanted.about());
        if (kind == null) {
            faults.add(Refusal.fault(
                    "--about",
                    "there is no measure '" + wanted.about() + "'"
                            + Words.suggestion(wanted.about(), Measures.kinds().keySet()),
                    "a name listed in docs/measures.md"));
        }
        if (kind != null && kind.answer() instanceof MeasureKind.Answer.LookedUp) {
            faults.add(Refusal.fault(
                    "--about",
                    wanted.about() + " is a word out of a table, which no rule can name",
                    "a measure that is a number or one of the words listed in docs/measures.md"));
        }
        for (String region : wanted.values().keySet()) {
            known(book, "--region", region, faults);
        }
        refuse(faults);
        return new Skeleton(folder, engine, wanted).rule(topic);
    }

    /**
     * A region that goes by its parent's values until it has its own.
     *
     * @return what to add to the book's cover
     * @throws FaultsException where it is there already or its parent is not
     */
    public static Map<Path, String> region(Path folder, Book book, String id, String name, String parent)
            throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        if (book.regions().containsKey(id)) {
            faults.add(Refusal.fault(
                    "ID", "the book has a region '" + id + "' already", "a new id, or its values in practice.yaml"));
        } else if (!id.matches("[a-z]+(-[a-z]+)*")) {
            faults.add(Refusal.fault(
                    "ID", "'" + id + "' is not written as regions are", "small letters and hyphens, such as au-tas"));
        }
        known(book, "--parent", parent, faults);
        refuse(faults);
        return Map.of(
                folder.resolve("book.yaml"),
                "  " + id + ": {name: " + SkeletonText.quoted(name) + ", parent: " + parent + "}\n");
    }

    private static void known(Book book, String option, String region, List<Fault> faults) {
        if (!book.regions().containsKey(region)) {
            faults.add(Refusal.fault(
                    option,
                    "the book has no region '" + region + "'"
                            + Words.suggestion(region, book.regions().keySet()),
                    String.join(", ", book.regions().keySet())));
        }
    }

    private static void refuse(List<Fault> faults) throws FaultsException {
        if (!faults.isEmpty()) {
            throw new FaultsException(faults);
        }
    }

    private Map<Path, String> rule(String topic) throws FaultsException {
        MeasureKind kind = Measures.kinds().get(wanted.about());
        Limit side = wanted.atLeast() ? Limit.AT_LEAST : Limit.AT_MOST;
        List<Case> cases = cases(topic);
        List<SkeletonCases> regions = new ArrayList<>();
        for (String region : wanted.values().keySet()) {
            regions.add(new SkeletonCases(folder, engine, cases, region, wanted.from(), wanted.id(), kind, side));
        }
        if (regions.stream().noneMatch(SkeletonCases::known)) {
            throw Refusal.of(
                    "--about",
                    "no case of " + topic + " has the measure " + kind.name(),
                    "write a case in which it is known first");
        }
        Optional<String> word =
                regions.stream().flatMap(region -> region.word().stream()).findFirst();
        if (word.isPresent()) {
            onlyForNumbers(kind);
        }
        Map<String, String> values = new LinkedHashMap<>();
        StringBuilder written = new StringBuilder();
        for (SkeletonCases region : regions) {
            Begun begun = word.isPresent()
                    ? region.answer(word.get())
                    : region.number(wanted.values().get(region.id()));
            values.put(region.id(), begun.value());
            written.append(begun.cases());
        }
        Path own = folder.resolve(topic);
        boolean named = word.isPresent() || !wanted.values().containsValue("");
        Map<Path, String> added = new SkeletonText(
                        wanted.id(), kind, word.isPresent() ? Limit.ANSWER : side, wanted.from())
                .rule(own, values, named ? NAMED : NOT_READ, word.orElse(""));
        added.put(own.resolve("cases.yaml"), written.toString());
        return added;
    }

    private void onlyForNumbers(MeasureKind kind) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        if (wanted.atLeast()) {
            faults.add(Refusal.fault("--at-least", kind.name() + " is an answer in a word", "leave it out"));
        }
        wanted.values().forEach((region, value) -> {
            if (!value.isEmpty()) {
                faults.add(Refusal.fault(
                        "--region", kind.name() + " is an answer in a word and has no value", "--region " + region));
            }
        });
        refuse(faults);
    }

    /** Those of the topic, none of which may be about a day on which the rule holds. */
    private List<Case> cases(String topic) throws FaultsException {
        List<Case> cases = Cases.read(folder, book).stream()
                .filter(each -> each.topic().equals(topic))
                .toList();
        Optional<Case> last = cases.stream()
                .filter(each -> !each.sheet().asOf().isBefore(wanted.from()))
                .max(Comparator.comparing(each -> each.sheet().asOf()));
        if (last.isPresent()) {
            LocalDate day = last.get().sheet().asOf();
            throw Refusal.of(
                    "--from",
                    "the case at " + last.get().place() + " is about " + day + ", so a rule from " + wanted.from()
                            + " on would change it",
                    "--from " + day.plusDays(1));
        }
        return cases;
    }
}
