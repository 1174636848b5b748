package fitworthy.cli;

import fitworthy.engine.RuleEngine;
import fitworthy.proof.Skeleton;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.InputFile;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Begins a build sheet, or a rule or a region of a rule book. */
@Command(
        name = "begin",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        synopsisSubcommandLabel = "sheet|rule|region",
        subcommands = {BeginSheet.class, Begin.Rule.class, Begin.Region.class},
        description = "Begins a build sheet; or adds the skeleton of a new rule or region to the rule book, so that the"
                + " book still proves.")
final class Begin implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new CommandLine.ParameterException(spec.commandLine(), "Say what to begin: a sheet, a rule or a region.");
    }

    private abstract static class Beginning implements Callable<Integer> {
        final CommandContext around;

        @Mixin
        private BookOptions options = new BookOptions();

        @Parameters(index = "0", paramLabel = "ID", description = "Its id.")
        String id;

        Beginning(CommandContext around) {
            this.around = around;
        }

        abstract Map<Path, String> added(Path folder, RuleEngine engine) throws FaultsException;

        @Override
        public Integer call() throws FaultsException, NotWritten {
            Path folder = options.folder(around);
            takeBack(folder);
            RuleEngine engine = options.engine(around);
            Map<Path, String> added;
            try {
                added = added(folder, engine);
            } catch (FaultsException e) {
                throw Failures.isTyped(e) ? e : new BadBook(e);
            }
            Map<Path, String> before = new LinkedHashMap<>();
            Map<Path, String> after = new LinkedHashMap<>();
            List<String> begins = new ArrayList<>();
            for (Map.Entry<Path, String> each : added.entrySet()) {
                List<Fault> faults = new ArrayList<>();
                String was = InputFile.page(folder, each.getKey(), faults);
                if (was == null) {
                    throw new BadBook(new FaultsException(faults));
                }
                String ended = was.endsWith("\n") ? was : was + "\n";
                before.put(each.getKey(), was);
                after.put(each.getKey(), ended + each.getValue());
                begins.add(each.getKey() + ":" + (ended.lines().count() + 1) + ": begins here");
            }
            write(folder, before, after);
            begins.forEach(around.out()::println);
            around.out().println("Write what it says there, then run 'fitworthy prove'.");
            around.out().flush();
            return ExitCodes.IN_ORDER;
        }

        private void write(Path folder, Map<Path, String> before, Map<Path, String> after)
                throws FaultsException, NotWritten {
            try {
                OutputFile.writeAll(folder, before, after);
            } catch (NotWritten e) {
                takeBack(folder);
                throw e;
            }
        }

        private void takeBack(Path folder) throws FaultsException, NotWritten {
            try {
                if (OutputFile.takeBack(folder)) {
                    around.err().println("What a 'begin' that did not come to its end had added is taken back.");
                    around.err().flush();
                }
            } catch (FaultsException e) {
                throw new BadBook(e);
            }
        }
    }

    /** Begins a rule. */
    @Command(
            name = "rule",
            mixinStandardHelpOptions = true,
            usageHelpWidth = 80,
            description = "Begins a rule: condition, card, practice value and cases, in force from a day to come. "
                    + "Its limit is the value that you name for each region, else one between two cases of the topic.",
            footer = {
                "",
                "Examples:",
                "  fitworthy begin rule mass.roof-high --about mass.roof --from 2027-07-01",
                "  fitworthy begin rule water.plenty --about water.reserve --at-least \\",
                "    --region \"au=3 days\" --region \"us=3 days\" --from 2027-07-01"
            })
    static final class Rule extends Beginning {
        @Option(
                names = "--about",
                paramLabel = "MEASURE",
                required = true,
                description = "The measure it judges, one of docs/measures.md.")
        private String about;

        @Option(
                names = "--from",
                paramLabel = "DATE",
                required = true,
                converter = DayConverter.class,
                description = "The day from which it holds.")
        private LocalDate from;

        @Option(
                names = "--region",
                paramLabel = "REGION[=VALUE]",
                defaultValue = "any",
                mapFallbackValue = "",
                description = "A region it holds in, with its value there; may be given several times;"
                        + " any where left out.")
        private Map<String, String> values;

        @Option(names = "--at-least", description = "The figure has to be at least the value; at most where left out.")
        private boolean atLeast;

        Rule(CommandContext around) {
            super(around);
        }

        @Override
        Map<Path, String> added(Path folder, RuleEngine engine) throws FaultsException {
            return Skeleton.rule(folder, engine, new Skeleton.Wanted(id, about, atLeast, values, from));
        }
    }

    /** Begins a region. */
    @Command(
            name = "region",
            mixinStandardHelpOptions = true,
            usageHelpWidth = 80,
            description = "Begins a region that goes by its parent's values until it has its own.",
            footer = {"", "Example:", "  fitworthy begin region us-ut --name Utah --parent us"})
    static final class Region extends Beginning {
        @Option(names = "--name", paramLabel = "NAME", required = true, description = "What printouts call it.")
        private String name;

        @Option(
                names = "--parent",
                paramLabel = "REGION",
                required = true,
                description = "Whose values hold where it has" + " none.")
        private String parent;

        Region(CommandContext around) {
            super(around);
        }

        @Override
        Map<Path, String> added(Path folder, RuleEngine engine) throws FaultsException {
            return Skeleton.region(folder, engine.book(), id, name, parent);
        }
    }
}
