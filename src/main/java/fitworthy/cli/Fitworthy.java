package fitworthy.cli;

import fitworthy.engine.BookLoader;
import fitworthy.engine.BudgetExceeded;
import fitworthy.printout.FaultPrintout;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The top command and what its exit codes mean. */
@Command(
        name = Fitworthy.NAME,
        mixinStandardHelpOptions = true,
        versionProvider = Fitworthy.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        usageHelpWidth = 80,
        description = "Advice on planned vehicle modifications, before anything is bought. It is advice, not"
                + " certification.",
        footer = {
            "",
            "Example:",
            "  fitworthy check scenarios/touring.yaml",
            "",
            "Exit codes:",
            "  0  nothing worse than a note",
            "  1  something to act on, or a figure to bring",
            "  2  the sheet, the house file or the command line is wrong",
            "  3  the rule book is wrong",
            "  70 a fault of ours",
            "  74 a file, or the output, could not be written"
        })
public final class Fitworthy implements Runnable {

    static final String NAME = "fitworthy";

    /** In the order in which the help lists them. */
    private static final List<String> COMMANDS = List.of(
            "check", "explain", "mend", "compare", "print", "batch", "effect", "prove", "cases", "handbook", "begin");

    static final int SOMETHING_TO_DO = 1;
    static final int BAD_INPUT = 2;
    static final int BAD_BOOK = 3;
    static final int OUR_FAULT = 70;
    static final int NOT_WRITTEN = 74;

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new CommandLine.ParameterException(
                spec.commandLine(),
                "Say which command: " + String.join(", ", spec.subcommands().keySet()) + ".");
    }

    /** A rule book that cannot be used. */
    static final class BadBook extends Exception {
        private final transient List<Fault> faults;

        BadBook(FaultsException cause) {
            super(cause.getMessage(), cause);
            this.faults = cause.faults();
        }

        List<Fault> faults() {
            return faults;
        }
    }

    /** What a shop sets over the book cannot be used. */
    static final class BadHouse extends Exception {
        private final transient List<Fault> faults;

        BadHouse(FaultsException cause) {
            super(cause);
            this.faults = cause.faults();
        }
    }

    /** A file that could not be written. */
    static final class NotWritten extends Exception {
        NotWritten(Path file, IOException cause) {
            super(
                    file + ": "
                            + (cause instanceof NoSuchFileException
                                    ? "there is no such folder"
                                    : cause instanceof AccessDeniedException
                                            ? "the folder may not be written to"
                                            : Objects.requireNonNullElse(
                                                    cause instanceof FileSystemException named
                                                            ? named.getReason()
                                                            : null,
                                                    String.valueOf(cause.getMessage()))),
                    cause);
        }
    }

    /** Runs one command that has nothing on its standard input. @return the exit code */
    public static int run(PrintWriter out, PrintWriter err, Map<String, String> environment, String... args) {
        return run(InputStream.nullInputStream(), out, err, environment, args);
    }

    /**
     * Runs one command.
     *
     * @param environment environment variables
     * @return the exit code
     */
    public static int run(
            InputStream in, PrintWriter out, PrintWriter err, Map<String, String> environment, String... args) {
        Surroundings around = new Surroundings(
                in, out, err, environment, BookLoader.begin(Folders.rules(environment), Folders.cache(environment)));
        // Reading the options of a command takes a while, so where one is named those of all others are left out.
        boolean named = args.length > 0 && COMMANDS.contains(args[0]);
        CommandLine line = new CommandLine(named ? CommandSpec.create().name(NAME) : new Fitworthy());
        for (String each : named ? List.of(args[0]) : COMMANDS) {
            line.addSubcommand(each, command(each, around));
        }
        line.setOut(out).setErr(err);
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setExecutionExceptionHandler(new Explained());
        return line.execute(args);
    }

    private static Object command(String name, Surroundings around) {
        return switch (name) {
            case "check" -> new Check(around);
            case "explain" -> new Explain(around);
            case "mend" -> new Mend(around);
            case "compare" -> new Compare(around);
            case "print" -> new Print(around);
            case "batch" -> new Batch(around);
            case "effect" -> new ShowEffect(around);
            case "prove" -> new Prove(around);
            case "cases" -> new RunCases(around);
            case "handbook" -> new WriteHandbook(around);
            case "begin" ->
                new CommandLine(new Begin())
                        .addSubcommand(new Begin.Rule(around))
                        .addSubcommand(new Begin.Region(around));
            default -> throw new IllegalArgumentException(name);
        };
    }

    /** A day as typed. */
    static final class Day implements CommandLine.ITypeConverter<LocalDate> {
        @Override
        public LocalDate convert(String typed) {
            try {
                return LocalDate.parse(typed);
            } catch (DateTimeParseException e) {
                throw new CommandLine.TypeConversionException(
                        "'" + typed + "' is not a date; right: 2026-11-25 (year-month-day)");
            }
        }
    }

    /** Not a lambda, for whose sake the archive of classes would leave out its interface and all that builds on it. */
    private static final class Explained implements CommandLine.IExecutionExceptionHandler {
        @Override
        public int handleExecutionException(Exception exception, CommandLine line, CommandLine.ParseResult parsed) {
            return explained(exception, line.getErr());
        }
    }

    private static int explained(Exception exception, PrintWriter err) {
        if (exception instanceof FaultsException faults) {
            boolean option = faults.faults().stream()
                    .allMatch(each -> each.place().file().matches("--.*|ID|RULE"));
            err.println(option ? "The command line cannot be used:" : "The sheet cannot be used:");
            FaultPrintout.print(err, faults.faults());
            return BAD_INPUT;
        }
        if (exception instanceof BadBook book) {
            err.println("The rule book cannot be used, so no advice is given:");
            FaultPrintout.print(err, book.faults());
            return BAD_BOOK;
        }
        if (exception instanceof BudgetExceeded runaway) {
            err.println("A rule was stopped, so no advice is given:");
            FaultPrintout.print(err, List.of(runaway.fault()));
            return BAD_BOOK;
        }
        if (exception instanceof BadHouse house) {
            err.println("The house file cannot be used, so no advice is given:");
            FaultPrintout.print(err, house.faults);
            return BAD_INPUT;
        }
        if (exception instanceof NotWritten) {
            err.println("The printout cannot be written; what stood there before is untouched:");
            err.println(exception.getMessage());
            return NOT_WRITTEN;
        }
        if (exception instanceof UncheckedIOException io) {
            err.println("A file cannot be read: " + io.getCause().getMessage());
            return BAD_INPUT;
        }
        err.println("A fault of ours, not of your sheet: " + exception);
        err.println("Please report it with the sheet. No advice was given.");
        return OUR_FAULT;
    }

    /** The version from the jar's manifest. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Fitworthy.class.getPackage().getImplementationVersion();
            return new String[] {"fitworthy " + (version == null ? "(not packaged)" : version)};
        }
    }
}
