package fitworthy.advice;

import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.Met;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.book.EffectiveRules;
import fitworthy.book.EffectiveRules.Rule;
import fitworthy.book.Practice;
import fitworthy.book.RuleSplit;
import fitworthy.book.RuleSplit.RuleSet;
import fitworthy.book.Severity;
import fitworthy.engine.Budget;
import fitworthy.engine.BudgetExceeded;
import fitworthy.engine.Consequence;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.rules.Advised;
import fitworthy.rules.RuleText;
import fitworthy.sheet.Sheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.kie.api.runtime.KieSession;

/**
 * Runs a book over a sheet. Each load case has a session of its own, which holds the measures of that case, those that
 * do not depend on the loading, and the practice values of the region and day; so no rule can mix two cases. Rules that
 * look at nothing that depends on the loading come out alike in every case, so a session before these runs them once
 * for all.
 */
public final class Adviser {

    private final Book book;
    private final Sheet sheet;
    private final Budget.Bounds bounds;
    private final EffectiveRules inForce;
    private final Map<Key, Outcome> outcomes = new LinkedHashMap<>();

    /** What an outcome is known by. */
    private record Key(String id, String subject, String in) {
        static Key of(Outcome outcome) {
            Judged judged = outcome.judged();
            return new Key(judged.id(), judged.subject(), judged.loadCase());
        }

        // As a record has them, but those are slow over the hundreds of outcomes that a sheet has.
        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && id.equals(key.id) && subject.equals(key.subject) && in.equals(key.in);
        }

        @Override
        public int hashCode() {
            return (id.hashCode() * 31 + subject.hashCode()) * 31 + in.hashCode();
        }
    }

    /** What came of some rules. @param quiet of those that did not fire; whether met or faulted is not settled yet */
    private record Pass(List<Finding> findings, List<Outcome> quiet) {}

    private Adviser(Book book, Sheet sheet, Budget.Bounds bounds) {
        this.book = book;
        this.sheet = sheet;
        this.bounds = bounds;
        this.inForce = book.inForce(sheet.region(), sheet.asOf());
    }

    /** What the book has to say of the sheet, in its region and on its day. */
    public static Advice advise(Book book, Sheet sheet) {
        return advise(book, sheet, Set.of());
    }

    /**
     * The same, for some load cases only. A weighbridge reading in a case left out still corrects the others.
     *
     * @param cases names of the load cases to look at; all where empty
     * @throws BudgetExceeded where a rule does not come to rest
     */
    public static Advice advise(Book book, Sheet sheet, Set<String> cases) {
        return advise(book, sheet, cases, Budget.Bounds.USUAL);
    }

    /** The same within other bounds. */
    public static Advice advise(Book book, Sheet sheet, Set<String> cases, Budget.Bounds bounds) {
        return new Adviser(book, sheet, bounds).advise(cases);
    }

    private Advice advise(Set<String> cases) {
        Plan plan = new Plan(sheet.planned(), book.tables(), this::practice);
        List<Loading> loadings = Loading.all(plan).stream()
                .filter(each ->
                        cases.isEmpty() || cases.contains(each.loadCase().name()))
                .toList();
        List<Measure> always = Measures.of(plan);
        List<List<Measure>> loaded = loadings.stream().map(Measures::of).toList();
        RuleSplit split = inForce.split(loaded);
        Pass alike = run(split.rest(), split.rest().among(always), List.of());
        Map<String, List<Object>> facts = new LinkedHashMap<>();
        List<Measure> shared = split.over().among(always);
        for (int i = 0; i < loadings.size(); i++) {
            Pass own = run(split.over(), joined(shared, loaded.get(i)), alike.findings());
            facts.put(loadings.get(i).loadCase().name(), settle(joined(always, loaded.get(i)), alike, own));
        }
        Comparator<Outcome> byPlace =
                Comparator.comparing(outcome -> outcome.judged().id());
        Comparator<Finding> worstFirst = Comparator.comparing(
                        (Finding finding) -> finding.judged().card().severity().value())
                .thenComparing(byPlace);
        List<Finding> findings = of(Finding.class).stream().sorted(worstFirst).toList();
        List<NotAssessed> notAssessed =
                of(NotAssessed.class).stream().sorted(byPlace).toList();
        return new Advice(
                sheet,
                book,
                loadings,
                findings,
                of(Met.class).stream().sorted(byPlace).toList(),
                notAssessed,
                Waiving.all(
                        sheet,
                        loadings.stream().map(each -> each.loadCase().name()).toList(),
                        findings,
                        notAssessed),
                facts);
    }

    private <O extends Outcome> List<O> of(Class<O> type) {
        return outcomes.values().stream()
                .filter(type::isInstance)
                .map(type::cast)
                .toList();
    }

    private static List<Measure> joined(List<Measure> some, List<Measure> others) {
        List<Measure> joined = new ArrayList<>(some);
        joined.addAll(others);
        return joined;
    }

    /**
     * Runs some rules.
     *
     * @param measures every measure that these rules look at
     * @param earlier what other rules have found before
     */
    private Pass run(RuleSet rules, List<Measure> measures, List<Finding> earlier) {
        Map<MeasureKind, List<Measure>> byKind = new IdentityHashMap<>();
        for (Measure each : measures) {
            byKind.computeIfAbsent(each.kind(), kind -> new ArrayList<>()).add(each);
        }
        Budget pace = new Budget(bounds);
        pace.combinations(rules.joining(), byKind);
        Map<Key, Finding> found = fire(rules, measures, earlier, pace);
        Set<String> fired = new HashSet<>();
        for (Key each : found.keySet()) {
            fired.add(each.id());
        }
        List<Outcome> quiet = new ArrayList<>();
        for (Rule rule : rules.rules()) {
            List<Measure> judges = rule.applies() ? byKind.getOrDefault(rule.judged(), List.of()) : List.of();
            for (Measure judged : judges) {
                if (!fired.contains(rule.id()) || !found.containsKey(key(rule.id(), judged))) {
                    quiet(rule, judged, byKind).ifPresent(quiet::add);
                }
            }
        }
        return new Pass(List.copyOf(found.values()), quiet);
    }

    /**
     * Settles what became of every card in one load case.
     *
     * @return every fact that the rules saw
     */
    private List<Object> settle(List<Measure> measures, Pass... passes) {
        Map<Measure, Severity> worst = new HashMap<>();
        List<Object> seen = new ArrayList<>(inForce.practice());
        seen.addAll(measures);
        for (Pass pass : passes) {
            for (Finding each : pass.findings) {
                add(each);
                worst.merge(
                        each.judged().measure(),
                        each.judged().card().severity().value(),
                        (a, b) -> a.compareTo(b) < 0 ? a : b);
                seen.add(new Advised(each.judged().id(), each.judged().subject()));
            }
        }
        for (Pass pass : passes) {
            for (Outcome each : pass.quiet) {
                // A card is not called met where a finding at least as severe stands against the same measure.
                Severity fault = worst.get(each.judged().measure());
                if (each instanceof NotAssessed
                        || fault == null
                        || fault.compareTo(each.judged().card().severity().value()) > 0) {
                    add(each);
                }
            }
        }
        return seen;
    }

    private Map<Key, Finding> fire(RuleSet rules, List<Measure> measures, List<Finding> earlier, Budget pace) {
        Map<Key, Finding> found = new LinkedHashMap<>();
        KieSession session = book.sessions().newKieSession();
        try {
            session.setGlobal("advice", (Consequence) (id, evidence) -> {
                Finding finding = finding(id, evidence);
                Measure judged = finding.judged().measure();
                if (found.putIfAbsent(key(id, judged), finding) == null) {
                    session.insert(new Advised(id, judged.getSubject()));
                }
            });
            rules.practice().forEach(session::insert);
            measures.forEach(session::insert);
            earlier.stream()
                    .map(Finding::judged)
                    .filter(each -> rules.earlier().contains(each.id()))
                    .forEach(each -> session.insert(new Advised(each.id(), each.subject())));
            session.fireAllRules(match -> rules.ids().contains(match.getRule().getName()) && pace.accept(match));
        } finally {
            session.dispose();
        }
        pace.check(book);
        return found;
    }

    private static Key key(String id, Measure judged) {
        return new Key(id, judged.getSubject(), judged.getLoadCase());
    }

    private Finding finding(String id, Object[] evidence) {
        Card card = book.cards().get(id);
        List<Measure> measures = new ArrayList<>();
        List<Practice> values = new ArrayList<>();
        for (Object each : evidence) {
            if (each instanceof Measure measure) {
                measures.add(measure);
            } else if (each instanceof Practice value) {
                values.add(value);
            }
        }
        Measure judged = measures.stream()
                .filter(each -> each.getName().equals(card.judges()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(id + " fired without the measure it judges"));
        List<Practice> all = withAgainst(card, values);
        Judged where = judged(book.rules().get(id), card, judged, measures);
        return new Finding(where, measures, all, Waiving.of(sheet, where));
    }

    /**
     * The practice values of the evidence, with the one the card compares against where the rule did not pass it on.
     */
    private List<Practice> withAgainst(Card card, List<Practice> values) {
        if (!card.againstPractice()
                || values.stream().anyMatch(each -> each.id().equals(card.against()))) {
            return List.copyOf(values);
        }
        List<Practice> all = new ArrayList<>(values);
        all.add(((Book.Lookup.Found) inForce.lookups().get(card.against())).practice());
        return all;
    }

    private static Judged judged(RuleText rule, Card card, Measure measure, List<Measure> evidence) {
        String loadCase = "";
        for (int i = 0; i < evidence.size() && loadCase.isEmpty(); i++) {
            loadCase = evidence.get(i).getLoadCase();
        }
        return new Judged(rule.id(), card, rule, measure, loadCase);
    }

    /** A card whose rule did not fire on a measure: met, not assessed, or nothing where it does not apply. */
    private Optional<Outcome> quiet(Rule rule, Measure judged, Map<MeasureKind, List<Measure>> byKind) {
        List<Measure> relevant = relevant(rule, judged, byKind);
        if (relevant.isEmpty()) {
            return Optional.empty();
        }
        Judged where = judged(rule.text(), rule.card(), judged, relevant);
        if (rule.unrecorded().isEmpty() && relevant.stream().allMatch(Measure::isKnown)) {
            return Optional.of(new Met(where, relevant, rule.values()));
        }
        Set<Missing> missing = new LinkedHashSet<>();
        relevant.forEach(each -> missing.addAll(each.missing()));
        rule.unrecorded().forEach(id -> missing.add(notRecorded(id)));
        return Optional.of(new NotAssessed(where, List.copyOf(missing)));
    }

    /**
     * What a card is about where it judges a measure: of each other kind the measures of the same subject, or all of
     * them where none is of the same; nothing where there is no measure of a kind.
     */
    private static List<Measure> relevant(Rule rule, Measure judged, Map<MeasureKind, List<Measure>> byKind) {
        if (rule.others().isEmpty()) {
            return List.of(judged);
        }
        List<Measure> relevant = new ArrayList<>();
        relevant.add(judged);
        for (MeasureKind kind : rule.others()) {
            List<Measure> all = byKind.getOrDefault(kind, List.of());
            if (all.isEmpty()) {
                return List.of();
            }
            List<Measure> same = all.stream()
                    .filter(each -> each.getSubject().equals(judged.getSubject()))
                    .toList();
            relevant.addAll(same.isEmpty() ? all : same);
        }
        return relevant;
    }

    /** A practice value as a figure; missing where none is recorded or applies. */
    private Figure practice(String id) {
        return inForce.lookups().get(id) instanceof Book.Lookup.Found found
                ? Figure.of(found.practice().value(), 0)
                : Figure.missing(notRecorded(id));
    }

    private Missing notRecorded(String id) {
        String meaning =
                book.practice().containsKey(id) ? book.practice().get(id).meaning() : "a practice value";
        return new Missing(
                "practice value " + id,
                meaning + ", which the rule book does not record for "
                        + book.regions().get(sheet.region()).name() + " on " + sheet.asOf(),
                "the local authority");
    }

    /** Adds an outcome once: what does not depend on the loading comes up in every case. */
    private void add(Outcome outcome) {
        outcomes.putIfAbsent(Key.of(outcome), outcome);
    }
}
