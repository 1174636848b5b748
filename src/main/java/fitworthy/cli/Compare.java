package fitworthy.cli;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.View;
import fitworthy.document.Page;
import fitworthy.engine.RuleEngine;
import fitworthy.printout.ComparedPlan;
import fitworthy.printout.screen.AlternativesPrintout;
import fitworthy.search.Alternatives;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Compares the choices that a sheet leaves open. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description = "Sets every combination of a sheet's open choices side by side. Shows findings, the margin to"
                + " each limit, range, water, price, lead time, and the stops that remain.",
        footer = {
            "",
            "Example:",
            "  fitworthy compare scenarios/touring.yaml --option Tray",
            "",
            "Exit code 0 where every combination was looked at and one of them has nothing",
            "to act on, or nothing is open to compare, else 1."
        })
final class Compare implements Callable<Integer> {

    private static final String EXAMPLE =
            "options: [{name: To choose, choices: [{name: with, parts: [%s]}, {name: without}]}]";

    /** Parts that are named with what the shelf has in their place. */
    private static final int MOST_OPENED = 5;

    private final CommandContext around;

    @Mixin
    private SheetOptions options = new SheetOptions();

    @Option(
            names = "--option",
            paramLabel = "NAME",
            description = "Vary this option only; may be given several times. All are varied by default.")
    private List<String> names = List.of();

    @Option(
            names = "--seconds",
            paramLabel = "N",
            defaultValue = "10",
            description = "Stop after this long; 10 by default.")
    private double seconds;

    Compare(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException {
        RuleEngine engine = options.engine(around);
        View.Read read = options.read(engine);
        List<String> known =
                read.sheet().options().stream().map(Sheet.Option::name).toList();
        if (known.isEmpty() && names.isEmpty()) {
            nothing(read);
            return ExitCodes.IN_ORDER;
        }
        FaultsException.refuse(Names.faults(
                "--option",
                names,
                known,
                "the sheet has no option",
                known.isEmpty()
                        ? EXAMPLE.formatted(part(read.sheet()))
                        : "one of "
                                + read.sheet().options().stream()
                                        .map(option -> option.name() + " (" + choices(option) + ")")
                                        .collect(Collectors.joining(", "))
                                + "; all choices of it are compared"));
        Advice planned = Adviser.advise(engine, read.sheet());
        Alternatives<ComparedPlan> alternatives;
        try (TimeLimit limit = TimeLimit.of(seconds, around.err())) {
            alternatives = Alternatives.of(
                    engine, read.tree(), read.sheet(), names.isEmpty() ? known : names, ComparedPlan::of, limit, limit);
        }
        AlternativesPrintout.print(around.out(), planned, alternatives);
        boolean oneInOrder =
                alternatives.plans().stream().anyMatch(plan -> !plan.kept().asksForAction());
        return alternatives.complete() && oneInOrder ? ExitCodes.IN_ORDER : ExitCodes.SOMETHING_TO_DO;
    }

    /** Says that nothing is open, how a choice is written, and what the shelf has for one. */
    private void nothing(View.Read read) {
        Page page = new Page(around.out());
        page.wrapped(0, "There is nothing to compare: the sheet leaves no choice open.");
        page.wrapped(0, "A choice is written so:");
        page.wrapped(2, EXAMPLE.formatted(part(read.sheet())));
        Alternatives.openable(read.tree(), read.sheet(), options.shelf()).entrySet().stream()
                .limit(MOST_OPENED)
                .forEach(entry -> couldBe(entry.getKey(), entry.getValue(), page));
        page.flush();
    }

    /** That something on the shelf could be fitted in place of a part, and how that is written. */
    private static void couldBe(String part, List<String> others, Page page) {
        String other = others.get(0);
        page.wrapped(
                0,
                "'" + part + "' could be left open, since the shelf has '" + String.join("', '", others)
                        + "' too: add - " + other + " to fitments, and");
        page.wrapped(
                2,
                "options: [{name: " + part + ", choices: [{name: as planned, parts: [" + part
                        + "]}, {name: from the shelf, parts: [" + other + "]}]}]");
    }

    /** A part that could be left, as an example. */
    private static String part(Sheet sheet) {
        return sheet.fitments().stream()
                .filter(fitment -> !fitment.isDone())
                .map(Fitment::name)
                .findFirst()
                .orElse("Alloy tray");
    }

    private static String choices(Sheet.Option option) {
        return option.choices().stream().map(Sheet.Alternative::name).collect(Collectors.joining(", "));
    }
}
