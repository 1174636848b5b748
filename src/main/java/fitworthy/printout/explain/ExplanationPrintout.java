package fitworthy.printout.explain;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Explanation;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Held;
import fitworthy.advice.Outcome.Judged;
import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.book.DatedLimit;
import fitworthy.book.FormerIds;
import fitworthy.book.Practice;
import fitworthy.document.Page;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.Working;
import fitworthy.printout.words.GuessWords;
import fitworthy.printout.words.HouseWords;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Missing;
import fitworthy.rules.Advised;
import fitworthy.rules.Condition;
import fitworthy.rules.RuleText;
import fitworthy.shelf.Taken;
import fitworthy.source.Words;
import java.io.PrintWriter;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Why a rule fired on a sheet, or why it did not, as plain text. */
public final class ExplanationPrintout {

    private static final int MANY = 6;
    /** How many subjects are named in the heading. */
    private static final int NAMED = 3;

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{[^}]*\\}");
    /** The names of facts in rule files begin with it. */
    private static final String NAME = "$";

    private final Set<List<String>> told = new HashSet<>();
    private final Page page;
    private final Advice advice;
    private final Saying saying;
    private final FromShelf fromShelf;
    private final Arrangement arrangement;

    private ExplanationPrintout(Page page, Advice advice, List<Taken> taken, Saying saying) {
        this.page = page;
        this.advice = advice;
        this.saying = saying;
        this.fromShelf = new FromShelf(taken, saying);
        this.arrangement = Arrangement.of(advice);
    }

    /** Explains one rule of the book on a sheet that takes nothing from a shelf. @param id its present id or a former one */
    public static void print(PrintWriter out, Advice advice, String id) {
        print(out, advice, List.of(), id);
    }

    /** Explains one rule of the book. @param taken what the sheet has from its shelf @param id as above */
    public static void print(PrintWriter out, Advice advice, List<Taken> taken, String id) {
        Page page = new Page(out);
        FormerIds former = advice.book().formerIds();
        if (!former.said(id).isEmpty()) {
            page.wrapped(0, former.said(id) + ".");
        }
        String present = former.present(id);
        new ExplanationPrintout(page, advice, taken, Saying.AS_FILES).rule(present, Explanation.of(advice, present));
        page.rule();
        page.wrapped(0, advice.book().smallPrint(advice.sheet().region()));
        page.flush();
    }

    /** Explains one rule where it was about what is wanted, as one says it to a customer. @param id its present id */
    static void printPlainly(
            Page page, Advice advice, List<Taken> taken, Saying saying, String id, Predicate<Explanation> wanted) {
        new ExplanationPrintout(page, advice, taken, saying)
                .rule(id, Explanation.of(advice, id).stream().filter(wanted).toList());
    }

    /** How it came to a finding, without what is said of the rule. */
    static void printSteps(
            Page page, Advice advice, List<Taken> taken, Saying saying, String id, Predicate<Explanation> wanted) {
        ExplanationPrintout printout = new ExplanationPrintout(page, advice, taken, saying);
        printout.steps(id, Explanation.of(advice, id).stream().filter(wanted).toList());
        printout.fromShelf.print(page);
    }

    private void rule(String id, List<Explanation> explanations) {
        Book book = advice.book();
        Card card = book.inForce(advice.sheet()).card(id);
        RuleText rule = book.rules().get(id);
        UnaryOperator<String> filled = text -> filled(text, id, explanations);
        page.wrapped(0, (saying.plain() ? "" : id + ": ") + Words.capital(filled.apply(card.title())));
        page.wrapped(
                0,
                Words.hyphenated(card.severity().value().name())
                        + (saying.plain() ? "" : ", " + rule.place())
                        + ", in the book since "
                        + card.since()
                        + book.retired(id)
                                .map(ended -> ", ending on " + ended.day())
                                .orElse(""));
        page.rule();
        HouseWords.severity(advice, id).ifPresent(severity -> page.hanging("Severity ", severity));
        page.hanging("Why      ", Words.capital(filled.apply(card.why())));
        page.hanging("Rests on ", card.basis().value().words() + sources(card.sources()));
        for (String practice : rule.practice()) {
            practice(practice);
        }
        page.blank();
        steps(id, explanations);
        if (explanations.isEmpty()) {
            page.wrapped(
                    0,
                    book.retired(id, advice.sheet().asOf())
                            .map(ended -> Words.capital(ended.words(id)) + ", so it is not checked on "
                                    + advice.sheet().asOf() + ".")
                            .orElse("This does not apply to the sheet: nothing on it gives the measure " + card.judges()
                                    + "."));
            advice.held().stream()
                    .filter(held -> held.judged().id().equals(id))
                    .findFirst()
                    .ifPresent(this::guesses);
        }
        fromShelf.print(page);
    }

    private void steps(String id, List<Explanation> explanations) {
        Set<String> seen = new HashSet<>();
        for (Explanation each : explanations) {
            // What does not depend on the loading reads the same in every case and is told once.
            if (seen.add(each.judged().getSubject() + "|" + key(each))) {
                explanation(id, each);
            }
        }
    }

    /** A text of the card with the subjects that it was looked at for, the found ones alone where it is found. */
    private String filled(String text, String id, List<Explanation> explanations) {
        Set<String> found = advice.findings().stream()
                .filter(finding -> finding.judged().id().equals(id))
                .map(finding -> finding.judged().subject())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        Set<String> subjects = found.isEmpty()
                ? explanations.stream()
                        .map(each -> each.judged().getSubject())
                        .collect(Collectors.toCollection(LinkedHashSet::new))
                : found;
        String named = subjects.isEmpty() || subjects.size() > NAMED
                ? text.replaceAll("([Tt]he) \\{subject}", "$1 part").replace("{subject}", "a part")
                : text.replace("{subject}", String.join(" or ", subjects));
        return PLACEHOLDER.matcher(named).replaceAll("so much");
    }

    /** The load case where any fact looked at depends on it, else nothing. */
    private static String key(Explanation each) {
        return each.steps().stream()
                        .anyMatch(step -> step.fact() instanceof Measure measure
                                && !measure.getLoadCase().isEmpty())
                ? each.loadCase()
                : "";
    }

    private String sources(List<String> ids) {
        return ids.isEmpty()
                ? ""
                : ": "
                        + String.join(
                                "; ",
                                ids.stream()
                                        .map(source -> advice.book()
                                                .sources()
                                                .get(source)
                                                .title())
                                        .toList());
    }

    private void practice(String id) {
        Practice.Lookup lookup = advice.book().lookup(id, advice.sheet());
        String named = id;
        String text = "nothing recorded for this region and day";
        if (lookup instanceof Practice.Lookup.Ended ended) {
            text = "retired on " + ended.day();
        } else if (lookup instanceof Practice.Lookup.RegistrationAsked) {
            text = "hangs on the day of first registration, which is not known";
        } else if (lookup instanceof Practice.Lookup.NoneApplies) {
            text = "no such limit applies in this region";
        } else if (lookup instanceof Practice.Lookup.Found found) {
            DatedLimit.Value entry = found.practice().entry();
            named = saying.plain() ? found.practice().meaning() : id;
            text = Wording.recorded(found.practice()) + ", " + entry.region() + " from " + entry.since() + ", "
                    + entry.basis().value().words() + sources(entry.sources()) + entry.passage()
                    + (entry.note().isEmpty() ? "" : ". " + entry.note());
        }
        page.hanging("Practice ", named + ": " + text);
    }

    private void explanation(String id, Explanation each) {
        String loading = key(each).isEmpty() ? "" : ", " + each.loadCase();
        page.wrapped(0, Words.shortened(each.judged().getSubject() + loading, 60) + ": " + outcome(id, each));
        resting(id, each).ifPresent(this::guesses);
        boolean atLeast = advice.book().inForce(advice.sheet()).card(id).atLeast();
        Map<String, Object> bound = new LinkedHashMap<>();
        for (Explanation.Step step : each.steps()) {
            if (step.wanted().binding() != null && step.fact() != null) {
                bound.put(step.wanted().binding(), step.fact());
            }
            page.hanging("    ", fact(step, atLeast));
            if (step.fact() instanceof Measure measure) {
                fromShelf.told(measure.getSubject());
                workings(measure);
            }
            if (step.fact() instanceof Advised advised) {
                found(advised, each.loadCase());
            }
            ComparedWords words = new ComparedWords(step.fact(), bound);
            for (Explanation.Check check : step.checks()) {
                if (!saying.plain()) {
                    page.hanging(
                            check.holds() ? "      true   " : "      FALSE  ",
                            plain(check.comparison() + FactWords.numbers(check.comparison(), step.fact(), bound)));
                } else if (!check.holds() || ComparedWords.tells(check.comparison())) {
                    page.hanging(check.holds() ? "      so:     " : "      not so: ", words.of(check.comparison()));
                }
            }
        }
        saying.missing(page, missing(id, each));
        page.blank();
    }

    private String fact(Explanation.Step step, boolean atLeast) {
        Condition.Match wanted = step.wanted();
        if (saying.plain()) {
            return step.fact() instanceof Advised advised
                    ? "What was found of " + advised.subject() + ":"
                    : Words.capital(FactWords.fact(step.fact(), "nothing of this kind is on the sheet", atLeast));
        }
        return (wanted.binding() == null ? "" : plain(wanted.binding()) + ": ")
                + FactWords.fact(
                        step.fact(), "nothing: there is no " + wanted.fact().word() + " " + wanted.key(), atLeast);
    }

    private static String plain(String text) {
        return text.replace(NAME, "");
    }

    /** What came of the rule where that rests on guesses. */
    private Optional<Assessed> resting(String id, Explanation each) {
        return Stream.<List<? extends Assessed>>of(advice.findings(), advice.held())
                .flatMap(List::stream)
                .<Assessed>map(outcome -> outcome)
                .filter(outcome -> outcome.judged().id().equals(id)
                        && outcome.judged().subject().equals(each.judged().getSubject())
                        && List.of("", each.loadCase())
                                .contains(outcome.judged().loadCase())
                        && advice.isGuessed(outcome))
                .findFirst();
    }

    private void guesses(Assessed outcome) {
        GuessWords.of(arrangement, outcome).forEach(line -> page.wrapped(4, line));
    }

    /** What the finding that another builds on says itself. */
    private void found(Advised advised, String loadCase) {
        advice.findings().stream()
                .filter(finding -> finding.judged().id().equals(advised.id())
                        && finding.judged().subject().equals(advised.subject())
                        && List.of("", loadCase).contains(finding.judged().loadCase()))
                .findFirst()
                .ifPresent(finding -> page.hanging(
                        "      found  ",
                        Wording.fill(finding.judged().card().title(), finding)
                                + finding.comparison()
                                        .map(comparison -> ": " + Wording.comparison(finding.judged(), comparison))
                                        .orElse("")));
    }

    private void workings(Measure measure) {
        String label = "      worked out: ";
        for (Working working : measure.workings()) {
            List<String> lines = working.lines();
            lines.forEach(fromShelf::told);
            // The masses of one loading stand behind several figures.
            boolean again = lines.size() > MANY && !told.add(lines);
            for (String line : again ? List.of("as above: " + lines.get(0)) : lines) {
                page.row(label, line);
                label = "        ";
            }
        }
    }

    private Set<Missing> missing(String id, Explanation each) {
        Set<Missing> missing = new TreeSet<>(Comparator.comparing(Missing::path));
        each.steps().forEach(step -> {
            if (step.fact() instanceof Measure measure) {
                missing.addAll(measure.missing());
            }
        });
        advice.notAssessed().stream()
                .filter(got -> is(got.judged(), id, each))
                .forEach(got -> missing.addAll(got.missing()));
        return missing;
    }

    private String outcome(String id, Explanation each) {
        Optional<Assessed> resting = resting(id, each);
        if (resting.isPresent() && resting.get() instanceof Held held) {
            return held.arises() ? "in order if the guesses hold" : "does not apply if the guesses hold";
        }
        if (each.holds()) {
            return (resting.isPresent() ? "found, on guesses" : "found")
                    + advice.findings().stream()
                            .filter(found -> is(found.judged(), id, each))
                            .flatMap(found -> found.waiver().stream())
                            .findFirst()
                            .map(waiver -> "; waived " + HouseWords.waiver(waiver, id))
                            .orElse("");
        }
        if (advice.notAssessed().stream().anyMatch(got -> is(got.judged(), id, each))) {
            return "not checked: information missing";
        }
        return advice.doesNotApply().stream()
                .filter(got -> is(got.judged(), id, each))
                .findFirst()
                .map(off -> "does not apply: " + off.reason().words())
                .orElse("in order");
    }

    private static boolean is(Judged judged, String id, Explanation each) {
        return judged.id().equals(id) && judged.measure() == each.judged();
    }
}
