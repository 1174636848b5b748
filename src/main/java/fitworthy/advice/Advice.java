package fitworthy.advice;

import fitworthy.book.Book;
import fitworthy.book.Severity;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Sheet;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Everything the book has to say of a sheet.
 *
 * @param sheet the sheet
 * @param book the book
 * @param loadings the load cases, in the sheet's order
 * @param findings what was found, worst first
 * @param met what was assessed and is in order
 * @param held what is in order if guesses of the sheet hold
 * @param notAssessed what lacks a figure
 * @param doesNotApply whose question does not arise
 * @param waivers what became of each waiver of the sheet
 * @param facts by load case, what the rules saw: practice values, measures, and advice that others built on
 * @param guesses on which guesses of the sheet findings rest; none for those that rest on what is stated
 * @param runs what it was made of
 * @param sureRuns what it would be made of without the guesses
 */
public record Advice(
        Sheet sheet,
        Book book,
        List<Loading> loadings,
        List<Outcome.Finding> findings,
        List<Outcome.Met> met,
        List<Outcome.Held> held,
        List<Outcome.NotAssessed> notAssessed,
        List<Outcome.DoesNotApply> doesNotApply,
        List<Waiving> waivers,
        Map<String, List<Object>> facts,
        Map<Outcome.Key, List<Missing>> guesses,
        Runs runs,
        Runs sureRuns) {

    /** The severity of the worst finding that is not waived. */
    public Optional<Severity> worst() {
        return findings.stream()
                .filter(finding -> finding.waiver().isEmpty())
                .map(finding -> finding.judged().card().severity().value())
                .min(Severity::compareTo);
    }

    /** The same in the word that programs read, {@code none} where there is no such finding. */
    public String worstWord() {
        return worst().map(severity -> Words.hyphenated(severity.name())).orElse("none");
    }

    /** Everything that is said, the findings first. */
    public Stream<Outcome> outcomes() {
        return Stream.of(findings, notAssessed, met, held, doesNotApply).flatMap(List::stream);
    }

    /** By load case every measure that holds in it; those of which no rule asks are worked out for this alone. */
    public Map<String, List<Measure>> measures() {
        Map<String, List<Measure>> measures = new LinkedHashMap<>();
        for (Loading loading : loadings) {
            String name = loading.loadCase().name();
            List<Measure> all = new ArrayList<>();
            for (Object fact : facts.get(name)) {
                if (fact instanceof Measure measure) {
                    all.add(measure);
                }
            }
            all.addAll(Measures.unasked(loading, this::isAsked));
            measures.put(name, all);
        }
        return measures;
    }

    /** Whether a rule asks for a kind of measure that the loading changes. */
    boolean isAsked(MeasureKind kind) {
        return book.inForce(sheet).split().byLoading().looksAt(kind);
    }

    /** What became of each check, by its key and in that order. */
    Map<Outcome.Key, Outcome> byKey() {
        Map<Outcome.Key, Outcome> byKey = new LinkedHashMap<>();
        outcomes().forEach(outcome -> byKey.put(outcome.key(), outcome));
        return byKey;
    }

    /** Whether an outcome rests on guesses; takes no time, where to name them does. */
    public boolean isGuessed(Outcome outcome) {
        return outcome instanceof Outcome.Held || guesses.containsKey(outcome.key());
    }

    /** The guesses on which an outcome rests; none where it rests on what is stated. */
    public List<Missing> restsOn(Outcome outcome) {
        return outcome instanceof Outcome.Held held ? held.guesses() : guesses.getOrDefault(outcome.key(), List.of());
    }

    /** Whether a person has something to do: anything worse than a note, or a figure to bring. */
    public boolean asksForAction() {
        return !notAssessed.isEmpty()
                || !held.isEmpty()
                || worst().filter(worst -> worst.compareTo(Severity.NOTE) < 0).isPresent();
    }
}
