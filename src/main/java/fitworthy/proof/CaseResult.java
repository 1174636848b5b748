package fitworthy.proof;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.DoesNotApply;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.advice.Outcome.Reason;
import fitworthy.book.Retired;
import fitworthy.book.Severity;
import fitworthy.engine.RuleEngine;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.Wording;
import fitworthy.proof.Cases.Case;
import fitworthy.proof.Cases.Expected;
import fitworthy.proof.Cases.Unassessed;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Missing;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A case of the book and what came of it.
 *
 * @param text the case
 * @param advice what the book has to say of its sheet
 * @param problems in a line each, where that is other than the case says; figures are as printed
 */
public record CaseResult(Case text, Advice advice, List<String> problems) {

    /** Runs a case; every finding of its topic has to be one that it names. */
    public static CaseResult of(RuleEngine engine, Case text) {
        Advice advice = Adviser.advise(engine.with(text.house()), text.sheet());
        List<Finding> open = new ArrayList<>(advice.findings().stream()
                .filter(finding -> finding.judged().id().startsWith(text.topic() + "."))
                .toList());
        List<Expected> unmet = new ArrayList<>();
        for (Expected expected : text.text().expect()) {
            Optional<Finding> match = open.stream()
                    .filter(finding -> differences(expected, finding, advice).isEmpty())
                    .findFirst();
            match.ifPresentOrElse(open::remove, () -> unmet.add(expected));
        }
        List<String> problems = new ArrayList<>();
        for (Expected expected : unmet) {
            Optional<Finding> nearest = open.stream()
                    .filter(finding -> finding.judged().id().equals(expected.id()))
                    .min((a, b) -> differences(expected, a, advice).size()
                            - differences(expected, b, advice).size());
            nearest.ifPresent(open::remove);
            problems.add(nearest.map(
                            finding -> expected.id() + ": " + String.join("; ", differences(expected, finding, advice)))
                    .orElseGet(() -> expected.id() + ": expected, but " + instead(advice, expected.id())));
        }
        open.forEach(finding -> problems.add(finding.judged().id() + ": not expected, but found: " + shown(finding)));
        for (Unassessed wanted : text.text().notAssessed()) {
            if (advice.notAssessed().stream()
                    .noneMatch(got -> got.judged().id().equals(wanted.id())
                            && got.missing().stream()
                                    .anyMatch(missing -> missing.path().equals(wanted.field())))) {
                problems.add(wanted.id() + ": expected not assessed for want of " + wanted.field() + ", but "
                        + instead(advice, wanted.id()));
            }
        }
        for (String id : text.text().met()) {
            if (advice.met().stream().noneMatch(met -> met.judged().id().equals(id))) {
                problems.add(id + ": expected to be met, but " + instead(advice, id));
            }
        }
        for (String id : text.text().held()) {
            if (advice.held().stream().noneMatch(held -> held.judged().id().equals(id))) {
                problems.add(id + ": expected to be in order only if guesses hold, but " + instead(advice, id));
            }
        }
        for (String id : text.text().doesNotApply()) {
            if (advice.doesNotApply().stream()
                    .noneMatch(off -> off.judged().id().equals(id))) {
                problems.add(id + ": expected not to apply, but " + instead(advice, id));
            }
        }
        for (String id : text.text().retired()) {
            if (retired(advice, id).isEmpty()) {
                problems.add(id + ": expected to be retired, but " + instead(advice, id));
            }
        }
        CaseFigures.look(text.text().figures(), advice, problems);
        UsualSaid.differences(text, engine.book(), problems);
        turned(text.text().unsure(), true, advice, problems);
        turned(text.text().sure(), false, advice, problems);
        return new CaseResult(text, advice, problems);
    }

    /** What is not found or met as surely as these rules are said to be. */
    private static void turned(List<String> ids, boolean unsure, Advice advice, List<String> problems) {
        for (String id : ids) {
            List<Boolean> could = Stream.<List<? extends Assessed>>of(advice.findings(), advice.met(), advice.held())
                    .flatMap(List::stream)
                    .filter(outcome -> outcome.judged().id().equals(id))
                    .flatMap(outcome -> outcome.comparison().stream())
                    .map(Comparison::uncertain)
                    .toList();
            if (unsure ? !could.contains(true) : could.isEmpty() || could.contains(true)) {
                String wanted = unsure
                        ? ": expected to hang on the tolerance, but "
                        : ": expected whatever the tolerance, but ";
                problems.add(id + wanted + instead(advice, id));
            }
        }
    }

    /** Each part in which a finding is other than expected. */
    private static List<String> differences(Expected expected, Finding finding, Advice advice) {
        Judged judged = finding.judged();
        Optional<Comparison> compared = finding.comparison().map(raw -> Digits.asPrinted(judged, raw));
        MeasureKind kind = finding.comparison()
                .map(raw -> Digits.kind(judged, raw))
                .orElse(judged.measure().kind());
        List<String> differences = new ArrayList<>();
        differ("rule", expected.id(), judged.id(), differences);
        if (expected.severity().known()) {
            differ(
                    "severity",
                    severity(expected.severity()),
                    severity(judged.card().severity()),
                    differences);
        }
        differ("subject", expected.subject(), judged.subject(), differences);
        differ("load case", expected.in(), judged.loadCase(), differences);
        differ(
                "value",
                expected.value(),
                Digits.quantity(
                        compared.map(Comparison::value).orElse(judged.measure().getValue()), kind),
                differences);
        compared.ifPresent(got -> {
            differ("limit", expected.limit(), Digits.quantity(got.limit(), kind), differences);
            differ("margin", expected.margin(), Digits.quantity(got.margin(), kind), differences);
        });
        if (compared.isEmpty()) {
            differ("limit", expected.limit(), "none", differences);
            differ("margin", expected.margin(), "none", differences);
        }
        if (!expected.guesses().isEmpty()) {
            differ("guesses", named(expected.guesses().stream()), guesses(advice, finding), differences);
        }
        String remedy = Wording.remedy(finding);
        if (!remedy.contains(expected.remedy())) {
            differences.add("remedy expected to hold '" + expected.remedy() + "', got: " + remedy);
        }
        return differences;
    }

    private static String severity(Choice<Severity> severity) {
        return Words.hyphenated(severity.value().name());
    }

    private static void differ(String what, String expected, String got, List<String> differences) {
        if (!expected.isEmpty() && !expected.equals(got)) {
            differences.add(what + " expected " + expected + ", got " + got);
        }
    }

    /** The guesses on which an outcome rests, by their fields; none where it rests on what is stated. */
    private static String guesses(Advice advice, Outcome outcome) {
        List<Missing> guesses = advice.restsOn(outcome);
        return guesses.isEmpty() ? "none" : named(guesses.stream().map(Missing::path));
    }

    private static String named(Stream<String> fields) {
        return fields.distinct().sorted().collect(Collectors.joining(", "));
    }

    private static Optional<Retired> retired(Advice advice, String id) {
        return advice.book().rules().containsKey(id)
                ? advice.book().retired(id, advice.sheet().asOf())
                : Optional.empty();
    }

    /** What became of a rule where something else was expected. */
    private static String instead(Advice advice, String id) {
        if (!advice.book().rules().containsKey(id)) {
            return "there is no such rule"
                    + advice.book()
                            .formerIds()
                            .suggestion(id, advice.book().rules().keySet());
        }
        Optional<Retired> retired = retired(advice, id);
        if (retired.isPresent()) {
            return retired.get().words(id);
        }
        Optional<Finding> found = advice.findings().stream()
                .filter(finding -> finding.judged().id().equals(id))
                .findFirst();
        if (found.isPresent()) {
            return "it was found: " + shown(found.get());
        }
        Optional<NotAssessed> open = advice.notAssessed().stream()
                .filter(outcome -> outcome.judged().id().equals(id))
                .findFirst();
        if (open.isPresent()) {
            return "it was not assessed for want of "
                    + open.get().missing().get(0).path();
        }
        return advice.met().stream()
                .filter(outcome -> outcome.judged().id().equals(id))
                .findFirst()
                .map(met -> "it was met: " + shown(met.judged(), met.comparison()))
                .or(() -> advice.held().stream()
                        .filter(outcome -> outcome.judged().id().equals(id))
                        .findFirst()
                        .map(held -> (held.arises() ? "it was met" : "it does not apply") + " if the guesses hold of "
                                + guesses(advice, held) + ": " + shown(held.judged(), held.comparison())))
                .or(() -> advice.doesNotApply().stream()
                        .filter(outcome -> outcome.judged().id().equals(id))
                        .findFirst()
                        .map(off -> "it does not apply: " + off.reason().words() + covering(advice, off)))
                .orElse("nothing gives the measure that it judges");
    }

    /** What is found of the measure beside it, and how severe both are; a slip in either severity is seen nowhere else. */
    private static String covering(Advice advice, DoesNotApply off) {
        return off.reason() != Reason.SAID_ALREADY
                ? ""
                : advice.findings().stream()
                        .map(Finding::judged)
                        .filter(found -> found.measure().equals(off.judged().measure()))
                        .min(Comparator.comparing(
                                found -> found.card().severity().value()))
                        .map(found -> ", " + found.id() + ", whose severity is "
                                + severity(found.card().severity()) + ", while its own is "
                                + severity(off.judged().card().severity()))
                        .orElse("");
    }

    private static String shown(Finding finding) {
        return shown(finding.judged(), finding.comparison());
    }

    private static String shown(Judged judged, Optional<Comparison> comparison) {
        String where = judged.loadCase().isEmpty() ? judged.subject() : judged.subject() + ", " + judged.loadCase();
        return "[" + where + "] "
                + comparison
                        .map(compared -> Wording.comparison(judged, compared))
                        .orElse(Wording.value(judged.measure()));
    }
}
