package fitworthy.advice;

import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.Met;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.book.Advised;
import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.book.Consequence;
import fitworthy.book.Practice;
import fitworthy.book.Severity;
import fitworthy.figures.Loading;
import fitworthy.figures.Measure;
import fitworthy.figures.Measures;
import fitworthy.figures.Plan;
import fitworthy.sheet.Figure;
import fitworthy.sheet.Missing;
import fitworthy.sheet.Sheet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.kie.api.runtime.KieSession;

/**
 * Runs a book over a sheet. Each load case has a session of its own, which holds the measures of that case, those that do
 * not depend on the loading, and the practice values of the region and day; so no rule can mix two cases.
 */
public final class Adviser {

    private final Book book;
    private final Sheet sheet;
    private final List<Practice> practice = new ArrayList<>();
    private final Map<String, Book.Lookup> lookups = new HashMap<>();
    private final Map<String, Outcome> outcomes = new LinkedHashMap<>();
    private final Map<String, List<Object>> facts = new LinkedHashMap<>();

    private final Pace.Bounds bounds;

    private Adviser(Book book, Sheet sheet, Pace.Bounds bounds) {
        this.book = book;
        this.sheet = sheet;
        this.bounds = bounds;
    }

    /** What the book has to say of the sheet, in its region and on its day. */
    public static Advice advise(Book book, Sheet sheet) {
        return advise(book, sheet, Set.of());
    }

    /**
     * The same, for some load cases only. A weighbridge reading in a case left out still corrects the others.
     *
     * @param cases names of the load cases to look at; all where empty
     * @throws Runaway where a rule does not come to rest
     */
    public static Advice advise(Book book, Sheet sheet, Set<String> cases) {
        return advise(book, sheet, cases, Pace.Bounds.USUAL);
    }

    /** The same within other bounds. */
    static Advice advise(Book book, Sheet sheet, Set<String> cases, Pace.Bounds bounds) {
        return new Adviser(book, sheet, bounds).advise(cases);
    }

    private Advice advise(Set<String> cases) {
        LocalDate day = sheet.asOf();
        book.practice().keySet().forEach(id -> {
            Book.Lookup lookup = book.lookup(id, sheet.region(), day);
            lookups.put(id, lookup);
            if (lookup instanceof Book.Lookup.Found found) {
                practice.add(found.practice());
            }
        });
        Plan plan = new Plan(sheet.planned(), book.tables(), this::practice);
        List<Measure> always = Measures.of(plan);
        List<Loading> loadings = Loading.all(plan).stream()
                .filter(each -> cases.isEmpty() || cases.contains(each.loadCase().name())).toList();
        for (Loading loading : loadings) {
            List<Measure> measures = new ArrayList<>(always);
            measures.addAll(Measures.of(loading));
            facts.put(loading.loadCase().name(), assess(measures));
        }
        Comparator<Outcome> byPlace = Comparator.comparing(outcome -> outcome.judged().id());
        Comparator<Finding> worstFirst = Comparator.comparing(
                (Finding finding) -> finding.judged().card().severity().value()).thenComparing(byPlace);
        List<Finding> findings = of(Finding.class).stream().sorted(worstFirst).toList();
        List<NotAssessed> notAssessed = of(NotAssessed.class).stream().sorted(byPlace).toList();
        return new Advice(sheet, book, loadings, findings, of(Met.class).stream().sorted(byPlace).toList(), notAssessed,
                Waiving.all(sheet, loadings.stream().map(each -> each.loadCase().name()).toList(), findings, notAssessed),
                facts);
    }

    private <O extends Outcome> List<O> of(Class<O> type) {
        return outcomes.values().stream().filter(type::isInstance).map(type::cast).toList();
    }

    /**
     * Fires the rules over the measures of one load case and settles what became of every card.
     *
     * @return every fact that the rules saw
     */
    private List<Object> assess(List<Measure> measures) {
        Map<String, Finding> found = fire(measures);
        Map<Measure, Severity> worst = new HashMap<>();
        found.values().forEach(finding -> worst.merge(finding.judged().measure(),
                finding.judged().card().severity().value(), (a, b) -> a.compareTo(b) < 0 ? a : b));
        found.values().forEach(this::add);
        Map<String, List<Measure>> byName = new HashMap<>();
        measures.forEach(each -> byName.computeIfAbsent(each.getName(), name -> new ArrayList<>()).add(each));
        book.cards().forEach((id, card) -> {
            for (Measure judged : byName.getOrDefault(card.judges(), List.of())) {
                if (!found.containsKey(key(id, judged))) {
                    Severity fault = worst.get(judged);
                    quiet(id, card, judged, byName,
                            fault != null && fault.compareTo(card.severity().value()) <= 0);
                }
            }
        });
        List<Object> seen = new ArrayList<>(practice);
        seen.addAll(measures);
        found.values().forEach(each -> seen.add(new Advised(each.judged().id(), each.judged().subject())));
        return seen;
    }

    private Map<String, Finding> fire(List<Measure> measures) {
        Map<String, Finding> found = new LinkedHashMap<>();
        Pace pace = new Pace(bounds);
        pace.combinations(book, measures);
        KieSession session = book.base().newKieSession();
        try {
            session.setGlobal("advice", (Consequence) (id, evidence) -> {
                Finding finding = finding(id, evidence);
                Measure judged = finding.judged().measure();
                if (found.putIfAbsent(key(id, judged), finding) == null) {
                    session.insert(new Advised(id, judged.getSubject()));
                }
            });
            practice.forEach(session::insert);
            measures.forEach(session::insert);
            session.fireAllRules(pace);
        } finally {
            session.dispose();
        }
        pace.check(book);
        return found;
    }

    private static String key(String id, Measure judged) {
        return id + "|" + judged.getSubject() + "|" + judged.getLoadCase();
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
        Measure judged = measures.stream().filter(each -> each.getName().equals(card.judges())).findFirst()
                .orElseThrow(() -> new IllegalStateException(id + " fired without the measure it judges"));
        List<Practice> all = withAgainst(card, values);
        Judged where = judged(id, card, judged, measures);
        return new Finding(where, measures, all, comparison(card, judged, all), Waiving.of(sheet, where));
    }

    /** The practice values of the evidence, with the one the card compares against where the rule did not pass it on. */
    private List<Practice> withAgainst(Card card, List<Practice> values) {
        if (!card.againstPractice() || values.stream().anyMatch(each -> each.id().equals(card.against()))) {
            return List.copyOf(values);
        }
        List<Practice> all = new ArrayList<>(values);
        all.add(((Book.Lookup.Found) lookups.get(card.against())).practice());
        return all;
    }

    private static Optional<Comparison> comparison(Card card, Measure judged, List<Practice> practice) {
        return card.against().isEmpty() ? Optional.empty() : Optional.of(Comparison.of(card, judged, practice));
    }

    private Judged judged(String id, Card card, Measure measure, List<Measure> evidence) {
        String loadCase = evidence.stream().map(Measure::getLoadCase).filter(name -> !name.isEmpty()).findFirst()
                .orElse("");
        return new Judged(id, card, book.rules().get(id), measure, loadCase);
    }

    /**
     * A card whose rule did not fire on a measure: not applicable, not assessed, or met. A card is not called met where a
     * finding at least as severe stands against the same measure.
     */
    private void quiet(String id, Card card, Measure judged, Map<String, List<Measure>> byName, boolean faulted) {
        List<Measure> relevant = new ArrayList<>(List.of(judged));
        for (String name : card.about()) {
            if (name.equals(card.judges())) {
                continue;
            }
            List<Measure> all = byName.getOrDefault(name, List.of());
            List<Measure> same = all.stream().filter(each -> each.getSubject().equals(judged.getSubject())).toList();
            if (all.isEmpty()) {
                return;
            }
            relevant.addAll(same.isEmpty() ? all : same);
        }
        Set<Missing> missing = new LinkedHashSet<>();
        relevant.forEach(each -> missing.addAll(each.missing()));
        List<Practice> values = new ArrayList<>();
        for (String practiceId : book.rules().get(id).practice()) {
            Book.Lookup lookup = lookups.get(practiceId);
            if (lookup instanceof Book.Lookup.NoneApplies) {
                return;
            }
            if (lookup instanceof Book.Lookup.Found found) {
                values.add(found.practice());
            } else {
                missing.add(notRecorded(practiceId));
            }
        }
        Judged where = judged(id, card, judged, relevant);
        if (!missing.isEmpty()) {
            add(new NotAssessed(where, List.copyOf(missing)));
        } else if (!faulted) {
            add(new Met(where, relevant, values, comparison(card, judged, values)));
        }
    }

    /** A practice value as a figure; missing where none is recorded or applies. */
    private Figure practice(String id) {
        return lookups.get(id) instanceof Book.Lookup.Found found ? Figure.of(found.practice().value(), 0)
                : Figure.missing(notRecorded(id));
    }

    private Missing notRecorded(String id) {
        String meaning = book.practice().containsKey(id) ? book.practice().get(id).meaning() : "a practice value";
        return new Missing("practice value " + id, meaning + ", which the rule book does not record for "
                + book.regions().get(sheet.region()).name() + " on " + sheet.asOf(), "the local authority");
    }

    /** Adds an outcome once: what does not depend on the loading comes up in every case. */
    private void add(Outcome outcome) {
        Judged judged = outcome.judged();
        outcomes.putIfAbsent(judged.id() + "|" + judged.subject() + "|" + judged.loadCase(), outcome);
    }
}
