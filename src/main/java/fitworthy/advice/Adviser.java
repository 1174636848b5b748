package fitworthy.advice;

import fitworthy.advice.Outcome.DoesNotApply;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Met;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.advice.Outcome.Reason;
import fitworthy.book.RuleSplit;
import fitworthy.book.Severity;
import fitworthy.engine.Budget;
import fitworthy.engine.BudgetExceeded;
import fitworthy.engine.RuleEngine;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Guesses;
import fitworthy.sheet.Sheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Holds a sheet against a book. Each load case has a session of its own, which holds the measures of that case, those
 * that do not depend on the loading, and the practice values of the region and day; so no rule can mix two cases. Rules
 * that look at nothing that depends on the loading come out alike in every case, so a session before these runs them
 * once for all.
 */
public final class Adviser {

    private static final Comparator<Outcome> BY_RULE =
            Comparator.comparing(outcome -> outcome.judged().id());
    private static final Comparator<Finding> WORST_FIRST = Comparator.comparing(
                    (Finding finding) -> finding.judged().card().severity().value())
            .thenComparing(finding -> finding.judged().card().follows())
            .thenComparing(BY_RULE);

    private final RuleEngine engine;
    private final Sheet sheet;
    private final Budget.Bounds bounds;
    private final Assessor assessor;
    /** By rule, subject and load case: what does not depend on the loading comes up in every case and counts once. */
    private final Map<Outcome.Key, Outcome> outcomes = new LinkedHashMap<>();

    private Adviser(RuleEngine engine, Sheet sheet, Budget.Bounds bounds) {
        this.engine = engine;
        this.sheet = sheet;
        this.bounds = bounds;
        this.assessor = new Assessor(engine, sheet, bounds);
    }

    /** What the book has to say of the sheet, in its region and on its day. */
    public static Advice advise(RuleEngine engine, Sheet sheet) {
        return advise(engine, sheet, Set.of());
    }

    /**
     * The same, for some load cases only. A weighbridge reading in a case left out still corrects the others.
     *
     * @param cases names of the load cases to look at; all where empty
     * @throws BudgetExceeded where a rule does not come to rest
     */
    public static Advice advise(RuleEngine engine, Sheet sheet, Set<String> cases) {
        return advise(engine, sheet, cases, Budget.Bounds.USUAL);
    }

    /** The same within other bounds. */
    public static Advice advise(RuleEngine engine, Sheet sheet, Set<String> cases, Budget.Bounds bounds) {
        return new Adviser(engine, sheet, bounds).advise(cases, null, Guessing::told);
    }

    /**
     * The same where another sheet not much unlike it was advised by the same engine before: the rules that look at
     * nothing that came out otherwise are not run again.
     *
     * @param before null where none was
     */
    public static Advice advise(RuleEngine engine, Sheet sheet, Advice before) {
        return new Adviser(engine, sheet, Budget.Bounds.USUAL).advise(Set.of(), before, Guessing::told);
    }

    /** The same for one of many sheets: what rests on guesses is told apart, but not on which. */
    public static Advice counted(RuleEngine engine, Sheet sheet) {
        return new Adviser(engine, sheet, Budget.Bounds.USUAL).advise(Set.of(), null, Guessing::apart);
    }

    /** The same after another sheet. */
    public static Advice counted(RuleEngine engine, Sheet sheet, Advice before) {
        return new Adviser(engine, sheet, Budget.Bounds.USUAL).advise(Set.of(), before, Guessing::apart);
    }

    /** Its load cases as if every guess were stated: what rests on one is not told apart. */
    static Advice untold(RuleEngine engine, Sheet sheet, Set<String> cases, Runs before) {
        return new Adviser(engine, sheet, Budget.Bounds.USUAL).untold(cases, before);
    }

    /** @param before null where there is none */
    private Advice advise(Set<String> cases, Advice before, Function<Guessing, Advice> telling) {
        Advice advice = untold(cases, before == null ? Runs.none(sheet) : before.runs());
        // Without guesses it is its own sure one.
        List<Missing> guesses = before != null && before.runs() == before.sureRuns()
                ? Guesses.after(before.sheet(), sheet)
                : Guesses.of(sheet);
        return guesses.isEmpty()
                ? advice
                : telling.apply(new Guessing(
                        advice,
                        guesses,
                        before == null ? advice.runs() : before.sureRuns(),
                        (left, runs) -> new Adviser(engine, Guesses.leftOut(sheet, left), bounds).untold(cases, runs)));
    }

    private Advice untold(Set<String> cases, Runs before) {
        Runs runs = before.under(sheet);
        Plan plan = new Plan(sheet, engine.book().tables(), assessor.recorded()::figure);
        List<Loading> loadings = Loading.all(plan).stream()
                .filter(loading ->
                        cases.isEmpty() || cases.contains(loading.loadCase().name()))
                .toList();
        List<Measure> always = Measures.of(plan);
        RuleSplit split = assessor.inForce().split();
        List<List<Measure>> loaded = loadings.stream()
                .map(loading -> Measures.asked(loading, split.byLoading()::looksAt))
                .toList();
        RuleRun alike =
                assessor.assess(split.byPlan(), split.byPlan().lookedAt(always), RuleRun.NOTHING, "", runs.alike());
        Map<String, List<Object>> facts = new LinkedHashMap<>();
        Map<String, RuleRun> byCase = new LinkedHashMap<>();
        for (int i = 0; i < loadings.size(); i++) {
            String name = loadings.get(i).loadCase().name();
            List<Measure> all = joined(always, loaded.get(i));
            RuleRun own =
                    assessor.assess(split.byLoading(), split.byLoading().lookedAt(all), alike, name, runs.in(name));
            settle(alike, own);
            facts.put(name, seen(all, alike, own));
            byCase.put(name, own);
        }
        List<Finding> findings = sorted(Finding.class, WORST_FIRST);
        List<NotAssessed> notAssessed = sorted(NotAssessed.class, NotAssessed.GRAVEST_FIRST);
        List<String> looked = List.copyOf(facts.keySet());
        Runs own = new Runs(sheet, alike, byCase);
        return new Advice(
                sheet,
                engine.book(),
                loadings,
                findings,
                sorted(Met.class, BY_RULE),
                List.of(),
                notAssessed,
                sorted(DoesNotApply.class, BY_RULE),
                Waiving.all(sheet, engine.book(), looked, findings, notAssessed),
                facts,
                Map.of(),
                own,
                own);
    }

    private static <T> List<T> joined(List<T> some, List<T> others) {
        List<T> joined = new ArrayList<>(some.size() + others.size());
        joined.addAll(some);
        joined.addAll(others);
        return joined;
    }

    /** Settles what became of every card in one load case. */
    private void settle(RuleRun alike, RuleRun own) {
        Map<Measure, Severity> worst = new HashMap<>();
        for (Finding finding : joined(alike.findings(), own.findings())) {
            add(finding);
            worst.merge(finding.judged().measure(), severity(finding), (a, b) -> a.compareTo(b) < 0 ? a : b);
        }
        for (Outcome outcome : joined(alike.quiet(), own.quiet())) {
            Severity fault = worst.get(outcome.judged().measure());
            boolean said = fault != null && fault.compareTo(severity(outcome)) <= 0;
            add(said ? besides(outcome) : outcome);
        }
    }

    /** A card is not called met where a finding at least as severe stands against the same measure. */
    private static Outcome besides(Outcome outcome) {
        if (outcome instanceof Met met) {
            return new DoesNotApply(met.judged(), met.practice(), Reason.SAID_ALREADY);
        }
        return outcome instanceof DoesNotApply off && off.reason() == Reason.GUARD
                ? off.because(Reason.SAID_ALREADY)
                : outcome;
    }

    private static Severity severity(Outcome outcome) {
        return outcome.judged().card().severity().value();
    }

    private void add(Outcome outcome) {
        outcomes.merge(outcome.key(), outcome, (one, other) -> rank(other) < rank(one) ? other : one);
    }

    /** What is said of one thing where it came out in several ways: the first of these. */
    private static int rank(Outcome outcome) {
        return outcome instanceof Finding ? 0 : outcome instanceof NotAssessed ? 1 : outcome instanceof Met ? 2 : 3;
    }

    /** Every fact of one load case: what the rules saw, and what they built on. */
    private List<Object> seen(List<Measure> measures, RuleRun alike, RuleRun own) {
        List<Object> seen = new ArrayList<>(assessor.inForce().practice());
        seen.addAll(measures);
        seen.addAll(alike.advised());
        seen.addAll(own.advised());
        return seen;
    }

    private <O extends Outcome> List<O> sorted(Class<O> type, Comparator<? super O> order) {
        return outcomes.values().stream()
                .filter(type::isInstance)
                .map(type::cast)
                .sorted(order)
                .toList();
    }
}
