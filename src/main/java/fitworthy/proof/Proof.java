package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.engine.FolderReview;
import fitworthy.engine.RuleEngine;
import fitworthy.proof.Cases.Case;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import java.util.function.Predicate;

/**
 * Whether a book that can be used also does what its cases say, and what its maintainer should look at.
 *
 * @param book the book
 * @param trials the cases, run
 * @param faults cases that fail, rules that no case holds in place and comparisons that none turns; with any of them the book must not go out
 * @param reminders what does no harm yet: values past their review date
 */
public record Proof(Book book, List<CaseResult> trials, List<Fault> faults, List<Fault> reminders) {

    /**
     * Proves a whole book.
     *
     * @param folder its folder
     * @param day the day on which review dates are looked at
     * @param progress told how many cases have been run
     * @throws FaultsException where a file of cases cannot be read
     */
    public static Proof of(Path folder, RuleEngine engine, LocalDate day, IntConsumer progress) throws FaultsException {
        Book book = engine.book();
        Proof proof = run(folder, engine, every -> true, progress);
        proof.oneSided(every -> true, proof.faults);
        book.rules().forEach((id, rule) -> proof.coverage(id)
                .gap()
                .ifPresent(gap -> proof.faults.add(new Fault(
                        place(book, id),
                        id,
                        gap,
                        "a case in cases.yaml next to its limit, with it under "
                                + (gap.equals(Coverage.NOT_MET)
                                        ? "'met'"
                                        : gap.equals(Coverage.NOT_FIRED) ? "'expect'" : "'expect' or 'met'")))));
        Due due = Due.of(book, day, 0);
        due.items(Due.When.OVERDUE).forEach(item -> proof.reminders.add(due(item)));
        due.idle()
                .forEach(item -> proof.reminders.add(new Fault(
                        item.place(),
                        item.id(),
                        "its 'review: " + item.stated() + "' reminds of nothing, since it was looked at on "
                                + item.checked(),
                        "a later day, such as review: " + item.checked().plusYears(1)
                                + "; or no 'review', for the usual time after it was checked")));
        new DaysToCome(book, day, proof.reminders).look();
        new ValueReview(proof.trials, proof.faults, proof.reminders).look(book);
        EvidenceReview.look(book, proof.faults, proof.reminders);
        new DayReview(proof.trials, proof.faults).look(book);
        new EndReview(proof.trials, proof.faults).look(book);
        book.rules().values().stream()
                .filter(rule -> rule.earlier().contains(rule.id()))
                .forEach(rule -> proof.faults.add(new Fault(
                        rule.place(), rule.id(), "builds on its own advice", "the id of another rule, or none")));
        new CardReview(book, proof.faults, proof.reminders).look();
        FolderReview.look(folder, proof.faults);
        SeverityReview.look(book, proof.trials, proof.faults);
        UsualReview.look(book, proof.trials, proof.faults, proof.reminders);
        SourceReview.look(book, proof.reminders);
        new PlaceReview(proof.trials, proof.faults).look(book);
        new Direction(book, proof.trials).look(proof.faults);
        proof.faults.sort(Fault.IN_READING_ORDER);
        proof.reminders.sort(Fault.IN_READING_ORDER);
        return proof;
    }

    /**
     * Runs some cases, and looks only at rules of their topics.
     *
     * @param chosen which cases to run
     * @param rules at which rules of those topics to look
     */
    public static Proof of(
            Path folder, RuleEngine engine, Predicate<Case> chosen, Predicate<String> rules, IntConsumer progress)
            throws FaultsException {
        Proof proof = run(folder, engine, chosen, progress);
        proof.oneSided(rules, proof.reminders);
        return proof;
    }

    private static Proof run(Path folder, RuleEngine engine, Predicate<Case> chosen, IntConsumer progress)
            throws FaultsException {
        Book book = engine.book();
        Proof proof = new Proof(book, new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        for (Case each : Cases.read(folder, book)) {
            if (chosen.test(each)) {
                CaseResult trial = CaseResult.of(engine, each);
                proof.trials.add(trial);
                trial.problems()
                        .forEach(problem -> proof.faults.add(new Fault(
                                each.place(),
                                each.text().name(),
                                problem,
                                "change the rule, or the case where the new outcome is right")));
                progress.accept(proof.trials.size());
            }
        }
        return proof;
    }

    /** Tells the comparisons that come out the same in all cases; of some of the cases that need not mean anything. */
    private void oneSided(Predicate<String> rules, List<Fault> told) {
        Set<String> topics = new TreeSet<>();
        trials.forEach(trial -> topics.add(trial.text().topic()));
        book.rules().keySet().stream()
                .filter(id -> topics.contains(Book.topic(id)) && rules.test(id))
                .forEach(id -> coverage(id)
                        .oneSided()
                        .ifPresent(text -> told.add(new Fault(
                                place(book, id),
                                id,
                                text,
                                "cases that turn it the other way, or a condition without it"))));
    }

    private Coverage coverage(String id) {
        return new Coverage(
                book,
                id,
                trials.stream()
                        .filter(trial -> trial.text().topic().equals(Book.topic(id)))
                        .toList());
    }

    private static Place place(Book book, String id) {
        return book.rules().get(id).place();
    }

    private static Fault due(Due.Item due) {
        String by = " was to be looked at again by " + due.review();
        if (due.isSource()) {
            return new Fault(
                    due.place(),
                    due.id(),
                    "the source" + by,
                    "the day of the look under 'checked', and what it says now in the values that cite it");
        }
        return new Fault(
                due.place(),
                due.id(),
                "the value " + due.value().value() + " of " + due.value().region() + " from "
                        + due.value().from() + by,
                "the day of the look under 'checked', or a new value with the day it begins");
    }

    /** How many of the cases came out other than they say. */
    public long failed() {
        return trials.stream().filter(trial -> !trial.problems().isEmpty()).count();
    }
}
