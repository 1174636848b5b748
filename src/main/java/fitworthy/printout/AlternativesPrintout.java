package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Alternatives;
import fitworthy.advice.Alternatives.Alternative;
import fitworthy.book.Severity;
import fitworthy.source.Words;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Combinations of open choices beside each other, as plain text. */
public final class AlternativesPrintout {

    private static final int NAME = 26;
    private static final int CELL = 13;
    private static final int PLANS_A_BLOCK = (Page.COLUMNS - NAME) / CELL;

    private final Page page;

    private AlternativesPrintout(PrintWriter out) {
        this.page = new Page(out);
    }

    /** Prints the combinations, a few beside each other at a time. */
    public static void print(PrintWriter out, Alternatives alternatives) {
        new AlternativesPrintout(out).print(alternatives);
    }

    private void print(Alternatives alternatives) {
        List<Alternative> plans = alternatives.plans();
        Advice first = plans.get(0).advice();
        page.wrapped(0, "Fitworthy: open choices side by side; advice, not certification");
        page.rule();
        page.wrapped(0, first.sheet().title());
        page.blank();
        for (int i = 0; i < plans.size(); i++) {
            page.hanging(String.format(Locale.ROOT, "%-4d", i + 1), plans.get(i).choices().stream()
                    .map(each -> each.option() + ": " + each.choice()).collect(Collectors.joining("; "))
                    + (i == 0 ? " (as written)" : ""));
        }
        page.blank();
        Set<String> limits = new LinkedHashSet<>();
        List<MarginTable> margins = plans.stream().map(each -> MarginTable.of(each.advice())).toList();
        margins.forEach(each -> limits.addAll(each.least().keySet()));
        for (int from = 0; from < plans.size(); from += PLANS_A_BLOCK) {
            block(plans, margins, limits, from, Math.min(plans.size(), from + PLANS_A_BLOCK));
        }
        if (plans.size() < alternatives.all()) {
            page.wrapped(0, "Time ran out: " + plans.size() + " of " + alternatives.all() + " combinations are shown.");
        }
        page.rule();
        page.wrapped(0, first.book().cover().caution());
        page.flush();
    }

    private void block(List<Alternative> plans, List<MarginTable> margins, Set<String> limits, int from, int to) {
        row("PLAN", from, to, i -> String.valueOf(i + 1));
        for (Severity severity : Severity.values()) {
            row(Words.hyphenated(severity.name()), from, to, i -> String.valueOf(TextPrintout.groups(
                    plans.get(i).advice().findings()).stream()
                    .filter(group -> group.get(0).judged().card().severity().is(severity)).count()));
        }
        row("figures missing", from, to, i ->
                String.valueOf(TextPrintout.missing(plans.get(i).advice().notAssessed()).size()));
        for (String limit : limits) {
            row("left, " + limit, from, to, i -> margins.get(i).least().getOrDefault(limit, "-"));
        }
        row("price", from, to, i -> price(plans.get(i).advice()));
        page.blank();
    }

    private static String price(Advice advice) {
        List<String> sums = new ArrayList<>();
        Prices.of(advice.sheet()).forEach((currency, sum) -> sums.add(sum.toBigInteger() + " " + currency));
        return sums.isEmpty() ? "-" : String.join("+", sums);
    }

    private void row(String name, int from, int to, Function<Integer, String> cell) {
        StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "%-" + NAME + "s", Words.shortened(name, NAME)));
        for (int i = from; i < to; i++) {
            line.append(String.format(Locale.ROOT, "%" + CELL + "s", Words.shortened(cell.apply(i), CELL - 1)));
        }
        page.line(line.toString());
    }
}
