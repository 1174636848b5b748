package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.book.DatedLimit;
import fitworthy.book.Practice.Lookup;
import fitworthy.proof.Cases.Case;
import fitworthy.source.FaultsException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What in a rule book refers to what. */
public final class References {

    /** By then everything that is recorded has begun. */
    private static final LocalDate LAST = LocalDate.MAX;

    private final Book book;
    private final List<Case> cases;

    private References(Book book, List<Case> cases) {
        this.book = book;
        this.cases = cases;
    }

    /** @throws FaultsException where a file of cases cannot be read */
    public static References of(Path folder, Book book) throws FaultsException {
        return new References(book, Cases.read(folder, book));
    }

    public Book book() {
        return book;
    }

    public List<Case> cases() {
        return cases;
    }

    /** The rules of a topic. */
    public List<String> rules(String topic) {
        return book.cards().keySet().stream()
                .filter(id -> Book.topic(id).equals(topic))
                .toList();
    }

    /** The practice values that rules compare with. */
    public Set<String> values(Collection<String> rules) {
        return rules.stream()
                .flatMap(id -> book.rules().get(id).practice().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The texts that rules and their practice values rest on. */
    public Set<String> sources(Collection<String> rules) {
        Set<String> sources = new TreeSet<>();
        rules.forEach(id -> sources.addAll(book.cards().get(id).sources()));
        values(rules).forEach(id -> book.practice().get(id).values().forEach(value -> sources.addAll(value.sources())));
        return sources;
    }

    /** File and line of a card or a practice value. */
    public String place(String id) {
        return book.place(id).inBook();
    }

    /** File and line of one value of a practice value. */
    public String place(String id, DatedLimit.Value value) {
        int index = book.practice().get(id).values().indexOf(value);
        return book.places().get(id).place(DatedLimit.path(index)).inBook();
    }

    /** The cases in which a rule has to come up. */
    public List<Case> firing(String rule) {
        return naming(
                text -> text.expect().stream().anyMatch(finding -> finding.id().equals(rule)));
    }

    /** The cases in which a rule has to be met. */
    public List<Case> met(String rule) {
        return naming(text -> text.met().contains(rule));
    }

    /** The cases in which a rule must not be assessed. */
    public List<Case> notAssessed(String rule) {
        return naming(
                text -> text.notAssessed().stream().anyMatch(check -> check.id().equals(rule)));
    }

    private List<Case> naming(Predicate<Cases.Text> wanted) {
        return cases.stream().filter(trial -> wanted.test(trial.text())).toList();
    }

    /** What holds in a region of a practice value once all that is recorded has begun. */
    public Lookup last(String region, String value) {
        return book.lookup(value, region, LAST);
    }

    /** The practice values that a region has from another, its parent or that one's. */
    public List<String> inherited(String region, String from) {
        return values(id -> last(region, id) instanceof Lookup.Found found
                && found.practice().entry().region().equals(from));
    }

    /** The practice values that do not apply in a region. */
    public List<String> none(String region) {
        return values(id -> last(region, id) instanceof Lookup.NoneApplies);
    }

    /**
     * The practice values that neither a region nor its parents have, so that checks with them are not assessed there.
     */
    public List<String> notRecorded(String region) {
        return values(id -> last(region, id) instanceof Lookup.NotRecorded);
    }

    /** The practice values that are asked for no more by then. */
    public List<String> ended() {
        return values(id -> book.practice().get(id).ends() != null);
    }

    private List<String> values(Predicate<String> wanted) {
        return book.practice().keySet().stream().filter(wanted).toList();
    }
}
