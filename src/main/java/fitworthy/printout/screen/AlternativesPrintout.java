package fitworthy.printout.screen;

import fitworthy.advice.Advice;
import fitworthy.book.Severity;
import fitworthy.document.Page;
import fitworthy.printout.CombinationWords;
import fitworthy.printout.ComparedPlan;
import fitworthy.printout.words.HouseWords;
import fitworthy.printout.words.SeverityWords;
import fitworthy.printout.words.TermsWords;
import fitworthy.search.Alternatives;
import fitworthy.search.Alternatives.Alternative;
import fitworthy.source.Words;
import java.io.PrintWriter;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Combinations of open choices beside each other, as plain text. */
public final class AlternativesPrintout {

    private static final int NAME = 32;
    private static final int CELL = 12;
    private static final int PLANS_A_BLOCK = (Page.COLUMNS - NAME) / CELL;

    private final Page page;

    private AlternativesPrintout(PrintWriter out) {
        this.page = new Page(out);
    }

    /** Prints the combinations, a few beside each other at a time. @param planned what is said of the plan as written */
    public static void print(PrintWriter out, Advice planned, Alternatives<ComparedPlan> alternatives) {
        new AlternativesPrintout(out).print(planned, alternatives);
    }

    private void print(Advice planned, Alternatives<ComparedPlan> alternatives) {
        List<ComparedPlan> plans =
                alternatives.plans().stream().map(Alternative::kept).toList();
        page.wrapped(0, "Fitworthy: open choices side by side; advice, not certification");
        page.rule();
        CombinationWords.cutShort(alternatives).ifPresent(cut -> {
            page.wrapped(0, cut + " Vary fewer with --option, or give more --seconds.");
            page.blank();
        });
        page.wrapped(0, planned.sheet().title());
        HouseWords.looser(planned).forEach(line -> page.hanging("Looser than the book: ", line));
        page.blank();
        for (int i = 0; i < plans.size(); i++) {
            page.hanging(
                    String.format(Locale.ROOT, "%-4d", i + 1),
                    CombinationWords.choices(alternatives.plans().get(i), i) + CombinationWords.leftOut(plans.get(i)));
        }
        page.blank();
        best(plans, alternatives.complete());
        Map<String, Severity> deciding = deciding(plans);
        Set<String> limits = new LinkedHashSet<>();
        plans.forEach(plan -> limits.addAll(plan.left().keySet()));
        for (int from = 0; from < plans.size(); from += PLANS_A_BLOCK) {
            block(plans.subList(from, Math.min(plans.size(), from + PLANS_A_BLOCK)), from, deciding, limits);
        }
        stops(plans);
        page.rule();
        page.wrapped(0, planned.book().smallPrint(planned.sheet().region()));
        page.flush();
    }

    private void best(List<ComparedPlan> plans, boolean complete) {
        ComparedPlan best = Collections.min(plans, ComparedPlan.BETTER);
        List<String> all = IntStream.range(0, plans.size())
                .filter(i -> ComparedPlan.BETTER.compare(plans.get(i), best) == 0)
                .mapToObj(i -> String.valueOf(i + 1))
                .toList();
        page.wrapped(
                0,
                (complete ? "Fewest stops" : "The best of those looked at, by fewest stops")
                        + ", and of those the fewest changes: " + CombinationWords.plans(all) + "."
                        + (plans.stream()
                                        .allMatch(plan -> plan.forgone().size()
                                                == best.forgone().size())
                                ? ""
                                : " Plans that leave out more of what is to stay are not counted.")
                        + (plans.stream().allMatch(plan -> plan.open().equals(best.open()))
                                ? ""
                                : " A check that is not made counts as the worst that it could find."));
        page.blank();
    }

    /** The stops and changes that some plans have and others do not, worst first. */
    private static Map<String, Severity> deciding(List<ComparedPlan> plans) {
        Map<String, Severity> any = new TreeMap<>();
        plans.forEach(plan -> any.putAll(plan.faults()));
        Map<String, Severity> deciding = new LinkedHashMap<>();
        any.entrySet().stream()
                .filter(entry -> !plans.stream().allMatch(plan -> plan.faults().containsKey(entry.getKey())))
                .sorted(Map.Entry.comparingByValue())
                .forEach(fault -> deciding.put(fault.getKey(), fault.getValue()));
        return deciding;
    }

    private void block(List<ComparedPlan> plans, int from, Map<String, Severity> deciding, Set<String> limits) {
        row("PLAN", IntStream.rangeClosed(from + 1, from + plans.size()).boxed(), String::valueOf);
        for (Severity severity : Severity.values()) {
            row(SeverityWords.behind(2, severity), plans.stream(), plan -> String.valueOf(plan.found(severity)));
        }
        row(
                "more listed under them",
                plans.stream(),
                plan -> String.valueOf(plan.headings().under()));
        if (plans.stream().anyMatch(plan -> plan.counts().waived() > 0)) {
            row("waived", plans.stream(), plan -> String.valueOf(plan.counts().waived()));
        }
        row(
                "checks not made",
                plans.stream(),
                plan -> String.valueOf(plan.counts().notAssessed()));
        row(
                "figures missing",
                plans.stream(),
                plan -> String.valueOf(plan.counts().figuresMissing()));
        row("open checks that could stop it", plans.stream(), plan -> String.valueOf(plan.open(Severity.STOP)));
        deciding.forEach((id, severity) -> row(
                id, plans.stream(), plan -> plan.faults().containsKey(id) ? Words.hyphenated(severity.name()) : "-"));
        for (String limit : limits) {
            row("left, " + limit, plans.stream(), plan -> plan.left(limit));
        }
        row("range, the least", plans.stream(), plan -> TermsWords.range(plan.terms()));
        row("water lasts, the least", plans.stream(), plan -> TermsWords.water(plan.terms()));
        row("parts", plans.stream(), plan -> TermsWords.price(plan.terms()));
        row("lead time, the longest", plans.stream(), plan -> TermsWords.leadTime(plan.terms()));
        page.blank();
    }

    /** Every stop of the plans that were looked at, with those that have it. */
    private void stops(List<ComparedPlan> plans) {
        Map<String, String> words = new TreeMap<>();
        plans.forEach(plan -> words.putAll(plan.stops()));
        if (words.isEmpty()) {
            return;
        }
        page.wrapped(0, "STOPS THAT REMAIN");
        words.forEach((stop, title) ->
                page.hanging("  - ", CombinationWords.plansWith(stop, plans) + ": " + title + " (" + stop + ")"));
    }

    private <T> void row(String name, Stream<T> columns, Function<T, String> cell) {
        page.line(String.format(Locale.ROOT, "%-" + NAME + "s", Words.shortened(name, NAME))
                + columns.map(column -> String.format(
                                Locale.ROOT, "%" + CELL + "s", Words.shortened(cell.apply(column), CELL - 1)))
                        .collect(Collectors.joining()));
    }
}
