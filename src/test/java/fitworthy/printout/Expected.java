package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.Met;
import fitworthy.book.Ask;
import fitworthy.book.Practice;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.order.WorkOrder;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.PointMass;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.Verdict;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Missing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Every text and figure of advice that a reader of its printout must find again, taken from the advice itself. */
final class Expected {

    private final List<String> texts = new ArrayList<>();

    private Expected() {}

    static List<String> of(Advice advice) {
        Expected expected = new Expected();
        expected.all(advice);
        return expected.texts;
    }

    private void all(Advice advice) {
        texts.addAll(List.of(
                advice.sheet().title(),
                advice.sheet().customer(),
                advice.sheet().quote(),
                advice.sheet().vehicle().name(),
                advice.sheet().asOf().toString(),
                advice.book().hash(),
                advice.book().cover().name(),
                advice.book().cover().edition(),
                Printed.IMPRINT.sheetHash(),
                Printed.IMPRINT.software(),
                "2026-11-25 10:00 UTC",
                Verdict.of(Arrangement.of(advice)),
                advice.book().cover().caution()));
        advice.findings().forEach(this::figures);
        advice.findings().stream()
                .collect(Collectors.groupingBy(
                        each -> each.judged().id() + "|" + each.judged().subject()))
                .values()
                .forEach(this::words);
        advice.met()
                .forEach(each ->
                        texts.addAll(List.of(each.judged().id(), each.judged().subject())));
        advice.met().stream()
                .filter(each -> each.comparison().isPresent())
                .collect(Collectors.groupingBy(
                        each -> each.judged().id() + "|" + each.judged().subject()))
                .values()
                .forEach(this::least);
        advice.notAssessed().forEach(each -> {
            texts.add(each.judged().id());
            // A check that the book itself lacks something for waits for nothing else.
            boolean gap = each.missing().stream().anyMatch(Missing::isInBook);
            each.missing().stream()
                    .filter(missing -> !gap || missing.isInBook())
                    .forEach(missing -> {
                        texts.addAll(List.of(missing.meaning(), missing.find()));
                        // A figure that several parts lack is asked for once, with the parts named.
                        texts.addAll(List.of(missing.path().split("[.](?=[^.]*$)|(?<=^fitments)[.]")));
                    });
        });
        advice.loadings().forEach(this::masses);
        WorkOrder.of(advice.loadings().get(0).plan()).steps().forEach(each -> {
            texts.add(each.name());
            texts.add(each.lastDay() == null ? "not known" : each.lastDay().toString());
        });
    }

    /** What the loading of least margin leaves of a limit. */
    private void least(List<Met> loadings) {
        Met least = loadings.stream()
                .min(Comparator.comparingDouble(
                        each -> each.comparison().orElseThrow().margin()))
                .orElseThrow();
        texts.add(Wording.margin(least.judged(), least.comparison().orElseThrow()));
    }

    private void figures(Finding finding) {
        Judged judged = finding.judged();
        texts.add(judged.id());
        texts.add(judged.subject());
        texts.add(judged.loadCase());
        finding.comparison()
                .ifPresentOrElse(
                        compared -> {
                            Comparison printed = Digits.asPrinted(judged, compared);
                            for (double each : new double[] {printed.value(), printed.limit()}) {
                                texts.add(Digits.quantity(each, Digits.kind(judged, compared)));
                            }
                            texts.add(Wording.amount(judged, compared));
                        },
                        () -> texts.add(Wording.value(judged.measure())));
        for (Measure measure : finding.evidence()) {
            measure.workings().stream().filter(each -> !each.listsMasses()).forEach(each -> texts.addAll(each.lines()));
        }
    }

    /** What is told once of a finding that holds in several loadings, with the figures of the worst. */
    private void words(List<Finding> group) {
        Finding worst = group.stream()
                .min(Comparator.comparingDouble(
                        each -> each.comparison().map(Comparison::margin).orElse(0.0)))
                .orElseThrow();
        Judged judged = worst.judged();
        for (String each : List.of(
                judged.card().title(),
                judged.card().why(),
                Ask.words(judged.card().ask()))) {
            texts.add(Wording.fill(each, worst));
        }
        texts.add(Wording.remedy(worst));
        texts.add(judged.card().basis().value().words());
        judged.card().sources().forEach(each -> texts.add("[" + each + "]"));
        for (Practice value : worst.practice()) {
            texts.add(value.meaning() + ": " + Wording.value(value));
            texts.add(value.entry().basis().value().words());
            texts.add(value.entry().note());
        }
    }

    private void masses(Loading loading) {
        for (PointMass mass : loading.masses()) {
            texts.add(mass.name());
            texts.add(String.format(Locale.ROOT, "%.1f", mass.mass().value()));
        }
        texts.add(Digits.number(loading.axles().front().value(), "kg", 1));
        texts.add(Digits.number(loading.axles().rear().value(), "kg", 1));
        texts.add(Digits.number(loading.plan().ratings().rearAxle().value(), "kg", 0));
    }
}
